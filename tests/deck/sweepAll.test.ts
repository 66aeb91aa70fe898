import {expect, test} from "vitest";
import {handbookCriteria} from "../../lib/deck/criteria.js";
import {sweep, type SweepInput, type SweepRow} from "../../lib/deck/sweep.js";
import {catalog} from "../support/designs.js";

test("a sweep of all members with all strands holds all their patterns", () => {
  const input: SweepInput = {
    members: catalog.deckMembers.map(({designation}) => designation),
    sixteenths: catalog.strands.map(({sixteenths}) => sixteenths),
    toppingsIn: [0, 2],
    spansFt: {fromFt: 40, toFt: 40, stepFt: 1},
    conditions: {concreteKind: "normalweight", strengthPsi: 5000, releaseStrengthPsi: 3500, toppingStrengthPsi: 3000, humidityPercent: 70},
    criteria: {untopped: handbookCriteria(false), topped: handbookCriteria(true)},
  };
  const rows: SweepRow[] = [];
  const work = sweep(catalog, input);
  let step = work.next();
  for (; !step.done; step = work.next()) rows.push(...step.value.rows);
  expect(rows).toHaveLength(step.value.rows);
  expect(rows.every(({cells}) => cells.every((cell) => cell.safeLoadPsf >= 0 && Number.isFinite(cell.longTermCamberIn)))).toBe(true);
});

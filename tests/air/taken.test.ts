import {describe, expect, test} from "vitest";
import {hasReturnDuct, type AirPlan} from "../../lib/air/plan.js";
import {takenSpaces} from "../../lib/air/taken.js";
import type {Design} from "../../lib/design/design.js";
import {reading} from "../support/reading.js";
import {library} from "./model.js";

const WAYS = ["none", "stems", "trunk", "plenum", "rooms"] as const;
const RISERS = ["end", "middle", "ends"] as const;

/** Mains of one row of bays and of two, with every way back and place of risers. */
const mains = WAYS.flatMap((way) => RISERS.flatMap((riser) => [1, 2].flatMap((rows) => [14, 20].map((feederIn) =>
  [way, riser, rows, feederIn, library({"air.way": way, "air.riser": riser, "air.rows": rows, "services.branchWidthIn": feederIn, "services.servedFt2": 2400 * rows, "air.place": rows > 1 ? "middle" : "ledge", "air.supplyEvery": 1})] as const))));

const servedOf = (design: Design, {frame, zone, flowCfm, returnCfm}: AirPlan) => ({frame, zone, flowCfm, ductedBackCfm: hasReturnDuct(design) ? returnCfm : undefined});

describe("the spaces that a main takes along the building", () => {
  test.each(mains)("are kept by all that they hang on: back by %s, riser at the %s, %i rows of bays, feeders %i in wide", (_way, _riser, _rows, _feederIn, {design, shape, air: {plan}}) => {
    // Of a shape of its own nothing is known at first; what is read when it is asked for again is the key.
    const own = {...shape};
    const [found, known] = [1, 2].map(() => {
      const read = [reading(design), reading(servedOf(design, plan))] as const;
      takenSpaces(read[0].of, own, read[1].of);
      return read.flatMap((one) => [...one.read]);
    }) as [string[], string[]];
    // Columns stand at every beam's span along the building.
    expect(found.filter((path) => !known.includes(path) && path !== "frame.columnsAlongIn")).toEqual([]);
    expect(known).toContain("zone.lengthIn");
  });

  test("are the same found anew as after all others", () => {
    for (const [, , , , {design, shape, air: {plan}}] of mains) {
      expect(takenSpaces(design, shape, servedOf(design, plan))).toEqual(takenSpaces(design, {...shape}, servedOf(design, plan)));
    }
    expect(new Set(mains.map(([, , , , {air: {plan: {supply, returns, risers}}}]) => JSON.stringify([supply, returns, risers]))).size).toBeGreaterThan(8);
  });
});

import {expect, test} from "vitest";
import {handbookCriteria} from "../../lib/deck/criteria.js";
import {EVERY_KIND, frontier} from "../../lib/deck/frontier.js";
import {failedGates} from "../../lib/deck/gates.js";
import {LOAD_LIMITS} from "../../lib/deck/limits.js";
import {safeLoad} from "../../lib/deck/safeLoad.js";
import {usualPatterns} from "../../lib/deck/table.js";
import {withValues} from "../../lib/design/edit.js";
import {demandOf, evaluate} from "../../lib/evaluate.js";
import {prestressState} from "../../lib/member/prestressState.js";
import {catalog, seed} from "../support/designs.js";
import {memberWith} from "../support/members.js";

const CRITERIA = {...handbookCriteria(false), sustainedLiveShare: 1, limits: LOAD_LIMITS};

test("no member of the catalog ends a search, however weak its concrete and however many its strands", () => {
  const abused: string[] = [];
  for (const row of catalog.deckMembers) for (const size of [6, 8, 10]) for (const text of [usualPatterns(row, size).at(0), usualPatterns(row, size).at(-1)]) {
    if (text === undefined) continue;
    for (const toppingIn of [0, 6]) for (const spanFt of [10, 30, 150]) {
      const member = memberWith(row.designation, text, {concreteKind: "sand-lightweight", strengthPsi: 3000, releaseStrengthPsi: 2500, toppingIn, humidityPercent: 30});
      const {safeLoadPsf} = safeLoad(member, spanFt, CRITERIA);
      expect(Number.isFinite(safeLoadPsf)).toBe(true);
      const {effectiveStressKsi} = prestressState(member, spanFt, 0.5, 0).losses;
      expect(effectiveStressKsi).toBeGreaterThanOrEqual(0);
      // Whoever has lost most of the pull does not pass transfer.
      if (effectiveStressKsi < 80) {
        abused.push(text);
        expect(failedGates(member, spanFt, {...CRITERIA, limits: ["transfer"]}), `${row.designation} ${text} ${spanFt}`).toEqual(["transfer"]);
      }
    }
  }
  expect(abused.length).toBeGreaterThan(20);
});

test("the trade-off search of weak lightweight concrete comes to its end", () => {
  const design = withValues(seed("branch-library"), {"deck.concrete": "sand-lightweight", "deck.strengthPsi": 4000, "deck.releaseStrengthPsi": 2500, "bay.spanFt": 30});
  const demand = {...demandOf(design, catalog, evaluate(design, catalog).loads), consider: EVERY_KIND};
  const tees = {...catalog, deckMembers: catalog.deckMembers.filter(({designation}) => designation === "10DT24")};
  const work = frontier(tees, demand, catalog.carbonFactors);
  let step = work.next();
  while (!step.done) step = work.next();
  expect(step.value.tried).toBeGreaterThan(100);
  expect(step.value.worked).toBeGreaterThan(0);
});

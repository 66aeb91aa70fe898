import {describe, expect, test} from "vitest";
import {handbookCriteria} from "../../lib/deck/criteria.js";
import {governingRuns, longestSpanFt} from "../../lib/deck/reach.js";
import {safeLoad} from "../../lib/deck/safeLoad.js";
import {capacityCurve} from "../../lib/deck/table.js";
import {memberWith} from "../support/members.js";

const MEMBER = memberWith("10DT24", "68-S");
/** With the combination of dead load alone, which takes over where hardly any load is left. */
const CRITERIA = {...handbookCriteria(false), deadOnlyFactor: 1.4};

describe("longestSpanFt", () => {
  test("is the span at which the safe load has fallen to the load asked, to 0.05 ft", () => {
    const spanFt = longestSpanFt(MEMBER, CRITERIA, 82) as number;
    expect(safeLoad(MEMBER, spanFt, CRITERIA).safeLoadPsf).toBeGreaterThanOrEqual(82);
    expect(safeLoad(MEMBER, spanFt + 0.05, CRITERIA).safeLoadPsf).toBeLessThan(82);
  });

  test("is nothing where even 10 ft is too long, and 150 ft where that is not long enough to fail", () => {
    expect(longestSpanFt(MEMBER, CRITERIA, 1e6)).toBeUndefined();
    expect(longestSpanFt(MEMBER, CRITERIA, 0)).toBe(150);
  });
});

describe("governingRuns", () => {
  test("are none for no curve", () => {
    expect(governingRuns([])).toEqual([]);
  });

  test("cut a curve where another limit takes over, each beginning where the one before ends", () => {
    const curve = capacityCurve(memberWith("10DT24", "108-S"), Array.from({length: 60}, (_, i) => 20 + i), {...CRITERIA, tensionClass: "U"});
    const runs = governingRuns(curve);
    expect(runs.map((run) => run.governs)).toEqual(["service tension", "strength"]);
    for (let i = 1; i < runs.length; i++) {
      expect(runs[i]?.governs).not.toBe(runs[i - 1]?.governs);
      expect(runs[i]?.cells[0]).toBe(runs[i - 1]?.cells.at(-1));
    }
    expect(runs.flatMap((run, i) => run.cells.slice(i === 0 ? 0 : 1))).toEqual(curve);
  });
});

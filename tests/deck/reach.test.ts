import {describe, expect, test} from "vitest";
import {handbookCriteria, type Criteria} from "../../lib/deck/criteria.js";
import {LIMITS, LOAD_LIMITS} from "../../lib/deck/limits.js";
import {governingRuns, longestWholeFt, reachOf, reaches, spanScan, type Reach, type ReachGap} from "../../lib/deck/reach.js";
import {safeLoad} from "../../lib/deck/safeLoad.js";
import {capacityCurve} from "../../lib/deck/table.js";
import {memberWith} from "../support/members.js";

const MEMBER = memberWith("10DT24", "68-S");
/** With the combination of dead load alone, which takes over where hardly any load is left. */
const CRITERIA = {...handbookCriteria(false), deadOnlyFactor: 1.4};

describe("reach", () => {
  test("is the span at which the safe load has fallen to the load asked, to a hundredth of a foot", () => {
    const {longestFt, stops, gaps} = reachOf(MEMBER, CRITERIA, 82) as Reach;
    expect(safeLoad(MEMBER, longestFt, CRITERIA).safeLoadPsf).toBeGreaterThanOrEqual(82);
    const beyond = safeLoad(MEMBER, longestFt + 0.01, CRITERIA);
    expect(beyond.safeLoadPsf).toBeLessThan(82);
    expect(stops).toBe(beyond.governs);
    expect(gaps).toEqual([]);
  });

  test("is nothing where no span carries the load, and 150 ft where that is not long enough to fail", () => {
    expect(reachOf(MEMBER, CRITERIA, 1e6)).toBeUndefined();
    expect(reachOf(MEMBER, {...CRITERIA, limits: ["horizontal shear"]}, 82)).toEqual({shortestFt: 10, longestFt: 150, stops: undefined, gaps: []});
  });

  // A short slab with few strands could break as it first cracks, so half of its strength is out of use; on a longer span
  // the dead load leaves less prestress in the soffit, it cracks sooner, and the whole strength counts.
  test.each([
    ["4FS8", "66-S", 60, 26, "strength"], ["4HC10", "66-S", 40, 34.5, "strength"],
  ] as const)("goes on past the spans over which least strength stops a %s %s", (designation, pattern, loadPsf, aboutFt, stops) => {
    const member = memberWith(designation, pattern, {toppingIn: 2});
    const criteria = {...CRITERIA, superimposedDeadPsf: 10, limits: LOAD_LIMITS.filter((name) => name !== "camber")};
    const reach = reachOf(member, criteria, loadPsf) as Reach;
    expect(Math.abs(reach.longestFt - aboutFt)).toBeLessThan(1);
    expect(reach.stops).toBe(stops);
    const [gap] = reach.gaps as [ReachGap];
    expect(reach.gaps).toHaveLength(1);
    expect(gap.governs).toBe("minimum strength");
    const carries = (spanFt: number) => safeLoad(member, spanFt, criteria).safeLoadPsf >= loadPsf;
    for (const [spanFt, held] of [[gap.fromFt, true], [gap.fromFt + 0.02, false], [gap.toFt - 0.02, false], [gap.toFt, true]] as const) {
      expect(carries(spanFt), String(spanFt)).toBe(held);
      expect(reaches(reach, spanFt), String(spanFt)).toBe(held);
    }
    expect(longestWholeFt(reach)).toBe(Math.floor(reach.longestFt));
  });

  test("never rises with the span but where a limit sets in or out: the load that each limit allows falls", () => {
    let held = 0;
    for (const [designation, pattern, toppingIn] of [["10DT24", "68-S", 0], ["12DT32", "188-D1", 2], ["12DT32", "148-D2", 2], ["15DT34", "2010-D1", 0], ["8DT18", "48-S", 3], ["4HC8", "76-S", 2], ["4HC12", "48-S", 0], ["4FS8", "66-S", 2]] as const) {
      for (const tensionClass of ["U", "T", "C"] as const) for (const superimposedDeadPsf of [0, 40]) {
        const criteria = {...CRITERIA, tensionClass, superimposedDeadPsf, sustainedLiveShare: 0.5, limits: LIMITS};
        const scan = capacityCurve(memberWith(designation, pattern, {toppingIn}), Array.from({length: 60}, (_, i) => 10 + 1.5 * i), criteria);
        for (let i = 1; i < scan.length; i++) for (const name of LIMITS) {
          const [before, after] = [scan[i - 1]?.limitsPsf[name], scan[i]?.limitsPsf[name]];
          if (before === undefined || after === undefined || before <= 0) continue;
          expect(after, `${designation} ${pattern} ${name} at ${String(scan[i]?.spanFt)} ft`).toBeLessThan(before);
          held++;
        }
      }
    }
    expect(held).toBeGreaterThan(5000);
  });

  test("scans both sides of the place where a limit sets out", () => {
    const member = memberWith("4FS8", "66-S", {toppingIn: 2});
    const scan = spanScan(member, {...CRITERIA, limits: ["strength", "minimum strength"]});
    const i = scan.findIndex(({limitsPsf}) => limitsPsf["minimum strength"] === undefined);
    expect(scan[i - 1]?.limitsPsf["minimum strength"]).toBeDefined();
    expect((scan[i]?.spanFt as number) - (scan[i - 1]?.spanFt as number)).toBeLessThan(0.01);
    // Each span once, from the shortest to the longest.
    scan.slice(1).forEach(({spanFt}, at) => expect(spanFt).toBeGreaterThan(scan[at]?.spanFt as number));
  });

  test("finds each place at which a limit sets in or out, also two of them between the same two spans", () => {
    // Camber begins to bound the load a hair before the rule on least strength ceases to, both between 18 and 20 ft.
    const member = memberWith("4FS8", "66-S", {toppingIn: 2});
    const criteria: Criteria = {...handbookCriteria(true), superimposedDeadPsf: 10, limits: LIMITS};
    const turns = (stepFt: number) => {
      const scan = spanScan(member, criteria, stepFt);
      return scan.slice(1).flatMap(({spanFt, limitsPsf}, at) => LIMITS.filter((name) => (limitsPsf[name] === undefined) !== (scan[at]?.limitsPsf[name] === undefined)).map((name) => [name, spanFt] as const));
    };
    expect(turns(2).map(([name]) => name)).toEqual(["camber", "minimum strength", "stripping"]);
    const [camber, least] = turns(2) as [readonly [string, number], readonly [string, number]];
    expect([Math.floor(camber[1]), Math.floor(least[1])]).toEqual([18, 19]);
    // Where they lie does not hang on the spans that are looked at.
    turns(3).forEach(([name, spanFt], at) => {
      expect(name).toBe(turns(2)[at]?.[0]);
      expect(Math.abs(spanFt - (turns(2)[at]?.[1] as number))).toBeLessThan(0.01);
    });
  });

  test("looks at every other foot where no limit sets in or out, up to the first span over which the member breaks under its own weight", () => {
    const scan = spanScan(MEMBER, {...CRITERIA, limits: ["strength"]});
    expect(scan.map(({spanFt}) => spanFt)).toEqual(scan.map((_, at) => 10 + 2 * at));
    expect(scan.findIndex(({limitsPsf}) => (limitsPsf.strength as number) <= 0)).toBe(scan.length - 1);
    expect(scan.at(-1)?.spanFt).toBeLessThan(150);
  });

  test("has no gap and no end to tell of where a load is carried first over the last of the spans", () => {
    const [short, long] = [safeLoad(MEMBER, 60, CRITERIA), safeLoad(MEMBER, 20, CRITERIA)];
    // As of a member that a gate stops on short pieces: the spans are given the other way round.
    const turned = reachOf(MEMBER, CRITERIA, 82, [{...short, spanFt: 20}, {...long, spanFt: 20.004}]);
    expect(turned).toEqual({shortestFt: 20.004, longestFt: 20.004, stops: undefined, gaps: []});
  });
});

describe("a reach with gaps", () => {
  const of = (reach: Partial<Reach>): Reach => ({shortestFt: 12, longestFt: 30.4, stops: "strength", gaps: [], ...reach});
  const gap = (fromFt: number, toFt: number): ReachGap => ({fromFt, toFt, governs: "minimum strength"});

  test("holds from its shortest span to its longest, both among them, and at both edges of a gap, but in no gap", () => {
    const reach = of({gaps: [gap(15, 18), gap(20, 22)]});
    for (const [spanFt, held] of [[11.9, false], [12, true], [14, true], [15, true], [16, false], [18, true], [19, true], [21, false], [22, true], [30.4, true], [30.5, false]] as const) {
      expect(reaches(reach, spanFt), String(spanFt)).toBe(held);
    }
  });

  test("has as its longest whole foot the last that is in no gap, or none", () => {
    expect(longestWholeFt(of({}))).toBe(30);
    expect(longestWholeFt(of({gaps: [gap(26.5, 30.2)]}))).toBe(26);
    expect(longestWholeFt(of({shortestFt: 10, longestFt: 10.4}))).toBe(10);
    expect(longestWholeFt(of({shortestFt: 20.3, longestFt: 20.9}))).toBeUndefined();
  });

  test("is read off a scan: a load that short spans do not carry, a gap within, and what stops it", () => {
    const member = memberWith("4FS8", "66-S", {toppingIn: 2});
    const criteria = {...CRITERIA, superimposedDeadPsf: 10, limits: LOAD_LIMITS.filter((name) => name !== "camber")};
    const scan = spanScan(member, criteria);
    const whole = reachOf(member, criteria, 60, scan) as Reach;
    // Without the shorter spans the reach begins where the gap ends, and is no gap.
    const begun = reachOf(member, criteria, 60, scan.filter(({spanFt}) => spanFt > (whole.gaps[0]?.fromFt as number) + 0.1)) as Reach;
    expect(begun.gaps).toEqual([]);
    expect(begun.shortestFt).toBeCloseTo(whole.gaps[0]?.toFt as number, 1);
    expect(begun.longestFt).toBe(whole.longestFt);
    // Without the longer ones nothing is reported to stop it.
    const open = reachOf(member, criteria, 60, scan.filter(({spanFt}) => spanFt < whole.longestFt)) as Reach;
    expect(open.stops).toBeUndefined();
    expect(open.longestFt).toBe(scan.filter(({spanFt}) => spanFt < whole.longestFt).at(-1)?.spanFt);
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

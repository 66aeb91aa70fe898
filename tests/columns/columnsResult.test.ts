import {describe, expect, test} from "vitest";
import {endMoments} from "../../lib/columns/columnMoments.js";
import {columnLevels, positionsOf, seatOnColumn} from "../../lib/columns/frame.js";
import {loadPath} from "../../lib/columns/columnsResult.js";
import {takedown} from "../../lib/columns/takedown.js";
import type {Design} from "../../lib/design/design.js";
import {withValues} from "../../lib/design/edit.js";
import {columnsOf, evaluate, framingOf} from "../../lib/evaluate.js";
import {catalogue, seed, seeds} from "../support/designs.js";

const at = (design: Design) => {
  const result = evaluate(design, catalogue);
  return {result, framing: framingOf(result), ...columnsOf(result, catalogue)};
};

describe("the columns of a design", () => {
  test("fail no check in the starter designs, and each check has a name of its own", () => {
    for (const {id, design} of seeds) {
      const {checks, result} = at(design);
      expect(checks.filter((check) => check.verdict === "fails").map((check) => check.id), id).toEqual([]);
      const ids = [...result.checks, ...checks].map((check) => check.id);
      expect(new Set(ids).size).toBe(ids.length);
    }
  });

  test("are those that the grid has", () => {
    const design = seed("branch-library");
    expect(positionsOf(evaluate(design, catalogue))).toEqual(["interior column", "edge column", "corner column"]);
    expect(at(withValues(design, {"bay.baysAcross": 1})).columns.map(({position}) => position)).toEqual(["edge column", "corner column"]);
    expect(at(withValues(design, {"bay.baysAcross": 1, "bay.baysAlong": 1})).columns.map(({position}) => position)).toEqual(["corner column"]);
  });

  test("carry a quarter bay at the corner, half at the edge, a whole one inside", () => {
    const {columns} = at(seed("branch-library"));
    const bayFt2 = 40 * 30;
    expect(columns.map(({foot}) => foot.level.tributaryFt2)).toEqual([bayFt2, bayFt2 / 2, bayFt2 / 4]);
  });

  test("have no level for a roof that weighs nothing and holds nothing", () => {
    const design = seed("classroom-wing");
    const names = (of: Design) => columnLevels(at(of).framing, "interior column").map(({name}) => name);
    expect(names(design)).toEqual(["roof", "floor 3", "floor 2"]);
    expect(names(withValues(design, {"column.roofDeadPsf": 0, "column.roofLivePsf": 0}))).toEqual(["floor 3", "floor 2"]);
    expect(names(withValues(design, {"column.roofDeadPsf": 0, "column.roofLivePsf": 20}))).toEqual(["roof", "floor 3", "floor 2"]);
  });

  test("by hand: the dead load that one floor brings to the library's interior column", () => {
    const {framing, result} = at(seed("branch-library"));
    const levels = columnLevels(framing, "interior column");
    const {adds} = takedown({position: "interior column", levels, columnPlf: 0}).storeys.at(-1) as ReturnType<typeof takedown>["storeys"][number];
    const {member, topping, loads, girder} = result;
    const toppingPsf = member.toppingWeightPlf / member.widthFt + (topping?.extra.averagePsf ?? 0);
    const floorPsf = member.selfWeightPlf / member.widthFt + toppingPsf + loads.superimposedDeadPsf;
    expect(adds.deadKip).toBeCloseTo((floorPsf * 1200 + (girder?.loads.selfPlf ?? 0) * 30) / 1000, 9);
    expect(adds.liveKip).toBeCloseTo(0.15 * 1200, 9);
  });

  test("are bent by one girder's live load inside, by the deck beside the web at the edge", () => {
    const design = seed("branch-library");
    expect(seatOnColumn(design, "interior column").seat).toEqual({from: "face", distanceIn: 4.5, cutForIn: 18, sides: "two"});
    // 14 in web, the load three quarters out on the 8 in ledge: 7 + 6.
    expect(seatOnColumn(design, "edge column").seat).toEqual({from: "centre", distanceIn: 13, sides: "one"});
    expect(seatOnColumn(design, "corner column").seat).toEqual({from: "face", distanceIn: 4.5, cutForIn: 18, sides: "one"});
  });

  test("are all met by beams that are cut alike, so that a narrow column's corbel reaches farther out", () => {
    const design = withValues(seed("branch-library"), {"column.sideIn": 18, "column.seatIn": 4.5});
    for (const {column, corbel, position} of at(design).columns) {
      // The bearing's middle is 9 + 4.5 in off the column line at each of them.
      expect((corbel?.input.armIn ?? 0) + column.sideIn / 2, position).toBeCloseTo(13.5, 12);
      // The beam ends 10 in off the line: the bearing does not reach beyond it.
      expect(13.5 - (corbel?.input.bearingLengthIn ?? 0) / 2, position).toBeGreaterThanOrEqual(10);
      const moments = endMoments(column.takedown.storeys.map(({level}) => level), {...seatOnColumn(design, "interior column").seat, sides: "one"}, 12, column.worst.combination);
      const wider = endMoments(column.takedown.storeys.map(({level}) => level), {...seatOnColumn(design, "interior column").seat, sides: "one"}, 24, column.worst.combination);
      // 13.5 in from the middle of a 12 in column, 12 + 4.5 from that of one wider than the ends are cut for.
      expect((wider[0]?.topKipIn ?? 0) / (moments[0]?.topKipIn ?? 0)).toBeCloseTo(16.5 / 13.5, 12);
    }
  });

  test("fail where the beams' ends are cut for a narrower column, and the side that is named mends it", () => {
    const narrow = withValues(seed("branch-library"), {"column.sideIn": 12});
    const failed = at(narrow).checks.filter(({id, verdict}) => id.endsWith("beam ends") && verdict === "fails");
    expect(failed.map(({id}) => id)).toContain("interior column: beam ends");
    const named = Math.max(...failed.map(({message}) => Number(/to (\d+) in/.exec(message)?.[1])));
    const mended = at(withValues(narrow, {"column.sideIn": named}));
    expect(mended.checks.filter(({id, verdict}) => id.endsWith("beam ends") && verdict !== "ok")).toEqual([]);
  });

  test("stand on the shallowest corbel that holds, and on ground that bears", () => {
    const {columns} = at(seed("branch-library"));
    for (const {corbel, footing, allowablePsf, position} of columns) {
      expect(corbel?.checks.filter((check) => check.verdict === "fails"), position).toEqual([]);
      expect(corbel?.input.bearingLengthIn).toBeLessThanOrEqual(2 * (4.5 - 1));
      expect(footing?.servicePsf).toBeLessThanOrEqual(allowablePsf);
    }
  });

  test("say so where their load is beyond the methods, and throw nothing", () => {
    const layers = Array.from({length: 5}, (_, i) => ({name: `layer ${i}`, loadPsf: 150}));
    const heavy = withValues(seed("records-store"), {"bay.floors": 12, "bay.spanFt": 100, "bay.beamSpanFt": 80, "loads.layers": layers});
    const {columns, checks} = at(heavy);
    expect(columns).toEqual([]);
    expect(checks.map((check) => check.verdict)).toEqual(["out of range", "out of range", "out of range"]);
    const large = at(withValues(seed("records-store"), {"bay.floors": 12, "bay.spanFt": 100, "bay.beamSpanFt": 80}));
    expect(large.checks.some((check) => check.id === "interior column: footing side" && check.verdict === "out of range")).toBe(true);
    for (const check of large.checks) expect(Number.isFinite(check.demand + check.capacity + check.utilisation)).toBe(true);
  });

  test("pass the load of a square foot on, part by part", () => {
    const {framing, columns} = at(seed("branch-library"));
    const [inside] = columns;
    if (!inside) throw new Error("no column");
    const path = loadPath(framing, inside, {floorPsf: 200, factoredPsf: 300});
    // 10 ft of width over half of 40 ft.
    expect(path.memberKip).toBeCloseTo(60, 12);
    expect(path.beamKip).toBe(framing.girder?.reactionKip);
    expect(path.columnKip).toBe(inside.foot.governing.kip);
    expect(path.soilPsf).toBe(inside.footing?.servicePsf);
  });
});

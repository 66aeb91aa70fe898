import {describe, expect, test} from "vitest";
import {corbel as corbelOf, type CorbelInput} from "../../lib/columns/corbel.js";
import {columnResult, columnsResult, loadPath} from "../../lib/columns/columnsResult.js";
import {corbelLeverIn} from "../../lib/columns/columnBending.js";
import type {ColumnPosition} from "../../lib/columns/levels.js";
import type {Framing} from "../../lib/columns/frame.js";
import {withValues} from "../../lib/design/edit.js";
import {evaluate, framingOf} from "../../lib/evaluate.js";
import {catalog, seed} from "../support/designs.js";

const library = seed("branch-library");
const framing = () => framingOf(evaluate(library, catalog));
const columnAt = (position: ColumnPosition, of: Framing = framing()) => columnResult(of, catalog, position);
/** The same beams on other columns, or on other ground. */
const withOther = (values: Parameters<typeof withValues>[1]): Framing => ({...framing(), design: withValues(library, values)});

describe("the columns of a design", () => {
  test("carry a quarter bay at the corner, half at the edge and where girders end, a whole one inside", () => {
    const {columns, unsized, checks} = columnsResult(framing(), catalog);
    const bayFt2 = 40 * 30;
    expect(columns.map(({foot}) => foot.level.tributaryFt2)).toEqual([bayFt2, bayFt2 / 2, bayFt2 / 2, bayFt2 / 4]);
    expect(unsized).toEqual([]);
    expect(checks).toEqual(columns.flatMap((column) => column.checks));
    expect(checks.every(({id}) => /^(interior|edge|girder end|corner) column: /.test(id))).toBe(true);
  });

  test("are all met by beams that are cut alike, so that a narrow column's corbel reaches farther out", () => {
    const {column, corbel} = columnAt("corner column", withOther({"column.sideIn": 20, "column.seatIn": 4.5}));
    // The bearing's middle is 10 + 4.5 in off the column line.
    expect(column.sideIn).toBeLessThan(20);
    expect((corbel?.input.armIn ?? 0) + column.sideIn / 2).toBeCloseTo(14.5, 12);
    // The beam ends 11 in off the line: the bearing does not reach beyond it.
    expect(14.5 - (corbel?.input.bearingLengthIn ?? 0) / 2).toBeGreaterThanOrEqual(11);
    // The corbel's front lies 1.5 in beyond the bearing.
    expect(corbel?.projectionIn).toBeCloseTo((corbel?.input.armIn ?? NaN) + (corbel?.input.bearingLengthIn ?? NaN) / 2 + 1.5, 12);
    // 14.5 in from the middle of a 12 in column, 12 + 4.5 from that of one wider than the ends are cut for.
    expect([12, 24].map((sideIn) => corbelLeverIn(column.bending.seat, sideIn))).toEqual([14.5, 16.5]);
  });

  test("have the seat's own arm where they are wider than the beams are cut for, and a check that says so", () => {
    const wide = columnAt("interior column", withOther({"column.sideIn": 12}));
    expect(wide.column.sideIn).toBeGreaterThan(12);
    expect(wide.corbel?.input.armIn).toBe(4.5);
    const ends = wide.checks.find(({id}) => id === "interior column: beam ends");
    expect(ends).toMatchObject({verdict: "fails", demand: wide.column.sideIn, capacity: 12});
    expect(ends?.message).toContain(`to ${wide.column.sideIn} in`);
    // Of just that side, the beams end clear.
    expect(columnAt("interior column", withOther({"column.sideIn": wide.column.sideIn})).checks.find(({id}) => id === "interior column: beam ends")?.verdict).toBe("ok");
  });

  test("stand on the shallowest corbel that holds, and on ground that bears", () => {
    const {corbel, footing, allowablePsf, foot} = columnAt("interior column");
    expect(corbel?.checks.filter((check) => check.verdict === "fails")).toEqual([]);
    // Depths go by 2 in from 10, the steel 2 in above the bottom; the one before does not hold.
    const input = corbel?.input as CorbelInput;
    expect(input.depthIn % 2).toBe(0);
    const shallower = corbelOf({...input, depthIn: input.depthIn - 2, effectiveDepthIn: input.depthIn - 4});
    expect(input.depthIn === 10 || shallower.checks.some(({id, verdict}) => id !== "corbel bearing" && verdict === "fails")).toBe(true);
    expect(corbel?.input.effectiveDepthIn).toBe((corbel?.input.depthIn ?? NaN) - 2);
    expect(footing?.servicePsf).toBeLessThanOrEqual(allowablePsf);
    expect(footing?.servicePsf).toBeCloseTo((foot.governingService.kip * 1000) / ((footing?.sideIn ?? NaN) / 12) ** 2, 6);
    expect(footing?.factoredPsf).toBeCloseTo((foot.governing.kip * 1000) / ((footing?.sideIn ?? NaN) / 12) ** 2, 6);
  });

  test("get no deeper corbel where what fails is the bearing, and the deepest that is tried where none holds", () => {
    const loaded = (reactionKip: number) => columnAt("interior column", {...framing(), girder: {...framing().girder as NonNullable<Framing["girder"]>, reactionKip}}).corbel;
    // 7 in of seat on 14 in of 5,000 psi bear 0.65 x 0.85 x 5 x 98 = 270.7 kip.
    const crushed = loaded(300);
    expect(crushed?.checks.filter(({verdict}) => verdict === "fails").map(({id}) => id)).toEqual(["corbel bearing"]);
    expect(crushed?.input.bearingLengthIn).toBe(7);
    expect(crushed?.input.depthIn).toBeLessThan(30);
    expect(loaded(1900)?.input.depthIn).toBe(48);
  });

  test("are reported with the checks of column, beams' ends, corbel and footing, each under the column's own name", () => {
    const {checks} = columnAt("corner column");
    expect(checks.map(({id}) => id.replace("corner column: ", ""))).toEqual([
      "column least steel", "column most steel", "column bar spacing", "column buckling", "column magnifier", "column strength", "beam ends",
      "corbel arm", "corbel shear", "corbel bending", "corbel bearing", "footing side", "footing one-way shear", "footing punching", "column bearing",
    ]);
    expect(checks[0]?.label).toBe("Corner column: minimum steel in the column");
  });

  test("stand under the room that loads each story most, and under one whose load is taken in full", () => {
    const {loads, design} = framing();
    const room = (livePsf: number, rule: "yes" | "no" | "in full") => ({...loads.rooms[0] as (typeof loads.rooms)[number], livePsf, rule, partitionPsf: 0});
    const storiesOf = (...rooms: (typeof loads.rooms)[number][]) => columnResult({...framing(), loads: {...loads, rooms}, design: {...design, bay: {...design.bay, floors: 3}}}, catalog, "interior column").column.takedown.stories;
    // 1,200 ft2 a floor and KLL of 4: 0.5 of 100 psf under one floor, 0.4 under three; or 45 psf in full.
    const stories = storiesOf(room(100, "yes"), room(45, "no"));
    expect(stories[1]?.liveKip).toBeCloseTo(0.5 * 100 * 1.2, 9);
    expect(stories[3]?.liveKip).toBeCloseTo(3 * 45 * 1.2, 9);
    expect(storiesOf(room(80, "in full")).at(-1)?.liveKip).toBeCloseTo(3 * 80 * 1.2, 9);
  });

  test("say so where a reaction, a load or a share of steel is beyond the methods, and throw nothing", () => {
    const strong = framing();
    const girder = strong.girder as NonNullable<Framing["girder"]>;
    const pressed = columnAt("interior column", {...strong, girder: {...girder, reactionKip: 2001}});
    expect(pressed.corbel).toBeUndefined();
    expect(pressed.checks.find(({id}) => id === "interior column: corbel shear")).toMatchObject({verdict: "out of range", demand: 2001, capacity: 2000});
    expect(columnAt("interior column", {...strong, girder: {...girder, reactionKip: 2000}}).corbel).toBeDefined();
    // Two floors of 500 psf and the deck on 20,000 ft2 each pass 20,000 kip.
    const vast = strong.loads.elements.map((element) => ({...element, tributary: {...element.tributary, widthFt: 200, heightFt: 100}}));
    const tall = columnAt("interior column", {...strong, loads: {...strong.loads, elements: vast, superimposedDeadPsf: 500}, design: {...library, bay: {...library.bay, floors: 2}}});
    expect(tall.footing).toBeUndefined();
    expect(tall.checks.find(({id}) => id === "interior column: footing side")).toMatchObject({verdict: "out of range", capacity: 20000});
    const crowded = columnsResult({...strong, design: {...library, column: {...library.column, steelPercent: 9}}}, catalog);
    expect(crowded.columns).toEqual([]);
    expect(crowded.unsized.map(({position}) => position)).toEqual(["interior column", "edge column", "girder end column", "corner column"]);
    expect(crowded.checks.map(({id, verdict}) => [id, verdict])).toEqual(crowded.unsized.map(({position}) => [`${position}: first size`, "out of range"]));
    expect(crowded.unsized[0]?.reason).toContain("share of steel");
    // What is no bad input is no reason to leave a column out.
    expect(() => columnsResult({...strong, edge: undefined as never}, catalog)).toThrow(TypeError);
  });

  test("pass the load of a square foot on, part by part", () => {
    const inside = columnAt("interior column");
    const path = loadPath(framing(), inside, {floorPsf: 200, factoredPsf: 300});
    // 10 ft of width over half of 40 ft.
    expect(path.memberKip).toBeCloseTo(60, 12);
    expect(path.beamKip).toBe(framing().girder?.reactionKip);
    expect(path.columnKip).toBe(inside.foot.governing.kip);
    expect(path.soilPsf).toBe(inside.footing?.servicePsf);
    expect(loadPath(framing(), {...inside, position: "edge column"}, {floorPsf: 200, factoredPsf: 300}).beamKip).toBe(framing().edge.demand.reactionKip);
  });
});

describe("a corbel's bearing", () => {
  // 0.65 x 0.85 x 5 ksi = 2.7625 ksi on the beam's width less 1 in at each side. Girder, 16 in wide: 38.675 kip an inch,
  // and 234.6 kip ask 6.07 in; edge beam, 14 in wide: 33.15 kip an inch, and 133.5 kip ask 4.03 in.
  test("is as long as its reaction asks, in half inches", () => {
    expect(columnAt("interior column").corbel?.input).toMatchObject({bearingLengthIn: 6.5, bearingWidthIn: 14});
    expect(columnAt("corner column").corbel?.input).toMatchObject({bearingLengthIn: 4.5, bearingWidthIn: 12});
  });

  test("is no shorter than 4 in, and no longer than stays under the beam", () => {
    const light = framing();
    const corner = columnAt("corner column", {...light, edge: {...light.edge, demand: {...light.edge.demand, reactionKip: 40}}});
    expect(corner.corbel?.input.bearingLengthIn).toBe(4);
    expect(columnAt("interior column", withOther({"column.seatIn": 3})).corbel?.input.bearingLengthIn).toBe(4);
  });
});

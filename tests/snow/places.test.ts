import {describe, expect, test} from "vitest";
import {deepestDrift, deepestSnowPsf} from "../../lib/snow/deepest.js";
import type {Drift} from "../../lib/snow/drift.js";
import {loadAt, snowPlaces} from "../../lib/snow/elementSnow.js";
import {combinedOfRoof, greatestOfRoof, serviceOfRoof} from "../../lib/snow/roofCombinations.js";
import type {RoofLoads} from "../../lib/snow/roofLoads.js";
import {alongStrip, snowSurface, type RoofSide, type SideDrift, type SnowSurface} from "../../lib/snow/surface.js";
import {snowAtPsf} from "./snowAt.js";

const drifted = (side: RoofSide, peakPsf: number, widthFt: number): SideDrift => ({side, drift: {state: "counts", peakPsf, widthFt} as Drift});
/** A roof of 120 by 80 ft with 21 psf everywhere. */
const roof = (drifts: readonly SideDrift[] = [], sizes = {lengthFt: 120, widthFt: 80}) => snowSurface(21, drifts, sizes);
const GRID = {spanFt: 40, beamSpanFt: 30, baysAlong: 4, baysAcross: 2} as Parameters<typeof snowPlaces>[0];

describe("the roof that an element carries", () => {
  const tributary = (element: Parameters<ReturnType<typeof snowPlaces>>[0]) => snowPlaces(GRID, 10, roof())(element).map(({tributary: {xFt, yFt, widthFt, heightFt}}) => [xFt, yFt, widthFt, heightFt]);

  test("is half of a span at its edges, half of two spans inside, all of a tee's own width", () => {
    expect(tributary("edge beam")).toEqual([[0, 0, 30, 20], [30, 0, 30, 20], [90, 0, 30, 20], [0, 60, 30, 20], [30, 60, 30, 20], [90, 60, 30, 20]]);
    expect(tributary("interior beam")).toEqual([[0, 20, 30, 40], [30, 20, 30, 40], [90, 20, 30, 40]]);
    expect(tributary("corner column")).toEqual([[0, 0, 15, 20], [105, 0, 15, 20], [0, 60, 15, 20], [105, 60, 15, 20]]);
    expect(tributary("girder end column")).toEqual([[0, 20, 15, 40], [105, 20, 15, 40]]);
    expect(tributary("interior column")).toEqual([[15, 20, 30, 40], [45, 20, 30, 40], [75, 20, 30, 40]]);
    // At both ends of the roof and in its middle.
    expect(tributary("deck member")).toEqual([[0, 0, 10, 40], [55, 0, 10, 40], [110, 0, 10, 40], [0, 40, 10, 40], [55, 40, 10, 40], [110, 40, 10, 40]]);
  });

  test("is that of no beam and no column inside where one row of bays has none", () => {
    const one = snowPlaces({...GRID, baysAcross: 1} as typeof GRID, 10, roof([], {lengthFt: 120, widthFt: 40}));
    for (const element of ["interior beam", "interior column", "girder end column"] as const) expect(one(element)).toEqual([]);
    expect(one("edge beam").map(({tributary: {yFt, heightFt}}) => [yFt, heightFt])).toEqual([[0, 20], [0, 20], [0, 20], [20, 20], [20, 20], [20, 20]]);
  });

  test("is the same seen from the other side: a beam inside under two drifts that meet, and under their mirror image", () => {
    const load = (side: RoofSide) => snowPlaces(GRID, 10, roof([drifted("west", 50, 20), drifted(side, 40, 30)]))("interior beam")[0];
    const [south, north] = [load("south"), load("north")];
    expect(south?.momentPsf).toBeCloseTo(north?.momentPsf ?? NaN, 9);
    expect(south?.shearPsf).toBeCloseTo(north?.shearPsf ?? NaN, 9);
    // Each point of the beam has what both its decks bring: along the south drift's far end 40 x 30^2/(6 x 40 x 40) psf, and what the west drift leaves of it.
    const line = south?.span?.line ?? [];
    expect(line.length).toBeGreaterThan(8);
    expect(line.at(-1)?.load).toBeCloseTo(21 + (40 * 30 ** 2) / (6 * 40 * 40), 9);
    // Straight between the places of the coarser of the two.
    expect(loadAt([{xFt: 0, load: 10}, {xFt: 4, load: 20}, {xFt: 9, load: 0}], 1)).toBe(12.5);
    expect(loadAt([{xFt: 0, load: 10}, {xFt: 4, load: 20}, {xFt: 9, load: 0}], 6.5)).toBe(10);
  });

  test("lies in the drift of a side that reaches what it carries: a beam inside in that of a long side, through its decks", () => {
    const sides = (element: Parameters<ReturnType<typeof snowPlaces>>[0], drift: SideDrift) => snowPlaces(GRID, 10, roof([drift]))(element).map((place) => place.sides.join(" "));
    expect(sides("interior beam", drifted("south", 40, 12))).toEqual(["south", "south", "south"]);
    expect(sides("interior beam", drifted("north", 40, 12))).toEqual(["north", "north", "north"]);
    expect(sides("edge beam", drifted("south", 40, 12))).toEqual(["south", "south", "south", "", "", ""]);
    // What falls to nothing where a bay begins does not reach it.
    expect(sides("edge beam", drifted("west", 40, 30))).toEqual(["west", "", "", "west", "", ""]);
    expect(sides("edge beam", drifted("west", 40, 31))).toEqual(["west", "west", "", "west", "west", ""]);
  });
});

describe("snow along a line", () => {
  /** Mean over a strip across the line by small steps, from the words of the code. */
  const mean = (surface: SnowSurface, axis: "x" | "y", at: number, [from, to]: readonly [number, number]) => {
    const steps = 4000;
    let sum = 0;
    for (let i = 0; i < steps; i++) {
      const across = from + ((to - from) * (i + 0.5)) / steps;
      sum += axis === "y" ? snowAtPsf(surface, across, at) : snowAtPsf(surface, at, across);
    }
    return sum / steps;
  };

  test("is deepest at the side that its drift lies along, whichever of the four that is", () => {
    const ends = (side: RoofSide) => {
      const axis = side === "south" || side === "north" ? "y" : "x";
      const line = alongStrip(roof([drifted(side, 40, 10)]), axis, [0, axis === "y" ? 80 : 120], [50, 60], [1, 1]);
      return [line[0]?.load, line.at(-1)?.load, line.length];
    };
    expect([ends("south"), ends("west")]).toEqual([[61, 21, 3], [61, 21, 3]]);
    expect([ends("north"), ends("east")]).toEqual([[21, expect.closeTo(61, 9), 3], [21, expect.closeTo(61, 9), 3]]);
  });

  test("is taken where it bends, eight times as often where two drifts meet, and not twice at its ends", () => {
    const south = drifted("south", 40, 10);
    const places = (drifts: readonly SideDrift[], fromFt: number) => alongStrip(roof(drifts), "y", [fromFt, 40], [0, 10], [1, 1]).map(({xFt}) => xFt);
    expect([places([south], 0), places([south], 10), places([south], 5)]).toEqual([[0, 10, 40], [10, 40], [5, 10, 40]]);
    expect(alongStrip(roof([south]), "y", [0, 10], [0, 10], [1, 1]).map(({xFt}) => xFt)).toEqual([0, 10]);
    const west = drifted("west", 30, 8);
    expect(places([south, west], 0)).toEqual([0, 1.25, 2.5, 3.75, 5, 6.25, 7.5, 8.75, 10, 40]);
    expect(alongStrip(roof([south, west]), "y", [0, 40], [50, 60], [1, 1])).toHaveLength(3);
  });

  test("is the higher of the drifts that meet, as the mean over a strip sums it up", () => {
    // A roof so short that the drifts of its sides cross, one of them twice as steep, and both pass under that of the long side.
    const short = roof([drifted("west", 40, 15), drifted("east", 30, 24), drifted("south", 50, 20), drifted("north", 20, 18)], {lengthFt: 20, widthFt: 30});
    for (const strip of [[0, 20], [0, 7], [6, 14], [13, 20]] as const) {
      for (const {xFt, load} of alongStrip(short, "y", [0, 30], strip, [1, 1])) expect(load, `at ${xFt}`).toBeCloseTo(mean(short, "y", xFt, strip), 3);
    }
    for (const strip of [[0, 30], [5, 12], [20, 30]] as const) {
      for (const {xFt, load} of alongStrip(short, "x", [0, 20], strip, [1, 1])) expect(load, `at ${xFt}`).toBeCloseTo(mean(short, "x", xFt, strip), 3);
    }
    // Drifts of two sides that fall alike never cross on their way.
    const alike = roof([drifted("west", 40, 20), drifted("south", 40, 20)], {lengthFt: 60, widthFt: 60});
    for (const {xFt, load} of alongStrip(alike, "y", [0, 60], [0, 60], [1, 1])) expect(load).toBeCloseTo(mean(alike, "y", xFt, [0, 60]), 3);
  });
});

test("of all drifts that a roof may have those that count lie on it", () => {
  const far = {side: "south", drift: {state: "too far", peakPsf: 0, widthFt: 0} as Drift} as const;
  const north = drifted("north", 30, 10);
  expect(roof([far, north]).drifts).toEqual([north]);
});

describe("the deepest snow", () => {
  const loads = (drifts: readonly SideDrift[], snow: Partial<RoofLoads["snow"]> = {}) => ({surface: roof(drifts), snow: {flatPsf: 21, minimumPsf: 20, rainOnSnowPsf: 0, ...snow} as RoofLoads["snow"]});

  test("lies in the drift that weighs most at its deepest, the first of equals; nowhere where none counts", () => {
    const [south, north, west] = [drifted("south", 30, 12), drifted("north", 45, 8), drifted("west", 45, 20)];
    expect(deepestDrift(loads([south, north, west]))).toBe(north);
    expect(deepestDrift(loads([west, north, south]))).toBe(west);
    expect(deepestDrift(loads([]))).toBeUndefined();
  });

  test("is drift on the balanced snow, or rain in it, or the minimum, never two of them", () => {
    expect(deepestSnowPsf(loads([drifted("south", 30, 12)]))).toBe(51);
    expect(deepestSnowPsf(loads([drifted("south", 3, 12)], {rainOnSnowPsf: 5}))).toBe(26);
    expect(deepestSnowPsf(loads([], {minimumPsf: 25}))).toBe(25);
    expect(deepestSnowPsf(loads([]))).toBe(21);
  });
});

test("of combinations that come to the same the first is named: dead load alone, where nothing else is there", () => {
  const governs = (S: number) => greatestOfRoof(combinedOfRoof({D: 20, L: 0, Lr: 0, S, R: 0}, serviceOfRoof(false))).combination.name;
  expect([governs(0), governs(1)]).toEqual(["D", "D + S"]);
});

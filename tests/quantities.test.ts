import {describe, expect, test} from "vitest";
import {withValues} from "../lib/design/edit.js";
import {columnsOf, evaluate} from "../lib/evaluate.js";
import {QUANTITIES, type QuantityName} from "../lib/quantities.js";
import {catalog, seed} from "./support/designs.js";

const NAMES = Object.keys(QUANTITIES) as QuantityName[];
/** What a starter tells under each name after some changes. */
function toldOf(id: string, changes: Readonly<Record<string, unknown>> = {}): Record<string, number | undefined> {
  const evaluation = evaluate(withValues(seed(id), changes), catalog);
  const columns = columnsOf(evaluation, catalog);
  return Object.fromEntries(NAMES.map((name) => [name, QUANTITIES[name](evaluation, () => columns)]));
}

/** Told where cars park alone. */
const OF_PARKING: readonly QuantityName[] = ["stalls", "floor per stall, ft2", "clear over cars, in"];

describe("the numbers that several pages tell", () => {
  test("are numbers, of a floor with a topping all but the step between neighbors that it hides", () => {
    const library = toldOf("branch-library");
    for (const name of NAMES) expect(Number.isFinite(library[name]), name).toBe(name !== "joint step, in" && !OF_PARKING.includes(name));
  });

  test("are those of the starter's own dimensions where these are stated", () => {
    expect(toldOf("branch-library")).toMatchObject({
      "span, in": 480, "dead load, psf": 10, "live load, psf": 150, "demand, psf": 160, "pieces": 24,
      "topping least, in": 2, "beam depth, in": 77, "girder depth, in": 47, "girder below deck, in": 13, "floor to floor, in": 180,
      "interior column, in": 20, "corner column, in": 16, "duct flow, cfm": 1600,
    });
  });

  test("are none for a part that the design has not: girder and inner columns under one bay, topping, roof, ducts, glass", () => {
    const one = toldOf("branch-library", {"bay.baysAcross": 1});
    const without = NAMES.filter((name) => one[name] === undefined);
    expect(new Set(without)).toEqual(new Set([
      "joint step, in", "girder depth, in", "girder below deck, in", "girder moment, kip-ft", "girder reaction, kip", "girder twist, kip-ft", "clear under girder, in",
      "interior column, in", "girder end column, in", "interior column foot, kip", "girder end column foot, kip", ...OF_PARKING,
    ]));
    // Cars park on its top level: it has no roof.
    const garage = toldOf("parking-structure");
    expect(NAMES.filter((name) => garage[name] === undefined)).toEqual([
      "topping least, in", "topping greatest, in", "topping average, in", "topping of a bay, yd3", "roof demand, psf", "roof safe load, psf", "roof rise, in", "duct flow, cfm", "duct velocity, ft/min",
    ]);
    const dark = evaluate(withValues(seed("branch-library"), {"edgeBeam.upstandIn": 60, "story.floorToFloorFt": 8}), catalog);
    for (const name of ["daylit, %", "average daylight, %", "least daylight, %"] as const) expect(QUANTITIES[name](dark, () => ({columns: [], unsized: [], checks: []}))).toBeUndefined();
    expect(QUANTITIES["glass, in"](dark, () => ({columns: [], unsized: [], checks: []}))).toBe(0);
  });

  test("of a column are its own: the inner one is the most loaded and the corner the least", () => {
    const library = toldOf("branch-library");
    const feet = (["interior column", "edge column", "girder end column", "corner column"] as const).map((position) => library[`${position} foot, kip`] ?? NaN);
    expect(feet).toEqual([...feet].sort((a, b) => b - a));
    expect(new Set(feet).size).toBe(4);
  });
});

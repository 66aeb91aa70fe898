import {describe, expect, test} from "vitest";
import {columnLevels} from "../../lib/columns/frame.js";
import {levelAdds} from "../../lib/columns/takedown.js";
import {withValues} from "../../lib/design/edit.js";
import {columnsOf, evaluate, framingOf} from "../../lib/evaluate.js";
import type {OpenTopResult} from "../../lib/roof/openTop.js";
import {catalog, seed} from "../support/designs.js";

/**
 * The parking structure with even snow: nothing stands higher, no upstand and no spandrel for the wind to blow against.
 * Ground snow 40 psf in town, the top level cold: pf = 0.7 x 1.0 x 1.2 x 1.0 x 40 = 33.6 psf. Rain 5.2 x 3 = 15.6 psf is
 * less. Cars 40 psf, which a garage does not reduce on one level.
 */
const design = (changes: Readonly<Record<string, unknown>> = {}) => withValues(seed("parking-structure"), {
  "snow.groundPsf": 40, "snow.higherFt": 0, "edgeBeam.upstandIn": 0, "walls.shortSide": "not counted", ...changes,
});
const of = (changes: Readonly<Record<string, unknown>> = {}) => evaluate(design(changes), catalog);
const top = (changes: Readonly<Record<string, unknown>> = {}) => of(changes).openTop as OpenTopResult;

describe("an open top level under cars and snow", () => {
  test("counts both by the combinations in which they act together, by hand", () => {
    const {deck, snow, girder, edgeBeam} = top();
    for (const {loads} of snow.elements) expect(loads).toMatchObject({L: 40, Lr: 0, S: expect.closeTo(33.6, 9) as number, R: expect.closeTo(15.6, 9) as number});
    // 1.6 x 40 + 0.5 x 33.6 = 80.8; 1.6 x 33.6 + 40 = 93.76, the greater, over 1.6: 58.6. In service 0.75 x 73.6 = 55.2 is less.
    expect(deck.livePsf).toBeCloseTo(58.6, 9);
    expect(deck.demandPsf).toBeCloseTo(3 + 58.6, 9);
    const floor = of().deck;
    expect(floor.livePsf).toBe(40);
    // What is factored beyond dead load: 93.76 in place of 64.
    expect(deck.factoredPsf - floor.factoredPsf).toBeCloseTo(93.76 - 64, 9);
    // Girder: 60 ft of it per foot, from both bays; edge beam 30 ft.
    expect(girder?.loads.livePlf).toBeCloseTo(58.6 * 60, 6);
    expect(edgeBeam.loads.livePlf).toBeCloseTo(58.6 * 30, 6);
  });

  test("keeps of it sustained what the cars leave, and none of the snow", () => {
    const {deck} = top();
    expect(deck.criteria.sustainedLiveShare * deck.livePsf).toBeCloseTo(design().criteria.sustainedLiveShare * 40, 9);
  });

  test("goes down the columns from their topmost level", () => {
    const e = of();
    const [first, second] = columnLevels(framingOf(e), "interior column").map(levelAdds);
    // 60 by 36 ft of 33.6 psf, beside 40 psf of cars.
    expect(first).toMatchObject({liveKip: expect.closeTo(86.4, 9) as number, roofKip: expect.closeTo((33.6 * 2160) / 1000, 9) as number});
    expect(second?.roofKip).toBe(0);
    const dry = columnsOf(of({"snow.groundPsf": 0}), catalog).columns.map(({foot}) => foot.governing.kip);
    columnsOf(e, catalog).columns.forEach(({foot}, i) => expect(foot.governing.kip).toBeGreaterThan(dry[i] ?? NaN));
  });

  test("has checks of its own, under its name, where they give other numbers than the floors'", () => {
    const {checks} = top();
    expect(checks.length).toBeGreaterThan(10);
    for (const {id, label} of checks) expect([id.startsWith("top level: "), label.startsWith("Top level: ")]).toEqual([true, true]);
    expect(checks.some(({id}) => id === "top level: ledge projection")).toBe(false);
    const load = (groundPsf: number) => top({"snow.groundPsf": groundPsf}).checks.find(({id}) => id === "top level: deck load");
    // As a live load S counts (1.6 S + 40)/1.6 = S + 25 where it leads: the deck holds as far as S + 28 is safe, S being 0.84 pg.
    const {safe} = top().deck;
    const limitPsf = (safe.safeLoadPsf - 28) / 0.84;
    expect(limitPsf).toBeGreaterThan(40);
    expect(load(Math.floor(limitPsf) - 2)?.verdict).not.toBe("fails");
    expect(load(Math.ceil(limitPsf) + 2)).toMatchObject({verdict: "fails", message: expect.stringMatching(/^The load on this top level .*: a deeper member, more strands or a shorter span\.$/) as string});
  });

  test("is no question where a roof is over it, or no snow is given", () => {
    for (const changes of [{"snow.groundPsf": 0}, {"roof.given": "deck"}, {"column.roofDeadPsf": 20, "column.roofLivePsf": 20}]) {
      const e = of(changes);
      expect(e.openTop).toBeUndefined();
      expect(e.checks.some(({id}) => id.startsWith("top level: "))).toBe(false);
    }
    // Whatever use of a roof is entered, the floor's own stands on it.
    expect(of({"snow.use": "ordinary"}).openTop).toEqual(top());
  });
});

import {describe, expect, test} from "vitest";
import {withValues} from "../../lib/design/edit.js";
import {evaluate} from "../../lib/evaluate.js";
import {wallWeightWorking} from "../../lib/steps/walls.js";
import {catalog, seed} from "../support/designs.js";
import {checkWorking} from "./recomputed.js";

/** The weights of the library's walls, by their symbols. */
function weights(changes: Readonly<Record<string, unknown>>, id = "branch-library") {
  const working = wallWeightWorking(evaluate(withValues(seed(id), {"walls.parapetIn": 0, "walls.glassShare": 0.2, ...changes}), catalog));
  checkWorking(working);
  return {order: working.steps.map(({symbol}) => symbol).join(" "), of: (symbol: string) => working.steps.find((step) => step.symbol === symbol)};
}

describe("the weights of the walls", () => {
  test("of upright panels go to a strip footing: a square foot, the heaviest panel, with windows, the strip", () => {
    const {order, of} = weights({"walls.shortSide": "solid panel", "walls.panelSupport": "footing", "walls.panelThicknessIn": 8});
    expect(order).toBe("w W w_m b_f");
    // 8 in of concrete of 150 pcf; a fifth of windows of 8 psf.
    expect([of("w")?.result, of("w_m")?.result]).toEqual([100, expect.closeTo(0.8 * 100 + 0.2 * 8, 9)]);
    // Wider than the soil asks: 8 in of panel and 6 in on either side, to 3 in.
    expect(of("b_f")?.note).toMatch(/^Made 21 in wide/);
    // Where the soil asks for more than that, the strip is as wide as it asks, to 3 in.
    const soft = weights({"walls.shortSide": "solid panel", "walls.panelSupport": "footing", "walls.panelThicknessIn": 8, "ground.allowablePsf": 1000, "bay.floors": 10}).of("b_f");
    expect(soft?.result).toBeGreaterThan(21);
  });

  test("of lying panels go to the columns, story by story; two wythes weigh with their insulation", () => {
    const {order, of} = weights({"walls.shortSide": "insulated panel", "walls.panelSupport": "columns", "walls.outerWytheIn": 3, "walls.innerWytheIn": 6, "walls.insulationIn": 3});
    expect(order).toBe("w W w_m w_f");
    expect(of("w")?.result).toBeCloseTo((9 * 150 + 3 * 2) / 12, 9);
  });

  test("of cladding count by the square foot, of spandrels by the piece, and a short side that is not counted has none", () => {
    expect(weights({"walls.shortSide": "cladding"}).order).toBe("w_m w_f");
    for (const place of ["between", "outside"]) expect(weights({"walls.shortSide": "spandrel", "walls.spandrelPlace": place}).order).toBe("R");
    expect(weights({"walls.shortSide": "not counted"}).order).toBe("");
  });

  test("of a parapet whose cap weighs otherwise are not told as one of plain concrete", () => {
    expect(weights({"walls.shortSide": "not counted", "walls.parapetIn": 30, "walls.capIn": 3}, "classroom-wing").order).toBe("");
  });

  test("say of a parapet that is built up through the roof's layers why it is higher than it looks", () => {
    const note = (changes: Readonly<Record<string, unknown>>) => weights({"walls.shortSide": "not counted", "walls.parapetIn": 60, "walls.capIn": 0, "roof.given": "deck", "roof.drainage": "bearing", ...changes}, "classroom-wing").of("w_p")?.note;
    expect(note({"roof.upstandIn": 0, "roof.layers": [{name: "Insulation", loadPsf: 1, thicknessIn: 8, rValue: 40}]})).toMatch(/^Layers and fall lift/);
    expect(note({"roof.upstandIn": 30, "roof.layers": []})).toBeUndefined();
  });

  test("of a parapet along the long sides count where it is built on the roof's beams", () => {
    expect(weights({"walls.shortSide": "not counted", "walls.parapetIn": 30, "walls.capIn": 0}, "classroom-wing").order).toBe("w_p");
    expect(weights({"walls.shortSide": "not counted"}, "classroom-wing").order).toBe("");
  });
});

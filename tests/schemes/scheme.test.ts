import {describe, expect, test} from "vitest";
import {columnsOf, evaluate} from "../../lib/evaluate.js";
import {validateDesign} from "../../lib/design/validate.js";
import {briefOf, usualVary} from "../../lib/schemes/brief.js";
import {schemesOf, type Scheme} from "../../lib/schemes/scheme.js";
import {catalog, seeds} from "../support/designs.js";

/** Results as a file would hold them: some hold functions, which no two runs share. */
const numbersOf = (results: unknown): unknown => JSON.parse(JSON.stringify(results));

/** Numbers of a brief's schemes, spread evenly over all of them. */
function spread(count: number, many: number): number[] {
  return Array.from({length: many}, (_, i) => Math.floor(((i * 0.618034 + 0.1) % 1) * count));
}

describe.each(seeds)("schemes from $id", ({design}) => {
  test("have the results of their designs to the last digit, whatever was made before", () => {
    const schemes = schemesOf(briefOf(design, 9.5, usualVary(design)), catalog, {columns: true});
    let made = 0;
    for (const index of spread(schemes.count, 10)) {
      const scheme = schemes.at(index);
      if ("none" in scheme) continue;
      made += 1;
      // As a file would bring it: nothing of the scheme's own results can reach the evaluation.
      const read = validateDesign(structuredClone(scheme.design));
      const floor = evaluate(read, catalog);
      expect(numbersOf(scheme.floor)).toEqual(numbersOf(floor));
      expect(numbersOf(scheme.columns)).toEqual(numbersOf(columnsOf(floor, catalog)));
      expect(scheme.fails.map(({id}) => id)).toEqual([...floor.checks, ...columnsOf(floor, catalog).checks].filter(({verdict}) => verdict === "fails").map(({id}) => id));
    }
    expect(made).toBeGreaterThan(0);
  });

  test("that stand side by side share their parts and are none the worse for it", () => {
    // Every kind of deck, edge and girder on one bay, one to three across: whatever can be shared is.
    const schemes = schemesOf(briefOf(design, 9.5, {...usualVary(design), spansFt: [30], beamSpansFt: [24], baysAcross: [1, 2, 3]}), catalog);
    let made = 0;
    for (let index = 0; index < schemes.count; index++) {
      const scheme = schemes.at(index);
      if ("none" in scheme) continue;
      made += 1;
      expect(numbersOf(scheme.floor)).toEqual(numbersOf(evaluate(validateDesign(structuredClone(scheme.design)), catalog)));
    }
    expect(made).toBeGreaterThan(10);
  });

  test("are the same alone as after others of the same deck", () => {
    // Across are one to three bays, on which hangs what snow and rooms bring to parts that are shared.
    const brief = briefOf(design, 9.5, {...usualVary(design), spansFt: [30], beamSpansFt: [24], baysAcross: [1, 2, 3]});
    const schemes = schemesOf(brief, catalog);
    const said = ({design: of, floor}: Scheme) => ({of, checks: floor.checks.map(({id, demand, capacity}) => ({id, demand, capacity}))});
    let made = 0;
    for (let index = 0; index < schemes.count; index++) {
      const [after, alone] = [schemes.at(index), schemesOf(brief, catalog).at(index)];
      if ("none" in after || "none" in alone) {
        expect(after).toEqual(alone);
        continue;
      }
      made += 1;
      expect(said(after), JSON.stringify(after.choices)).toEqual(said(alone));
    }
    expect(made).toBeGreaterThan(10);
  });

  test("that cannot be made say why", () => {
    const schemes = schemesOf(briefOf(design, 9.5, {...usualVary(design), spansFt: [140]}), catalog);
    const [first] = Array.from({length: schemes.count}, (_, i) => schemes.at(i));
    expect(first && "none" in first ? first.none : "").toMatch(/required|strongest|possible/);
  });
});

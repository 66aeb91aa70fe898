import {expect, test} from "vitest";
import {withValues} from "../../lib/design/edit.js";
import {evaluate} from "../../lib/evaluate.js";
import {briefOf} from "../../lib/schemes/brief.js";
import {roofAsLoads} from "../../lib/schemes/roofRule.js";
import {designRow, schemeRows} from "../../lib/schemes/rows.js";
import {ruleWords} from "../../lib/schemes/ruleWords.js";
import {schemesOf} from "../../lib/schemes/scheme.js";
import {catalog, seed} from "../support/designs.js";

test("a roof of its own counts as loads in schemes: its deck's own weight and its layers, by hand", () => {
  // The library's 10DT26 weighs some 70 psf; its layers are stated, and a taper of 2 pcf lies on it.
  const design = seed("branch-library");
  const {roof} = evaluate(design, catalog);
  if (!roof) throw new Error("no roof");
  const ownPsf = (roof.member.selfWeightPlf + roof.member.toppingWeightPlf) / roof.member.widthFt;
  const layersPsf = roof.design.loads.layers.reduce((sum, {loadPsf}) => sum + loadPsf, 0);
  const {column, roof: given} = roofAsLoads(design, catalog);
  expect(given.given).toBe("loads");
  expect(column.roofDeadPsf % 5).toBe(0);
  expect(column.roofDeadPsf).toBeGreaterThanOrEqual(ownPsf + layersPsf);
  expect(column.roofDeadPsf).toBeLessThan(ownPsf + layersPsf + 5);
  // A roof that is loads already, and no roof at all, stay as they are.
  for (const other of [withValues(design, {"roof.given": "loads"}), seed("parking-structure")]) expect(roofAsLoads(other, catalog)).toBe(other);
});

test("rows say how the roof is counted, and a scheme's words say by what", () => {
  for (const [id, counted, words] of [["branch-library", "loads", /counts as its two loads on the columns, \d+ psf dead and \d+ psf live/], ["parking-structure", "none", /No roof is over the highest floor/]] as const) {
    const design = seed(id);
    const brief = briefOf(design, 9);
    const asked = {columns: false, ownFactors: {}, prices: {}};
    const made = [...schemeRows(catalog, {...asked, brief, order: [1, 2, 3]})].filter(({deck}) => deck !== "");
    expect(made.length).toBeGreaterThan(0);
    for (const row of made) expect(row.roof).toBe(counted);
    // The open design beside them is counted alike, whatever roof it has.
    expect(designRow(catalog, design, asked).roof).toBe(counted);
    const scheme = schemesOf(brief, catalog).at(made[0]?.index ?? 0);
    if ("none" in scheme) throw new Error(scheme.none);
    expect(ruleWords(scheme).frame).toMatch(words);
  }
});

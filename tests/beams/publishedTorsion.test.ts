// Two textbooks: M. N. Hassoun and A. Al-Manaseer, Structural Concrete, 6th ed. (2015), example 15.5; Portland Cement
// Association, Simplified Design of Reinforced Concrete Buildings, 4th ed. (2011), table 3-12.
import {describe, expect, test} from "vitest";
import {TORSION_PHI, crackingTorsion} from "../../lib/beams/torsion.js";
import {torsionOutline} from "../../lib/beams/torsionOutline.js";
import {concrete} from "../../lib/materials/concrete.js";

const normal = concrete("normalweight", 4000);

test("Hassoun and Al-Manaseer, example 15.5: L-section of 14 x 21 in with a flange 6 in thick", () => {
  // The flange counts 21 - 6 = 15 in of its width: Acp = 384 in2, pcp = 100 in, threshold 70 kip-in with phi.
  const outline = torsionOutline({webWidthIn: 14, depthIn: 21, ledges: 1, ledgeProjectionIn: 30, ledgeDepthIn: 6});
  expect(outline).toMatchObject({countedLedgeIn: 15, areaIn2: 384, perimeterIn: 100});
  const {thresholdKipIn, crackingKipIn} = crackingTorsion(outline, normal);
  expect(TORSION_PHI * thresholdKipIn).toBeCloseTo(70, 0);
  expect(TORSION_PHI * crackingKipIn).toBeCloseTo(280, 0);
});

describe("PCA, table 3-12: edge beams with a 12 in web and a flange on one side", () => {
  // The copy lost the flange's thickness; 7 in gives every value back.
  for (const [depthIn, modulusIn3, thresholdKipFt] of [[12, 552, 2.2], [16, 879, 3.5], [20, 1217, 4.8], [24, 1563, 6.2], [28, 1912, 7.6]] as const) {
    test(`${depthIn} in deep`, () => {
      const outline = torsionOutline({webWidthIn: 12, depthIn, ledges: 1, ledgeProjectionIn: 36, ledgeDepthIn: 7});
      expect(Math.abs(outline.modulusIn3 / modulusIn3 - 1)).toBeLessThan(0.002);
      expect(Math.abs((TORSION_PHI * crackingTorsion(outline, normal).thresholdKipIn) / 12 - thresholdKipFt)).toBeLessThan(0.05);
    });
  }
});

import fc from "fast-check";
import {describe, expect, test} from "vitest";
import {crackingTorsion, torsionDesign, type TorsionInput} from "../../lib/beams/torsion.js";
import {torsionOutline} from "../../lib/beams/torsionOutline.js";
import {concrete} from "../../lib/materials/concrete.js";
import {hold, within} from "../properties/arbitrary.js";
import {refused} from "../support/errors.js";

const L = {webWidthIn: 14, depthIn: 74, ledges: 1, ledgeProjectionIn: 8, ledgeDepthIn: 10} as const;
const INPUT: TorsionInput = {
  dimensions: L, concrete: concrete("normalweight", 5000), torsionKipIn: 1238.1, shearKip: 131.2875, effectiveDepthIn: 71.436,
  coverIn: 1.5, stirrupDiameterIn: 0.5,
};
const of = (changes: Partial<TorsionInput> = {}) => torsionDesign({...INPUT, ...changes});

describe("crackingTorsion", () => {
  const outline = () => torsionOutline(L);

  test("is sqrt(f'c) Acp^2/pcp, and four times that", () => {
    // 70.7107 * 6,486.75 = 458,682 lb-in.
    const {thresholdKipIn, crackingKipIn, prestressFactor} = crackingTorsion(outline(), concrete("normalweight", 5000));
    expect(thresholdKipIn).toBeCloseTo(458.682, 3);
    expect(crackingKipIn).toBeCloseTo(4 * 458.682, 2);
    expect(prestressFactor).toBe(1);
  });

  test("grows with prestress and shrinks with lightweight concrete", () => {
    // sqrt(1 + 0.3 / (4 * 0.0774597)) = sqrt(1.968246) = 1.402942.
    expect(crackingTorsion(outline(), concrete("normalweight", 6000), 0.3).prestressFactor).toBeCloseTo(1.402942, 6);
    // 77.4597 * 6,486.75 = 502,462 lb-in; times 1.402942 = 704.925 kip-in; 0.75 of it may be left out.
    expect(crackingTorsion(outline(), concrete("normalweight", 6000), 0.3).thresholdKipIn).toBeCloseTo(704.925, 2);
    expect(of({concrete: concrete("normalweight", 6000), centroidStressKsi: 0.3}).negligibleKipIn).toBeCloseTo(528.694, 2);
    expect(crackingTorsion(outline(), concrete("sand-lightweight", 5000)).thresholdKipIn).toBeCloseTo(0.85 * 458.682, 2);
  });

  test("counts sqrt(f'c) up to 100 psi", () => {
    const at = (strengthPsi: number) => crackingTorsion(outline(), concrete("normalweight", strengthPsi)).thresholdKipIn;
    expect(at(10000)).toBeCloseTo(648.675, 6);
    expect(at(12000)).toBe(at(10000));
    expect(at(9900)).toBeLessThan(at(10000));
  });

  test("refuses tension at the centroid", () => {
    refused(() => crackingTorsion(outline(), concrete("normalweight", 5000), -0.1), {path: "centroidStressKsi"});
  });
});

describe("torsionDesign", () => {
  const made = () => of();

  test("takes the stirrup's center line as the tube", () => {
    // (14 - 2 * 1.5 - 0.5) (74 - 3.5) = 10.5 * 70.5 = 740.25 in2; 2 (10.5 + 70.5) = 162 in; 162 / 8 = 20.25, so 12 in.
    expect(made()).toMatchObject({stirrupAreaIn2: 740.25, stirrupPerimeterIn: 162, strutAngleDeg: 45, greatestSpacingIn: 12});
    // A 12 x 16 web: ph = 2 (8.5 + 12.5) = 42; 42 / 8 = 5.25 in.
    expect(of({dimensions: {...L, ledges: 0, webWidthIn: 12, depthIn: 16}, effectiveDepthIn: 13}).greatestSpacingIn).toBe(5.25);
  });

  test("gives stirrups and lengthwise bars by the space truss", () => {
    // 0.75 * 2 * 0.85 * 740.25 * 60 = 56,629.1; 1,238.1 / 56,629.1 = 0.0218633; times 162 = 3.54186 in2.
    expect(made().torsionLegIn2PerIn).toBeCloseTo(0.0218633, 6);
    expect(made().lengthwiseIn2).toBeCloseTo(3.54186, 4);
    // Shear: 131.2875 / 0.75 = 175.05, less 2 * 0.0707107 * 14 * 71.436 = 141.436: 33.614 / (60 * 71.436) = 0.00784244.
    expect(made().shearLegsIn2PerIn).toBeCloseTo(0.00784244, 6);
    expect(made().stirrupsIn2PerIn).toBeCloseTo(0.00784244 + 2 * 0.0218633, 6);
  });

  test("tilts the struts to 37.5 degrees where most of the steel is prestressed", () => {
    const flat = of({mostlyPrestressed: true});
    // tan 37.5 = 0.767327.
    expect(flat.strutAngleDeg).toBe(37.5);
    expect(flat.torsionLegIn2PerIn).toBeCloseTo(0.767327 * made().torsionLegIn2PerIn, 8);
    expect(flat.lengthwiseIn2).toBeCloseTo(3.54186 / 0.767327, 3);
  });

  test("gives the least steel", () => {
    // 0.75 sqrt(5,000) = 53.03 psi, above 50: 53.03 * 14 / 60,000 = 0.0123744.
    expect(made().leastStirrupsIn2PerIn).toBeCloseTo(0.0123744, 6);
    // At 4,000 psi 0.75 sqrt = 47.4, so 50: 50 * 14 / 60,000.
    expect(of({concrete: concrete("normalweight", 4000)}).leastStirrupsIn2PerIn).toBeCloseTo(700 / 60000, 12);
    // 5 * 70.7107 * 1,116 / 60,000 = 6.57609, less 0.0218633 * 162 = 3.54186: 3.03424.
    expect(made().leastLengthwiseIn2).toBeCloseTo(3.03424, 4);
    // A small twist: 345 / 56,629.1 = 0.00609227: 6.57609 - 0.98695 = 5.58914, more than the truss asks for.
    const small = of({torsionKipIn: 345, shearKip: 0});
    expect(small.leastLengthwiseIn2).toBeCloseTo(5.58914, 4);
    // With flat struts At/s is 0.0046747, so 25 * 14 / 60,000 = 0.00583333 takes its place: 6.57609 - 0.945 = 5.63109.
    expect(of({torsionKipIn: 345, mostlyPrestressed: true}).leastLengthwiseIn2).toBeCloseTo(5.63109, 4);
    expect(small.lengthwiseIn2).toBe(small.leastLengthwiseIn2);
    // 2 * 345 / 56,629.1 = 0.0121845 is below the least.
    expect(small.stirrupsIn2PerIn).toBe(small.leastStirrupsIn2PerIn);
  });

  test("asks for no least bars along the beam where the stirrups' own are more", () => {
    // At/s of 2,900 / 56,629.1 = 0.05121; times 162 = 8.296, above the 6.576 in2 that the section asks for in all.
    expect(of({torsionKipIn: 2900}).leastLengthwiseIn2).toBe(0);
  });

  test("counts light concrete in its shear alone, not in the least steel nor in the struts' strength", () => {
    const light = of({concrete: concrete("sand-lightweight", 5000)});
    expect(light.leastStirrupsIn2PerIn).toBeCloseTo(0.0123744, 6);
    expect(light.leastLengthwiseIn2).toBeCloseTo(3.03424, 4);
    // 0.75 (2 x 0.85 + 8) 70.7107 = 514.42.
    expect(light.greatestStressPsi).toBeCloseTo(514.42, 2);
  });

  test("leaves torsion out below the threshold", () => {
    expect(of({torsionKipIn: made().negligibleKipIn}).negligible).toBe(false);
    // 0.75 * 458.682 = 344.012.
    expect(of({torsionKipIn: 344.01})).toMatchObject({negligible: true, torsionLegIn2PerIn: 0, lengthwiseIn2: 0, leastStirrupsIn2PerIn: 0});
    expect(of({torsionKipIn: 344.02}).negligible).toBe(false);
    expect(of({torsionKipIn: 344.01}).stirrupsIn2PerIn).toBe(made().shearLegsIn2PerIn);
  });

  test("checks the web against shear and torsion together", () => {
    // Shear 131,287.5 / 1,000.104 = 131.274; torsion 1,238,100 * 162 / (1.7 * 740.25^2) = 215.309: 252.17 psi together.
    expect(made().stressPsi).toBeCloseTo(252.17, 2);
    // 0.75 (2 + 8) sqrt(5,000) = 530.33.
    expect(made().greatestStressPsi).toBeCloseTo(530.33, 2);
    expect(made().checks).toMatchObject([{id: "beam shear and torsion", verdict: "ok"}]);
    // 215.309 grows to sqrt(530.33^2 - 131.274^2) = 513.825 at 2,954.66 kip-in.
    expect(of({torsionKipIn: 2954}).checks[0]?.verdict).toBe("near");
    expect(of({torsionKipIn: 2956}).checks[0]?.verdict).toBe("fails");
  });

  test("takes the concrete's shear strength that it is given", () => {
    expect(of({concreteShearKip: 200})).toMatchObject({shearLegsIn2PerIn: 0, greatestStressPsi: expect.closeTo(0.75 * (200000 / 1000.104 + 565.685), 2)});
  });

  test("carries what it was designed for: the truss's own strength is the torsion over phi", () => {
    hold(500, fc.property(within(345, 3000), fc.boolean(), within(0.75, 2), (torsionKipIn, mostlyPrestressed, coverIn) => {
      const {stirrupAreaIn2, stirrupPerimeterIn, torsionLegIn2PerIn, lengthwiseIn2, strutAngleDeg} = of({torsionKipIn, mostlyPrestressed, coverIn});
      const tan = Math.tan((strutAngleDeg * Math.PI) / 180);
      const byStirrupsKipIn = (2 * 0.85 * stirrupAreaIn2 * torsionLegIn2PerIn * 60) / tan;
      const byBarsKipIn = (2 * 0.85 * stirrupAreaIn2 * lengthwiseIn2 * 60 * tan) / stirrupPerimeterIn;
      expect(0.75 * byStirrupsKipIn).toBeCloseTo(torsionKipIn, 6);
      expect(0.75 * byBarsKipIn).toBeGreaterThanOrEqual(torsionKipIn * (1 - 1e-12));
    }));
  });

  test("refuses what cannot be", () => {
    refused(() => of({torsionKipIn: -1}), {path: "torsionKipIn"});
    refused(() => of({dimensions: {...L, depthIn: NaN}}), {path: "depthIn"});
    refused(() => of({shearKip: NaN}), {path: "shearKip"});
    refused(() => of({effectiveDepthIn: 80}), {path: "effectiveDepthIn", allowed: "37 to 74 in"});
    // Two #4 legs and 6.5 in of cover each would meet in a 14 in web.
    refused(() => of({coverIn: 6.5}), {path: "coverIn", allowed: "0.5 to 6 in"});
    refused(() => of({stirrupDiameterIn: 3}), {path: "stirrupDiameterIn"});
    refused(() => of({concreteShearKip: -1}), {path: "concreteShearKip"});
  });
});

import {describe, expect, test} from "vitest";
import {concrete} from "../../lib/materials/concrete.js";
import {barStressKsi} from "../../lib/materials/reinforcement.js";
import {strandStressKsi} from "../../lib/materials/strand.js";
import {compressionZone} from "../../lib/member/compressionZone.js";
import {flexuralStrength, strainAt, strengthReduction, type SteelLayer} from "../../lib/member/flexure.js";
import {shapeOf} from "../../lib/sections/designation.js";
import {invertedTee, rectangularBeam} from "../../lib/sections/prismatic.js";
import {catalog} from "../support/designs.js";
import {refused} from "../support/errors.js";

const zone = () => compressionZone(rectangularBeam("12RB24", {widthIn: 12, depthIn: 24}), concrete("normalweight", 4000));
const bars = (areaIn2: number, depthIn: number): SteelLayer => ({areaIn2, depthIn, strainBefore: 0, stressKsi: barStressKsi});

describe("strengthReduction", () => {
  test("runs from 0.65 at a strain of 0.002 to 0.90 at 0.005", () => {
    for (const [strain, phi] of [[-0.001, 0.65], [0.002, 0.65], [0.0035, 0.775], [0.005, 0.9], [0.03, 0.9]] as const) {
      expect(strengthReduction(strain), String(strain)).toBeCloseTo(phi, 12);
    }
  });
});

describe("flexuralStrength", () => {
  test("of a rectangular beam with yielding bars is the textbook's", () => {
    // 3 in2 at 21.5 in: T = 180, a = 180 / 40.8 = 4.41176, c = 5.19031, Mn = 180 (21.5 - 2.20588) = 3,472.94 kip-in,
    // strain 0.003 (21.5 - 5.19031) / 5.19031 = 0.009427: tension-controlled.
    const strength = flexuralStrength(zone(), [bars(3, 21.5)]);
    expect(strength.neutralAxisIn).toBeCloseTo(5.190311, 6);
    expect(strength.compressionKip).toBeCloseTo(180, 9);
    expect(strength.nominalMomentKipIn).toBeCloseTo(3472.941, 3);
    expect(strength.tensileStrain).toBeCloseTo(0.009427, 6);
    expect(strength.phi).toBe(0.9);
    expect(strength.designMomentKipIn).toBeCloseTo(0.9 * 3472.941, 3);
  });

  test("of a beam whose bars do not yield solves the quadratic", () => {
    // 9 in2 at 21.5 in: 34.68 c = 9 * 29,000 * 0.003 (21.5 - c) / c, c^2 + 22.5779 c - 485.424 = 0, c = 13.46.
    const c = (-22.57785 + Math.sqrt(22.57785 ** 2 + 4 * 485.4239)) / 2;
    const strength = flexuralStrength(zone(), [bars(9, 21.5)]);
    expect(strength.neutralAxisIn).toBeCloseTo(c, 4);
    expect(strength.phi).toBe(0.65);
    expect(strength.nominalMomentKipIn).toBeCloseTo(34.68 * c * (21.5 - 0.425 * c), 1);
  });

  test("takes bars above the neutral axis in compression", () => {
    const strength = flexuralStrength(zone(), [bars(2, 2.5), bars(3, 21.5)]);
    expect(strength.compressionKip).toBeLessThan(180);
    expect(strength.nominalMomentKipIn).toBeGreaterThan(flexuralStrength(zone(), [bars(3, 21.5)]).nominalMomentKipIn);
  });

  test("splits one layer into two at the same depth without a change", () => {
    const whole = flexuralStrength(zone(), [bars(3, 21.5)]);
    const split = flexuralStrength(zone(), [bars(1, 21.5), bars(2, 21.5)]);
    expect(split.nominalMomentKipIn).toBeCloseTo(whole.nominalMomentKipIn, 8);
  });

  test("counts the strain that strands bring along, but not in the net tensile strain", () => {
    const layer: SteelLayer = {areaIn2: 0.918, depthIn: 20, strainBefore: 0.0057, stressKsi: strandStressKsi};
    const strength = flexuralStrength(zone(), [layer]);
    expect(strength.tensileStrain).toBeCloseTo((0.003 * (20 - strength.neutralAxisIn)) / strength.neutralAxisIn, 12);
    expect(strainAt(layer, strength.neutralAxisIn)).toBeCloseTo(strength.tensileStrain + 0.0057, 12);
    expect(strength.compressionKip).toBeCloseTo(0.918 * strandStressKsi(strainAt(layer, strength.neutralAxisIn)), 8);
  });

  test("finds the axis even where it must lie very near either face", () => {
    const little = flexuralStrength(zone(), [bars(0.001, 21.5)]);
    expect(little.neutralAxisIn).toBeCloseTo(0.06 / 34.68, 6);
    const much = flexuralStrength(zone(), [bars(200, 21.5)]);
    expect(much.neutralAxisIn).toBeGreaterThan(18);
    expect(much.nominalMomentKipIn).toBeGreaterThan(0);
  });

  test("of a tee whose block reaches into its stems balances flange and stems, by hand", () => {
    // 22 in2 at 22 in: 1,320 kip. The flange takes 4.25 x 240 = 1,020; stems 11.5 in wide, narrowing by 2/11 in each inch, the
    // other 300 kip: 11.5 y - y^2/11 = 70.588, y = 6.4688 in.
    const tee = compressionZone(shapeOf(catalog, "10DT24"), concrete("normalweight", 5000));
    const {neutralAxisIn, nominalMomentKipIn, compressionKip} = flexuralStrength(tee, [bars(22, 22)]);
    expect(compressionKip).toBeCloseTo(1320, 6);
    expect(neutralAxisIn).toBeCloseTo((2 + 6.4688) / 0.8, 3);
    // Flange 1 in down; stems' force at 2 in and the centroid of their trapezoid, which ends 11.5 - 1.1761 in wide.
    const stemIn = 2 + (6.4688 / 3) * ((11.5 + 2 * 10.3239) / (11.5 + 10.3239));
    expect(nominalMomentKipIn).toBeCloseTo(1020 * 21 + 300 * (22 - stemIn), 0);
  });

  test("of a section that widens below its compressed face finds the axis too", () => {
    // An inverted tee: 6 in of web, 6 in high, on ledges of 18 in. 6 in2 at 21.5 in: 360 kip.
    const wide = compressionZone(invertedTee("18IT24", {webWidthIn: 6, depthIn: 24, ledgeProjectionIn: 6, ledgeDepthIn: 18}), concrete("normalweight", 4000));
    // 3.4 x 6 x 6 = 122.4 kip in the web; the other 237.6 in ledges of 18 in: 3.882 in more. The bars yield: c is less than 12.7 in.
    const {neutralAxisIn, compressionKip} = flexuralStrength(wide, [bars(6, 21.5)]);
    expect(neutralAxisIn).toBeCloseTo((6 + 237.6 / 61.2) / 0.85, 6);
    expect(compressionKip).toBeCloseTo(360, 6);
  });

  test("on a jump of the steel's curve takes the tension that balances, between the two sides of the jump", () => {
    // 40 ksi up to a strain of 0.01 and 60 ksi from there. 3 in2 at 21.5 in: with 60 ksi c = 5.19 in and the strain is too little for
    // it, with 40 ksi c = 3.46 in and it is too much. c = 0.003 x 21.5/0.013 = 4.9615 in, where the concrete has 34.68 kip for each inch.
    const layer: SteelLayer = {areaIn2: 3, depthIn: 21.5, strainBefore: 0, stressKsi: (strain) => (strain < 0.01 ? 40 : 60)};
    const {neutralAxisIn: c, compressionKip, nominalMomentKipIn} = flexuralStrength(zone(), [layer]);
    expect(c).toBeCloseTo(0.0645 / 0.013, 9);
    expect(compressionKip).toBeCloseTo(34.68 * c, 8);
    expect(nominalMomentKipIn).toBeCloseTo(34.68 * c * (21.5 - 0.425 * c), 6);
  });

  test("refuses strands so many that their pull alone crushes the whole section", () => {
    // 0.0057 less 0.003 leaves 78 ksi in each, 1,555 kip; the section bears 979.
    const layer: SteelLayer = {areaIn2: 20, depthIn: 20, strainBefore: 0.0057, stressKsi: strandStressKsi};
    refused(() => flexuralStrength(zone(), [layer]), {path: "layers", value: 1});
  });

  test("refuses a section without steel", () => {
    refused(() => flexuralStrength(zone(), []), {path: "layers", value: 0, allowed: "layers whose tension the concrete can balance"});
    refused(() => flexuralStrength(zone(), [bars(0, 21.5)]), {path: "layers"});
  });
});

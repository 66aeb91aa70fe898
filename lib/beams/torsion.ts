import {requireNumber} from "../check.js";
import {atMost, type Check} from "../checks.js";
import type {Concrete} from "../materials/concrete.js";
import {BAR_YIELD_KSI} from "../materials/reinforcement.js";
import {SHEAR_PHI} from "../member/shear.js";
import {shearRootPsi} from "../materials/shearRoot.js";
import {torsionOutline, type TorsionDimensions, type TorsionOutline} from "./torsionOutline.js";

/** Strength reduction factor for torsion, the same as for shear (ACI 318-19 Table 21.2.1). */
export const TORSION_PHI = SHEAR_PHI;

/** Torsion at which a solid section's behavior changes, kip-in, before any reduction factor. */
export interface CrackingTorsion {
  /** Below phi times this, torsion may be neglected (Tth, ACI 318-19 22.7.4.1). */
  readonly thresholdKipIn: number;
  /** Torsion that cracks the section (Tcr, 22.7.5.1): four times the threshold. */
  readonly crackingKipIn: number;
  /** sqrt(1 + fpc / (4 lambda sqrt f'c)): how much prestress raises both. */
  readonly prestressFactor: number;
}

/**
 * Threshold and cracking torsion of a solid section: lambda sqrt(f'c) Acp^2/pcp and four times as much, times the
 * factor for prestress (ACI 318-19 Tables 22.7.4.1(a) and 22.7.5.1).
 *
 * @param centroidStressKsi - compression at the centroid after losses (fpc), ksi, 0 without prestress
 */
export function crackingTorsion(outline: TorsionOutline, material: Concrete, centroidStressKsi = 0): CrackingTorsion {
  requireNumber(centroidStressKsi, {path: "centroidStressKsi", label: "stress at the centroid", unit: "ksi", min: 0, max: 6});
  const rootKsi = shearRootPsi(material) / 1000;
  const prestressFactor = Math.sqrt(1 + centroidStressKsi / (4 * rootKsi));
  const thresholdKipIn = rootKsi * outline.modulusIn3 * prestressFactor;
  return {thresholdKipIn, crackingKipIn: 4 * thresholdKipIn, prestressFactor};
}

/** What the design of a section for torsion and shear needs. */
export interface TorsionInput {
  readonly dimensions: TorsionDimensions;
  readonly concrete: Concrete;
  /** Factored torsion and shear at the section, kip-in and kip, 0 or more. */
  readonly torsionKipIn: number;
  readonly shearKip: number;
  /** Compressed face to the tension steel, in (with prestress not below 0.8 of the depth, 22.7.7.1.1). */
  readonly effectiveDepthIn: number;
  /** Shear strength of the concrete (Vc), kip; 2 lambda sqrt(f'c) bw d if it is not given (22.5.5.1). */
  readonly concreteShearKip?: number;
  /** Clear cover of the stirrups and their diameter, in. */
  readonly coverIn: number;
  readonly stirrupDiameterIn: number;
  /** Compression at the centroid from prestress (fpc), ksi; 0 if it is not given. */
  readonly centroidStressKsi?: number;
  /** Whether prestress gives at least 40 % of the flexural steel's strength (22.7.6.1.2). */
  readonly mostlyPrestressed?: boolean;
}

/** Closed stirrups and bars along the beam for torsion, with those for shear. */
export interface TorsionDesign {
  readonly outline: TorsionOutline;
  readonly cracking: CrackingTorsion;
  /** phi Tth: below it torsion is left out, kip-in. */
  readonly negligibleKipIn: number;
  readonly negligible: boolean;
  /** Inside the center line of the closed stirrup in the web: area (Aoh), in2, and perimeter (ph), in. */
  readonly stirrupAreaIn2: number;
  readonly stirrupPerimeterIn: number;
  /** Slope of the struts, degrees. */
  readonly strutAngleDeg: number;
  /** One leg of closed stirrup for torsion (At/s), and all legs for shear (Av/s), in2 per inch of beam. */
  readonly torsionLegIn2PerIn: number;
  readonly shearLegsIn2PerIn: number;
  /** All legs together, (Av + 2 At)/s, not below the least, in2 per inch; and that least. */
  readonly stirrupsIn2PerIn: number;
  readonly leastStirrupsIn2PerIn: number;
  /** Bars along the beam, spread around the stirrup (Al), not below the least, in2; and that least. */
  readonly lengthwiseIn2: number;
  readonly leastLengthwiseIn2: number;
  /** Greatest spacing of the closed stirrups, in (9.7.6.3.3); of the bars around them it is 12 in (9.7.5.1). */
  readonly greatestSpacingIn: number;
  /** Shear stress of shear and torsion together, and the most that the section may see, psi (22.7.7.1). */
  readonly stressPsi: number;
  readonly greatestStressPsi: number;
  readonly checks: readonly Check[];
}

/**
 * Closed stirrups and lengthwise bars of Grade 60 for torsion together with shear in a solid section (ACI 318-19
 * 22.7.6, 22.7.7, 9.5.4.3, 9.6.4, 9.7.6.3.3). Closed stirrups stand in the web; a ledge's own ties are not counted.
 * A beam that a ledge twists cannot be in equilibrium without its torsion, so it is not reduced after cracking (22.7.3.1).
 *
 * @throws InputError if a dimension is out of its range or the stirrups do not fit into the web
 */
export function torsionDesign(input: TorsionInput): TorsionDesign {
  const {
    outline, cracking, negligibleKipIn, negligible, stirrupAreaIn2, stirrupPerimeterIn, strutAngleDeg, countedKipIn, torsionLegIn2PerIn, lengthwiseIn2, leastLengthwiseIn2,
  } = torsionSteel(input);
  const {concrete, shearKip, effectiveDepthIn} = checked(input);
  const {webWidthIn} = input.dimensions;

  const rootPsi = shearRootPsi(concrete);
  const webIn2 = webWidthIn * effectiveDepthIn;
  const concreteShearKip = input.concreteShearKip ?? (2 * rootPsi * webIn2) / 1000;
  const shearLegsIn2PerIn = Math.max(0, shearKip / TORSION_PHI - concreteShearKip) / (BAR_YIELD_KSI * effectiveDepthIn);
  // The minimum steel rests on sqrt(f'c) without lambda.
  const plainRootPsi = rootPsi / concrete.lambda;
  const leastStirrupsIn2PerIn = negligible ? 0 : (Math.max(0.75 * plainRootPsi, 50) * webWidthIn) / (1000 * BAR_YIELD_KSI);

  const shearPsi = (1000 * shearKip) / webIn2;
  const torsionPsi = (1000 * countedKipIn * stirrupPerimeterIn) / (1.7 * stirrupAreaIn2 ** 2);
  const stressPsi = Math.hypot(shearPsi, torsionPsi);
  const greatestStressPsi = TORSION_PHI * ((1000 * concreteShearKip) / webIn2 + 8 * plainRootPsi);
  // Field by field, as all that is made by the thousand.
  return {
    outline, cracking, negligibleKipIn, negligible, stirrupAreaIn2, stirrupPerimeterIn, strutAngleDeg,
    torsionLegIn2PerIn, shearLegsIn2PerIn,
    stirrupsIn2PerIn: Math.max(leastStirrupsIn2PerIn, shearLegsIn2PerIn + 2 * torsionLegIn2PerIn),
    leastStirrupsIn2PerIn, lengthwiseIn2, leastLengthwiseIn2,
    greatestSpacingIn: Math.min(stirrupPerimeterIn / 8, 12),
    stressPsi, greatestStressPsi, checks: [sectionCheck(stressPsi, greatestStressPsi)],
  };
}

/** What torsion alone decides: neither shear nor the beam's effective depth has a part in it. */
type TorsionAlone = Omit<TorsionInput, "shearKip" | "effectiveDepthIn" | "concreteShearKip">;

/** Bars along the beam of {@link torsionDesign}, in2, which are known before the depth of its bending steel is. Arguments are taken as checked. */
export function torsionLengthwiseIn2(input: TorsionAlone): number {
  return torsionSteel(input).lengthwiseIn2;
}

function torsionSteel(input: TorsionAlone) {
  const {concrete, torsionKipIn} = input;
  const {webWidthIn, depthIn} = input.dimensions;
  const outline = torsionOutline(input.dimensions);
  const cracking = crackingTorsion(outline, concrete, input.centroidStressKsi);
  const negligibleKipIn = TORSION_PHI * cracking.thresholdKipIn;
  const negligible = torsionKipIn < negligibleKipIn;

  const insetIn = 2 * input.coverIn + input.stirrupDiameterIn;
  const stirrupAreaIn2 = (webWidthIn - insetIn) * (depthIn - insetIn);
  const stirrupPerimeterIn = 2 * (webWidthIn + depthIn - 2 * insetIn);
  const strutAngleDeg = input.mostlyPrestressed ? 37.5 : 45;
  const tan = input.mostlyPrestressed ? Math.tan((37.5 * Math.PI) / 180) : 1;
  const countedKipIn = negligible ? 0 : torsionKipIn;
  // 2 Ao At fyt cot(theta) / s and 2 Ao Al fy tan(theta) / ph, with Ao = 0.85 Aoh (22.7.6.1).
  const tubeKipIn = TORSION_PHI * 2 * 0.85 * stirrupAreaIn2 * BAR_YIELD_KSI;
  const torsionLegIn2PerIn = (countedKipIn * tan) / tubeKipIn;
  const forTorsionIn2 = (countedKipIn * stirrupPerimeterIn) / (tubeKipIn * tan);
  const leastLengthwiseIn2 = negligible ? 0 : leastLengthwise(shearRootPsi(concrete) / concrete.lambda, outline, torsionLegIn2PerIn, webWidthIn, stirrupPerimeterIn);
  return {
    outline, cracking, negligibleKipIn, negligible, stirrupAreaIn2, stirrupPerimeterIn, strutAngleDeg, countedKipIn, torsionLegIn2PerIn,
    lengthwiseIn2: Math.max(leastLengthwiseIn2, forTorsionIn2), leastLengthwiseIn2,
  };
}

/**
 * Minimum bars along the beam, in2: the lesser of 5 sqrt(f'c) Acp/fy less (At/s) ph and the same less (25 bw/fyt) ph, not
 * below 0 (ACI 318-19 9.6.4.3, one yield strength for both).
 */
function leastLengthwise(plainRootPsi: number, outline: TorsionOutline, legIn2PerIn: number, webWidthIn: number, perimeterIn: number): number {
  const yieldPsi = 1000 * BAR_YIELD_KSI;
  const legsIn2PerIn = Math.max(legIn2PerIn, (25 * webWidthIn) / yieldPsi);
  return Math.max(0, (5 * plainRootPsi * outline.areaIn2) / yieldPsi - legsIn2PerIn * perimeterIn);
}

function sectionCheck(stressPsi: number, greatestStressPsi: number): Check {
  return atMost({
    id: "beam shear and torsion", label: "Shear and torsion together, with stirrups", unit: "psi", clause: "ACI 318-19 22.7.7.1",
    holds: "The web is large enough: stirrups and bars can carry shear and torsion together.",
    fails: "The web is too small for shear and torsion together, whatever the stirrups: widen or deepen it.",
  }, stressPsi, greatestStressPsi);
}

function checked(input: TorsionInput): TorsionInput {
  const {dimensions, coverIn, stirrupDiameterIn} = input;
  requireNumber(input.torsionKipIn, {path: "torsionKipIn", label: "torsion", unit: "kip-in", min: 0, max: 1e6});
  requireNumber(input.shearKip, {path: "shearKip", label: "shear", unit: "kip", min: 0, max: 1e5});
  requireNumber(input.effectiveDepthIn, {path: "effectiveDepthIn", label: "effective depth", unit: "in", min: dimensions.depthIn / 2, max: dimensions.depthIn});
  if (input.concreteShearKip !== undefined) {
    requireNumber(input.concreteShearKip, {path: "concreteShearKip", label: "shear strength of the concrete", unit: "kip", min: 0, max: 1e5});
  }
  requireNumber(stirrupDiameterIn, {path: "stirrupDiameterIn", label: "stirrup diameter", unit: "in", min: 0.25, max: 1});
  // Two legs with their cover must leave room for a bar and concrete between them.
  requireNumber(coverIn, {path: "coverIn", label: "cover of the stirrups", unit: "in", min: 0.5, max: Math.min(dimensions.webWidthIn, dimensions.depthIn) / 2 - stirrupDiameterIn - 0.5});
  return input;
}

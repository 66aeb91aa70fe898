import {requireNumber} from "../check.js";
import {atMost, type Check} from "../checks.js";
import {corbelPullKip, corbelSteel, type CorbelRule} from "../beams/corbelSteel.js";
import {concreteBearingKip} from "../materials/bearing.js";

/** A corbel of normalweight concrete, cast in one piece with its column. */
export interface CorbelInput {
  /** Factored reaction Vu, kip. */
  readonly shearKip: number;
  /** Factored tension Nuc from the beam's restraint, kip, not above Vu (16.5.1.1); 0.2 Vu is the minimum, and is assumed where none is given. */
  readonly pullKip?: number;
  /** Column's face to the middle of the reaction av, in. */
  readonly armIn: number;
  /** Overall depth at the column's face h, and to the main steel d, in. */
  readonly depthIn: number;
  readonly effectiveDepthIn: number;
  /** Width bw, in. */
  readonly widthIn: number;
  readonly strengthPsi: number;
  /** Pad under the beam, in: along the beam and across it. */
  readonly bearingLengthIn: number;
  readonly bearingWidthIn: number;
}

/** The first check of a corbel. */
export interface CorbelResult {
  readonly pullKip: number;
  /** av / d. */
  readonly armRatio: number;
  /** Moment at the face: Vu av + Nuc (h - d), kip-in. */
  readonly momentKipIn: number;
  /** Design shear strength of the section itself, whatever its steel, kip. */
  readonly sectionShearKip: number;
  /** Steel for shear friction, for bending, and for the tension, in2. */
  readonly frictionSteelIn2: number;
  readonly bendingSteelIn2: number;
  readonly pullSteelIn2: number;
  /** Main steel at the top, the greatest of three rules, and which one governs. */
  readonly mainSteelIn2: number;
  readonly mainSteelRule: CorbelRule;
  /** Closed stirrups below the main steel, over two thirds of d, in2. */
  readonly stirrupSteelIn2: number;
  readonly checks: readonly Check[];
}

/**
 * First check of a corbel (ACI 318-19 16.5): section for shear, steel for shear friction, bending and tension, minimum steel,
 * stirrups, bearing. The anchorage of the main steel at the corbel's front, its depth there (half of d at least,
 * 16.5.2.2) and the joint with the column are left to the detailed design.
 *
 * @throws InputError for impossible loads or sizes, such as d not less than h
 */
export function corbel(input: CorbelInput): CorbelResult {
  const {shearKip, armIn, depthIn, effectiveDepthIn, widthIn, strengthPsi} = input;
  const within = (key: keyof CorbelInput, label: string, unit: string, min: number, max: number) =>
    requireNumber(input[key], {path: key, label, unit, min, max});
  within("shearKip", "reaction on the corbel", "kip", 0, 2000);
  within("armIn", "arm of the reaction", "in", 0, 48);
  within("depthIn", "depth of the corbel", "in", 6, 72);
  within("effectiveDepthIn", "depth to the corbel's steel", "in", 3, depthIn - 1);
  within("widthIn", "width of the corbel", "in", 6, 72);
  within("strengthPsi", "concrete strength", "psi", 3000, 12000);
  within("bearingLengthIn", "length of the bearing", "in", 1, 36);
  within("bearingWidthIn", "width of the bearing", "in", 1, widthIn);
  const pullKip = corbelPullKip(shearKip, input.pullKip === undefined ? 0 : within("pullKip", "pull on the corbel", "kip", 0, shearKip));
  const momentKipIn = shearKip * armIn + pullKip * (depthIn - effectiveDepthIn);
  const steel = corbelSteel({concrete: {strengthPsi, lambda: 1}, widthIn, effectiveDepthIn, armIn, shearKip, pullKip, momentKipIn});
  return {
    pullKip, armRatio: armIn / effectiveDepthIn, momentKipIn, sectionShearKip: steel.greatestShearKip,
    frictionSteelIn2: steel.frictionIn2, bendingSteelIn2: steel.bendingIn2, pullSteelIn2: steel.pullIn2,
    mainSteelIn2: steel.topIn2, mainSteelRule: steel.rule, stirrupSteelIn2: steel.tiesIn2,
    checks: [
      atMost({
        id: "corbel arm", label: "Corbel, arm over depth", unit: "", clause: "ACI 318-19 16.5.1.1", meetingIsEnough: true,
        holds: "The corbel is short enough for its method.",
        fails: "The corbel is too long for its depth: make it deeper, or bring the beam closer.",
      }, armIn / effectiveDepthIn, 1),
      atMost({
        id: "corbel shear", label: "Corbel in shear", unit: "kip", clause: "ACI 318-19 16.5.2.4",
        holds: "The corbel is large enough for the reaction.",
        fails: "The corbel is too small for the reaction, whatever its steel: stronger concrete in the columns, or less floor on each beam.",
      }, shearKip, steel.greatestShearKip),
      atMost({
        id: "corbel bending", label: "Corbel in bending", unit: "kip-in", clause: "ACI 318-19 16.5.4.5, 22.2",
        holds: "Steel can carry the moment at the column's face.",
        fails: "No steel carries the moment at the column's face: make the corbel deeper.",
      }, momentKipIn, steel.greatestMomentKipIn),
      atMost({
        id: "corbel bearing", label: "Bearing on the corbel", unit: "kip", clause: "ACI 318-19 22.8.3.2",
        holds: "The concrete under the bearing can take the reaction.",
        fails: "The concrete under the beam's bearing would crush: stronger concrete in the columns, a seat farther off the column's face, or a wider beam.",
      }, shearKip, concreteBearingKip(strengthPsi, input.bearingLengthIn * input.bearingWidthIn)),
    ],
  };
}

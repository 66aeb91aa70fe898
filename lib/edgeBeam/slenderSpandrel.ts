import {requireNumber} from "../check.js";
import {atLeast, atMost, type Check} from "../checks.js";
import type {Concrete} from "../materials/concrete.js";
import {BAR_YIELD_KSI} from "../materials/reinforcement.js";
import {SHEAR_PHI} from "../member/shear.js";
import {shearRootPsi} from "../materials/shearRoot.js";

/** Depth over web width from which open reinforcement may replace closed stirrups (ACI 318-19 9.5.4.7; beams of 4.6 and 7.5 were tested). */
export const SLENDER_ASPECT = 4.5;
/** Least web of the beams on which the method rests, in (Lucier and others 2011, Part 1). */
export const SLENDER_WEB_IN = 8;
/** Reduction factor for the web's plate bending: flexure of a lightly reinforced plate (Lucier and others 2011, Part 2; from memory). */
const PLATE_PHI = 0.9;
/**
 * Twist that the concrete of the web may carry, over line length, dw^2 and sqrt(f'c) (Lucier and others 2011, Part 2;
 * from memory). In a thin elastic plate the stress is three times that: 7.2 sqrt(f'c), near the modulus of rupture,
 * which speaks for the reading.
 */
const TWIST_COEFFICIENT = 2.4;

/**
 * A deep, thin edge beam with the load on a ledge along its lower edge: a simple span of normalweight concrete, held
 * against rolling near the top and near the bottom of each end. Others were not tested, and this is not for them.
 */
export interface SlenderSpandrelInput {
  readonly concrete: Concrete;
  readonly webWidthIn: number;
  readonly depthIn: number;
  /** Factored torsion and shear in the end region, kip-in and kip, 0 or more. */
  readonly torsionKipIn: number;
  readonly shearKip: number;
  /** Compressed edge to the tension steel of the beam's own bending, in. */
  readonly effectiveDepthIn: number;
  /** Outer face of the web to the center of the steel along its inner face (dw), in. */
  readonly faceSteelDepthIn: number;
}

/** What the alternative requires of the web's end region, and whether the beam lies within its limits. */
export interface SlenderSpandrel {
  readonly aspect: number;
  /** Whether every limit of use holds; where not, closed stirrups by the general method are needed. */
  readonly applies: boolean;
  /** The limits of use, each as a check. */
  readonly limits: readonly Check[];
  /** Bending of the web about a line at 45 degrees, and twist about its normal, kip-in over the whole line. */
  readonly plateBendingKipIn: number;
  readonly plateTwistKipIn: number;
  /** Steel on the inner face, in2: upright bars within one beam depth of the end, and as much lengthwise over the depth. */
  readonly uprightIn2: number;
  readonly lengthwiseIn2: number;
  /** Upright bars per foot of beam within the end region, in2/ft; those for shear come on top, half of them on each face. */
  readonly uprightIn2PerFt: number;
  /** Length of the end region, in: one depth of the beam; it fades out over the next. */
  readonly endRegionIn: number;
  /** Elastic shear stress that the twist brings to the web's faces, and the most that the concrete may carry, psi. */
  readonly twistStressPsi: number;
  readonly greatestTwistStressPsi: number;
}

/**
 * The alternative to closed stirrups in slender edge beams: the web near its ends is a plate that the ledge's load
 * bends out of its plane, and open reinforcement on its inner face resists that (Lucier, Walter, Rizkalla, Zia and
 * Klein, PCI Journal 2011, Parts 1 and 2; permitted by ACI 318-19 9.5.4.7).
 *
 * A line at 45 degrees through the web's end carries the torsion Tu as bending and twist, each Tu / sqrt 2. Upright and
 * lengthwise bars on the inner face, in equal areas A, have no part in the twist and together resist A fy dw sqrt 2 in bending,
 * so A = Tu / (2 phi fy dw). The twist is left to the concrete: over the line's length h sqrt 2 it makes the elastic
 * stress 3 (Tu / sqrt 2) / (h sqrt 2 dw^2) = 1.5 Tu / (h dw^2). The equilibrium is derived here; phi 0.9 and the limit
 * on twist are from memory.
 *
 * It states demand and limits of use only: it does not replace the authors' guidelines.
 *
 * @throws InputError if a dimension is out of its range, the web is thinner or the concrete lighter than
 * those that were tested, or the steel lies outside the web
 */
export function slenderSpandrel(input: SlenderSpandrelInput): SlenderSpandrel {
  const {webWidthIn, depthIn, torsionKipIn, faceSteelDepthIn} = checked(input);
  const aspect = depthIn / webWidthIn;
  const steelIn2 = torsionKipIn / (2 * PLATE_PHI * BAR_YIELD_KSI * faceSteelDepthIn);
  const twistStressPsi = (1500 * torsionKipIn) / (depthIn * faceSteelDepthIn ** 2);
  const greatestTwistStressPsi = SHEAR_PHI * 3 * TWIST_COEFFICIENT * shearRootPsi(input.concrete);
  const limits = limitsOf(input, aspect, twistStressPsi, greatestTwistStressPsi);
  return {
    aspect, limits, applies: limits.every(({verdict}) => verdict === "ok" || verdict === "near"),
    plateBendingKipIn: torsionKipIn * Math.SQRT1_2,
    plateTwistKipIn: torsionKipIn * Math.SQRT1_2,
    uprightIn2: steelIn2, lengthwiseIn2: steelIn2,
    uprightIn2PerFt: (12 * steelIn2) / depthIn,
    endRegionIn: depthIn, twistStressPsi, greatestTwistStressPsi,
  };
}

function limitsOf(input: SlenderSpandrelInput, aspect: number, twistStressPsi: number, greatestTwistStressPsi: number): Check[] {
  const general = "Design the web with closed stirrups instead.";
  const shearPsi = (1000 * input.shearKip) / (input.webWidthIn * input.effectiveDepthIn);
  return [
    atLeast({
      id: "slender aspect", label: "Depth over web width", unit: "", clause: "ACI 318-19 9.5.4.7", meetingIsEnough: true,
      holds: "The web is slender enough to bend like a plate.",
      fails: `The beam is too stocky: it twists as a whole instead of bending like a plate. ${general}`,
    }, aspect, SLENDER_ASPECT),
    atMost({
      id: "slender twist", label: "Twist of the web at its ends", unit: "psi", clause: "Lucier and others 2011, Part 2 (limit from memory)",
      holds: "The concrete of the web carries the torsion.",
      fails: "The torsion is more than the concrete of the web can carry: widen the web or bring the load closer to it.",
    }, twistStressPsi, greatestTwistStressPsi),
    atMost({
      id: "slender shear", label: "Shear of the web", unit: "psi", clause: "ACI 318-19 22.5.1.2",
      holds: "Stirrups or mesh can carry what the concrete does not.",
      fails: "The web is too small for the shear, whatever the steel: widen or deepen it.",
    }, shearPsi, SHEAR_PHI * 10 * shearRootPsi(input.concrete)),
  ];
}

function checked(input: SlenderSpandrelInput): SlenderSpandrelInput {
  const at = (name: keyof SlenderSpandrelInput, label: string, unit: string, min: number, max: number) =>
    requireNumber(input[name], {path: name, label, unit, min, max});
  at("webWidthIn", "web width", "in", SLENDER_WEB_IN, 60);
  at("depthIn", "depth", "in", 6, 144);
  requireNumber(input.concrete.lambda, {path: "concrete.lambda", label: "lightweight factor of the concrete", unit: "", min: 1, max: 1});
  at("torsionKipIn", "torsion", "kip-in", 0, 1e6);
  at("shearKip", "shear", "kip", 0, 1e5);
  at("effectiveDepthIn", "effective depth", "in", input.depthIn / 2, input.depthIn);
  at("faceSteelDepthIn", "depth to the steel of the inner face", "in", input.webWidthIn / 2, input.webWidthIn - 0.5);
  return input;
}

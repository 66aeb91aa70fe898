import {BAR_YIELD_KSI} from "../materials/reinforcement.js";
import {steelForMomentIn2} from "../beams/rectangularSteel.js";

/** What the minimum bars in the foot of a simple span depend on. */
export interface LeastSteelInput {
  readonly webWidthIn: number;
  /** Width of the tension side, with the ledges there; the web's where there are none. */
  readonly tensionWidthIn: number;
  /** Compressed face to the bars' centroid, in. */
  readonly depthIn: number;
  readonly strengthPsi: number;
  /** Greatest factored moment. */
  readonly momentKipIn: number;
}

/** The minimum area of bars, in2, and the two rules of which the lesser decides. */
export interface LeastSteel {
  readonly areaIn2: number;
  /** What keeps the beam from breaking as it cracks, on this width, in. */
  readonly crackingIn2: number;
  readonly widthIn: number;
  /** What the moment needs; a third more is enough too. Undefined where no area would do. */
  readonly neededIn2: number | undefined;
}

/** Strength reduction factor of a beam whose steel stretches far (ACI 318-19 21.2.2). */
const BENDING_PHI = 0.9;

/**
 * Minimum Grade 60 bars of a simple span: max(3 sqrt(f'c), 200) b d / fy, or a third more than the moment needs, whichever
 * is less (ACI 318-19 9.6.1.2, 9.6.1.3). A ledge at the foot is a flange in tension, and a simple span statically
 * determinate, so b is the lesser of the width with the ledge and twice the web's.
 */
export function leastSteel({webWidthIn, tensionWidthIn, depthIn, strengthPsi, momentKipIn}: LeastSteelInput): LeastSteel {
  const widthIn = Math.min(tensionWidthIn, 2 * webWidthIn);
  const crackingIn2 = (Math.max(3 * Math.sqrt(strengthPsi), 200) / (BAR_YIELD_KSI * 1000)) * widthIn * depthIn;
  const neededIn2 = steelForMomentIn2({momentKipIn, widthIn: webWidthIn, depthIn, strengthPsi, phi: BENDING_PHI});
  return {areaIn2: Math.min(crackingIn2, neededIn2 === undefined ? Infinity : (4 / 3) * neededIn2), crackingIn2, widthIn, neededIn2};
}

import {sag} from "./camber.js";
import type {Member} from "./member.js";
import {IN_PER_FT} from "../units.js";

/** How lively a floor is under a walker. */
export interface Vibration {
  /** First natural frequency, Hz. */
  readonly frequencyHz: number;
  /** Sag of the mass that moves, in. */
  readonly massSagIn: number;
  /** Weight of the strip of floor that moves with a step, lb. */
  readonly movingWeightLb: number;
  /** Greatest acceleration by walking, share of gravity. */
  readonly acceleration: number;
  readonly allowedAcceleration: number;
}

/** Gravity, in/s2. */
const GRAVITY = 386.1;
/** Static stiffness of concrete is exceeded in small quick movements by a fifth (AISC Design Guide 11; from memory: 1.35 for steel decks, 1.2 for concrete). */
const DYNAMIC_STIFFNESS = 1.2;
/** Force of a walker, lb, and the growth of his steps' harmonics with frequency (AISC Design Guide 11, floors; from memory). */
const WALKER = {forceLb: 65, decay: 0.35};
/** Greatest acceleration in quiet rooms, share of gravity (AISC Design Guide 11, offices and dwellings; from memory). */
const ALLOWED_ACCELERATION = 0.005;
/** Live load that is there on a working day, psf, of an occupied floor (AISC Design Guide 11; from memory). */
export const DAILY_LIVE_PSF = 8;
/** Width of the strip that moves, over the span, for joined double tees and for planks (trade handbook; from memory). */
const STRIP_WIDTH = {"double tee": 0.6, "hollow core": 1.0, "flat slab": 1.0};

/**
 * First natural frequency of a simple span, 0.18 sqrt(g / sag), and the acceleration of a walker on it,
 * P exp(-0.35 f) / (damping W) (AISC Design Guide 11, Murray and others; constants from memory).
 *
 * @param massPlf - weight that is there every day, per foot of member, besides member and topping
 * @param damping - share of critical: 0.02 bare, 0.03 furnished, 0.05 with full-height walls
 */
export function vibration(member: Member, spanFt: number, massPlf: number, damping = 0.03): Vibration {
  const weightPlf = member.selfWeightPlf + member.toppingWeightPlf + massPlf;
  const massSagIn = sag(weightPlf, spanFt * IN_PER_FT, DYNAMIC_STIFFNESS * member.modulusKsi, member.full.inertiaIn4);
  const frequencyHz = 0.18 * Math.sqrt(GRAVITY / massSagIn);
  const stripFt = STRIP_WIDTH[member.shape.family as keyof typeof STRIP_WIDTH] * spanFt;
  const movingWeightLb = (weightPlf / member.widthFt) * stripFt * spanFt;
  return {
    frequencyHz, massSagIn, movingWeightLb,
    acceleration: (WALKER.forceLb * Math.exp(-WALKER.decay * frequencyHz)) / (damping * movingWeightLb),
    allowedAcceleration: ALLOWED_ACCELERATION,
  };
}

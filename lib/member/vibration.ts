import {sag} from "./camber.js";
import type {WalkingUse} from "../design/design.js";
import type {DeckFamily} from "../sections/shape.js";
import type {Member} from "./member.js";
import {IN_PER_FT} from "../units.js";

/** How a floor vibrates under a walker. */
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
export const GRAVITY = 386.1;
/** Static stiffness of concrete is exceeded in small quick movements by a fifth (AISC Design Guide 11, 1997, ch. 3, 1.35 for steel decks, and PCI Design Handbook, 7th ed., ch. 12, 1.2 for concrete; from memory). */
export const DYNAMIC_STIFFNESS = 1.2;
/** How the harmonics of a walker's steps fade with frequency, per Hz (AISC Design Guide 11, 1997, ch. 2; from memory). */
export const FADING_PER_HZ = 0.35;
/**
 * What people tolerate where they sit, shop or pass, and who walks there: 65 lb in quiet rooms by AISC Design Guide 11, 2nd
 * ed., 4.1, the rest by its first edition of 1997, Table 4.1 (from memory).
 */
export const WALKING = {
  /** Offices, homes, reading rooms, classrooms. */
  quiet: {allowedAcceleration: 0.005, walkerLb: 65, damping: 0.03, dailyLivePsf: 8},
  /** Shops and halls where people move about. */
  busy: {allowedAcceleration: 0.015, walkerLb: 65, damping: 0.02, dailyLivePsf: 0},
  /** Outdoor bridges and open decks. */
  outdoor: {allowedAcceleration: 0.05, walkerLb: 92, damping: 0.01, dailyLivePsf: 0},
} as const satisfies Record<WalkingUse, object>;
/** Frequency below which a floor can be set swinging by one person alone, Hz (AISC Design Guide 11, 2nd ed., 4.1). */
export const LEAST_FREQUENCY_HZ = 3;
/** Width of the strip that moves, over the span, for joined double tees and for planks (PCI Design Handbook, 7th ed., ch. 12; from memory). */
export const STRIP_WIDTH = {"double tee": 0.6, "hollow core": 1.0, "flat slab": 1.0} as const satisfies Readonly<Record<DeckFamily, number>>;

/** First natural frequency of a simple span, Hz, by the sag of the mass that moves: 0.18 sqrt(g / sag) (AISC Design Guide 11, 1997, 2.2; from memory). */
export function frequencyOfSagHz(massSagIn: number): number {
  return 0.18 * Math.sqrt(GRAVITY / massSagIn);
}

/** Weight that swings as people walk, per foot of member, plf: all that is dead, and the live load of an ordinary day. */
export function movingWeightPlf(member: Member, deadPlf: number, use: WalkingUse): number {
  return member.selfWeightPlf + member.toppingWeightPlf + deadPlf + WALKING[use].dailyLivePsf * member.widthFt;
}

/**
 * First natural frequency of a simple span, 0.18 sqrt(g / sag), and the acceleration of a walker on it, P exp(-0.35 f)
 * / (damping W) (AISC Design Guide 11, 1997, 2.2 and Table 4.1; constants from memory save where they say otherwise).
 *
 * The beams that carry the deck are taken as stiff; where they sag as well, the floor's frequency is lower.
 *
 * @param deadPlf - dead load besides member and topping, per foot of member
 */
export function vibration(member: Member, spanFt: number, deadPlf: number, use: WalkingUse): Vibration {
  const {allowedAcceleration, walkerLb, damping} = WALKING[use];
  const weightPlf = movingWeightPlf(member, deadPlf, use);
  const massSagIn = sag(weightPlf, spanFt * IN_PER_FT, DYNAMIC_STIFFNESS * member.modulusKsi, member.full.inertiaIn4);
  const frequencyHz = frequencyOfSagHz(massSagIn);
  const stripFt = STRIP_WIDTH[member.shape.family as DeckFamily] * spanFt;
  const movingWeightLb = (weightPlf / member.widthFt) * stripFt * spanFt;
  return {
    frequencyHz, massSagIn, movingWeightLb,
    acceleration: (walkerLb * Math.exp(-FADING_PER_HZ * frequencyHz)) / (damping * movingWeightLb),
    allowedAcceleration,
  };
}

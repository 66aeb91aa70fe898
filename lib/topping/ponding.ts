import {atMost, type Check} from "../checks.js";
import type {Camber} from "../member/camber.js";
import type {Member} from "../member/member.js";
import {IN_PER_FT, LB_PER_KIP} from "../units.js";

/** Unit weight of water, pcf. */
export const WATER_PCF = 62.4;
/**
 * Flexibility ratio up to which a roof needs no closer look: 0.25 (AISC LRFD Specification, K2, later AISC 360-16
 * Appendix 2, for steel roofs: Cp + 0.9 Cs at most 0.25, here with stiff supports).
 */
export const POND_LIMIT = 0.25;
/** Least fall of a roof toward its drains, in per ft (IBC 2021 1507; common practice). */
export const LEAST_FALL_IN_PER_FT = 0.25;

/**
 * Flexibility of a simple span against what flows into its sag: C = g s L^4/(pi^4 E I), with the unit weight g and the
 * width s from which it loads the member.
 *
 * A sag a sin(pi x/L) filled with a liquid carries the load g s a sin(pi x/L), and that load sags the span by C a
 * sin(pi x/L). The sag grows by C of itself, then by C of that, and so on: in all by 1/(1 - C). From C = 1 on it has
 * no end. With steel's modulus and water this is the ratio 32 S L^4/(10^7 I) of AISC 360 Appendix 2 (L, S in ft).
 */
export function fillRatio(unitWeightPcf: number, widthIn: number, spanFt: number, modulusKsi: number, inertiaIn4: number): number {
  const weightKipIn3 = unitWeightPcf / (LB_PER_KIP * IN_PER_FT ** 3);
  return (weightKipIn3 * widthIn * (spanFt * IN_PER_FT) ** 4) / (Math.PI ** 4 * modulusKsi * inertiaIn4);
}

/** How a roof member stands against standing water. */
export interface Ponding {
  /** Flexibility ratio of {@link fillRatio} for water. */
  readonly ratio: number;
  /** 1/(1 - C); undefined from C = 1 on, where water would pile up without end. */
  readonly amplification: number | undefined;
  /** Sag under all dead load in the long term, in; 0 where the camber remains. */
  readonly sagIn: number;
  /** The same once it has filled with water, in; undefined where it has no end. */
  readonly filledSagIn: number | undefined;
  /**
   * Fall of the whole roof, in per ft, from which the sag leaves no hollow: the slope of the sag's end, 3.2 times the
   * sag over the span for the shape of a uniform load.
   */
  readonly fallToDrainInPerFt: number;
  readonly checks: readonly Check[];
}

/**
 * Screen of a roof's deck member, on a simple span between stiff supports, for ponding: first principles with the
 * limits of common practice. The stiffness is that of days; years of standing water would let it creep.
 *
 * @param fallInPerFt - fall of the roof along the member, in per ft
 */
export function ponding(member: Member, camber: Camber, spanFt: number, fallInPerFt: number): Ponding {
  const ratio = fillRatio(WATER_PCF, member.shape.widthIn, spanFt, member.modulusKsi, member.full.inertiaIn4);
  const amplification = ratio < 1 ? 1 / (1 - ratio) : undefined;
  const sagIn = Math.max(0, -camber.longTermIn);
  const fallToDrainInPerFt = (3.2 * sagIn) / spanFt;
  return {
    ratio, amplification, sagIn, fallToDrainInPerFt,
    filledSagIn: amplification === undefined ? undefined : sagIn * amplification,
    checks: [
      atMost({
        id: "ponding sag", label: "Sag of the roof in the long term", unit: "in", clause: "common practice",
        holds: "The roof keeps its camber, and water runs off it.",
        fails: "The roof sags in the long run, and water stands in the hollow unless the fall empties it: more strands or a deeper member would hold it up.",
      }, sagIn, 0),
      atMost({
        id: "ponding stiffness", label: "Flexibility against standing water", unit: "", clause: "AISC LRFD Specification K2; first principles",
        holds: "Water that gathers bends the roof too little to gather more.",
        fails: "Water that gathers bends the roof so that more gathers: look into ponding, or choose a stiffer member.",
      }, ratio, POND_LIMIT),
      atMost({
        id: "ponding fall", label: "Least fall that the roof needs", unit: "in/ft", clause: "IBC 2021 1507; geometry",
        holds: "The roof falls enough to drain.",
        fails: "The roof falls too little to drain: a quarter inch per foot is the least, and more where it sags.",
        meetingIsEnough: true,
      }, Math.max(LEAST_FALL_IN_PER_FT, fallToDrainInPerFt), fallInPerFt),
    ],
  };
}

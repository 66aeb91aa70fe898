import type {TensionClass} from "../design/design.js";
import type {Member} from "./member.js";

/** Allowed stresses, ksi, all positive; tension and compression as named. Clauses of ACI 318-19. */
export interface Allowables {
  /** At the ends of a simple span right after transfer, 24.5.3.1. */
  readonly transferCompressionEndKsi: number;
  /** Elsewhere right after transfer, 24.5.3.1. */
  readonly transferCompressionKsi: number;
  /** At the ends right after transfer without added steel, 24.5.3.2. */
  readonly transferTensionEndKsi: number;
  /** Elsewhere right after transfer without added steel, 24.5.3.2. */
  readonly transferTensionKsi: number;
  /** Soffit under full service load, 24.5.2.1; class C has none, and this is where class T ends. */
  readonly serviceTensionKsi: number;
  /** Prestress and sustained load, 24.5.4.1. */
  readonly sustainedCompressionKsi: number;
  /** Prestress and total load, 24.5.4.1. */
  readonly totalCompressionKsi: number;
  /** The same two for the topping's concrete; undefined without topping. */
  readonly toppingSustainedKsi: number | undefined;
  readonly toppingTotalKsi: number | undefined;
}

/** sqrt(f'c) coefficients of the greatest tension by class, psi; a class C member lies beyond that of class T. */
export const TENSION_COEFFICIENT: Readonly<Record<TensionClass, number>> = {U: 7.5, T: 12, C: 12};

/** Allowed stresses of a member; lightweight concrete has no factor in this section of the code. */
export function allowables(member: Member, tensionClass: TensionClass): Allowables {
  const fc = member.concrete.strengthPsi;
  const fci = member.releaseStrengthPsi;
  const toppingFc = member.topping?.concrete.strengthPsi;
  return {
    transferCompressionEndKsi: (0.7 * fci) / 1000,
    transferCompressionKsi: (0.6 * fci) / 1000,
    transferTensionEndKsi: (6 * Math.sqrt(fci)) / 1000,
    transferTensionKsi: (3 * Math.sqrt(fci)) / 1000,
    serviceTensionKsi: (TENSION_COEFFICIENT[tensionClass] * Math.sqrt(fc)) / 1000,
    sustainedCompressionKsi: (0.45 * fc) / 1000,
    totalCompressionKsi: (0.6 * fc) / 1000,
    toppingSustainedKsi: toppingFc && (0.45 * toppingFc) / 1000,
    toppingTotalKsi: toppingFc && (0.6 * toppingFc) / 1000,
  };
}

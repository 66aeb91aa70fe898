import {PROPORTIONAL_STRAIN, strandStressKsi, strandStressPowerKsi, strandTailKsi} from "../materials/strand.js";

/** The strand's stress at one strain by three readings, ksi. */
export interface StrandCurvePoint {
  readonly strain: number;
  readonly oursKsi: number;
  /** The handbook's second piece as printed, where it lies below ours; undefined elsewhere. */
  readonly printedKsi: number | undefined;
  readonly powerKsi: number;
}

/** The curve that the kit uses, the printed piece that it bridges, and the power formula, over a range of strains. */
export function strandCurve(fromStrain: number, toStrain: number, points = 121): StrandCurvePoint[] {
  return Array.from({length: points}, (_, i): StrandCurvePoint => {
    const strain = fromStrain + ((toStrain - fromStrain) * i) / (points - 1);
    const oursKsi = strandStressKsi(strain);
    const tailKsi = strandTailKsi(strain);
    return {strain, oursKsi, printedKsi: strain >= PROPORTIONAL_STRAIN && tailKsi < oursKsi ? tailKsi : undefined, powerKsi: strandStressPowerKsi(strain)};
  });
}

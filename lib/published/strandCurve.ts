import {STRAND_STRENGTH_KSI, strandStressKsi, strandStressPowerKsi} from "../materials/strand.js";

/** The strand's stress at one strain by three readings, ksi. */
export interface StrandCurvePoint {
  readonly strain: number;
  readonly oursKsi: number;
  /** The handbook's second piece as printed, where it lies below ours; undefined elsewhere. */
  readonly printedKsi: number | undefined;
  readonly powerKsi: number;
}

/** From this strain on the handbook prints its second piece. */
const SECOND_PIECE_FROM = 0.0085;

/** The curve that the kit uses, the printed piece that it bridges, and the power formula, over a range of strains. */
export function strandCurve(fromStrain: number, toStrain: number, points = 121): StrandCurvePoint[] {
  return Array.from({length: points}, (_, i): StrandCurvePoint => {
    const strain = fromStrain + ((toStrain - fromStrain) * i) / (points - 1);
    const oursKsi = strandStressKsi(strain);
    const printedKsi = strain < SECOND_PIECE_FROM ? undefined : STRAND_STRENGTH_KSI - 0.04 / (strain - 0.007);
    return {strain, oursKsi, printedKsi: printedKsi !== undefined && printedKsi < oursKsi ? printedKsi : undefined, powerKsi: strandStressPowerKsi(strain)};
  });
}

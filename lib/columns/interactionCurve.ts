import {COMPRESSION_CONTROLLED_STRAIN, TENSION_CONTROLLED_STRAIN} from "../member/flexure.js";
import {
  axialCapKip, BAR_YIELD_STRAIN, capacityAlong, columnState, fullCompressionIn, neutralAxisAtIn, pureTensionKip, squashLoadKip,
  type AxialMoment, type ColumnState,
} from "./interaction.js";
import type {ColumnSection} from "./section.js";

/** The interaction of axial load and moment, for charts: nominal and design, with the places that have names. */
export interface InteractionCurve {
  /** From pure tension to the squash load; every named place is one of the points. */
  readonly nominal: readonly ColumnState[];
  /** The same times phi, cut off level by the cap on axial load; it ends on the axis. */
  readonly design: readonly AxialMoment[];
  readonly squashKip: number;
  readonly capKip: number;
  /** Nominal strength in pure tension, kip, positive. */
  readonly tensionKip: number;
  /** Strength in bending without axial load. */
  readonly pureBending: ColumnState;
  /** Farthest bars just yield as the concrete crushes. */
  readonly balanced: ColumnState;
  /** From here on, towards tension, phi is 0.90; below the compression-controlled strain it is 0.65. */
  readonly tensionControlled: ColumnState;
  readonly compressionControlled: ColumnState;
  /** Where the cap on axial load meets the curve. */
  readonly cap: ColumnState;
}

/**
 * The whole interaction curve of a column section (ACI 318-19 22.2, 22.4, 21.2.2).
 *
 * @param places - points between pure tension and squash load, besides those with names
 */
export function interactionCurve(section: ColumnSection, places = 60): InteractionCurve {
  const full = fullCompressionIn(section);
  const at = (strain: number) => columnState(section, neutralAxisAtIn(section, strain));
  const pureBending = capacityAlong(section, {axialKip: 0, momentKipIn: 1}).state;
  const balanced = at(BAR_YIELD_STRAIN);
  const tensionControlled = at(TENSION_CONTROLLED_STRAIN);
  const compressionControlled = at(COMPRESSION_CONTROLLED_STRAIN);
  const capKip = axialCapKip(section);
  const cap = stateAtDesignAxial(section, capKip, compressionControlled.neutralAxisIn, full);
  // Closer together where the axis is shallow: there a small change turns the curve most.
  const between = Array.from({length: places + 1}, (_, i) => columnState(section, full * (i / places) ** 1.6));
  const nominal = [...between, pureBending, balanced, tensionControlled, compressionControlled, cap]
    .sort((a, b) => a.neutralAxisIn - b.neutralAxisIn);
  const design = nominal.filter((state) => state.neutralAxisIn <= cap.neutralAxisIn).map((state) => state.design);
  return {
    nominal, design: [...design, {axialKip: capKip, momentKipIn: 0}], squashKip: squashLoadKip(section), capKip,
    tensionKip: pureTensionKip(section), pureBending, balanced, tensionControlled, compressionControlled, cap,
  };
}

/** The state whose design axial load is the given one, between two depths of the neutral axis where it only grows. */
function stateAtDesignAxial(section: ColumnSection, axialKip: number, lowIn: number, highIn: number): ColumnState {
  let low = lowIn;
  let high = highIn;
  while (high - low > 1e-12 * highIn) {
    const middle = (low + high) / 2;
    if (columnState(section, middle).design.axialKip < axialKip) low = middle;
    else high = middle;
  }
  return columnState(section, (low + high) / 2);
}

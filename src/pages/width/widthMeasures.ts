import type {MeasureKey} from "../../lib/schemes/measures/schemeMeasures.js";
import {valueOf, type SchemeRow} from "../../lib/schemes/schemeRow.js";
import {LEAST_WIDTH_PX} from "../../components/charts/marks.js";

/** The guess that the page asks for, which its charts and sentences would tell. */
export const QUESTION = "goodAcross60";
/** Spans that are tried, ft. */
export const SPANS_FT = {from: 20, to: 100, by: 1} as const;
/** The frame that all charts share, px. */
export const FRAME = {left: 44, right: 14} as const;
/** Ends of the axis, ft: a foot beyond the spans, so that marks at the ends are whole. */
export const AXIS_FT = [SPANS_FT.from - 1, SPANS_FT.to + 1] as const;

/** One of the aligned charts. */
export interface WidthMeasure {
  readonly key: MeasureKey;
  readonly title: string;
  /** Its unit, where it has one that readers of other units do not share. */
  readonly unit?: string;
  readonly fromZero: boolean;
  readonly top?: number;
}

export const WIDTH_MEASURES: readonly WidthMeasure[] = [
  {key: "deckDepthIn", unit: "in", title: "Deck with topping, in deep", fromZero: true},
  {key: "floorToFloorFt", unit: "ft", title: "Floor-to-floor height for the same ceiling, ft", fromZero: false},
  {key: "goodDaylightPercent", title: "Floor with good daylight, %", fromZero: true, top: 100},
  {key: "wallFt2PerFt2", title: "Wall per floor, ft\u00b2/ft\u00b2", fromZero: true},
  {key: "carbonKgPerFt2", unit: "kgCO\u2082e/ft\u00b2", title: "Embodied carbon, kgCO\u2082e/ft\u00b2", fromZero: true},
  {key: "pieces", title: "Precast pieces of the building", fromZero: true},
  {key: "costPerFt2", unit: "$/ft\u00b2", title: "Cost at your prices, per ft\u00b2", fromZero: true},
  {key: "parkingStalls", title: "Stalls of a level of cars below", fromZero: true},
];

/** The measures that rows have: cost stands among them only where it is known. */
export function knownMeasures(rows: readonly SchemeRow[]): readonly WidthMeasure[] {
  return WIDTH_MEASURES.filter(({key}) => key !== "costPerFt2" || rows.some((row) => valueOf(row, key) !== undefined));
}

/** Pixels of a span along the shared axis. */
export function spanPx(spanFt: number, widthPx: number): number {
  const width = Math.max(LEAST_WIDTH_PX, widthPx);
  return FRAME.left + ((spanFt - AXIS_FT[0]) / (AXIS_FT[1] - AXIS_FT[0])) * (width - FRAME.left - FRAME.right);
}

/** The span at a place along the axis, in whole feet within the range. */
export function spanAt(x: number, widthPx: number): number {
  const width = Math.max(LEAST_WIDTH_PX, widthPx);
  const at = AXIS_FT[0] + ((x - FRAME.left) / (width - FRAME.left - FRAME.right)) * (AXIS_FT[1] - AXIS_FT[0]);
  return Math.min(SPANS_FT.to, Math.max(SPANS_FT.from, Math.round(at)));
}

import {kipFt} from "../units.js";
import {simpleSpanMomentKipIn, simpleSpanShearKip} from "./statics.js";

/** A value at a place along the span, 0 to 1. */
export interface SpanValue {
  readonly share: number;
  readonly value: number;
}

/** Moment, kip-ft, and shear, kip, of a uniform load along a simple span. Shear is positive at the left support. */
export function uniformDiagrams(loadPlf: number, spanFt: number, places = 41): {momentKipFt: SpanValue[]; shearKip: SpanValue[]} {
  const shares = Array.from({length: places}, (_, i) => i / (places - 1));
  const greatestKipFt = kipFt(simpleSpanMomentKipIn(loadPlf, spanFt));
  return {
    momentKipFt: shares.map((share) => ({share, value: 4 * share * (1 - share) * greatestKipFt})),
    shearKip: shares.map((share) => ({share, value: simpleSpanShearKip(loadPlf, spanFt, share * spanFt)})),
  };
}

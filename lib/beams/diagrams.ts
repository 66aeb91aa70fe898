import {kipFt} from "../units.js";
import {simpleSpanMomentKipIn, simpleSpanShearKip} from "./statics.js";
import type {PointLoadDiagrams} from "./stemLoads.js";

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

/** Samples within a stretch between loads, along which a moment bends. */
const SAMPLES = 8;

/**
 * Moment, kip-ft, shear, kip, and torsion, kip-ft, of a beam under point loads, for drawing: two values of one share are a
 * jump at a load.
 */
export function alongPointLoads({stretches}: PointLoadDiagrams): {momentKipFt: SpanValue[]; shearKip: SpanValue[]; torsionKipFt: SpanValue[]} {
  const spanFt = (stretches.at(-1) as PointLoadDiagrams["stretches"][number]).toFt;
  const ends = (from: (stretch: PointLoadDiagrams["stretches"][number]) => number, to: (stretch: PointLoadDiagrams["stretches"][number]) => number) =>
    stretches.flatMap((stretch): SpanValue[] => [{share: stretch.fromFt / spanFt, value: from(stretch)}, {share: stretch.toFt / spanFt, value: to(stretch)}]);
  return {
    shearKip: ends((s) => s.shearFromKip, (s) => s.shearToKip),
    torsionKipFt: ends((s) => kipFt(s.torsionFromKipIn), (s) => kipFt(s.torsionToKipIn)),
    momentKipFt: stretches.flatMap((stretch, i) => Array.from({length: SAMPLES + 1}, (_, k): SpanValue => {
      const part = k / SAMPLES;
      const lengthFt = stretch.toFt - stretch.fromFt;
      const shearKip = stretch.shearFromKip + part * (stretch.shearToKip - stretch.shearFromKip);
      return {
        share: (stretch.fromFt + part * lengthFt) / spanFt,
        value: stretch.momentFromKipFt + ((stretch.shearFromKip + shearKip) / 2) * part * lengthFt,
      };
    }).slice(i === 0 ? 0 : 1)),
  };
}

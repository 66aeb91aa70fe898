import {DEAD_FACTOR, DEAD_ONLY_FACTOR, LIVE_FACTOR} from "../loads/combinations.js";
import {uniformDiagrams, type SpanValue} from "./diagrams.js";
import type {GirderResult} from "./girder.js";
import type {PointLoadDiagrams} from "./stemLoads.js";

/** Points within a stretch between two stems, for the curve of its moment. */
const WITHIN = 4;

/** Factored moment, kip-ft, and shear, kip, along the girder, with each stem at its place; for drawings. */
export function girderDiagrams(girder: GirderResult): {momentKipFt: SpanValue[]; shearKip: SpanValue[]} {
  const {loads: on, spanFt} = girder;
  const {unit} = on.stems;
  if (!unit) return uniformDiagrams(on.factoredPlf, spanFt);
  // The combination that governs with an even load governs here as well: both parts grow alike.
  const deadOnly = DEAD_ONLY_FACTOR * on.deadPlf >= DEAD_FACTOR * on.deadPlf + LIVE_FACTOR * on.livePlf;
  const deckPlf = deadOnly ? DEAD_ONLY_FACTOR * on.deckDeadPlf : DEAD_FACTOR * on.deckDeadPlf + LIVE_FACTOR * on.livePlf;
  return stemDiagrams(unit, deckPlf / 1000, ((deadOnly ? DEAD_ONLY_FACTOR : DEAD_FACTOR) * on.selfPlf) / 1000, spanFt);
}

/** The deck's diagrams by stems, scaled, and those of the even own weight, added up; two points of one place make a step. */
function stemDiagrams(unit: PointLoadDiagrams, deckKlf: number, selfKlf: number, spanFt: number): {momentKipFt: SpanValue[]; shearKip: SpanValue[]} {
  const momentKipFt: SpanValue[] = [];
  const shearKip: SpanValue[] = [];
  for (const stretch of unit.stretches) {
    const lengthFt = stretch.toFt - stretch.fromFt;
    for (let i = 0; i <= WITHIN; i++) {
      const atFt = stretch.fromFt + (i / WITHIN) * lengthFt;
      const share = atFt / spanFt;
      const deckKipFt = stretch.momentFromKipFt + (i / WITHIN) * (stretch.momentToKipFt - stretch.momentFromKipFt);
      momentKipFt.push({share, value: deckKlf * deckKipFt + (selfKlf * atFt * (spanFt - atFt)) / 2});
      shearKip.push({share, value: deckKlf * stretch.shearFromKip + selfKlf * (spanFt / 2 - atFt)});
    }
  }
  return {momentKipFt, shearKip};
}

import {DEAD_FACTOR, DEAD_ONLY_FACTOR, LIVE_FACTOR} from "../loads/combinations.js";
import {LB_PER_KIP} from "../units.js";
import {alongPointLoads, uniformDiagrams, type SpanValue} from "../beams/diagrams.js";
import type {GirderResult} from "./girder.js";
import type {GirderStems} from "./loads.js";
import {pointLoadDiagrams} from "../beams/stemLoads.js";

/** Factored moment, kip-ft, of the girder that bends most, and shear, kip, of that whose end is pressed most, each stem at its place; for drawings. */
export function girderDiagrams({loads: on, spanFt}: GirderResult): {momentKipFt: SpanValue[]; shearKip: SpanValue[]} {
  const {bending, end} = on.stems;
  // Stryker disable next-line LogicalOperator: there are both or neither
  if (!bending || !end) return uniformDiagrams(on.factoredPlf, spanFt);
  // The combination that governs with an even load governs here as well: both parts grow alike.
  // Stryker disable next-line EqualityOperator: where both ask the same, either may be drawn
  const deadOnly = DEAD_ONLY_FACTOR * on.deadPlf >= DEAD_FACTOR * on.deadPlf + LIVE_FACTOR * on.livePlf;
  const deckPlf = deadOnly ? DEAD_ONLY_FACTOR * on.deckDeadPlf : DEAD_FACTOR * on.deckDeadPlf + LIVE_FACTOR * on.livePlf;
  const under = ({points}: GirderStems) => alongPointLoads(pointLoadDiagrams({
    spanFt, points: points.map((point) => ({...point, loadKip: (point.loadKip * deckPlf) / LB_PER_KIP})),
    uniformPlf: (deadOnly ? DEAD_ONLY_FACTOR : DEAD_FACTOR) * on.selfPlf, uniformEccentricityIn: 0,
  }));
  return {momentKipFt: under(bending).momentKipFt, shearKip: under(end).shearKip};
}

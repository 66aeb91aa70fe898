import type {Catalog} from "../catalog.js";
import {withValue} from "../design/edit.js";
import type {Design} from "../design/design.js";
import {SPAN_RANGE_FT} from "../deck/safeLoad.js";
import type {Member} from "../member/member.js";
import {beamCapacity, type BeamCapacity} from "../beams/beamCapacity.js";
import type {BeamCriteria} from "../beams/beamCriteria.js";
import {girderSection} from "./section.js";

/** Safe loads of the girder's section with a number of strands over spans. */
export interface GirderCurve {
  readonly strands: number;
  /** Whether it is the design's own. */
  readonly own: boolean;
  readonly cells: readonly BeamCapacity[];
  /** Span at which it comes down to the required load, between two of the spans looked at, ft; undefined where it lies below everywhere. */
  readonly reachFt: number | undefined;
}

/** Fewer and more strands whose curves stand beside the design's own. */
const STRANDS_BESIDE = [-4, 4] as const;

/**
 * Safe loads of the design's girder over spans, with its own strands and with some fewer and more, where they fit.
 *
 * @param demandPlf - load beyond the girder's own weight whose reach is asked
 */
export function girderCurves(
  design: Design, catalog: Catalog, deck: Member, {criteria, demandPlf}: {readonly criteria: BeamCriteria; readonly demandPlf: number}, spansFt: readonly number[],
): GirderCurve[] {
  const within = spansFt.filter((spanFt) => spanFt >= SPAN_RANGE_FT.min && spanFt <= SPAN_RANGE_FT.max);
  const {depthIn} = deck.compression;
  const {strandsMost, member} = girderSection(design, catalog, depthIn);
  const count = member.layout.count;
  return [0, ...STRANDS_BESIDE].map((more) => count + more).filter((strands) => strands >= 2 && strands <= Math.min(strandsMost, 60)).map((strands) => {
    // Stryker disable next-line ConditionalExpression: it saves making the same girder again
    const trial = strands === count ? member : girderSection(withValue(design, "girder.strands", strands), catalog, depthIn).member;
    const cells = within.map((spanFt) => beamCapacity(trial, spanFt, criteria));
    return {strands, own: strands === count, cells, reachFt: reachFt(cells, demandPlf)};
  });
}

function reachFt(cells: readonly BeamCapacity[], loadPlf: number): number | undefined {
  const last = cells.findLastIndex((cell) => cell.safeLoadPlf >= loadPlf);
  const [at, next] = [cells[last], cells[last + 1]];
  if (!at || !next) return at?.spanFt;
  return at.spanFt + ((at.safeLoadPlf - loadPlf) / (at.safeLoadPlf - next.safeLoadPlf)) * (next.spanFt - at.spanFt);
}

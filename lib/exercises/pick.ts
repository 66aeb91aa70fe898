import type {Catalog} from "../catalog.js";
import {deckMember} from "../deck/deckMember.js";
import {SPAN_RANGE_FT, safeLoad, type SafeLoad} from "../deck/safeLoad.js";
import type {Design} from "../design/design.js";
import {InputError} from "../errors.js";
import type {Member} from "../member/member.js";

/** One of the sections that a reader picks from. */
export interface PickChoice {
  readonly member: Member;
  readonly safe: SafeLoad;
  readonly carries: boolean;
}

/** Four sections, of which the shallowest that carries the load is the answer. */
export interface Pick {
  readonly spanFt: number;
  readonly loadPsf: number;
  /** By depth, the shallowest first. */
  readonly choices: readonly PickChoice[];
  /** Index of the answer. */
  readonly answer: number;
}

const CHOICES = 4;
/** Strands of half an inch, straight: what all plants have. */
const patternOf = (strands: number) => `${strands}8-S`;

/**
 * The shallowest section that carries a load over a span, among four of the catalog's that stand side by side in depth,
 * each with as many straight strands of 1/2 in as it is listed with. How many of the four are too shallow changes with
 * the span, so that the place in the row tells nothing. Undefined where none of the catalog carries it, or all do.
 *
 * @param design - whose topping, concretes and criteria all four have
 */
export function pickSection(design: Design, catalog: Catalog, spanFt: number, loadPsf: number, criteria: Parameters<typeof safeLoad>[2]): Pick | undefined {
  if (spanFt < SPAN_RANGE_FT.min || spanFt > SPAN_RANGE_FT.max) return undefined;
  const tried = catalog.deckMembers.filter(({use}) => use !== "pretopped").flatMap((row): PickChoice[] => {
    try {
      const member = deckMember({...design, deck: {...design.deck, member: row.designation, dimensions: {}, pattern: patternOf(row.mostStrands), strandHeightEndIn: undefined, strandHeightCenterIn: undefined}} as Design, catalog);
      const safe = safeLoad(member, spanFt, criteria);
      return [{member, safe, carries: safe.safeLoadPsf >= loadPsf}];
    } catch (problem) {
      // A member for which so many strands have no room is none to pick from.
      if (problem instanceof InputError) return [];
      throw problem;
    }
  });
  // One of each depth, so that the shallowest is one.
  const byDepth = [...new Map(tried.map((each) => [each.member.shape.depthIn, each])).values()].sort((a, b) => a.member.shape.depthIn - b.member.shape.depthIn);
  const first = byDepth.findIndex(({carries}) => carries);
  if (first < 1 || byDepth.length < CHOICES) return undefined;
  const before = Math.min(first, 1 + (Math.round(spanFt) % (CHOICES - 1)));
  const from = Math.max(0, Math.min(first - before, byDepth.length - CHOICES));
  return {spanFt, loadPsf, choices: byDepth.slice(from, from + CHOICES), answer: first - from};
}

import type {Catalogue} from "../catalogue.js";
import type {Design} from "../design/design.js";
import {InputError} from "../errors.js";
import {makeMember, type Member} from "../member/member.js";
import {usualLayout} from "../prestress/layout.js";
import {parsePattern, type Profile} from "../prestress/pattern.js";
import {makeShape, shapeOf} from "../sections/designation.js";
import type {Shape} from "../sections/shape.js";
import type {Criteria} from "./criteria.js";
import {deckRow, strandOf} from "./deckMember.js";
import type {LimitName} from "./limits.js";
import {longestSpanFt} from "./reach.js";
import {safeLoad, type SafeLoad} from "./safeLoad.js";
import {usualPatterns, type DeckConditions} from "./table.js";

/** A member, a span and a load, of which one is asked to be just enough. */
export interface Taking {
  readonly catalogue: Catalogue;
  /** The member in the catalogue, its shape with any changed dimensions, and its strands. */
  readonly designation: string;
  readonly shape: Shape;
  readonly pattern: string;
  readonly conditions: DeckConditions;
  readonly spanFt: number;
  /** Superimposed dead and live load, psf. */
  readonly loadPsf: number;
  readonly criteria: Criteria;
}

/** What would do, what governs it then, and what it carries. */
export interface LeastStrand {
  readonly pattern: string;
  readonly safe: SafeLoad;
}

export interface LeastDepth {
  /** Where the load is just carried, in. */
  readonly exactIn: number;
  /** The whole inch above it. */
  readonly depthIn: number;
  readonly safe: SafeLoad;
}

export interface GreatestSpan {
  readonly spanFt: number;
  readonly governs: LimitName;
}

/** The question that a design's deck puts. */
export function takingOf(design: Design, catalogue: Catalogue, criteria: Criteria, loadPsf: number): Taking {
  const {deck} = design;
  return {
    catalogue, designation: deck.member, shape: shapeOf(catalogue, deck.member, deck.dimensions), pattern: deck.pattern,
    conditions: {
      concreteKind: deck.concrete, strengthPsi: deck.strengthPsi, releaseStrengthPsi: deck.releaseStrengthPsi, toppingIn: deck.toppingIn,
      toppingStrengthPsi: deck.toppingStrengthPsi, humidityPercent: design.criteria.humidityPercent,
    },
    spanFt: design.bay.spanFt, loadPsf, criteria,
  };
}

/**
 * The fewest strands of the pattern's diameter that carry the load, straight or depressed, in their usual places;
 * undefined where the most that fit do not.
 *
 * Strands are counted up from the fewest, because what they add need not grow all the way: phi falls, and the squeeze
 * of the soffit has its limit.
 */
export function leastStrand(of: Taking, profile: Profile): LeastStrand | undefined {
  const row = deckRow(of.catalogue, of.designation);
  const {sixteenths} = parsePattern(of.pattern);
  for (const pattern of usualPatterns(row, sixteenths).filter((text) => parsePattern(text).profile === profile)) {
    const member = tryMember(of, of.shape, pattern);
    const safe = member && safeLoad(member, of.spanFt, of.criteria);
    if (safe && safe.safeLoadPsf >= of.loadPsf) return {pattern, safe};
  }
  return undefined;
}

/** Deepest section that is tried, in. */
const DEEPEST_IN = 60;
const DEPTH_TOLERANCE_IN = 0.005;

/**
 * The least depth of the section, all its other dimensions and its strands kept, that carries the load; undefined where
 * none up to 60 in, or as deep as its kind is made, does.
 */
export function leastDepth(of: Taking): LeastDepth | undefined {
  const at = (depthIn: number): SafeLoad | undefined => {
    const shape = tryShape(of.shape, depthIn);
    const member = shape && tryMember(of, shape, of.pattern);
    const safe = member && safeLoad(member, of.spanFt, of.criteria);
    return safe && safe.safeLoadPsf >= of.loadPsf ? safe : undefined;
  };
  let high = deepestMade(of.shape);
  if (!at(high)) return undefined;
  let low = 0;
  while (high - low > DEPTH_TOLERANCE_IN) {
    const middle = (low + high) / 2;
    if (at(middle)) high = middle;
    else low = middle;
  }
  // The next whole inch may lie beyond what its kind is made in.
  const depthIn = Math.ceil(high - 2 * DEPTH_TOLERANCE_IN);
  const safe = at(depthIn) ?? (at(high) as SafeLoad);
  return {exactIn: high, depthIn: at(depthIn) ? depthIn : high, safe};
}

/** The longest span over which the member carries the load, and what stops it there. */
export function greatestSpan(member: Member, criteria: Criteria, loadPsf: number): GreatestSpan | undefined {
  const spanFt = longestSpanFt(member, criteria, loadPsf);
  return spanFt === undefined ? undefined : {spanFt, governs: safeLoad(member, spanFt, criteria).governs};
}

function deepestMade(shape: Shape): number {
  let deepest = DEEPEST_IN;
  while (deepest > shape.depthIn && !tryShape(shape, deepest)) deepest -= 1;
  return Math.max(deepest, shape.depthIn);
}

function tryShape(shape: Shape, depthIn: number): Shape | undefined {
  return unless(() => makeShape(shape.family, shape.designation, {...shape.dimensions, depthIn}));
}

function tryMember(of: Taking, shape: Shape, text: string): Member | undefined {
  const row = deckRow(of.catalogue, of.designation);
  return unless(() => {
    const pattern = parsePattern(text);
    return makeMember({...of.conditions, shape, layout: usualLayout(shape, pattern, strandOf(of.catalogue, pattern), row.lowestStrandIn)});
  });
}

/** What cannot be made is no answer; anything else that goes wrong is a fault. */
function unless<T>(work: () => T): T | undefined {
  try {
    return work();
  } catch (problem) {
    if (problem instanceof InputError) return undefined;
    throw problem;
  }
}

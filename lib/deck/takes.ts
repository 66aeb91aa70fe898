import type {Catalog} from "../catalog.js";
import {exceeds} from "../checks.js";
import type {Design} from "../design/design.js";
import {InputError} from "../errors.js";
import {makeMember, type Member} from "../member/member.js";
import {usualLayout} from "../prestress/layout.js";
import {parsePattern, type Profile} from "../prestress/pattern.js";
import {makeShape, shapeOf} from "../sections/designation.js";
import type {Shape} from "../sections/shape.js";
import type {Criteria} from "./criteria.js";
import {failedWorkingGates} from "./gates.js";
import {deckRow, strandOf} from "./deckMember.js";
import {WORKING_GATES, type LimitName} from "./limits.js";
import {safeLoad, type SafeLoad} from "./safeLoad.js";
import {usualPatterns, type DeckConditions} from "./table.js";

/** A member, a span and a load, of which one is asked to be just enough. */
export interface Taking {
  readonly catalog: Catalog;
  /** The member in the catalog, its shape with any changed dimensions, and its strands. */
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
  /** The gate that the last number before it did not pass; else what limits its own load. */
  readonly governs: LimitName;
}

export interface LeastDepth {
  /** Where the load is just carried, in. */
  readonly exactIn: number;
  /** The whole inch above it. */
  readonly depthIn: number;
  readonly safe: SafeLoad;
  /** The gate that a section just shallower would not pass; else what limits its own load. */
  readonly governs: LimitName;
  /** The first deeper whole inch at which it is no longer carried, and what stops it there; undefined where there is none. */
  readonly until: {readonly depthIn: number; readonly governs: LimitName} | undefined;
}

/** The question that a design's deck puts. */
export function takingOf(design: Design, catalog: Catalog, criteria: Criteria, loadPsf: number): Taking {
  const {deck} = design;
  return {
    catalog, designation: deck.member, shape: shapeOf(catalog, deck.member, deck.dimensions), pattern: deck.pattern,
    conditions: {
      concreteKind: deck.concrete, strengthPsi: deck.strengthPsi, releaseStrengthPsi: deck.releaseStrengthPsi, toppingIn: deck.toppingIn,
      toppingStrengthPsi: deck.toppingStrengthPsi, humidityPercent: design.criteria.humidityPercent,
    },
    spanFt: design.bay.spanFt, loadPsf, criteria,
  };
}

/**
 * The fewest strands of the pattern's diameter that carry the load and pass the gates of the search, straight or
 * depressed, in their usual places; undefined where the most that fit do not.
 *
 * Strands are counted up from the fewest, because what they add need not grow all the way: phi falls, and the squeeze
 * of the soffit has its limit.
 */
export function leastStrand(of: Taking, profile: Profile): LeastStrand | undefined {
  const row = deckRow(of.catalog, of.designation);
  const {sixteenths} = parsePattern(of.pattern);
  let before: Held | undefined;
  for (const pattern of usualPatterns(row, sixteenths).filter((text) => parsePattern(text).profile === profile)) {
    const member = tryMember(of, of.shape, pattern);
    const held = member && heldBy(of, member);
    if (held && held.stops === undefined) return {pattern, safe: held.safe, governs: governing(held, before)};
    before = held;
  }
  return undefined;
}

/** Deepest section that is tried, in. */
const DEEPEST_IN = 60;
const DEPTH_TOLERANCE_IN = 0.005;

/**
 * The least depth of the section, all its other dimensions and its strands kept, that carries the load and passes the
 * gates of the search; undefined where no whole inch up to 60 in, or up to what its kind is made in, does.
 *
 * Inch by inch up from the shallowest, because depth need not help all the way: a deep section with few strands could
 * break as it first cracks.
 */
export function leastDepth(of: Taking): LeastDepth | undefined {
  const at = (depthIn: number): Held | undefined => {
    const shape = tryShape(of.shape, depthIn);
    const member = shape && tryMember(of, shape, of.pattern);
    return member && heldBy(of, member);
  };
  const holds = (held: Held | undefined) => held !== undefined && held.stops === undefined;
  const tried = Array.from({length: DEEPEST_IN}, (_, i) => i + 1).map((depthIn) => ({depthIn, held: at(depthIn)}));
  const least = tried.find(({held}) => holds(held));
  if (!least?.held) return undefined;
  let [low, high] = [least.depthIn - 1, least.depthIn];
  // Stryker disable next-line EqualityOperator: halves of an inch never are just the tolerance
  while (high - low > DEPTH_TOLERANCE_IN) {
    const middle = (low + high) / 2;
    if (holds(at(middle))) high = middle;
    else low = middle;
  }
  const [until] = tried.slice(least.depthIn).flatMap(({depthIn, held}) => (held?.stops ? [{depthIn, governs: held.stops}] : []));
  return {
    exactIn: high, depthIn: least.depthIn, safe: least.held.safe, governs: governing(least.held, at(low)),
    until,
  };
}

/** A member's safe load, and what keeps it from being an answer: the limit on the load, or a gate of the search. */
interface Held {
  readonly safe: SafeLoad;
  readonly stops: LimitName | undefined;
}

function governing({safe}: Held, before: Held | undefined): LimitName {
  return before?.stops && WORKING_GATES.includes(before.stops) ? before.stops : safe.governs;
}

function heldBy({spanFt, loadPsf, criteria}: Taking, member: Member): Held {
  const safe = safeLoad(member, spanFt, criteria);
  return {safe, stops: exceeds(loadPsf, safe.safeLoadPsf) ? safe.governs : failedWorkingGates(member, spanFt, criteria)[0]};
}

function tryShape(shape: Shape, depthIn: number): Shape | undefined {
  return unless(() => makeShape(shape.family, shape.designation, {...shape.dimensions, depthIn}));
}

function tryMember(of: Taking, shape: Shape, text: string): Member | undefined {
  const row = deckRow(of.catalog, of.designation);
  return unless(() => {
    const pattern = parsePattern(text);
    return makeMember({...of.conditions, shape, layout: usualLayout(shape, pattern, strandOf(of.catalog, pattern), row.lowestStrandIn)});
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

import type {Catalog} from "../catalog.js";
import type {Check} from "../checks.js";
import type {Design} from "../design/design.js";
import {deckMember} from "../deck/deckMember.js";
import {withValues} from "../design/edit.js";
import {fieldOf} from "../design/fields.js";
import {floorLoads, type FloorLoads} from "../loads/floorLoads.js";
import {withExtraTopping, type Member} from "../member/member.js";
import {girder, type GirderResult} from "./girder.js";

/** The girder of a design, of which one thing is asked to be just enough. */
export interface GirderTaking {
  readonly design: Design;
  readonly catalog: Catalog;
  readonly deck: Member;
  readonly loads: FloorLoads;
  /** How far the girder may hang below the deck before it is in the way of heads or the ceiling, in. */
  readonly mayHangIn: number;
}

/** What would do, and what stops the next step beyond it. */
export interface GirderTake {
  /** The girder's depth, what of it hangs below the deck, its strands, and the span. */
  readonly depthIn: number;
  readonly belowDeckIn: number;
  readonly strands: number;
  readonly spanFt: number;
  /** The first check that fails one step further, in its own words; undefined at the end of the range. */
  readonly stops: string | undefined;
  /** How much deeper it hangs than the story has room for, in; 0 where it hangs clear. A girder deeper still is no better. */
  readonly tooLowIn: number;
  /** Of a longest span, the shorter ones in whole feet between two that hold over which the girder does not. */
  readonly notFt?: readonly number[];
  /** Values of the design that make it so, by path. */
  readonly changes: Readonly<Record<string, number>>;
}

// Stryker disable ArrayDeclaration: it saves trying strands where none helps
/** Checks that no number of strands changes. */
const NO_STRANDS: ReadonlySet<string> = new Set([
  "girder ledge projection", "girder ledge depth", "girder ledge line", "girder ledge shear", "girder ledge bearing", "girder seat tolerance", "girder pad place", "girder pad stress",
]);
// Stryker restore ArrayDeclaration

/** The fewest strands, all else kept, with which no check of the girder fails but where its stems stand; undefined where none do. */
export function leastGirderStrands(of: GirderTaking): GirderTake | undefined {
  let before: GirderResult | undefined;
  const {min, max} = fieldOf("girder.strands");
  // Stryker disable next-line EqualityOperator: no foot has places for the most that the field allows
  for (let strands = min; strands <= max; strands++) {
    const found = at(of, {"girder.strands": strands});
    // Stryker disable next-line EqualityOperator,ConditionalExpression: beyond its places a girder has no more strands, and fails as with all of them
    if (!found || strands > found.strandsMost) return undefined;
    if (carries(found)) return take(of, found, {"girder.strands": strands}, before);
    before = found;
  }
  return undefined;
}

/** Path of the dimension that makes the girder deeper: the ledge of an inverted tee, or the whole of a rectangle. */
function depthPath({girder: {kind}}: Design): "girder.ledgeDepthIn" | "girder.depthIn" {
  return kind === "inverted tee" ? "girder.ledgeDepthIn" : "girder.depthIn";
}

/** The least depth in whole inches, all else kept, with which no check fails but where its stems stand; undefined where none does. */
export function leastGirderDepth(of: GirderTaking): GirderTake | undefined {
  const path = depthPath(of.design);
  const {min, max} = fieldOf(path);
  let before: GirderResult | undefined;
  for (let depthIn = min; depthIn <= max; depthIn++) {
    const found = at(of, {[path]: depthIn});
    if (found && carries(found)) return take(of, found, {[path]: depthIn}, before);
    before = found;
  }
  return undefined;
}

/** The least depth in whole inches with as many strands as it takes, of a kind of girder; undefined where no depth does. */
export function shallowestGirder(of: GirderTaking, kind: Design["girder"]["kind"] = of.design.girder.kind): GirderTake | undefined {
  const within = {...of, design: withValues(of.design, {"girder.kind": kind})};
  const path = depthPath(within.design);
  const {min, max} = fieldOf(path);
  for (let depthIn = min; depthIn <= max; depthIn++) {
    const found = withStrands(within, path, depthIn);
    if (!found) continue;
    // With the strands that it ended with, one inch less.
    const shallower = depthIn > min ? at(within, {[path]: depthIn - 1, "girder.strands": found.strands}) : undefined;
    return {...found, stops: shallower && failing(shallower)};
  }
  return undefined;
}

/**
 * A girder of a depth with the fewest strands that do; undefined where no number does. Every number is tried: one more is not
 * always better, as where it begins a row, or where the section breaks in its concrete.
 */
function withStrands(of: GirderTaking, path: string, depthIn: number): GirderTake | undefined {
  const {min, max} = fieldOf("girder.strands");
  let most = max;
  // Stryker disable next-line EqualityOperator: no foot has places for the most that the field allows
  for (let strands = min; strands <= most; strands++) {
    const changes = {[path]: depthIn, "girder.strands": strands};
    const found = at(of, changes);
    if (!found) return undefined;
    if (carries(found)) return take(of, found, changes);
    // Each strand lies below the middle and compresses the young soffit more.
    // Stryker disable ConditionalExpression,ArrowFunction,MethodExpression,BlockStatement: it saves trying strands where none helps
    if (fails(found, (id) => NO_STRANDS.has(id) || id.startsWith("girder transfer compression"))) return undefined;
    most = Math.min(most, found.strandsMost);
  }
  return undefined;
}

function fails({checks}: GirderResult, of: (id: string) => boolean): boolean {
  return checks.some(({id, verdict}) => of(id) && verdict === "fails");
}
// Stryker restore all

/**
 * The longest span in whole feet, all else kept. All spans of the field are tried, as the stems' places move with the
 * span and a girder that does not hold over one may hold over a longer.
 */
export function longestGirderSpan(of: GirderTaking): GirderTake | undefined {
  const path = "bay.beamSpanFt";
  const {min, max} = fieldOf(path);
  const tried = Array.from({length: Math.floor(max) - Math.ceil(min) + 1}, (_, i) => {
    const spanFt = Math.ceil(min) + i;
    const found = at(of, {[path]: spanFt});
    return {spanFt, found, does: found !== undefined && holds(found)};
  });
  const last = tried.findLastIndex(({does}) => does);
  const longest = tried[last]?.found;
  if (!longest) return undefined;
  const first = tried.findIndex(({does}) => does);
  const notFt = tried.slice(first, last).filter(({does}) => !does).map(({spanFt}) => spanFt);
  return {...take(of, longest, {[path]: longest.spanFt}, tried[last + 1]?.found), notFt};
}

function at({design, catalog, deck, loads}: GirderTaking, changes: Readonly<Record<string, number>>): GirderResult | undefined {
  const changed = withValues(design, changes);
  // On another span the girder's live load is reduced by another area.
  return girder(changed, catalog, deck, "bay.beamSpanFt" in changes ? floorLoads(changed, catalog, deck.widthFt) : loads);
}

function holds({checks}: GirderResult): boolean {
  return checks.every((check) => check.verdict !== "fails");
}

/** Whether the girder holds, wherever its stems fall: neither strands nor depth move a stem onto its beam. */
function carries({checks}: GirderResult): boolean {
  return checks.every(({id, verdict}) => id === "girder stems on beam" || verdict !== "fails");
}

function take({mayHangIn}: GirderTaking, found: GirderResult, changes: Readonly<Record<string, number>>, beyond?: GirderResult): GirderTake {
  const {depthIn, belowDeckIn, spanFt, member} = found;
  // Stryker disable next-line EqualityOperator,ArithmeticOperator: a billionth of an inch is nothing
  return {depthIn, belowDeckIn, spanFt, strands: member.layout.count, changes, stops: beyond && failing(beyond), tooLowIn: belowDeckIn > mayHangIn + 1e-9 ? belowDeckIn - mayHangIn : 0};
}

/** The check that fails by most, in its own words without the girder's name. */
function failing({checks}: GirderResult): string | undefined {
  const failed = checks.filter((check) => check.verdict === "fails");
  // Stryker disable next-line EqualityOperator: of two alike either does
  const worst = failed.reduce<Check | undefined>((most, check) => (most && most.utilization >= check.utilization ? most : check), undefined);
  // Stryker disable next-line Regex,OptionalChaining: no other check of it says so within its name, and one that stops fails
  return worst?.label.replace(/^Girder: /, "");
}

/** All that can be asked of a girder's size; undefined where nothing does. */
export interface GirderTakes {
  readonly strands: GirderTake | undefined;
  readonly depth: GirderTake | undefined;
  /** The least depth of either kind, with as many strands as it takes. */
  readonly invertedTee: GirderTake | undefined;
  readonly rectangle: GirderTake | undefined;
  readonly span: GirderTake | undefined;
}

/** A design, with what its topping weighs beyond its minimum thickness, psf on the mean, and the room under its deck. */
export interface GirderTakesInput extends Pick<GirderTaking, "mayHangIn"> {
  readonly design: Design;
  readonly extraToppingPsf: number;
}

/** The answers one after the other, for work beside a page: it yields how many are found. */
export function* girderTakes(catalog: Catalog, {design, extraToppingPsf, mayHangIn}: GirderTakesInput): Generator<number, GirderTakes> {
  const deck = withExtraTopping(deckMember(design, catalog), extraToppingPsf);
  const of: GirderTaking = {design, catalog, deck, loads: floorLoads(design, catalog, deck.widthFt), mayHangIn};
  const strands = leastGirderStrands(of);
  yield 1;
  const depth = leastGirderDepth(of);
  yield 2;
  const span = longestGirderSpan(of);
  yield 3;
  const invertedTee = shallowestGirder(of, "inverted tee");
  yield 4;
  return {strands, depth, span, invertedTee, rectangle: shallowestGirder(of, "rectangle")};
}

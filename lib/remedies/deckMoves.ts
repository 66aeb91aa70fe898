import type {Catalog, DeckMemberRow} from "../catalog.js";
import {deckMember} from "../deck/deckMember.js";
import {usualPatterns} from "../deck/table.js";
import type {Design} from "../design/design.js";
import {withValue, withValues} from "../design/edit.js";
import {parsePattern, patternText, type Profile} from "../prestress/pattern.js";
import {allowed, made, numbersIn, single, type Move, type Way} from "./way.js";

/** Other members that are tried at most: the nearest of the same family and width, and some of the others. */
const MEMBERS = {own: 3, others: 2} as const;

/** The way over designs that are there; those that the engine cannot make a member of are left out. */
function over(designs: readonly (Design | undefined)[], catalog: Catalog): readonly Way[] {
  const fits = designs.filter((design): design is Design => design !== undefined && allowed(() => deckMember(design, catalog)) !== undefined);
  return fits.length > 0 ? [{steps: fits.length, at: (step) => fits[step - 1]}] : [];
}

/** Without strand heights of its own or changed dimensions, which belong to one member and pattern. */
function usual(design: Design): Design {
  const {strandHeightEndIn: _end, strandHeightCenterIn: _middle, dimensions: _changed, ...deck} = design.deck;
  return {...design, deck};
}

const depthIn = ({dimensions}: DeckMemberRow): number => dimensions["depthIn"] as number;
const rowOf = (design: Design, {deckMembers}: Catalog): DeckMemberRow | undefined => deckMembers.find(({designation}) => designation === design.deck.member);

/** Members of the catalog that are wanted, those most like the design's own first, each with strands few to many. */
function members(wanted: (row: DeckMemberRow, own: DeckMemberRow) => boolean): Move {
  return (design, {catalog}) => {
    const own = rowOf(design, catalog);
    if (!own) return [];
    const found = catalog.deckMembers.filter((one) => wanted(one, own)).sort((a, b) => Math.abs(depthIn(a) - depthIn(own)) - Math.abs(depthIn(b) - depthIn(own)));
    const alike = (one: DeckMemberRow) => one.family === own.family && one.dimensions["widthIn"] === own.dimensions["widthIn"];
    const others = found.filter((one) => !alike(one));
    const some = [...spread(found.filter(alike), MEMBERS.own), ...spread(others, MEMBERS.others)];
    const all = (one: DeckMemberRow, patterns: readonly string[]) => over(patterns.map((pattern) => withValues(usual(design), {"deck.member": one.designation, "deck.pattern": pattern})), catalog);
    return some.flatMap((one) => {
      const patterns = usualPatterns(one);
      return [...all(one, patterns.filter((text) => text.endsWith("-S"))), ...all(one, patterns.filter((text) => !text.endsWith("-S")))];
    });
  };
}

/** So many of a row at most, evenly spread, the last among them. */
function spread<T>(row: readonly T[], most: number): T[] {
  const stride = Math.ceil(row.length / most);
  return row.filter((_, i) => i % stride === (row.length - 1) % stride);
}

/** A member of the same use that is deeper; it may take other strands. */
export const deeperMember: Move = members((one, own) => one.use === own.use && depthIn(one) > depthIn(own));
/** A member of the same use that is shallower. */
export const shallowerMember: Move = members((one, own) => one.use === own.use && depthIn(one) < depthIn(own));
/** A double tee. */
export const anyTee: Move = members((one, own) => one.family === "double tee" && one.designation !== own.designation);
/** Tees of the widths that the message tells, in feet. */
export const teesWide: Move = (design, words) => {
  const widthsIn = numbersIn(words).map((widthFt) => 12 * widthFt);
  return members((one) => one.family === "double tee" && widthsIn.includes(one.dimensions["widthIn"] as number))(design, words);
};

/** Most strands that a pattern is tried with. */
const MOST_STRANDS = 40;

/** The same member with other strands of the same size: the counts in the order in which they are tried, and the profile. */
function otherStrands(counts: (now: number) => readonly number[], profile: (own: Profile) => Profile | undefined): Move {
  return (design, {catalog}) => {
    const pattern = allowed(() => parsePattern(design.deck.pattern));
    const to = pattern && profile(pattern.profile);
    if (!pattern || !to) return [];
    return over(counts(pattern.count).map((count) => withValue(usual(design), "deck.pattern", patternText(count, pattern.sixteenths, to))), catalog);
  };
}

const same = (own: Profile): Profile => own;
export const moreStrands: Move = otherStrands((now) => Array.from({length: Math.max(0, MOST_STRANDS - now)}, (_, i) => now + 1 + i), same);
export const fewerStrands: Move = otherStrands((now) => Array.from({length: now - 1}, (_, i) => now - 1 - i), same);
/** As many strands, held down at one point or at two. */
export const depressedStrands: Move = (design, words) =>
  (["one-point", "two-point"] as const).flatMap((profile) => otherStrands((now) => [now], (own) => (own === "straight" ? profile : undefined))(design, words));
/** Strands that are held down at two points instead of one. */
export const twoPoints: Move = otherStrands((now) => [now], (own) => (own === "one-point" ? "two-point" : undefined));

/** Strands that are held down less far. */
export const flatterCourse: Move = (design, {catalog}) => over([4, 6, 8, 10, 12].map((heightIn) => made(design, {"deck.strandHeightCenterIn": heightIn})), catalog);
/** Strands of a smaller diameter, as many and more. */
export const thinnerStrands: Move = (design, {catalog}) => {
  const pattern = allowed(() => parsePattern(design.deck.pattern));
  if (!pattern) return [];
  return [6, 7, 8].filter((sixteenths) => sixteenths < pattern.sixteenths).flatMap((sixteenths) =>
    over([1, 1.2, 1.4, 1.6, 1.8].map((times) => made(usual(design), {"deck.pattern": patternText(Math.round(pattern.count * times), sixteenths, pattern.profile)})), catalog));
};
/** The strands lifted, from 3 in above the soffit on, in stems as high as they go. */
export const higherStrands: Move = (design, {catalog}) =>
  over([3, 4, 6, 8, 10].map((heightIn) => made(design, {"deck.strandHeightEndIn": heightIn, "deck.strandHeightCenterIn": heightIn})), catalog);

/** Beams so far apart that whole pieces cover the building's length. */
export const beamSpans = (spansFt: (design: Design, catalog: Catalog) => readonly number[]): Move => (design, {catalog}) =>
  (allowed(() => spansFt(design, catalog)) ?? []).filter((spanFt) => spanFt !== design.bay.beamSpanFt).flatMap((spanFt) => single(made(design, {"bay.beamSpanFt": spanFt})));

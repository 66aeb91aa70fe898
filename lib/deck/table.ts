import type {Catalog, DeckMemberRow} from "../catalog.js";
import {makeMember, type Member, type MemberInput} from "../member/member.js";
import {mostTeeStrands, usualLayout} from "../prestress/layout.js";
import {parsePattern, patternText, type Profile} from "../prestress/pattern.js";
import {shapeOf} from "../sections/designation.js";
import type {Criteria} from "./criteria.js";
import {strandOf} from "./deckMember.js";
import {safeLoad, type SafeLoad} from "./safeLoad.js";

/** Concrete, topping and climate that a whole table shares. */
export type DeckConditions = Pick<
  MemberInput, "concreteKind" | "strengthPsi" | "releaseStrengthPsi" | "toppingIn" | "toppingStrengthPsi" | "humidityPercent"
>;

/** One row of a table of safe loads: a strand pattern over all spans. */
export interface LoadTableRow {
  readonly pattern: string;
  readonly cells: readonly SafeLoad[];
}

/** The safe loads of a member on several spans, ft. */
export function capacityCurve(member: Member, spansFt: readonly number[], criteria: Criteria): SafeLoad[] {
  return spansFt.map((spanFt) => safeLoad(member, spanFt, criteria));
}

/**
 * The table of safe loads of a catalog member, patterns by spans, recomputed for the reader's own criteria.
 *
 * @throws InputError if a pattern does not fit the member
 */
export function safeLoadTable(
  catalog: Catalog, row: DeckMemberRow, patterns: readonly string[], spansFt: readonly number[],
  conditions: DeckConditions, criteria: Criteria,
): LoadTableRow[] {
  const shape = shapeOf(catalog, row.designation);
  return patterns.map((pattern) => ({
    pattern,
    cells: capacityCurve(patternMember(catalog, row, pattern, conditions, shape), spansFt, criteria),
  }));
}

/**
 * A catalog member with a strand pattern in its usual layout; throws {@link InputError} where it does not fit.
 *
 * @param shape - the member's shape if it is at hand; many patterns may share it
 */
export function patternMember(
  catalog: Catalog, row: DeckMemberRow, text: string, conditions: DeckConditions, shape = shapeOf(catalog, row.designation),
): Member {
  const pattern = parsePattern(text);
  return makeMember({...conditions, shape, layout: usualLayout(shape, pattern, strandOf(catalog, pattern), row.lowestStrandIn)});
}

/** Least number of strands that are worth depressing (common practice). */
const LEAST_DEPRESSED = 8;

/** Strands in use, sixteenths of an inch, the usual one first: 3/8 and 1/2 in for planks, 1/2 and 0.6 in for tees (common practice). */
const STRANDS = {plank: [6, 8], tee: [8, 10]} as const;

/** Whether a catalog member is a plank, hollow or solid; the others are tees. */
export function isPlank({use}: Pick<DeckMemberRow, "use">): boolean {
  return use === "plank";
}

/** The diameters of strand that a catalog member is made with, sixteenths of an inch, the usual one first. */
export function usualStrands(row: Pick<DeckMemberRow, "use">): readonly [number, ...number[]] {
  return STRANDS[isPlank(row) ? "plank" : "tee"];
}

/** The patterns that a catalog member is offered with: even numbers in tees, any in planks; straight, then depressed. */
export function usualPatterns(row: DeckMemberRow, sixteenths = usualStrands(row)[0]): string[] {
  const step = row.family === "double tee" ? 2 : 1;
  const counts = Array.from({length: Math.floor((row.mostStrands - row.leastStrands) / step) + 1}, (_, i) => row.leastStrands + i * step);
  if (row.family !== "double tee") return counts.map((count) => patternText(count, sixteenths, "straight"));
  const most = (profile: Profile) => mostTeeStrands(row.dimensions["depthIn"] as number, 2, profile, row.lowestStrandIn);
  return [
    ...counts.filter((count) => count <= most("straight")).map((count) => patternText(count, sixteenths, "straight")),
    ...counts.filter((count) => count >= LEAST_DEPRESSED && count <= most("one-point")).map((count) => patternText(count, sixteenths, "one-point")),
  ];
}

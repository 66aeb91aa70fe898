import type {Catalog} from "../catalog.js";
import {atLeast, type Check} from "../checks.js";
import {deckPieces} from "../deck/pieces.js";
import type {Design} from "../design/design.js";
import type {Member} from "../member/member.js";
import {IN_PER_FT, decimals, feet, feetAndInches} from "../units.js";
import {columnLineToBeamEndIn} from "./beamEnds.js";
import {nearestStem, stemWidthIn, teeRow, type TeeRow} from "./stemRow.js";

/** What would let every stem of a row stand on its beam, all else kept. */
export interface StemRowRemedies {
  /** Spacings of the columns, and widths of tee with stems half of it apart, ft. */
  readonly baysFt: readonly number[];
  readonly teeWidthsFt: readonly number[];
  /** Least move of the whole row along the building, in whole inches, positive away from the corner; undefined where none does. */
  readonly shiftIn: number | undefined;
}

/**
 * Whether every stem of the row stands on its beam: a stem's middle is at least half its own width inside the beam's end.
 * Nearer to the column line it would stand in the joint, within the column, or on the next beam. None for planks.
 */
export function stemRowChecks(design: Design, catalog: Catalog, member: Member): Check[] {
  const row = teeRow(design, member);
  const nearest = row && nearestStem(row);
  if (!row || !nearest) return [];
  const neededIn = stemNeedsIn(design, member);
  const text = {id: "stems on beam", label: "Stem nearest a column line, distance from that line", unit: "in", clause: "geometry", meetingIsEnough: true};
  const holds = "Every stem bears on its beam, clear of the columns.";
  // Stryker disable next-line ConditionalExpression: where all stand, it saves looking for remedies
  const fails = standsOnBeam(nearest.fromLineIn, neededIn) ? "" : `A stem of bay ${nearest.bay} ${where(design, member, nearest.fromLineIn)} ${words(stemRowRemedies(design, catalog, member, row))}`;
  return [atLeast({...text, holds, fails}, nearest.fromLineIn, neededIn)];
}

/** From a column line to the middle of a stem that just stands on its beam, in. */
export function stemNeedsIn(design: Pick<Design, "column">, member: Pick<Member, "shape">): number {
  return columnLineToBeamEndIn(design) + stemWidthIn(member) / 2;
}

/** Whether a stem at a distance from the column line stands on its beam with all of its width. */
export function standsOnBeam(fromLineIn: number, neededIn: number): boolean {
  // Stryker disable next-line EqualityOperator,ArithmeticOperator: the last digits
  return fromLineIn >= neededIn * (1 - 1e-9);
}

function where(design: Design, member: Member, fromLineIn: number): string {
  const endIn = columnLineToBeamEndIn(design);
  // Stryker disable next-line EqualityOperator: a twentieth of an inch may be reported either way
  const stands = fromLineIn < 0.05 ? "falls on the column line" : `is ${feetAndInches(fromLineIn)} from the column line`;
  const beam = `the beam ends ${feetAndInches(endIn)} from it`;
  // Stryker disable next-line EqualityOperator: to the last digit
  return fromLineIn - stemWidthIn(member) / 2 < design.column.sideIn / 2 ? `${stands}, within the column; ${beam}.` : `${stands}, partly off its beam; ${beam}.`;
}

function words({baysFt, teeWidthsFt, shiftIn}: StemRowRemedies): string {
  const either = (values: readonly number[]) => values.map((value) => decimals(value, 2).replace(/\.?0+$/, "")).join(" or ");
  const ways = [
    ...(baysFt.length > 0 ? [`set the columns ${either(baysFt)} ft apart`] : []),
    ...(teeWidthsFt.length > 0 ? [`take tees ${either(teeWidthsFt)} ft wide`] : []),
    // Stryker disable next-line EqualityOperator: no shift is one of nothing
    ...(shiftIn === undefined ? [] : [`begin the row of tees ${feetAndInches(Math.abs(shiftIn))} ${shiftIn < 0 ? "before" : "beyond"} the corner's column line, with a first tee cut to suit`]),
  ];
  return ways.length > 0 ? `To clear the columns, ${ways.join(", or ")}.` : "To clear the columns, use narrower columns or tees, or another bay.";
}

/** Ways to let every stem of a row stand on its beam where one does not: bays on whose lines joints fall, the catalog's other widths of tee, a shift of the row. */
export function stemRowRemedies(design: Design, catalog: Catalog, member: Member, row: TeeRow): StemRowRemedies {
  const does = (changes: Partial<TeeRow>, stemIn = stemWidthIn(member)) => {
    const stands = (fromLineIn: number) => standsOnBeam(fromLineIn, columnLineToBeamEndIn(design) + stemIn / 2);
    // One stem that does not stand is enough.
    const nearest = nearestStem({...row, ...changes}, (fromLineIn) => !stands(fromLineIn));
    // Stryker disable next-line ConditionalExpression: no bay that a design may have is too short for a stem
    return nearest !== undefined && stands(nearest.fromLineIn);
  };
  // Of each width the tee with the thickest stems counts.
  const stemsIn = new Map<number, number>();
  for (const {family, dimensions} of catalog.deckMembers) {
    const widthFt = feet(dimensions["widthIn"] ?? 0);
    if (family === "double tee") stemsIn.set(widthFt, Math.max(dimensions["stemBottomIn"] ?? 0, stemsIn.get(widthFt) ?? 0));
  }
  // Stryker disable next-line ArithmeticOperator: half a tee on, the stems stand as they do half a tee back
  const steps = Math.floor((IN_PER_FT * row.teeWidthFt) / 2);
  // Stryker disable next-line ArithmeticOperator: of a row before and one beyond the corner no other was found to be the nearer for it
  const shifts = Array.from({length: steps}, (_, i) => [-(i + 1), i + 1]).flat();
  return {
    baysFt: deckPieces(design, member).fittingBaysFt.filter((spanFt) => does({spanFt})),
    teeWidthsFt: [...stemsIn.keys()].sort((a, b) => a - b).filter((teeWidthFt) => teeWidthFt !== row.teeWidthFt && does({teeWidthFt, stemSpacingFt: teeWidthFt / 2}, stemsIn.get(teeWidthFt))),
    shiftIn: shifts.find((shiftIn) => does({startFt: feet(shiftIn)})),
  };
}

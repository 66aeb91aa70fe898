import {fieldOf} from "../design/fields.js";
import type {Design} from "../design/design.js";
import type {Member} from "../member/member.js";
import type {DeckFamily} from "../sections/shape.js";
import {LB_PER_KIP, decimals, feet, feetAndInches} from "../units.js";

/** Deck members as pieces to haul and lift, and how they lie along the building. */
export interface DeckPieces {
  /** Pieces side by side over the building's whole length, on one span of the deck; the last may be cut narrower. */
  readonly perRow: number;
  readonly perFloor: number;
  /** Width of the last piece of a row, ft: the member's own where whole pieces cover the length. */
  readonly lastWidthFt: number;
  /** Width that a strip cast in place covers beyond the last whole piece, ft; 0 where a cut piece does, or none is needed. */
  readonly stripFt: number;
  /** Over both stems of a tee, ft; 0 for a piece without stems. */
  readonly stemsWidthFt: number;
  /** Whether a last piece that is cut keeps both stems of its tee; true for a whole piece, and for a plank. */
  readonly lastKeepsStems: boolean;
  /** Whether a joint falls on every column line. */
  readonly fitsBay: boolean;
  /** The spacings of columns next to the design's, shorter and longer, on whose every line a joint would fall, ft. */
  readonly fittingBaysFt: readonly number[];
  /** Weight of one whole piece as it leaves the plant, without topping, kip. */
  readonly weightKip: number;
  /** The same in short tons of 2,000 lb, as cranes and trucks are rated. */
  readonly weightTon: number;
}

/** What a piece of each family is called. */
const PIECES = {"double tee": "tee", "hollow core": "plank", "flat slab": "slab"} as const satisfies Readonly<Record<DeckFamily, string>>;
const KIP_PER_TON = 2;
/** A length that is a whole number of widths must not gain a piece by rounding in the last digit. */
const ROUNDING = 1e-9;

/** What of a member its pieces depend on. */
export type PieceMember = Pick<Member, "widthFt" | "selfWeightPlf" | "shape">;

/** What of a design its pieces depend on. */
export type PiecesOf = Pick<Design, "bay" | "walls">;

/**
 * How many deck members cover a floor, and what one weighs. Pieces lie side by side from the building's corner on, past
 * the column lines, over the whole length; what is left at the far end is a piece cut narrower, or a strip cast in place.
 */
export function deckPieces({bay, walls}: PiecesOf, member: PieceMember): DeckPieces {
  const {widthFt} = member;
  const lengthFt = bay.beamSpanFt * bay.baysAlong;
  const joints = pieceCount(lengthFt, widthFt) - 1;
  const leftFt = lengthFt - joints * widthFt;
  // Stryker disable next-line EqualityOperator: to the last digit
  const cut = leftFt < widthFt - ROUNDING;
  // One piece at least: a building narrower than that cuts it.
  const strip = walls.shortSide !== "not counted" && walls.endFill === "strip" && joints > 0 && cut;
  const [perRow, lastWidthFt, stripFt] = strip ? [joints, widthFt, leftFt] : [joints + 1, leftFt, 0];
  const weightKip = (member.selfWeightPlf * bay.spanFt) / LB_PER_KIP;
  const stemsFt = stemsWidthFt(member);
  return {
    perRow, perFloor: perRow * bay.baysAcross, lastWidthFt, stripFt, stemsWidthFt: stemsFt,
    // Stryker disable next-line EqualityOperator: to the last digit
    lastKeepsStems: lastWidthFt >= stemsFt - ROUNDING,
    ...fit(bay.beamSpanFt, widthFt),
    weightKip, weightTon: weightKip / KIP_PER_TON,
  };
}

/** Joints between pieces along a length of floor, ft from its corner; none where one piece covers it. */
export function jointsFt(lengthFt: number, widthFt: number): number[] {
  return Array.from({length: pieceCount(lengthFt, widthFt) - 1}, (_, i) => (i + 1) * widthFt);
}

/** Pieces side by side over a length, one at least. */
function pieceCount(lengthFt: number, widthFt: number): number {
  return Math.max(1, Math.ceil(lengthFt / widthFt - ROUNDING));
}

/** Over both stems of a tee, ft; 0 for a piece without stems. */
function stemsWidthFt({shape}: PieceMember): number {
  if (shape.family !== "double tee") return 0;
  return feet((shape.dimensions["stemSpacingIn"] as number) + (shape.dimensions["stemTopIn"] as number));
}

/** Whether a bay is a whole number of widths, and the nearest bays that are, within the range of the field. */
function fit(beamSpanFt: number, widthFt: number): Pick<DeckPieces, "fitsBay" | "fittingBaysFt"> {
  const widths = beamSpanFt / widthFt;
  // Stryker disable next-line EqualityOperator: to a millionth of a width
  if (Math.abs(widths - Math.round(widths)) < 1e-6) return {fitsBay: true, fittingBaysFt: [beamSpanFt]};
  const {min, max} = fieldOf("bay.beamSpanFt");
  const multiples = [Math.floor(widths) * widthFt, Math.ceil(widths) * widthFt];
  return {fitsBay: false, fittingBaysFt: multiples.filter((bayFt) => bayFt >= min && bayFt <= max)};
}

/** How the pieces lie along the building and what does not fit, in words. */
export function piecesSentence(design: PiecesOf, member: PieceMember): string {
  const {perRow, lastWidthFt, stripFt, lastKeepsStems, fitsBay, fittingBaysFt} = deckPieces(design, member);
  const {beamSpanFt, baysAlong} = design.bay;
  const long = (lengthFt: number) => feetAndInches(12 * lengthFt);
  const piece = PIECES[member.shape.family as DeckFamily];
  const some = (count: number) => (count === 1 ? `one ${piece}` : `${decimals(count)} ${piece}s`);
  // Stryker disable next-line EqualityOperator: to a millionth of a foot
  const whole = Math.abs(lastWidthFt - member.widthFt) < 1e-6;
  const covers = `covers the building's ${long(beamSpanFt * baysAlong)}`;
  const row = whole
    ? `A row of ${some(perRow)} ${long(member.widthFt)} wide${stripFt > 0 ? ` and a strip of ${long(stripFt)} cast in place` : ""} ${covers}`
    : perRow > 1
      ? `A row of ${some(perRow - 1)} ${long(member.widthFt)} wide and one cut to ${long(lastWidthFt)} ${covers}`
      : `One ${piece} cut to ${long(lastWidthFt)} ${covers}`;
  const last = lastKeepsStems ? "" : " That is too narrow for both stems: make the last two equal, or close the end with a plank or concrete cast in place.";
  if (fitsBay) return `${row}, and a joint falls on every column line.`;
  const tees = piece === "tee" && baysAlong > 1 ? " So the stems land differently in each bay, and beams are checked for the worst." : "";
  return `${row}.${last} A bay of ${long(beamSpanFt)} is not a whole number of ${piece}s: ${fittingBaysFt.map(long).join(" or ")} would put a joint on every line.${tees}`;
}

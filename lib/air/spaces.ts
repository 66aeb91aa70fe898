import type {Design} from "../design/design.js";
import {Kept} from "../kept.js";
import type {Shape} from "../sections/shape.js";
import {inches} from "../units.js";
import {stemGapIn, type DuctPlace} from "./ductRoom.js";

/** A space between two stems that lie along the deck, or a strip of a flat deck, in from the building's first short side. */
export interface StemSpace {
  /** Even between the two stems of a tee, odd over a joint; from -1, the half space at the building's end. Strips are counted alike. */
  readonly index: number;
  readonly place: DuctPlace | "end of the building" | "below a flat deck";
  readonly centerIn: number;
  /** Between the stems' faces right under the flange, and at their soffits; of a strip its whole width. */
  readonly topIn: number;
  readonly footIn: number;
}

/** A stem: its middle, in from the building's first short side. */
export interface StemLine {
  readonly centerIn: number;
}

/** Below a flat deck one branch serves a strip of this width, ft (common practice). */
export const BRANCH_SPACING_FT = 10;

/** Middles of all stems of a floor, in; none of a flat deck. A piece cut at the end keeps the stems that it has room for. */
export function stemLines({bay}: Pick<Design, "bay">, shape: Shape): StemLine[] {
  if (shape.family !== "double tee") return [];
  const lengthIn = inches(bay.beamSpanFt * bay.baysAlong);
  const {stemSpacingIn = 0, stemTopIn = 0} = shape.dimensions;
  const lines: StemLine[] = [];
  // Stryker disable next-line EqualityOperator: a piece that would begin at the end has no stem within the length
  for (let edgeIn = 0; edgeIn < lengthIn; edgeIn += shape.widthIn) {
    for (const side of [-1, 1]) {
      const centerIn = edgeIn + (shape.widthIn + side * stemSpacingIn) / 2;
      if (centerIn + stemTopIn / 2 <= lengthIn + 1e-6) lines.push({centerIn});
    }
  }
  return lines;
}

/** Every space of a floor from the first short side to the other, the half spaces at both ends included. */
export function stemSpaces(design: Pick<Design, "bay">, shape: Shape): readonly StemSpace[] {
  const lengthIn = inches(design.bay.beamSpanFt * design.bay.baysAlong);
  let known = KNOWN.get(shape);
  if (!known) KNOWN.set(shape, known = new Kept(MOST_LENGTHS));
  return known.get(lengthIn, () => {
    const stems = stemLines(design, shape);
    return stems.length === 0 ? strips(lengthIn) : between(shape, stems.map(({centerIn}) => centerIn), lengthIn);
  });
}

/** Spaces that were listed last, by the building's length: every main of it has the same before it. */
const KNOWN = new WeakMap<Shape, Kept<readonly StemSpace[], number>>();
const MOST_LENGTHS = 30;

function between(shape: Shape, centersIn: readonly number[], lengthIn: number): StemSpace[] {
  const {depthIn = 0, flangeIn = 0} = shape.dimensions;
  // Of the gap between two lines a stem's own width is what the clear width leaves of it.
  const widthAt = (heightIn: number) => (shape.dimensions["stemSpacingIn"] as number) - stemGapIn(shape, "between stems", heightIn);
  const [topIn, footIn] = [widthAt(depthIn - flangeIn), widthAt(0)];
  const end = (index: number, atIn: number, stemIn: number): StemSpace => {
    const roomIn = Math.abs(stemIn - atIn);
    const clear = (widthIn: number) => Math.max(0, roomIn - widthIn / 2);
    const side = stemIn > atIn ? 1 : -1;
    return {index, place: "end of the building", centerIn: atIn + (side * clear(topIn)) / 2, topIn: clear(topIn), footIn: clear(footIn)};
  };
  const spaces = [end(-1, 0, centersIn[0] as number)];
  for (let i = 0; i + 1 < centersIn.length; i++) {
    const [a, b] = [centersIn[i] as number, centersIn[i + 1] as number];
    spaces.push({index: i, place: i % 2 === 0 ? "between stems" : "between tees", centerIn: (a + b) / 2, topIn: b - a - topIn, footIn: b - a - footIn});
  }
  return [...spaces, end(centersIn.length - 1, lengthIn, centersIn.at(-1) as number)];
}

/** Strips of a flat deck: those with even numbers for feeders, and the lines between them, as wide, with odd ones. */
function strips(lengthIn: number): StemSpace[] {
  const stepIn = inches(BRANCH_SPACING_FT);
  const count = Math.max(1, Math.round(lengthIn / stepIn));
  const widthIn = lengthIn / count;
  return Array.from({length: 2 * count + 1}, (_, i) => ({
    index: i - 1, place: i === 0 || i === 2 * count ? "end of the building" : "below a flat deck",
    // The half strips at the ends begin at the building's wall.
    centerIn: i === 0 ? widthIn / 4 : i === 2 * count ? lengthIn - widthIn / 4 : (i * widthIn) / 2,
    topIn: widthIn / 2, footIn: widthIn / 2,
  }));
}

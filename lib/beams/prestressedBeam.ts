import type {Catalog} from "../catalog.js";
import {requireNumber} from "../check.js";
import {HANDBOOK_HUMIDITY_PERCENT, HANDBOOK_STRENGTHS_PSI} from "../deck/criteria.js";
import {InputError} from "../errors.js";
import type {ConcreteKind} from "../materials/concrete.js";
import type {Strand} from "../materials/strand.js";
import {makeMember, type Member} from "../member/member.js";
import {STRAND_PITCH_IN, centroidLayout, type PlacedStrand, type StrandLayout, type StrandRow} from "../prestress/layout.js";
import {patternText} from "../prestress/pattern.js";
import {shapeOf} from "../sections/designation.js";
import {isDeckFamily, type Shape} from "../sections/shape.js";

/** A pretensioned beam with straight strands. What is left out is as in the handbook's load tables. */
export interface BeamInput {
  /** An inverted tee, L-beam or rectangular beam, such as `28IT28`, `20LB20` or `12RB24`. */
  readonly designation: string;
  readonly strands: number;
  /** Height of the strands' centroid above the soffit, in; without it the usual rows are taken. */
  readonly strandHeightIn?: number | undefined;
  /** Strand diameter in sixteenths of an inch; 8, the 1/2 in strand, without it. */
  readonly strandSixteenths?: number;
  readonly concreteKind?: ConcreteKind;
  readonly strengthPsi?: number;
  readonly releaseStrengthPsi?: number;
  readonly humidityPercent?: number;
}

/** Whether a designation is that of a beam: one of the catalog's, or a rectangle such as `12RB24`. */
export function isBeam(catalog: Catalog, designation: string): boolean {
  return catalog.ledgeBeams.some((row) => row.designation === designation) || /^\d{1,2}RB\d{1,3}$/.test(designation);
}

/**
 * Makes a beam's member from its designation and strands.
 *
 * @throws InputError if the designation is no beam's, or strands, height or strengths are out of range
 */
export function prestressedBeam(catalog: Catalog, input: BeamInput): Member {
  const shape = shapeOf(catalog, input.designation);
  if (isDeckFamily(shape.family)) {
    throw new InputError({path: "member", label: "beam", value: input.designation, allowed: "an inverted tee, L-beam or rectangular beam"});
  }
  return makeMember({
    shape,
    layout: beamLayout(shape, strandOfSize(catalog, input.strandSixteenths ?? USUAL_SIXTEENTHS), input.strands, input.strandHeightIn),
    concreteKind: input.concreteKind ?? "normalweight",
    strengthPsi: input.strengthPsi ?? HANDBOOK_STRENGTHS_PSI.member,
    releaseStrengthPsi: input.releaseStrengthPsi ?? HANDBOOK_STRENGTHS_PSI.release,
    toppingIn: 0,
    toppingStrengthPsi: HANDBOOK_STRENGTHS_PSI.topping,
    humidityPercent: input.humidityPercent ?? HANDBOOK_HUMIDITY_PERCENT,
  });
}

/** Diameter of the strand that beams usually have, in sixteenths of an inch: 1/2 in (common practice). */
const USUAL_SIXTEENTHS = 8;

/** The strand of a diameter in sixteenths of an inch, 1/2 in without one; throws InputError where the catalog has none. */
export function strandOfSize(catalog: Catalog, sixteenths = USUAL_SIXTEENTHS): Strand {
  const strand = catalog.strands.find((row) => row.sixteenths === sixteenths);
  if (strand) return strand;
  throw new InputError({path: "strandSixteenths", label: "strand diameter", value: `${sixteenths}/16`, unit: "in",
    allowed: catalog.strands.map((row) => row.sixteenths).join(", ")});
}

/** The most strands that a beam's usual rows hold: those below its centroid. */
export function mostBeamStrands(shape: Shape): number {
  return placesIn(belowCentroid(shape).rows);
}

function placesIn(rows: readonly RowPlaces[]): number {
  return Math.min(MOST_STRANDS, rows.reduce((sum, row) => sum + row.places, 0));
}

/**
 * Straight strands of a beam: at one height where that is given, else in the usual rows.
 *
 * @throws InputError if there are more strands than places
 */
export function beamLayout(shape: Shape, strand: Strand, count: number, heightIn?: number): StrandLayout {
  const usual = belowCentroid(shape);
  const rows = heightIn === undefined ? usual.rows : usualRows(shape, shape.depthIn);
  const most = placesIn(rows);
  requireNumber(count, {path: "strands", label: `strands of a ${shape.designation}`, unit: "", min: 1, max: most, integer: true});
  if (heightIn !== undefined) {
    const text = patternText(count, strand.sixteenths, "straight");
    return centroidLayout(shape, {text, count, sixteenths: strand.sixteenths, profile: "straight"}, strand, heightIn, heightIn);
  }
  const known = usual.layouts.get(count);
  if (known?.strand === strand) return known;
  const layout = inRows(rows, strand, count);
  usual.layouts.set(count, layout);
  return layout;
}

/** Straight strands in rows, from the lowest up. */
function inRows(rows: readonly RowPlaces[], strand: Strand, count: number): StrandLayout {
  let left = count;
  const filled: StrandRow[] = [];
  for (const row of rows) {
    const inRow = Math.min(left, row.places);
    if (inRow === 0) break;
    filled.push({count: inRow, areaIn2: inRow * strand.areaIn2, endIn: row.heightIn, centerIn: row.heightIn});
    left -= inRow;
  }
  const centroidIn = filled.reduce((sum, row) => sum + row.count * row.endIn, 0) / count;
  return {strand, count, profile: "straight", rows: filled, areaIn2: count * strand.areaIn2, centroidEndIn: centroidIn, centroidCenterIn: centroidIn};
}

/** Most strands that a pattern's text can name. */
const MOST_STRANDS = 99;
/** Height of the lowest strands above the soffit, in (common practice). */
export const LOWEST_IN = 2;
/** Concrete at the web's two sides together, to the outermost strands' centers, in (common practice). */
const SIDES_IN = 4;

/** A row that strands may stand in. */
interface RowPlaces {
  readonly heightIn: number;
  readonly places: number;
}

/** The usual rows of a shape, and strands in them by their number. */
interface UsualRows {
  readonly rows: readonly RowPlaces[];
  readonly layouts: Map<number, StrandLayout>;
}

/** Rows of shapes that are still in use: every number of strands that is tried fills the same ones, in whatever concrete and under whatever load. */
const USUAL_ROWS = new WeakMap<Shape, UsualRows>();

/** The usual rows of a beam that lie below its centroid. */
function belowCentroid(shape: Shape): UsualRows {
  let usual = USUAL_ROWS.get(shape);
  if (!usual) USUAL_ROWS.set(shape, (usual = {rows: usualRows(shape, shape.section.ybIn), layouts: new Map()}));
  return usual;
}

/**
 * The rows of a beam from below: on a 2 in grid, as many as stand between the web's stirrups, and in the lowest row one
 * more in each ledge, at the corner of the ledge's own stirrup.
 *
 * For 7 of the 11 inverted tees of the handbook this gives the printed height of the strands' centroid to rounding; the
 * other four are printed 0.1 to 0.4 in lower. The ledges would hold more.
 */
function usualRows(shape: Shape, belowIn: number): RowPlaces[] {
  const inWeb = placesInWeb(shape);
  const ledges = shape.family === "inverted tee" ? 2 : shape.family === "L-beam" ? 1 : 0;
  const rows: RowPlaces[] = [];
  for (let heightIn = LOWEST_IN; heightIn < belowIn; heightIn += STRAND_PITCH_IN) {
    rows.push({heightIn, places: inWeb + (rows.length === 0 ? ledges : 0)});
  }
  return rows;
}

/** Places for strands side by side in a beam's web. */
function placesInWeb(shape: Shape): number {
  return Math.max(1, Math.floor((shape.webWidthIn - SIDES_IN) / STRAND_PITCH_IN) + 1);
}

/**
 * Every strand of a beam in its usual rows as a point of the cross-section, for drawings: on the web's 2 in grid from
 * its middle, and what the lowest row has beyond that at the ledges' corners.
 */
export function placedBeamStrands(shape: Shape, layout: StrandLayout): PlacedStrand[] {
  const inWeb = placesInWeb(shape);
  const ledgeIn = shape.dimensions["ledgeProjectionIn"] ?? 0;
  const middleIn = (shape.family === "inverted tee" ? ledgeIn : 0) + shape.webWidthIn / 2;
  const cornersIn = shape.family === "inverted tee" ? [SIDES_IN / 2, shape.widthIn - SIDES_IN / 2] : [shape.widthIn - SIDES_IN / 2];
  return layout.rows.flatMap((row) => {
    const within = Math.min(row.count, inWeb);
    return Array.from({length: row.count}, (_, i): PlacedStrand => ({
      xIn: i < within ? middleIn + (i - (within - 1) / 2) * STRAND_PITCH_IN : (cornersIn[i - within] ?? middleIn),
      yIn: row.endIn,
    }));
  });
}

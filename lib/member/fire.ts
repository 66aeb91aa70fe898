import type {Member} from "./member.js";

/** Aggregate of the concrete, by which the code's fire tables are ordered. */
export type Aggregate = "siliceous" | "carbonate" | "sand-lightweight";

/** A row of the code's table: what a rating in hours asks. */
export interface FireRow {
  readonly hours: number;
  /** Least thickness of slab, in. */
  readonly thicknessIn: Readonly<Record<Aggregate, number>>;
  /** Least cover of strand in unrestrained slabs, in. */
  readonly coverIn: Readonly<Record<Aggregate, number>>;
}

/** The fire rating of a deck as far as the kit can tell. */
export interface FireRating {
  /** Thickness that holds back heat, in: flange and topping, or the plank's concrete spread over its width. */
  readonly thicknessIn: number;
  readonly byThicknessHours: number;
  /** Cover of the lowest strands, soffit to strand, in. */
  readonly coverIn: number;
  /** Undefined for stems, whose table the kit does not hold. */
  readonly byCoverHours: number | undefined;
}

/**
 * Rating by heat transmission and, for planks and slabs, by strand cover, unrestrained (IBC 2021 722.2.2, 722.2.3).
 *
 * A ribbed soffit counts by its flange where ribs stand more than four thicknesses apart (722.2.2.1.3); a plank by its
 * net area over its width (722.2.2.1.1). Topping and member are added up as one concrete.
 */
export function fireRating(member: Member, table: readonly FireRow[], aggregate: Aggregate): FireRating {
  const {shape, layout} = member;
  const toppingIn = member.topping?.thicknessIn ?? 0;
  const thicknessIn = equivalentThicknessIn(member) + toppingIn;
  const lowestIn = Math.min(...layout.rows.map((row) => Math.min(row.endIn, row.centreIn)));
  const coverIn = lowestIn - layout.strand.diameterIn / 2;
  return {
    thicknessIn,
    byThicknessHours: hoursFor(table, (row) => row.thicknessIn[aggregate], thicknessIn),
    coverIn,
    byCoverHours: shape.family === "double tee" ? undefined : hoursFor(table, (row) => row.coverIn[aggregate], coverIn),
  };
}

/** Thickness of solid slab that the member's soffit is worth, in. */
function equivalentThicknessIn({shape, topping}: Member): number {
  if (shape.family !== "double tee") return shape.section.areaIn2 / shape.widthIn;
  const flangeIn = shape.dimensions["flangeIn"] as number;
  const spacingIn = shape.dimensions["stemSpacingIn"] as number;
  const tIn = flangeIn + (topping?.thicknessIn ?? 0);
  if (spacingIn > 4 * tIn) return flangeIn;
  // Closer ribs share their concrete with the flange, up to twice its thickness (722.2.2.1.3).
  const spreadIn = Math.min(2 * tIn, shape.section.areaIn2 / shape.widthIn + (topping?.thicknessIn ?? 0));
  const share = spacingIn <= 2 * tIn ? 1 : (4 * tIn) / spacingIn - 1;
  return flangeIn + share * (spreadIn - tIn);
}

/** Hours for a measure, by straight lines between the table's rows; 0 below the first, the last row's above it. */
function hoursFor(table: readonly FireRow[], needed: (row: FireRow) => number, given: number): number {
  let hours = 0;
  let previous: FireRow | undefined;
  for (const row of table) {
    if (given < needed(row)) {
      if (!previous) return 0;
      return previous.hours + ((row.hours - previous.hours) * (given - needed(previous))) / (needed(row) - needed(previous));
    }
    hours = row.hours;
    previous = row;
  }
  return hours;
}

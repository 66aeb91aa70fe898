import type {Aggregate, Concrete, ConcreteKind} from "../materials/concrete.js";
import type {Member} from "./member.js";

/** Columns of the slab tables. */
type FireConcrete = Aggregate | "sand-lightweight";

/** A row of the code's tables for slabs: what a rating in hours requires. */
export interface FireRow {
  readonly hours: number;
  /** Minimum thickness of slab, in. */
  readonly thicknessIn: Readonly<Record<FireConcrete, number>>;
  /** Minimum cover of strand in unrestrained slabs, in. */
  readonly coverIn: Readonly<Record<FireConcrete, number>>;
}

/** A row of the code's table for beams and stems: minimum cover by rating for stems up to an area. */
export interface StemFireRow {
  /** Area of the largest stem of this class, in2; undefined in the last class, which has no largest. */
  readonly greatestAreaIn2: number | undefined;
  readonly concrete: ConcreteKind;
  readonly restrained: boolean;
  /** Ratings in hours with the cover that each requires, in, rising; those that the table does not give are left out. */
  readonly covers: readonly {readonly hours: number; readonly coverIn: number}[];
}

/** The code's tables as the catalog holds them. */
export interface FireTables {
  readonly slabs: readonly FireRow[];
  readonly stems: readonly StemFireRow[];
}

/** What a floor's rating is judged by. */
export interface FireSetting {
  readonly tables: FireTables;
  readonly aggregate: Aggregate;
  /** Whether the frame around the floor keeps it from growing in a fire. */
  readonly restrained: boolean;
}

/** The fire rating of a deck as far as the kit can tell. */
export interface FireRating {
  /** Thickness that holds back heat, in: flange and topping, or the plank's concrete spread over its width. */
  readonly thicknessIn: number;
  readonly byThicknessHours: number;
  /** Cover that counts, in: soffit to strand in slabs, soffit to the strands' centroid in stems. */
  readonly coverIn: number;
  /** Undefined for stems smaller than the table's. */
  readonly byCoverHours: number | undefined;
}

/** Cover of strand in restrained slabs for every rating, in (IBC 2021 Table 722.2.3(2)). */
const RESTRAINED_SLAB_COVER_IN = 0.75;
/** Area of the least stem that the table for stems speaks of, in2 (IBC 2021 722.2.3.3). */
const LEAST_STEM_AREA_IN2 = 40;
/** Longest rating of the tables, h. */
const LONGEST_HOURS = 4;

/**
 * Rating by heat transmission and by strand cover (IBC 2021 722.2.2, 722.2.3).
 *
 * A ribbed soffit counts by its flange where ribs stand more than four thicknesses apart (722.2.2.1.3); a plank by its
 * net area over its width (722.2.2.1.1). Topping and member are added up as one concrete; where they are of two kinds, as
 * of the one that holds heat back less, as long as no rule for such courses is at hand (722.2.2.2 refers to a chart that
 * was not seen). Strands one above the other in a stem count by the height of their centroid at midspan (722.2.3.3.1).
 *
 * Two notes of Table 722.2.3(5) are not applied: restrained stems at most 4 ft apart need no more than 3/4 in for any
 * rating, which would help, and unrestrained ones that are to last 3 or 4 h need closed stirrups, which are not drawn.
 */
export function fireRating(member: Member, {tables, aggregate, restrained}: FireSetting): FireRating {
  const {shape, layout} = member;
  const column: FireConcrete = member.concrete.kind === "sand-lightweight" ? "sand-lightweight" : aggregate;
  const thicknessIn = equivalentThicknessIn(member) + (member.topping?.thicknessIn ?? 0);
  const stems = shape.family === "double tee";
  const lowestIn = Math.min(...layout.rows.map((row) => Math.min(row.endIn, row.centerIn)));
  const coverIn = stems ? layout.centroidCenterIn : lowestIn - layout.strand.diameterIn / 2;
  const slabs = tables.slabs.map((row) => ({hours: row.hours, coverIn: row.coverIn[column]}));
  const ofSlab = () => (restrained ? (coverIn >= RESTRAINED_SLAB_COVER_IN ? LONGEST_HOURS : 0) : hoursFor(slabs, (row) => row.coverIn, coverIn));
  return {
    thicknessIn,
    byThicknessHours: hoursFor(tables.slabs, (row) => thicknessAskedIn(row, member, aggregate), thicknessIn),
    coverIn,
    byCoverHours: stems ? stemHours(member, tables.stems, restrained, coverIn) : ofSlab(),
  };
}

/** Area of one stem with its share of flange, at most three times its mean width (IBC 2021 Table 722.2.3(5), note b), in2. */
export function stemAreaIn2({shape}: Pick<Member, "shape">): number {
  const flangeIn = shape.dimensions["flangeIn"] as number;
  const widthIn = shape.webWidthIn / shape.webCentersIn.length;
  return widthIn * (shape.depthIn - flangeIn) + 3 * widthIn * flangeIn;
}

/** Thickness that a rating requires of a floor's courses, in: as much as the least favorable of their concretes asks of all of it. */
function thicknessAskedIn({thicknessIn}: FireRow, {concrete, topping}: Member, aggregate: Aggregate): number {
  const askedBy = ({kind}: Concrete) => thicknessIn[kind === "sand-lightweight" ? kind : aggregate];
  return Math.max(askedBy(concrete), askedBy(topping?.concrete ?? concrete));
}

/** What a rating requires by the same tables, in; undefined where they give none for it. */
export interface FireNeeds {
  readonly thicknessIn: number | undefined;
  readonly coverIn: number | undefined;
}

/** What a rating of some hours requires of a member, as {@link fireRating} measures it: thickness, and cover of its strands. */
export function fireNeeds(member: Member, {tables, aggregate, restrained}: FireSetting, hours: number): FireNeeds {
  const column: FireConcrete = member.concrete.kind === "sand-lightweight" ? "sand-lightweight" : aggregate;
  const slab = tables.slabs.find((row) => row.hours === hours);
  const ofSlab = restrained ? slab && RESTRAINED_SLAB_COVER_IN : slab?.coverIn[column];
  const ofStem = () => stemRow(member, tables.stems, restrained)?.covers.find((row) => row.hours === hours)?.coverIn;
  return {thicknessIn: slab && thicknessAskedIn(slab, member, aggregate), coverIn: member.shape.family === "double tee" ? ofStem() : ofSlab};
}

function stemHours(member: Member, rows: readonly StemFireRow[], restrained: boolean, coverIn: number): number | undefined {
  const row = stemRow(member, rows, restrained);
  return row && hoursFor(row.covers, (one) => one.coverIn, coverIn);
}

/** The class of the stems' table that a stem belongs to: the least that it does not outgrow. */
function stemRow(member: Member, rows: readonly StemFireRow[], restrained: boolean): StemFireRow | undefined {
  const areaIn2 = stemAreaIn2(member);
  if (areaIn2 < LEAST_STEM_AREA_IN2) return undefined;
  const greatest = (row: StemFireRow) => row.greatestAreaIn2 ?? Infinity;
  return rows
    .filter((one) => one.concrete === member.concrete.kind && one.restrained === restrained && areaIn2 <= greatest(one))
    .reduce<StemFireRow | undefined>((best, one) => (!best || greatest(one) < greatest(best) ? one : best), undefined);
}

/** Thickness of solid slab that the member's soffit is worth, in. */
function equivalentThicknessIn({shape, topping}: Member): number {
  if (shape.family !== "double tee") return shape.section.areaIn2 / shape.widthIn;
  const flangeIn = shape.dimensions["flangeIn"] as number;
  const spacingIn = shape.dimensions["stemSpacingIn"] as number;
  const tIn = flangeIn + (topping?.thicknessIn ?? 0);
  // Ribs closer than four thicknesses share their concrete with the flange, wholly from two on, up to twice its thickness (722.2.2.1.3).
  const spreadIn = Math.min(2 * tIn, shape.section.areaIn2 / shape.widthIn + (topping?.thicknessIn ?? 0));
  const share = Math.max(0, Math.min(1, (4 * tIn) / spacingIn - 1));
  return flangeIn + share * (spreadIn - tIn);
}

/** Hours for a measure, by straight lines between the table's rows; 0 below the first, the last row's above it. */
function hoursFor<R extends {readonly hours: number}>(table: readonly R[], needed: (row: R) => number, given: number): number {
  let hours = 0;
  let previous: R | undefined;
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

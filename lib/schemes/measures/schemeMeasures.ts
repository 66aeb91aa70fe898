/** Parts of a building that floors and walls are made of; a roof of its own is one part with its deck, topping and beams. */
export const FLOOR_PARTS = {deck: "deck", topping: "topping", edgeBeams: "edge beams", girders: "girders", walls: "walls", roof: "roof"} as const;
/** Parts below them, which only the columns' own results know. */
export const COLUMN_PARTS = {columns: "columns", footings: "footings"} as const;

export type FloorPart = keyof typeof FLOOR_PARTS;
export type ColumnPart = keyof typeof COLUMN_PARTS;
/** Parts with strands, and parts whose bars are counted: of the topping its mesh. */
export type StrandedPart = Extract<FloorPart, "deck" | "edgeBeams" | "girders" | "roof">;
export type BarredPart = Extract<FloorPart, "topping" | "edgeBeams" | "girders" | "roof">;

/** Numbers of several parts under one name each: `deckConcreteFt3PerFt2`. */
export type OfParts<Part extends string, Name extends string, Value = number> = Readonly<Record<`${Part}${Name}`, Value>>;

/**
 * What all parts together take per square foot of floor. Names that say WithoutColumns leave out columns and footings, and
 * are known where these are not.
 */
interface Materials extends
  OfParts<FloorPart, "ConcreteFt3PerFt2">, OfParts<ColumnPart, "ConcreteFt3PerFt2", number | undefined>,
  OfParts<StrandedPart, "StrandLbPerFt2">,
  OfParts<BarredPart, "BarsLbPerFt2">, OfParts<ColumnPart, "BarsLbPerFt2", number | undefined>,
  OfParts<FloorPart, "CarbonKgPerFt2">, OfParts<ColumnPart, "CarbonKgPerFt2", number | undefined> {
  readonly concreteFt3PerFt2: number | undefined;
  readonly concreteWithoutColumnsFt3PerFt2: number;
  readonly strandLbPerFt2: number;
  readonly barsLbPerFt2: number | undefined;
  readonly barsWithoutColumnsLbPerFt2: number;
  /** Embodied carbon, kgCO2e (EN 15978 modules A1 to A3). */
  readonly carbonKgPerFt2: number | undefined;
  readonly carbonWithoutColumnsKgPerFt2: number;
}

/** Pieces that come by road. */
interface Hauling {
  readonly pieces: number | undefined;
  readonly piecesWithoutColumns: number;
  readonly truckloads: number | undefined;
  readonly truckloadsWithoutColumns: number;
  /** The heaviest of all pieces, in short tons of 2,000 lb. */
  readonly heaviestPieceTons: number | undefined;
  readonly heaviestPieceWithoutColumnsTons: number;
  /** Pieces that are wider, higher on their truck, longer or heavier than the law lets by without a permit. */
  readonly overWidthPieces: number | undefined;
  readonly overWidthWithoutColumnsPieces: number;
  readonly overHeightPieces: number | undefined;
  readonly overHeightWithoutColumnsPieces: number;
  readonly overLengthPieces: number | undefined;
  readonly overLengthWithoutColumnsPieces: number;
  readonly overWeightPieces: number | undefined;
  readonly overWeightWithoutColumnsPieces: number;
  /** Pieces that are any of these. */
  readonly permitPieces: number | undefined;
  readonly permitWithoutColumnsPieces: number;
}

/**
 * The greatest use among a part's checks, as a share of the limit, and the name of that check. The use is undefined where
 * there is no such part, where columns are not given, and where no method covers the part, which the check then says.
 */
type Use<Part extends string> = OfParts<Part, "Use", number | undefined> & OfParts<Part, "UseCheck", string | undefined>;

/**
 * What a whole design comes to, as plain numbers whose names end in their units. "Per square foot" is of the floors that
 * the columns carry; where it is of the floor that the walls enclose, the ground's too, the comment says so.
 *
 * What needs the columns is undefined where they are not given, or where one of them has no size by the kit's methods.
 */
export interface SchemeMeasures extends Materials, Hauling, Use<"deck" | "edgeBeam" | "girder" | "columns" | "story"> {
  /** Floors that the columns carry, all levels together. */
  readonly floorFt2: number;
  readonly floorToFloorFt: number;
  /** Finished floor to the ceiling, or to the deck where there is none. */
  readonly ceilingFt: number;
  /** Ground to the top of the walls: the roof's finished level and the parapet on it. */
  readonly buildingFt: number;
  /** Deck member with its topping. */
  readonly deckDepthIn: number;
  /** Top of the structural floor to the lowest underside of deck, edge beam and girder. */
  readonly structureDepthIn: number;
  /** Part of one floor with a daylight factor of 5 % and more, of 2 % and more, and without a view of the sky. */
  readonly goodDaylightPercent: number;
  readonly daylitPercent: number;
  readonly noSkyPercent: number;
  /** Walls with parapet, and walls and roof, per square foot of floor enclosed. */
  readonly wallFt2PerFt2: number;
  readonly envelopeFt2PerFt2: number;
  /** Dead load that comes down on the ground: structure, layers, cladding and walls. */
  readonly deadPsf: number | undefined;
  readonly deadKip: number | undefined;
  readonly deadWithoutColumnsPsf: number;
  /** Columns per 1,000 square feet of one floor. */
  readonly columnsPer1000Ft2: number;
  /** Between the faces of neighboring columns, across and along the building. */
  readonly clearAcrossFt: number;
  readonly clearAlongFt: number;
  /** Aisles with a row of stalls on either side that one level below these floors has room for, and the stalls of that level. */
  readonly parkingModules: number;
  readonly parkingStalls: number;
  /** Floor of that level per stall; undefined where no stall fits. */
  readonly parkingFt2PerStall: number | undefined;
  /** In the currency of the prices; undefined where one that is needed is blank. */
  readonly costPerFt2: number | undefined;
  readonly costWithoutColumnsPerFt2: number | undefined;
}

/** A measure's name: every field of {@link SchemeMeasures} that is a number. */
export type MeasureKey = {[Key in keyof SchemeMeasures]: SchemeMeasures[Key] extends number | undefined ? Key : never}[keyof SchemeMeasures];

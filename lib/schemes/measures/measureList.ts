import {COLUMN_PARTS, FLOOR_PARTS, type BarredPart, type ColumnPart, type FloorPart, type MeasureKey, type SchemeMeasures, type StrandedPart} from "./schemeMeasures.js";

/** Groups in which lists and tables show the measures. */
export const MEASURE_GROUPS = ["heights", "daylight", "walls", "concrete", "strand", "bars", "carbon", "weight", "hauling", "columns", "parking", "limits", "cost"] as const;
export type MeasureGroup = (typeof MEASURE_GROUPS)[number];

/** One measure of a scheme, as tables, charts and files show it. */
export interface MeasureEntry {
  readonly key: MeasureKey;
  readonly group: MeasureGroup;
  readonly name: string;
  /** Unit as the kit writes it; empty for a plain number. */
  readonly unit: string;
  /** Which of two schemes is the better one by this measure alone. */
  readonly better: "less" | "more" | "neither";
  readonly decimals: number;
  /** Its column in a CSV file: snake case, with the unit. */
  readonly column: string;
  /** Set where it is one part of a total. */
  readonly partOf: MeasureKey | undefined;
  /** Whether it is known only with the columns; and what stands in for it without them. */
  readonly needsColumns: boolean;
  readonly withoutColumns: MeasureKey | undefined;
  readonly read: (measures: SchemeMeasures) => number | undefined;
  /** Name of the check behind the number, where one is. */
  readonly check: ((measures: SchemeMeasures) => string | undefined) | undefined;
}

type Look = Pick<MeasureEntry, "group" | "unit" | "better" | "decimals"> & Partial<Pick<MeasureEntry, "partOf" | "needsColumns" | "withoutColumns" | "check">>;

function entry(key: MeasureKey, name: string, look: Look): MeasureEntry {
  const {group, unit, better, decimals, partOf, needsColumns = false, withoutColumns, check} = look;
  return {key, group, name, unit, better, decimals, column: columnName(key), partOf, needsColumns, withoutColumns, read: (measures) => measures[key], check};
}

/** `deckConcreteFt3PerFt2` as `deck_concrete_ft3_per_ft2`, `columnsPer1000Ft2` as `columns_per_1000_ft2`. */
function columnName(key: string): string {
  return key.replace(/([a-z])([0-9]{2,})/g, "$1_$2").replace(/([a-z0-9])([A-Z])/g, "$1_$2").toLowerCase();
}

/** A total with and without columns, and its parts. */
interface MaterialRows {
  readonly group: MeasureGroup;
  readonly noun: string;
  readonly unit: string;
  readonly decimals: number;
  readonly total: MeasureKey;
  readonly withoutColumns: MeasureKey | undefined;
  readonly parts: readonly (readonly [MeasureKey, string, needsColumns: boolean])[];
}

function materialRows({group, noun, unit, decimals, total, withoutColumns, parts}: MaterialRows): MeasureEntry[] {
  const look = {group, unit, better: "less", decimals} as const;
  return [
    entry(total, noun, {...look, needsColumns: withoutColumns !== undefined, withoutColumns}),
    ...(withoutColumns ? [entry(withoutColumns, `${noun} without columns and footings`, look)] : []),
    ...parts.map(([key, part, needsColumns]) => entry(key, `${noun}: ${part}`, {...look, better: "neither", partOf: total, needsColumns})),
  ];
}

const floorKeys = Object.keys(FLOOR_PARTS) as FloorPart[];
const columnKeys = Object.keys(COLUMN_PARTS) as ColumnPart[];
const STRANDED: readonly StrandedPart[] = ["deck", "edgeBeams", "girders", "roof"];
const BARRED: readonly BarredPart[] = ["topping", "edgeBeams", "girders", "roof"];

/** A measure of the haul with and without the columns' pieces. */
function haulRows(key: MeasureKey, without: MeasureKey, name: string, look: Omit<Look, "group" | "better">): MeasureEntry[] {
  const all = {...look, group: "hauling", better: "less"} as const;
  return [entry(key, name, {...all, needsColumns: true, withoutColumns: without}), entry(without, `${name}, columns not counted`, all)];
}

const height = {group: "heights", unit: "ft", better: "less", decimals: 2} as const;
const share = {group: "daylight", unit: "%", decimals: 0} as const;
const use = {group: "limits", unit: "", better: "neither", decimals: 2} as const;
const count = {unit: "", decimals: 0} as const;

/**
 * All measures of a scheme in the order in which lists, tables and files have them. Pages, files and comparisons follow
 * from this list: what is not in it is not shown.
 */
export const MEASURE_LIST: readonly MeasureEntry[] = [
  entry("floorFt2", "floor carried", {group: "heights", unit: "ft2", better: "neither", decimals: 0}),
  entry("floorToFloorFt", "floor-to-floor height", height),
  entry("ceilingFt", "ceiling height", {...height, better: "more"}),
  entry("buildingFt", "building height", {...height, decimals: 1}),
  entry("deckDepthIn", "deck with topping, depth", {...height, unit: "in"}),
  entry("structureDepthIn", "structure, depth", {...height, unit: "in"}),
  entry("goodDaylightPercent", "floor with good daylight", {...share, better: "more"}),
  entry("daylitPercent", "floor with good or partial daylight", {...share, better: "more"}),
  entry("noSkyPercent", "floor that sees no sky", {...share, better: "less"}),
  entry("wallFt2PerFt2", "walls per floor enclosed", {group: "walls", unit: "ft2/ft2", better: "less", decimals: 3}),
  entry("envelopeFt2PerFt2", "walls and roof per floor enclosed", {group: "walls", unit: "ft2/ft2", better: "less", decimals: 3}),
  ...materialRows({
    group: "concrete", noun: "concrete", unit: "ft3/ft2", decimals: 3, total: "concreteFt3PerFt2", withoutColumns: "concreteWithoutColumnsFt3PerFt2",
    parts: [
      ...floorKeys.map((part) => [`${part}ConcreteFt3PerFt2`, FLOOR_PARTS[part], false] as const),
      ...columnKeys.map((part) => [`${part}ConcreteFt3PerFt2`, COLUMN_PARTS[part], true] as const),
    ],
  }),
  ...materialRows({
    group: "strand", noun: "strand", unit: "lb/ft2", decimals: 2, total: "strandLbPerFt2", withoutColumns: undefined,
    parts: STRANDED.map((part) => [`${part}StrandLbPerFt2`, FLOOR_PARTS[part], false]),
  }),
  ...materialRows({
    group: "bars", noun: "bars", unit: "lb/ft2", decimals: 2, total: "barsLbPerFt2", withoutColumns: "barsWithoutColumnsLbPerFt2",
    parts: [
      ...BARRED.map((part) => [`${part}BarsLbPerFt2`, FLOOR_PARTS[part], false] as const),
      ...columnKeys.map((part) => [`${part}BarsLbPerFt2`, COLUMN_PARTS[part], true] as const),
    ],
  }),
  ...materialRows({
    group: "carbon", noun: "embodied carbon", unit: "kgCO2e/ft2", decimals: 1, total: "carbonKgPerFt2", withoutColumns: "carbonWithoutColumnsKgPerFt2",
    parts: [
      ...floorKeys.map((part) => [`${part}CarbonKgPerFt2`, FLOOR_PARTS[part], false] as const),
      ...columnKeys.map((part) => [`${part}CarbonKgPerFt2`, COLUMN_PARTS[part], true] as const),
    ],
  }),
  entry("deadPsf", "dead load on the ground", {group: "weight", unit: "psf", better: "less", decimals: 0, needsColumns: true, withoutColumns: "deadWithoutColumnsPsf"}),
  entry("deadWithoutColumnsPsf", "dead load without the columns' weight", {group: "weight", unit: "psf", better: "less", decimals: 0}),
  entry("deadKip", "dead load on the ground, in all", {group: "weight", unit: "kip", better: "less", decimals: 0, needsColumns: true}),
  ...haulRows("pieces", "piecesWithoutColumns", "precast pieces", count),
  ...haulRows("truckloads", "truckloadsWithoutColumns", "truckloads", count),
  ...haulRows("heaviestPieceTons", "heaviestPieceWithoutColumnsTons", "heaviest piece", {unit: "tons", decimals: 1}),
  ...haulRows("permitPieces", "permitWithoutColumnsPieces", "pieces that need a permit", count),
  ...haulRows("overWidthPieces", "overWidthWithoutColumnsPieces", "pieces over the legal width", count),
  ...haulRows("overHeightPieces", "overHeightWithoutColumnsPieces", "pieces over the legal height", count),
  ...haulRows("overLengthPieces", "overLengthWithoutColumnsPieces", "pieces over the legal length", count),
  ...haulRows("overWeightPieces", "overWeightWithoutColumnsPieces", "pieces over the legal weight", count),
  entry("columnsPer1000Ft2", "columns per 1,000 ft2 of floor", {group: "columns", unit: "", better: "less", decimals: 2}),
  entry("clearAcrossFt", "free of columns across the building", {group: "columns", unit: "ft", better: "more", decimals: 1}),
  entry("clearAlongFt", "free of columns along the building", {group: "columns", unit: "ft", better: "more", decimals: 1}),
  entry("parkingModules", "parking modules of a level below", {group: "parking", better: "more", ...count}),
  entry("parkingStalls", "stalls of a level below", {group: "parking", better: "more", ...count}),
  entry("parkingFt2PerStall", "floor per stall below", {group: "parking", unit: "ft2", better: "less", decimals: 0}),
  entry("deckUse", "greatest use: deck", {...use, check: ({deckUseCheck}) => deckUseCheck}),
  entry("edgeBeamUse", "greatest use: edge beam", {...use, check: ({edgeBeamUseCheck}) => edgeBeamUseCheck}),
  entry("girderUse", "greatest use: girder", {...use, check: ({girderUseCheck}) => girderUseCheck}),
  entry("columnsUse", "greatest use: columns and footings", {...use, needsColumns: true, check: ({columnsUseCheck}) => columnsUseCheck}),
  entry("storyUse", "greatest use: story", {...use, check: ({storyUseCheck}) => storyUseCheck}),
  entry("costPerFt2", "cost", {group: "cost", unit: "per ft2", better: "less", decimals: 2, needsColumns: true, withoutColumns: "costWithoutColumnsPerFt2"}),
  entry("costWithoutColumnsPerFt2", "cost without columns and footings", {group: "cost", unit: "per ft2", better: "less", decimals: 2}),
];

import type {LoadRule} from "../loads/reduction.js";
import {requireChoice, requireNumber} from "../check.js";
import {InputError} from "../errors.js";
import {ELEMENT_FACTOR} from "../loads/elements.js";
import {HEAVY_LIVE_PSF} from "../loads/reduction.js";
import type {LoadArea} from "../loads/tributary.js";

/** Where a column stands on the plan; a line of girders ends on a girder end column, at the building's end. */
export const COLUMN_POSITIONS = ["interior column", "edge column", "girder end column", "corner column"] as const;
export type ColumnPosition = (typeof COLUMN_POSITIONS)[number];

/** Live load element factor KLL of columns whose slab cantilevers past them (ASCE 7-16 Table 4.7-1). */
export const CANTILEVER_FACTOR: Readonly<Record<ColumnPosition, number>> = {
  "interior column": 4, "edge column": 3, "girder end column": 3, "corner column": 2,
};

/** Live load element factor KLL of a column: 4, or less at an edge beyond which the slab cantilevers. */
export function columnFactor(position: ColumnPosition, cantilever = false): number {
  return (cantilever ? CANTILEVER_FACTOR : ELEMENT_FACTOR)[position];
}

/** What stands on a floor or roof, and the beams that bring it to the column. */
export interface LevelLoad {
  /** Deck member alone, topping, and layers of superimposed dead load, psf. */
  readonly deckPsf: number;
  readonly toppingPsf: number;
  readonly superimposedPsf: number;
  /** Beams with what hangs on them, such as cladding, and their length that the column carries. */
  readonly beamPlf: number;
  readonly beamLengthFt: number;
  /** Walls that the column supports on this level, standing or hung, kip; none if omitted. */
  readonly wallKip?: number;
  /** Live load before reduction, psf; on a roof its live load or snow. */
  readonly livePsf: number;
  /** Live load of a roof's use beside its snow or rain, as reduced for it, psf; none if omitted. */
  readonly usePsf?: number;
  /** Live load of the floor beyond the end column lines, kip, in full; and snow or rain there; none if omitted. */
  readonly stripLiveKip?: number;
  readonly stripWeatherKip?: number;
  /** Snow or rain on an open floor beside its live load, psf; none if omitted. */
  readonly weatherPsf?: number;
  /** How the floor's live load may be reduced; a roof's is taken whole. */
  readonly rule: LoadRule;
  /** Live load for partitions (movable walls), psf; not reduced. */
  readonly partitionPsf: number;
}

/** What stands on a floor and moves. */
export type FloorLive = Pick<LevelLoad, "livePsf" | "rule" | "partitionPsf">;

/** A level that loads a column, and the story below it. */
export interface ColumnLevel extends LevelLoad {
  readonly name: string;
  readonly kind: "floor" | "roof";
  /** Area whose load the column carries on this level, ft2. */
  readonly tributaryFt2: number;
  /** Influence area on this level, ft2, where it is not KLL times the tributary area. */
  readonly influenceFt2?: number;
  /** From this level down to the next, or to the footing, ft. */
  readonly storyHeightFt: number;
  /** Unbraced height of the column in that story, ft: the story's height where it is not given. */
  readonly clearHeightFt?: number;
  /** Whether the column above bears on this level by a splice that transfers no moment. */
  readonly spliceAbove?: boolean;
}

/** A level's name within a sentence: "the roof", "floor 2". */
export function levelWords({name, kind}: Pick<ColumnLevel, "name" | "kind">): string {
  return kind === "roof" ? `the ${name}` : name;
}

/**
 * The levels of a building whose floors are alike, top first: the roof if there is one, then the floors.
 *
 * @param of - area that the column carries on one floor, as {@link LoadArea} has it; the beams run along its width
 */
export function typicalLevels(of: {
  area: Pick<LoadArea, "tributary">; floors: number; storyHeightFt: number;
  floor: Omit<LevelLoad, "beamLengthFt">;
  /** With the height of the story under it, ft, where that is not a story's. */
  roof?: Omit<LevelLoad, "beamLengthFt"> & {readonly storyHeightFt?: number};
  /** Snow or rain on the topmost floor where no roof is over it. */
  onTop?: Pick<LevelLoad, "weatherPsf" | "stripWeatherKip">;
}): ColumnLevel[] {
  const {area, storyHeightFt} = of;
  const floors = requireNumber(of.floors, {path: "floors", label: "floors", unit: "", min: 1, max: 100, integer: true});
  const {widthFt, heightFt} = area.tributary;
  const common = {tributaryFt2: widthFt * heightFt, beamLengthFt: widthFt, storyHeightFt};
  const roof: ColumnLevel[] = of.roof ? [{...common, ...of.roof, name: "roof", kind: "roof"}] : [];
  const levels = Array.from({length: floors}, (_, i): ColumnLevel => ({
    ...of.floor, ...(i === 0 ? of.onTop : {}), ...common, name: `floor ${floors - i + 1}`, kind: "floor",
  }));
  return [...roof, ...levels];
}

/** Kinds of live load whose floors are counted together. */
export const LIVE_CLASSES = ["ordinary", "heavy", "garage", "whole"] as const;
export type LiveClass = (typeof LIVE_CLASSES)[number];

/** The class of each rule; what may be reduced is heavy above a certain load. */
const CLASS_OF: Readonly<Record<LoadRule, LiveClass>> = {yes: "ordinary", heavy: "heavy", garage: "garage", no: "whole", "in full": "whole"};
const RULES = Object.keys(CLASS_OF) as LoadRule[];

/** The class of a floor's live load by its rule and size. */
export function liveClass({rule, livePsf}: Pick<LevelLoad, "rule" | "livePsf">): LiveClass {
  return rule === "yes" && livePsf > HEAVY_LIVE_PSF ? "heavy" : CLASS_OF[rule];
}

/**
 * Returns the levels if each is possible.
 *
 * @throws InputError naming the level and field that is not: negative loads, no area, a story below 7 or above 60 ft,
 * an unbraced height above the story's
 */
export function requireLevels(levels: readonly ColumnLevel[]): readonly ColumnLevel[] {
  if (levels.length === 0 || levels.length > 100) {
    throw new InputError({path: "levels", label: "levels", value: levels.length, allowed: "1 to 100 levels"});
  }
  levels.forEach((level, i) => {
    const within = (key: keyof ColumnLevel, label: string, unit: string, min: number, max: number) =>
      requireNumber(level[key], {path: `levels.${i}.${key}`, label: `${level.name}, ${label}`, unit, min, max});
    requireChoice(level.kind, {path: `levels.${i}.kind`, label: `${level.name}, kind`, choices: ["floor", "roof"]});
    requireChoice(level.rule, {path: `levels.${i}.rule`, label: `${level.name}, rule`, choices: RULES});
    within("tributaryFt2", "tributary area", "ft2", 1, 20000);
    if (level.influenceFt2 !== undefined) within("influenceFt2", "influence area", "ft2", 1, 80000);
    within("deckPsf", "deck", "psf", 0, 500);
    within("toppingPsf", "topping", "psf", 0, 200);
    within("superimposedPsf", "superimposed dead load", "psf", 0, 500);
    within("livePsf", "live load", "psf", 0, 1000);
    if (level.usePsf !== undefined) within("usePsf", "live load of the roof's use", "psf", 0, 1000);
    if (level.weatherPsf !== undefined) within("weatherPsf", "snow or rain", "psf", 0, 1000);
    if (level.stripLiveKip !== undefined) within("stripLiveKip", "live load beyond the column lines", "kip", 0, 2000);
    if (level.stripWeatherKip !== undefined) within("stripWeatherKip", "snow or rain beyond the column lines", "kip", 0, 2000);
    within("partitionPsf", "partitions", "psf", 0, 100);
    within("beamPlf", "beams", "plf", 0, 20000);
    within("beamLengthFt", "length of beams", "ft", 0, 400);
    if (level.wallKip !== undefined) within("wallKip", "walls", "kip", 0, 2000);
    const storyFt = within("storyHeightFt", "story height", "ft", 7, 60);
    if (level.clearHeightFt !== undefined) within("clearHeightFt", "unbraced height", "ft", 1, storyFt);
  });
  return levels;
}

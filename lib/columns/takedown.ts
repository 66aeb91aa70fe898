import {requireChoice, requireNumber} from "../check.js";
import {reduceLiveLoad, type Reduction} from "../loads/reduction.js";
import {LB_PER_KIP} from "../units.js";
import {combined, FACTORED, greatest, SERVICE, type ColumnLoadKip, type CombinedKip} from "./columnCombinations.js";
import {COLUMN_POSITIONS, columnFactor, liveClass, requireLevels, type ColumnLevel, type ColumnPosition, type FloorLive, type LiveClass} from "./levels.js";

/** What the take-down of a column's load depends on. */
export interface TakedownInput {
  readonly position: ColumnPosition;
  /** Whether the slab cantilevers past an edge or corner column. */
  readonly cantilever?: boolean;
  /** Top first. */
  readonly levels: readonly ColumnLevel[];
  /** What may stand on the floors in place of what the levels hold: each of these on every floor. */
  readonly rooms?: readonly FloorLive[];
  /** The column's own weight, plf. */
  readonly columnPlf: number;
}

/** What one level adds, kip, without the column; live load unreduced, with partitions. */
export interface LevelAddsKip extends ColumnLoadKip {
  readonly deckKip: number;
  readonly toppingKip: number;
  readonly superimposedKip: number;
  readonly beamsKip: number;
  readonly wallsKip: number;
}

/** The reduction of one class of floors above a story. */
export interface ClassReduction {
  readonly liveClass: LiveClass;
  /** Floors of the class, and their influence areas added up. */
  readonly floors: number;
  readonly influenceFt2: number;
  /** By the floor with the greatest live load of its class. */
  readonly reduction: Reduction;
  /** Reduced live load of all these floors, kip, without partitions. */
  readonly liveKip: number;
}

/** The load at the foot of the column in one story. */
export interface StoryLoad extends ColumnLoadKip {
  readonly level: ColumnLevel;
  /** Weight of the column in this story, kip. */
  readonly columnKip: number;
  readonly adds: LevelAddsKip;
  /** Floors above, without roofs, with their tributary and influence areas added up. */
  readonly floors: number;
  readonly tributaryFt2: number;
  readonly influenceFt2: number;
  readonly reductions: readonly ClassReduction[];
  /** Live load of the floors as it would be unreduced, with partitions, kip. */
  readonly unreducedLiveKip: number;
  readonly factored: readonly CombinedKip[];
  readonly service: readonly CombinedKip[];
  /** The greatest factored and the greatest service load. */
  readonly governing: CombinedKip;
  readonly governingService: CombinedKip;
}

/** A column's load, story by story from the top. */
export interface Takedown {
  readonly elementFactor: number;
  readonly stories: readonly StoryLoad[];
}

/**
 * Takes the load of a building down one column (ASCE 7-16 4.7, 2.3.1, 2.4.1).
 *
 * Each story carries all levels above it. Live load is reduced according to the influence area of all floors of its class above:
 * ordinary, heavy, garage; each class counts its own floors only (commentary C4.7.3; from memory). Roof load is not
 * reduced and its area not counted. Partitions are live load that is not reduced here. Of several rooms each story
 * takes the one that loads it most there: one that is reduced with every floor above may lead at the top alone.
 *
 * @throws InputError if a level is impossible; see {@link requireLevels}
 */
export function takedown(input: TakedownInput): Takedown {
  const position = requireChoice(input.position, {path: "position", label: "position of the column", choices: COLUMN_POSITIONS});
  const columnPlf = requireNumber(input.columnPlf, {path: "columnPlf", label: "column's weight", unit: "plf", min: 0, max: 10000});
  const elementFactor = columnFactor(position, input.cantilever);
  const alternatives = input.rooms?.map((room) => input.levels.map((level) => (level.kind === "floor" ? under(room, level) : level))) ?? [input.levels];
  // Stryker disable next-line ArrayDeclaration: there is always one
  const [first = [], ...others] = alternatives.map((levels) => storiesUnder(requireLevels(levels), elementFactor, columnPlf));
  // Dead and roof load are those of all alternatives, so the one with most live load leads in every combination.
  // Stryker disable next-line EqualityOperator: of two alike either may lead
  const stories = first.map((story, i) => others.reduce((most, other) => ((other[i] as StoryLoad).liveKip > most.liveKip ? other[i] as StoryLoad : most), story));
  return {elementFactor, stories};
}

/** A floor with another room on it. */
function under({livePsf, rule, partitionPsf}: FloorLive, level: ColumnLevel): ColumnLevel {
  return {...level, livePsf, rule, partitionPsf};
}

function storiesUnder(levels: readonly ColumnLevel[], elementFactor: number, columnPlf: number): StoryLoad[] {
  let deadKip = 0;
  return levels.map((level, i): StoryLoad => {
    const adds = levelAdds(level);
    const columnKip = (columnPlf * level.storyHeightFt) / LB_PER_KIP;
    deadKip += adds.deadKip + columnKip;
    return {level, columnKip, adds, ...storyLoad(levels.slice(0, i + 1), elementFactor, deadKip)};
  });
}

/** What a level brings to the column by itself. */
export function levelAdds(level: ColumnLevel): LevelAddsKip {
  const kip = (psf: number) => (psf * level.tributaryFt2) / LB_PER_KIP;
  const [deckKip, toppingKip, superimposedKip] = [kip(level.deckPsf), kip(level.toppingPsf), kip(level.superimposedPsf)];
  const beamsKip = (level.beamPlf * level.beamLengthFt) / LB_PER_KIP;
  const wallsKip = level.wallKip ?? 0;
  const roof = level.kind === "roof";
  const variableKip = kip(level.livePsf + level.partitionPsf);
  return {
    deckKip, toppingKip, superimposedKip, beamsKip, wallsKip, deadKip: deckKip + toppingKip + superimposedKip + beamsKip + wallsKip,
    liveKip: roof ? kip(level.usePsf ?? 0) : variableKip, roofKip: roof ? variableKip : 0,
  };
}

function storyLoad(above: readonly ColumnLevel[], elementFactor: number, deadKip: number): Omit<StoryLoad, "level" | "columnKip" | "adds"> {
  const floors = above.filter((level) => level.kind === "floor");
  const influenceOf = (level: ColumnLevel) => level.influenceFt2 ?? elementFactor * level.tributaryFt2;
  const reductions = (["ordinary", "heavy", "garage", "whole"] as const).flatMap((name) => {
    const ofClass = floors.filter((level) => liveClass(level) === name);
    return ofClass.length > 0 ? [classReduction(name, ofClass, sum(ofClass.map(influenceOf)))] : [];
  });
  const partitionKip = sum(floors.map((level) => (level.partitionPsf * level.tributaryFt2) / LB_PER_KIP));
  const load: ColumnLoadKip = {
    deadKip,
    // What people or cars bring to a roof is live load of its own.
    liveKip: sum(reductions.map((part) => part.liveKip)) + partitionKip + sum(above.filter(({kind}) => kind === "roof").map((level) => levelAdds(level).liveKip)),
    roofKip: sum(above.map((level) => levelAdds(level).roofKip)),
  };
  const [factored, service] = [combined(load, FACTORED), combined(load, SERVICE)];
  return {
    ...load, floors: floors.length, reductions,
    tributaryFt2: sum(floors.map((level) => level.tributaryFt2)),
    influenceFt2: sum(floors.map(influenceOf)),
    unreducedLiveKip: sum(floors.map((level) => levelAdds(level).liveKip)),
    factored, service, governing: greatest(factored), governingService: greatest(service),
  };
}

function classReduction(name: LiveClass, floors: readonly ColumnLevel[], influenceFt2: number): ClassReduction {
  // Stryker disable next-line EqualityOperator: of two alike either may lead
  const heaviest = floors.reduce((most, level) => (level.livePsf > most.livePsf ? level : most));
  const reduction = reduceLiveLoad({livePsf: heaviest.livePsf, rule: heaviest.rule, influenceFt2, floors: floors.length});
  // Within a class the factor depends on area and number of floors alone, so one holds for all of them.
  const liveKip = sum(floors.map((level) => (reduction.factor * level.livePsf * level.tributaryFt2) / LB_PER_KIP));
  return {liveClass: name, floors: floors.length, influenceFt2, reduction, liveKip};
}

function sum(values: readonly number[]): number {
  return values.reduce((total, value) => total + value, 0);
}

import {requireChoice, requireNumber} from "../check.js";
import {reduceLiveLoad, type Reduction} from "../loads/reduction.js";
import {LB_PER_KIP} from "../units.js";
import {combined, FACTORED, greatest, SERVICE, type ColumnLoadKip, type CombinedKip} from "./columnCombinations.js";
import {COLUMN_POSITIONS, columnFactor, LIVE_CLASSES, liveClass, requireLevels, type ColumnLevel, type ColumnPosition, type FloorLive, type LiveClass} from "./levels.js";

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
  return takedowns(input)(input.columnPlf);
}

/** The same for any weight of the column, plf: sizes that are tried one after the other share all but their own weight. */
export function takedowns(input: Omit<TakedownInput, "columnPlf">): (columnPlf: number) => Takedown {
  const position = requireChoice(input.position, {path: "position", label: "position of the column", choices: COLUMN_POSITIONS});
  const elementFactor = columnFactor(position, input.cantilever);
  const alternatives = input.rooms?.map((room) => input.levels.map((level) => (level.kind === "floor" ? under(room, level) : level))) ?? [input.levels];
  // Stryker disable next-line ArrayDeclaration: there is always one
  const [first = [], ...others] = alternatives.map((levels) => variableLoads(requireLevels(levels), elementFactor));
  // Dead and roof load are those of all alternatives, so the one with most live load leads in every combination.
  // Stryker disable next-line EqualityOperator: of two alike either may lead
  const variable = first.map((story, i) => others.reduce((most, other) => ((other[i] as VariableLoad).liveKip > most.liveKip ? other[i] as VariableLoad : most), story));
  return (columnPlf) => {
    requireNumber(columnPlf, {path: "columnPlf", label: "column's weight", unit: "plf", min: 0, max: 10000});
    let deadKip = 0;
    return {elementFactor, stories: variable.map((story) => {
      const columnKip = (columnPlf * story.level.storyHeightFt) / LB_PER_KIP;
      deadKip += story.adds.deadKip + columnKip;
      return storyLoad(story, columnKip, deadKip);
    })};
  };
}

/** A floor with another room on it. */
function under({livePsf, rule, partitionPsf}: FloorLive, level: ColumnLevel): ColumnLevel {
  return {...level, livePsf, rule, partitionPsf};
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
    liveKip: (roof ? kip(level.usePsf ?? 0) : variableKip) + (level.stripLiveKip ?? 0),
    roofKip: (roof ? variableKip : kip(level.weatherPsf ?? 0)) + (level.stripWeatherKip ?? 0),
  };
}

/** What a story carries besides dead load, whatever the column weighs. */
type VariableLoad = Omit<StoryLoad, "columnKip" | "deadKip" | "factored" | "service" | "governing" | "governingService">;

/** Every story's load that comes and goes, top first, each with all levels above it. */
function variableLoads(levels: readonly ColumnLevel[], elementFactor: number): VariableLoad[] {
  const classes = LIVE_CLASSES.map((name) => ({name, floors: [] as ColumnLevel[], influenceFt2: 0}));
  let [floors, tributaryFt2, influenceFt2, unreducedLiveKip, partitionKip, useKip, roofKip] = [0, 0, 0, 0, 0, 0, 0];
  return levels.map((level): VariableLoad => {
    const adds = levelAdds(level);
    if (level.kind === "floor") {
      const levelFt2 = level.influenceFt2 ?? elementFactor * level.tributaryFt2;
      const own = classes.find(({name}) => name === liveClass(level)) as (typeof classes)[number];
      own.floors.push(level);
      own.influenceFt2 += levelFt2;
      floors += 1;
      tributaryFt2 += level.tributaryFt2;
      influenceFt2 += levelFt2;
      unreducedLiveKip += adds.liveKip;
      partitionKip += (level.partitionPsf * level.tributaryFt2) / LB_PER_KIP + (level.stripLiveKip ?? 0);
    } else {
      // What people or cars bring to a roof is live load of its own.
      useKip += adds.liveKip;
    }
    roofKip += adds.roofKip;
    const reductions = classes.filter((one) => one.floors.length > 0).map((one) => classReduction(one.name, one.floors, one.influenceFt2));
    let reducedKip = 0;
    for (const {liveKip} of reductions) reducedKip += liveKip;
    return {level, adds, liveKip: reducedKip + partitionKip + useKip, roofKip, floors, reductions, tributaryFt2, influenceFt2, unreducedLiveKip};
  });
}

/** A story's load with the column's own weight in it and above it. */
function storyLoad({level, adds, liveKip, roofKip, floors, reductions, tributaryFt2, influenceFt2, unreducedLiveKip}: VariableLoad, columnKip: number, deadKip: number): StoryLoad {
  const load: ColumnLoadKip = {deadKip, liveKip, roofKip};
  const [factored, service] = [combined(load, FACTORED), combined(load, SERVICE)];
  return {
    level, columnKip, adds, deadKip, liveKip, roofKip, floors, reductions, tributaryFt2, influenceFt2, unreducedLiveKip,
    factored, service, governing: greatest(factored), governingService: greatest(service),
  };
}

function classReduction(name: LiveClass, floors: readonly ColumnLevel[], influenceFt2: number): ClassReduction {
  // Stryker disable next-line EqualityOperator: of two alike either may lead
  const heaviest = floors.reduce((most, level) => (level.livePsf > most.livePsf ? level : most));
  const reduction = reduceLiveLoad({livePsf: heaviest.livePsf, rule: heaviest.rule, influenceFt2, floors: floors.length});
  // Within a class the factor depends on area and number of floors alone, so one holds for all of them.
  let liveKip = 0;
  for (const level of floors) liveKip += (reduction.factor * level.livePsf * level.tributaryFt2) / LB_PER_KIP;
  return {liveClass: name, floors: floors.length, influenceFt2, reduction, liveKip};
}

import type {Catalog} from "../catalog.js";
import type {Design, Preferences} from "../design/design.js";
import {deckName} from "./deckName.js";
import {exceeds} from "../checks.js";
import {camber} from "../member/camber.js";
import type {Member} from "../member/member.js";
import {transfer} from "../member/transfer.js";
import {pairText} from "../pair.js";
import {parsePattern, type Profile} from "../prestress/pattern.js";
import type {Criteria} from "./criteria.js";
import {failedWorkingGates, losesBy} from "./gates.js";
import type {LimitName} from "./limits.js";
import {safeLoad, type SafeLoad} from "./safeLoad.js";
import type {DeckConditions} from "./table.js";
import {deckTrials, ownStrand, trialMember, type DeckTrials, type TrialDemand} from "./trials.js";

/** What makes a candidate cheaper or more expensive, in the trade's eyes. All but `depressed` are compared as ratios. */
export interface CandidateMeasures {
  /** Member and topping, in. */
  readonly depthIn: number;
  /** Strand per square foot of floor, lb. */
  readonly strandPsf: number;
  /** Member and topping, psf. */
  readonly weightPsf: number;
  /** Members to cover a hundred feet along the edge. */
  readonly piecesPer100Ft: number;
  readonly depressed: boolean;
}

/**
 * A deck that might do. Of its profile it has the smallest strand that works, and the fewest of them; where none works,
 * the first pattern that carries the load, or the strongest where none carries it.
 */
export interface Candidate {
  readonly id: string;
  readonly designation: string;
  readonly pattern: string;
  readonly profile: Profile;
  readonly toppingIn: number;
  readonly member: Member;
  readonly safe: SafeLoad;
  readonly releaseStrengthNeededPsi: number;
  readonly longTermCamberIn: number;
  readonly measures: CandidateMeasures;
  /** The gates that it does not pass: transfer, vibration, fire. */
  readonly gates: readonly LimitName[];
  /** Whether it carries the load and passes the gates. */
  readonly works: boolean;
  /** Penalty by each preference, weighted; 0 is the best of all that work. */
  readonly penalties: Readonly<Record<keyof Preferences, number>>;
  /** Sum of the penalties; the lower the better. */
  readonly score: number;
  /** Why it is first, or why it lost, in a sentence. */
  readonly reason: string;
}

/** What the floor requires of its deck. */
export interface DeckDemand extends TrialDemand {
  readonly spanFt: number;
  /** Superimposed dead and live load, psf, for a member of the given width. */
  readonly demandPsf: (memberWidthFt: number) => number;
  readonly criteria: Criteria;
  readonly preferences: Preferences;
}

/**
 * The candidates of the catalog for a floor, in the design's own concrete and topping, those that work first, best first.
 *
 * For each member, topping and profile the fewest strands that work are taken: more would only cost more. A larger
 * strand is tried only where no number of a smaller one works.
 */
export function searchDeck(catalog: Catalog, demand: DeckDemand): Candidate[] {
  const trials = deckTrials(catalog, demand, {toppingsIn: [], concretes: [demand.conditions]}).flatMap((of) => bestOf(catalog, of, demand));
  const scored = withScores(trials, demand.preferences)
    .sort((a, b) => Number(b.works) - Number(a.works) || (a.works ? a.score - b.score : b.safe.safeLoadPsf - a.safe.safeLoadPsf));
  const first = scored.find((candidate) => candidate.works);
  return scored.map((candidate) => ({...candidate, reason: reasonFor(candidate, first, demand)}));
}

/** Candidates with their penalties, each beside the best of those that work. */
export function withScores<T extends Pick<Candidate, "measures" | "works">>(trials: readonly T[], preferences: Preferences): (T & Pick<Candidate, "penalties" | "score">)[] {
  const working = trials.filter((trial) => trial.works);
  const best = (pick: (measures: CandidateMeasures) => number) => Math.min(...working.map((trial) => pick(trial.measures)));
  const least = {
    depthIn: best((m) => m.depthIn), strandPsf: best((m) => m.strandPsf),
    weightPsf: best((m) => m.weightPsf), piecesPer100Ft: best((m) => m.piecesPer100Ft),
  };
  return trials.map((trial) => {
    const penalties = penaltiesOf(trial.measures, least, preferences);
    return {...trial, penalties, score: Object.values(penalties).reduce((sum, penalty) => sum + penalty, 0)};
  });
}

/** The demand that a design makes on candidates of any width. */
export function deckDemand(
  design: Design, catalog: Catalog, criteria: Criteria, demandPsf: (memberWidthFt: number) => number,
): DeckDemand {
  const {concrete: concreteKind, strengthPsi, releaseStrengthPsi, toppingIn, toppingStrengthPsi} = design.deck;
  return {
    spanFt: design.bay.spanFt,
    demandPsf,
    criteria,
    conditions: {concreteKind, strengthPsi, releaseStrengthPsi, toppingIn, toppingStrengthPsi, humidityPercent: design.criteria.humidityPercent},
    preferences: design.preferences,
    consider: design.consider,
    own: ownStrand(catalog, design.deck),
  };
}

type Trial = Omit<Candidate, "penalties" | "score" | "reason">;

/** A pattern that was tried: what tells it from better ones, and no more. */
interface Tried {
  readonly conditions: DeckConditions;
  readonly pattern: string;
  readonly member: Member;
  readonly safe: SafeLoad;
  readonly carries: boolean;
  /** The gates that it does not pass; looked at only where it carries the load. */
  readonly gates: readonly LimitName[] | undefined;
}

const works = ({gates}: Tried): boolean => gates?.length === 0;

/** The trial of each profile that counts, of one member with one topping. */
function bestOf(catalog: Catalog, of: DeckTrials, demand: DeckDemand): Trial[] {
  const byProfile = new Map<Profile, Tried>();
  for (const conditions of of.conditions) for (const pattern of of.patterns) {
    const {profile} = parsePattern(pattern);
    const best = byProfile.get(profile);
    if (best && works(best)) continue;
    const member = trialMember(catalog, of, pattern, conditions);
    if (!member) continue;
    const tried = tryMember(member, pattern, conditions, demand);
    // Of those that fail, the first that carries the load tells more than a stronger one would.
    // Stryker disable next-line EqualityOperator: of two alike either does
    if (!best || works(tried) || (!best.carries && tried.safe.safeLoadPsf > best.safe.safeLoadPsf)) byProfile.set(profile, tried);
  }
  return [...byProfile.values()].map((tried) => trialOf(of, tried, demand));
}

function tryMember(member: Member, pattern: string, conditions: DeckConditions, {spanFt, criteria, demandPsf}: DeckDemand): Tried {
  const safe = safeLoad(member, spanFt, criteria);
  const carries = !exceeds(demandPsf(member.widthFt), safe.safeLoadPsf);
  return {conditions, pattern, member, safe, carries, gates: carries ? failedWorkingGates(member, spanFt, criteria) : undefined};
}

function trialOf({row}: DeckTrials, tried: Tried, {spanFt, criteria}: DeckDemand): Trial {
  const {member, pattern, safe, conditions: {toppingIn}} = tried;
  return {
    id: deckName(row.designation, toppingIn, pattern),
    designation: row.designation, pattern, profile: member.layout.profile, toppingIn, member, safe,
    releaseStrengthNeededPsi: transfer(member, spanFt).releaseStrengthNeededPsi,
    longTermCamberIn: camber(member, spanFt, criteria.superimposedDeadPsf * member.widthFt).longTermIn,
    measures: candidateMeasures(member),
    gates: tried.gates ?? failedWorkingGates(member, spanFt, criteria),
    works: works(tried),
  };
}

/** What makes a member cheaper or more expensive. */
export function candidateMeasures({compression, layout, widthFt, selfWeightPlf, toppingWeightPlf}: Member): CandidateMeasures {
  return {
    depthIn: compression.depthIn,
    strandPsf: (layout.count * layout.strand.weightPlf) / widthFt,
    weightPsf: (selfWeightPlf + toppingWeightPlf) / widthFt,
    piecesPer100Ft: 100 / widthFt,
    depressed: layout.profile !== "straight",
  };
}

type Least = Omit<CandidateMeasures, "depressed">;

/** Depressing the strand counts as much as costing half as much again. */
const DEPRESSED_EXCESS = 0.5;

function penaltiesOf(m: CandidateMeasures, least: Least, weights: Preferences): Record<keyof Preferences, number> {
  // Where none works there is no least, and nothing exceeds it: it is infinite.
  const excess = (value: number, best: number) => Math.max(0, value / best - 1);
  return {
    shallow: weights.shallow * excess(m.depthIn, least.depthIn),
    fewStrands: weights.fewStrands * excess(m.strandPsf, least.strandPsf),
    straight: weights.straight * (m.depressed ? DEPRESSED_EXCESS : 0),
    light: weights.light * excess(m.weightPsf, least.weightPsf),
    wide: weights.wide * excess(m.piecesPer100Ft, least.piecesPer100Ft),
  };
}

/** A candidate before it is said why it is first or lost. */
type ScoredDeck = Omit<Candidate, "reason">;

const WORDS: Readonly<Record<keyof Preferences, (c: ScoredDeck, first: ScoredDeck) => string>> = {
  shallow: (c, first) => `is ${round(c.measures.depthIn - first.measures.depthIn, 2)} in deeper`,
  fewStrands: (c, first) => `takes ${round(100 * (c.measures.strandPsf / first.measures.strandPsf - 1))} % more strand`,
  straight: () => "needs its strand depressed",
  light: (c, first) => `is ${round(c.measures.weightPsf - first.measures.weightPsf)} psf heavier`,
  wide: (c, first) => `takes ${round(100 * (c.measures.piecesPer100Ft / first.measures.piecesPer100Ft - 1))} % more pieces to haul and lift`,
};

/** Why a deck does not work, in a sentence; undefined where it does. */
export function whyNot({member, safe, gates}: Pick<Candidate, "member" | "safe" | "gates">, demand: DeckDemand): string | undefined {
  const neededPsf = demand.demandPsf(member.widthFt);
  if (exceeds(neededPsf, safe.safeLoadPsf)) {
    const {asked, given} = pairText(neededPsf, safe.safeLoadPsf);
    return `Carries ${given} of the ${asked} psf required, at its strongest; ${safe.governs} governs.`;
  }
  const [gate] = gates;
  return gate && losesBy(gate, member, demand.spanFt, demand.criteria);
}

/** Why a deck is first, or why it lost, in a sentence. */
function reasonFor(candidate: ScoredDeck, first: ScoredDeck | undefined, demand: DeckDemand): string {
  const stops = whyNot(candidate, demand);
  if (stops !== undefined) return stops;
  if (!first || candidate === first) return "The best by your weights.";
  const losses = (Object.keys(WORDS) as (keyof Preferences)[])
    .map((key) => ({key, margin: candidate.penalties[key] - first.penalties[key]}))
    // Stryker disable next-line EqualityOperator: a margin that small is not told
    .filter(({margin}) => margin > 0.005)
    .sort((a, b) => b.margin - a.margin)
    .slice(0, 2)
    .map(({key}) => WORDS[key](candidate, first));
  return losses.length > 0 ? `Works, but next to ${first.id} it ${losses.join(" and ")}.` : "As good as the first by your weights.";
}

function round(value: number, places = 0): number {
  return Number(value.toFixed(places));
}

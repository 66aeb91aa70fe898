import type {Catalog, DeckMemberRow} from "../catalog.js";
import type {Consider} from "../design/design.js";
import {deckName} from "./deckName.js";
import {exceeds} from "../checks.js";
import {InputError} from "../errors.js";
import type {CarbonFactor} from "../materials/carbon.js";
import type {ConcreteKind} from "../materials/concrete.js";
import type {Member} from "../member/member.js";
import {parsePattern, type Profile} from "../prestress/pattern.js";
import {shapeOf} from "../sections/designation.js";
import type {Shape} from "../sections/shape.js";
import type {Criteria} from "./criteria.js";
import {dominates, nonDominated} from "./dominance.js";
import {failedWorkingGates} from "./gates.js";
import type {LimitName} from "./limits.js";
import {deckMeasures, measureValues, MEASURES, type DeckMeasures, type MeasureName} from "./measures.js";
import {safeLoad} from "./safeLoad.js";
import type {DeckDemand} from "./search.js";
import {patternMember, usualPatterns, type DeckConditions} from "./table.js";

/** A deck that carries the floor, as plain data. */
export interface FrontierDeck {
  /** Its name among all decks: member, topping, pattern and concrete. */
  readonly id: string;
  readonly designation: string;
  readonly use: DeckMemberRow["use"];
  readonly pattern: string;
  /** Depressed strand is no measure, but a reader wants to know of it. */
  readonly profile: Profile;
  readonly toppingIn: number;
  readonly concreteKind: ConcreteKind;
  readonly strengthPsi: number;
  readonly releaseStrengthPsi: number;
  readonly safeLoadPsf: number;
  /** What the floor asks of a member of its width, psf. */
  readonly askedPsf: number;
  readonly governs: LimitName;
  readonly measures: DeckMeasures;
}

/** What a search for non-dominated decks found. */
export interface Frontier {
  /** The decks that no other beats: each has less of something than every other that works. Shallowest first. */
  readonly decks: readonly FrontierDeck[];
  /** The measures of every deck that works, in the order of {@link MEASURES}. */
  readonly working: readonly (readonly number[])[];
  /** Decks that were worked out, and how many of them carry the floor. */
  readonly tried: number;
  readonly worked: number;
}

/** How far a search is: decks tried and those found to work, of how many. */
export interface FrontierProgress {
  readonly tried: number;
  readonly worked: number;
  readonly total: number;
}

/** Strengths of concrete that are tried, psi at 28 days; plants seldom cast prestressed pieces of less (common practice). */
export const STRENGTHS_PSI = [5000, 6000, 7000, 8000] as const;
const CONCRETE_KINDS: readonly ConcreteKind[] = ["normalweight", "sand-lightweight"];
/** Toppings that are tried where a member takes one, in. */
export const TOPPINGS_IN = [2, 2.5, 3, 4] as const;
/** Strands that are tried, sixteenths of an inch: 3/8 and 1/2 in planks, 1/2 and 0.6 in tees (common practice). */
const STRANDS: Readonly<Record<"tee" | "plank", readonly number[]>> = {tee: [8, 10], plank: [6, 8]};
/** The release strength is given to the nearest of these, psi. */
const RELEASE_STEP_PSI = 10;

/** For a search that looks at everything, whatever a design considers. */
export const EVERY_KIND: Consider = {fieldToppedTees: true, pretoppedTees: true, planks: true};

/** One combination to try. */
interface Trial {
  readonly row: DeckMemberRow;
  readonly shape: Shape;
  readonly pattern: string;
  readonly conditions: DeckConditions;
}

/**
 * Searches all members of the kinds considered, with every usual pattern, topping and concrete, for the decks that
 * carry a floor and that no other beats in depth, weight, strand, concrete and embodied carbon together.
 *
 * The concretes have the release strength in the share that the design's own has; the design's own strength, topping
 * and strand are among those that are tried. A deck works if its safe load is what the floor asks and it passes the
 * gates of transfer, vibration and fire. Yields how far it is.
 */
export function* frontier(
  catalog: Catalog, demand: DeckDemand, factors: readonly CarbonFactor[], ownPattern?: string,
): Generator<FrontierProgress, Frontier> {
  const own = ownPattern === undefined ? undefined : parsePattern(ownPattern).sixteenths;
  const batches = catalog.deckMembers
    .filter((row) => considered(row, demand))
    .flatMap((row) => {
      const shape = shapeOf(catalog, row.designation);
      return toppingsOf(row, demand).map((toppingIn) => trialsOf(row, shape, toppingIn, demand, own));
    });
  const total = batches.reduce((sum, batch) => sum + batch.length, 0);
  const works: FrontierDeck[] = [];
  let tried = 0;
  for (const batch of batches) {
    for (const trial of batch) {
      const deck = tryDeck(catalog, trial, demand, factors);
      if (deck) works.push(deck);
      tried += 1;
    }
    yield {tried, worked: works.length, total};
  }
  return {
    decks: leastIn(works, MEASURES), working: works.map(({measures}) => measureValues(measures)), tried, worked: works.length,
  };
}

/**
 * The decks that no other beats in the measures named. Of decks that are equal in those, the one with the least of the
 * other measures is kept, then straight strand before depressed.
 */
export function leastIn<T extends Pick<FrontierDeck, "id" | "profile" | "measures">>(decks: readonly T[], names: readonly MeasureName[]): T[] {
  return nonDominated(decks, ({measures}) => measureValues(measures, names), rank);
}

/** Release strength as a share of the strength, in whole hundredths: the share that every concrete of a search is given. */
export function releaseShare({strengthPsi, releaseStrengthPsi}: Pick<DeckConditions, "strengthPsi" | "releaseStrengthPsi">): number {
  return Math.round((100 * releaseStrengthPsi) / strengthPsi) / 100;
}

/**
 * What a design's own deck adds to the trials of a search. Two designs that add the same have the same trials, but for
 * the release strength at the design's own strength, which is its own to the last psi.
 */
export function ownTrials({strengthPsi, releaseStrengthPsi, toppingIn}: Pick<DeckConditions, "strengthPsi" | "releaseStrengthPsi" | "toppingIn">, pattern: string): readonly number[] {
  const {sixteenths} = parsePattern(pattern);
  const beside = (value: number, usual: readonly number[]) => (usual.includes(value) ? [] : [value]);
  return [
    releaseShare({strengthPsi, releaseStrengthPsi}), ...beside(strengthPsi, STRENGTHS_PSI),
    ...(toppingIn > 0 ? beside(toppingIn, TOPPINGS_IN) : []), ...beside(sixteenths, STRANDS.tee), ...beside(sixteenths, STRANDS.plank),
  ];
}

/** Whether a member passes what any candidate must pass besides carrying the load; see {@link failedWorkingGates}. */
export function passesGates(member: Member, spanFt: number, criteria: Criteria): boolean {
  return failedWorkingGates(member, spanFt, criteria).length === 0;
}

/** Those of some decks that beat a deck of given measures: no worse in any of them and better in one. */
export function beating<T extends Pick<FrontierDeck, "measures">>(decks: readonly T[], measures: DeckMeasures): T[] {
  const values = measureValues(measures);
  return decks.filter((deck) => dominates(measureValues(deck.measures), values));
}

function rank(a: Pick<FrontierDeck, "id" | "profile" | "measures">, b: Pick<FrontierDeck, "id" | "profile" | "measures">): number {
  for (const name of MEASURES) {
    const difference = a.measures[name] - b.measures[name];
    if (difference !== 0) return difference;
  }
  return Number(a.profile !== "straight") - Number(b.profile !== "straight") || (a.id < b.id ? -1 : Number(a.id > b.id));
}

function considered({use}: DeckMemberRow, {consider}: DeckDemand): boolean {
  return use === "plank" ? consider.planks : use === "pretopped" ? consider.pretoppedTees : consider.fieldToppedTees;
}

function toppingsOf({use}: DeckMemberRow, {conditions}: DeckDemand): readonly number[] {
  if (use === "pretopped") return [0];
  const topped = ordered([...TOPPINGS_IN, ...(conditions.toppingIn > 0 ? [conditions.toppingIn] : [])]);
  return use === "plank" ? [0, ...topped] : topped;
}

function trialsOf(row: DeckMemberRow, shape: Shape, toppingIn: number, {conditions}: DeckDemand, ownSixteenths: number | undefined): Trial[] {
  const share = releaseShare(conditions);
  const strands = ordered([...STRANDS[row.use === "plank" ? "plank" : "tee"], ...(ownSixteenths === undefined ? [] : [ownSixteenths])]);
  const patterns = strands.flatMap((sixteenths) => usualPatterns(row, sixteenths));
  return CONCRETE_KINDS.flatMap((concreteKind) => ordered([...STRENGTHS_PSI, conditions.strengthPsi]).flatMap((strengthPsi) => {
    const releaseStrengthPsi = strengthPsi === conditions.strengthPsi ? conditions.releaseStrengthPsi
      : Math.min(strengthPsi, Math.max(2500, Math.round((share * strengthPsi) / RELEASE_STEP_PSI) * RELEASE_STEP_PSI));
    const made = {...conditions, concreteKind, strengthPsi, releaseStrengthPsi, toppingIn};
    return patterns.map((pattern) => ({row, shape, pattern, conditions: made}));
  }));
}

/** The deck of a trial if it works; undefined if it does not, or its strands do not fit the member. */
function tryDeck(catalog: Catalog, trial: Trial, demand: DeckDemand, factors: readonly CarbonFactor[]): FrontierDeck | undefined {
  const {row, pattern, conditions} = trial;
  const member = memberOf(catalog, trial);
  if (!member) return undefined;
  const {spanFt, criteria} = demand;
  const askedPsf = demand.demandPsf(member.widthFt);
  const {safeLoadPsf, governs} = safeLoad(member, spanFt, criteria);
  if (exceeds(askedPsf, safeLoadPsf)) return undefined;
  if (!passesGates(member, spanFt, criteria)) return undefined;
  const {concreteKind, strengthPsi, releaseStrengthPsi, toppingIn} = conditions;
  const {designation, use} = row;
  return {
    id: frontierId({designation, pattern, toppingIn, concreteKind, strengthPsi}),
    designation, use, pattern, profile: member.layout.profile, toppingIn, concreteKind, strengthPsi, releaseStrengthPsi,
    safeLoadPsf, askedPsf, governs, measures: deckMeasures(member, factors),
  };
}

/** A deck's name: `10DT24+2 108-S, 6000 psi`, with a word where it is lightweight. */
export function frontierId(
  {designation, pattern, toppingIn, concreteKind, strengthPsi}: Pick<FrontierDeck, "designation" | "pattern" | "toppingIn" | "concreteKind" | "strengthPsi">,
): string {
  return `${deckName(designation, toppingIn, pattern)}, ${strengthPsi} psi${concreteKind === "normalweight" ? "" : " lightweight"}`;
}

function memberOf(catalog: Catalog, {row, shape, pattern, conditions}: Trial): Member | undefined {
  try {
    return patternMember(catalog, row, pattern, conditions, shape);
  } catch (problem) {
    // Strands that do not fit make no deck; anything else is a fault.
    if (problem instanceof InputError) return undefined;
    throw problem;
  }
}

/** Numbers without repeats, least first. */
function ordered(values: readonly number[]): number[] {
  return [...new Set(values)].sort((a, b) => a - b);
}

import type {Catalog, DeckMemberRow} from "../catalog.js";
import type {Consider} from "../design/design.js";
import {fieldOf} from "../design/fields.js";
import {deckName} from "./deckName.js";
import {exceeds} from "../checks.js";
import type {CarbonFactor} from "../materials/carbon.js";
import type {ConcreteKind} from "../materials/concrete.js";
import type {Member} from "../member/member.js";
import type {Profile} from "../prestress/pattern.js";
import type {Criteria} from "./criteria.js";
import {dominates, nonDominated} from "./dominance.js";
import {failedWorkingGates} from "./gates.js";
import type {LimitName} from "./limits.js";
import {deckMeasures, measureValues, MEASURES, type DeckMeasures, type MeasureName} from "./measures.js";
import {safeLoad} from "./safeLoad.js";
import type {DeckDemand} from "./search.js";
import type {DeckConditions} from "./table.js";
import {deckTrials, isUsual, ordered, trialMember, type DeckTrials, type OwnStrand} from "./trials.js";

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
  /** What the floor requires of a member of its width, psf. */
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
  /** Decks that were computed, and how many of them carry the floor. */
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
/** The release strength is given to the nearest of these, psi. */
const RELEASE_STEP_PSI = 10;

/** For a search that looks at everything, whatever a design considers. */
export const EVERY_KIND: Consider = {fieldToppedTees: true, pretoppedTees: true, planks: true};

/**
 * Searches all members of the kinds considered, with every usual pattern, topping and concrete, for the decks that
 * carry a floor and that no other beats in depth, weight, strand, concrete and embodied carbon together.
 *
 * The concretes have the release strength in the share that the design's own has; the design's own strength and topping
 * are among those that are tried, and its strand in its kind of member. A deck works if its safe load is what the floor
 * requires and it passes the gates of transfer, vibration and fire. Yields how far it is.
 */
export function* frontier(
  catalog: Catalog, demand: DeckDemand, factors: readonly CarbonFactor[],
): Generator<FrontierProgress, Frontier> {
  const batches = deckTrials(catalog, demand, {toppingsIn: TOPPINGS_IN, concretes: concretesOf(demand.conditions)});
  const total = batches.reduce((sum, {patterns, conditions}) => sum + patterns.length * conditions.length, 0);
  const works: FrontierDeck[] = [];
  let tried = 0;
  for (const batch of batches) {
    for (const conditions of batch.conditions) for (const pattern of batch.patterns) {
      const deck = tryDeck(catalog, batch, pattern, conditions, demand, factors);
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
export function ownTrials({strengthPsi, releaseStrengthPsi, toppingIn}: Pick<DeckConditions, "strengthPsi" | "releaseStrengthPsi" | "toppingIn">, own: OwnStrand): readonly unknown[] {
  const beside = (value: number, usual: readonly number[]) => (usual.includes(value) ? [] : [value]);
  return [
    releaseShare({strengthPsi, releaseStrengthPsi}), ...beside(strengthPsi, STRENGTHS_PSI),
    ...(toppingIn > 0 ? beside(toppingIn, TOPPINGS_IN) : []), ...(isUsual(own) ? [] : [own]),
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
  // Stryker disable next-line EqualityOperator: no two decks have one name
  return Number(a.profile !== "straight") - Number(b.profile !== "straight") || (a.id < b.id ? -1 : 1);
}

/** Both kinds of concrete in all strengths, each with its share of strength at release. */
function concretesOf(own: DeckConditions): DeckConditions[] {
  const share = releaseShare(own);
  return CONCRETE_KINDS.flatMap((concreteKind) => ordered([...STRENGTHS_PSI, own.strengthPsi]).map((strengthPsi) => {
    const releaseStrengthPsi = strengthPsi === own.strengthPsi ? own.releaseStrengthPsi
      : Math.max(fieldOf("deck.releaseStrengthPsi").min, Math.round((share * strengthPsi) / RELEASE_STEP_PSI) * RELEASE_STEP_PSI);
    return {...own, concreteKind, strengthPsi, releaseStrengthPsi};
  }));
}

/** The deck of a trial if it works; undefined if it does not, or its strands do not fit the member. */
function tryDeck(
  catalog: Catalog, of: DeckTrials, pattern: string, conditions: DeckConditions, demand: DeckDemand, factors: readonly CarbonFactor[],
): FrontierDeck | undefined {
  const member = trialMember(catalog, of, pattern, conditions);
  if (!member) return undefined;
  const {spanFt, criteria} = demand;
  const askedPsf = demand.demandPsf(member.widthFt);
  const {safeLoadPsf, governs} = safeLoad(member, spanFt, criteria);
  if (exceeds(askedPsf, safeLoadPsf)) return undefined;
  if (!passesGates(member, spanFt, criteria)) return undefined;
  const {concreteKind, strengthPsi, releaseStrengthPsi, toppingIn} = conditions;
  const {designation, use} = of.row;
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

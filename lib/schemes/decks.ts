import type {Catalog} from "../catalog.js";
import {designCriteria} from "../deck/criteria.js";
import {deckName} from "../deck/deckName.js";
import {deckResult, deckState, type DeckResult, type DeckState} from "../deck/deckResult.js";
import {deckDemand, whyNot, type DeckDemand} from "../deck/search.js";
import {seriesOf, type Series} from "../deck/series.js";
import {deckTrials} from "../deck/trials.js";
import {firstToWork, nearestDeck, nearestOnSeat, onAnySeat, workingDecks, type FirstToWork, type NearestDeck, type WorkingDeck} from "../deck/working.js";
import type {Design} from "../design/design.js";
import {floorLoads, loadOn, underMembers, type FloorLoads} from "../loads/floorLoads.js";
import type {Member} from "../member/member.js";
import {onGrid, type SettledTopping} from "../topping/fixedPoint.js";
import {neighbors, type Neighbors} from "../topping/neighbors.js";
import {settledTopping, underTrueWeight, type UnderTrueWeight} from "../topping/floorTopping.js";
import {feet} from "../units.js";
import type {DeckConditions} from "../deck/table.js";
import {parsePattern} from "../prestress/pattern.js";
import type {Choices} from "./grid.js";
import {guessedSideIn} from "./columnRule.js";
import {Kept, lazy} from "../kept.js";
import {ladder, once} from "./least.js";
import {rowFaults} from "./rowFaults.js";

/** A deck by rule: the best of its kind by the brief's preferences that passes all of its own checks, whose stems stand on their beams and whose edge reaches the end line. */
export interface ChosenDeck extends Pick<WorkingDeck, "id" | "designation" | "pattern" | "member" | "works"> {
  /** Those that are better by the preferences, of which more fails. */
  readonly passedOver: readonly string[];
}

/** A candidate with how many of its own checks fail. */
type Settled = Omit<ChosenDeck, "passedOver"> & {readonly fails: number};

/** Patterns with more strands that are tried where a candidate's own fails something. */
const MORE_PATTERNS = 3;

/** No deck of the kind carries the span, and why the strongest does not. */
export interface NoDeck {
  readonly none: string;
}

/** What a scheme asks of its deck beyond what its choices say; found where a first deck fails under it. */
export interface Beside {
  /** Superimposed load beyond the floor's own that some piece or level of it must carry, psf. */
  readonly psf: number;
  /** Side of the columns that the row of tees must clear, in, where it is more than the first guess. */
  readonly sideIn: number;
}
export const NOTHING_BESIDE: Beside = {psf: 0, sideIn: 0};

/** Candidates whose checks are looked at, and beyond these the best of each other member; where all fail something, the one of which least fails is taken. */
const LOOKED_AT = 8;

/** Kinds of deck whose members are kept: one of each topping, concrete and strand that a brief tries. */
const KINDS_KEPT = 60;
/** Decks whose checks and toppings are kept: those of one span on a few lengths of seat. */
const DECKS_KEPT = 150;

/** The loads of a plan under members of a width, ft. */
type LoadsUnder = (memberWidthFt: number) => FloorLoads;

/** What the decks of a kind have to carry on one plan. */
interface OnPlan {
  readonly series: readonly Series[];
  readonly loads: LoadsUnder;
  /** All that a member of a width has to carry, psf, by that width, ft. */
  readonly demandsPsf: ReadonlyMap<number, number>;
  readonly superimposedDeadPsf: number;
  readonly under: UnderLoad;
}

/** What plans of one span share under which their decks carry the same. */
interface UnderLoad {
  /** Those that do whatever the length of their seat, and the nearest where none does. */
  readonly first: () => readonly FirstToWork[];
  readonly nearest: () => NearestDeck | undefined;
  readonly onSeats: Kept<OnSeat, number>;
}

/** The decks that do on a seat, best first, and those that were looked at closely. */
interface OnSeat {
  readonly ranked: readonly WorkingDeck[] | NoDeck;
  readonly settled: Map<WorkingDeck, Settled>;
}

/** Plans whose loads are kept, and loads whose decks are. */
const PLANS_KEPT = 200;
/** Lengths of seat for which the decks of one load are kept. */
const SEATS_KEPT = 20;

/**
 * Chooses decks for many floors: members are made once, and one choice serves every floor that asks the same of its deck.
 */
export class DeckRule {
  readonly #series = new Kept<readonly Series[]>(KINDS_KEPT);
  readonly #onPlans = new Kept<OnPlan>(PLANS_KEPT);
  readonly #underLoads = new Kept<UnderLoad>(PLANS_KEPT);
  readonly #loads = new Kept<LoadsUnder>(PLANS_KEPT);
  readonly #states = new Kept<DeckState>(DECKS_KEPT);
  readonly #heavy = new Kept<UnderTrueWeight>(DECKS_KEPT);
  readonly #toppings = new Kept<SettledTopping | undefined>(DECKS_KEPT);
  readonly #joints = new Kept<Neighbors>(DECKS_KEPT);

  constructor(private readonly catalog: Catalog) {}

  /**
   * The deck of a design whose kind, topping, concrete and seat are chosen; its own member and pattern are not looked at.
   *
   * @param only - the one member and the profile of strand that may be tried
   */
  choose(design: Design, only: Pick<Choices, "member" | "strand">, {psf: besidePsf, sideIn}: Beside = NOTHING_BESIDE): ChosenDeck | NoDeck {
    const {series, loads, demandsPsf, superimposedDeadPsf, under} = this.#onPlan(design, only, besidePsf);
    const criteria = designCriteria(design, this.catalog, superimposedDeadPsf);
    const {ranked, settled} = under.onSeats.get(criteria.seatIn, (): OnSeat => {
      const demand = deckDemand(design, this.catalog, criteria, demandsUnder(demandsPsf));
      return {ranked: rank(series, under, demand), settled: new Map()};
    });
    return "none" in ranked ? ranked : this.#best(design, series, loads, ranked, settled, sideIn);
  }

  /** Loads of a floor under members of a width; one result for all floors of the same grid. */
  loads(design: Design, widthFt: number): FloorLoads {
    return this.#loadsOn(design)(widthFt);
  }

  #loadsOn(design: Design): LoadsUnder {
    const {spanFt, beamSpanFt, baysAlong, baysAcross} = design.bay;
    return this.#loads.get(`${spanFt} ${beamSpanFt} ${baysAlong} ${baysAcross}`, () => {
      let first: FloorLoads | undefined;
      return once((widthFt) => (first ? underMembers(first, design, widthFt) : (first = floorLoads(design, this.catalog, widthFt))));
    });
  }

  /** What a design's deck comes to; floors that ask the same of it share all of that but where their load comes from. */
  result(design: Design, member: Member, loads: FloorLoads): DeckResult {
    return deckResult(design, this.catalog, member, loads, (...of) => {
      const [, spanFt, {superimposedDeadPsf, seatIn}, livePsf] = of;
      return this.#states.get(`${madeOf(design)} ${spanFt} ${superimposedDeadPsf} ${livePsf} ${seatIn}`, () => deckState(...of));
    });
  }

  /** The topping of a design's deck; undefined without one. */
  topping(design: Design, member: Member, deck: DeckResult): SettledTopping | undefined {
    const {bay} = design;
    const settled = this.#toppings.get(`${madeOf(design)} ${bay.spanFt} ${deck.superimposedDeadPsf}`, () => settledTopping(design, member, deck));
    return settled && onGrid(settled, bay);
  }

  /** Two pieces of a design's deck side by side, which no topping hides. */
  joint(design: Design, member: Member, {camber, superimposedDeadPsf}: DeckResult): Neighbors {
    const {spanFt} = design.bay;
    return this.#joints.get(`${madeOf(design)} ${spanFt} ${superimposedDeadPsf}`, () => neighbors(member, camber, spanFt));
  }

  /** What a design's deck carries beside that topping's true weight. */
  underTrueWeight(design: Design, member: Member, deck: DeckResult, settled: SettledTopping): UnderTrueWeight {
    const {spanFt} = design.bay;
    const {superimposedDeadPsf, livePsf, criteria: {seatIn}} = deck;
    return this.#heavy.get(`${madeOf(design)} ${spanFt} ${superimposedDeadPsf} ${livePsf} ${seatIn}`, () => underTrueWeight(spanFt, member, deck, settled));
  }

  #onPlan(design: Design, only: Pick<Choices, "member" | "strand">, besidePsf: number): OnPlan {
    const {bay: {spanFt, beamSpanFt, baysAlong, baysAcross}, deck: {toppingIn, concrete, strengthPsi}} = design;
    const ofKind = `${kindKey(design)} ${only.member} ${only.strand} ${toppingIn} ${concrete} ${strengthPsi}`;
    return this.#onPlans.get(`${ofKind} ${spanFt} ${beamSpanFt} ${baysAlong} ${baysAcross} ${besidePsf}`, () => {
      const series = this.#seriesOf(design, only, ofKind);
      const widthsFt = [...new Set(series.map(({of: {shape}}) => feet(shape.widthIn)))];
      const loads = this.#loadsOn(design);
      const demandsPsf = new Map(widthsFt.map((widthFt) => [widthFt, demandOn(loads(widthFt)) + besidePsf]));
      // Layers weigh the same whatever the member's width.
      const [firstFt = 1] = widthsFt;
      const {superimposedDeadPsf} = loads(firstFt);
      return {
        series, loads, demandsPsf, superimposedDeadPsf,
        under: this.#underLoads.get([ofKind, spanFt, ...demandsPsf.values()].join(" "), () => {
          const demand = onAnySeat(deckDemand(design, this.catalog, designCriteria(design, this.catalog, superimposedDeadPsf), demandsUnder(demandsPsf)));
          return {first: lazy(() => firstToWork(series, demand)), nearest: lazy(() => nearestDeck(series, demand)), onSeats: new Kept(SEATS_KEPT)};
        }),
      };
    });
  }

  #seriesOf(design: Design, {member, strand}: Pick<Choices, "member" | "strand">, ofKind: string): readonly Series[] {
    const {toppingIn} = design.deck;
    return this.#series.get(ofKind, () => {
      const demand = deckDemand(design, this.catalog, designCriteria(design, this.catalog, 0), () => 0);
      const decks = deckTrials(this.catalog, demand, {toppingsIn: [], concretes: releases(demand.conditions)})
        .filter(({row, conditions}) => (member === undefined || row.designation === member) && (row.use === "pretopped" || conditions[0]?.toppingIn === toppingIn))
        .map((of) => (strand === "any" ? of : {...of, patterns: of.patterns.filter((text) => (parsePattern(text).profile === "straight") === (strand === "straight"))}));
      return seriesOf(this.catalog, decks);
    });
  }

  #best(design: Design, series: readonly Series[], loads: LoadsUnder, ranked: readonly WorkingDeck[], known: Map<WorkingDeck, Settled>, sideIn: number): ChosenDeck {
    const inRows = new Map<string, number>();
    const faults = ({designation, member}: WorkingDeck) => {
      let found = inRows.get(designation);
      if (found === undefined) {
        // Columns of about the side that the floor asks for.
        found = rowFaults(design, member, Math.max(sideIn, guessedSideIn(design, member, loads(member.widthFt))));
        inRows.set(designation, found);
      }
      return found;
    };
    let best: {readonly settled: Settled; readonly at: number; readonly fails: number} | undefined;
    for (const {candidate, at, faults: ofRow} of fewestFirst(ranked, faults)) {
      if (best && best.fails <= ofRow) break;
      let settled = known.get(candidate);
      if (!settled) known.set(candidate, settled = this.#settle(design, series, loads, candidate));
      const fails = settled.fails + ofRow;
      if (!best || fails < best.fails || (fails === best.fails && at < best.at)) best = {settled, at, fails};
      if (fails === 0) break;
    }
    const {settled: {id, designation, pattern, member, works}, at} = best as NonNullable<typeof best>;
    return {id, designation, pattern, member, works, passedOver: ranked.slice(0, at).map((one) => one.id)};
  }

  /**
   * A candidate of which nothing fails, by a few more strands or a higher strength at release where its own do not do: the
   * search looks at the load and at release, not at stripping, hauling and the true weight of the topping. The candidate
   * itself where no such does better.
   */
  #settle(design: Design, series: readonly Series[], loads: LoadsUnder, candidate: WorkingDeck): Settled {
    const {designation, pattern, member} = candidate;
    const own = {...candidate, fails: this.#failsOf(design, loads, candidate)};
    if (own.fails === 0) return own;
    let best: Settled = own;
    const ofProfile = series.find(({of, profile}) => of.row.designation === designation && profile === member.layout.profile);
    if (!ofProfile) return own;
    const {of: {patterns, conditions}, trials} = ofProfile;
    const at = patterns.indexOf(pattern);
    for (const more of patterns.slice(at, at + 1 + MORE_PATTERNS)) for (const {releaseStrengthPsi} of conditions) {
      if (releaseStrengthPsi < member.releaseStrengthPsi) continue;
      const trial = trials.find((one) => one.pattern === more && one.conditions.releaseStrengthPsi === releaseStrengthPsi);
      if (!trial?.member) continue;
      const tried = {...candidate, id: deckName(designation, trial.conditions.toppingIn, more), pattern: more, member: trial.member};
      const fails = this.#failsOf(design, loads, tried);
      if (fails < best.fails) best = {...tried, fails};
      if (fails === 0) return best;
    }
    return best;
  }

  /** How many of a deck's own checks fail, those of the topping that levels it included. */
  #failsOf(design: Design, loads: LoadsUnder, candidate: Pick<WorkingDeck, "designation" | "pattern" | "member">): number {
    const chosen = withDeck(design, candidate);
    const deck = this.result(chosen, candidate.member, loads(candidate.member.widthFt));
    const settled = this.topping(chosen, candidate.member, deck);
    return [...deck.checks, ...(settled ? [...settled.checks, this.underTrueWeight(chosen, candidate.member, deck, settled).check] : [])].filter(({verdict}) => verdict === "fails").length;
  }
}

/** All that a floor's deck has to carry, psf. */
function demandOn(loads: FloorLoads): number {
  return loads.superimposedDeadPsf + loadOn(loads, "deck member").governing.totalPsf;
}

/** What each width of member has to carry. */
function demandsUnder(demandsPsf: ReadonlyMap<number, number>): DeckDemand["demandPsf"] {
  return (widthFt) => demandsPsf.get(widthFt) as number;
}

/** Candidates in the order of their faults: those that lie well are looked at first, and the faults of one after them are not counted before all of those were. */
function* fewestFirst(ranked: readonly WorkingDeck[], faultsOf: (candidate: WorkingDeck) => number): Generator<{candidate: WorkingDeck; at: number; faults: number}> {
  const faulty: {candidate: WorkingDeck; at: number; faults: number}[] = [];
  for (const [at, candidate] of ranked.entries()) {
    const one = {candidate, at, faults: faultsOf(candidate)};
    if (one.faults === 0) yield one;
    else faulty.push(one);
  }
  yield* faulty.sort((a, b) => a.faults - b.faults || a.at - b.at);
}

/** The candidates that work and are looked at, best first; or why none works. */
function rank(series: readonly Series[], {first, nearest: onAny}: UnderLoad, demand: DeckDemand): readonly WorkingDeck[] | NoDeck {
  const working = workingDecks(first(), demand);
  if (working.length > 0) {
    const seen = new Set(working.slice(0, LOOKED_AT).map(({designation}) => designation));
    return working.filter(({designation}, at) => at < LOOKED_AT || (!seen.has(designation) && seen.add(designation)));
  }
  const nearest = nearestOnSeat(series, onAny(), demand);
  return {none: nearest ? `${nearest.id}, the strongest: ${whyNot(nearest, demand)}` : "No member of this kind is in the catalog."};
}

/** Steps in which a higher strength at release is tried, psi, and the most of the strength that may be there by then (common practice). */
const RELEASE_STEP_PSI = 500;
const MOST_RELEASE_SHARE = 0.9;

/** A concrete with the strengths at release that are tried, least first: the brief's own, and higher ones where no strands hold with it. */
function releases(own: DeckConditions): DeckConditions[] {
  const most = Math.max(own.releaseStrengthPsi, MOST_RELEASE_SHARE * own.strengthPsi);
  return ladder(own.releaseStrengthPsi, most, RELEASE_STEP_PSI).map((releaseStrengthPsi) => ({...own, releaseStrengthPsi}));
}

/** The design with a candidate as its deck. */
export function withDeck(design: Design, {designation, pattern, member}: Pick<WorkingDeck, "designation" | "pattern" | "member">): Design {
  const {dimensions: _, strandHeightEndIn: _end, strandHeightCenterIn: _center, ...deck} = design.deck;
  return {...design, deck: {...deck, member: designation, pattern, releaseStrengthPsi: member.releaseStrengthPsi}};
}

/** What a design's deck is made of, all but what a brief keeps. */
export function madeOf({deck: {member, pattern, toppingIn, concrete, strengthPsi, releaseStrengthPsi}}: Pick<Design, "deck">): string {
  return `${member} ${pattern} ${toppingIn} ${concrete} ${strengthPsi} ${releaseStrengthPsi}`;
}

function kindKey({consider: {fieldToppedTees, pretoppedTees, planks}}: Design): string {
  return `${fieldToppedTees} ${pretoppedTees} ${planks}`;
}

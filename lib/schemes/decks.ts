import {standsOnBeam, stemNeedsIn} from "../beams/stemRowCheck.js";
import {nearestStem, teeRow} from "../beams/stemRow.js";
import type {Catalog} from "../catalog.js";
import {designCriteria} from "../deck/criteria.js";
import {deckName} from "../deck/deckName.js";
import {deckMember} from "../deck/deckMember.js";
import {deckResult, type DeckResult} from "../deck/deckResult.js";
import {deckDemand, rankDecks, reasonFor, type DeckDemand, type ScoredDeck} from "../deck/search.js";
import {deckTrials, trialMember, type DeckTrials} from "../deck/trials.js";
import type {Design} from "../design/design.js";
import {floorLoads, loadOn, type FloorLoads} from "../loads/floorLoads.js";
import type {Member} from "../member/member.js";
import {settledTopping, underTrueWeight} from "../topping/floorTopping.js";
import {feet} from "../units.js";
import type {DeckConditions} from "../deck/table.js";
import {parsePattern} from "../prestress/pattern.js";
import type {Choices} from "./grid.js";
import {guessedSideIn} from "./columnRule.js";
import {Kept} from "./kept.js";
import {ladder} from "./least.js";

/** A deck by rule: the best of its kind by the brief's preferences that passes all of its own checks and whose stems stand on their beams. */
export interface ChosenDeck extends Pick<ScoredDeck, "id" | "designation" | "pattern" | "member" | "works"> {
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

/** Candidates whose checks are looked at; where all of them fail something, the one of which least fails is taken. */
const LOOKED_AT = 8;

/**
 * Chooses decks for many floors: members are made once, and one choice serves every floor that asks the same of its deck.
 */
export class DeckRule {
  readonly #members = new Map<string, Member | undefined>();
  readonly #trials = new Map<string, DeckTrials[]>();
  readonly #ranked = new Kept<readonly ScoredDeck[] | NoDeck>(2000);
  readonly #settled = new Kept<Settled>(8000);
  readonly #loads = new Kept<FloorLoads>(4000);
  readonly #own = new Kept<Member>(1000);

  constructor(private readonly catalog: Catalog) {}

  /**
   * The deck of a design whose kind, topping, concrete and seat are chosen; its own member and pattern are not looked at.
   *
   * @param only - the one member and the profile of strand that may be tried
   * @param besidePsf - superimposed load beyond the floor's own that some piece or level of it must carry, psf
   */
  choose(design: Design, only: Pick<Choices, "member" | "strand">, besidePsf = 0): ChosenDeck | NoDeck {
    const {bay, deck} = design;
    const trials = this.#trialsOf(design, only);
    const widths = [...new Set(trials.map(({shape}) => feet(shape.widthIn)))];
    const demands = new Map(widths.map((widthFt) => [widthFt, this.#demandPsf(design, widthFt) + besidePsf]));
    // Layers weigh the same whatever the member's width.
    const [firstFt = 1] = widths;
    const criteria = designCriteria(design, this.catalog, this.loads(design, firstFt).superimposedDeadPsf);
    const key = [bay.spanFt, kindKey(design), only.member, only.strand, deck.toppingIn, deck.concrete, deck.strengthPsi, criteria.seatIn, ...demands.values()].join(" ");
    const ranked = this.#ranked.get(key, (): readonly ScoredDeck[] | NoDeck => {
      const demand = deckDemand(design, this.catalog, criteria, (widthFt) => demands.get(widthFt) ?? this.#demandPsf(design, widthFt) + besidePsf);
      return this.#rank(trials, demand);
    });
    return "none" in ranked ? ranked : this.#best(design, key, trials, ranked);
  }

  /** Loads of a floor under members of a width; one result for all floors of the same grid. */
  loads(design: Design, widthFt: number): FloorLoads {
    const {spanFt, beamSpanFt, baysAlong, baysAcross} = design.bay;
    return this.#loads.get([spanFt, beamSpanFt, baysAlong, baysAcross, widthFt].join(" "), () => floorLoads(design, this.catalog, widthFt));
  }

  /** The member of a design, made once. */
  member(design: Design): Member {
    const {member, pattern, toppingIn, concrete, strengthPsi, releaseStrengthPsi} = design.deck;
    return this.#own.get([member, pattern, toppingIn, concrete, strengthPsi, releaseStrengthPsi].join(" "), () => deckMember(design, this.catalog));
  }

  #demandPsf(design: Design, widthFt: number): number {
    const loads = this.loads(design, widthFt);
    return loads.superimposedDeadPsf + loadOn(loads, "deck member").governing.totalPsf;
  }

  #trialsOf(design: Design, {member, strand}: Pick<Choices, "member" | "strand">): DeckTrials[] {
    const {toppingIn, concrete, strengthPsi} = design.deck;
    const key = [kindKey(design), member, strand, toppingIn, concrete, strengthPsi].join(" ");
    let trials = this.#trials.get(key);
    if (!trials) {
      const demand = deckDemand(design, this.catalog, designCriteria(design, this.catalog, 0), () => 0);
      trials = deckTrials(this.catalog, demand, {toppingsIn: [], concretes: releases(demand.conditions)})
        .filter(({row, conditions}) => (member === undefined || row.designation === member) && (row.use === "pretopped" || conditions[0]?.toppingIn === toppingIn))
        .map((of) => (strand === "any" ? of : {...of, patterns: of.patterns.filter((text) => (parsePattern(text).profile === "straight") === (strand === "straight"))}));
      this.#trials.set(key, trials);
    }
    return trials;
  }

  /** The candidates that work, best first; or why none does. */
  #rank(trials: readonly DeckTrials[], demand: DeckDemand): readonly ScoredDeck[] | NoDeck {
    const ranked = rankDecks(this.catalog, trials, demand, this.#trialMember);
    const working = ranked.filter(({works}) => works);
    const [strongest] = ranked;
    if (working.length > 0) return working.slice(0, LOOKED_AT);
    return {none: strongest ? `${strongest.id}, the strongest: ${reasonFor(strongest, undefined, demand)}` : "No member of this kind is in the catalog."};
  }

  #best(design: Design, key: string, trials: readonly DeckTrials[], ranked: readonly ScoredDeck[]): ChosenDeck {
    let best: {readonly settled: Settled; readonly at: number; readonly fails: number} | undefined;
    for (const [at, candidate] of ranked.entries()) {
      const settled = this.#settled.get(`${key} ${candidate.id}`, () => this.#settle(design, trials, candidate));
      const fails = settled.fails + this.#standing(withDeck(design, settled), settled.member);
      if (!best || fails < best.fails) best = {settled, at, fails};
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
  #settle(design: Design, trials: readonly DeckTrials[], candidate: ScoredDeck): Settled {
    const {designation, pattern, member} = candidate;
    const own = {...candidate, fails: this.#failsOf(design, candidate)};
    if (own.fails === 0) return own;
    let best: Settled = own;
    const of = trials.find(({row}) => row.designation === designation);
    const at = of?.patterns.indexOf(pattern) ?? -1;
    if (!of || at < 0) return own;
    const {profile} = parsePattern(pattern);
    for (const more of of.patterns.slice(at, at + 1 + MORE_PATTERNS).filter((text) => parsePattern(text).profile === profile)) {
      for (const conditions of of.conditions.filter(({releaseStrengthPsi}) => releaseStrengthPsi >= member.releaseStrengthPsi)) {
        const made = this.#trialMember(this.catalog, of, more, conditions);
        if (!made) continue;
        const tried = {...candidate, id: deckName(designation, conditions.toppingIn, more), pattern: more, member: made};
        const fails = this.#failsOf(design, tried);
        if (fails < best.fails) best = {...tried, fails};
        if (fails === 0) return best;
      }
    }
    return best;
  }

  /** How many of a deck's own checks fail, those of the topping that levels it included. */
  #failsOf(design: Design, candidate: Pick<ScoredDeck, "designation" | "pattern" | "member">): number {
    const chosen = withDeck(design, candidate);
    const deck: DeckResult = deckResult(chosen, this.catalog, candidate.member, this.loads(chosen, candidate.member.widthFt));
    const settled = settledTopping(chosen, candidate.member, deck);
    return [...deck.checks, ...(settled ? [...settled.checks, underTrueWeight(chosen.bay.spanFt, candidate.member, deck, settled).check] : [])].filter(({verdict}) => verdict === "fails").length;
  }

  /** 1 where a stem of the row would stand off its beam, cut for columns of about the side that the floor asks for. */
  #standing(design: Design, member: Member): number {
    const row = teeRow(design, member);
    const nearest = row && nearestStem(row);
    if (!nearest) return 0;
    const sideIn = guessedSideIn(design, member, this.loads(design, member.widthFt));
    return Number(!standsOnBeam(nearest.fromLineIn, stemNeedsIn({column: {...design.column, sideIn}}, member)));
  }

  readonly #trialMember: typeof trialMember = (catalog, of, pattern, conditions) => {
    const key = [of.row.designation, pattern, conditions.toppingIn, conditions.concreteKind, conditions.strengthPsi, conditions.releaseStrengthPsi].join(" ");
    if (!this.#members.has(key)) this.#members.set(key, trialMember(catalog, of, pattern, conditions));
    return this.#members.get(key);
  };
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
export function withDeck(design: Design, {designation, pattern, member}: Pick<ScoredDeck, "designation" | "pattern" | "member">): Design {
  const {dimensions: _, strandHeightEndIn: _end, strandHeightCenterIn: _center, ...deck} = design.deck;
  return {...design, deck: {...deck, member: designation, pattern, releaseStrengthPsi: member.releaseStrengthPsi}};
}

function kindKey({consider: {fieldToppedTees, pretoppedTees, planks}}: Design): string {
  return `${fieldToppedTees} ${pretoppedTees} ${planks}`;
}

import type {Catalog} from "../catalog.js";
import {designCriteria} from "../deck/criteria.js";
import {deckMember} from "../deck/deckMember.js";
import {deckResult, type DeckResult} from "../deck/deckResult.js";
import {deckDemand, rankDecks, reasonFor, type DeckDemand, type ScoredDeck} from "../deck/search.js";
import {deckTrials, trialMember, type DeckTrials} from "../deck/trials.js";
import type {Design} from "../design/design.js";
import {floorLoads, loadOn, type FloorLoads} from "../loads/floorLoads.js";
import type {Member} from "../member/member.js";
import {settledTopping} from "../topping/floorTopping.js";
import {feet} from "../units.js";
import type {DeckConditions} from "../deck/table.js";
import {parsePattern} from "../prestress/pattern.js";
import type {Choices} from "./grid.js";
import {Kept} from "./kept.js";
import {ladder} from "./least.js";

/** A deck by rule: the best of its kind by the brief's preferences that passes all of its own checks. */
export interface ChosenDeck {
  readonly candidate: ScoredDeck;
  readonly member: Member;
  /** Those that are better by the preferences, whose own checks fail. */
  readonly passedOver: readonly string[];
}

/** No deck of the kind carries the span, and why the strongest does not. */
export interface NoDeck {
  readonly none: string;
}

/** Candidates whose checks are looked at before the best of them is taken as it is. */
const LOOKED_AT = 6;

/**
 * Chooses decks for many floors: members are made once, and one choice serves every floor that asks the same of its deck.
 */
export class DeckRule {
  readonly #members = new Map<string, Member | undefined>();
  readonly #trials = new Map<string, DeckTrials[]>();
  readonly #chosen = new Kept<ChosenDeck | NoDeck>(4000);
  readonly #loads = new Kept<FloorLoads>(4000);
  readonly #own = new Kept<Member>(1000);

  constructor(private readonly catalog: Catalog) {}

  /**
   * The deck of a design whose kind, topping, concrete and seat are chosen; its own member and pattern are not looked at.
   *
   * @param only - the one member and the profile of strand that may be tried
   */
  choose(design: Design, only: Pick<Choices, "member" | "strand">): ChosenDeck | NoDeck {
    const {bay, deck} = design;
    const trials = this.#trialsOf(design, only);
    const widths = [...new Set(trials.map(({shape}) => feet(shape.widthIn)))];
    const demands = new Map(widths.map((widthFt) => [widthFt, this.#demandPsf(design, widthFt)]));
    // Layers weigh the same whatever the member's width.
    const [firstFt = 1] = widths;
    const criteria = designCriteria(design, this.catalog, this.loads(design, firstFt).superimposedDeadPsf);
    const key = [bay.spanFt, kindKey(design), only.member, only.strand, deck.toppingIn, deck.concrete, deck.strengthPsi, criteria.seatIn, ...demands.values()].join(" ");
    return this.#chosen.get(key, () => {
      const demand = deckDemand(design, this.catalog, criteria, (widthFt) => demands.get(widthFt) ?? this.#demandPsf(design, widthFt));
      return this.#best(design, trials, demand);
    });
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

  #best(design: Design, trials: readonly DeckTrials[], demand: DeckDemand): ChosenDeck | NoDeck {
    const ranked = rankDecks(this.catalog, trials, demand, this.#trialMember);
    const working = ranked.filter(({works}) => works);
    const passedOver: string[] = [];
    for (const candidate of working.slice(0, LOOKED_AT)) {
      const chosen = withDeck(design, candidate);
      const member = this.member(chosen);
      if (this.#holds(chosen, member)) return {candidate, member, passedOver};
      passedOver.push(candidate.id);
    }
    const [first] = working;
    if (first) return {candidate: first, member: this.member(withDeck(design, first)), passedOver: []};
    const [strongest] = ranked;
    return {none: strongest ? `${strongest.id}, the strongest: ${reasonFor(strongest, undefined, demand)}` : "No member of this kind is in the catalog."};
  }

  #holds(design: Design, member: Member): boolean {
    const deck: DeckResult = deckResult(design, this.catalog, member, this.loads(design, member.widthFt));
    const checks = [...deck.checks, ...settledTopping(design, member, deck)?.checks ?? []];
    return checks.every(({verdict}) => verdict !== "fails");
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

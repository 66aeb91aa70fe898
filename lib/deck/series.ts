import type {Catalog} from "../catalog.js";
import type {Member} from "../member/member.js";
import {parsePattern, type Profile} from "../prestress/pattern.js";
import type {DeckConditions} from "./table.js";
import {strandsFit, trialMember, type DeckTrials} from "./trials.js";

/** A deck to try, whose member is made when it is first asked for, and kept. */
export class DeckTrial {
  #made: {readonly member: Member | undefined} | undefined;

  constructor(private readonly catalog: Catalog, readonly of: DeckTrials, readonly pattern: string, readonly conditions: DeckConditions) {}

  /** Undefined where its concrete is refused. */
  get member(): Member | undefined {
    this.#made ??= {member: trialMember(this.catalog, this.of, this.pattern, this.conditions)};
    return this.#made.member;
  }
}

/** The decks to try of one member, topping and profile of strand, in the order in which a search tries them. */
export interface Series {
  readonly of: DeckTrials;
  readonly profile: Profile;
  readonly trials: readonly DeckTrial[];
}

/** The series of some decks to try, of the strands that fit. */
export function seriesOf(catalog: Catalog, decks: readonly DeckTrials[]): Series[] {
  return decks.flatMap((of) => {
    const patterns = of.patterns.filter((pattern) => strandsFit(catalog, of, pattern)).map((pattern) => ({pattern, profile: parsePattern(pattern).profile}));
    return [...new Set(patterns.map(({profile}) => profile))].map((profile): Series => ({
      of, profile,
      trials: of.conditions.flatMap((conditions) => patterns.filter((one) => one.profile === profile).map(({pattern}) => new DeckTrial(catalog, of, pattern, conditions))),
    }));
  });
}

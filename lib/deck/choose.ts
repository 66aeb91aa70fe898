import type {Catalog} from "../catalog.js";
import type {Design} from "../design/design.js";
import {parsePattern} from "../prestress/pattern.js";
import {deckRow} from "./deckMember.js";
import type {Candidate} from "./search.js";
import {usualPatterns, type DeckConditions} from "./table.js";
import {USUAL_TOPPING_IN} from "./trials.js";

/** Changes to a design, path by path, that belong together. */
export type Changes = Readonly<Record<string, unknown>>;

/** The changes that put a candidate of the search into the design, with its concrete where it brings one of its own. */
export function changesForCandidate(candidate: Pick<Candidate, "designation" | "pattern" | "toppingIn"> & Partial<OwnConcrete>): Changes {
  const {concreteKind, strengthPsi, releaseStrengthPsi} = candidate;
  return {
    "deck.member": candidate.designation,
    "deck.pattern": candidate.pattern,
    "deck.toppingIn": candidate.toppingIn,
    ...(concreteKind === undefined ? {} : {"deck.concrete": concreteKind}),
    ...(strengthPsi === undefined ? {} : {"deck.strengthPsi": strengthPsi}),
    ...(releaseStrengthPsi === undefined ? {} : {"deck.releaseStrengthPsi": releaseStrengthPsi}),
    ...WITHOUT_OVERRIDES,
  };
}

/** The changes that make a candidate of the search the deck of the design's roof. */
export function changesForRoof({designation, pattern, toppingIn}: Pick<Candidate, "designation" | "pattern" | "toppingIn">): Changes {
  return {"roof.member": designation, "roof.pattern": pattern, "roof.toppingIn": toppingIn, "roof.strandHeightEndIn": undefined, "roof.strandHeightCenterIn": undefined};
}

type OwnConcrete = Pick<DeckConditions, "concreteKind" | "strengthPsi" | "releaseStrengthPsi">;

/** Dimensions and strand heights belong to the member they were given for. */
const WITHOUT_OVERRIDES: Changes = {"deck.dimensions": undefined, "deck.strandHeightEndIn": undefined, "deck.strandHeightCenterIn": undefined};

/**
 * The changes that exchange the deck member: its pattern stays if the new member can hold it, else the nearest number
 * of the same strands that it can; the topping comes or goes with the kind of member.
 *
 * @throws InputError if the member is not in the catalog
 */
export function changesForMember(design: Design, catalog: Catalog, designation: string): Changes {
  const row = deckRow(catalog, designation, "deck.member");
  const {deck} = design;
  const {count, sixteenths, profile} = parsePattern(deck.pattern);
  const patterns = usualPatterns(row, sixteenths);
  const distance = (text: string): number => {
    const pattern = parsePattern(text);
    return Math.abs(pattern.count - count) + (pattern.profile === profile ? 0 : 1);
  };
  const pattern = patterns.includes(deck.pattern) ? deck.pattern : patterns.reduce((best, text) => (distance(text) < distance(best) ? text : best));
  const toppingIn = row.use === "pretopped" ? 0 : row.use === "field-topped" ? deck.toppingIn || USUAL_TOPPING_IN : deck.toppingIn;
  return {"deck.member": designation, "deck.pattern": pattern, "deck.toppingIn": toppingIn, ...WITHOUT_OVERRIDES};
}

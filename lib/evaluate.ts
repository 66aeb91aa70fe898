import {edgeBeam, type EdgeBeamResult} from "./beams/edgeBeam.js";
import type {Catalogue} from "./catalogue.js";
import {worst, type Check, type Verdict} from "./checks.js";
import {deckMember} from "./deck/deckMember.js";
import {designCriteria} from "./deck/criteria.js";
import {deckResult, type DeckResult} from "./deck/deckResult.js";
import {deckDemand, searchDeck, type Candidate, type DeckDemand} from "./deck/search.js";
import {floorLoads, loadOn, type FloorLoads} from "./loads/floorLoads.js";
import type {Member} from "./member/member.js";
import {storeyStack, type StoreyStack} from "./storey/stack.js";
import {toppingProfile, type ToppingResult} from "./topping/profile.js";
import type {Design} from "./design/design.js";

/** All results of a design, in the order of the job. */
export interface Evaluation {
  readonly design: Design;
  readonly loads: FloorLoads;
  readonly member: Member;
  readonly deck: DeckResult;
  /** Undefined where the deck has no topping. */
  readonly topping: ToppingResult | undefined;
  readonly edgeBeam: EdgeBeamResult;
  readonly storey: StoreyStack;
  /** Every check of every part. */
  readonly checks: readonly Check[];
  readonly verdict: Verdict;
}

/**
 * The one pipeline from a design to its results; pages, commands, tests and the record all use it.
 *
 * @throws InputError if parts of the design do not fit each other, such as a pattern and its member
 */
export function evaluate(design: Design, catalogue: Catalogue): Evaluation {
  const member = deckMember(design, catalogue);
  const loads = floorLoads(design, catalogue, member.widthFt);
  const deck = deckResult(design, catalogue, member, loads);
  const topping = toppingProfile(member, deck.camber, design.bay);
  const beam = edgeBeam(design, catalogue, member, loads);
  const storey = storeyStack(design, member.compression.depthIn);
  const checks = [...deck.checks, ...beam.checks, ...storey.checks];
  return {design, loads, member, deck, topping, edgeBeam: beam, storey, checks, verdict: worst(checks)};
}

/** What a design's floor asks of any deck: the demand that {@link searchDeck} and the span-load chart use. */
export function demandOf(design: Design, catalogue: Catalogue, loads: FloorLoads): DeckDemand {
  const demands = new Map<number, number>();
  const demandPsf = (memberWidthFt: number): number => {
    let psf = demands.get(memberWidthFt);
    if (psf === undefined) {
      psf = loads.superimposedDeadPsf + loadOn(floorLoads(design, catalogue, memberWidthFt), "deck member").governing.totalPsf;
      demands.set(memberWidthFt, psf);
    }
    return psf;
  };
  return deckDemand(design, designCriteria(design, catalogue, loads.superimposedDeadPsf), demandPsf);
}

/** The deck search for a design: all candidates, those that work first, best first. */
export function candidates(design: Design, catalogue: Catalogue): Candidate[] {
  const {widthFt} = deckMember(design, catalogue);
  return searchDeck(catalogue, demandOf(design, catalogue, floorLoads(design, catalogue, widthFt)));
}

import type {Catalog} from "../catalog.js";
import type {Check} from "../checks.js";
import type {Design} from "../design/design.js";
import type {FloorLoads} from "../loads/floorLoads.js";
import type {Member} from "../member/member.js";
import {girderChecks, ofGirder} from "./girderChecks.js";
import {stemRowChecks} from "../beams/stemRowCheck.js";
import {girderAtMidspan, girderBending, wholeGirder, type GirderBending, type UncheckedGirder} from "./unchecked.js";

/** The first size of the girder between two bays. */
export interface GirderResult extends UncheckedGirder {
  readonly checks: readonly Check[];
}

/**
 * First size of the girder between two bays: a pretensioned simple span from column to column, under the decks of both
 * sides. Undefined where the floor has one bay across, and so no girder.
 *
 * Bending, stresses and cambers take the deck's load as even, times a factor where stems bend the girder more than that.
 *
 * @throws InputError if a dimension cannot be
 */
export function girder(design: Design, catalog: Catalog, deck: Member, loads: FloorLoads): GirderResult | undefined {
  const alone = girderAlone(design, catalog, deck, loads);
  return alone && girderUnderStems(alone, stemRowChecks(design, catalog, deck));
}

/** {@link girder} without the check of where its stems stand, which is the same whatever the girder's size. */
export function girderAlone(design: Design, catalog: Catalog, deck: Member, loads: FloorLoads): GirderResult | undefined {
  if (design.bay.baysAcross < 2) return undefined;
  return girderBent(design, deck, loads, girderBending(design, girderAtMidspan(design, catalog, deck, loads)));
}

/** {@link girderAlone} where its bending is known, and whatever else is. */
export function girderBent(design: Design, deck: Member, loads: FloorLoads, bending: GirderBending, known?: Parameters<typeof wholeGirder>[4]): GirderResult {
  const unchecked = wholeGirder(design, deck, loads, bending, known);
  return {...unchecked, checks: girderChecks(design, unchecked)};
}

/** A girder alone with the checks of its row of stems. */
export function girderUnderStems(girder: GirderResult, stems: readonly Check[]): GirderResult {
  return {...girder, checks: [...ofGirder(stems), ...girder.checks]};
}

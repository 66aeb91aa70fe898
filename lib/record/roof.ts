import {reasonState} from "../design/reasons.js";
import type {Evaluation} from "../evaluate.js";
import {deckName} from "../deck/deckName.js";
import {deckPieces} from "../deck/pieces.js";
import {pairText} from "../pair.js";
import {shown, sentence, type Sentence} from "../sentence.js";
import {roofLoadOn} from "../snow/roofLoads.js";
import {decimals, feetAndInches} from "../units.js";
import {checksOf} from "./checkGroups.js";
import {NO_TABLES, type Fact, type RecordSection} from "./parts.js";

const FALLS = {bearing: "the deck itself falls, on stepped bearings", taper: "insulation is tapered on a level deck", camber: "the deck's camber alone sheds the water"} as const;

/** The record's section on a roof of its own; none where the roof is two loads. */
export function roofSections({design, roof}: Evaluation): RecordSection[] {
  if (!roof) return [];
  const {deck, layers, plan, ponding, snow, edgeBeam, girder} = roof;
  const fact = (label: string, value: Sentence): Fact => ({label, value});
  const load = pairText(deck.demandPsf, deck.safe.safeLoadPsf);
  const {Lr, S, R, L} = roofLoadOn(snow, "deck member").loads;
  const pieces = deckPieces(roof.design, roof.member);
  const shownChecks = roof.checks.filter(({id, verdict}) => verdict !== "ok" || ROOF_CHECKS.includes(id));
  return [{
    id: "roof", title: "Roof",
    decision: sentence`${deckName(roof.member.shape.designation, design.roof.toppingIn, design.roof.pattern)} carries ${shown("roof safe load, psf", `${load.given} psf`)}, where ${shown("roof demand, psf", `${load.asked} psf`)} is required; ${deck.safe.governs} governs.`,
    facts: [
      fact("Layers", `${decimals(layers.psf, 1)} psf: ${layers.carried.map(({name, loadPsf}) => `${name} ${decimals(loadPsf, 1)} psf`).join(", ") || "none"}; R-${decimals(layers.rValue)} without the taper`),
      fact("What comes and goes on the deck", `${L > 0 ? `${decimals(L, 1)} psf of use, ` : ""}roof live load ${decimals(Lr, 1)} psf, snow ${decimals(S, 1)} psf, rain ${decimals(R, 1)} psf`),
      fact("Fall", sentence`${FALLS[design.roof.drainage]}; the surface rises ${shown("roof rise, in", `${decimals(roof.riseIn, 2)} in`)} from its drains, ${decimals(plan.drains)} for up to ${decimals(plan.drainFt2)} ft\u00b2 each`),
      fact("Water", `${decimals(ponding.trappedIn, 2)} in stay after rain; flexibility of deck and beam ${decimals(ponding.combined, 3)}, where 0.25 calls for a closer look`),
      fact("Beams", `edge beam ${feetAndInches(edgeBeam.depthIn)}${girder ? `, girder ${feetAndInches(girder.depthIn)}` : ""} deep under the roof, of the floors' sections`),
      fact("Checks that hold and are not printed", decimals(roof.checks.length - shownChecks.length)),
      fact("Pieces", `${decimals(pieces.perFloor)}, each ${decimals(pieces.weightTon, 1)} tons`),
    ],
    // Of the many that deck and beams share with the floors', those that hold are counted and not printed.
    ...NO_TABLES, checks: checksOf("Roof", shownChecks), reason: reasonState(design, "roof"),
  }];
}

/** Checks that are shown whether they hold or not. */
export const ROOF_CHECKS: readonly string[] = ["roof: deck load", "roof: deck strength", "roof: deck sag", "roof: fall", "roof: trapped water", "roof: ponding stiffness", "roof: water load"];

import type {Catalog} from "../../lib/catalog.js";
import {exceeds} from "../../lib/checks.js";
import {fireSetting} from "../../lib/deck/criteria.js";
import {rankedLimits, type RankedLimit} from "../../lib/deck/limitCurves.js";
import {deckPieces} from "../../lib/deck/pieces.js";
import {sagCurve, walkingCurve, type SagCurve, type WalkingCurve} from "../../lib/deck/serviceCurves.js";
import {SPAN_RANGE_FT} from "../../lib/deck/safeLoad.js";
import type {WalkingUse} from "../../lib/design/design.js";
import type {Evaluation} from "../../lib/evaluate.js";
import {fireNeeds, fireRating, type FireNeeds, type FireRating} from "../../lib/member/fire.js";
import {truckLoads} from "../../lib/member/handling.js";
import {vibration, type Vibration} from "../../lib/member/vibration.js";
import {decimals, feetAndInches, percent} from "../../lib/units.js";

/** What the walking rooms are called in a sentence. */
export const WALKING_WORDS: Readonly<Record<WalkingUse, string>> = {quiet: "quiet rooms", busy: "shops and halls", outdoor: "open decks"};

/** The limit that governs the load of a design's deck, and the next. */
export function firstTwo({deck}: Evaluation): readonly [RankedLimit | undefined, RankedLimit | undefined] {
  const [first, second] = rankedLimits(deck.safe.limitsPsf);
  return [first, second];
}

/** By how much what is allowed lies above or below what is required: "8 % more than"; what falls short never reads as enough. */
export function moreOrLess(allowedPsf: number, askedPsf: number): string {
  const share = allowedPsf / askedPsf - 1;
  if (Math.abs(share) < 0.005) return exceeds(askedPsf, allowedPsf) ? "a hair less than" : "just as much as";
  return `${percent(Math.abs(share))} ${share > 0 ? "more" : "less"} than`;
}

/** The sag curve of a design, to a load that shows the limit and the crack where it can. */
export function sagOf({design, member, deck}: Evaluation): SagCurve {
  const {criteria, livePsf} = deck;
  const deflectionPsf = (deck.safe.limitsPsf.deflection ?? 0) - criteria.superimposedDeadPsf;
  const mostPsf = Math.max(50, Math.ceil(Math.min(4 * livePsf, Math.max(1.3 * livePsf, 1.15 * deflectionPsf)) / 25) * 25);
  return sagCurve(member, design.bay.spanFt, criteria, livePsf, mostPsf);
}

/** Who walks on a design's floor: quiet rooms stand in where nobody minds. */
export function walkersOf({deck}: Evaluation): WalkingUse {
  return deck.criteria.walking ?? "quiet";
}

/** The walking curve of a design over the spans of its curves. */
export function walkingOf(result: Evaluation): {readonly curve: WalkingCurve; readonly here: Vibration} {
  const {member, design, deck} = result;
  const use = walkersOf(result);
  const {superimposedDeadPsf} = deck;
  const toFt = Math.min(SPAN_RANGE_FT.max, Math.max(60, Math.ceil((design.bay.spanFt + 10) / 10) * 10));
  // Very short spans are so quick that nothing is to be seen of them.
  const fromFt = design.bay.spanFt < 30 ? SPAN_RANGE_FT.min : 2 * SPAN_RANGE_FT.min;
  const spansFt = Array.from({length: (toFt - fromFt) / 2 + 1}, (_, i) => fromFt + 2 * i);
  return {curve: walkingCurve(member, superimposedDeadPsf, use, spansFt), here: vibration(member, design.bay.spanFt, superimposedDeadPsf * member.widthFt, use)};
}

/** A design's fire rating, also where none is required, and what the required rating needs. */
export function fireOf({design, member, deck}: Evaluation, catalog: Catalog): {readonly rating: FireRating; readonly needs: FireNeeds | undefined; readonly hours: number} {
  const setting = fireSetting(design, catalog);
  const hours = deck.criteria.fire?.hours ?? 0;
  return {rating: fireRating(member, setting), needs: hours > 0 ? fireNeeds(member, setting, hours) : undefined, hours};
}

/** Hours as they are spoken of, a rating never rounded up: "1.5 hours", "less than 1 hour". */
export function hoursWords(hours: number | undefined): string {
  if (hours === undefined) return "a time that only a test can establish";
  if (hours <= 0) return "less than 1 hour";
  const text = hoursDown(hours);
  return `${text} ${text === "1" ? "hour" : "hours"}${hours >= 4 ? " or more" : ""}`;
}

/** A rating for a drawing, where there is little room. */
export function hoursShort(hours: number | undefined): string {
  if (hours === undefined) return "a test tells";
  return hours <= 0 ? "below 1 h" : `${hoursDown(hours)} h${hours >= 4 ? " or more" : ""}`;
}

/** Hours to the tenth below: what nearly lasts 2 hours is no rating of 2. */
function hoursDown(hours: number): string {
  const tenths = Math.floor(10 * hours + 1e-6) / 10;
  return decimals(tenths, tenths % 1 ? 1 : 0);
}

/** What has to be hauled for one floor. */
export function hauls({design, member, deck}: Evaluation): {readonly pieces: number; readonly loads: number} {
  const pieces = deckPieces(design, member).perFloor;
  return {pieces, loads: truckLoads(pieces, deck.service.handling)};
}

/** How the width of a piece stands to the road's. */
export function widthWords({deck}: Evaluation): string {
  const {widthClass, widthFt, tilt} = deck.service.handling;
  const width = feetAndInches(12 * widthFt);
  if (widthClass === "legal") return `It is ${width} wide, and any truck may carry that.`;
  if (widthClass === "permit") return `It is ${width} wide: wider than a legal load, so each haul needs a permit, of the kind that haulers get every week.`;
  return `It is ${width} wide, too much for a routine permit${tilt ? `; so it leans on a frame at ${decimals(tilt.degrees)} degrees and stands ${feetAndInches(12 * tilt.heightFt, 1)} high, or it goes flat with an escort` : ""}.`;
}

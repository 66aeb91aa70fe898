import {columnLevels, positionsOf} from "../../lib/columns/frame.js";
import {levelAdds} from "../../lib/columns/takedown.js";
import {worst, type Check} from "../../lib/checks.js";
import type {Catalog} from "../../lib/catalog.js";
import {deckName} from "../../lib/deck/deckName.js";
import {deckCarbon} from "../../lib/deck/measures.js";
import {deckPieces} from "../../lib/deck/pieces.js";
import {framingOf, type Evaluation} from "../../lib/evaluate.js";
import {ROOF_CHECKS} from "../../lib/record/roof.js";
import type {RoofResult} from "../../lib/roof/roof.js";
import {variablePsf} from "../../lib/roof/roofFloor.js";
import {roofLoadOn} from "../../lib/snow/roofLoads.js";
import {decimals, feetAndInches, percent} from "../../lib/units.js";

/** The roof's deck as the search names it. */
export function deckWords({member, design: {deck}}: RoofResult): string {
  return deckName(member.shape.designation, deck.toppingIn, deck.pattern);
}

const NAMES = {Lr: "roof live load", S: "snow", R: "rain up to the overflow"} as const;

/** Which of roof live load, snow and rain governs the roof's deck, with all three. */
export function variableSentence({snow}: RoofResult): string {
  const {loads} = roofLoadOn(snow, "deck member");
  const [most] = (["Lr", "S", "R"] as const).toSorted((a, b) => loads[b] - loads[a]);
  const each = (["Lr", "S", "R"] as const).map((name) => `${decimals(loads[name], 1)} psf of ${NAMES[name]}`).join(", ");
  const use = loads.L > 0 ? ` People bring ${decimals(loads.L)} psf besides.` : "";
  return `Of ${each}, one at a time counts, and ${NAMES[most ?? "Lr"]} is the greatest.${use} In all the deck is designed for ${decimals(variablePsf(roofLoadOn(snow, "deck member")), 1)} psf that comes and goes.`;
}

/** How the water runs, in a sentence. */
export function fallSentence({design: {roof}}: Evaluation, {plan, deck}: RoofResult): string {
  const ways = {bearing: "The deck itself falls, on bearings that step down", taper: "The deck lies level and the insulation is tapered", camber: "The deck lies level, and only its arch sheds the water"}[roof.drainage];
  const drains = `${decimals(plan.drains)} drain${plan.drains === 1 ? "" : "s"} in ${plan.lines.filter((line) => line.drains).length} line${plan.lines.filter((line) => line.drains).length === 1 ? "" : "s"} take up to ${decimals(plan.drainFt2)} ft\u00b2 each`;
  const camber = roof.drainage === "camber" ? ` In the long term ${deck.camber.longTermIn > 0 ? `${decimals(deck.camber.longTermIn, 2)} in of camber remain over half the span` : "no camber remains"}.` : "";
  return `${ways}. ${drains}; between drains of one line, saddles of tapered insulation turn the water toward them.${camber}`;
}

/** What stays on the roof when it has rained, and what blocked drains hold. */
export function waterSentence({ponding, deck}: RoofResult): string {
  const stays = ponding.trappedIn < 0.005 ? "Once it has rained, nothing stays on it" : `Once it has rained, up to ${decimals(ponding.trappedIn, 2)} in stay on it`;
  const blocked = ponding.blockedPsf === undefined ? "With its drains blocked, water would gather on it without end"
    : `With its drains blocked, the water up to the overflow bends the deck like ${decimals(ponding.blockedPsf, 1)} psf, where it carries ${decimals(Math.max(0, deck.safe.safeLoadPsf - deck.superimposedDeadPsf))} psf besides its layers`;
  return `${stays}. ${blocked}.`;
}

/** What a roof's beams make of its loads, in a sentence each. */
export function beamSentences({roof, edgeBeam, girder}: Evaluation): string[] {
  if (!roof) return [];
  const say = (name: string, mine: {readonly depthIn: number; readonly checks: readonly Check[]}, floors: {readonly depthIn: number}): string => {
    const verdict = worst(mine.checks);
    const failing = mine.checks.filter((check) => check.verdict === "fails").map(({label}) => label.charAt(0).toLowerCase() + label.slice(1));
    const depth = `is ${feetAndInches(mine.depthIn)} deep, where the floors\u2019 is ${feetAndInches(floors.depthIn)}`;
    return `The roof\u2019s ${name} ${depth}, and ${verdict === "fails" ? `does not hold: ${failing.join("; ")}` : verdict === "out of range" ? "is in part out of the methods\u2019 range" : "holds"}.`;
  };
  return [say("edge beam", roof.edgeBeam, edgeBeam), ...(roof.girder && girder ? [say("girder", roof.girder, girder)] : [])];
}

/** Each limit of the roof's deck: what it allows and how much of that is used. */
export function limitRows({deck}: RoofResult): (readonly [string, string, string])[] {
  return Object.entries(deck.safe.limitsPsf)
    .map(([name, psf]) => [name, psf, psf > 0 ? deck.demandPsf / psf : Infinity] as const)
    .sort((a, b) => b[2] - a[2])
    .map(([name, psf, use]) => [name, decimals(Math.max(0, psf)), Number.isFinite(use) && use < 100 ? percent(use) : "beyond it"] as const);
}

/** What the roof brings to each column, unfactored, kip. */
export function columnRows(evaluation: Evaluation): (readonly [string, string, string, string])[] {
  const framing = framingOf(evaluation);
  return positionsOf(framing).map((position) => {
    const [top, floor] = columnLevels(framing, position);
    const [roof, below] = [top, floor].map((level) => (level ? levelAdds(level) : undefined));
    const comes = (adds: typeof roof) => (adds ? adds.liveKip + adds.roofKip : 0);
    return [position, decimals(roof?.deadKip ?? 0, 1), decimals(comes(roof), 1), decimals((below?.deadKip ?? 0) + comes(below), 1)] as const;
  });
}

/** Pieces and carbon of the roof's deck, in a sentence. */
export function costSentence({design, member: floorMember}: Evaluation, {member, design: asFloor, plan}: RoofResult, catalog: Catalog): string {
  const {perFloor, weightTon} = deckPieces(asFloor, member);
  const [roofKg, floorKg] = [member, floorMember].map((one) => deckCarbon(one, catalog.carbonFactors).totalKg) as [number, number];
  const ft2 = plan.lengthFt * plan.widthFt;
  return `It takes ${decimals(perFloor)} pieces of ${decimals(weightTon, 1)} tons, and ${decimals(roofKg, 1)} kgCO2e per square foot where a floor\u2019s deck takes ${decimals(floorKg, 1)}: ${decimals((roofKg * ft2) / 1000)} t for the roof beside ${decimals((floorKg * ft2 * design.bay.floors) / 1000)} t for the ${design.bay.floors === 1 ? "floor" : `${design.bay.floors} floors`} (modules A1 to A3).`;
}

/** The checks that only a roof has and those that do not hold, and the others. */
export function shownAndOthers({checks}: RoofResult): [Check[], Check[]] {
  const shown = (check: Check) => check.verdict !== "ok" || ROOF_CHECKS.includes(check.id);
  return [checks.filter(shown), checks.filter((check) => !shown(check))];
}

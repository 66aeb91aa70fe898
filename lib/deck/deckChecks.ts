import {atLeast, atMost, type Check} from "../checks.js";
import {allowables, type Allowables} from "../member/allowables.js";
import type {Member} from "../member/member.js";
import {transferChecks} from "../member/transferChecks.js";
import type {MostPressed} from "./compression.js";
import type {DeckState} from "./deckResult.js";
import {deckServiceChecks} from "./deckServiceChecks.js";
import {shearWords} from "./deckShear.js";
import {LIMIT_INFO} from "./limits.js";

/** Checks of the deck member: load, strength, shear, stresses in service and at transfer. */
export function deckChecks(member: Member, spanFt: number, r: Omit<DeckState, "checks">): Check[] {
  const allowed = allowables(member, r.criteria.tensionClass);
  const {totalCompression: total, heldCompression: held} = r;
  return [
    atMost({
      id: "deck load", label: "Superimposed load", unit: "psf", clause: `Governing limit: ${r.safe.governs}.`,
      holds: "The member carries the load on this floor.",
      fails: "The load on this floor is more than the member can safely carry: a deeper member, more strands or a shorter span.",
    }, r.demandPsf, r.safe.safeLoadPsf),
    atMost({
      id: "deck strength", label: "Strength in bending", unit: "kip-in", clause: "ACI 318-19 22.3, 21.2.2",
      holds: "The factored moment stays below the design strength.",
      fails: "The factored moment exceeds the design strength: more strands, a deeper member or a shorter span.",
    }, r.factoredMomentKipIn, r.strength.designMomentKipIn),
    atMost({
      id: "deck shear", label: "Shear in the webs", unit: "kip", clause: LIMIT_INFO.shear.clause,
      holds: shearWords(member, spanFt, r.shear),
      fails: member.shape.family === "double tee"
        ? "The stems are too thin for the shear: a deeper member or a shorter span."
        : "The webs take no stirrups and are too thin for the shear: a shorter span, or tees, whose stems take stirrups.",
    }, r.shear.factoredKip, r.shear.designKip),
    // A class C member may crack; crack control and sag bound it instead.
    ...(r.criteria.tensionClass === "C" ? [] : [atMost({
      id: "deck tension", label: "Tension in the soffit", unit: "ksi", clause: "ACI 318-19 24.5.2.1",
      holds: "Under full load the soffit stays within its class.",
      fails: "Under full load the soffit would crack more than its class allows: more strands, a deeper member or a shorter span.",
    }, Math.max(0, -r.soffit.bottomKsi), allowed.serviceTensionKsi)]),
    atMost({
      id: "deck sustained compression", label: "Compression under sustained load", unit: "ksi", clause: "ACI 318-19 24.5.4.1",
      holds: `Nowhere is it compressed so hard that creep runs away; the most in the ${placeWords(held, spanFt)}.`,
      fails: `The ${placeWords(held, spanFt)}, stays compressed so hard that creep would run away: ${held.face === "top" ? "stronger concrete, a deeper member or a shorter span" : "fewer strands, depressed ones, or stronger concrete"}.`,
    }, held.stressKsi, allowed.sustainedCompressionKsi),
    atMost({
      id: "deck total compression", label: "Compression under total load", unit: "ksi", clause: "ACI 318-19 24.5.4.1",
      holds: `It can take the full load; compression is greatest in the ${placeWords(total, spanFt)}.`,
      fails: `The ${placeWords(total, spanFt)}, is compressed too hard: stronger concrete, a deeper member or a shorter span.`,
    }, total.stressKsi, allowed.totalCompressionKsi),
    ...toppingChecks(r, allowed),
    minimumStrength(r),
    ...transferChecks(member, r.transfer),
    ...deckServiceChecks(member, r.criteria, r.service),
  ];
}

function placeWords({face, share}: MostPressed, spanFt: number): string {
  return `${face}, ${share === 0.5 ? "at midspan" : `${(share * spanFt).toFixed(1)} ft from the ends`}`;
}

/** Stresses in the topping; none without one. */
function toppingChecks(r: Omit<DeckState, "checks">, allowed: Allowables): Check[] {
  const {totalStresses: total, sustainedStresses: held} = r;
  if (total.toppingTopKsi === undefined || held.toppingTopKsi === undefined) return [];
  if (allowed.toppingTotalKsi === undefined || allowed.toppingSustainedKsi === undefined) return [];
  const text = {unit: "ksi", clause: "ACI 318-19 24.5.4.1"};
  return [
    atMost({
      ...text, id: "topping sustained compression", label: "Compression in the topping under sustained load",
      holds: "The topping is not compressed so hard that creep runs away.",
      fails: "The topping stays compressed so hard that creep would run away: stronger topping, a deeper member or a shorter span.",
    }, held.toppingTopKsi, allowed.toppingSustainedKsi),
    atMost({
      ...text, id: "topping compression", label: "Compression in the topping",
      holds: "The topping can take its share of the full load.",
      fails: "The topping is compressed too hard under the full load: stronger topping, a deeper member or a shorter span.",
    }, total.toppingTopKsi, allowed.toppingTotalKsi),
  ];
}

/** Strength above cracking by a margin, unless it is twice what the loads ask (ACI 318-19 9.6.2.1, 9.6.2.2). */
function minimumStrength({minimum}: Omit<DeckState, "checks">): Check {
  return atLeast({
    id: "minimum strength", label: "Strength beyond first cracking", unit: "psf", clause: "ACI 318-19 9.6.2.1, 9.6.2.2",
    holds: "The member would crack and sag long before it breaks.",
    fails: "The member could break as it first cracks: more strands, or a shallower member.",
  }, minimum.strength.psf, minimum.neededPsf);
}

import {atLeast, atMost, outOfRange, type Check} from "../checks.js";
import type {Design} from "../design/design.js";
import {concreteBearingKip} from "../materials/bearing.js";
import type {Member} from "../member/member.js";
import {LEAST_SET_BACK_IN, padChecks} from "../beams/bearing.js";
import {STIRRUP_DIAMETER_IN} from "./bars.js";
import {deckBearing, type DeckBearing} from "../beams/deckBearing.js";
import type {UncheckedBeam} from "./unchecked.js";
import {leastLayersIn, type LedgeStrength} from "./ledge.js";
import {LEAST_STIRRUP_SPACING_IN} from "./twist.js";
import {ledgePunchingCheck} from "../beams/ledgePunching.js";
import {stemWidthIn} from "../beams/stemRow.js";

/** The ledge: room for its bars, punching at an interior and at an end stem, sliding, and its bars' spacing. */
export function ledgeChecks({edgeBeam: input}: Design, {ledge}: {readonly ledge: LedgeStrength | undefined}): Check[] {
  const layers = atLeast({
    id: "ledge layers", label: "Ledge, deep enough for two layers of bars", unit: "in", clause: "geometry", meetingIsEnough: true,
    holds: "Bars at the top and bottom of the ledge have their cover.",
    fails: "The ledge is too thin for bars at top and bottom with their cover, so nothing else about it is checked: deepen it, or use less cover.",
  }, input.ledgeDepthIn, leastLayersIn(input.coverIn));
  if (!ledge) return [layers];
  const punching = ledge.punching.map(({place, punching}) => {
    const check = ledgePunchingCheck(ledge.loadKip, punching);
    return {...check, id: `ledge punching ${place}`, label: place === "end" ? "Stem nearest the end of the beam, punching through the ledge" : "Stem where the beam is stressed most, punching through the ledge"};
  });
  const line = ledge.linePlf === undefined ? [] : [atMost({
    id: "ledge line", label: "Planks shearing the ledge off", unit: "kip", clause: "PCI Design Handbook, 6th ed., 4.5.1 (from memory)",
    holds: "The ledge is deep enough under the planks.",
    fails: "The planks could shear the ledge off: make it deeper.",
  }, ledge.loadKip, ledge.linePlf / 1000)];
  // All places share lever arm and depth; the one with the shortest working length requires most.
  // Stryker disable next-line EqualityOperator: of two alike either is the hardest
  const hardest = ledge.places.reduce((most, place) => (place.steel.greatestShearKip < most.steel.greatestShearKip ? place : most));
  return [
    layers, ...punching, ...line, ...hardest.steel.checks,
    atLeast({
      id: "ledge bars", label: `${ledge.bars.bar.size} bars across the ledge, spacing`, unit: "in", clause: "common practice", meetingIsEnough: true,
      holds: "The bars across the ledge have enough space between them.",
      fails: "Bars across the ledge would be too close together: deepen the ledge.",
    }, ledge.bars.spacingIn, LEAST_STIRRUP_SPACING_IN),
  ];
}

/** Whether what pockets leave of a web has room for a stirrup. */
export function pocketWebCheck({edgeBeam: {coverIn}}: Design, {netWebIn}: Pick<UncheckedBeam, "netWebIn">): Check {
  return atLeast({
    id: "pocket web", label: "Web remaining behind a pocket", unit: "in", clause: "geometry", meetingIsEnough: true,
    holds: "Both legs of a stirrup fit behind the pocket.",
    fails: "Behind the pocket there is no room for both legs of a stirrup with their cover: widen the web or make the pocket shallower.",
  }, netWebIn, 2 * (coverIn + STIRRUP_DIAMETER_IN) + 1);
}

/** First checks of a web with pockets, and what of it is out of range. */
export function pocketChecks(design: Design, beam: Pick<UncheckedBeam, "demand" | "netWebIn" | "torsionKipIn">): Check[] {
  return [
    atLeast({
      id: "pocket stems", label: "Stems for the pockets", unit: "", clause: "geometry", meetingIsEnough: true,
      holds: "The deck has stems to sit in the pockets.",
      fails: "Planks have no stems to sit in pockets: they need a ledge, or the beam's top.",
    }, beam.demand.stemmed ? 2 : 0, 2),
    pocketWebCheck(design, beam),
    outOfRange({
      id: "pocket foot", label: "Foot below a pocket", unit: "kip", clause: "no method here",
      message: "The stem bears on the foot below its pocket. How that foot transfers the load into the web, and the steel that hangs it up, are not designed here.",
    }, beam.demand.stemKip, 0),
    outOfRange({
      id: "pocket twist", label: "Shear and torsion at a pocket", unit: "kip-in", clause: "no method here",
      message: "Shear and torsion are designed for the whole web between the pockets. At a pocket the section is cut, which the method does not cover.",
    }, beam.torsionKipIn, 0),
  ];
}

/** The bearing of a stem or of a foot of planks on the beam. */
export function edgeBeamBearing({edgeBeam: input, deck}: Design, member: Member, {kind, seat, demand, shape, belowDeckIn}: UncheckedBeam): DeckBearing {
  return deckBearing(member, {
    stemmed: demand.stemmed, padWidthIn: input.padWidthIn, lengthIn: Math.min(input.padLengthIn, seat.nominalIn),
    roomIn: kind === "below" ? shape.webWidthIn : seat.nominalIn, depthIn: belowDeckIn,
    spacingIn: demand.spacingIn, endDistanceIn: demand.endDistanceIn, strengthPsi: input.strengthPsi, deckStrengthPsi: deck.strengthPsi,
  });
}

/** The deck's bearing: pad and concrete under a stem, or concrete under a strip of planks. */
export function bearingChecks(design: Design, member: Member, beam: UncheckedBeam): Check[] {
  const {edgeBeam: input} = design;
  const {demand} = beam;
  const {loadedWidthIn, loadedLengthIn, around, supportIn2, strengthPsi} = edgeBeamBearing(design, member, beam);
  // A pad that fills its seat has to be given more of that before it can be longer.
  const fills = input.padLengthIn >= beam.seat.nominalIn - LEAST_SET_BACK_IN;
  const seat = {ledge: "a wider ledge", pockets: "a deeper pocket", below: "a wider beam"}[beam.kind];
  const larger = `a larger pad and ${seat}`;
  if (demand.stemmed) {
    return padChecks({
      // Of a pad longer than its seat, which a check of its own fails, only what lies on the seat bears.
      pad: {widthIn: input.padWidthIn, lengthIn: loadedLengthIn, thicknessIn: input.padThicknessIn},
      stemWidthIn: stemWidthIn(member), serviceKip: demand.stemServiceKip, factoredKip: demand.stemKip, strengthPsi, around,
      // One that takes half of its seat or more spreads its load over the same concrete however long it is.
      mends: fills ? {stress: larger, bearing: larger} : {stress: "a longer or thinner pad", bearing: `a larger pad, ${seat}`},
    });
  }
  return [atMost({
    id: "ledge bearing", label: "Planks bearing on the beam, per foot", unit: "kip", clause: "ACI 318-19 22.8.3.2",
    holds: "The beam's concrete carries the planks.",
    fails: `The beam's concrete would crush under the planks: longer pads${fills ? ` and ${seat}` : ""}, or stronger concrete.`,
  }, demand.stemKip, concreteBearingKip(strengthPsi, loadedWidthIn * loadedLengthIn, supportIn2))];
}

import type {Check} from "../checks.js";
import type {ColumnsResult} from "../columns/columnsResult.js";
import {deckName} from "../deck/deckName.js";
import {deckPieces, piecesSentence} from "../deck/pieces.js";
import type {DaylightResult} from "../daylight/daylight.js";
import {sharePercents} from "../daylight/shares.js";
import type {Candidate} from "../deck/search.js";
import type {Design} from "../design/design.js";
import {countReasons, reasonState, type ReasonCount, type ReasonState} from "../design/reasons.js";
import type {Evaluation} from "../evaluate.js";
import {isReduced, type RoomLoad} from "../loads/floorLoads.js";
import {reducedFrom} from "../loads/liveWords.js";
import {ownPsf} from "../member/member.js";
import {pairText} from "../pair.js";
import {shown, told, type Told} from "../told.js";
import {decimals, feetAndInches, feetText, percent} from "../units.js";
import {VERSION} from "../version.js";
import {frameSection} from "./frame.js";
import {ASSUMPTIONS, CAUTIONS} from "./texts.js";

/** One line of facts. */
export interface Fact {
  readonly label: string;
  readonly value: Told;
}

/** A way not taken. */
export interface Alternative {
  readonly name: string;
  readonly outcome: string;
}

/** One decision with what speaks for it. */
export interface RecordSection {
  readonly id: keyof Design["reasons"];
  readonly title: string;
  /** What was decided, in a sentence with its numbers. */
  readonly decision: Told;
  readonly facts: readonly Fact[];
  readonly alternatives: readonly Alternative[];
  readonly checks: readonly Check[];
  /** Why so, in words, and whether they were written for this choice. */
  readonly reason: ReasonState;
}

/** The record of a design, ready to be set on paper. */
export interface DesignRecord {
  readonly title: string;
  readonly setting: string;
  readonly brief: string;
  readonly dateText: string;
  readonly version: string;
  readonly sections: readonly RecordSection[];
  /** How many of the decisions have a reason that stands, and by whose hand. */
  readonly reasons: ReasonCount;
  /** Checks that do not hold or are out of a method's range, from all parts: never hidden. */
  readonly open: readonly Check[];
  readonly assumptions: readonly string[];
  readonly cautions: readonly string[];
}

/** Alternatives that a record lists. */
const MOST_ALTERNATIVES = 5;

/**
 * The record of a design: brief, each decision with its numbers, the ways not taken, the reader's reasons, open checks,
 * assumptions, cautions.
 *
 * @param dateText - the day, as it shall stand on the record; the library has no clock of its own
 * @param columns - the design's columns, which the pipeline leaves to those who ask
 */
export function designRecord(evaluation: Evaluation, candidates: readonly Candidate[], dateText: string, columns: ColumnsResult): DesignRecord {
  const {design} = evaluation;
  const sections = [
    loadsSection(evaluation), reductionSection(evaluation), deckSection(evaluation, candidates),
    toppingSection(evaluation), edgeBeamSection(evaluation), frameSection(evaluation, columns), storySection(evaluation), lightSection(evaluation),
  ];
  return {
    title: design.name, setting: design.setting, brief: design.brief, dateText, version: VERSION,
    sections, reasons: countReasons(sections.map(({reason}) => reason)),
    open: [...evaluation.checks, ...columns.checks].filter((check) => check.verdict === "fails" || check.verdict === "out of range"),
    assumptions: ASSUMPTIONS,
    cautions: CAUTIONS,
  };
}

const psf = (value: number) => `${decimals(value)} psf`;
const fact = (label: string, value: Told): Fact => ({label, value});

function loadsSection({design, loads, deck}: Evaluation): RecordSection {
  return {
    id: "loads", title: "Loads",
    decision: told`The deck carries ${shown("demand, psf", psf(deck.demandPsf))} beside its own weight: ${shown("dead load, psf", psf(deck.superimposedDeadPsf))} dead and ${shown("live load, psf", psf(deck.livePsf))} live${reducedFrom(deck.load.governing)}.`,
    facts: [
      ...loads.rooms.map((room) => fact(room.name, roomWords(room))),
      ...design.loads.layers.map((layer) => fact(layer.name, `${decimals(layer.loadPsf, 1)} psf`)),
    ],
    alternatives: [], checks: loads.checks, reason: reasonState(design, "loads"),
  };
}

/** A room's loads before reduction: of the table, or of the reader's own with what asks for it. */
function roomWords({livePsf, occupancy, own, partitionPsf}: RoomLoad): string {
  const walls = partitionPsf > 0 ? ` and ${psf(partitionPsf)} for movable walls` : "";
  if (!own) return `${psf(livePsf)} (${occupancy.name})${walls}`;
  return `${psf(livePsf)}${walls}, entered in place of ${psf(occupancy.livePsf)} (${occupancy.name}), ${own.reducible ? "reduced by that use\u2019s rule" : "taken in full"}: ${own.reason.trim() || "no reason is written"}`;
}

function reductionSection({design, loads}: Evaluation): RecordSection {
  return {
    id: "reduction", title: "Live load reduction",
    decision: loads.elements.every((element) => element.governing.reduction.factor === 1)
      ? "No live load is reduced."
      : "Live load is reduced where the area that loads a part makes it unlikely to be full.",
    facts: loads.elements.map((element) => fact(
      element.element,
      `${percent(element.governing.reduction.factor)} of ${psf(element.governing.room.livePsf)} (${element.governing.room.name}), from ${decimals(element.influenceFt2 * element.floors)} ft\u00b2 of influence area; ${element.governing.reduction.decides}, ${element.governing.reduction.clause}`,
    )),
    alternatives: [], checks: [], reason: reasonState(design, "reduction"),
  };
}

function deckSection({design, member, deck}: Evaluation, candidates: readonly Candidate[]): RecordSection {
  const {deck: input, bay} = design;
  const pieces = deckPieces(design, member);
  const chosen = deckName(input.member, input.toppingIn, input.pattern);
  const load = pairText(deck.demandPsf, deck.safe.safeLoadPsf);
  const release = pairText(deck.transfer.releaseStrengthNeededPsi, input.releaseStrengthPsi);
  return {
    id: "deck", title: "Deck",
    decision: told`${chosen} spans ${shown("span, in", feetText(bay.spanFt))} and carries ${shown("safe load, psf", `${load.given} psf`)} safely, where ${shown("demand, psf", `${load.asked} psf`)} is asked${isReduced(deck.load.governing) ? ", its live load reduced" : ""}; ${deck.safe.governs} governs.`,
    facts: [
      fact("Concrete", `${decimals(input.strengthPsi)} psi ${input.concrete}, ${release.given} psi when the strands are cut (${release.asked} needed)`),
      fact("Strands", `${member.layout.count} of ${member.layout.strand.diameterIn} in, ${member.layout.profile === "straight" ? "straight" : "depressed"}; centroid ${decimals(member.layout.centroidCenterIn, 2)} in above the soffit at midspan, ${decimals(member.layout.centroidEndIn, 2)} in at the ends`),
      fact("Effective prestress", told`${shown("effective prestress, ksi", `${decimals(deck.midspan.losses.effectiveStressKsi)} ksi`)} after ${decimals(deck.midspan.losses.totalKsi)} ksi of losses`),
      fact("Weight", `${decimals(ownPsf(member))} psf with topping`),
      fact("Depth", feetAndInches(member.compression.depthIn)),
      fact("Pieces", told`${shown("pieces", decimals(pieces.perFloor))} for one floor, each ${shown("piece, tons", `${decimals(pieces.weightTon, 1)} tons`)}. ${piecesSentence(design, member)}`),
    ],
    alternatives: candidates.filter((candidate) => candidate.id !== chosen).slice(0, MOST_ALTERNATIVES)
      .map((candidate) => ({name: candidate.id, outcome: candidate.reason})),
    checks: deck.checks, reason: reasonState(design, "deck"),
  };
}

function toppingSection({design, camber, topping, joint}: Evaluation): RecordSection {
  return {
    id: "topping", title: "Camber and topping",
    decision: topping
      ? told`A topping of at least ${shown("topping least, in", `${decimals(topping.leastIn, 2)} in`)} levels ${archOrSag(camber.erectionIn)}: ${shown("topping of a bay, yd3", `${decimals(topping.bayYd3, 1)} yd\u00b3`)} in a bay.`
      : told`No topping: the member is set with ${archOrSag(camber.erectionIn)}, and the finish follows it.`,
    facts: [
      fact("Camber when the strands are cut", `${decimals(camber.releaseIn, 2)} in`),
      fact("Camber when set", told`${shown("camber when set, in", `${decimals(camber.erectionIn, 2)} in`)} at ${decimals(camber.ageDays)} days`),
      fact("Camber after years", told`${shown("camber after years, in", `${decimals(camber.longTermIn, 2)} in`)}${camber.longTermIn < 0 ? ": a sag" : ""}`),
      ...(topping ? [
        fact("Thickness", told`${shown("topping least, in", `${decimals(topping.leastIn, 2)} in`)} at the least, ${shown("topping greatest, in", `${decimals(topping.greatestIn, 2)} in`)} at the most, ${shown("topping average, in", `${decimals(topping.averageIn, 2)} in`)} on average`),
        fact("Finished surface", design.topping.followShare === 0 ? "level" : `follows ${percent(design.topping.followShare)} of the camber`),
        fact("Weight beyond the least thickness", `${decimals(topping.extra.averagePsf, 1)} psf on average, ${decimals(topping.extra.endPsf, 1)} psf at the ends; it bends as ${decimals(topping.extra.momentPsf, 1)} psf all over`),
        fact("Whole floor", `${decimals(topping.floorYd3, 1)} yd\u00b3`),
      ] : []),
      ...(joint ? [fact("Neighbors", told`differ by ${shown("joint step, in", `${decimals(joint.meanIn, 2)} in`)} on average, for usual scatter`)] : []),
    ],
    alternatives: [], checks: (topping ?? joint)?.checks ?? [], reason: reasonState(design, "topping"),
  };
}

function archOrSag(camberIn: number): Told {
  return told`a ${camberIn < 0 ? "sag" : "camber"} of ${shown("camber when set, in", `${decimals(Math.abs(camberIn), 2)} in`)}`;
}

function edgeBeamSection({design, edgeBeam}: Evaluation): RecordSection {
  const {edgeBeam: input} = design;
  const {bars, strands, twist, stirrups, ledge, demand, kind} = edgeBeam;
  const width = feetAndInches(input.webWidthIn + (kind === "ledge" ? input.ledgeProjectionIn : 0));
  const what = {ledge: "An L-beam", pockets: "A spandrel with pockets for the stems", below: "A rectangular beam below the deck"}[kind];
  const steel = strands ? `${strands.member.layout.count} strands${bars.count > 0 ? ` and ${bars.count} ${bars.bar.size} bars` : ""}` : `${bars.count} ${bars.bar.size} bars`;
  const seat = pairText(edgeBeam.seat.neededIn, edgeBeam.seat.afterToleranceIn, 1);
  return {
    id: "edgeBeam", title: "Edge beam",
    decision: told`${what} ${shown("beam depth, in", feetAndInches(edgeBeam.depthIn))} deep and ${width} wide at its foot, with ${steel} in the bottom, spans ${decimals(edgeBeam.spanFt)} ft.`,
    facts: [
      kind === "below"
        ? fact("Depth", "all of it below the deck")
        : fact("Parts of its depth", `${decimals(input.ledgeDepthIn, 1)} in ${kind === "ledge" ? "ledge" : "below the pockets"}, ${decimals(edgeBeam.deckDepthIn, 1)} in deck, ${decimals(input.upstandIn, 1)} in upstand`),
      fact("Seat", told`${shown("seat left, in", `${seat.given} in`)} after tolerances, ${seat.asked} in needed`),
      fact("Factored load", told`${shown("beam load, plf", `${decimals(edgeBeam.loads.factoredPlf)} plf`)}${demand.stemmed ? `, of which ${decimals(demand.end.stems.stemKip, 1)} kip by each stem` : ""}`),
      fact("Factored moment and shear", told`${shown("beam moment, kip-ft", `${decimals(edgeBeam.momentKipIn / 12)} kip-ft`)}, ${decimals(edgeBeam.shearKip)} kip`),
      fact("Factored twist", told`${shown("beam twist, kip-ft", `${decimals(edgeBeam.torsionKipIn / 12)} kip-ft`)} at the ends`),
      ...(twist && stirrups ? [
        fact("Stirrups", `${stirrups.bar.size} closed, ${decimals(stirrups.spacingIn, 1)} in apart at the ends; ${decimals(twist.design.lengthwiseIn2, 1)} in\u00b2 of bars round them`),
        fact("Couple that holds an end upright", `${decimals(Math.abs(twist.rotation.topKip))} kip, ${feetAndInches(twist.leverIn)} apart`),
      ] : []),
      ...(ledge ? [fact("Ledge", `${ledge.bars.bar.size} bars across it, ${decimals(ledge.bars.spacingIn, 1)} in apart`)] : []),
      fact("Weight of one beam", [shown("beam weight, kip", `${decimals(edgeBeam.handling.weightKip)} kip`)]),
    ],
    alternatives: [], checks: edgeBeam.checks, reason: reasonState(design, "edgeBeam"),
  };
}

function storySection({design, story, services}: Evaluation): RecordSection {
  const {ducts} = services;
  return {
    id: "story", title: "Story",
    decision: told`${shown("floor to floor, in", feetAndInches(story.floorToFloorIn))} floor to floor leaves ${shown("ceiling, in", feetAndInches(story.ceilingHeightIn))} ${design.story.ceiling === "none" ? "under the deck" : "under the ceiling"} and ${story.glassIn > 0 ? shown("glass, in", feetAndInches(story.glassIn)) : "nothing"} of glass.`,
    facts: [
      fact("Deck and topping", feetAndInches(story.deckDepthIn)),
      fact("Edge beam below the deck", feetAndInches(story.ledgeDepthIn)),
      fact("Plenum", story.plenumIn > 0 ? feetAndInches(story.plenumIn) : "none"),
      fact("Sill and head of the window", told`${shown("sill, in", feetAndInches(story.sillIn))} and ${shown("head, in", feetAndInches(story.headIn))} above the finished floor, frames of ${feetAndInches(story.frameIn)} within`),
      ...(ducts ? [
        fact("Main duct", told`${decimals(design.services.mainWidthIn)} by ${decimals(design.services.mainDepthIn)} in, ${ducts.mainPlace}, ${shown("duct velocity, ft/min", `${decimals(ducts.result.mainVelocityFpm)} ft/min`)} with ${shown("duct flow, cfm", `${decimals(ducts.flowCfm)} cfm`)} for ${decimals(ducts.servedFt2)} ft\u00b2; ${ducts.mains === 1 ? "it serves the whole floor" : `the floor takes ${decimals(ducts.mains)} such mains`}`),
        fact("Branches", `${ducts.branches} from a main, each ${decimals(design.services.branchWidthIn)} by ${decimals(design.services.branchDepthIn)} in, ${ducts.branchesBetweenStems ? "between the stems" : "below the deck"}`),
      ] : [fact("Ducts", "none: no air is asked for")]),
    ],
    alternatives: [], checks: [...story.checks, ...services.checks], reason: reasonState(design, "story"),
  };
}

function lightSection({design, daylight, story}: Evaluation): RecordSection {
  const base = {id: "light", title: "Daylight", alternatives: [], reason: reasonState(design, "light")} as const;
  if (!daylight) return {...base, decision: "No glass, and so no daylight.", facts: [], checks: []};
  const {input, result, wanted} = daylight;
  const {good, partial, little, dark, daylit} = sharePercents(result.shares);
  return {
    ...base,
    decision: told`Windows on ${design.daylight.sides === "two" ? "both long sides" : "one long side"} give ${shown("daylit, %", `${daylit}\u00a0%`)} of the floor's depth a daylight factor of 2 % or more; the average is ${shown("average daylight, %", `${decimals(result.average.averagePercent, 1)} %`)}.${wanted ? "" : " No one works there, so nothing is asked of it."}`,
    facts: [
      fact("Glass", told`${shown("glass, in", feetAndInches(story.glassIn))} high, lets ${percent(input.window.transmittanceShare)} through; frames take ${percent(input.window.frameShare)}`),
      fact("Depth of the room", `${decimals(input.depthFt)} ft`),
      fact("Good, partial, little, dark", `${good}, ${partial}, ${little} and ${dark}\u00a0% of the depth`),
      fact("Least daylight factor", [shown("least daylight, %", `${decimals(result.leastPercent, 1)} %`)]),
      fact("No-sky line", noSkyWords(result, design.daylight.obstructionDeg)),
    ],
    checks: daylight.checks,
  };
}

/** Where the no-sky line lies; one that would fall behind the back wall, or in front of the glass, is no place in the room. */
function noSkyWords({noSkyFt, skySeenShare}: DaylightResult, skylineDeg: number): string {
  if (noSkyFt === undefined || skySeenShare >= 1) return "none: sky is seen from everywhere";
  return noSkyFt <= 0 ? "none: sky is seen from nowhere" : `${decimals(noSkyFt)} ft from a window, under a skyline of ${decimals(skylineDeg)} degrees`;
}

import type {Check} from "../checks.js";
import type {ColumnsResult} from "../columns/columnsResult.js";
import {commentsOn} from "../design/comments.js";
import type {Comment, Design, ReasonName} from "../design/design.js";
import {countReasons, reasonState, type ReasonCount} from "../design/reasons.js";
import type {Evaluation} from "../evaluate.js";
import type {RoomLoad} from "../loads/floorLoads.js";
import {reducedFrom} from "../loads/liveWords.js";
import {pairText} from "../pair.js";
import {shown, sentence, type Sentence} from "../sentence.js";
import {decimals, feetAndInches, percent} from "../units.js";
import {VERSION} from "../version.js";
import {checksOf} from "./checkGroups.js";
import type {Compared} from "./compared.js";
import {deckSection} from "./deck.js";
import {frameSection} from "./frame.js";
import {NO_TABLES, type Fact, type RecordSection} from "./parts.js";
import {roofLoadFacts} from "./snow.js";
import {roofSections} from "./roof.js";
import {lightSection, storySection} from "./story.js";
import {ASSUMPTIONS, CAUTIONS} from "./texts.js";

/** The record of a design, ready to be set on paper. */
export interface DesignRecord {
  readonly title: string;
  readonly setting: string;
  readonly brief: string;
  /** Who made the design, and for what firm or class; empty where the design does not say. */
  readonly author: string;
  readonly firm: string;
  readonly dateText: string;
  readonly version: string;
  readonly sections: readonly RecordSection[];
  /** How many of the decisions have a reason that stands, and by whose hand. */
  readonly reasons: ReasonCount;
  /** What others said of it: of the whole, and of each decision that the record has. */
  readonly comments: {readonly whole: readonly Comment[]} & Readonly<Partial<Record<ReasonName, readonly Comment[]>>>;
  /** Checks that do not hold or are out of a method's range, from all parts: never hidden. */
  readonly open: readonly Check[];
  readonly assumptions: readonly string[];
  readonly cautions: readonly string[];
}

/**
 * The record of a design: brief, each decision with its numbers, the ways not taken and those that do not work, the
 * reader's reasons, open checks, assumptions, cautions.
 *
 * @param ways - what the design was compared with
 * @param dateText - the day, as it shall stand on the record; the library has no clock of its own
 * @param columns - the design's columns, which the pipeline leaves to those who ask
 */
export function designRecord(evaluation: Evaluation, ways: Compared, dateText: string, columns: ColumnsResult): DesignRecord {
  const {design} = evaluation;
  const sections = [
    loadsSection(evaluation), reductionSection(evaluation), deckSection(evaluation, ways),
    toppingSection(evaluation), edgeBeamSection(evaluation), ...roofSections(evaluation), frameSection(evaluation, columns), storySection(evaluation), lightSection(evaluation),
  ];
  return {
    title: design.name, setting: design.setting, brief: design.brief, author: design.author.trim(), firm: design.firm.trim(), dateText, version: VERSION,
    sections, reasons: countReasons(sections.map(({reason}) => reason)), comments: commentsBySection(design, sections),
    open: [...evaluation.checks, ...columns.checks].filter((check) => check.verdict === "fails" || check.verdict === "out of range"),
    assumptions: ASSUMPTIONS,
    cautions: CAUTIONS,
  };
}

/** Comments by what they are about; those on a decision that the record has not, such as the roof of two loads, stand with those on the whole. */
function commentsBySection(design: Design, sections: readonly RecordSection[]): DesignRecord["comments"] {
  const shown = sections.map(({id}) => id);
  const rest = design.comments.filter(({on, words}) => words.trim() !== "" && (on === "whole" || !shown.includes(on)));
  return {...Object.fromEntries(shown.map((id) => [id, commentsOn(design, id)])), whole: rest};
}

const psf = (value: number) => `${decimals(value)} psf`;
const fact = (label: string, value: Sentence): Fact => ({label, value});

function loadsSection(evaluation: Evaluation): RecordSection {
  const {design, loads, deck, roofLoads, openTop} = evaluation;
  // Of the many that the open top level shares with the floors, those that hold are counted and not printed.
  const onTop = openTop?.checks.filter(({id, verdict}) => verdict !== "ok" || id === "top level: deck load") ?? [];
  return {
    id: "loads", title: "Loads",
    decision: sentence`The deck carries ${shown("demand, psf", psf(deck.demandPsf))} besides its own weight: ${shown("dead load, psf", psf(deck.superimposedDeadPsf))} dead and ${shown("live load, psf", psf(deck.livePsf))} live${reducedFrom(deck.load.governing)}.`,
    facts: [
      ...loads.rooms.map((room) => fact(room.name, roomWords(room))),
      ...design.loads.layers.map((layer) => fact(layer.name, `${decimals(layer.loadPsf, 1)} psf`)),
      ...roofLoadFacts(evaluation),
      ...(openTop ? [fact("Open top level", `live load and snow together count as ${psf(openTop.deck.livePsf)} of live load on the deck; ${decimals(openTop.checks.length - onTop.length)} further checks of its deck and beams hold`)] : []),
    ],
    ...NO_TABLES, checks: [...checksOf("Loads", loads.checks), ...checksOf("Loads on the roof", roofLoads.checks), ...checksOf("Top level", onTop)], reason: reasonState(design, "loads"),
  };
}

/** A room's loads before reduction: of the table, or of the reader's own with what asks for it. */
function roomWords({livePsf, occupancy, own, partitionPsf}: RoomLoad): string {
  const walls = partitionPsf > 0 ? ` and ${psf(partitionPsf)} for movable walls` : "";
  if (!own) return `${psf(livePsf)} (${occupancy.name})${walls}`;
  return `${psf(livePsf)}${walls}, entered in place of ${psf(occupancy.livePsf)} (${occupancy.name}), ${own.reducible ? "reduced by that use\u2019s rule" : "taken in full"}: ${own.reason.trim() || "no reason is given"}`;
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
    ...NO_TABLES, checks: [], reason: reasonState(design, "reduction"),
  };
}

function toppingSection({design, camber, topping, joint}: Evaluation): RecordSection {
  return {
    id: "topping", title: "Camber and topping",
    decision: topping
      ? sentence`A topping of at least ${shown("topping least, in", `${decimals(topping.leastIn, 2)} in`)} levels ${archOrSag(camber.erectionIn)}: ${shown("topping of a bay, yd3", `${decimals(topping.bayYd3, 1)} yd\u00b3`)} in a bay.`
      : sentence`No topping: the member is set with ${archOrSag(camber.erectionIn)}, and the finish follows it.`,
    facts: [
      fact("Camber at release", `${decimals(camber.releaseIn, 2)} in`),
      fact("Camber when set", sentence`${shown("camber when set, in", `${decimals(camber.erectionIn, 2)} in`)} at ${decimals(camber.ageDays)} days`),
      fact("Long-term camber", sentence`${shown("camber after years, in", `${decimals(camber.longTermIn, 2)} in`)}${camber.longTermIn < 0 ? ": a sag" : ""}`),
      ...(topping ? [
        fact("Thickness", sentence`${shown("topping least, in", `${decimals(topping.leastIn, 2)} in`)} at the least, ${shown("topping greatest, in", `${decimals(topping.greatestIn, 2)} in`)} at the most, ${shown("topping average, in", `${decimals(topping.averageIn, 2)} in`)} on average`),
        fact("Finished surface", design.topping.followShare === 0 ? "level" : `follows ${percent(design.topping.followShare)} of the camber`),
        fact("Weight beyond the minimum thickness", `${decimals(topping.extra.averagePsf, 1)} psf on average, ${decimals(topping.extra.endPsf, 1)} psf at the ends; it bends the deck like a uniform ${decimals(topping.extra.momentPsf, 1)} psf`),
        fact("Whole floor", `${decimals(topping.floorYd3, 1)} yd\u00b3`),
      ] : []),
      ...(joint ? [fact("Neighbors", sentence`differ by ${shown("joint step, in", `${decimals(joint.meanIn, 2)} in`)} on average, with the usual scatter`)] : []),
    ],
    ...NO_TABLES, checks: checksOf("Camber and topping", (topping ?? joint)?.checks ?? []), reason: reasonState(design, "topping"),
  };
}

function archOrSag(camberIn: number): Sentence {
  return sentence`a ${camberIn < 0 ? "sag" : "camber"} of ${shown("camber when set, in", `${decimals(Math.abs(camberIn), 2)} in`)}`;
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
    decision: sentence`${what} ${shown("beam depth, in", feetAndInches(edgeBeam.depthIn))} deep and ${width} wide at its foot, with ${steel} in the bottom, spans ${decimals(edgeBeam.spanFt)} ft.`,
    facts: [
      kind === "below"
        ? fact("Depth", "all of it below the deck")
        : fact("Parts of its depth", `${decimals(input.ledgeDepthIn, 1)} in ${kind === "ledge" ? "ledge" : "below the pockets"}, ${decimals(edgeBeam.deckDepthIn, 1)} in deck, ${decimals(input.upstandIn, 1)} in upstand`),
      fact("Seat", sentence`${shown("seat left, in", `${seat.given} in`)} after tolerances, ${seat.asked} in needed`),
      fact("Factored load", sentence`${shown("beam load, plf", `${decimals(edgeBeam.loads.factoredPlf)} plf`)}${demand.stemmed ? `, of which ${decimals(demand.end.stems.stemKip, 1)} kip by each stem` : ""}`),
      fact("Factored moment and shear", sentence`${shown("beam moment, kip-ft", `${decimals(edgeBeam.momentKipIn / 12)} kip-ft`)}, ${decimals(edgeBeam.shearKip)} kip`),
      fact("Factored torsion", sentence`${shown("beam twist, kip-ft", `${decimals(edgeBeam.torsionKipIn / 12)} kip-ft`)} at the ends`),
      ...(twist && stirrups ? [
        fact("Stirrups", `${stirrups.bar.size} closed, ${decimals(stirrups.spacingIn, 1)} in apart at the ends; ${decimals(twist.design.lengthwiseIn2, 1)} in\u00b2 of bars round them`),
        fact("Couple that holds an end upright", `${decimals(Math.abs(twist.rotation.topKip))} kip, ${feetAndInches(twist.leverIn)} apart`),
      ] : []),
      ...(ledge ? [fact("Ledge", `${ledge.bars.bar.size} bars across it, ${decimals(ledge.bars.spacingIn, 1)} in apart`)] : []),
      fact("Weight of one beam", [shown("beam weight, kip", `${decimals(edgeBeam.handling.weightKip)} kip`)]),
    ],
    ...NO_TABLES, checks: checksOf("Edge beam", edgeBeam.checks), reason: reasonState(design, "edgeBeam"),
  };
}

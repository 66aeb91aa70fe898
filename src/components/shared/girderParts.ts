import {girderCurves} from "../../lib/girder/curve.js";
import {placedBeamStrands} from "../../lib/beams/prestressedBeam.js";
import type {GirderResult} from "../../lib/girder/girder.js";
import {GIRDER_COVER_IN} from "../../lib/girder/seat.js";
import type {Catalog} from "../../lib/catalog.js";
import type {Evaluation} from "../../lib/evaluate.js";
import {pairText} from "../../lib/pair.js";
import {clearUnderGirderIn} from "../../lib/story/stack.js";
import {decimals, feetAndInches, kipFt} from "../../lib/units.js";
import type {GirderSpanLoad} from "../charts/girderSpanLoad.js";
import type {GirderSectionOptions} from "../drawings/girderSection.js";
import type {FigureTable} from "../figure.js";
import {figureOf} from "../quantity.js";
import {inches} from "./part.js";
import {said} from "./said.js";

/** What the drawing of the girder needs. */
export function girderPicture({design, member}: Evaluation, girder: GirderResult): Omit<GirderSectionOptions, "widthPx"> {
  const {shape, layout} = girder.member;
  const {seat, pad} = girder.seat;
  const flangeIn = member.shape.dimensions["flangeIn"];
  return {
    shape, strands: placedBeamStrands(shape, layout), strandName: `${layout.count} strands`,
    deck: {depthIn: member.shape.depthIn, toppingIn: design.deck.toppingIn, family: member.shape.family, ...(flangeIn === undefined ? {} : {flangeIn})},
    seatIn: girder.belowDeckIn, deckEndIn: shape.widthIn / 2 - seat.nominalIn, seatLengthIn: seat.nominalIn,
    ...(pad ? {padLengthIn: pad.lengthIn} : {}),
    finishIn: design.story.finishIn, coverIn: GIRDER_COVER_IN,
  };
}

/** The span-load chart of the girder, over spans about its own. */
export function girderSpanLoad({design, member}: Evaluation, catalog: Catalog, girder: GirderResult): GirderSpanLoad {
  const from = Math.max(10, Math.floor((0.55 * girder.spanFt) / 5) * 5);
  const to = Math.max(from + 20, Math.ceil((1.45 * girder.spanFt) / 5) * 5);
  const spansFt = Array.from({length: to - from + 1}, (_, i) => from + i);
  return {curves: girderCurves(design, catalog, member, girder, spansFt), spanFt: girder.spanFt, demandPlf: girder.demandPlf, spansFt: [from, to]};
}

/** The chart's numbers every five feet. */
export function girderSpanTable({curves, spansFt: [from, to]}: GirderSpanLoad): FigureTable {
  const spans = Array.from({length: Math.floor((to - from) / 5) + 1}, (_, i) => from + 5 * i);
  const own = curves.find((curve) => curve.own);
  const sorted = [...curves].sort((a, b) => a.strands - b.strands);
  return {
    columns: ["Span, ft", ...sorted.map((curve) => `${curve.strands} strands, plf`), "What governs this design"],
    rows: spans.map((spanFt) => [
      String(spanFt), ...sorted.map((curve) => decimals(curve.cells.find((cell) => cell.spanFt === spanFt)?.safeLoadPlf ?? 0)),
      own?.cells.find((cell) => cell.spanFt === spanFt)?.governs ?? "",
    ]),
  };
}

/** What the girder costs in height under the deck. */
export function headroomSentence({story}: Evaluation, girder: GirderResult): HTMLElement {
  const clearIn = clearUnderGirderIn(story, girder);
  const what = girder.kind === "inverted tee" ? "Only its foot hangs below the deck" : "All of it hangs below the deck";
  return said`${what}: under the girder ${clearIn > 0 ? said`${figureOf("clear under girder, in", feetAndInches(clearIn))} is left` : "no height is left"} above the finished floor, ${figureOf("girder below deck, in", inches(girder.belowDeckIn))} less than under the deck.${tooLow(story.checks)}`;
}

/** What of that height is too little, if anything is. */
function tooLow(checks: Evaluation["story"]["checks"]): string {
  return checks.filter(({id, verdict}) => id.startsWith("girder ") && verdict === "fails").map(({message, clause}) => ` ${message} (${clause})`).join("");
}

/** How stems differ from an even load, and on which bay. */
export function stemSentence({loads: {stems}}: GirderResult): string {
  const {bays, bending, end, momentFactor, reactionFactor} = stems;
  if (!bending || !end) return "Planks load the girder evenly along its length.";
  const more = (factor: number) => (factor < 1.0005 ? "no more" : `${decimals(100 * (factor - 1), 1)} % more`);
  const bayOf = (factor: number, {bay}: {readonly bay: number}) => (bays.length > 1 && factor >= 1.0005 ? ` (bay ${bay})` : "");
  const stand = bays.length > 1
    ? "The bay is not a whole number of tees, so the stems land differently on each girder, and the worst governs"
    : `Stems bear at ${bending.placesFt.length} places along each side`;
  return `${stand}; they bend the girder ${more(momentFactor)} than the same load spread evenly${bayOf(momentFactor, bending)}, and load its ends ${more(reactionFactor)}${bayOf(reactionFactor, end)}.`;
}

/** Torsion by one bay, against what may be neglected. */
export function girderTwistSentence({twist}: GirderResult): HTMLElement {
  const {design, torsionKipIn, settingKipIn} = twist;
  const twisting = figureOf("girder twist, kip-ft", decimals(kipFt(torsionKipIn)));
  const setting = `While the crane sets the deck of one bay and the other is empty, the torsion is ${decimals(kipFt(settingKipIn))} kip-ft: the girder must be propped, or its ends held, until both sides are set.`;
  return design.negligible
    ? said`That is ${twisting} kip-ft, small enough to neglect. ${setting}`
    : said`That is ${twisting} kip-ft, more than the ${decimals(kipFt(design.negligibleKipIn))} kip-ft that may be neglected: closed stirrups of ${decimals(12 * design.stirrupsIn2PerIn, 2)} in² per foot at the ends, and ${decimals(design.lengthwiseIn2, 1)} in² of longitudinal bars, carry torsion and shear together. ${setting}`;
}

/** The ledges' steel. */
export function ledgeSentence({seat: {ledge, factoredKip}}: GirderResult): string {
  if (!ledge) return "A rectangle has no ledges: the deck bears on its top.";
  const press = pairText(factoredKip, ledge.punching?.designKip ?? (ledge.linePlf ?? 0) / 1000, 1);
  const under = ledge.punching ? `Each stem puts ${press.asked} kip on its ledge, where ${press.given} kip would punch through (${ledge.punching.governing.label.toLowerCase()})` : `The planks put ${press.asked} kip on each foot of ledge, where ${press.given} kip would shear it off`;
  return `${under}. Bars across the top of the ledge (${decimals(ledge.steel.topIn2PerFt, 2)} in² per foot) tie it to the web, and stirrups on its side (${decimals(ledge.hanger.hangerIn2PerFt, 2)} in² per foot) hang the load up.`;
}

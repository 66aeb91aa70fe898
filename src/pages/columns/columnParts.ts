import {loadPath as pathOf, type ColumnResult, type ColumnsResult, type LoadPath} from "../../lib/columns/columnsResult.js";
import {carriesGirders, positionsOf} from "../../lib/columns/frame.js";
import {interactionCut, type InteractionCut} from "../../lib/columns/interactionCut.js";
import {levelWords} from "../../lib/columns/levels.js";
import {deckCombinations} from "../../lib/loads/loadParts.js";
import {ownPsf} from "../../lib/member/member.js";
import {framingOf, type Evaluation} from "../../lib/evaluate.js";
import {usedPercent} from "../../lib/pair.js";
import {COLUMN_WORKINGS} from "../../lib/steps/columns.js";
import {decimals, feetAndInches, inches as inchesOf, kipFt, percent} from "../../lib/units.js";
import type {InteractionPoint} from "./interaction.js";
import {element} from "../../components/dom.js";
import type {LoadPathOptions} from "./loadPath.js";
import {live} from "../../components/live.js";
import {figureOf, quantity} from "../../components/quantity.js";
import type {Look} from "../../components/shared/chooser.js";
import {inches} from "../../components/shared/part.js";

/** The columns that the grid has, for a chooser. */
export function columnLooks(evaluation: Evaluation): Look[] {
  return positionsOf(evaluation).map((position) => ({value: position, label: `the ${position}`}));
}

/** The column at a position, or the first where the grid has none there; undefined where no column can be worked out. */
export function chosenOf({columns}: Pick<ColumnsResult, "columns">, position: string): ColumnResult | undefined {
  return columns.find((column) => column.position === position) ?? columns[0];
}

/** Whether a column carries the roof. */
export function hasRoof({column}: ColumnResult): boolean {
  return column.stories.some(({load}) => levelWords(load.level) === "the roof");
}

/** Where a column stands, in a sentence. */
export function placeSentence({position}: ColumnResult): string {
  const places: Readonly<Record<typeof position, string>> = {
    "interior column": "It stands between four bays, under the ends of two girders.",
    "edge column": "It stands on the long edge, under the ends of two edge beams.",
    "girder end column": "It stands at the end of the building, where a line of girders ends: one girder, on one corbel.",
    "corner column": "It stands at the corner of the building, under the end of one edge beam.",
  };
  return places[position];
}

/** What the drawing of the load's path needs. */
export function pathPicture(evaluation: Evaluation, result: ColumnResult): Omit<LoadPathOptions, "widthPx"> {
  const {design, member, girder, edgeBeam} = evaluation;
  const inside = carriesGirders(result.position) && girder !== undefined;
  const deckDepthIn = member.compression.depthIn;
  const {footing} = result;
  return {
    label: `Section of the building at the ${result.position}, with the path of the load from deck to ground`,
    inside, sideIn: result.column.sideIn, deckDepthIn,
    levels: result.column.takedown.stories.map(({level, governing}) => ({name: level.name, roof: level.kind === "roof", kip: governing.kip})),
    storyIn: inchesOf(design.story.floorToFloorFt), spanIn: inchesOf(design.bay.spanFt),
    beam: inside
      ? {
        webWidthIn: design.girder.webWidthIn, depthIn: girder.depthIn, ledges: girder.kind === "inverted tee" ? [-1, 1] : [],
        ledgeProjectionIn: design.girder.ledgeProjectionIn, ledgeDepthIn: design.girder.ledgeDepthIn, belowFloorIn: deckDepthIn + girder.belowDeckIn,
      }
      : {
        webWidthIn: design.edgeBeam.webWidthIn, depthIn: edgeBeam.depthIn, ledges: design.edgeBeam.kind === "ledge" ? [1] : [],
        ledgeProjectionIn: design.edgeBeam.ledgeProjectionIn, ledgeDepthIn: design.edgeBeam.ledgeDepthIn,
        belowFloorIn: design.edgeBeam.kind === "below" ? deckDepthIn + edgeBeam.depthIn : edgeBeam.depthIn - design.edgeBeam.upstandIn,
      },
    corbelDepthIn: result.corbel?.input.depthIn ?? 0,
    footing: footing && {sideIn: footing.sideIn, thicknessIn: footing.thicknessIn},
  };
}

/** The numbers of the load's path. */
export function pathNumbers(evaluation: Evaluation, result: ColumnResult): LoadPath {
  const sums = deckCombinations(evaluation, ownPsf(evaluation.laid));
  return pathOf(framingOf(evaluation), result, {floorPsf: sums.deadPsf + sums.livePsf, factoredPsf: Math.max(sums.deadOnlyPsf, sums.deadAndLivePsf)});
}

/**
 * The load's way in words, part by part. Each part lights its place in the drawing under the pointer and the focus, and
 * is lit by it.
 */
export function pathList(evaluation: Evaluation, result: ColumnResult): HTMLElement {
  const path = pathNumbers(evaluation, result);
  const {corbel, footing, column, foot} = result;
  const beam = carriesGirders(result.position) ? "girder" : "edge beam";
  const last = column.stories.length - 1;
  const kip = (value: number) => `${decimals(value, value < 100 ? 1 : 0)} kip`;
  const item = (part: string, name: string, ...words: (string | Node)[]) =>
    element("li", {"data-part": part, tabindex: 0}, element("strong", {}, name), " ", ...words);
  return element("ol", {class: "load-way", "aria-label": "The path of the load"},
    item("deck", "Deck.", `A square foot of it brings ${decimals(path.floorPsf)} pounds, ${decimals(path.factoredPsf)} factored; one end of a member delivers `, live(kip(path.memberKip)), " on its ledge."),
    item("beam", `${beam === "girder" ? "Girder" : "Edge beam"}.`, `One end of the ${beam} delivers `, live(kip(path.beamKip)), " on the column."),
    item("corbel", "Corbel.", ...(corbel
      ? [`${feetAndInches(corbel.input.depthIn)} deep and ${feetAndInches(corbel.projectionIn)} out, with `, live(`${decimals(corbel.mainSteelIn2, 1)} in²`, () => COLUMN_WORKINGS.corbel(result)), " of steel in its top."]
      : ["Beyond what a corbel can carry."])),
    item("column", "Column.", figureOf(`${result.position}, in`, inches(column.sideIn)), ` square with ${column.section.count} ${column.section.bar.size} bars. At its foot `,
      quantity(`${result.position} foot, kip`, live(kip(path.columnKip), () => COLUMN_WORKINGS.load(result, last))), ` arrive, ${decimals(foot.governingService.kip)} unfactored.`),
    item("footing", "Footing.", ...(footing
      ? [live(feetAndInches(footing.sideIn), () => COLUMN_WORKINGS.footing(result)), ` square and ${feetAndInches(footing.thicknessIn)} thick.`]
      : ["Too much load for a single footing."])),
    item("soil", "Ground.", ...(footing ? [live(`${decimals(footing.servicePsf)} psf`), ` of the ${decimals(result.allowablePsf)} allowed.`] : ["It needs piles or a mat."])),
  );
}

/** The name under which a story of the column lights, which is also its name in the chart. */
const storyPart = (level: Parameters<typeof levelWords>[0]): string => `below ${levelWords(level)}`;

/** Loads level by level, with the reduction; the column's own weight is in the dead load. */
export function levelTable(result: ColumnResult): HTMLElement {
  const {stories} = result.column;
  const head = ["Below", "floors", "influence, ft²", "live load counted", "dead, kip", "live, kip", ...(stories.some(({load}) => load.roofKip > 0) ? ["roof, kip"] : []), "factored, kip", "moment along, kip-ft", "moment across, kip-ft", "in use"];
  const roofed = head.includes("roof, kip");
  const cells = stories.map((story, i) => {
    const {load} = story;
    const [first] = load.reductions;
    const share = first ? live(percent(first.reduction.factor), () => COLUMN_WORKINGS.reduction(result, i)) : "none";
    return [
      levelWords(load.level).replace(" ", "\u00a0"), String(load.floors), load.floors > 0 ? decimals(load.influenceFt2) : "", share, decimals(load.deadKip), decimals(load.liveKip),
      ...(roofed ? [decimals(load.roofKip)] : []), live(decimals(load.governing.kip), () => COLUMN_WORKINGS.load(result, i)),
      live(decimals(kipFt(story.along.momentKipIn), 1), () => COLUMN_WORKINGS.moment(result, i)), live(decimals(kipFt(story.across.momentKipIn), 1), () => COLUMN_WORKINGS.moment(result, i)),
      live(usedPercent(story.utilization), () => COLUMN_WORKINGS.interaction(result, i)),
    ];
  });
  return element("div", {class: "scrolls", tabindex: 0, role: "region", "aria-label": `Loads of the ${result.position} by level`},
    element("table", {},
      element("thead", {}, element("tr", {}, ...head.map((words, i) => element("th", {scope: "col", class: i > 0 ? "numeric" : undefined}, words)))),
      element("tbody", {}, ...cells.map((row, at) => element("tr", {"data-part": storyPart((stories[at] as (typeof stories)[number]).load.level)}, ...row.map((cell, i) => (i === 0 ? element("th", {scope: "row"}, cell) : element("td", {class: "numeric"}, cell))))))));
}

/** The interaction at the angle of the story that requires most. */
export function worstCut({column}: ColumnResult): InteractionCut {
  return interactionCut(column.section, column.worst.asked);
}

/** Angles between moments that no eye tells apart in the chart, degrees. */
const SAME_ANGLE_DEG = 2;

/** The stories as points of the interaction. */
export function storyPoints({column}: ColumnResult): InteractionPoint[] {
  const {worst} = column;
  return column.stories.map((story) => ({
    name: storyPart(story.load.level), axialKip: story.axialKip, momentKipIn: story.momentKipIn, worst: story === worst,
    inCut: Math.abs(story.angleDeg - worst.angleDeg) <= SAME_ANGLE_DEG,
  }));
}

/** Where the chart cuts the surface that the column's strength really is. */
export function cutWords({column: {worst}}: ColumnResult): string {
  const [along, across] = [worst.along, worst.across].map(({momentKipIn}) => decimals(kipFt(momentKipIn), 1));
  return `${along} kip-ft along the beams and ${across} across them, ${decimals(worst.angleDeg)} degrees off the line of the beams`;
}

/** What the interaction shows, as its title. */
export function interactionFinding({column}: ColumnResult): string {
  const {worst, suffices} = column;
  const bent = worst.momentKipIn === 0 ? "Not bent" : worst.angleDeg < SAME_ANGLE_DEG ? "Bent along the beams" : worst.angleDeg > 90 - SAME_ANGLE_DEG ? "Bent across the beams" : `Bent ${decimals(worst.angleDeg)} degrees off the line of the beams`;
  return suffices
    ? `${bent}, the story below ${levelWords(worst.load.level)} is the most critical: it uses ${usedPercent(worst.utilization)} of what a ${inches(column.sideIn)} column bent like that can carry`
    : `${bent}, the story below ${levelWords(worst.load.level)} needs more than any column up to ${inches(column.sideIn)} can carry`;
}

/** Why the column is no smaller. */
export function sizeSentence(result: ColumnResult): string {
  const {column, position} = result;
  const why: Readonly<Record<typeof column.governs, string>> = {
    "axial load": "the next smaller size would not carry the load by itself",
    "axial load with moment": "the next smaller size would not carry the load with its moments",
    "slenderness": "the next smaller size would be too slender for its story",
    "room for bars": "the bars would not fit in the next smaller size",
    "least size": "no smaller column is considered for a first size",
  };
  const pieces = column.pieces > 1 ? ` It comes in ${column.pieces} pieces.` : " It comes in one piece.";
  return `The ${position} is ${inches(column.sideIn)} square with ${column.section.count} ${column.section.bar.size} bars and ${column.section.ties.size} ties every ${inches(column.section.ties.spacingIn)}: ${why[column.governs]}. What bends it most: ${column.worst.pattern.words}.${pieces}`;
}

/** How much of the live load never arrives at the foot. */
export function reductionSentence({foot}: ColumnResult): string {
  const savedKip = foot.unreducedLiveKip - foot.liveKip;
  return savedKip > 0.5
    ? `Of ${decimals(foot.unreducedLiveKip)} kip of live load on its floors, ${decimals(foot.liveKip)} counts at its foot: an area this large is never full all at once.`
    : `All ${decimals(foot.unreducedLiveKip)} kip of live load on its floors counts at its foot: this use takes no reduction here.`;
}

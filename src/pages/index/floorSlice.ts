import type {Evaluation} from "../../lib/evaluate.js";
import {feetAndInches} from "../../lib/units.js";
import {chain, chainDepth} from "../../components/drawings/dimension.js";
import {scaleBar} from "../../components/drawings/marks.js";
import {desk, person} from "../../components/drawings/people.js";
import {createSheet, text, textSize, type DrawingOptions, type Sheet} from "../../components/drawings/sheet.js";
import {viewAt, type View} from "../../components/drawings/view.js";
import {drawCeiling, drawFloor, drawOutside, lengthsOf, type Lengths} from "./floorSliceParts.js";
import {hasDesks} from "../../components/shared/pictures.js";

/** What {@link floorSlice} draws: one bay of a design from edge to edge, or from the edge to the beam inside. */
export interface FloorSliceOptions extends DrawingOptions {
  readonly result: Evaluation;
  /** Said on the deck where it does not carry its load. */
  readonly failing?: string | undefined;
}

/** Spans up to this keep one scale, so that a longer span is seen to be longer. */
const KEEP_SCALE_TO_IN = 56 * 12;

/** A slice through one bay of the open design: two floors, the beams, glass, ceiling, people. True to scale. */
export function floorSlice({result, failing, widthPx, ...options}: FloorSliceOptions): SVGSVGElement {
  const {design, story} = result;
  const lengths = lengthsOf(result);
  const textPx = textSize(widthPx);
  const storyText = [{value: feetAndInches(story.floorToFloorIn), name: "story", quantity: "floor to floor, in" as const}];
  const left = 14 + chainDepth("y", storyText, textPx) + 14;
  const below = story.finishIn + story.deckDepthIn + Math.max(story.ledgeDepthIn, result.girder?.belowDeckIn ?? 0) + 4;
  const above = Math.max(design.edgeBeam.kind === "below" ? 0 : design.edgeBeam.upstandIn - story.finishIn, 0) + 6;
  const world = {x0: 0, y0: -below, x1: Math.max(lengths.wholeIn, KEEP_SCALE_TO_IN), y1: story.floorToFloorIn + above};
  // A page that is not laid out yet has no width to speak of.
  const scale = Math.max(0.02, Math.min((widthPx - left - 8) / world.x1, 420 / (world.y1 - world.y0)));
  // The deck's name stands above it, beside the upstand where there is one.
  const top = 6 + Math.max(0, 2 * textPx - above * scale);
  const view = viewAt(world, left, top, scale);
  const under = 28 + chainDepth("x", [{value: "", name: "span"}], textPx);
  const sheet = createSheet({
    view, kind: "slice", widthPx, heightPx: Math.ceil(top + (world.y1 - world.y0) * scale + under + 18), bare: false,
    label: options.label ?? `Section through one bay of ${design.name}, spanning ${feetAndInches(design.bay.spanFt * 12)}`,
    description: options.description ?? `Story ${feetAndInches(story.floorToFloorIn)}, deck ${feetAndInches(story.deckDepthIn)} deep, ${feetAndInches(story.ceilingHeightIn)} clear.`,
  });
  drawOutside(sheet, view, result, lengths);
  if (design.story.ceiling !== "none") drawCeiling(sheet, view, result, lengths);
  for (const level of [0, story.floorToFloorIn]) drawFloor(sheet, view, result, lengths, level);
  person(sheet, view, lengths.startIn + 58, 0);
  if (design.bay.spanFt > 18 && hasDesks(result)) desk(sheet, view, lengths.startIn + 100, 0);
  notes(sheet, view, result, lengths, failing);
  const {nominalIn} = result.edgeBeam.seat;
  const supports = [lengths.startIn + nominalIn / 2, lengths.endIn - nominalIn / 2];
  chain(sheet, {axis: "x", outward: 1, line: view.y(world.y0) + 10, stops: supports.map((x) => ({at: view.x(x), edge: view.y(world.y0) - 2})),
    texts: [{value: feetAndInches(design.bay.spanFt * 12), name: "span", part: "span", quantity: "span, in"}]});
  chain(sheet, {axis: "y", outward: -1, line: view.x(0) - 14, texts: storyText,
    stops: [0, story.floorToFloorIn].map((y) => ({at: view.y(y), edge: view.x(0)}))});
  scaleBar(sheet, [view.x(0), sheet.heightPx - 10], scale);
  return sheet.svg;
}

function notes(sheet: Sheet, view: View, {design, story, girder}: Evaluation, l: Lengths, failing: string | undefined): void {
  const middle = (l.startIn + l.endIn) / 2;
  const size = sheet.textPx;
  const {member, toppingIn} = design.deck;
  const name = `${member}${toppingIn > 0 ? ` with ${Number(toppingIn.toFixed(2))} in topping` : ""}`;
  const over = view.y(story.floorToFloorIn) - size * 0.9;
  text(sheet.notes, sheet, [view.x(middle), over], name, {kind: "name", part: "deck"});
  if (failing) {
    const node = text(sheet.notes, sheet, [view.x(middle), view.y(story.floorToFloorIn / 2) - size], failing, {kind: "name", className: "text-title"});
    node.style.fill = "var(--fails)";
  }
  if (girder && view.scale > 0.75) {
    const footIn = Math.min(story.clearUnderDeckIn - girder.belowDeckIn, story.ceilingHeightIn);
    text(sheet.notes, sheet, [view.x(l.farIn + design.girder.webWidthIn / 2), view.y(footIn) + size * 1.6], "girder", {kind: "small", part: "girder"});
  }
}

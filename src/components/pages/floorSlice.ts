import type {Evaluation} from "../../lib/evaluate.js";
import {feetAndInches} from "../../lib/units.js";
import {chain, chainDepth} from "../drawings/dimension.js";
import {breakLine, scaleBar} from "../drawings/marks.js";
import {desk, person} from "../drawings/people.js";
import {hasDesks} from "./pictures.js";
import {concrete, createSheet, line, text, textSize, type DrawingOptions, type Sheet} from "../drawings/sheet.js";
import {el, pathOfBox, pathThrough} from "../drawings/svg.js";
import {viewAt, type View} from "../drawings/view.js";

/** What {@link floorSlice} draws: one bay of a design from edge to edge, or from the edge to the beam inside. */
export interface FloorSliceOptions extends DrawingOptions {
  readonly result: Evaluation;
  /** Said on the deck where it does not carry its load. */
  readonly failing?: string | undefined;
}

/** Spans up to this keep one scale, so that a longer span is seen to be longer. */
const KEEP_SCALE_TO_IN = 56 * 12;

/** The deck in the plane of the drawing, in: the beam's outer face is 0. */
interface Lengths {
  readonly webIn: number;
  readonly startIn: number;
  readonly endIn: number;
  /** Nearer face of the beam at the far side. */
  readonly farWebIn: number;
  readonly wholeIn: number;
}

/** A slice through one bay of the open design: two floors, the beams, glass, ceiling, people. True to scale. */
export function floorSlice({result, failing, widthPx, ...options}: FloorSliceOptions): SVGSVGElement {
  const {design, storey} = result;
  const lengths = lengthsOf(result);
  const textPx = textSize(widthPx);
  const storeyText = [{value: feetAndInches(storey.floorToFloorIn), name: "storey"}];
  const left = 14 + chainDepth("y", storeyText, textPx) + 14;
  const below = storey.finishIn + storey.deckDepthIn + storey.ledgeDepthIn + 4;
  const above = Math.max(design.edgeBeam.upstandIn - storey.finishIn, 0) + 6;
  const world = {x0: 0, y0: -below, x1: Math.max(lengths.wholeIn, KEEP_SCALE_TO_IN), y1: storey.floorToFloorIn + above};
  // A page that is not laid out yet has no width to speak of.
  const scale = Math.max(0.02, Math.min((widthPx - left - 8) / world.x1, 420 / (world.y1 - world.y0)));
  const view = viewAt(world, left, 6, scale);
  const under = 28 + chainDepth("x", [{value: "", name: "span"}], textPx);
  const sheet = createSheet({
    kind: "slice", widthPx, heightPx: Math.ceil(6 + (world.y1 - world.y0) * scale + under + 18), bare: false,
    label: options.label ?? `Section through one bay of ${design.name}, spanning ${feetAndInches(design.bay.spanFt * 12)}`,
    description: options.description ?? `Storey ${feetAndInches(storey.floorToFloorIn)}, deck ${feetAndInches(storey.deckDepthIn)} deep, ${feetAndInches(storey.ceilingHeightIn)} clear.`,
  });
  glass(sheet, view, result, 0);
  if (design.bay.baysAcross === 1) glass(sheet, view, result, lengths.wholeIn);
  for (const level of [0, storey.floorToFloorIn]) floor(sheet, view, result, lengths, level);
  if (design.storey.ceiling !== "none") ceiling(sheet, view, result, lengths);
  person(sheet, view, lengths.startIn + 58, 0);
  if (design.bay.spanFt > 18 && hasDesks(result)) desk(sheet, view, lengths.startIn + 100, 0);
  notes(sheet, view, result, lengths, failing);
  const supports = [result.edgeBeam.seat, result.edgeBeam.seat].map(({nominalIn}, i) => (i === 0 ? lengths.startIn + nominalIn / 2 : lengths.endIn - nominalIn / 2));
  chain(sheet, {axis: "x", outward: 1, line: view.y(world.y0) + 10, stops: supports.map((x) => ({at: view.x(x), edge: view.y(world.y0) - 2})),
    texts: [{value: feetAndInches(design.bay.spanFt * 12), name: "span", part: "span"}]});
  chain(sheet, {axis: "y", outward: -1, line: view.x(0) - 14, texts: storeyText,
    stops: [0, storey.floorToFloorIn].map((y) => ({at: view.y(y), edge: view.x(0)}))});
  scaleBar(sheet, [view.x(0), sheet.heightPx - 10], scale);
  return sheet.svg;
}

function lengthsOf({design, edgeBeam}: Evaluation): Lengths {
  const {webWidthIn, jointGapIn, ledgeProjectionIn} = design.edgeBeam;
  const startIn = webWidthIn + jointGapIn;
  const endIn = startIn + design.bay.spanFt * 12 + edgeBeam.seat.nominalIn;
  const farWebIn = endIn + jointGapIn;
  const inside = design.bay.baysAcross > 1 ? ledgeProjectionIn + 30 : 0;
  return {webIn: webWidthIn, startIn, endIn, farWebIn, wholeIn: farWebIn + webWidthIn + inside};
}

/** One floor: deck, topping and finish, the edge beam, and the beam at the far side. */
function floor(sheet: Sheet, view: View, {design, member, storey}: Evaluation, l: Lengths, levelIn: number): void {
  const {edgeBeam: beam, bay} = design;
  const structural = levelIn - storey.finishIn;
  const deckTop = structural - design.deck.toppingIn;
  const soffit = structural - storey.deckDepthIn;
  const box = (x0: number, y0: number, x1: number, y1: number) => pathOfBox(view.x(x0), view.y(y1), view.x(x1), view.y(y0));
  const tee = member.shape.family === "double tee";
  const inside = bay.baysAcross > 1;
  const next = l.farWebIn + l.webIn + beam.jointGapIn;
  const decks: (readonly [number, number])[] = [[l.startIn, l.endIn], ...(inside ? [[next, l.wholeIn] as const] : [])];
  for (const [x0, x1] of decks) {
    if (tee) {
      // Cut between two stems: the flange is cut, the stem is seen beyond.
      const under = deckTop - (member.shape.dimensions["flangeIn"] ?? 2);
      concrete(sheet, "plant", box(x0, soffit, x1, under), {"data-part": "deck"}, "seen");
      concrete(sheet, "plant", box(x0, under, x1, deckTop), {"data-part": "deck"});
    } else concrete(sheet, "plant", box(x0, soffit, x1, deckTop), {"data-part": "deck"});
  }
  const right = inside ? l.wholeIn : l.farWebIn;
  if (design.deck.toppingIn > 0) concrete(sheet, "site", box(l.webIn, deckTop, right, structural));
  if (storey.finishIn > 0) sheet.body.append(el("path", {d: box(l.webIn, structural, right, levelIn), class: "finish", "data-part": "finish"}));
  const foot = soffit - beam.ledgeDepthIn;
  const head = structural + beam.upstandIn;
  const at = view.at;
  const edge = (x: (fromFace: number) => number) => pathThrough([
    at(x(0), foot), at(x(l.webIn + beam.ledgeProjectionIn), foot), at(x(l.webIn + beam.ledgeProjectionIn), soffit),
    at(x(l.webIn), soffit), at(x(l.webIn), head), at(x(0), head),
  ], true);
  concrete(sheet, "plant", edge((x) => x), {"data-part": "beam"});
  if (!inside) concrete(sheet, "plant", edge((x) => l.wholeIn - x), {"data-part": "beam"});
  else {
    // The beam inside is not sized here, so it is drawn as if seen beyond, with ledges like the edge beam's.
    const [a, b] = [l.farWebIn, l.farWebIn + l.webIn];
    const out = beam.ledgeProjectionIn;
    concrete(sheet, "plant", pathThrough([at(a - out, foot), at(b + out, foot), at(b + out, soffit), at(b, soffit), at(b, deckTop), at(a, deckTop), at(a, soffit), at(a - out, soffit)], true),
      {"data-part": "interior-beam", "stroke-dasharray": "5 3"}, "seen");
    breakLine(sheet, view.x(l.wholeIn), view.y(levelIn) - 6, view.y(soffit) + 6);
  }
}

function glass(sheet: Sheet, view: View, {design, storey}: Evaluation, faceIn: number): void {
  if (storey.glassIn <= 0) return;
  const inset = design.edgeBeam.webWidthIn * 0.35;
  const x = faceIn === 0 ? inset : faceIn - inset;
  const half = Math.max(1.5, 1.5 / view.scale);
  sheet.body.append(el("path", {d: pathOfBox(view.x(x - half), view.y(storey.headIn), view.x(x + half), view.y(storey.sillIn)), class: "glass", "data-part": "glass"}));
}

function ceiling(sheet: Sheet, view: View, {design, storey}: Evaluation, l: Lengths): void {
  const out = design.storey.ceiling === "flush" ? design.edgeBeam.ledgeProjectionIn : 0;
  const y = storey.ceilingHeightIn;
  const right = design.bay.baysAcross > 1 ? l.wholeIn : l.farWebIn - out;
  line(sheet.body, "seen", [view.at(l.webIn + out, y), view.at(right, y)], {"data-part": "ceiling"});
}

function notes(sheet: Sheet, view: View, {design, storey}: Evaluation, l: Lengths, failing: string | undefined): void {
  const middle = (l.startIn + l.endIn) / 2;
  const size = sheet.textPx;
  const {member, toppingIn} = design.deck;
  const name = `${member}${toppingIn > 0 ? ` with ${Number(toppingIn.toFixed(2))} in topping` : ""}`;
  const over = view.y(storey.floorToFloorIn) - size * 0.9;
  text(sheet.notes, sheet, [view.x(middle), over], name, {kind: "name", part: "deck"});
  if (failing) {
    const node = text(sheet.notes, sheet, [view.x(middle), view.y(storey.floorToFloorIn / 2) - size], failing, {kind: "name", className: "text-title"});
    node.style.fill = "var(--fails)";
  }
  if (design.bay.baysAcross > 1 && view.scale > 0.75) {
    text(sheet.notes, sheet, [view.x(l.farWebIn + l.webIn / 2), view.y(Math.min(storey.headIn, storey.ceilingHeightIn)) + size * 1.6], ["beam inside,", "not sized here"], {kind: "small"});
  }
}

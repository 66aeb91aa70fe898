import type {Shape} from "../../lib/sections/shape.js";
import {beamOutline, drawBars, drawDeckEnd, drawRegions, padPlace, seatHeight, seatReach, type SeatGeometry} from "./beamParts.js";
import {chain, chainDepth, type DimensionText} from "./dimension.js";
import {breakLine, leader, scaleBar} from "./marks.js";
import {markScale} from "./oneScale.js";
import {textWidth} from "./placement.js";
import {written} from "./sectionDimensions.js";
import {concrete, createSheet, line, text, textSize, type DrawingOptions} from "./sheet.js";
import {pathOfBox} from "./svg.js";
import {fitView, type View} from "./view.js";

/** What {@link beamSection} and {@link ledgeDetail} draw. */
export interface BeamSectionOptions extends DrawingOptions, SeatGeometry {
  readonly shape: Shape;
  /** Words for the bars; their count if left out. */
  readonly barName?: string;
}

/** Deck shown beyond the ledge's edge, in. */
const DECK_SHOWN_IN = 24;

/** The heights at which the parts of beam and deck end, from the soffit up, with the names of what lies between. */
function heightsOf({kind = "ledge", ledgeDepthIn, depthIn, deck}: BeamSectionOptions): {heights: number[]; names: string[]} {
  const level = kind === "below" ? depthIn : ledgeDepthIn;
  const deckTopIn = level + deck.depthIn + deck.toppingIn;
  const deckName = deck.family === "double tee" ? "tee" : "deck";
  const over = kind !== "below" && depthIn > deckTopIn + 0.01;
  return {
    heights: [0, level, level + deck.depthIn, ...(deck.toppingIn > 0 ? [deckTopIn] : []), ...(over ? [depthIn] : [])],
    names: [{ledge: "ledge", pockets: "foot", below: "beam"}[kind], deckName, ...(deck.toppingIn > 0 ? ["topping"] : []), "upstand"],
  };
}

/** The edge beam cut, with the deck seated on it: every part dimensioned. True to scale. */
export function beamSection(options: BeamSectionOptions): SVGSVGElement {
  const {kind = "ledge", shape, webWidthIn, ledgeDepthIn, ledgeProjectionIn, depthIn, upstandIn, deck, bars, widthPx, bare = false} = options;
  const textPx = textSize(widthPx);
  const level = seatHeight(options);
  const deckTopIn = level + deck.depthIn + deck.toppingIn;
  const {heights, names} = heightsOf(options);
  const texts = heights.slice(1).map((height, i) => ({value: written(height - (heights[i] as number)), name: names[i] as string, part: PARTS[names[i] as string] ?? "precast"}));
  const total = [{value: written(depthIn), name: kind === "below" ? "beam" : "in all"}];
  const barName = options.barName ?? `${bars.count} bars`;
  const noteWidth = bare ? 0 : textWidth(barName, textPx) + 30;
  const left = bare ? 1 : 22 + chainDepth("y", total, textPx) + noteWidth;
  const {edgeIn} = seatReach(options);
  const {view, heightPx} = fitView({
    world: {x0: 0, y0: 0, x1: edgeIn + DECK_SHOWN_IN, y1: Math.max(depthIn, deckTopIn + options.finishIn)}, widthPx, mostScale: options.mostPxPerIn,
    mostHeightPx: options.mostHeightPx ?? Math.max(440, widthPx * 0.54),
    margins: bare ? {left: 1, right: 1, top: 1, bottom: 1} : {left, right: 34 + chainDepth("y", texts, textPx), top: 16, bottom: 78},
  });
  const where = {ledge: "on its ledge", pockets: "in its pockets", below: "on its top"}[kind];
  const sheet = createSheet({
    view, kind: "beam", widthPx, heightPx, bare, label: options.label ?? `Section of the edge beam ${shape.designation} with the deck ${where}`,
    description: options.description ?? `The beam is ${written(depthIn)} deep${kind === "below" ? `, all of it below the deck of ${written(deck.depthIn)}, topping ${written(deck.toppingIn)}` : `: ${kind === "ledge" ? "ledge" : "foot"} ${written(ledgeDepthIn)}, deck ${written(deck.depthIn)}, topping ${written(deck.toppingIn)}, upstand ${written(upstandIn)} above the structural floor`}.`,
  });
  markScale(sheet, view);
  drawDeckEnd(sheet, view, options);
  concrete(sheet, "plant", beamOutline(view, options), {"data-part": "beam"});
  drawRegions(sheet, view, options);
  drawBars(sheet, view, options);
  if (bare) return sheet.svg;
  const endX = view.x(view.world.x1);
  breakLine(sheet, endX, view.y(deckTopIn + options.finishIn) - 8, view.y(level) + 8);
  const edgeOf = (height: number) => (height === 0 || height === level ? view.x(edgeIn) : height === depthIn && kind !== "below" ? view.x(webWidthIn) : endX + 6);
  chain(sheet, {axis: "y", outward: 1, line: endX + 26, stops: heights.map((height) => ({at: view.y(height), edge: edgeOf(height)})), texts});
  chain(sheet, {axis: "y", outward: -1, line: view.x(0) - 14 - noteWidth, stops: [0, depthIn].map((height) => ({at: view.y(height), edge: view.x(0)})), texts: total});
  const [widths, widthTexts] = widthsOf(kind, webWidthIn, ledgeProjectionIn);
  chain(sheet, {axis: "x", outward: 1, line: view.y(0) + 18, stops: widths.map((x) => ({at: view.x(x), edge: view.y(0)})), texts: widthTexts});
  const barY = view.y(options.strands?.[0]?.yIn ?? bars.yIn);
  leader(sheet, [view.x(options.strands?.[0] ? Math.min(...options.strands.map(({xIn}) => xIn)) : 1.5), barY], [view.x(0) - 10, barY - 16], barName, {side: "left", part: "bars", dot: false});
  scaleBar(sheet, [Math.max(10, view.x(0) - 40), heightPx - 10], view.scale);
  return sheet.svg;
}

/** The dimension string along the beam's foot. */
function widthsOf(kind: SeatGeometry["kind"], webWidthIn: number, ledgeProjectionIn: number): [number[], DimensionText[]] {
  switch (kind) {
    case "below": return [[0, webWidthIn], [{value: written(webWidthIn), name: "beam"}]];
    case "pockets": return [
      [0, webWidthIn - ledgeProjectionIn, webWidthIn],
      [{value: written(webWidthIn - ledgeProjectionIn), name: "behind"}, {value: written(ledgeProjectionIn), name: "pocket", part: "ledge"}],
    ];
    default: return [[0, webWidthIn, webWidthIn + ledgeProjectionIn], [{value: written(webWidthIn), name: "web"}, {value: written(ledgeProjectionIn), name: "ledge", part: "ledge"}]];
  }
}

const PARTS: Readonly<Record<string, string>> = {ledge: "ledge", foot: "ledge", topping: "topping", upstand: "upstand", tee: "deck", deck: "deck"};

/** The seat larger: support, bearing pad, joint and edge distances. True to scale. */
export function ledgeDetail(options: BeamSectionOptions): SVGSVGElement {
  const {kind = "ledge", webWidthIn, depthIn, ledgeDepthIn, ledgeProjectionIn, jointGapIn, widthPx, bare = false} = options;
  const textPx = textSize(widthPx);
  const level = seatHeight(options);
  const pad = padPlace(options);
  const {startIn, edgeIn} = seatReach(options);
  const faceIn = startIn - jointGapIn;
  // Of a beam below the deck only its head belongs to the seat.
  const footIn = kind === "below" ? Math.max(0, depthIn - 14) : 0;
  const upright = kind === "below" ? [] : [{value: written(ledgeDepthIn), name: kind === "ledge" ? "ledge depth" : "foot", part: "ledge"}];
  // A narrow sheet shows less around the seat, so that the seat itself stays large.
  const narrow = widthPx < 480;
  const around = narrow ? 5 : 9;
  const world = {x0: Math.max(-1.5, faceIn - (narrow ? 4.5 : 12)), y0: footIn - 1.5, x1: edgeIn + around, y1: level + around};
  const {view, heightPx} = fitView({
    world, widthPx, mostHeightPx: options.mostHeightPx ?? Math.max(440, widthPx * 0.62),
    margins: bare ? {left: 1, right: 1, top: 1, bottom: 1} : {left: 16, right: 26 + chainDepth("y", upright, textPx), top: 14, bottom: 132 + (widthPx < 560 ? 34 : 0)},
  });
  const what = {ledge: "ledge", pockets: "pocket", below: "beam's top"}[kind];
  const sheet = createSheet({
    view, kind: "ledge", widthPx, heightPx, bare, label: options.label ?? `Detail of the deck's seat on the ${what}`,
    description: options.description ?? `The ${what} is ${written(edgeIn - faceIn)} wide; the deck stops ${written(jointGapIn)} from its inner edge and bears on a pad ${written(options.bearingLengthIn)} long.`,
  });
  sheet.body.setAttribute("clip-path", sheet.clip(pathOfBox(view.x(world.x0), view.y(world.y1), view.x(world.x1), view.y(world.y0))));
  drawDeckEnd(sheet, view, options);
  concrete(sheet, "plant", beamOutline(view, options), {"data-part": "beam"});
  drawRegions(sheet, view, options);
  drawBars(sheet, view, options);
  if (bare) return sheet.svg;
  drawCrop(view, sheet, options);
  const inner = [faceIn, startIn, pad.fromIn, pad.toIn, edgeIn];
  const kept = inner.filter((x, i) => i === 0 || x - (inner[i - 1] as number) > 0.06);
  const nameOf = (from: number, to: number) => (from === pad.fromIn && to === pad.toIn ? "pad" : from === faceIn ? (kind === "below" ? "set back" : "gap") : "edge");
  const bottom = view.y(footIn);
  const reach = chain(sheet, {axis: "x", outward: 1, line: bottom + 30, stops: kept.map((x) => ({at: view.x(x), edge: bottom})),
    texts: kept.slice(1).map((x, i) => ({value: written(x - (kept[i] as number)), name: nameOf(kept[i] as number, x), part: nameOf(kept[i] as number, x) === "pad" ? "pad" : "ledge"}))});
  const whole = {ledge: "ledge projection", pockets: "reach of the pocket", below: "width of the beam"}[kind];
  chain(sheet, {axis: "x", outward: 1, line: bottom + 30 + reach + 10, stops: [faceIn, edgeIn].map((x) => ({at: view.x(x), edge: bottom + 24 + reach})),
    texts: [{value: written(kind === "below" ? webWidthIn : ledgeProjectionIn), name: whole, part: "ledge"}]});
  if (kind !== "below") chain(sheet, {axis: "y", outward: 1, line: view.x(world.x1) + 12, stops: [0, ledgeDepthIn].map((y) => ({at: view.y(y), edge: view.x(edgeIn)})), texts: upright});
  scaleBar(sheet, [12, heightPx - 12], view.scale);
  return sheet.svg;
}

function drawCrop(view: View, sheet: ReturnType<typeof createSheet>, options: BeamSectionOptions): void {
  const {kind = "ledge", webWidthIn, deck} = options;
  const {x0, x1, y0, y1} = view.world;
  const level = seatHeight(options);
  if (x0 > 0) line(sheet.lines, "thin", [view.at(x0, Math.max(0, y0)), view.at(x0, kind === "below" ? level : y1)]);
  if (y0 > 0) line(sheet.lines, "thin", [view.at(0, y0), view.at(webWidthIn, y0)], {class: "break"});
  line(sheet.lines, "thin", [view.at(kind === "below" ? options.jointGapIn : Math.max(0, x0), y1), view.at(x1, y1)], {class: "break"});
  breakLine(sheet, view.x(x1), view.y(y1), view.y(level) + 6);
  const beamX = kind === "below" ? webWidthIn / 2 : (Math.max(0, x0) + (kind === "pockets" ? seatReach(options).startIn - options.jointGapIn : webWidthIn)) / 2;
  text(sheet.notes, sheet, view.at(beamX, kind === "below" ? Math.max(0, y0) + 4 : (level + y1) / 2), "beam", {kind: "name", part: "beam", className: "on-plant"});
  text(sheet.notes, sheet, view.at((Math.max(webWidthIn, seatReach(options).startIn) + x1) / 2, (level + y1) / 2), deck.family === "double tee" ? "tee" : "deck", {kind: "name", part: "deck", className: "on-plant"});
}

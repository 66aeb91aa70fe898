import type {Shape} from "../../lib/sections/shape.js";
import {drawBars, drawDeckEnd, drawRegions, padPlace, type SeatGeometry} from "./beamParts.js";
import {chain, chainDepth} from "./dimension.js";
import {pathOfRings} from "./crossSection.js";
import {breakLine, leader, scaleBar} from "./marks.js";
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

/** The edge beam cut, with the deck seated on its ledge: every part dimensioned. True to scale. */
export function beamSection(options: BeamSectionOptions): SVGSVGElement {
  const {shape, webWidthIn, ledgeDepthIn, ledgeProjectionIn, depthIn, upstandIn, deck, bars, widthPx, bare = false} = options;
  const textPx = textSize(widthPx);
  const deckTopIn = ledgeDepthIn + deck.depthIn + deck.toppingIn;
  const heights = [0, ledgeDepthIn, ledgeDepthIn + deck.depthIn, ...(deck.toppingIn > 0 ? [deckTopIn] : []), ...(depthIn > deckTopIn + 0.01 ? [depthIn] : [])];
  const names = ["ledge", deck.family === "double tee" ? "tee" : "deck", ...(deck.toppingIn > 0 ? ["topping"] : []), "upstand"];
  const texts = heights.slice(1).map((height, i) => ({value: written(height - (heights[i] as number)), name: names[i] as string, part: PARTS[names[i] as string] ?? "precast"}));
  const total = [{value: written(depthIn), name: "in all"}];
  const barName = options.barName ?? `${bars.count} bars`;
  const noteWidth = bare ? 0 : textWidth(barName, textPx) + 30;
  const left = bare ? 1 : 22 + chainDepth("y", total, textPx) + noteWidth;
  const {view, heightPx} = fitView({
    world: {x0: 0, y0: 0, x1: webWidthIn + ledgeProjectionIn + DECK_SHOWN_IN, y1: Math.max(depthIn, deckTopIn + options.finishIn)}, widthPx,
    mostHeightPx: options.mostHeightPx ?? Math.max(440, widthPx * 0.54),
    margins: bare ? {left: 1, right: 1, top: 1, bottom: 1} : {left, right: 34 + chainDepth("y", texts, textPx), top: 16, bottom: 78},
  });
  const sheet = createSheet({
    kind: "beam", widthPx, heightPx, bare, label: options.label ?? `Section of the edge beam ${shape.designation} with the deck on its ledge`,
    description: options.description ?? `The beam is ${written(depthIn)} deep: ledge ${written(ledgeDepthIn)}, deck ${written(deck.depthIn)}, topping ${written(deck.toppingIn)}, upstand ${written(upstandIn)} above the structural floor.`,
  });
  drawDeckEnd(sheet, view, options);
  concrete(sheet, "plant", pathOfRings(shape.rings, view), {"data-part": "beam"});
  drawRegions(sheet, view, options);
  drawBars(sheet, view, options);
  if (bare) return sheet.svg;
  const endX = view.x(view.world.x1);
  breakLine(sheet, endX, view.y(deckTopIn + options.finishIn) - 8, view.y(ledgeDepthIn) + 8);
  const edgeOf = (height: number) => (height === 0 || height === ledgeDepthIn ? view.x(webWidthIn + ledgeProjectionIn) : height === depthIn ? view.x(webWidthIn) : endX + 6);
  chain(sheet, {axis: "y", outward: 1, line: endX + 26, stops: heights.map((height) => ({at: view.y(height), edge: edgeOf(height)})), texts});
  chain(sheet, {axis: "y", outward: -1, line: view.x(0) - 14 - noteWidth, stops: [0, depthIn].map((height) => ({at: view.y(height), edge: view.x(0)})), texts: total});
  chain(sheet, {axis: "x", outward: 1, line: view.y(0) + 18,
    stops: [0, webWidthIn, webWidthIn + ledgeProjectionIn].map((x) => ({at: view.x(x), edge: view.y(0)})),
    texts: [{value: written(webWidthIn), name: "web"}, {value: written(ledgeProjectionIn), name: "ledge", part: "ledge"}]});
  const barY = view.y(bars.yIn);
  leader(sheet, [view.x(1.5), barY], [view.x(0) - 10, barY - 16], barName, {side: "left", part: "bars", dot: false});
  scaleBar(sheet, [Math.max(10, view.x(0) - 40), heightPx - 10], view.scale);
  return sheet.svg;
}

const PARTS: Readonly<Record<string, string>> = {ledge: "ledge", topping: "topping", upstand: "upstand", tee: "deck", deck: "deck"};

/** The seat larger: ledge, bearing pad, joint and edge distances. True to scale. */
export function ledgeDetail(options: BeamSectionOptions): SVGSVGElement {
  const {shape, webWidthIn, ledgeDepthIn, ledgeProjectionIn, jointGapIn, widthPx, bare = false} = options;
  const textPx = textSize(widthPx);
  const ledge = [{value: written(ledgeDepthIn), name: "ledge depth", part: "ledge"}];
  // A narrow sheet shows less around the seat, so that the seat itself stays large.
  const narrow = widthPx < 480;
  const around = narrow ? 5 : 9;
  const world = {x0: Math.max(-1.5, webWidthIn - (narrow ? 4.5 : 12)), y0: -1.5, x1: webWidthIn + ledgeProjectionIn + around, y1: ledgeDepthIn + around};
  const {view, heightPx} = fitView({
    world, widthPx, mostHeightPx: options.mostHeightPx ?? Math.max(440, widthPx * 0.62),
    margins: bare ? {left: 1, right: 1, top: 1, bottom: 1} : {left: 16, right: 26 + chainDepth("y", ledge, textPx), top: 14, bottom: 132 + (widthPx < 560 ? 34 : 0)},
  });
  const sheet = createSheet({
    kind: "ledge", widthPx, heightPx, bare, label: options.label ?? "Detail of the deck's seat on the ledge",
    description: options.description ?? `The ledge stands out ${written(ledgeProjectionIn)} and is ${written(ledgeDepthIn)} deep; the deck ends ${written(jointGapIn)} from the web and bears on a pad ${written(options.bearingLengthIn)} long.`,
  });
  sheet.body.setAttribute("clip-path", sheet.clip(pathOfBox(view.x(world.x0), view.y(world.y1), view.x(world.x1), view.y(world.y0))));
  drawDeckEnd(sheet, view, options);
  concrete(sheet, "plant", pathOfRings(shape.rings, view), {"data-part": "beam"});
  drawRegions(sheet, view, options);
  drawBars(sheet, view, options);
  if (bare) return sheet.svg;
  drawCrop(view, sheet, options);
  const pad = padPlace(options);
  const edge = webWidthIn + ledgeProjectionIn;
  const inner = [webWidthIn, webWidthIn + jointGapIn, pad.fromIn, pad.toIn, edge];
  const kept = inner.filter((x, i) => i === 0 || x - (inner[i - 1] as number) > 0.06);
  const nameOf = (from: number, to: number) => (from === pad.fromIn && to === pad.toIn ? "pad" : from === webWidthIn ? "gap" : "edge");
  const reach = chain(sheet, {axis: "x", outward: 1, line: view.y(0) + 30, stops: kept.map((x) => ({at: view.x(x), edge: view.y(0)})),
    texts: kept.slice(1).map((x, i) => ({value: written(x - (kept[i] as number)), name: nameOf(kept[i] as number, x), part: nameOf(kept[i] as number, x) === "pad" ? "pad" : "ledge"}))});
  chain(sheet, {axis: "x", outward: 1, line: view.y(0) + 30 + reach + 10, stops: [webWidthIn, edge].map((x) => ({at: view.x(x), edge: view.y(0) + 24 + reach})),
    texts: [{value: written(ledgeProjectionIn), name: "ledge projection", part: "ledge"}]});
  chain(sheet, {axis: "y", outward: 1, line: view.x(world.x1) + 12, stops: [0, ledgeDepthIn].map((y) => ({at: view.y(y), edge: view.x(edge)})), texts: ledge});
  scaleBar(sheet, [12, heightPx - 12], view.scale);
  return sheet.svg;
}

function drawCrop(view: View, sheet: ReturnType<typeof createSheet>, {webWidthIn, ledgeDepthIn, deck}: BeamSectionOptions): void {
  const {x0, x1, y1} = view.world;
  if (x0 > 0) line(sheet.lines, "thin", [view.at(x0, 0), view.at(x0, y1)]);
  line(sheet.lines, "thin", [view.at(Math.max(0, x0), y1), view.at(x1, y1)], {class: "break"});
  breakLine(sheet, view.x(x1), view.y(y1), view.y(ledgeDepthIn) + 6);
  text(sheet.notes, sheet, view.at(webWidthIn / 2 + Math.max(0, x0) / 2, (ledgeDepthIn + y1) / 2), "beam", {kind: "name", part: "beam", className: "on-plant"});
  text(sheet.notes, sheet, view.at((webWidthIn + x1) / 2, (ledgeDepthIn + y1) / 2), deck.family === "double tee" ? "tee" : "deck", {kind: "name", part: "deck", className: "on-plant"});
}

import type {Family, Shape} from "../../lib/sections/shape.js";
import {chain, chainDepth} from "./dimension.js";
import {pathOfRings, type StrandPoint} from "./crossSection.js";
import {breakLine, leader, scaleBar} from "./marks.js";
import {markScale} from "./oneScale.js";
import {textWidth} from "./placement.js";
import {written} from "./sectionDimensions.js";
import {concrete, createSheet, line, textSize, type DrawingOptions, type Sheet} from "./sheet.js";
import {el, pathOfBox, pathThrough} from "./svg.js";
import {fitView, type View} from "./view.js";

/** What {@link girderSection} draws, inches. The girder's soffit is y = 0. */
export interface GirderSectionOptions extends DrawingOptions {
  readonly shape: Shape;
  readonly strands: readonly StrandPoint[];
  readonly strandName: string;
  readonly deck: {readonly depthIn: number; readonly toppingIn: number; readonly family: Family; readonly flangeIn?: number};
  /** Height of the deck's seat above the girder's soffit. */
  readonly seatIn: number;
  /** Girder's center line to the end of the deck on each side, and how far it reaches over its seat. */
  readonly deckEndIn: number;
  readonly seatLengthIn: number;
  /** Length of the pad along the deck; undefined under planks, which bear on a strip as long as their seat. */
  readonly padLengthIn?: number;
  readonly finishIn: number;
  readonly coverIn: number;
}

/** Deck shown beyond the girder's foot, in. */
const DECK_SHOWN_IN = 22;
const PAD_IN = 0.5;

/** The girder cut, with the decks of both bays on it: every part dimensioned. True to scale. */
export function girderSection(options: GirderSectionOptions): SVGSVGElement {
  const {shape, deck, seatIn, widthPx, bare = false} = options;
  const textPx = textSize(widthPx);
  const deckTopIn = seatIn + deck.depthIn + deck.toppingIn;
  const halfIn = shape.widthIn / 2;
  const ledgeIn = shape.dimensions["ledgeProjectionIn"] ?? 0;
  const beside = shape.family === "inverted tee";
  const heights = [0, seatIn, seatIn + deck.depthIn, ...(deck.toppingIn > 0 ? [deckTopIn] : [])];
  const names = [beside ? "ledge" : "girder", deck.family === "double tee" ? "tee" : "deck", "topping"];
  const texts = heights.slice(1).map((height, i) => ({value: written(height - (heights[i] as number)), name: names[i] as string, part: PARTS[names[i] as string] as string}));
  const total = [{value: written(deckTopIn), name: "in all"}];
  const narrow = widthPx < 480;
  const shownIn = narrow ? 12 : DECK_SHOWN_IN;
  const noteWidth = bare ? 0 : textWidth(options.strandName, textPx) + 24;
  const {view, heightPx} = fitView({
    world: {x0: -halfIn - shownIn, y0: 0, x1: halfIn + shownIn, y1: deckTopIn + options.finishIn}, widthPx, mostScale: options.mostPxPerIn,
    mostHeightPx: options.mostHeightPx ?? Math.max(420, widthPx * 0.6),
    margins: bare ? {left: 1, right: 1, top: 1, bottom: 1}
      : {left: 20 + chainDepth("y", total, textPx), right: 30 + chainDepth("y", texts, textPx), top: 16, bottom: 82 + textPx * 1.6},
  });
  const sheet = createSheet({
    view, kind: "girder", widthPx, heightPx, bare, label: options.label ?? `Section of the interior girder with the decks of both bays ${beside ? "on its ledges" : "on its top"}`,
    description: options.description ?? `The girder is ${written(shape.depthIn)} deep and ${written(shape.widthIn)} wide at its foot; ${written(seatIn)} of it hangs below the deck.`,
  });
  markScale(sheet, view);
  for (const side of [-1, 1] as const) drawDeck(sheet, view, options, side, deckTopIn);
  const shifted = {...view, at: (x: number, y: number) => view.at(x - halfIn, y)};
  concrete(sheet, "plant", pathOfRings(shape.rings, shifted as View), {"data-part": "girder"});
  if (beside) regions(sheet, view, options, halfIn, ledgeIn);
  drawSteel(sheet, view, options, halfIn, ledgeIn);
  if (bare) return sheet.svg;
  for (const edge of [view.world.x0, view.world.x1]) breakLine(sheet, view.x(edge), view.y(deckTopIn + options.finishIn) - 8, view.y(seatIn) + 8);
  const footY = view.y(0);
  chain(sheet, {axis: "y", outward: 1, line: view.x(view.world.x1) + 18, texts,
    stops: heights.map((height) => ({at: view.y(height), edge: height <= seatIn ? view.x(halfIn) : view.x(view.world.x1) + 4}))});
  chain(sheet, {axis: "y", outward: -1, line: view.x(view.world.x0) - 12, texts: total,
    stops: [{at: view.y(0), edge: view.x(-halfIn)}, {at: view.y(deckTopIn), edge: view.x(view.world.x0)}]});
  const across = beside ? [-halfIn, -halfIn + ledgeIn, halfIn - ledgeIn, halfIn] : [-halfIn, halfIn];
  const acrossNames = beside ? ["ledge", "web", "ledge"] : ["width"];
  chain(sheet, {axis: "x", outward: 1, line: footY + 18, stops: across.map((x) => ({at: view.x(x), edge: footY})),
    texts: acrossNames.map((name, i) => ({value: written((across[i + 1] as number) - (across[i] as number)), name, part: name === "ledge" ? "ledge" : "girder"}))});
  const [first] = options.strands;
  if (first) {
    const y = heightPx - 34;
    const x = Math.max(14, view.x(view.world.x0));
    leader(sheet, [view.x(first.xIn - halfIn), view.y(first.yIn)], [x + noteWidth, y], options.strandName, {side: "left", part: "strand", dot: false});
  }
  scaleBar(sheet, [Math.max(10, view.x(view.world.x0)), heightPx - 10], view.scale);
  return sheet.svg;
}

const PARTS: Readonly<Record<string, string>> = {ledge: "ledge", girder: "girder", tee: "deck", deck: "deck", topping: "topping"};

/** One bay's deck, cut along, on its pad; a tee shows the underside of its flange, a plank its voids. */
function drawDeck(sheet: Sheet, view: View, options: GirderSectionOptions, side: 1 | -1, topIn: number): void {
  const {deck, seatIn, deckEndIn, seatLengthIn, finishIn, shape} = options;
  const far = side * (Math.abs(view.world.x1) + 2);
  const [near, edge] = [side * deckEndIn, side * view.world.x1];
  const clip = sheet.clip(pathOfBox(view.x(view.world.x0), -10, view.x(view.world.x1), sheet.heightPx + 10));
  const box = (x0: number, y0: number, x1: number, y1: number) => pathOfBox(view.x(Math.min(x0, x1)), view.y(y1), view.x(Math.max(x0, x1)), view.y(y0));
  const deckTop = seatIn + deck.depthIn;
  concrete(sheet, "plant", box(near, seatIn, far, deckTop), {"data-part": "deck", "clip-path": clip});
  const hidden = deck.family === "double tee" ? [deckTop - (deck.flangeIn ?? 2)] : deck.family === "hollow core" ? [seatIn + deck.depthIn * 0.16, seatIn + deck.depthIn * 0.84] : [];
  for (const y of hidden) line(sheet.body, "hidden", [view.at(near, y), view.at(edge, y)], {"data-part": "deck"});
  // On a rectangle the topping runs on over the joint; beside a web it ends there.
  const inner = shape.family === "inverted tee" ? side * (shape.webWidthIn / 2) : 0;
  if (deck.toppingIn > 0) concrete(sheet, "site", box(inner, deckTop, far, topIn), {"clip-path": clip});
  if (finishIn > 0 && !sheet.bare) sheet.body.append(el("path", {d: box(0, topIn, edge, topIn + finishIn), class: "finish", "data-part": "finish"}));
  const padIn = options.padLengthIn ?? seatLengthIn;
  const middle = side * (deckEndIn + seatLengthIn / 2);
  sheet.body.append(el("path", {d: box(middle - padIn / 2, seatIn, middle + padIn / 2, seatIn + PAD_IN), class: "pad", "data-part": "pad"}));
}

/** The ledges' outlines, which show only when they are lit. */
function regions(sheet: Sheet, view: View, {seatIn}: GirderSectionOptions, halfIn: number, ledgeIn: number): void {
  for (const [x0, x1] of [[-halfIn, -halfIn + ledgeIn], [halfIn - ledgeIn, halfIn]] as const) {
    sheet.body.append(el("path", {d: pathOfBox(view.x(x0), view.y(seatIn), view.x(x1), view.y(0)), class: "region", "data-part": "ledge"}));
  }
}

/** Strands at their places, the web's closed stirrup, and the ties of the ledges. */
function drawSteel(sheet: Sheet, view: View, {shape, strands, coverIn, seatIn}: GirderSectionOptions, halfIn: number, ledgeIn: number): void {
  const closed = (x0: number, y0: number, x1: number, y1: number) => pathThrough([view.at(x0, y0), view.at(x1, y0), view.at(x1, y1), view.at(x0, y1)], true);
  if (!sheet.bare) {
    const web = halfIn - ledgeIn - coverIn;
    sheet.body.append(el("path", {d: closed(-web, coverIn, web, shape.depthIn - coverIn), class: "stirrup", "data-part": "stirrup"}));
    if (ledgeIn > 0) sheet.body.append(el("path", {d: closed(-halfIn + coverIn, coverIn, halfIn - coverIn, seatIn - coverIn), class: "stirrup", "data-part": "ledge-bar"}));
  }
  const radius = Math.max(0.25 * view.scale, Math.min(2.6, 0.8 * view.scale), sheet.bare ? 0.9 : 1.4);
  for (const {xIn, yIn} of strands) sheet.body.append(el("circle", {cx: view.x(xIn - halfIn), cy: view.y(yIn), r: radius, class: "strand", "data-part": "strand"}));
}

import {feetAndInches} from "../../lib/units.js";
import {chain, chainDepth} from "../../components/drawings/dimension.js";
import {northArrow, scaleBar} from "../../components/drawings/marks.js";
import {createSheet, text, textSize, type DrawingOptions, type Sheet} from "../../components/drawings/sheet.js";
import {el, pathThrough} from "../../components/drawings/svg.js";
import {fitView, viewAt, type View} from "../../components/drawings/view.js";
import type {OutlinePiece, PieceKind} from "../../lib/walls/pieces.js";
import {stringTexts} from "./sideElevation.js";
import type {CornerModel} from "./wallModels.js";
import {roomHeightPx} from "../../components/drawings/room.js";

/** How a piece that is cut is drawn on a plan. */
const LOOKS: Readonly<Record<PieceKind, string>> = {
  column: "column", "edge beam": "concrete-plant is-seen", ledge: "concrete-plant is-seen", girder: "concrete-plant is-seen", deck: "deck-ground", strip: "concrete-site is-seen",
  panel: "concrete-plant is-cut", spandrel: "concrete-plant is-cut", cladding: "cladding-face", "closing strip": "cladding-face", parapet: "concrete-plant is-cut",
};
/** What lies below is drawn first. */
const ORDER: readonly PieceKind[] = ["deck", "strip", "ledge", "girder", "edge beam", "closing strip", "cladding", "panel", "spandrel", "parapet", "column"];

function drawPieces(parent: Element, view: View, pieces: readonly OutlinePiece[]): void {
  for (const {kind, plan} of [...pieces].sort((a, b) => ORDER.indexOf(a.kind) - ORDER.indexOf(b.kind))) {
    parent.append(el("path", {d: pathThrough(plan.map(([x, y]) => view.at(x, y)), true), class: LOOKS[kind], "data-part": kind}));
  }
}

/** What {@link outlinePlan} draws. */
export interface OutlinePlanOptions extends DrawingOptions {
  readonly pieces: readonly OutlinePiece[];
  readonly bays: {readonly alongIn: number; readonly along: number; readonly acrossIn: number; readonly across: number};
  /** Outermost faces of the short and long sides from their column lines, in. */
  readonly shortOutIn: number;
  readonly longOutIn: number;
}

/** The outline of the building on one level: columns, beams, and what closes every side. True to scale, north up. */
export function outlinePlan(options: OutlinePlanOptions): SVGSVGElement {
  const {pieces, bays, shortOutIn, longOutIn, widthPx} = options;
  const textPx = textSize(widthPx);
  const [lengthIn, breadthIn] = [bays.alongIn * bays.along, bays.acrossIn * bays.across];
  const side = chainDepth("y", [{value: "000'-00 1/4\""}], textPx);
  const {view, heightPx} = fitView({
    world: {x0: -shortOutIn, y0: -longOutIn, x1: lengthIn + shortOutIn, y1: breadthIn + longOutIn}, widthPx, mostHeightPx: options.mostHeightPx ?? Math.max(420, widthPx * 0.62),
    margins: {left: 24 + side, right: 26 + side, top: 14, bottom: 30 + 2 * chainDepth("x", [{value: ""}], textPx) + 52},
  });
  const sheet = createSheet({
    view, kind: "plan", widthPx, heightPx, label: options.label ?? "Plan of the building's outline",
    description: options.description ?? `${feetAndInches(lengthIn + 2 * shortOutIn)} by ${feetAndInches(breadthIn + 2 * longOutIn)} outside. Columns are black; the deck spans between the long sides.`,
  });
  drawPieces(sheet.body, view, pieces);
  const [foot, left, right] = [view.y(-longOutIn), view.x(-shortOutIn), view.x(lengthIn + shortOutIn)];
  const lines = (count: number, step: number) => Array.from({length: count + 1}, (_, i) => i * step);
  const along = {at: lines(bays.along, bays.alongIn)};
  const bayPx = bays.alongIn * view.scale;
  chain(sheet, {axis: "x", outward: 1, line: foot + 16, stops: along.at.map((x) => ({at: view.x(x), edge: foot})), texts: stringTexts(along).map((one, i) => (i === 0 || bayPx > 64 ? one : {value: ""}))});
  const outer = {at: [-shortOutIn, lengthIn + shortOutIn]};
  chain(sheet, {axis: "x", outward: 1, line: foot + 16 + chainDepth("x", [{value: ""}], textPx) + 14, stops: outer.at.map((x) => ({at: view.x(x), edge: foot})), texts: stringTexts(outer)});
  const across = {at: lines(bays.across, bays.acrossIn)};
  chain(sheet, {axis: "y", outward: -1, line: left - 14, stops: across.at.map((y) => ({at: view.y(y), edge: left})), texts: stringTexts(across)});
  const wide = {at: [-longOutIn, breadthIn + longOutIn]};
  chain(sheet, {axis: "y", outward: 1, line: right + 14, stops: wide.at.map((y) => ({at: view.y(y), edge: right})), texts: stringTexts(wide)});
  const barEnd = scaleBar(sheet, [left, heightPx - 14], view.scale);
  northArrow(sheet, [Math.min(widthPx - 20, Math.max(barEnd + 28, right + 20)), heightPx - 24]);
  return sheet.svg;
}

/** One corner on the plan, enlarged: who stands where, and how wide. True to scale. */
export function cornerPlan({model, ...options}: DrawingOptions & {model: CornerModel}): SVGSVGElement {
  const {widthPx} = options;
  const textPx = textSize(widthPx);
  const [[x0, x1], [y0, y1]] = [model.x, model.y];
  const left = 22 + chainDepth("y", stringTexts(model.left), textPx);
  const roomPx = widthPx - left - 14;
  const bottom = 34 + chainDepth("x", stringTexts(model.below), textPx) + 1.3 * textPx + 26;
  const scale = Math.min(roomPx / (x1 - x0), (Math.min(options.mostHeightPx ?? 420, roomHeightPx()) - bottom - 10) / (y1 - y0));
  const view = viewAt({x0, y0, x1, y1}, left + (roomPx - (x1 - x0) * scale) / 2, 10, scale);
  const heightPx = Math.ceil(10 + (y1 - y0) * scale + bottom);
  const sheet = createSheet({view, kind: "plan", widthPx, heightPx, label: options.label ?? "Plan of a corner", description: options.description ?? "Column lines are dash-dotted."});
  const clip = sheet.clip(pathThrough([view.at(x0, y0), view.at(x1, y0), view.at(x1, y1), view.at(x0, y1)], true));
  const group = el("g", {"clip-path": clip});
  sheet.body.append(group);
  drawPieces(group, view, model.pieces);
  drawLines(sheet, view, model, group);
  const foot = view.y(y0);
  chain(sheet, {axis: "x", outward: 1, line: foot + 14, stops: model.below.at.map((x) => ({at: view.x(x), edge: foot})), texts: stringTexts(model.below), bounds: [4, widthPx - 4]});
  chain(sheet, {axis: "y", outward: -1, line: view.x(x0) - 10, stops: model.left.at.map((y) => ({at: view.y(y), edge: view.x(x0)})), texts: stringTexts(model.left)});
  scaleBar(sheet, [Math.max(6, view.x(x0)), heightPx - 12], scale);
  return sheet.svg;
}

/** Column lines, and the first stem under the deck. */
function drawLines(sheet: Sheet, view: View, {x, y, stemIn, pieces}: CornerModel, group: Element): void {
  const center = (from: readonly [number, number], to: readonly [number, number]) => group.append(el("path", {d: pathThrough([view.at(...from), view.at(...to)]), class: "line-center"}));
  center([0, y[0]], [0, y[1]]);
  center([x[0], 0], [x[1], 0]);
  const deck = pieces.find(({kind}) => kind === "deck");
  if (stemIn === undefined || !deck) return;
  const from = Math.min(...deck.plan.map(([, along]) => along));
  group.append(el("path", {d: pathThrough([view.at(stemIn, from), view.at(stemIn, y[1])]), class: "line-hidden", "data-part": "stem"}));
  text(sheet.notes, sheet, [view.x(stemIn) - 6, view.y(y[1] - 12)], "stem", {kind: "name", anchor: "end", part: "stem"});
}

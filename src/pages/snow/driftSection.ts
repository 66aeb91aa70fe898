import type {Drift} from "../../lib/snow/drift.js";
import {decimals, feetAndInches, inches} from "../../lib/units.js";
import {chain, chainDepth} from "../../components/drawings/dimension.js";
import {breakLine, scaleBar} from "../../components/drawings/marks.js";
import {person} from "../../components/drawings/people.js";
import {concrete, createSheet, line, text, textSize, type DrawingOptions, type Sheet} from "../../components/drawings/sheet.js";
import {el, pathOfBox, pathThrough, type PaperPoint} from "../../components/drawings/svg.js";
import {fitView, type View} from "../../components/drawings/view.js";

/** What {@link driftSection} draws. */
export interface DriftSectionOptions extends DrawingOptions {
  /** The drift that weighs most, and another of the same side that it covers. */
  readonly drift: Drift;
  readonly other?: Drift | undefined;
  /** Height of the balanced snow, ft, and its load, psf. */
  readonly balancedFt: number;
  readonly balancedPsf: number;
  /** Depth of the roof's deck, and thickness of the wall or parapet, in. */
  readonly deckIn: number;
  readonly wallIn: number;
}

/** A person's height with a little air, in. */
const PERSON_IN = 70;
/** Part of a tall wall that is drawn above the snow, in. */
const ABOVE_IN = 42;

/** A cut through the roof's edge: parapet or higher part, balanced snow, drift, and below it the load that both make. True to scale. */
export function driftSection(options: DriftSectionOptions): SVGSVGElement {
  const {drift, other, balancedFt, balancedPsf, deckIn, wallIn, widthPx} = options;
  const [hb, hd, w] = [inches(balancedFt), inches((drift.heightFt * drift.widthFt) / Math.max(1e-9, drift.wholeWidthFt)), inches(drift.widthFt)];
  const wall = inches(drift.wallFt);
  const gap = Math.min(inches(drift.gapFt), 120);
  const topIn = Math.min(wall, Math.max(hb + hd, 64) + ABOVE_IN);
  const reachIn = Math.max(w * 1.35, 150, w + 84);
  const textPx = textSize(widthPx);
  const loadPx = Math.min(96, Math.max(60, widthPx * 0.13));
  const left = chainDepth("y", [{value: "00'-00\"", name: "balanced"}], textPx) + 26;
  const below = 40 + loadPx + textPx * 5.4;
  const beside = reachIn > w + 40;
  const world = {x0: -wallIn - gap - 8, x1: reachIn, y0: -deckIn, y1: beside ? Math.max(topIn, PERSON_IN) : topIn};
  const {view, heightPx} = fitView({world, widthPx, mostHeightPx: options.mostHeightPx ?? 640, margins: {top: textPx * 4.2, right: 14, bottom: below, left}});
  const kind = drift.kind === "parapet" ? "parapet" : "higher part";
  const sheet = createSheet({
    view, kind: "drift", widthPx, heightPx, label: options.label ?? `Cut through the roof at its ${kind}: snow and drift`,
    description: options.description ?? `The balanced snow lies ${feetAndInches(hb)} deep. The drift rises ${feetAndInches(hd)} above it at the ${kind} and is ${feetAndInches(w)} wide.`,
  });
  if (beside) person(sheet, view, Math.min(reachIn - 24, w + 40), 0);
  drawRoof(sheet, view, {deckIn, reachIn, wallIn, gap, wall, topIn, parapet: drift.kind === "parapet"});
  drawSnow(sheet, view, {hb, hd, w, reachIn});
  if (other && isSeen(other, drift)) {
    const height = inches((other.heightFt * other.widthFt) / other.wholeWidthFt);
    line(sheet.lines, "hidden", [view.at(0, hb + height), view.at(inches(other.widthFt), hb)], {"data-part": "other-drift"});
  }
  drawStrings(sheet, view, {hb, hd, w, topIn, wallIn: wallIn + gap});
  drawLoad(sheet, view, {top: view.y(-deckIn) + 26, heightPx: loadPx, balancedPsf, peakPsf: drift.peakPsf, w, reachIn, place: gap > 0 ? "at the edge" : "at the wall"});
  scaleBar(sheet, [left, heightPx - 12], view.scale);
  return sheet.svg;
}

/** Whether another drift of the side is enough to be drawn within the greater one. */
export function isSeen(other: Drift, drift: Drift): boolean {
  return other.peakPsf > 0.1 * drift.peakPsf;
}

interface RoofParts {
  readonly deckIn: number;
  readonly reachIn: number;
  readonly wallIn: number;
  readonly gap: number;
  readonly wall: number;
  readonly topIn: number;
  readonly parapet: boolean;
}

function drawRoof(sheet: Sheet, view: View, {deckIn, reachIn, wallIn, gap, wall, topIn, parapet}: RoofParts): void {
  concrete(sheet, "plant", pathOfBox(view.x(0), view.y(0), view.x(reachIn), view.y(-deckIn)), {"data-part": "roof"});
  const [x0, x1] = [view.x(-gap - wallIn), view.x(-gap)];
  concrete(sheet, "plant", pathOfBox(x0, view.y(topIn), x1, view.y(-deckIn)), {"data-part": "wall"});
  if (parapet) concrete(sheet, "plant", pathOfBox(x1, view.y(0), view.x(0), view.y(-deckIn)), {"data-part": "roof"}, "seen");
  // The wall of a higher part goes on, and so does the roof.
  if (wall > topIn + 1) for (const dx of [-3, 3]) line(sheet.lines, "seen", [[x0 - 6, view.y(topIn) + dx + 4], [x1 + 6, view.y(topIn) + dx - 4]]);
  breakLine(sheet, view.x(reachIn), view.y(0) - 8, view.y(-deckIn) + 8);
}

function drawSnow(sheet: Sheet, view: View, {hb, hd, w, reachIn}: {hb: number; hd: number; w: number; reachIn: number}): void {
  const surface: PaperPoint[] = [view.at(0, hb + hd), view.at(w, hb), view.at(reachIn, hb)];
  sheet.body.append(
    el("path", {d: pathThrough([view.at(0, 0), view.at(0, hb), view.at(reachIn, hb), view.at(reachIn, 0)], true), class: "snow", "data-part": "balanced-snow"}),
    el("path", {d: pathThrough([view.at(0, hb), view.at(0, hb + hd), view.at(w, hb)], true), class: "snow snow-drift", "data-part": "drift"}),
  );
  line(sheet.lines, "seen", surface, {class: "snow-surface"});
  if (hd > 0) line(sheet.lines, "hidden", [view.at(0, hb), view.at(w, hb)]);
}

interface Strings {
  readonly hb: number;
  readonly hd: number;
  readonly w: number;
  readonly topIn: number;
  readonly wallIn: number;
}

function drawStrings(sheet: Sheet, view: View, {hb, hd, w, topIn, wallIn}: Strings): void {
  const edge = view.x(-wallIn);
  const stops = [0, hb, hb + hd].map((at) => ({at: view.y(at), edge}));
  chain(sheet, {axis: "y", outward: -1, line: edge - 12, stops, texts: [
    {value: feetAndInches(hb, 4), name: "balanced", part: "balanced-snow"}, hd > 0 ? {value: feetAndInches(hd, 4), name: "drift", part: "drift"} : null,
  ]});
  if (w > 0) {
    const top = view.y(hb + hd);
    chain(sheet, {axis: "x", outward: -1, line: Math.min(top, view.y(Math.min(topIn, 70))) - 14, stops: [{at: view.x(0), edge: top}, {at: view.x(w), edge: view.y(hb)}], texts: [{value: feetAndInches(w, 4), name: "width of the drift", part: "drift"}]});
  }
}

/** The load that the snow makes, drawn below the roof. */
function drawLoad(sheet: Sheet, view: View, {top, heightPx, balancedPsf, peakPsf, w, reachIn, place}: {place: string; top: number; heightPx: number; balancedPsf: number; peakPsf: number; w: number; reachIn: number}): void {
  const scale = heightPx / Math.max(1e-9, balancedPsf + peakPsf);
  const base = top + heightPx;
  const y = (psf: number) => base - psf * scale;
  const outline: PaperPoint[] = [[view.x(0), base], [view.x(0), y(balancedPsf + peakPsf)], [view.x(w), y(balancedPsf)], [view.x(reachIn), y(balancedPsf)], [view.x(reachIn), base]];
  sheet.body.append(el("path", {d: pathThrough(outline, true), class: "curve-shear", style: `fill: ${sheet.pattern("shear")}`, "data-part": "snow-load"}));
  line(sheet.lines, "seen", [[view.x(0), base], [view.x(reachIn), base]]);
  text(sheet.notes, sheet, [view.x(0) - 6, y(balancedPsf + peakPsf) + sheet.textPx * 0.4], [`${decimals(balancedPsf + peakPsf, 1)} psf`, place], {anchor: "end", part: "drift"});
  text(sheet.notes, sheet, [view.x(reachIn) - 4, base + sheet.textPx], `${decimals(balancedPsf, 1)} psf beyond the drift`, {anchor: "end", part: "balanced-snow"});
}

import {decimals} from "../../lib/units.js";
import {arrow} from "./arrows.js";
import {chain, chainDepth} from "../../components/drawings/dimension.js";
import {breakLine, scaleBar} from "../../components/drawings/marks.js";
import {written} from "../../components/drawings/sectionDimensions.js";
import {concrete, createSheet, line, text, textSize, type DrawingOptions, type LineKind, type Sheet} from "../../components/drawings/sheet.js";
import {el, pathOfBox, pathThrough} from "../../components/drawings/svg.js";
import {fitView, type View} from "../../components/drawings/view.js";

/** What {@link ledgePunch} draws, inches. */
export interface LedgePunchOptions extends DrawingOptions {
  readonly ledgeDepthIn: number;
  /** Width of a stem at its foot, of the pad under it, and the pad's thickness. */
  readonly stemWidthIn: number;
  readonly padWidthIn: number;
  readonly padThicknessIn: number;
  /** Beam's end to the stem nearest to it, and from that to the next. */
  readonly endDistanceIn: number;
  readonly spacingIn: number;
  /** What would punch and what the ledge carries, at the stem by the end and at the one inside, kip. */
  readonly loadKip: number;
  readonly endKip: number;
  readonly interiorKip: number;
  /** Bars across the ledge: their distance. */
  readonly barSpacingIn: number;
}

/** Height of the stems that is shown above the ledge, in. */
const STEM_SHOWN_IN = 9;

/**
 * The ledge seen from the room at the beam's end: two stems on their pads, the cracks at 45 degrees along which each
 * would punch out, and the bars across the ledge as dots. True to scale.
 */
export function ledgePunch(options: LedgePunchOptions): SVGSVGElement {
  const {ledgeDepthIn: h, endDistanceIn, spacingIn, widthPx, bare = false} = options;
  const textPx = textSize(widthPx);
  const shownIn = endDistanceIn + spacingIn + 2 * h;
  const depth = [{value: written(h), name: "ledge", part: "ledge"}];
  const {view, heightPx} = fitView({
    world: {x0: -2, y0: -1, x1: shownIn, y1: h + STEM_SHOWN_IN}, widthPx, mostHeightPx: options.mostHeightPx ?? 420,
    margins: bare ? {left: 1, right: 1, top: 1, bottom: 1} : {left: 16, right: 22 + chainDepth("y", depth, textPx), top: textPx * 3.2, bottom: 92},
  });
  const sheet = createSheet({
    view, kind: "punch", widthPx, heightPx, bare, label: options.label ?? "The ledge seen from the room, with the cracks along which stems would punch out",
    description: options.description ?? `Each stem brings ${decimals(options.loadKip, 1)} kip. At the stem near the end of the beam the ledge carries ${decimals(options.endKip, 1)} kip, elsewhere ${decimals(options.interiorKip, 1)} kip.`,
  });
  concrete(sheet, "plant", pathOfBox(view.x(0), view.y(h), view.x(shownIn), view.y(0)), {"data-part": "ledge"});
  for (let x = options.barSpacingIn / 2; x < shownIn; x += options.barSpacingIn) {
    sheet.body.append(el("circle", {cx: view.x(x), cy: view.y(h - 2), r: Math.max(1.4, 0.25 * view.scale), class: "strand", "data-part": "ledge-bar"}));
  }
  drawStem(sheet, view, options, endDistanceIn, options.endKip, "end");
  const next = endDistanceIn + spacingIn;
  drawStem(sheet, view, options, next, options.interiorKip, "interior");
  if (bare) return sheet.svg;
  breakLine(sheet, view.x(shownIn), view.y(h) - 6, view.y(0) + 6);
  const near = endDistanceIn > 0.1 ? [0, endDistanceIn, next] : [endDistanceIn, next];
  chain(sheet, {axis: "x", outward: 1, line: view.y(0) + 22, stops: near.map((x) => ({at: view.x(x), edge: view.y(0)})),
    texts: [...(endDistanceIn > 0.1 ? [{value: written(endDistanceIn), name: "to the end"}] : []), {value: written(spacingIn), name: "stem to stem"}]});
  chain(sheet, {axis: "y", outward: 1, line: view.x(shownIn) + 12, stops: [0, h].map((y) => ({at: view.y(y), edge: view.x(shownIn)})), texts: depth});
  scaleBar(sheet, [12, heightPx - 12], view.scale);
  return sheet.svg;
}

/** One stem on its pad, its load, and the two cracks from the pad's edges down, cut off at the beam's end. */
function drawStem(sheet: Sheet, view: View, options: LedgePunchOptions, atIn: number, carriesKip: number, part: string): void {
  const {ledgeDepthIn: h, stemWidthIn, padWidthIn, padThicknessIn, loadKip} = options;
  const bearing = Math.min(stemWidthIn, padWidthIn);
  const base = h + padThicknessIn;
  const top = h + STEM_SHOWN_IN;
  const flare = stemWidthIn / 2 + 0.4;
  concrete(sheet, "plant", pathThrough([view.at(atIn - stemWidthIn / 2, base), view.at(atIn + stemWidthIn / 2, base), view.at(atIn + flare, top), view.at(atIn - flare, top)], true), {"data-part": "deck"}, "seen");
  sheet.body.append(el("path", {d: pathOfBox(view.x(atIn - padWidthIn / 2), view.y(base), view.x(atIn + padWidthIn / 2), view.y(h)), class: "pad", "data-part": "pad"}));
  const kind: LineKind = "accent";
  for (const sign of [-1, 1]) {
    const from = atIn + (sign * bearing) / 2;
    const reach = sign < 0 ? Math.min(h, Math.max(0, from)) : h;
    line(sheet.lines, kind, [view.at(Math.max(0, from), h), view.at(Math.max(0, from + sign * reach), h - reach)], {class: "crack", "data-part": `punch-${part}`});
  }
  if (sheet.bare) return;
  arrow(sheet, [view.x(atIn), view.y(top) - 4], [view.x(atIn), view.y(base) - 2], "load");
  const half = sheet.textPx * 4;
  const x = Math.min(view.x(view.world.x1) - half, Math.max(half, view.x(atIn)));
  text(sheet.notes, sheet, [x, view.y(top) - sheet.textPx * 1.7], [`${decimals(loadKip, 1)} kip`, `of ${decimals(carriesKip, 1)}`], {part: `punch-${part}`});
}

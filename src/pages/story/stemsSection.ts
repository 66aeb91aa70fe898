import type {Shape} from "../../lib/sections/shape.js";
import {feetAndInches} from "../../lib/units.js";
import {pathOfRings} from "../../components/drawings/crossSection.js";
import {chain, chainDepth, type DimensionText} from "../../components/drawings/dimension.js";
import {breakLine, scaleBar} from "../../components/drawings/marks.js";
import {ductCut, ductSeen, lights, sprinklers, type ServicePicture} from "../../components/drawings/serviceParts.js";
import {concrete, createSheet, line, text, textSize, type DrawingOptions, type Sheet} from "../../components/drawings/sheet.js";
import {el, pathOfBox} from "../../components/drawings/svg.js";
import {fitView, type View} from "../../components/drawings/view.js";

/** What {@link stemsSection} draws. */
export interface StemsSectionOptions extends DrawingOptions {
  readonly shape: Shape;
  readonly toppingIn: number;
  readonly finishIn: number;
  /** Deck's underside to the ceiling, or to what must stay clear where there is none, in. */
  readonly roomIn: number;
  readonly open: boolean;
  readonly services: ServicePicture;
  /** Clear width between the stems at the top of a branch, in; undefined under planks. */
  readonly gapIn?: number;
}

/** Width of deck that is drawn at least, in. */
const LEAST_WIDTH_IN = 190;

/** The deck cut across its stems: branches between them, the main below, pipes, lights, ceiling. True to scale. */
export function stemsSection(options: StemsSectionOptions): SVGSVGElement {
  const {shape, toppingIn, finishIn, roomIn, services: {main, branch, hangerIn, sprinklerIn, lightIn}, open, widthPx} = options;
  const textPx = textSize(widthPx);
  const pieces = Math.max(widthPx < 520 ? 1 : 2, Math.ceil(LEAST_WIDTH_IN / shape.widthIn) - (widthPx < 520 ? 1 : 0));
  const wide = pieces * shape.widthIn;
  const hung = main ? hangerIn + main.depthIn : 0;
  const lowIn = Math.max(open ? Math.min(roomIn, hung + sprinklerIn + 6) : roomIn, hung + 4, 8);
  const right: (DimensionText | null)[] = [{value: `${feetAndInches(open ? lowIn : roomIn)}`, name: open ? "hung" : "plenum", part: "plenum"}, {value: feetAndInches(shape.depthIn), name: "deck", part: "deck"}];
  const {view, heightPx} = fitView({
    world: {x0: 0, y0: -lowIn - 3, x1: wide, y1: shape.depthIn + toppingIn + finishIn}, widthPx, mostHeightPx: options.mostHeightPx ?? 420,
    margins: {left: 10, right: 24 + chainDepth("y", right, textPx), top: 12, bottom: 62},
  });
  const sheet = createSheet({
    view, kind: "stems", widthPx, heightPx, label: options.label ?? `The deck cut across, with ${branch?.betweenStems ? "ducts between its stems" : "what hangs below it"}`,
    description: options.description ?? `${pieces} pieces of ${shape.designation}.${main ? ` Main duct ${feetAndInches(main.widthIn)} by ${feetAndInches(main.depthIn)} below.` : " No ducts."}`,
  });
  for (let i = 0; i < pieces; i++) concrete(sheet, "plant", pathOfRings(shape.rings.map((ring) => ring.map(([x, y]) => [x + i * shape.widthIn, y] as const)), view), {"data-part": "deck"});
  const box = (y0: number, y1: number) => pathOfBox(view.x(0), view.y(y1), view.x(wide), view.y(y0));
  if (toppingIn > 0) concrete(sheet, "site", box(shape.depthIn, shape.depthIn + toppingIn));
  if (finishIn > 0) sheet.body.append(el("path", {d: box(shape.depthIn + toppingIn, shape.depthIn + toppingIn + finishIn), class: "finish", "data-part": "finish"}));
  drawDucts(sheet, view, options, pieces, wide);
  const under = main ? -hung : 0;
  // A cut through the strip along the ledge: the main has it for itself.
  const strip = main?.alongLedge === true;
  if (!strip && sprinklerIn > 0) sprinklers(sheet, view, 0, wide, under - sprinklerIn / 2, open ? under - sprinklerIn : -roomIn);
  if (!open) {
    line(sheet.body, "seen", [view.at(0, -roomIn), view.at(wide, -roomIn)], {"data-part": "ceiling"});
    sheet.body.append(el("path", {d: box(-roomIn, -roomIn + Math.max(1, 2 / view.scale)), class: "furniture", "data-part": "ceiling"}));
    if (!strip && lightIn > 0) lights(sheet, view, 0, wide, -roomIn, lightIn);
  }
  for (const x of [0, wide]) breakLine(sheet, view.x(x), view.y(shape.depthIn + toppingIn) - 6, view.y(shape.family === "double tee" ? shape.depthIn - 4 : 0) + 6);
  drawTexts(sheet, view, options, wide, right, lowIn);
  scaleBar(sheet, [view.x(0), heightPx - 10], view.scale);
  return sheet.svg;
}

function drawDucts(sheet: Sheet, view: View, {shape, services: {main, branch, hangerIn}}: StemsSectionOptions, pieces: number, wide: number): void {
  // The main runs across below the stems; where it is cut by this section it is seen from its side.
  if (main) ductSeen(sheet, view, 0, -hangerIn - main.depthIn, wide, -hangerIn, "main");
  if (!branch) return;
  const [a = shape.widthIn / 2, b = shape.widthIn / 2] = shape.webCentersIn;
  for (let i = 0; i < pieces; i++) {
    const middle = i * shape.widthIn + (branch.betweenStems ? (a + b) / 2 : shape.widthIn / 2);
    if (branch.betweenStems) ductCut(sheet, view, middle - branch.widthIn / 2, 0, middle + branch.widthIn / 2, branch.depthIn, "branch");
    else if (i % Math.max(1, Math.round(120 / shape.widthIn)) === 0) ductCut(sheet, view, middle - branch.widthIn / 2, -hangerIn - branch.depthIn, middle + branch.widthIn / 2, -hangerIn, "branch");
  }
}

function drawTexts(sheet: Sheet, view: View, {shape, services: {main, branch, hangerIn}, gapIn, roomIn, open}: StemsSectionOptions, wide: number, right: readonly (DimensionText | null)[], lowIn: number): void {
  const edge = view.x(wide);
  chain(sheet, {axis: "y", outward: 1, line: edge + 14, stops: [-(open ? lowIn : roomIn), 0, shape.depthIn].map((y) => ({at: view.y(y), edge})), texts: right});
  const [a = 0, b = shape.widthIn] = shape.webCentersIn;
  const base = view.y(view.world.y0);
  if (gapIn !== undefined && branch) {
    const middle = (a + b) / 2;
    const stops = [middle - gapIn / 2, middle + gapIn / 2].map((x) => ({at: view.x(x), edge: base - 6}));
    chain(sheet, {axis: "x", outward: 1, line: base + 6, stops, texts: [{value: feetAndInches(gapIn), name: "clear at the branch", part: "branch"}]});
    const label = `${feetAndInches(branch.widthIn)} × ${feetAndInches(branch.depthIn)}`;
    if (branch.depthIn * view.scale > sheet.textPx && branch.widthIn * view.scale > 70) text(sheet.notes, sheet, view.at(middle, branch.depthIn / 2), label, {kind: "small", part: "branch"});
    else text(sheet.notes, sheet, [view.x(middle), view.y(branch.depthIn) - sheet.textPx * 0.8], label, {kind: "small", part: "branch"});
  }
  // Midway along, branches are cut near its ends only.
  if (main) text(sheet.notes, sheet, [view.x(wide * 0.5), view.y(-hangerIn - main.depthIn / 2)], "main, seen from the side", {kind: "small", part: "main", plate: main.depthIn * view.scale < sheet.textPx});
}

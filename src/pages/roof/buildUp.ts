import type {Shape} from "../../lib/sections/shape.js";
import {feetAndInches} from "../../lib/units.js";
import {pathOfRings, type StrandPoint} from "../../components/drawings/crossSection.js";
import {chain, chainDepth, type DimensionText} from "../../components/drawings/dimension.js";
import {scaleBar} from "../../components/drawings/marks.js";
import {spread, textWidth} from "../../components/drawings/placement.js";
import {concrete, createSheet, line, text, textSize, type DrawingOptions} from "../../components/drawings/sheet.js";
import {el, pathOfBox} from "../../components/drawings/svg.js";
import {fitView} from "../../components/drawings/view.js";

/** A layer on the roof's deck, at the drains. */
export interface BuiltLayer {
  readonly name: string;
  readonly thicknessIn: number;
}

/** What {@link buildUp} draws. */
export interface BuildUpOptions extends DrawingOptions {
  readonly shape: Shape;
  readonly strands: readonly StrandPoint[];
  readonly toppingIn: number;
  /** Top down, those that lie on the deck. */
  readonly layers: readonly BuiltLayer[];
}

/** One deck member of the roof cut across at a drain, with all that lies on it. True to scale. */
export function buildUp(options: BuildUpOptions): SVGSVGElement {
  const {shape, strands, toppingIn, layers, widthPx} = options;
  const textPx = textSize(widthPx);
  const deckIn = shape.depthIn + toppingIn;
  const onIn = layers.reduce((sum, {thicknessIn}) => sum + thicknessIn, 0);
  const parts: DimensionText[] = [{value: feetAndInches(deckIn), name: toppingIn > 0 ? "deck, topping" : "deck"}, ...(onIn > 0 ? [{value: feetAndInches(onIn), name: "layers"}] : [])];
  const topY = (layers.length + 1) * textPx * 1.25 + 14;
  const {view, heightPx} = fitView({
    world: {x0: 0, y0: 0, x1: shape.widthIn, y1: deckIn + onIn}, widthPx, mostHeightPx: options.mostHeightPx ?? 420,
    margins: {left: 12, right: 24 + chainDepth("y", parts, textPx), top: topY, bottom: 34},
  });
  const sheet = createSheet({
    view, kind: "roof-build-up", widthPx, heightPx, label: options.label ?? "The roof's deck and what lies on it, cut across",
    description: options.description ?? `${shape.designation} with ${layers.map(({name, thicknessIn}) => `${feetAndInches(thicknessIn)} of ${name}`).join(", ") || "no layers"} on it.`,
  });
  concrete(sheet, "plant", pathOfRings(shape.rings, view), {"data-part": "precast"});
  if (toppingIn > 0) concrete(sheet, "site", pathOfBox(view.x(0), view.y(deckIn), view.x(shape.widthIn), view.y(shape.depthIn)));
  for (const {xIn, yIn} of strands) sheet.body.append(el("circle", {cx: view.x(xIn), cy: view.y(yIn), r: Math.max(1.2, 0.25 * view.scale), class: "strand", "data-part": "strand"}));
  let upIn = deckIn + onIn;
  const middles = layers.map(({name, thicknessIn}, i) => {
    const [top, bottom] = [upIn, upIn - thicknessIn];
    upIn = bottom;
    sheet.body.append(el("path", {d: pathOfBox(view.x(0), view.y(top), view.x(shape.widthIn), view.y(bottom)), class: i === 0 ? "membrane-layer" : "insulation", "data-part": `layer-${i}`}));
    return {name, y: view.y((top + bottom) / 2), i, thicknessIn};
  });
  if (onIn > 0) line(sheet.lines, "cut", [view.at(0, deckIn + onIn), view.at(shape.widthIn, deckIn + onIn)], {class: "membrane", "data-part": "membrane"});
  // Names stand above the piece, each with a line down to its own layer.
  const rows = spread(middles.map((_, i) => 12 + i * textPx * 1.25), middles.map(() => textPx * 1.25), 4, topY - 6, 2);
  middles.forEach(({name, y, i, thicknessIn}, at) => {
    const words = `${feetAndInches(thicknessIn)} ${name}`;
    const x = view.x(0) + 10 + at * 14;
    line(sheet.lines, "thin", [[x, (rows[at] as number) + 2], [x, y]], {class: "leader", "data-part": `layer-${i}`});
    sheet.lines.append(el("circle", {cx: x, cy: y, r: 2, class: "leader-dot"}));
    const room = widthPx - x - 12;
    text(sheet.notes, sheet, [x + 6, rows[at] as number], textWidth(words, textPx) > room ? `${words.slice(0, Math.max(8, Math.floor((words.length * room) / textWidth(words, textPx)) - 2))}\u2026` : words, {kind: "name", anchor: "start", part: `layer-${i}`});
  });
  const edge = view.x(shape.widthIn);
  chain(sheet, {axis: "y", outward: 1, line: edge + 14, stops: [0, deckIn, ...(onIn > 0 ? [deckIn + onIn] : [])].map((y) => ({at: view.y(y), edge})), texts: parts});
  scaleBar(sheet, [12, heightPx - 12], view.scale);
  return sheet.svg;
}

import {feetAndInches} from "../../lib/units.js";
import {chain, chainDepth, type DimensionText} from "../../components/drawings/dimension.js";
import {leader, scaleBar} from "../../components/drawings/marks.js";
import {concrete, createSheet, line, text, textSize, type DrawingOptions} from "../../components/drawings/sheet.js";
import {el, pathThrough, type PaperPoint} from "../../components/drawings/svg.js";
import {fitView} from "../../components/drawings/view.js";

/** A place of the roof's surface across the building. */
export interface AcrossPoint {
  readonly atFt: number;
  /** Top of the deck, of the layers on it, and of the water above those, in above the bearings at the drains. */
  readonly deckIn: number;
  readonly surfaceIn: number;
  readonly waterIn: number;
}

/** What {@link roofAcross} draws. */
export interface RoofAcrossOptions extends DrawingOptions {
  /** Bay by bay. */
  readonly bays: readonly (readonly AcrossPoint[])[];
  readonly spanFt: number;
  readonly deckDepthIn: number;
  readonly buildUpIn: number;
  readonly drainsFt: readonly number[];
  /** Lines from which water parts. */
  readonly partsFt: readonly number[];
  readonly riseIn: number;
  /** Top of the wall, which is level, above the roof's highest line, in; 0 for none. */
  readonly parapetIn: number;
  readonly parapetThicknessIn: number;
}

/** Times that heights may be drawn larger than lengths. */
const FACTORS = [1, 2, 3, 4, 5, 6, 8];
/** Room above and below that the deck asks for to be read, px. */
const DECK_PX = 16;

/** The roof cut across the building: deck with its camber, layers, fall, drains and the water that they hold when blocked. */
export function roofAcross(options: RoofAcrossOptions): SVGSVGElement {
  const {bays, spanFt, deckDepthIn, buildUpIn, drainsFt, partsFt, riseIn, parapetIn, parapetThicknessIn, widthPx} = options;
  const textPx = textSize(widthPx);
  const widthIn = bays.length * spanFt * 12;
  const points = bays.flat();
  const topIn = Math.max(...points.map((point) => Math.max(point.surfaceIn, point.waterIn)));
  const wallTopIn = buildUpIn + riseIn + parapetIn;
  const edgeIn = Math.max(points[0]?.surfaceIn ?? 0, points.at(-1)?.surfaceIn ?? 0, parapetIn > 0 ? wallTopIn : 0);
  const heightText: DimensionText[] = [{value: feetAndInches(riseIn), name: "rise"}];
  const side = 14 + parapetThicknessIn * (widthPx / (widthIn + 2 * parapetThicknessIn));
  const right = 26 + chainDepth("y", heightText, textPx);
  const trueScale = (widthPx - side - right) / (widthIn + 2 * parapetThicknessIn);
  const factor = FACTORS.find((one) => deckDepthIn * trueScale * one >= DECK_PX) ?? 8;
  const {view, heightPx} = fitView({
    world: {x0: -parapetThicknessIn, y0: Math.min(...points.map(({deckIn}) => deckIn)) - deckDepthIn, x1: widthIn + parapetThicknessIn, y1: Math.max(topIn, edgeIn) + 2}, widthPx,
    mostHeightPx: 560, heightFactor: factor, margins: {left: 14, right, top: 2.6 * textPx + 18, bottom: 92},
  });
  const sheet = createSheet({
    view, kind: "roof-across", widthPx, heightPx, label: options.label ?? "The roof cut across the building",
    description: options.description ?? `The surface rises ${feetAndInches(riseIn)} from its drains to its highest line. Heights are drawn ${factor === 1 ? "to the scale of lengths" : `${factor} times larger than lengths`}.`,
  });
  const band = (lower: (point: AcrossPoint) => number, upper: (point: AcrossPoint) => number) => bays.map((bay) => pathThrough([
    ...bay.map((point): PaperPoint => view.at(point.atFt * 12, lower(point))), ...[...bay].reverse().map((point): PaperPoint => view.at(point.atFt * 12, upper(point))),
  ], true)).join("");
  concrete(sheet, "plant", band(({deckIn}) => deckIn - deckDepthIn, ({deckIn}) => deckIn), {"data-part": "deck"}, "seen");
  sheet.body.append(el("path", {d: band(({deckIn}) => deckIn, ({surfaceIn}) => surfaceIn), class: "insulation", "data-part": "layers"}));
  if (points.some(({waterIn, surfaceIn}) => waterIn > surfaceIn + 1e-6)) {
    sheet.body.append(el("path", {d: band(({surfaceIn}) => surfaceIn, ({waterIn, surfaceIn}) => Math.max(waterIn, surfaceIn)), class: "water", "data-part": "water"}));
  }
  for (const bay of bays) line(sheet.lines, "cut", bay.map(({atFt, surfaceIn}) => view.at(atFt * 12, surfaceIn)), {class: "membrane", "data-part": "membrane"});
  for (let i = 1; i < bays.length; i++) line(sheet.lines, "thin", [view.at(i * spanFt * 12, view.world.y0), view.at(i * spanFt * 12, (points[0]?.deckIn ?? 0))], {class: "joint"});
  if (parapetIn > 0) {
    for (const [x0, x1, end] of [[-parapetThicknessIn, 0, points[0]], [widthIn, widthIn + parapetThicknessIn, points.at(-1)]] as const) {
      concrete(sheet, "plant", pathThrough([view.at(x0, end?.deckIn ?? 0), view.at(x1, end?.deckIn ?? 0), view.at(x1, wallTopIn), view.at(x0, wallTopIn)], true), {"data-part": "parapet"}, "cut");
    }
  }
  const surfaceAt = (atFt: number) => points.reduce((best, point) => (Math.abs(point.atFt - atFt) < Math.abs(best.atFt - atFt) ? point : best)).surfaceIn;
  for (const atFt of drainsFt) {
    const [x, y] = view.at(atFt * 12, surfaceAt(atFt));
    sheet.lines.append(el("path", {d: `M${x - 5} ${y - 11}h10l-5 9Z`, class: "drain", "data-part": "drain"}));
  }
  drawArrows(sheet.lines, options, (atFt) => view.at(atFt * 12, surfaceAt(atFt)));
  const [drain] = drainsFt;
  if (drain !== undefined) {
    const [x, y] = view.at(drain * 12, surfaceAt(drain));
    const left = x > widthPx * 0.6;
    leader(sheet, [x, y - 9], [x + (left ? -14 : 14), textPx * 1.3], "drain", {part: "drain", side: left ? "left" : "right"});
  }
  const lowIn = buildUpIn;
  if (riseIn > 0 && partsFt.length > 0) {
    const edge = view.x(widthIn + parapetThicknessIn);
    chain(sheet, {axis: "y", outward: 1, line: edge + 14, stops: [lowIn, lowIn + riseIn].map((y) => ({at: view.y(y), edge})), texts: [{value: feetAndInches(riseIn), name: "rise", quantity: "roof rise, in"}]});
  }
  chain(sheet, {
    axis: "x", outward: 1, line: view.y(view.world.y0) + 20, stops: bays.concat([[]]).map((_, i) => ({at: view.x(i * spanFt * 12), edge: view.y(view.world.y0)})),
    texts: bays.map((_, i) => (i === 0 || view.scale * spanFt * 12 > 70 ? {value: feetAndInches(spanFt * 12), name: "span"} : null)),
  });
  const end = scaleBar(sheet, [14, heightPx - 12], view.scale, factor === 1);
  text(sheet.notes, sheet, [end + 14, heightPx - 12], factor === 1 ? "heights to scale" : `heights ${factor}x`, {kind: "small", anchor: "start"});
  return sheet.svg;
}

/** Arrows down the fall, above the surface. */
function drawArrows(parent: Element, {drainsFt, partsFt, bays, spanFt}: RoofAcrossOptions, at: (atFt: number) => PaperPoint): void {
  const tops = partsFt.length > 0 ? partsFt : bays.map((_, i) => (i + 0.5) * spanFt);
  for (const top of tops) {
    const low = [Math.max(...drainsFt.filter((drain) => drain < top)), Math.min(...drainsFt.filter((drain) => drain > top))];
    for (const drain of low.filter(Number.isFinite)) {
      const [from, to] = [0.4, 0.6].map((share) => at(top + (drain - top) * share)) as [PaperPoint, PaperPoint];
      const sign = Math.sign(to[0] - from[0]);
      const lift = 9;
      parent.append(el("path", {d: `M${from[0]} ${from[1] - lift}L${to[0]} ${to[1] - lift}M${to[0] - sign * 6} ${to[1] - lift - 4}L${to[0]} ${to[1] - lift}L${to[0] - sign * 6} ${to[1] - lift + 4}`, class: "fall-arrow", "data-part": "fall"}));
    }
  }
}

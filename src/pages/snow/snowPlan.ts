import {ROOF_SIDES, type RoofSide, type SideDrift} from "../../lib/snow/surface.js";
import type {PlanRect} from "../../lib/loads/tributary.js";
import {decimals, feetAndInches} from "../../lib/units.js";
import {chain, chainDepth} from "../../components/drawings/dimension.js";
import {northArrow, scaleBar} from "../../components/drawings/marks.js";
import {textWidth} from "../../components/drawings/placement.js";
import {createSheet, line, text, textSize, type DrawingOptions, type Sheet} from "../../components/drawings/sheet.js";
import {el, pathOfBox, pathThrough, type PaperPoint} from "../../components/drawings/svg.js";
import {fitView, type View} from "../../components/drawings/view.js";

/** What {@link snowPlan} draws; sizes in ft. */
export interface SnowPlanOptions extends DrawingOptions {
  readonly lengthFt: number;
  readonly widthFt: number;
  readonly spanFt: number;
  readonly beamSpanFt: number;
  readonly balancedPsf: number;
  /** The drifts that count. */
  readonly drifts: readonly SideDrift[];
  /** A higher part along a side, and its gap. */
  readonly higher?: {readonly side: RoofSide; readonly gapFt: number} | undefined;
  /** Sides that have a parapet. */
  readonly parapets: readonly RoofSide[];
  /** The deck member that carries most. */
  readonly member: PlanRect;
}

/** How far a higher part is drawn, ft of the roof's greater size. */
const HIGHER_SHARE = 0.12;

/** The roof from above: where the drifts lie and how far they reach, and the member that carries most. True to scale. */
export function snowPlan(options: SnowPlanOptions): SVGSVGElement {
  const {lengthFt, widthFt, spanFt, beamSpanFt, higher, widthPx, member, parapets, balancedPsf} = options;
  const textPx = textSize(widthPx);
  const deep = HIGHER_SHARE * Math.max(lengthFt, widthFt);
  const north = higher?.side === "north" ? deep + higher.gapFt : 0;
  const east = higher?.side === "east" ? deep + higher.gapFt : 0;
  const {view, heightPx} = fitView({
    world: {x0: 0, y0: 0, x1: lengthFt + east, y1: widthFt + north}, widthPx, mostHeightPx: options.mostHeightPx ?? 460,
    margins: {top: 18, right: 20, bottom: 100, left: 20 + chainDepth("y", [{value: "000'-0\""}], textPx)},
  });
  const drifts = deepestBySide(options.drifts);
  const sheet = createSheet({
    view, kind: "snow-plan", widthPx, heightPx, label: options.label ?? "The roof from above, with its drifts",
    description: options.description ?? `The roof is ${feetAndInches(lengthFt * 12)} by ${feetAndInches(widthFt * 12)}. ${drifts.map(({side, drift}) => `Along the ${side} side a drift ${feetAndInches(drift.widthFt * 12)} wide adds up to ${decimals(drift.peakPsf)} psf.`).join(" ")}`,
  });
  sheet.body.append(el("path", {d: pathOfBox(view.x(0), view.y(widthFt), view.x(lengthFt), view.y(0)), class: "snow", "data-part": "balanced-snow"}));
  const deepestPsf = Math.max(...drifts.map(({drift}) => drift.peakPsf), 0);
  for (const band of [1, 2, 3] as const) for (const one of drifts) drawBand(sheet, view, one, options, band, deepestPsf);
  for (const one of drifts) nameDrift(sheet, view, one, options);
  for (let i = 1; i * beamSpanFt < lengthFt - 0.01; i++) line(sheet.body, "thin", [view.at(i * beamSpanFt, 0), view.at(i * beamSpanFt, widthFt)], {class: "joint"});
  for (let i = 1; i * spanFt < widthFt - 0.01; i++) line(sheet.body, "hidden", [view.at(0, i * spanFt), view.at(lengthFt, i * spanFt)]);
  const corners: Readonly<Record<RoofSide, readonly [PaperPoint, PaperPoint]>> = {
    south: [view.at(0, 0), view.at(lengthFt, 0)], north: [view.at(0, widthFt), view.at(lengthFt, widthFt)],
    west: [view.at(0, 0), view.at(0, widthFt)], east: [view.at(lengthFt, 0), view.at(lengthFt, widthFt)],
  };
  for (const side of ROOF_SIDES) line(sheet.lines, parapets.includes(side) ? "cut" : "seen", corners[side]);
  if (higher) drawHigher(sheet, view, options, deep, higher);
  sheet.body.append(el("path", {d: pathOfBox(view.x(member.xFt), view.y(member.yFt + member.heightFt), view.x(member.xFt + member.widthFt), view.y(member.yFt)), class: "tributary", style: `fill: ${sheet.pattern("tributary")}`, "data-part": "member"}));
  const middle = view.at(lengthFt / 2, widthFt / 2);
  text(sheet.notes, sheet, [middle[0], middle[1] - textPx], `${decimals(balancedPsf, 1)} psf`, {part: "balanced-snow"});
  chain(sheet, {axis: "x", outward: 1, line: view.y(0) + 18, stops: [0, lengthFt].map((at) => ({at: view.x(at), edge: view.y(0)})), texts: [{value: feetAndInches(lengthFt * 12)}]});
  chain(sheet, {axis: "y", outward: -1, line: view.x(0) - 12, stops: [0, widthFt].map((at) => ({at: view.y(at), edge: view.x(0)})), texts: [{value: feetAndInches(widthFt * 12)}]});
  const end = scaleBar(sheet, [view.x(0), heightPx - 14], view.scale / 12);
  northArrow(sheet, [Math.min(widthPx - 20, Math.max(end + 28, view.x(lengthFt) - 14)), heightPx - 24]);
  return sheet.svg;
}

function deepestBySide(drifts: readonly SideDrift[]): SideDrift[] {
  return ROOF_SIDES.flatMap((side) => {
    const [first, ...others] = drifts.filter((one) => one.side === side);
    return first ? [others.reduce((most, one) => (one.drift.peakPsf > most.drift.peakPsf ? one : most), first)] : [];
  });
}

/**
 * What a drift brings above a third, or two, of the deepest one's load, as seen from above. Bands cover what is lighter, so
 * that where two drifts meet the deeper shows.
 */
function drawBand(sheet: Sheet, view: View, {side, drift}: SideDrift, {lengthFt, widthFt}: SnowPlanOptions, band: 1 | 2 | 3, deepestPsf: number): void {
  const reach = drift.widthFt * (1 - ((band - 1) / 3) * (deepestPsf / drift.peakPsf));
  if (reach <= 0) return;
  const [x0, y0, x1, y1] = ({
    south: [0, 0, lengthFt, Math.min(widthFt, reach)], north: [0, Math.max(0, widthFt - reach), lengthFt, widthFt],
    west: [0, 0, Math.min(lengthFt, reach), widthFt], east: [Math.max(0, lengthFt - reach), 0, lengthFt, widthFt],
  } as const)[side];
  sheet.body.append(el("path", {d: pathOfBox(view.x(x0), view.y(y1), view.x(x1), view.y(y0)), class: `snow-band snow-band-${band}`, "data-part": `drift-${side}`}));
}

/** The greatest load of a drift, written on it. */
function nameDrift(sheet: Sheet, view: View, {side, drift}: SideDrift, {lengthFt, widthFt, spanFt}: SnowPlanOptions): void {
  const label = `+${decimals(drift.peakPsf)} psf`;
  const size = sheet.textPx;
  const inset = Math.max(size, (drift.widthFt * view.scale) / 2);
  // Halfway up a line of girders would run through it.
  const y0 = view.y(widthFt / 2) - (Math.round(widthFt / spanFt) % 2 === 0 ? size : 0);
  const [x, y] = side === "south" ? [view.x(lengthFt / 2), view.y(0) - inset] : side === "north" ? [view.x(lengthFt / 2), view.y(widthFt) + inset]
    : side === "west" ? [view.x(0) + Math.max(textWidth(label, size) / 2 + 6, inset), y0] : [view.x(lengthFt) - Math.max(textWidth(label, size) / 2 + 6, inset), y0];
  text(sheet.notes, sheet, [x, y], label, {part: `drift-${side}`});
}

function drawHigher(sheet: Sheet, view: View, {lengthFt, widthFt}: SnowPlanOptions, deep: number, {side, gapFt}: {readonly side: RoofSide; readonly gapFt: number}): void {
  const [x0, y0, x1, y1] = side === "north" ? [0, widthFt + gapFt, lengthFt, widthFt + gapFt + deep] : [lengthFt + gapFt, 0, lengthFt + gapFt + deep, widthFt];
  const outline = pathThrough([view.at(x0, y0), view.at(x1, y0), view.at(x1, y1), view.at(x0, y1)], true);
  sheet.body.append(el("path", {d: outline, class: "concrete-plant is-seen", "data-part": "wall"}));
  const middle = view.at((x0 + x1) / 2, (y0 + y1) / 2);
  const name = text(sheet.notes, sheet, middle, "higher part", {kind: "name", part: "wall"});
  // Beside the roof there is room for it upright alone.
  if (side === "east") name.setAttribute("transform", `rotate(-90 ${middle[0]} ${middle[1]})`);
}

import {jointsFt} from "../../lib/deck/pieces.js";
import {feetAndInches} from "../../lib/units.js";
import {chain, chainDepth, type Stop} from "./dimension.js";
import {northArrow, scaleBar} from "./marks.js";
import {createSheet, line, text, textSize, type DrawingOptions, type Sheet} from "./sheet.js";
import {el, pathOfBox} from "./svg.js";
import {fitView, type View} from "./view.js";

/** A rectangle of the plan, ft: x to the east and y to the north of the south-west column. */
export interface PlanRect {
  readonly xFt: number;
  readonly yFt: number;
  readonly widthFt: number;
  readonly heightFt: number;
}

/** The element whose areas a plan shows. */
export type PlanElement = "deck" | "edge beam" | "interior girder" | "interior column" | "edge column" | "girder end column" | "corner column";

/** What {@link bayPlan} draws. */
export interface BayPlanOptions extends DrawingOptions {
  /** Span of the deck, from south to north. */
  readonly spanFt: number;
  /** Distance of columns along the long edges, which face north and south. */
  readonly beamSpanFt: number;
  /** Bays along the long edges. */
  readonly baysAlong: number;
  /** Bays from south to north. */
  readonly baysAcross: number;
  readonly memberWidthFt: number;
  /** Side of the columns that the beams' ends are cut for. */
  readonly columnSideIn: number;
  readonly highlight?: PlanElement;
  /** Floor that loads the element alone. */
  readonly tributary?: PlanRect;
  /** Floor over which a load is felt by the element. */
  readonly influence?: PlanRect;
  readonly northUp?: boolean;
  readonly rooms?: readonly {readonly name: string; readonly rect: PlanRect}[];
}

/** Plan of the floor: columns, beams, the members' joints, tributary area hatched, influence area dashed. True to scale. */
export function bayPlan(options: BayPlanOptions): SVGSVGElement {
  const {spanFt, beamSpanFt, baysAlong, baysAcross, widthPx, bare = false, tributary, influence, highlight} = options;
  const [lengthFt, breadthFt] = [beamSpanFt * baysAlong, spanFt * baysAcross];
  const textPx = textSize(widthPx);
  const areas = tributary || influence;
  const eastDepth = chainDepth("y", [{value: "000'-0\"", name: "tributary"}], textPx) + 8;
  const northDepth = chainDepth("x", [{value: "", name: "tributary"}], textPx) + 5;
  const {view, heightPx} = fitView({
    world: {x0: 0, y0: 0, x1: lengthFt, y1: breadthFt}, widthPx, mostHeightPx: options.mostHeightPx ?? Math.max(420, widthPx * 0.62),
    margins: bare ? {top: 4, right: 4, bottom: 4, left: 4}
      : {left: 16 + textPx * 0.6 + chainDepth("y", [{value: "000'-00\""}], textPx), right: areas ? 30 + eastDepth * (influence && tributary ? 2 : 1) : 24, top: areas ? 24 + northDepth * (influence && tributary ? 2 : 1) : 24, bottom: 62 + (baysAlong > 1 ? 34 : 0) + 44},
  });
  const sheet = createSheet({
    view, kind: "plan", widthPx, heightPx, bare,
    label: options.label ?? `Plan of the floor, ${baysAlong} by ${baysAcross} bays of ${feetAndInches(beamSpanFt * 12)} by ${feetAndInches(spanFt * 12)}`,
    description: options.description ?? `North is up; the deck spans south to north.${highlight ? ` The areas shown belong to the ${highlight}.` : ""}`,
  });
  drawFloor(sheet, view, options);
  if (tributary) area(sheet, view, tributary, "tributary");
  if (influence) area(sheet, view, influence, "influence");
  drawFrame(sheet, view, options);
  if (bare) return sheet.svg;
  for (const {name, rect} of options.rooms ?? []) {
    sheet.body.append(el("path", {d: pathOfRect(view, rect), class: "room"}));
    text(sheet.notes, sheet, view.at(rect.xFt + rect.widthFt / 2, rect.yFt + rect.heightFt / 2), name, {kind: "name"});
  }
  drawStrings(sheet, view, options);
  const barEnd = scaleBar(sheet, [view.x(0), heightPx - 14], view.scale / 12);
  northArrow(sheet, [Math.min(widthPx - 20, Math.max(barEnd + 28, view.x(lengthFt) + 26)), heightPx - 24]);
  return sheet.svg;
}

function pathOfRect(view: View, {xFt, yFt, widthFt, heightFt}: PlanRect): string {
  return pathOfBox(view.x(xFt), view.y(yFt + heightFt), view.x(xFt + widthFt), view.y(yFt));
}

function area(sheet: Sheet, view: View, rect: PlanRect, kind: "tributary" | "influence"): void {
  const style = kind === "influence" ? undefined : sheet.bare ? "fill: none" : `fill: ${sheet.pattern("tributary")}`;
  // The dashed outline is drawn a little inside its area, or it would vanish in the beams' lines.
  const inset = kind === "influence" ? Math.min(4, rect.widthFt * view.scale * 0.07) / view.scale : 0;
  const drawn = {xFt: rect.xFt + inset, yFt: rect.yFt + inset, widthFt: rect.widthFt - 2 * inset, heightFt: rect.heightFt - 2 * inset};
  sheet.body.append(el("path", {d: pathOfRect(view, drawn), class: kind, style, "data-part": kind}));
}

function drawFloor(sheet: Sheet, view: View, {spanFt, beamSpanFt, baysAlong, baysAcross, memberWidthFt}: BayPlanOptions): void {
  const [lengthFt, breadthFt] = [beamSpanFt * baysAlong, spanFt * baysAcross];
  sheet.body.append(el("path", {d: pathOfBox(view.x(0), view.y(breadthFt), view.x(lengthFt), view.y(0)), class: "deck-ground"}));
  if (sheet.bare) return;
  // Members lie side by side from the corner on and run past the column lines.
  for (const x of jointsFt(lengthFt, memberWidthFt)) {
    const at = view.x(x);
    sheet.body.append(el("path", {d: `M${at} ${view.y(0)}V${view.y(breadthFt)}`, class: "joint", "data-part": "joint"}));
  }
}

function drawFrame(sheet: Sheet, view: View, options: BayPlanOptions): void {
  const {spanFt, beamSpanFt, baysAlong, baysAcross, columnSideIn, highlight, tributary} = options;
  const [lengthFt, breadthFt] = [beamSpanFt * baysAlong, spanFt * baysAcross];
  const half = Math.max(0.5, 1.6 / view.scale);
  for (let row = 0; row <= baysAcross; row++) {
    const y = row * spanFt;
    const edge = row === 0 || row === baysAcross;
    // A girder lies under the deck and is hidden; an edge beam stands up past the floor and is seen.
    for (const side of [-half, half]) {
      line(sheet.body, edge ? "seen" : "hidden", [view.at(0, y + side), view.at(lengthFt, y + side)], {"data-part": edge ? "edge-beam" : "girder"});
    }
  }
  for (const x of [0, lengthFt]) line(sheet.body, "seen", [view.at(x, 0), view.at(x, breadthFt)]);
  const size = Math.max((columnSideIn / 12) * view.scale, sheet.bare ? 2 : 6);
  for (let i = 0; i <= baysAlong; i++) {
    for (let j = 0; j <= baysAcross; j++) {
      const [x, y] = view.at(i * beamSpanFt, j * spanFt);
      sheet.body.append(el("rect", {x: x - size / 2, y: y - size / 2, width: size, height: size, class: "column", "data-part": "column"}));
    }
  }
  if (!highlight || !tributary || sheet.bare) return;
  const mark = highlighted(options, tributary);
  const [x, y] = view.at(mark.xFt, mark.yFt + mark.heightFt);
  const pad = 4;
  sheet.body.append(el("rect", {x: x - pad, y: y - pad, width: mark.widthFt * view.scale + 2 * pad, height: mark.heightFt * view.scale + 2 * pad,
    class: "highlight", rx: 2, "data-part": highlight.replace(" ", "-")}));
}

/** Where the element stands whose tributary area is given: a member, a beam between two columns, or a column. */
export function highlighted(plan: Pick<BayPlanOptions, "spanFt" | "beamSpanFt" | "baysAlong" | "baysAcross" | "columnSideIn" | "highlight">, tributary: PlanRect): PlanRect {
  const {spanFt, beamSpanFt, baysAlong, baysAcross, highlight} = plan;
  const sideFt = plan.columnSideIn / 12;
  const [x, y] = [tributary.xFt + tributary.widthFt / 2, tributary.yFt + tributary.heightFt / 2];
  const nearest = (value: number, step: number, first: number, last: number) => Math.min(last, Math.max(first, Math.round(value / step))) * step;
  const edge = y < (spanFt * baysAcross) / 2 ? 0 : spanFt * baysAcross;
  const inner = nearest(y, spanFt, Math.min(1, baysAcross), Math.max(0, baysAcross - 1));
  const columnX = highlight === "corner column" || highlight === "girder end column" ? (x < (beamSpanFt * baysAlong) / 2 ? 0 : beamSpanFt * baysAlong) : nearest(x, beamSpanFt, 0, baysAlong);
  if (highlight === "deck") return tributary;
  if (highlight === "edge beam" || highlight === "interior girder") {
    const from = Math.min(baysAlong - 1, Math.max(0, Math.floor(x / beamSpanFt))) * beamSpanFt;
    return {xFt: from, yFt: (highlight === "edge beam" ? edge : inner) - 0.5, widthFt: beamSpanFt, heightFt: 1};
  }
  const sideColumn = highlight === "edge column" && (columnX === 0 || columnX === beamSpanFt * baysAlong);
  const columnY = highlight === "interior column" || highlight === "girder end column" ? inner : sideColumn ? nearest(y, spanFt, 0, baysAcross) : edge;
  return {xFt: columnX - sideFt / 2, yFt: columnY - sideFt / 2, widthFt: sideFt, heightFt: sideFt};
}

function drawStrings(sheet: Sheet, view: View, {spanFt, beamSpanFt, baysAlong, baysAcross, tributary, influence}: BayPlanOptions): void {
  const written = (lengthFt: number) => feetAndInches(lengthFt * 12, 2);
  const column = sheet.textPx * 0.6;
  const southEdge = view.y(0) + column;
  const westEdge = view.x(0) - column;
  const east = (values: readonly number[], edge: number): Stop[] => values.map((x) => ({at: view.x(x), edge}));
  const north = (values: readonly number[], edge: number): Stop[] => values.map((y) => ({at: view.y(y), edge}));
  const steps = (count: number, step: number) => Array.from({length: count + 1}, (_, i) => i * step);
  chain(sheet, {axis: "x", outward: 1, line: southEdge + 16, stops: east(steps(baysAlong, beamSpanFt), southEdge), texts: perBay(baysAlong, written(beamSpanFt), beamSpanFt * view.scale)});
  if (baysAlong > 1) chain(sheet, {axis: "x", outward: 1, line: southEdge + 50, stops: east([0, beamSpanFt * baysAlong], southEdge), texts: [{value: written(beamSpanFt * baysAlong)}]});
  chain(sheet, {axis: "y", outward: -1, line: westEdge - 12, stops: north(steps(baysAcross, spanFt), westEdge), texts: Array.from({length: baysAcross}, () => ({value: written(spanFt)}))});
  const northEdge = view.y(spanFt * baysAcross) - column;
  const eastEdge = view.x(beamSpanFt * baysAlong) + column;
  const areas = [[tributary, "tributary"], [influence, "influence"]] as const;
  const second = tributary ? chainDepth("y", [{value: written(tributary.heightFt), name: "tributary"}], sheet.textPx) + 10 : 0;
  areas.forEach(([rect, name], i) => {
    if (!rect) return;
    const start = tributary && i === 1 ? 1 : 0;
    const upper = northEdge - 14 - start * (chainDepth("x", [{value: "", name}], sheet.textPx) + 5);
    const outer = eastEdge + 12 + start * second;
    // An extension line would run through the first string's text where both areas end alike.
    const clear = (stops: readonly Stop[], others: readonly Stop[], edge: number) =>
      stops.map((stop) => (start && others.some((other) => Math.abs(other.at - stop.at) < 30) ? {...stop, edge} : stop));
    const inner = tributary ?? rect;
    const [acrossInner, upInner] = [east([inner.xFt, inner.xFt + inner.widthFt], northEdge), north([inner.yFt, inner.yFt + inner.heightFt], eastEdge)];
    chain(sheet, {axis: "x", outward: -1, line: upper, texts: [{value: written(rect.widthFt), name, part: name}],
      stops: clear(east([rect.xFt, rect.xFt + rect.widthFt], northEdge), acrossInner, upper + 8)});
    chain(sheet, {axis: "y", outward: 1, line: outer, texts: [{value: written(rect.heightFt), name, part: name}],
      stops: clear(north([rect.yFt, rect.yFt + rect.heightFt], eastEdge), upInner, outer - 8)});
  });
}

/** The same text under every bay, or under the first alone where bays are too narrow to repeat it. */
function perBay(count: number, value: string, bayPx: number): ({value: string} | null)[] {
  return Array.from({length: count}, (_, i) => (i === 0 || bayPx > 64 ? {value} : {value: ""}));
}

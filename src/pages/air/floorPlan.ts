import type {AirPlan} from "../../lib/air/plan.js";
import type {AirPart} from "../../lib/air/parts.js";
import type {OtherMain} from "../../lib/air/zone.js";
import {jointsFt} from "../../lib/deck/pieces.js";
import {feetAndInches} from "../../lib/units.js";
import {chain, chainDepth} from "../../components/drawings/dimension.js";
import {northArrow, scaleBar} from "../../components/drawings/marks.js";
import {createSheet, line, textSize, type DrawingOptions} from "../../components/drawings/sheet.js";
import {el, pathOfBox} from "../../components/drawings/svg.js";
import {fitView} from "../../components/drawings/view.js";
import {airKey, airKeyHeight, drawAir, type KeyRow} from "./airMarks.js";

/** What {@link floorPlan} draws. */
export interface FloorPlanOptions extends DrawingOptions {
  readonly plan: AirPlan;
  readonly parts: readonly AirPart[];
  readonly others: readonly OtherMain[];
  readonly memberWidthFt: number;
  readonly key: readonly KeyRow[];
}

/** One floor from above: frame, the first main with its feeders and risers, and where the others lie. True to scale. */
export function floorPlan(options: FloorPlanOptions): SVGSVGElement {
  const {plan, parts, others, widthPx, memberWidthFt} = options;
  const {frame, zone, trunk} = plan;
  const textPx = textSize(widthPx);
  const edge = -frame.edgeCenterIn;
  const right = chainDepth("y", [{value: "00'-00\"", name: "to the ducts"}], textPx) + 26;
  const {view, heightPx: drawn} = fitView({
    world: {x0: 0, y0: -edge, x1: frame.lengthIn, y1: frame.widthIn + edge}, widthPx, mostHeightPx: options.mostHeightPx ?? 560,
    margins: {left: 20 + chainDepth("y", [{value: "000'-0\""}], textPx), right, top: 24, bottom: 62 + 36},
  });
  const heightPx = drawn + airKeyHeight(options.key, widthPx, textPx) + 4;
  const sheet = createSheet({
    view, kind: "air-plan", widthPx, heightPx, label: options.label ?? "Plan of one floor with its ducts",
    description: options.description ?? `The main runs along the building, ${plan.supply.length} feeders leave it; it serves ${feetAndInches(zone.lengthIn)} by ${feetAndInches(zone.y1In - zone.y0In)} of floor.`,
  });
  const rect = (x0: number, y0: number, x1: number, y1: number) => pathOfBox(view.x(x0), view.y(y1), view.x(x1), view.y(y0));
  sheet.body.append(el("path", {d: rect(0, 0, frame.lengthIn, frame.widthIn), class: "deck-ground"}));
  for (const x of jointsFt(frame.lengthIn / 12, memberWidthFt)) sheet.body.append(el("path", {d: `M${view.x(12 * x)} ${view.y(0)}V${view.y(frame.widthIn)}`, class: "joint", "data-part": "joint"}));
  const half = Math.max(6, 1.6 / view.scale);
  for (const y of [frame.edgeCenterIn, frame.widthIn - frame.edgeCenterIn]) for (const side of [-half, half]) line(sheet.body, "seen", [view.at(0, y + side), view.at(frame.lengthIn, y + side)], {"data-part": "beam"});
  for (const {centerIn, webHalfIn} of frame.girders) for (const side of [-webHalfIn, webHalfIn]) line(sheet.body, "hidden", [view.at(0, centerIn + side), view.at(frame.lengthIn, centerIn + side)], {"data-part": "girder"});
  for (const {x0In, x1In, y0In, y1In} of others) {
    // The trunk of another main lies in its stretch as the first lies in its own, mirrored where the stretch is across the middle.
    const mirrored = y0In > zone.y0In + 1e-6 && plan.trunk.row === zone.firstRow;
    const at = mirrored ? [y1In - (trunk.y1In - zone.y0In), y1In - (trunk.y0In - zone.y0In)] as const : [y0In + trunk.y0In - zone.y0In, y0In + trunk.y1In - zone.y0In] as const;
    sheet.body.append(el("path", {d: rect(x0In + 12, at[0], x1In - 12, at[1]), class: "other-main"}));
  }
  for (const part of parts) drawAir(sheet, view, {part, x0: part.x0In, x1: part.x1In, y0: part.y0In, y1: part.y1In}, /riser/.test(part.kind) ? "cut" : "seen");
  const size = Math.max(2 * frame.columnHalfIn * view.scale, 5);
  const lines = [frame.edgeCenterIn, ...frame.girders.map(({centerIn}) => centerIn), frame.widthIn - frame.edgeCenterIn];
  for (const x of frame.columnsAlongIn) for (const y of lines) sheet.body.append(el("rect", {x: view.x(x) - size / 2, y: view.y(y) - size / 2, width: size, height: size, class: "column", "data-part": "column"}));
  sheet.lines.append(el("path", {d: rect(0, zone.y0In, zone.lengthIn, zone.y1In), class: "zone"}));
  const south = view.y(-edge);
  const [west, east] = [view.x(0) - 6, view.x(frame.lengthIn) + 6];
  const all = zone.lengthIn >= frame.lengthIn - 1e-6;
  chain(sheet, {axis: "x", outward: 1, line: south + 12, stops: [0, zone.lengthIn, ...(all ? [] : [frame.lengthIn])].map((x) => ({at: view.x(x), edge: south})),
    texts: [{value: feetAndInches(zone.lengthIn), name: "one main"}, ...(all ? [] : [{value: feetAndInches(frame.lengthIn - zone.lengthIn), name: "other mains"}])]});
  const rowLines = [0, ...frame.girders.map(({centerIn}) => centerIn), frame.widthIn];
  chain(sheet, {axis: "y", outward: -1, line: west - 10, stops: rowLines.map((y) => ({at: view.y(y), edge: west})), texts: rowLines.slice(1).map((y, i) => ({value: feetAndInches(y - (rowLines[i] as number))}))});
  chain(sheet, {axis: "y", outward: 1, line: east + 10, stops: [0, trunk.y0In, trunk.y1In].map((y) => ({at: view.y(y), edge: east})),
    texts: [{value: feetAndInches(trunk.y0In), name: "to the ducts"}, {value: feetAndInches(trunk.y1In - trunk.y0In), name: "ducts", part: "main"}]});
  scaleBar(sheet, [view.x(0), drawn - 14], view.scale);
  northArrow(sheet, [widthPx - 22, drawn - 22], 11);
  airKey(sheet, drawn, options.key);
  return sheet.svg;
}

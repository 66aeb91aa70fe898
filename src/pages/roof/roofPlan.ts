import type {FallLine} from "../../lib/roof/fallPlan.js";
import {feetAndInches} from "../../lib/units.js";
import {chain, chainDepth} from "../../components/drawings/dimension.js";
import {scaleBar} from "../../components/drawings/marks.js";
import {createSheet, line, text, textSize, type DrawingOptions} from "../../components/drawings/sheet.js";
import {el, pathOfBox, px} from "../../components/drawings/svg.js";
import {fitView} from "../../components/drawings/view.js";

/** What {@link roofPlan} draws; sizes in ft. */
export interface RoofPlanOptions extends DrawingOptions {
  readonly lengthFt: number;
  readonly widthFt: number;
  readonly spanFt: number;
  readonly beamSpanFt: number;
  readonly memberWidthFt: number;
  readonly lines: readonly FallLine[];
  readonly drainsPerLine: number;
}

/** The roof from above: deck members, drains along their lines, the lines from which water parts, and the way that it runs. */
export function roofPlan(options: RoofPlanOptions): SVGSVGElement {
  const {lengthFt, widthFt, spanFt, beamSpanFt, memberWidthFt, lines, drainsPerLine, widthPx} = options;
  const textPx = textSize(widthPx);
  const {view, heightPx} = fitView({
    world: {x0: 0, y0: 0, x1: lengthFt, y1: widthFt}, widthPx, mostHeightPx: options.mostHeightPx ?? 460,
    margins: {top: 18, right: 20, bottom: 78, left: 22 + chainDepth("y", [{value: "000'-0\""}], textPx)},
  });
  const drains = lines.filter((one) => one.drains);
  const sheet = createSheet({
    view, kind: "roof-plan", widthPx, heightPx, label: options.label ?? "The roof from above, with its drains",
    description: options.description ?? `${drains.length} lines of drains, ${drainsPerLine} in each, on a roof of ${feetAndInches(lengthFt * 12)} by ${feetAndInches(widthFt * 12)}.`,
  });
  sheet.body.append(el("path", {d: pathOfBox(view.x(0), view.y(widthFt), view.x(lengthFt), view.y(0)), class: "deck-ground", "data-part": "deck"}));
  for (let x = memberWidthFt; x < lengthFt - 0.01; x += memberWidthFt) line(sheet.body, "thin", [view.at(x, 0), view.at(x, widthFt)], {class: "joint"});
  for (let i = 1; i * spanFt < widthFt - 0.01; i++) line(sheet.body, "hidden", [view.at(0, i * spanFt), view.at(lengthFt, i * spanFt)]);
  for (let i = 0; i * beamSpanFt <= lengthFt + 0.01; i++) {
    for (let j = 0; j * spanFt <= widthFt + 0.01; j++) {
      const [x, y] = view.at(i * beamSpanFt, j * spanFt);
      sheet.body.append(el("rect", {x: x - 2.5, y: y - 2.5, width: 5, height: 5, class: "column-mark"}));
    }
  }
  line(sheet.lines, "seen", [view.at(0, 0), view.at(lengthFt, 0), view.at(lengthFt, widthFt), view.at(0, widthFt), view.at(0, 0)]);
  for (const {atFt} of lines.filter((one) => !one.drains)) line(sheet.lines, "center", [view.at(0, atFt), view.at(lengthFt, atFt)], {"data-part": "ridge"});
  const alongFt = Array.from({length: drainsPerLine}, (_, i) => ((i + 0.5) * lengthFt) / drainsPerLine);
  for (const {atFt} of drains) {
    // A drain at an edge stands just inside it.
    const inside = Math.min(widthFt - 7 / view.scale, Math.max(7 / view.scale, atFt));
    for (const xFt of alongFt) {
      const [x, y] = view.at(xFt, inside);
      sheet.lines.append(el("circle", {cx: x, cy: y, r: 5, class: "drain", "data-part": "drain"}), el("path", {d: `M${px(x - 3)} ${px(y)}h6M${px(x)} ${px(y - 3)}v6`, class: "drain-cross"}));
    }
  }
  const tops = lines.some((one) => !one.drains) ? lines.filter((one) => !one.drains).map(({atFt}) => atFt) : drains.slice(1).map(({atFt}, i) => (atFt + (drains[i] as FallLine).atFt) / 2);
  for (const top of tops) {
    const near = [Math.max(...drains.map(({atFt}) => atFt).filter((at) => at < top)), Math.min(...drains.map(({atFt}) => atFt).filter((at) => at > top))].filter(Number.isFinite);
    for (const drain of near) for (const xFt of alongFt) {
      const [x, y0] = view.at(xFt, top + (drain - top) * 0.3);
      const y1 = view.y(top + (drain - top) * 0.72);
      const sign = Math.sign(y1 - y0);
      sheet.lines.append(el("path", {d: `M${px(x)} ${px(y0)}L${px(x)} ${px(y1)}M${px(x - 4)} ${px(y1 - sign * 6)}L${px(x)} ${px(y1)}L${px(x + 4)} ${px(y1 - sign * 6)}`, class: "fall-arrow", "data-part": "fall"}));
    }
  }
  chain(sheet, {axis: "x", outward: 1, line: view.y(0) + 18, stops: [0, lengthFt].map((at) => ({at: view.x(at), edge: view.y(0)})), texts: [{value: feetAndInches(lengthFt * 12)}]});
  chain(sheet, {axis: "y", outward: -1, line: view.x(0) - 12, stops: [0, widthFt].map((at) => ({at: view.y(at), edge: view.x(0)})), texts: [{value: feetAndInches(widthFt * 12)}]});
  const end = scaleBar(sheet, [view.x(0), heightPx - 14], view.scale / 12);
  text(sheet.notes, sheet, [end + 14, heightPx - 14], widthPx < 480 ? "dash and dot: water parts" : "dash and dot: water parts here; dashed: girders", {kind: "small", anchor: "start"});
  return sheet.svg;
}

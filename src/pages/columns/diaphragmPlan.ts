import {decimals, feetAndInches} from "../../lib/units.js";
import {chain, chainDepth} from "../../components/drawings/dimension.js";
import {scaleBar} from "../../components/drawings/marks.js";
import {createSheet, line, text, textSize, type DrawingOptions} from "../../components/drawings/sheet.js";
import {el, pathOfBox, pathThrough, type PaperPoint} from "../../components/drawings/svg.js";
import {fitView} from "../../components/drawings/view.js";

/** What {@link diaphragmPlan} draws. */
export interface DiaphragmPlanOptions extends DrawingOptions {
  readonly lengthFt: number;
  readonly depthFt: number;
  readonly lateralPlf: number;
  readonly chordKip: number;
  readonly endShearKip: number;
}

/** The floor from above as a beam that lies flat: load along one side, a pull along the other, walls at its ends. */
export function diaphragmPlan(options: DiaphragmPlanOptions): SVGSVGElement {
  const {lengthFt, depthFt, lateralPlf, chordKip, endShearKip, widthPx, bare = false} = options;
  const textPx = textSize(widthPx);
  const depthText = [{value: feetAndInches(depthFt * 12), name: "depth"}];
  const arrowPx = 26;
  const {view, heightPx} = fitView({
    world: {x0: 0, y0: 0, x1: lengthFt, y1: depthFt}, widthPx, mostHeightPx: options.mostHeightPx ?? Math.max(300, widthPx * 0.55),
    margins: bare ? {left: 2, right: 2, top: 2, bottom: 2} : {left: 22, right: 34 + chainDepth("y", depthText, textPx), top: arrowPx + textPx * 2.2, bottom: 96},
  });
  const sheet = createSheet({
    view, kind: "diaphragm", widthPx, heightPx, bare, label: options.label ?? "Plan of the floor as a beam on its side between its end walls",
    description: options.description ?? `The stated lateral load pushes the long side; the far edge is in tension at ${decimals(chordKip, 1)} kip, and each end wall resists ${decimals(endShearKip, 1)} kip.`,
  });
  const box = (x0: number, y0: number, x1: number, y1: number) => pathOfBox(view.x(x0), view.y(y1), view.x(x1), view.y(y0));
  sheet.body.append(el("path", {d: box(0, 0, lengthFt, depthFt), class: "deck-ground", "data-part": "floor"}));
  line(sheet.body, "cut", [view.at(0, 0), view.at(lengthFt, 0)], {"data-part": "chord"});
  line(sheet.body, "cut", [view.at(0, depthFt), view.at(lengthFt, depthFt)], {"data-part": "chord"});
  for (const x of [0, lengthFt]) sheet.body.append(el("path", {d: pathOfBox(view.x(x) - 3.5, view.y(depthFt), view.x(x) + 3.5, view.y(0)), class: "wall", "data-part": "wall"}));
  const shares = Array.from({length: 41}, (_, i) => i / 40);
  const rise = Math.min(0.3 * depthFt, 30);
  const bent = shares.map((share): PaperPoint => view.at(share * lengthFt, depthFt / 2 - 4 * share * (1 - share) * rise));
  line(sheet.lines, "hidden", bent, {"data-part": "floor"});
  if (bare) return sheet.svg;
  const count = Math.max(5, Math.min(15, Math.round((lengthFt * view.scale) / 40)));
  for (let i = 0; i <= count; i++) {
    const x = view.x((i * lengthFt) / count);
    const to = view.y(depthFt) - 3;
    sheet.lines.append(el("path", {d: `${pathThrough([[x, to - arrowPx], [x, to]])}M${x - 4} ${to - 6}L${x} ${to}L${x + 4} ${to - 6}`, class: "load-path", style: "stroke-width: 1.6", "data-part": "lateral"}));
  }
  text(sheet.notes, sheet, [view.x(lengthFt / 2), view.y(depthFt) - arrowPx - textPx * 1.1], `${decimals(lateralPlf)} plf, stated`, {part: "lateral", className: "on-load"});
  text(sheet.notes, sheet, [view.x(lengthFt / 2), view.y(0) - textPx], `chord pulls ${decimals(chordKip, 1)} kip`, {part: "chord", plate: true});
  text(sheet.notes, sheet, [view.x(0) + 10, view.y(depthFt * 0.78)], [`${decimals(endShearKip, 1)} kip`, "each wall"], {part: "wall", anchor: "start"});
  chain(sheet, {axis: "x", outward: 1, line: view.y(0) + 20, stops: [0, lengthFt].map((x) => ({at: view.x(x), edge: view.y(0)})), texts: [{value: feetAndInches(lengthFt * 12), name: "between the end walls"}]});
  chain(sheet, {axis: "y", outward: 1, line: view.x(lengthFt) + 18, stops: [0, depthFt].map((y) => ({at: view.y(y), edge: view.x(lengthFt)})), texts: depthText});
  scaleBar(sheet, [22, heightPx - 12], view.scale / 12);
  return sheet.svg;
}

import {decimals, feetAndInches} from "../../lib/units.js";
import {chain, chainDepth} from "../../components/drawings/dimension.js";
import {leader, scaleBar} from "../../components/drawings/marks.js";
import {textWidth} from "../../components/drawings/placement.js";
import {person} from "../../components/drawings/people.js";
import {concrete, createSheet, line, text, textSize, type DrawingOptions} from "../../components/drawings/sheet.js";
import {el, pathOfBox} from "../../components/drawings/svg.js";
import {fitView} from "../../components/drawings/view.js";

/** What {@link footingSection} draws, inches. */
export interface FootingSectionOptions extends DrawingOptions {
  readonly sideIn: number;
  readonly thicknessIn: number;
  readonly effectiveDepthIn: number;
  readonly columnSideIn: number;
  /** Bars each way, in2, and soil pressure, psf. */
  readonly steelIn2: number;
  readonly pressurePsf: number;
}

const COLUMN_SHOWN_IN = 54;
const ARROW_IN = 20;

/** The footing cut through its middle, with the column on it and the soil pressure under it. True to scale. */
export function footingSection(options: FootingSectionOptions): SVGSVGElement {
  const {sideIn, thicknessIn, columnSideIn, effectiveDepthIn, widthPx, bare = false} = options;
  const textPx = textSize(widthPx);
  const half = sideIn / 2;
  const thick = [{value: feetAndInches(thicknessIn), name: "thick"}];
  const {view, heightPx} = fitView({
    world: {x0: -half - 40, y0: -thicknessIn - ARROW_IN - 4, x1: half + 6, y1: 70}, widthPx, mostHeightPx: options.mostHeightPx ?? Math.max(300, widthPx * 0.5),
    margins: bare ? {left: 1, right: 1, top: 1, bottom: 1} : {left: 10, right: 26 + chainDepth("y", thick, textPx), top: 10, bottom: 62 + textPx * 1.5},
  });
  const sheet = createSheet({
    view, kind: "footing", widthPx, heightPx, bare, label: options.label ?? `Section of the footing, ${feetAndInches(sideIn)} square and ${feetAndInches(thicknessIn)} thick`,
    description: options.description ?? `${decimals(options.steelIn2, 1)} square inches of bars each way near its bottom; the soil pressure is ${decimals(options.pressurePsf)} psf.`,
  });
  const box = (x0: number, y0: number, x1: number, y1: number) => pathOfBox(view.x(x0), view.y(y1), view.x(x1), view.y(y0));
  sheet.body.append(el("path", {d: box(view.world.x0, view.world.y0, view.world.x1, 0), class: "soil", "data-part": "soil"}));
  line(sheet.body, "seen", [view.at(view.world.x0, 0), view.at(view.world.x1, 0)], {class: "ground-line"});
  concrete(sheet, "site", box(-half, -thicknessIn, half, 0), {"data-part": "footing"});
  concrete(sheet, "plant", box(-columnSideIn / 2, 0, columnSideIn / 2, COLUMN_SHOWN_IN), {"data-part": "column"});
  line(sheet.body, "steel", [view.at(-half + 3, -effectiveDepthIn), view.at(half - 3, -effectiveDepthIn)], {"data-part": "footing-bars"});
  person(sheet, view, -half - 22, 0);
  const count = 9;
  for (let i = 0; i < count; i++) {
    const x = -half + ((i + 0.5) * sideIn) / count;
    const [px, from] = view.at(x, -thicknessIn - ARROW_IN);
    const to = view.y(-thicknessIn) + 2;
    sheet.lines.append(el("path", {d: `M${px} ${from}L${px} ${to}M${px - 4} ${to + 6}L${px} ${to}L${px + 4} ${to + 6}`, class: "load-path", "data-part": "soil", "stroke-width": 1.6, style: "stroke-width: 1.6"}));
  }
  if (bare) return sheet.svg;
  text(sheet.notes, sheet, [view.x(0), view.y(-thicknessIn - ARROW_IN) + textPx * 0.9], `${decimals(options.pressurePsf)} psf`, {part: "soil", className: "on-load"});
  const bars = `${decimals(options.steelIn2, 1)} in² each way`;
  const noteX = Math.min(view.x(half * 0.6) + 14, widthPx - textWidth(bars, textPx) - 18);
  leader(sheet, view.at(half * 0.6, -effectiveDepthIn), [noteX, view.y(26)], bars, {side: "right", part: "footing-bars"});
  chain(sheet, {axis: "y", outward: 1, line: view.x(view.world.x1) + 12, stops: [-thicknessIn, 0].map((y) => ({at: view.y(y), edge: view.x(half)})), texts: thick});
  chain(sheet, {axis: "x", outward: 1, line: view.y(view.world.y0) + textPx * 1.4 + 8, stops: [-half, half].map((x) => ({at: view.x(x), edge: view.y(-thicknessIn)})),
    texts: [{value: feetAndInches(sideIn), name: "square", part: "footing"}]});
  scaleBar(sheet, [12, heightPx - 10], view.scale);
  return sheet.svg;
}

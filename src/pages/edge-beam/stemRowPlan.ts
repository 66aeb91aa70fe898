import {fromLineIn} from "../../lib/beams/stemRow.js";
import {standsOnBeam} from "../../lib/beams/stemRowCheck.js";
import {feetAndInches} from "../../lib/units.js";
import {chain} from "../../components/drawings/dimension.js";
import {createSheet, line, text, textSize, type DrawingOptions, type Sheet} from "../../components/drawings/sheet.js";
import {el, pathOfBox} from "../../components/drawings/svg.js";

/** What {@link stemRowPlan} draws. */
export interface StemRowPlanOptions extends DrawingOptions {
  /** Column line to column line, ft. */
  readonly spanFt: number;
  /** Side of the columns that the beams' ends are cut for, and a column line to a beam's end, in. */
  readonly columnSideIn: number;
  readonly beamEndIn: number;
  /** The beam across: its web, and how far the ledge stands out toward the floor; 0 without one, in. */
  readonly webWidthIn: number;
  readonly ledgeIn: number;
  readonly stemWidthIn: number;
  /** The web's middle to the end of the stems, in; positive toward the floor. */
  readonly stemEndIn: number;
  /** Bays that are drawn, with their stems, ft from the left column line. */
  readonly bays: readonly {readonly bay: number; readonly placesFt: readonly number[]}[];
  /** The stem nearest to a column line. */
  readonly nearest: {readonly bay: number; readonly atFt: number; readonly fromLineIn: number};
  /** From a column line to the middle of a stem that just stands on its beam, in; nearer ones are marked. */
  readonly neededIn: number;
}

/** Length of the stems that is shown beyond the beam, in. */
const STEM_SHOWN_IN = 26;

/**
 * The beams of a row of bays from above, one under the other: columns, the beam between them cut a joint short, and the
 * stems of the deck that bear on it. True to scale.
 */
export function stemRowPlan(options: StemRowPlanOptions): SVGSVGElement {
  const {spanFt, columnSideIn, webWidthIn, ledgeIn, bays, nearest, widthPx, bare = false} = options;
  const textPx = textSize(widthPx);
  const marginPx = bare ? 2 : 14;
  const scale = (widthPx - 2 * marginPx) / (12 * spanFt + columnSideIn);
  const above = Math.max(columnSideIn, webWidthIn) / 2;
  const below = Math.max(columnSideIn / 2, webWidthIn / 2 + ledgeIn + STEM_SHOWN_IN);
  const labelPx = bare ? 0 : textPx * 1.7;
  const dimensionPx = bare ? 0 : textPx * 2.6;
  const rowPx = labelPx + (above + below) * scale + 10;
  const heightOf = (bay: number) => rowPx + (bay === nearest.bay ? dimensionPx : 0);
  const heightPx = Math.ceil(bays.reduce((sum, {bay}) => sum + heightOf(bay), 4));
  const sheet = createSheet({
    kind: "stem-row", widthPx, heightPx, bare, label: options.label ?? "Where the deck's stems stand on the beams, from above",
    description: options.description ?? bays.map(({bay, placesFt}) => `Bay ${bay}: ${placesFt.length} stems, at ${placesFt.map((atFt) => feetAndInches(12 * atFt)).join(", ")}.`).join(" "),
  });
  const x = (atIn: number) => marginPx + (atIn + columnSideIn / 2) * scale;
  let top = 2;
  for (const {bay, placesFt} of bays) {
    const middle = top + labelPx + above * scale;
    if (!bare) text(sheet.notes, sheet, [marginPx, top + textPx * 0.8], `Bay ${bay}`, {anchor: "start", kind: "small"});
    drawBeam(sheet, options, x, middle, scale);
    for (const atFt of placesFt) drawStem(sheet, options, x(12 * atFt), middle, scale, !standsOnBeam(fromLineIn(options, atFt), options.neededIn));
    if (!bare && bay === nearest.bay) {
      const line = nearest.atFt < spanFt / 2 ? 0 : 12 * spanFt;
      const edge = middle + below * scale;
      const [from, to] = [x(line), x(12 * nearest.atFt)].sort((a, b) => a - b) as [number, number];
      if (to - from > 0.5) chain(sheet, {axis: "x", outward: 1, line: edge + 10, stops: [from, to].map((at) => ({at, edge})), texts: [{value: feetAndInches(nearest.fromLineIn), part: "stem"}]});
    }
    top += heightOf(bay);
  }
  return sheet.svg;
}

function drawBeam(sheet: Sheet, {spanFt, columnSideIn, beamEndIn, webWidthIn, ledgeIn}: StemRowPlanOptions, x: (atIn: number) => number, middle: number, scale: number): void {
  const [from, to] = [x(beamEndIn), x(12 * spanFt - beamEndIn)];
  const [outer, web, edge] = [-webWidthIn / 2, webWidthIn / 2, webWidthIn / 2 + ledgeIn].map((acrossIn) => middle + acrossIn * scale) as [number, number, number];
  sheet.body.append(el("path", {d: pathOfBox(from, outer, to, edge), class: "concrete-plant is-seen", "data-part": "ledge"}));
  if (ledgeIn > 0) line(sheet.body, "seen", [[from, web], [to, web]]);
  for (const atIn of [0, 12 * spanFt]) {
    const half = (columnSideIn / 2) * scale;
    sheet.body.append(el("rect", {x: x(atIn) - half, y: middle - half, width: 2 * half, height: 2 * half, class: "column", "data-part": "column"}));
    if (!sheet.bare) line(sheet.lines, "center", [[x(atIn), middle - half - 4], [x(atIn), middle + half + 4]]);
  }
}

function drawStem(sheet: Sheet, {stemWidthIn, stemEndIn, webWidthIn, ledgeIn}: StemRowPlanOptions, at: number, middle: number, scale: number, off: boolean): void {
  const width = Math.max(1.5, stemWidthIn * scale);
  const from = middle + stemEndIn * scale;
  const to = middle + (webWidthIn / 2 + ledgeIn + STEM_SHOWN_IN) * scale;
  sheet.body.append(el("rect", {x: at - width / 2, y: from, width, height: to - from, class: off ? "load-patch" : "concrete-plant is-cut", "data-part": "stem"}));
}

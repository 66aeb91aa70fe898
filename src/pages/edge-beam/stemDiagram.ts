import {decimals, feetAndInches} from "../../lib/units.js";
import {arrow} from "./arrows.js";
import {chain} from "../../components/drawings/dimension.js";
import {support} from "../../components/drawings/elevation.js";
import {createSheet, line, text, textSize, type DrawingOptions} from "../../components/drawings/sheet.js";
import {drawRow, type AlongSpan} from "../../components/drawings/spanDiagram.js";
import type {PaperPoint} from "../../components/drawings/svg.js";

/** What {@link stemDiagram} draws. */
export interface StemDiagramOptions extends DrawingOptions {
  readonly spanFt: number;
  /** Stems on the span, and the load of each. */
  readonly stems: readonly {readonly atFt: number; readonly loadKip: number}[];
  readonly momentKipFt: AlongSpan;
  readonly shearKip: AlongSpan;
  readonly torsionKipFt: AlongSpan;
  /** The same under the deck's load spread evenly. */
  readonly even: {readonly momentKipFt: AlongSpan; readonly shearKip: AlongSpan; readonly torsionKipFt: AlongSpan};
}

/** A beam under its stems: their loads as arrows where they stand, then shear, moment and torsion along it. */
export function stemDiagram(options: StemDiagramOptions): SVGSVGElement {
  const {spanFt, stems, widthPx, even} = options;
  const textPx = textSize(widthPx);
  const rowPx = Math.min(110, Math.max(64, widthPx * 0.13));
  const side = 20;
  const arrowPx = 34;
  const beamY = textPx * 1.6 + arrowPx + 10;
  const first = beamY + 30 + textPx * 3.4;
  const gap = textPx * 5;
  const heightPx = Math.ceil(first + 3 * rowPx + 2 * gap + 70 + 1.6 * textPx);
  const greatest = (values: AlongSpan) => Math.max(...values.map(({value}) => Math.abs(value)));
  const sheet = createSheet({
    kind: "stems", widthPx, heightPx, label: options.label ?? "The beam under its stems: shear, moment and twist",
    description: options.description ?? `${stems.length} stems${stems[0] ? ` of ${decimals(stems[0].loadKip, 1)} kip each` : ""} on ${feetAndInches(spanFt * 12)}: shear up to ${decimals(greatest(options.shearKip), 1)} kip, moment up to ${decimals(greatest(options.momentKipFt))} kip-ft, twist up to ${decimals(greatest(options.torsionKipFt))} kip-ft.`,
  });
  const x = (share: number) => side + share * (widthPx - 2 * side);
  // Feet along the beam from its left support, for what moves a stem; the rows below have scales of their own.
  sheet.svg.dataset["handleFrame"] = [x(0), beamY - arrowPx / 2, (x(1) - x(0)) / spanFt, -1].join(" ");
  line(sheet.lines, "cut", [[x(0), beamY], [x(1), beamY]]);
  for (const share of [0, 1]) support(sheet, x(share), beamY + 2);
  for (const {atFt} of stems) arrow(sheet, [x(atFt / spanFt), beamY - arrowPx - 4], [x(atFt / spanFt), beamY - 3], "load");
  // The beam's own weight as a low row of strokes.
  const own: PaperPoint[] = [[x(0), beamY - 9], [x(1), beamY - 9]];
  line(sheet.lines, "thin", own);
  if (stems[0]) text(sheet.notes, sheet, [x(0), textPx * 0.8], `${decimals(stems[0].loadKip, 1)} kip from each stem; the low line is the beam's own weight`, {anchor: "start", kind: "small"});
  drawRow(sheet, x, options.shearKip, first, rowPx, "Shear", (value) => `${decimals(Math.abs(value), 1)} kip`, "shear", even.shearKip);
  drawRow(sheet, x, options.momentKipFt, first + rowPx + gap, rowPx, "Moment", (value) => `${decimals(value)} kip-ft`, "moment", even.momentKipFt);
  drawRow(sheet, x, options.torsionKipFt, first + 2 * (rowPx + gap), rowPx, "Torsion", (value) => `${decimals(Math.abs(value))} kip-ft`, "shear", even.torsionKipFt);
  const edge = first + 3 * rowPx + 2 * gap + textPx * 1.7;
  chain(sheet, {axis: "x", outward: 1, line: edge + 16, stops: [0, 1].map((share) => ({at: x(share), edge})), texts: [{value: feetAndInches(spanFt * 12), name: "span"}]});
  return sheet.svg;
}

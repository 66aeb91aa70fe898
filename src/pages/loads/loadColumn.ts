import type {FloorLoadParts, LoadPart} from "../../lib/loads/loadParts.js";
import {decimals} from "../../lib/units.js";
import {spread, textWidth, wrap} from "../../components/drawings/placement.js";
import {createSheet, line, text, textSize, type DrawingOptions, type Sheet} from "../../components/drawings/sheet.js";
import {el, pathOfBox} from "../../components/drawings/svg.js";
import {roomHeightPx} from "../../components/drawings/room.js";

/** What {@link loadColumn} draws. */
export interface LoadColumnOptions extends DrawingOptions {
  readonly parts: FloorLoadParts;
}

/** The load on one square foot as two columns to one scale: the structure itself, and what it carries. */
export function loadColumn({parts, widthPx, mostHeightPx = 460, ...options}: LoadColumnOptions): SVGSVGElement {
  const textPx = textSize(widthPx);
  const heightPx = Math.min(mostHeightPx, roomHeightPx());
  const [top, base] = [textPx * 3.2, heightPx - textPx * 2.6];
  const most = Math.max(parts.ownPsf, parts.carriedPsf, 1);
  const scale = (base - top) / most;
  const sheet = createSheet({
    kind: "load", widthPx, heightPx, bare: false,
    label: options.label ?? `Load on one square foot: ${decimals(parts.carriedPsf)} psf besides the structure's own ${decimals(parts.ownPsf)} psf`,
    description: options.description ?? [...parts.carried, ...parts.own].map((part) => `${part.name} ${decimals(part.loadPsf, 1)} psf`).join(", "),
  });
  const narrow = widthPx < 480;
  const ownX = narrow ? 0 : Math.max(4, widthPx * 0.04);
  const columnPx = narrow ? 58 : Math.min(120, widthPx * 0.2);
  // On a narrow sheet the structure's names stand in its column, which is wide enough for them.
  const ownPx = narrow ? textWidth("deck member 000.0", textPx) * 1.1 + 10 : columnPx;
  const ownLabels = narrow ? 16 : Math.max(...parts.own.map((part) => textWidth(`${part.name} 00.0`, textPx)), 40) * 1.12 + 36;
  const carriedX = ownX + ownPx + ownLabels;
  column(sheet, parts.own, parts.ownPsf, "the structure", [ownX, ownPx], [top, base], scale, narrow);
  column(sheet, parts.carried, parts.carriedPsf, "what it carries", [carriedX, columnPx], [top, base], scale);
  line(sheet.lines, "cut", [[0, base], [widthPx, base]]);
  text(sheet.notes, sheet, [0, heightPx - textPx * 0.9], "Heights are to one scale.", {kind: "small", anchor: "start"});
  return sheet.svg;
}

function column(
  sheet: Sheet, parts: readonly LoadPart[], totalPsf: number, name: string,
  [x, columnPx]: readonly [number, number], [top, base]: readonly [number, number], scale: number, inside = false,
): void {
  const size = sheet.textPx;
  const edges: number[] = [base];
  for (const part of parts) edges.push((edges.at(-1) as number) - part.loadPsf * scale);
  parts.forEach((part, i) => {
    const [low, high] = [edges[i] as number, edges[i + 1] as number];
    sheet.body.append(el("path", {d: pathOfBox(x, high, x + columnPx, low), ...look(sheet, part), "data-part": part.kind}));
  });
  const head = edges.at(-1) as number;
  text(sheet.notes, sheet, [x, head - size * 2], `${decimals(totalPsf, totalPsf < 20 ? 1 : 0)} psf`, {kind: "name", anchor: "start", className: "text-title"});
  text(sheet.notes, sheet, [x, head - size * 0.85], name, {kind: "small", anchor: "start"});
  // Thin layers lie close; their names keep a line's distance and a thin line leads to each.
  const centers = parts.map((_, i) => ((edges[i] as number) + (edges[i + 1] as number)) / 2);
  const rising = [...centers].reverse();
  const labels = parts.map((part) => labelOf(sheet, part, sheet.widthPx - (inside ? x : x + columnPx + 24)));
  const places = spread(rising, labels.map((lines) => lines.length * size * 1.2).reverse(), top - size, base - size * 0.25, 1).reverse();
  parts.forEach((part, i) => {
    if (inside) {
      const node = text(sheet.notes, sheet, [x + columnPx / 2, centers[i] as number], (labels[i] as string[]).join(" "), {kind: "name", part: part.kind});
      node.style.stroke = part.kind === "topping" ? "var(--d-site)" : "var(--d-plant)";
      return;
    }
    const y = places[i] as number;
    line(sheet.lines, "thin", [[x + columnPx, centers[i] as number], [x + columnPx + 8, centers[i] as number], [x + columnPx + 16, y], [x + columnPx + 20, y]]);
    const lines = labels[i] as string[];
    // Each line is a text of its own, as the second of one text would be quieter.
    lines.forEach((words, at) => text(sheet.notes, sheet, [x + columnPx + 24, y + (at - (lines.length - 1) / 2) * size * 1.15], words, {kind: "name", anchor: "start", part: part.kind}));
  });
}

/** Name and weight, in as many lines as they need in the room that there is. */
function labelOf(sheet: Sheet, part: LoadPart, roomPx: number): string[] {
  const weight = decimals(part.loadPsf, part.loadPsf % 1 === 0 ? 0 : 1);
  // Widths are counted from letters, not measured: a line keeps a little room for what they miss.
  return wrap(`${part.name}\u00a0${weight}`, sheet.textPx, roomPx / 1.06);
}

function look(sheet: Sheet, part: LoadPart): {class: string; style?: string} {
  switch (part.kind) {
    case "member":
      return {class: "concrete-plant is-cut", style: `fill: ${sheet.pattern("plant")}`};
    case "topping":
      return {class: "concrete-site is-cut", style: `fill: ${sheet.pattern("site")}`};
    case "layer":
      return {class: "load-layer"};
    case "partitions":
      return {class: "load-partitions", style: `fill: ${sheet.pattern("tributary")}`};
    default:
      return {class: "load-live"};
  }
}

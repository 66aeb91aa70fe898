import type {LimitName} from "../../lib/deck/limits.js";
import {failsOf, groups, isMade, memberOf, type SchemeRow} from "../../lib/schemes/schemeRow.js";
import {LIMIT_LOOKS} from "../../components/charts/limits.js";
import {LEAST_WIDTH_PX} from "../../components/charts/marks.js";
import {svgElement, uniqueId} from "../../components/dom.js";
import {textWidth} from "../../components/drawings/placement.js";
import {spanPx} from "./widthMeasures.js";

const ROW_PX = 22;
const GAP_PX = 20;
const FONT_PX = 12;

/** Spans next to each other at which a word is the same. */
export interface Stretch {
  readonly fromFt: number;
  readonly toFt: number;
  readonly word: string;
}

/** Rows of one kind in stretches of one word, narrowest first; an empty word makes none. */
export function stretches(rows: readonly SchemeRow[], wordOf: (row: SchemeRow) => string): Stretch[] {
  const found: {fromFt: number; toFt: number; word: string}[] = [];
  for (const row of [...rows].sort((a, b) => a.span_ft - b.span_ft)) {
    const word = wordOf(row);
    if (word === "") continue;
    const last = found.at(-1);
    if (last?.word === word && row.span_ft - last.toFt <= 1 + 1e-9) last.toFt = row.span_ft;
    else found.push({fromFt: row.span_ft, toFt: row.span_ft, word});
  }
  return found;
}

/** Which member each kind takes over the spans, what governs its deck, and where checks fail: hatched; blank where the kind ends. */
export function ribbon(rows: readonly SchemeRow[], kinds: readonly string[], widthPx: number): SVGSVGElement {
  const width = Math.max(LEAST_WIDTH_PX, widthPx);
  const heightPx = kinds.length * (GAP_PX + 2 * ROW_PX + 6) + 4;
  const hatch = uniqueId("fails");
  const svg = svgElement("svg", {class: "width-ribbon", width, height: heightPx, viewBox: `0 0 ${width} ${heightPx}`, role: "img", "aria-label": ribbonWords(rows, kinds)},
    svgElement("defs", {}, svgElement("pattern", {id: hatch, width: 6, height: 6, patternUnits: "userSpaceOnUse", patternTransform: "rotate(45)"}, svgElement("path", {d: "M0 0V6", class: "width-hatch"}))));
  const byKind = groups(rows, ({kind}) => kind);
  kinds.forEach((kind, i) => {
    const top = i * (GAP_PX + 2 * ROW_PX + 6) + GAP_PX;
    const list = (byKind.get(kind) ?? []).filter(isMade);
    svg.append(svgElement("text", {x: 0, y: top - 6, "font-size": FONT_PX + 1, class: "width-kind"}, kind));
    band(svg, stretches(list, memberOf), top, widthPx, "width-member", (word) => word);
    band(svg, stretches(list, ({deck_governs}) => deck_governs), top + ROW_PX, widthPx, "width-limit", (word, room) => (textWidth(word, FONT_PX) < room ? word : LIMIT_LOOKS[word as LimitName]?.letter ?? ""));
    for (const {fromFt, toFt} of stretches(list, (row) => (failsOf(row).length > 0 ? "fails" : ""))) {
      const [x0, x1] = [spanPx(fromFt - 0.5, widthPx), spanPx(toFt + 0.5, widthPx)];
      svg.append(svgElement("rect", {x: x0, y: top + 2 * ROW_PX + 1, width: x1 - x0, height: 5, fill: `url(#${hatch})`, class: "width-fails"}));
    }
  });
  return svg;
}

function band(svg: SVGSVGElement, list: readonly Stretch[], top: number, widthPx: number, name: string, wordOf: (word: string, roomPx: number) => string): void {
  list.forEach(({fromFt, toFt, word}, i) => {
    const [x0, x1] = [spanPx(fromFt - 0.5, widthPx), spanPx(toFt + 0.5, widthPx)];
    const room = x1 - x0 - 6;
    const words = wordOf(word, room);
    svg.append(svgElement("rect", {x: x0, y: top, width: x1 - x0, height: ROW_PX - 2, class: `${name}${i % 2 ? " is-odd" : ""}`}, svgElement("title", {}, `${word}, ${fromFt} to ${toFt} ft`)));
    if (words !== "" && textWidth(words, FONT_PX) <= room) svg.append(svgElement("text", {x: (x0 + x1) / 2, y: top + ROW_PX / 2 + 3, "text-anchor": "middle", "font-size": FONT_PX}, words));
  });
}

/** The ribbon read aloud. */
function ribbonWords(rows: readonly SchemeRow[], kinds: readonly string[]): string {
  const byKind = groups(rows, ({kind}) => kind);
  return kinds.map((kind) => {
    const list = (byKind.get(kind) ?? []).filter(isMade);
    const told = (wordOf: (row: SchemeRow) => string) => stretches(list, wordOf).map(({fromFt, toFt, word}) => `${word} from ${fromFt} to ${toFt} ft`).join(", ");
    return list.length === 0 ? `${kind}: none` : `${kind}: ${told(memberOf)}. Governing: ${told(({deck_governs}) => deck_governs)}.`;
  }).join(" ");
}

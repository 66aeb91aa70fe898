import {element, svgElement} from "./dom.js";
import {projectorScale} from "./drawings/room.js";
import {SAVE_ICON} from "./icons.js";
import {nameBy} from "./veil.js";
import {formatForEquation} from "./worked/numbers.js";

/** The numbers of a figure as a table. */
export interface FigureTable {
  readonly columns: readonly string[];
  readonly rows: readonly (readonly (string | number | Node)[])[];
}

export interface FigureOptions {
  /** What the figure shows, in a sentence or two; may hold live numbers. */
  readonly caption: string | Node;
  /** The finding: "Past 58 ft tension governs, not strength". */
  readonly title?: string | Node;
  /** Breaks out of the column of text where there is room. */
  readonly wide?: boolean;
  /** Its numbers, folded away below it. */
  readonly table?: FigureTable | Node;
}

/** A picture with its finding as a title, a caption, and its numbers on request. */
export function figure(node: Node, {caption, title, wide = false, table}: FigureOptions): HTMLElement {
  nameCharts(node, () => [title, caption].map(textOf).filter(Boolean).join(". "));
  const numbers = table ? element("div", {class: "scrolls", tabindex: 0, role: "region"}, table instanceof Node ? table : dataTable(table)) : null;
  if (numbers) nameBy(numbers, () => `The numbers of: ${title === undefined ? "the picture above" : textOf(title)}`);
  return element(
    "figure",
    {class: wide ? "wide" : undefined},
    title ? element("p", {class: "figure-title"}, ...(typeof title === "string" ? unbroken(title) : [title])) : null,
    element("div", {class: "figure-body"}, node),
    element("figcaption", {}, caption),
    drawn(node) ? saveButton(title ?? caption) : null,
    numbers ? element("details", {class: "figure-table"}, element("summary", {}, "The numbers"), numbers) : null,
  );
}

const drawn = (node: Node): boolean => node instanceof Element && (node.matches("svg") || node.querySelector("svg") !== null);

/** Opens the choice of files; what it does comes with the first press, for the whole page (`share/figureMenu.ts`). */
function saveButton(of: string | Node): HTMLButtonElement {
  const picture = svgElement("svg", {viewBox: "0 0 16 16", width: 16, height: 16, "aria-hidden": "true"}, svgElement("path", {d: SAVE_ICON}));
  const button = element("button", {type: "button", class: "figure-save icon-button no-print", title: "Save this picture"}, picture);
  nameBy(button, () => `Save the picture: ${textOf(of)}`);
  return button;
}

/**
 * A chart is one picture to those who listen, named by its finding. The names that the plotting library gives to the
 * groups inside say nothing to them and are not allowed there.
 */
function nameCharts(node: Node, name: () => string): void {
  if (!(node instanceof Element)) return;
  const charts = node.matches('svg[class^="plot-"]') ? [node] : [...node.querySelectorAll('svg[class^="plot-"]')];
  for (const chart of charts) {
    chart.setAttribute("role", "img");
    if (!chart.hasAttribute("aria-label")) nameBy(chart, name);
    for (const group of chart.querySelectorAll("g[aria-label]")) {
      // What a mark is stays known to the page.
      group.setAttribute("data-mark", group.getAttribute("aria-label") ?? "");
      group.removeAttribute("aria-label");
    }
  }
}

function textOf(words: string | Node | undefined): string {
  return (words instanceof Node ? (words.textContent ?? "") : (words ?? "")).replace(/\.\s*$/, "");
}

/** A number with its unit, which a line of a title does not part. */
const MEASURE = /(\d[\d.,]*\s(?:in|ft|psf|plf|psi|ksi|kips?|kip-ft|lb|kg|%|degrees)\b)/;

/** A text in pieces of which each number stands with its unit on one line. */
function unbroken(text: string): (string | Node)[] {
  return text.split(MEASURE).map((piece, i) => (i % 2 === 1 ? element("span", {class: "unbroken-number"}, piece) : piece)).filter((piece) => piece !== "");
}

/** A number, or the words of one alone: 1,234.5 or 28 %. */
const isNumber = (cell: unknown): boolean => typeof cell === "number" || (typeof cell === "string" && /^[-\u2212]?\d[\d,]*(\.\d+)?( ?%)?$/.test(cell));

/** A plain table; columns of numbers are set to the right. */
export function dataTable({columns, rows}: FigureTable): HTMLTableElement {
  const numeric = columns.map((_, index) => rows.some((row) => row[index] !== "") && rows.every((row) => row[index] === "" || isNumber(row[index])));
  const side = (index: number) => (numeric[index] ? "numeric" : undefined);
  return element(
    "table",
    {},
    element("thead", {}, element("tr", {}, ...columns.map((name, index) => element("th", {scope: "col", class: side(index)}, name)))),
    element("tbody", {}, ...rows.map((row) => element("tr", {}, ...row.map((cell, index) => element("td", {class: side(index)}, typeof cell === "number" ? formatForEquation(cell) : cell))))),
  );
}

/** Widths of `.beside`, which the style sets in the same measures. */
const MEASURE_REM = 36;
const CONTROLS_REM = 17 + 2.5;
const BESIDE_FROM_REM = 46;

/**
 * The width of a picture in pixels, from the page's own `width`: in the column of text, beside its controls, or wide. A
 * picture made for its width keeps its type legible on a phone, where one that is shrunk does not.
 */
export function pictureWidth(width: number, place: "column" | "beside" | "wide" = "column"): number {
  const rem = rootFontPx();
  const given = Math.max(width, LEAST_WIDTH_PX);
  // On a projector the style enlarges a picture with its type, beside whose words each stands that is not wide.
  const times = projectorScale();
  if (place === "wide") return Math.floor(given / times);
  if (place === "column" && times === 1) return Math.floor(Math.min(given, MEASURE_REM * rem));
  return Math.floor((given >= BESIDE_FROM_REM * rem ? given - CONTROLS_REM * rem : given) / times);
}

/** Narrowest picture, px; before a page is laid out its width reads as naught. */
const LEAST_WIDTH_PX = 240;

let rootFont: number | undefined;

/** The page's font size, asked for once and after a change of the window: the question makes the browser lay out the page. */
function rootFontPx(): number {
  if (rootFont === undefined) {
    rootFont = Number.parseFloat(getComputedStyle(document.documentElement).fontSize) || 16;
    window.addEventListener("resize", () => (rootFont = undefined), {once: true});
  }
  return rootFont;
}

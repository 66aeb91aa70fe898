import type {QuantityName} from "../../lib/quantities.js";
import {quantity} from "../quantity.js";
import {textWidth} from "./placement.js";
import {stipple, type PatternName} from "./patterns.js";
import {el, pathThrough, px, type Attributes, type PaperPoint} from "./svg.js";
import {projectorScale} from "./room.js";
import {frameText, type View} from "./view.js";

/** What every drawing takes. */
export interface DrawingOptions {
  /** Width at which the page will show the drawing, px: text is readable at that width and lines have their weight. */
  readonly widthPx: number;
  /** Draw the thing alone: no dimensions, names or patterns. */
  readonly bare?: boolean;
  /** Height that the drawing must not pass, px. */
  readonly mostHeightPx?: number;
  /** Scale that the drawing must not pass, pixels for an inch: for drawings side by side at one scale. */
  readonly mostPxPerIn?: number | undefined;
  /** Name for those who do not see it; derived from the parameters if left out. */
  readonly label?: string;
  /** Longer description; derived from the parameters if left out. */
  readonly description?: string;
}

/** A sheet of paper to draw on. Later layers lie above earlier ones. */
export interface Sheet {
  readonly svg: SVGSVGElement;
  readonly widthPx: number;
  readonly heightPx: number;
  readonly bare: boolean;
  /** Size of dimension text, px. */
  readonly textPx: number;
  readonly body: SVGGElement;
  readonly lines: SVGGElement;
  readonly notes: SVGGElement;
  /** The `fill` of a pattern, made at its first use. */
  readonly pattern: (name: PatternName) => string;
  /** A clip path's reference for path data. */
  readonly clip: (d: string) => string;
}

// Two drawings of one page must not share the name of a pattern.
let sheets = 0;

/** What an empty sheet is made of. */
interface SheetOptions {
  readonly kind: string;
  readonly widthPx: number;
  readonly heightPx: number;
  readonly label: string;
  readonly description: string;
  readonly bare?: boolean;
  /** Where the world stands on it, where there is one world: noted on the drawing, so that another of the same can be laid over it. */
  readonly view?: View;
}

/** An empty sheet. */
export function createSheet(options: SheetOptions): Sheet {
  const {kind, widthPx, heightPx, label, description, bare = false} = options;
  const id = `drawing-${++sheets}`;
  const defs = el("defs");
  const [body, lines, notes] = ["body", "lines", "notes"].map((name) => el("g", {class: `drawing-${name}`})) as [SVGGElement, SVGGElement, SVGGElement];
  const svg = el("svg", {
    class: `drawing drawing-${kind}${bare ? " is-bare" : ""}`, viewBox: `0 0 ${px(widthPx)} ${px(heightPx)}`,
    width: widthPx, height: heightPx, role: "img", "aria-label": label,
  }, el("desc", {}, description), defs, body, lines, notes);
  svg.style.setProperty("--text", `${textSize(widthPx)}px`);
  if (options.view) svg.dataset["frame"] = frameText(options.view);
  const made = new Map<string, string>();
  const pattern = (name: PatternName) => {
    if (!made.has(name)) {
      defs.append(stipple(name, `${id}-${name}`));
      made.set(name, `url(#${id}-${name})`);
    }
    return made.get(name) as string;
  };
  let clips = 0;
  const clip = (d: string) => {
    const name = `${id}-clip-${++clips}`;
    defs.append(el("clipPath", {id: name}, el("path", {d, "clip-rule": "evenodd"})));
    return `url(#${name})`;
  };
  return {svg, widthPx, heightPx, bare, textPx: textSize(widthPx), body, lines, notes, pattern, clip};
}

/** Size of text for a drawing of a width, px: larger on a wide sheet, which is looked at from further away. */
export function textSize(widthPx: number): number {
  if (projectorScale() > 1) return 14;
  return widthPx < 480 ? 12 : widthPx < 900 ? 13 : 14;
}

/** How a line is drawn: `cut` heavy, `seen` light, `hidden` dashed, `center` dash and dot, `thin` for what annotates. */
export type LineKind = "cut" | "seen" | "hidden" | "center" | "thin" | "steel" | "accent";

/** A line through points. */
export function line(parent: Element, kind: LineKind, points: readonly PaperPoint[], attributes: Attributes = {}): SVGPathElement {
  const path = el("path", {...attributes, d: pathThrough(points), class: `line-${kind} ${attributes.class ?? ""}`.trim()});
  parent.append(path);
  return path;
}

/** Concrete: `plant` is cast in the plant, `site` on the job; cut through, or seen beyond. */
export function concrete(sheet: Sheet, kind: "plant" | "site", d: string, attributes: Attributes = {}, how: "cut" | "seen" = "cut"): void {
  const patterned = !sheet.bare && how === "cut";
  sheet.body.append(el("path", {
    "data-part": kind === "plant" ? "precast" : "topping", ...attributes, d, "fill-rule": "evenodd",
    class: `concrete-${kind} is-${how}`, style: patterned ? `fill: ${sheet.pattern(kind)}` : undefined,
  }));
}

/** A text; several lines stand below one another, `y` is the middle of the block. A plate hides the lines that it crosses. */
export function text(
  parent: Element, sheet: Sheet, [x, y]: PaperPoint, content: string | readonly string[],
  options: {anchor?: "start" | "middle" | "end"; kind?: "value" | "name" | "small"; part?: string | undefined; className?: string; plate?: boolean; quantity?: QuantityName | undefined} = {},
): SVGTextElement {
  const lines = typeof content === "string" ? [content] : content;
  const {anchor = "middle", kind = "value", part, className = "", plate = false, quantity: shows} = options;
  const node = el("text", {class: `text-${kind} ${className}`.trim(), "text-anchor": anchor, "data-part": part});
  const size = sheet.textPx;
  const first = y - ((lines.length - 1) * size * LINE_HEIGHT) / 2 + size * 0.35;
  // The second line is quieter: a value and the name of what it measures. The first alone shows the quantity.
  lines.forEach((content, i) => {
    const row = el("tspan", {x, y: first + i * size * LINE_HEIGHT, class: i > 0 ? "text-second" : undefined}, content);
    node.append(i === 0 && shows ? quantity(shows, row) : row);
  });
  if (plate) {
    const width = Math.max(...lines.map((one) => textWidth(one, size))) + 6;
    const left = anchor === "start" ? x - 3 : anchor === "end" ? x - width + 3 : x - width / 2;
    parent.append(el("rect", {x: left, y: y - (lines.length * size * LINE_HEIGHT) / 2, width, height: lines.length * size * LINE_HEIGHT, class: "plate"}));
  }
  parent.append(node);
  return node;
}

/** Distance between lines of text as a multiple of its size. */
export const LINE_HEIGHT = 1.15;

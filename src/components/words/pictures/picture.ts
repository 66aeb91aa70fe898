import type {Ring} from "../../../lib/sections/polygon.js";
import {createSheet, text, type Sheet} from "../../drawings/sheet.js";
import {el, pathOfBox, pathThrough, px} from "../../drawings/svg.js";
import {fitView, type View, type WorldBox} from "../../drawings/view.js";

const WIDTH_PX = 320;
const MOST_HEIGHT_PX = 150;

/** A small drawing for a word: the thing, and one or two names. */
export interface Small {
  readonly sheet: Sheet;
  readonly view: View;
}

/**
 * A small drawing of a part of the world, true to scale unless heights are stretched.
 *
 * @param label - what it shows, for those who do not see it
 */
export function small(label: string, world: WorldBox, draw: (at: Small) => void, {heightFactor = 1, mostHeightPx = MOST_HEIGHT_PX} = {}): SVGSVGElement {
  const {view, heightPx} = fitView({world, widthPx: WIDTH_PX, margins: {top: 20, right: 12, bottom: 22, left: 12}, mostHeightPx, heightFactor});
  const sheet = createSheet({kind: "word", widthPx: WIDTH_PX, heightPx, label, description: label});
  draw({sheet, view});
  return sheet.svg;
}

/** Path data of an outline with its holes. */
export function outlineOf(view: View, rings: readonly Ring[]): string {
  return rings.map((ring) => pathThrough(ring.map(([x, y]) => view.at(x, y)), true)).join("");
}

/** Path data of a box of the world. */
export function boxOf(view: View, x0: number, y0: number, x1: number, y1: number): string {
  return pathOfBox(view.x(x0), view.y(y1), view.x(x1), view.y(y0));
}

/** What the word names, outlined. */
export function highlight({sheet}: Small, d: string): void {
  sheet.lines.append(el("path", {d, class: "highlight"}));
}

/** A name at a place of the world, moved by some pixels. */
export function name({sheet, view}: Small, x: number, y: number, words: string, {dx = 0, dy = 0, anchor = "middle" as "start" | "middle" | "end"} = {}): void {
  text(sheet.notes, sheet, [view.x(x) + dx, view.y(y) + dy], words, {kind: "name", anchor});
}

/** Strands at places of the world. */
export function dots({sheet, view}: Small, places: readonly (readonly [number, number])[], radius = 2): void {
  for (const [x, y] of places) sheet.body.append(el("circle", {cx: view.x(x), cy: view.y(y), r: radius, class: "strand"}));
}

/** An arrow from one place of the paper to another. */
export function arrow({sheet}: Small, [x0, y0]: readonly [number, number], [x1, y1]: readonly [number, number], kind = "line-accent"): void {
  const turn = Math.atan2(y1 - y0, x1 - x0);
  const barb = (by: number) => `${px(x1 - 7 * Math.cos(turn + by))} ${px(y1 - 7 * Math.sin(turn + by))}`;
  sheet.lines.append(el("path", {d: `M${px(x0)} ${px(y0)}L${px(x1)} ${px(y1)}M${barb(0.5)}L${px(x1)} ${px(y1)}L${barb(-0.5)}`, class: kind}));
}

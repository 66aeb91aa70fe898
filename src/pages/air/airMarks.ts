import {PART_NAMES, type AirPart, type PartKind} from "../../lib/air/parts.js";
import {textWidth} from "../../components/drawings/placement.js";
import {line, text, type Sheet} from "../../components/drawings/sheet.js";
import {el, pathOfBox} from "../../components/drawings/svg.js";
import type {View} from "../../components/drawings/view.js";

/** A part as a drawing sees it: a rectangle in the plane of the drawing, in. */
export interface Seen {
  readonly part: AirPart;
  readonly x0: number;
  readonly y0: number;
  readonly x1: number;
  readonly y1: number;
}

const RETURNS: readonly PartKind[] = ["return main", "return feeder", "return riser", "return space"];

/** Whether a part carries air back. */
export const isReturn = ({kind, id}: AirPart): boolean => RETURNS.includes(kind) || (kind === "collar" && id.startsWith("return"));

/** The name under which all drawings light a part; a collar goes with the main that it joins. */
export const nameOf = (part: AirPart): string => (part.kind === "collar" && isReturn(part) ? PART_NAMES["return main"] : PART_NAMES[part.kind]);

/** Draws a duct: supply tinted, with both diagonals where it is cut; return hatched, with one. */
export function drawAir(sheet: Sheet, view: View, {part, x0, y0, x1, y1}: Seen, how: "cut" | "seen"): void {
  const back = isReturn(part);
  const open = part.kind === "return space";
  sheet.body.append(el("path", {
    d: pathOfBox(view.x(x0), view.y(y1), view.x(x1), view.y(y0)), "data-part": nameOf(part),
    class: ["duct", how === "seen" ? "is-seen" : "", back ? "is-return" : "", open ? "is-open" : ""].filter(Boolean).join(" "),
    style: back ? `fill: ${sheet.pattern("return")}` : undefined,
  }));
  if (how === "seen" || open) return;
  line(sheet.body, "thin", [view.at(x0, y0), view.at(x1, y1)], {class: "duct-mark"});
  if (!back) line(sheet.body, "thin", [view.at(x0, y1), view.at(x1, y0)], {class: "duct-mark"});
}

/** What the marks mean, in rows from a place on; returns how high it is, px. */
export function airKey(sheet: Sheet, [left, top]: readonly [number, number], rows: readonly KeyRow[]): number {
  const [size, pitch] = [14, sheet.textPx * 1.5];
  let [x, y] = [left, top + pitch / 2];
  for (const {words, part, mark} of rows) {
    const wide = size + 6 + textWidth(words, sheet.textPx) + 18;
    if (x > left && x + wide > sheet.widthPx - 4) [x, y] = [left, y + pitch];
    const d = pathOfBox(x, y - size / 2, x + size, y + size / 2);
    if (mark === "zone" || mark === "other") sheet.body.append(el("path", {d, class: mark === "zone" ? "zone" : "other-main"}));
    else {
      const back = mark !== "supply";
      sheet.body.append(el("path", {d, "data-part": part, class: `duct${back ? " is-return" : ""}${mark === "space" ? " is-open" : ""}`, style: back ? `fill: ${sheet.pattern("return")}` : undefined}));
    }
    text(sheet.notes, sheet, [x + size + 6, y], words, {kind: "small", anchor: "start", part});
    x += wide;
  }
  return y + pitch / 2 - top;
}

/** A row of the key. */
export interface KeyRow {
  readonly words: string;
  readonly part?: string;
  readonly mark: "supply" | "return" | "space" | "zone" | "other";
}

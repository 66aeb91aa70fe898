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

/** Side of a mark in the key, and where its rows begin, px. */
const MARK_PX = 14;
const KEY_LEFT_PX = 8;

/** Where each row of the key stands, by the line that it is on, and how high the key is, px. */
function keyPlaces(rows: readonly KeyRow[], widthPx: number, textPx: number): {readonly places: readonly {x: number; line: number}[]; readonly heightPx: number} {
  let [x, line] = [KEY_LEFT_PX, 0];
  const places = rows.map(({words}) => {
    const wide = MARK_PX + 6 + textWidth(words, textPx) + 18;
    if (x > KEY_LEFT_PX && x + wide > widthPx - 4) [x, line] = [KEY_LEFT_PX, line + 1];
    const place = {x, line};
    x += wide;
    return place;
  });
  return {places, heightPx: (line + 1) * textPx * 1.5};
}

/** How high a key is on a sheet of a width, px. */
export const airKeyHeight = (rows: readonly KeyRow[], widthPx: number, textPx: number): number => keyPlaces(rows, widthPx, textPx).heightPx;

/** What the marks mean, in lines from a height on. */
export function airKey(sheet: Sheet, top: number, rows: readonly KeyRow[]): void {
  const {places} = keyPlaces(rows, sheet.widthPx, sheet.textPx);
  rows.forEach(({words, part, mark}, i) => {
    const {x, line: at} = places[i] as (typeof places)[number];
    const y = top + (at + 0.5) * sheet.textPx * 1.5;
    const d = pathOfBox(x, y - MARK_PX / 2, x + MARK_PX, y + MARK_PX / 2);
    if (mark === "zone" || mark === "other") sheet.body.append(el("path", {d, class: mark === "zone" ? "zone" : "other-main"}));
    else {
      const back = mark !== "supply";
      sheet.body.append(el("path", {d, "data-part": part, class: `duct${back ? " is-return" : ""}${mark === "space" ? " is-open" : ""}`, style: back ? `fill: ${sheet.pattern("return")}` : undefined}));
    }
    text(sheet.notes, sheet, [x + MARK_PX + 6, y], words, {kind: "small", anchor: "start", part});
  });
}

/** A row of the key. */
export interface KeyRow {
  readonly words: string;
  readonly part?: string;
  readonly mark: "supply" | "return" | "space" | "zone" | "other";
}

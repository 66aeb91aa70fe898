import type {QuantityName} from "../../lib/quantities.js";
import {placeTexts, textWidth} from "./placement.js";
import {LINE_HEIGHT, line, text, type Sheet} from "./sheet.js";
import {el, type PaperPoint} from "./svg.js";

/** The text of a dimension: a value, and under it what it measures. */
export interface DimensionText {
  readonly value: string;
  readonly name?: string;
  /** Part of the drawing that it belongs to. */
  readonly part?: string;
  /** Quantity of the design that the value is, where other pages tell it too. */
  readonly quantity?: QuantityName | undefined;
}

/** A tick of a dimension string: its place along the string, and where the thing ends that it measures, px. */
export interface Stop {
  readonly at: number;
  readonly edge: number;
}

/** A dimension string. */
export interface Chain {
  /** `x` measures lengths and runs across, `y` measures heights and runs up. */
  readonly axis: "x" | "y";
  /** Place of the string across its own direction, px. */
  readonly line: number;
  /** Side on which the text stands: away from the thing. 1 is right or down. */
  readonly outward: 1 | -1;
  readonly stops: readonly Stop[];
  /** One for each gap between neighboring stops; `null` where the gap is not dimensioned. */
  readonly texts: readonly (DimensionText | null)[];
  /** Bounds of the text along the string, px; the sheet's own if left out. */
  readonly bounds?: readonly [number, number];
}

const OVERRUN = 4;
const AWAY = 8;

/** Lines of a dimension's text. */
const rows = ({value, name}: DimensionText): string[] => (name ? [value, name] : [value]);

/** Room that a string across the paper's side needs beyond its line, px. */
export function chainDepth(axis: "x" | "y", texts: readonly (DimensionText | null)[], textPx: number): number {
  const given = texts.filter((one) => one !== null);
  if (given.length === 0) return 0;
  if (axis === "y") return AWAY + Math.max(...given.flatMap((one) => rows(one).map((row, i) => textWidth(row, i ? textPx * 0.9 : textPx))));
  return AWAY + Math.max(...given.map((one) => rows(one).length)) * textPx * LINE_HEIGHT;
}

/** Whether the texts of a string across the paper take a second row, where their gaps are too narrow for one. */
export function inTwoRows(texts: readonly DimensionText[], stopsPx: readonly number[], widthPx: number, textPx: number): boolean {
  const gaps = texts.map((one, i) => ({from: stopsPx[i] as number, to: stopsPx[i + 1] as number, size: Math.max(...rows(one).map((row) => textWidth(row, textPx)))}));
  return placeTexts(gaps, 2, widthPx - 2, 8, 2).some(({level}) => level === 1);
}

/**
 * Draws a dimension string: extension lines that stop short of the thing, oblique ticks, and text on the outer side
 * that moves along where its gap is too narrow. Returns how far the text reaches beyond the string, px.
 */
export function chain(sheet: Sheet, {axis, line: at, outward, stops, texts, bounds}: Chain): number {
  const group = el("g", {class: "dimension"});
  sheet.lines.append(group);
  const point = (along: number, across: number): PaperPoint => (axis === "x" ? [along, across] : [across, along]);
  const shown = texts.map((one, i) => ({one, from: stops[i] as Stop, to: stops[i + 1] as Stop})).filter(({one}) => one !== null) as
    {one: DimensionText; from: Stop; to: Stop}[];
  for (const stop of new Set(shown.flatMap(({from, to}) => [from, to]))) {
    const start = stop.edge + outward * 4;
    if ((at - start) * outward > 0) line(group, "thin", [point(stop.at, start), point(stop.at, at + outward * OVERRUN)], {class: "extension"});
    const [x, y] = point(stop.at, at);
    line(group, "thin", [[x - 4, y + 4], [x + 4, y - 4]], {class: "tick"});
  }
  for (const {from, to} of shown) line(group, "thin", [point(from.at, at), point(to.at, at)]);
  const {textPx} = sheet;
  const size = (one: DimensionText) => axis === "x"
    ? Math.max(...rows(one).map((row) => textWidth(row, textPx)))
    : rows(one).length * textPx * LINE_HEIGHT;
  const [low, high] = bounds ?? (axis === "x" ? [2, sheet.widthPx - 2] : [2, sheet.heightPx - 2]);
  const places = placeTexts(shown.map(({one, from, to}) => ({from: from.at, to: to.at, size: size(one)})), low, high, axis === "x" ? 8 : 3, axis === "x" ? 2 : 1);
  const rowPx = Math.max(...shown.map(({one}) => rows(one).length)) * textPx * LINE_HEIGHT + 3;
  places.forEach(({center, level, led}, i) => {
    const {one, from, to} = shown[i] as (typeof shown)[number];
    const count = rows(one).length;
    const thickness = count * textPx * LINE_HEIGHT;
    const shift = axis === "y" ? 0 : level * rowPx;
    const near = at + outward * (AWAY + shift);
    if (led) line(group, "thin", [point((from.at + to.at) / 2, at), point(center, near - outward * 2)], {class: "led"});
    const spot: PaperPoint = axis === "x" ? [center, near + (outward * thickness) / 2] : [near, center];
    // A text wider than its gap may stand on the extension line of a string farther out.
    const plate = axis === "x" && size(one) > to.at - from.at;
    text(sheet.notes, sheet, spot, rows(one), {part: one.part, quantity: one.quantity, ...(plate ? {plate} : {}), anchor: axis === "x" ? "middle" : outward > 0 ? "start" : "end"});
  });
  return chainDepth(axis, texts, textPx) + (axis === "x" && places.some(({level}) => level === 1) ? rowPx : 0);
}

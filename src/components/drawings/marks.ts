import {markScale} from "./oneScale.js";
import {textWidth} from "./placement.js";
import {line, text, type Sheet} from "./sheet.js";
import {el, px, type PaperPoint} from "./svg.js";

/** A note with a line that ends in a dot on what it names. The text starts where the line ends. */
export function leader(
  sheet: Sheet, target: PaperPoint, end: PaperPoint, content: string | readonly string[],
  options: {side?: "left" | "right"; part?: string; dot?: boolean} = {},
): void {
  const side = options.side ?? (end[0] >= target[0] ? "right" : "left");
  const sign = side === "right" ? 1 : -1;
  line(sheet.lines, "thin", [target, end, [end[0] + sign * 6, end[1]]], {class: "leader", "data-part": options.part});
  if (options.dot !== false) sheet.lines.append(el("circle", {cx: target[0], cy: target[1], r: 2, class: "leader-dot"}));
  text(sheet.notes, sheet, [end[0] + sign * 10, end[1]], content, {kind: "name", anchor: side === "right" ? "start" : "end", part: options.part});
}

/** A break line across a thing that goes on: a straight line with one jag, from one point to another (upright). */
export function breakLine(sheet: Sheet, x: number, y0: number, y1: number): void {
  const middle = (y0 + y1) / 2;
  line(sheet.lines, "seen", [[x, y0], [x, middle - 9], [x - 6, middle - 4], [x + 6, middle + 4], [x, middle + 9], [x, y1]], {class: "break"});
}

const BARS_IN = [3, 6, 12, 24, 48, 60, 120, 240, 360, 600, 1200];

/** The length that a scale bar shows, in: a round one that is at most `mostPx` long. */
export function scaleBarLength(pxPerIn: number, mostPx = 130): number {
  return BARS_IN.filter((lengthIn) => lengthIn * pxPerIn <= mostPx).at(-1) ?? (BARS_IN[0] as number);
}

/**
 * A scale bar of two halves, dark and light, with its left end at a place; notes the scale on the drawing. Returns where
 * its text ends, px.
 *
 * @param trueHeights - false where heights are drawn larger than lengths: such a drawing has no one scale
 */
export function scaleBar(sheet: Sheet, [x, y]: PaperPoint, pxPerIn: number, trueHeights = true): number {
  if (trueHeights) markScale(sheet, {scale: pxPerIn});
  const lengthIn = scaleBarLength(pxPerIn, Math.min(130, sheet.widthPx * 0.22));
  const half = (lengthIn * pxPerIn) / 2;
  sheet.lines.append(
    el("rect", {x, y: y - 2, width: half, height: 4, class: "scale-dark"}),
    el("rect", {x: x + half, y: y - 2, width: half, height: 4, class: "scale-light"}),
  );
  const name = lengthIn < 12 ? `${lengthIn} in` : `${lengthIn / 12} ft`;
  text(sheet.notes, sheet, [x + 2 * half + 6, y], name, {kind: "small", anchor: "start"});
  return x + 2 * half + 6 + textWidth(name, sheet.textPx);
}

/** A north arrow around a center. */
export function northArrow(sheet: Sheet, [x, y]: PaperPoint, radius = 13): void {
  sheet.lines.append(
    el("circle", {cx: x, cy: y, r: radius, class: "line-seen"}),
    el("path", {d: `M${px(x)} ${px(y - radius - 5)}L${px(x + radius * 0.45)} ${px(y + radius * 0.6)}L${px(x)} ${px(y + radius * 0.2)}Z`, class: "north-dark"}),
    el("path", {d: `M${px(x)} ${px(y - radius - 5)}L${px(x - radius * 0.45)} ${px(y + radius * 0.6)}L${px(x)} ${px(y + radius * 0.2)}Z`, class: "north-light"}),
  );
  text(sheet.notes, sheet, [x, y - radius - 13], "N", {kind: "name"});
}

/** The sun as a disc with rays. */
export function sun(sheet: Sheet, [x, y]: PaperPoint, radius = 8): void {
  const group = el("g", {class: "sun", "data-part": "sun"}, el("circle", {cx: x, cy: y, r: radius}));
  for (let i = 0; i < 12; i++) {
    const [c, s] = [Math.cos((i * Math.PI) / 6), Math.sin((i * Math.PI) / 6)];
    const [near, far] = [radius + 3, radius + (i % 2 ? 6 : 9)];
    group.append(el("path", {d: `M${px(x + near * c)} ${px(y + near * s)}L${px(x + far * c)} ${px(y + far * s)}`}));
  }
  sheet.lines.append(group);
}

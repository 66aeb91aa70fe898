import {decimals, feetAndInches, percent} from "../../lib/units.js";
import {chain, chainDepth} from "./dimension.js";
import {leader} from "./marks.js";
import {roundExaggeration, support} from "./elevation.js";
import {concrete, createSheet, line, text, textSize, type DrawingOptions} from "./sheet.js";
import {pathThrough, type PaperPoint} from "./svg.js";

/** What {@link toppingProfile} draws. */
export interface ToppingProfileOptions extends DrawingOptions {
  readonly spanFt: number;
  /** Rise of the deck's top above its supports and thickness of the topping on it, along the span (share 0 to 1). */
  readonly points: readonly {share: number; soffitRiseIn: number; thicknessIn: number}[];
  /** Topping where it is thinnest, in. */
  readonly minimumIn: number;
  /** Topping at the ends, in. */
  readonly endIn: number;
  /** Part of the deck's rise that the finished surface keeps, 0 to 1; 0, level, if left out. */
  readonly followShare?: number;
  /** Times that heights are drawn larger than lengths; a fitting one is chosen if left out. */
  readonly exaggeration?: number;
}

/** The topping along the span: flat or less arched on top than beneath. Heights exaggerated and said so. */
export function toppingProfile(options: ToppingProfileOptions): SVGSVGElement {
  const {spanFt, points, minimumIn, endIn, widthPx, followShare = 0, bare = false} = options;
  const textPx = textSize(widthPx);
  const spanIn = spanFt * 12;
  const side = bare ? 1 : 20 + chainDepth("y", [{value: "0.00 in", name: "at the end"}], textPx);
  const scale = (widthPx - 2 * side) / spanIn;
  const tops = points.map((point) => point.soffitRiseIn + point.thicknessIn);
  const topIn = Math.max(...tops);
  const lowIn = Math.min(0, ...points.map((point) => point.soffitRiseIn));
  const factor = options.exaggeration ?? Math.max(1, roundExaggeration((topIn - lowIn) * scale, bare ? 20 : 100));
  const scaleY = scale * factor;
  const topPx = bare ? 1 : 2.9 * textPx;
  const bandPx = bare ? 6 : 30;
  const x = (share: number) => side + share * spanIn * scale;
  const y = (heightIn: number) => topPx + (topIn - heightIn) * scaleY;
  const basePx = y(lowIn) + bandPx;
  const sheet = createSheet({
    kind: "topping", widthPx, bare, heightPx: Math.ceil(basePx + (bare ? 1 : 96)),
    label: options.label ?? "Topping along the span",
    description: options.description
      ?? `The topping is ${decimals(minimumIn, 2)} in where it is thinnest and ${decimals(endIn, 2)} in at the ends, over ${feetAndInches(spanIn)}.`,
  });
  const deckTop = points.map(({share, soffitRiseIn}): PaperPoint => [x(share), y(soffitRiseIn)]);
  const flat = points.map(({share}, i): PaperPoint => [x(share), y(tops[i] as number)]);
  const under = deckTop.map(([a, b]): PaperPoint => [a, b + bandPx]).reverse();
  concrete(sheet, "site", pathThrough([...flat, ...[...deckTop].reverse()], true));
  concrete(sheet, "plant", pathThrough([...deckTop, ...under], true));
  if (bare) return sheet.svg;
  for (const share of [0, 1]) support(sheet, x(share), y(points.at(share === 0 ? 0 : -1)?.soffitRiseIn ?? 0) + bandPx + 3);
  const thickness = (share: number, value: number, name: string, at: number, outward: 1 | -1) => {
    const point = nearest(points, share);
    chain(sheet, {axis: "y", outward, line: at, texts: [{value: `${decimals(value, 2)} in`, name, part: "topping"}],
      stops: [point.soffitRiseIn, point.soffitRiseIn + point.thicknessIn].map((heightIn) => ({at: y(heightIn), edge: x(share)}))});
  };
  thickness(0, endIn, "at the end", x(0) - 10, -1);
  thickness(1, endIn, "", x(1) + 10, 1);
  const thinnest = points.reduce((best, point) => (point.thicknessIn < best.thicknessIn - 1e-6 ? point : best), nearest(points, 0.5));
  leader(sheet, [x(thinnest.share), y(thinnest.soffitRiseIn + thinnest.thicknessIn / 2)], [x(thinnest.share) + 14, topPx - textPx * 1.3],
    `${decimals(minimumIn, 2)} in, thinnest`, {part: "topping", side: "right"});
  text(sheet.notes, sheet, [x(0), topPx - textPx * 1.3], followShare === 0 ? "finished flat" : followShare === 1 ? "follows the deck" : `follows ${percent(followShare)} of the camber`, {kind: "small", anchor: "start", part: "topping"});
  line(sheet.lines, "center", [[x(0), y(points[0]?.soffitRiseIn ?? 0)], [x(1), y(points.at(-1)?.soffitRiseIn ?? 0)]]);
  chain(sheet, {axis: "x", outward: 1, line: basePx + 32, texts: [{value: feetAndInches(spanIn), name: "span"}],
    stops: [0, 1].map((share) => ({at: x(share), edge: basePx + 14}))});
  text(sheet.notes, sheet, [widthPx < 480 ? 4 : x(0), sheet.heightPx - 9], `Heights drawn ${factor} times larger than lengths.`, {kind: "small", anchor: "start"});
  return sheet.svg;
}

function nearest<T extends {share: number}>(points: readonly T[], share: number): T {
  return points.reduce((best, point) => (Math.abs(point.share - share) < Math.abs(best.share - share) ? point : best));
}

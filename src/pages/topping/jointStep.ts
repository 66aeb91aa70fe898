import {decimals, feetAndInches} from "../../lib/units.js";
import {chain, chainDepth} from "../../components/drawings/dimension.js";
import {roundExaggeration, support} from "../../components/drawings/elevation.js";
import {leader} from "../../components/drawings/marks.js";
import {concrete, createSheet, line, text, textSize, type DrawingOptions} from "../../components/drawings/sheet.js";
import {pathThrough, type PaperPoint} from "../../components/drawings/svg.js";

/** What {@link jointStep} draws. */
export interface JointStepOptions extends DrawingOptions {
  readonly spanFt: number;
  /** Rise of the tops of two neighbors above their ends along the span, in, at evenly spaced places. */
  readonly lowerIn: readonly number[];
  readonly higherIn: readonly number[];
  readonly stepIn: number;
}

/** Depth that is drawn of each member below its top, px: it is not to scale, and the drawing says so. */
const BAND_PX = 30;

/** Two neighbors along their joint, one higher than the other; heights exaggerated and said so. */
export function jointStep(options: JointStepOptions): SVGSVGElement {
  const {spanFt, lowerIn, higherIn, stepIn, widthPx, bare = false} = options;
  const textPx = textSize(widthPx);
  const spanIn = spanFt * 12;
  const side = bare ? 1 : 16;
  const scale = (widthPx - 2 * side) / spanIn;
  const topIn = Math.max(...higherIn, ...lowerIn, 0);
  const lowIn = Math.min(...lowerIn, ...higherIn, 0);
  const factor = Math.max(1, roundExaggeration((topIn - lowIn) * scale, bare ? 20 : 100));
  const topPx = bare ? 1 : 2.9 * textPx;
  const x = (share: number) => side + share * spanIn * scale;
  const y = (heightIn: number) => topPx + (topIn - heightIn) * scale * factor;
  const basePx = y(lowIn) + BAND_PX;
  const spanText = [{value: feetAndInches(spanIn), name: "span"}];
  const sheet = createSheet({
    kind: "joint", widthPx, bare, heightPx: Math.ceil(basePx + (bare ? 1 : 32 + chainDepth("x", spanText, textPx) + 1.6 * textPx + 10)),
    label: options.label ?? "Two neighbors along their joint",
    description: options.description ?? `At midspan one is ${decimals(stepIn, 2)} in higher than the other; at the ends they are level, over ${feetAndInches(spanIn)}.`,
  });
  const tops = (rises: readonly number[]) => rises.map((rise, i): PaperPoint => [x(i / (rises.length - 1)), y(rise)]);
  const band = (rises: readonly number[]) => pathThrough([...tops(rises), ...tops(rises).map(([a, b]): PaperPoint => [a, b + BAND_PX]).reverse()], true);
  concrete(sheet, "plant", band(higherIn), {}, "seen");
  concrete(sheet, "plant", band(lowerIn), {});
  if (bare) return sheet.svg;
  for (const share of [0, 1]) support(sheet, x(share), y(0) + BAND_PX + 3);
  line(sheet.lines, "center", [[x(0), y(0)], [x(1), y(0)]]);
  line(sheet.lines, "accent", tops(higherIn));
  const middle = Math.floor(lowerIn.length / 2);
  const [low, high] = [lowerIn[middle] ?? 0, higherIn[middle] ?? 0];
  leader(sheet, [x(0.5), (y(low) + y(high)) / 2], [x(0.5) + 14, topPx - textPx * 1.3], `step of ${decimals(stepIn, 2)} in`, {part: "step", side: "right"});
  chain(sheet, {axis: "x", outward: 1, line: basePx + 32, texts: spanText, stops: [0, 1].map((share) => ({at: x(share), edge: basePx + 14}))});
  text(sheet.notes, sheet, [widthPx < 480 ? 4 : x(0), sheet.heightPx - 9], `Heights drawn ${factor} times larger than lengths.`, {kind: "small", anchor: "start"});
  return sheet.svg;
}

import type {Shape} from "../../lib/sections/shape.js";
import {pathOfRings, type StrandPoint} from "../../components/drawings/crossSection.js";
import {chain, chainDepth, type DimensionText} from "../../components/drawings/dimension.js";
import {breakLine, scaleBar} from "../../components/drawings/marks.js";
import {written} from "../../components/drawings/sectionDimensions.js";
import {concrete, createSheet, line, text, textSize, type DrawingOptions, type Sheet} from "../../components/drawings/sheet.js";
import {el, pathOfBox, px} from "../../components/drawings/svg.js";
import {fitView, type View} from "../../components/drawings/view.js";

/** What {@link fireDetail} draws. */
export interface FireDetailOptions extends DrawingOptions {
  readonly shape: Shape;
  readonly strands: readonly StrandPoint[];
  readonly toppingIn: number;
  /** Cover of the strands that counts, in. */
  readonly coverIn: number;
  /** What thickness and cover are good for, in words: "holds heat back 1.5 h". */
  readonly thicknessWords: string;
  readonly coverWords: string;
}

/** Half the width of the piece that is drawn of a tee, and of a plank, in. */
const HALF_TEE_IN = 20;
const HALF_PLANK_IN = 12;

/** One stem of a tee or a stretch of plank over a fire: what holds back the heat, and what keeps the strands cool. True to scale. */
export function fireDetail(options: FireDetailOptions): SVGSVGElement {
  const {shape, strands, toppingIn, coverIn, widthPx} = options;
  const textPx = textSize(widthPx);
  const stem = shape.family === "double tee";
  const middle = (stem ? shape.webCentersIn[0] : shape.webCentersIn[Math.floor(shape.webCentersIn.length / 2)]) ?? shape.widthIn / 2;
  const half = stem ? HALF_TEE_IN : HALF_PLANK_IN;
  const [x0, x1] = [Math.max(0, middle - half), Math.min(shape.widthIn, middle + half)];
  const topIn = shape.depthIn + toppingIn;
  const thickness: DimensionText = {value: written(stem ? (shape.dimensions.flangeIn ?? 0) + toppingIn : topIn), name: options.thicknessWords};
  const cover: DimensionText = {value: written(coverIn), name: options.coverWords};
  const fire = 50;
  const {view, heightPx} = fitView({
    world: {x0, y0: 0, x1, y1: topIn}, widthPx, mostHeightPx: options.mostHeightPx ?? 380,
    margins: {left: chainDepth("y", [cover], textPx) + 22, right: chainDepth("y", [thickness], textPx) + 22, top: textPx * 2.2, bottom: fire + 26},
  });
  const sheet = createSheet({
    view, kind: "fire", widthPx, heightPx,
    label: options.label ?? `A ${stem ? "stem" : "stretch"} of ${shape.designation} over a fire`,
    description: options.description ?? `Thickness ${thickness.value}: ${options.thicknessWords}. Cover of the strands ${cover.value}: ${options.coverWords}.`,
  });
  const clip = sheet.clip(pathOfBox(view.x(x0), view.y(topIn), view.x(x1), view.y(0)));
  if (toppingIn > 0) concrete(sheet, "site", pathOfBox(view.x(x0), view.y(topIn), view.x(x1), view.y(shape.depthIn)), {"clip-path": clip});
  concrete(sheet, "plant", pathOfRings(shape.rings, view), {"clip-path": clip});
  for (const {xIn, yIn} of strands) {
    if (xIn < x0 || xIn > x1) continue;
    sheet.body.append(el("circle", {cx: view.x(xIn), cy: view.y(yIn), r: Math.max(1.8, 0.25 * view.scale), class: "strand", "data-part": "strand"}));
  }
  const underIn = stem ? shape.depthIn - (shape.dimensions.flangeIn ?? 0) : 0;
  for (const x of [x0, x1]) if (x > 0 && x < shape.widthIn) breakLine(sheet, view.x(x), view.y(topIn) - 6, view.y(underIn) + 6);
  const stemHalf = stem ? shape.webWidthIn / shape.webCentersIn.length / 2 : half;
  chain(sheet, {
    axis: "y", outward: -1, line: view.x(x0) - 14, texts: [cover],
    stops: [{at: view.y(0), edge: view.x(middle - Math.min(stemHalf, middle - x0))}, {at: view.y(coverIn), edge: view.x(middle - Math.min(stemHalf, middle - x0))}],
  });
  chain(sheet, {
    axis: "y", outward: 1, line: view.x(x1) + 14, texts: [thickness],
    stops: [{at: view.y(underIn), edge: view.x(x1)}, {at: view.y(topIn), edge: view.x(x1)}],
  });
  if (stem) line(sheet.lines, "center", [[view.x(middle - stemHalf) - 8, view.y(coverIn)], [view.x(middle + stemHalf) + 8, view.y(coverIn)]]);
  text(sheet.notes, sheet, [view.x((x0 + x1) / 2), textPx * 0.9], "the room above stays cool", {kind: "name"});
  flames(sheet, view, x0, x1, view.y(0) + 8);
  scaleBar(sheet, [Math.max(10, view.x(x0)), heightPx - 10], view.scale);
  return sheet.svg;
}

/** Flames below the soffit. */
function flames(sheet: Sheet, view: View, x0: number, x1: number, top: number): void {
  const [left, right] = [view.x(x0), view.x(x1)];
  const count = Math.max(3, Math.round((right - left) / 34));
  const step = (right - left) / count;
  for (let i = 0; i < count; i++) {
    const x = left + (i + 0.5) * step;
    const height = i % 2 ? 20 : 31;
    const bottom = top + 34;
    sheet.body.append(el("path", {
      class: "flame",
      d: `M${px(x)} ${px(bottom)}C${px(x - 16)} ${px(bottom - 3)} ${px(x - 9)} ${px(bottom - height * 0.5)} ${px(x - 2)} ${px(bottom - height)}C${px(x - 1)} ${px(bottom - height * 0.62)} ${px(x + 3)} ${px(bottom - height * 0.6)} ${px(x + 6)} ${px(bottom - height * 0.68)}C${px(x + 15)} ${px(bottom - height * 0.3)} ${px(x + 12)} ${px(bottom - 2)} ${px(x)} ${px(bottom)}Z`,
    }));
  }
}

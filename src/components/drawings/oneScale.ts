import type {Sheet} from "./sheet.js";
import type {View} from "./view.js";

/** Notes on a drawing at which scale it is drawn, so that others can be drawn at the same. */
export function markScale({svg}: Sheet, {scale}: View): void {
  svg.dataset["pxPerIn"] = String(scale);
}

/** Draws one of several things, at the largest scale that fits its paper or at most at the given one, pixels for an inch. */
export type DrawAtMost = (mostPxPerIn?: number) => SVGSVGElement;

/** Several drawings at one scale: the largest at which each of them fits its paper. */
export function atOneScale(draws: readonly DrawAtMost[]): SVGSVGElement[] {
  const largest = draws.map((draw) => draw());
  const scales = largest.map((svg) => Number(svg.dataset["pxPerIn"]));
  const least = Math.min(...scales);
  return largest.map((svg, i) => ((scales[i] as number) > least ? (draws[i] as DrawAtMost)(least) : svg));
}

import type {Sheet} from "./sheet.js";
import type {View} from "./view.js";

/** Notes on a drawing at which scale it is drawn, so that others can be drawn at the same, and its lines written as lengths. */
export function markScale({svg}: Pick<Sheet, "svg">, {scale}: Pick<View, "scale">): void {
  svg.setAttribute("data-px-per-in", String(scale));
}

/** Draws one of several things, at the largest scale that fits its paper or at most at the given one, pixels for an inch. */
export type DrawAtMost = (mostPxPerIn?: number) => SVGSVGElement;

/** A drawing among others at one scale: what it is of, and the paper that it has. */
export interface ScaledDrawing {
  /** What is drawn; the same thing on the same paper is drawn once. */
  readonly of: object;
  readonly paper: string;
  readonly draw: DrawAtMost;
}

/** Several drawings at one scale: the largest at which each of them fits its paper. The function remembers what it has drawn. */
export function drawingsAtOneScale(): (drawings: readonly ScaledDrawing[]) => SVGSVGElement[] {
  const known = new WeakMap<object, Map<string, {readonly largest: number; svg: SVGSVGElement}>>();
  const keptOf = ({of, paper, draw}: ScaledDrawing) => {
    const papers = known.get(of) ?? new Map<string, {readonly largest: number; svg: SVGSVGElement}>();
    known.set(of, papers);
    let kept = papers.get(paper);
    if (!kept) {
      const svg = draw();
      papers.set(paper, kept = {largest: scaleOf(svg), svg});
    }
    return kept;
  };
  return (drawings) => {
    const all = drawings.map(keptOf);
    const least = Math.min(...all.map(({largest}) => largest));
    all.forEach((kept, i) => {
      if (scaleOf(kept.svg) !== least) kept.svg = (drawings[i] as ScaledDrawing).draw(least);
    });
    return all.map(({svg}) => svg);
  };
}

function scaleOf(svg: SVGSVGElement): number {
  return Number(svg.dataset["pxPerIn"]);
}

import {el} from "../drawings/svg.js";
import {betweenFrames, readFrame, type Frame} from "../drawings/view.js";

/** A picture's frame, and what of it is shown. */
interface PictureFrame extends Frame {
  /** Beyond it nothing is shown: left, top, width and height, px. */
  readonly within?: readonly [number, number, number, number];
}

/** What of a drawing leaves no trace: texts and what belongs to them, what fills, and what stands still. */
const PASSED_OVER = "text, title, desc, defs, .dimension, .extension, .tick, .leader, .leader-dot, .led, .person, .furniture, .furniture-line, .region, .plate, .stone, .grain, .scale-dark, .scale-light, .north-dark, .north-light, .break, .handle, .trace";
/** The marks of a chart that follow its numbers. */
const FOLLOWS = /^(line|area|dot|rect|bar|link|tick|rule)\b/;

/** What is traced of a picture, made once and moved from one drawing to the next. */
const made = new WeakMap<SVGSVGElement, SVGGElement>();

/**
 * The outlines of a picture as they would stand in another of the same thing, on its scale; undefined where the two have
 * no scale in common, so that nothing is ever shown in a wrong place.
 */
export function ghostOf(then: SVGSVGElement, now: SVGSVGElement): SVGElement | undefined {
  if (then.getAttribute("class") !== now.getAttribute("class")) return undefined;
  const [from, to] = [frameOf(then), frameOf(now)];
  if (!from || !to) return undefined;
  const matrix = betweenFrames(from, to);
  if (!matrix.every(Number.isFinite)) return undefined;
  let ghost = made.get(then);
  if (!ghost) made.set(then, ghost = outlines(then));
  ghost.setAttribute("transform", `matrix(${matrix.join(" ")})`);
  if (!to.within) return el("g", {class: "trace", "aria-hidden": "true"}, ghost);
  const [x, y, width, height] = to.within;
  return el("svg", {class: "trace", "aria-hidden": "true", x, y, width, height, viewBox: `${x} ${y} ${width} ${height}`}, ghost);
}

function outlines(picture: SVGSVGElement): SVGGElement {
  const parts = picture.dataset["frame"]
    ? [...picture.querySelectorAll(":scope > .drawing-body, :scope > .drawing-lines")]
    : [...picture.querySelectorAll("g[data-mark]")].filter((group) => FOLLOWS.test(group.getAttribute("data-mark") ?? ""));
  const ghost = el("g", {}, ...parts.map((part) => part.cloneNode(true)));
  for (const node of ghost.querySelectorAll(picture.dataset["frame"] ? `${PASSED_OVER}, [clip-path]` : PASSED_OVER)) node.remove();
  for (const node of ghost.querySelectorAll("*")) for (const name of ["id", "data-quantity", "data-part", "data-veiled", "tabindex", "role", "aria-label", "style", "clip-path"]) node.removeAttribute(name);
  return ghost;
}

/** A scale of the plotting library, as far as it is asked for here. */
interface PlotScale {
  readonly type: string;
  readonly domain: readonly unknown[];
  readonly range: readonly number[];
}

function frameOf(picture: SVGSVGElement): PictureFrame | undefined {
  const noted = readFrame(picture.dataset["frame"]);
  if (noted) return noted;
  // A chart with a legend or a title is a figure, which then has the scales.
  const plot = [picture, picture.closest("figure")].find((node): node is (SVGSVGElement | HTMLElement) & {scale(name: string): PlotScale | undefined} => node !== null && typeof (node as {scale?: unknown}).scale === "function");
  if (!plot || plot.scale("fx") || plot.scale("fy")) return undefined;
  const [along, up] = [linear(plot.scale("x")), linear(plot.scale("y"))];
  if (!along || !up) return undefined;
  const [left, right, top, bottom] = [Math.min(...along.range), Math.max(...along.range), Math.min(...up.range), Math.max(...up.range)];
  return {x: along.at, perX: along.per, y: up.at, perY: up.per, within: [left, top, right - left, bottom - top]};
}

function linear(scale: PlotScale | undefined): {at: number; per: number; range: readonly number[]} | undefined {
  if (scale?.type !== "linear") return undefined;
  const [d0, d1] = scale.domain;
  const [r0, r1] = scale.range;
  if (typeof d0 !== "number" || typeof d1 !== "number" || r0 === undefined || r1 === undefined) return undefined;
  const per = (r1 - r0) / (d1 - d0);
  return {at: r0 - d0 * per, per, range: [r0, r1]};
}

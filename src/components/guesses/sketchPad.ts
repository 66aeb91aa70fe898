import type {Sketch, SketchCurve} from "../../lib/exercises/sketches.js";
import {decimals} from "../../lib/units.js";
import {el, pathThrough} from "../drawings/svg.js";
import {element} from "../dom.js";
import {readerTicks} from "../reader/readerTicks.js";
import {whenReadAnew} from "../reader/system.js";

const MOST_WIDTH = 560, HEIGHT = 270;
/** What the page leaves free beside it, px. */
const MARGIN = 40;
const LEFT = 54, RIGHT = 20, TOP = 30, BOTTOM = 46;
/** Steps of a key over the height of the axis; with Shift it goes so many times as far. */
const STEPS = 40, FAR = 5;

/** What a curve is drawn on. */
export interface SketchPad {
  readonly node: HTMLElement;
  /** The drawing; undefined while it was not touched. */
  values(): readonly number[] | undefined;
  /** Draws the axes and, once the question is settled, the true curve beside what was drawn. */
  show(curve: SketchCurve, said: readonly number[] | null | undefined): void;
  clear(): void;
  focus(): void;
}

/** A value of the axis, with no more digits than it has. */
const formatTick = (tick: number, places: number): string => decimals(tick, Number.isInteger(tick) ? 0 : places + 1);

/** Axes with one point at each place, which pointer, touch and arrow keys move up and down. */
export function sketchPad({along, what, unit, places}: Sketch): SketchPad {
  // Words keep their size on a phone, so the axes take what there is.
  const WIDTH = Math.min(MOST_WIDTH, document.documentElement.clientWidth - MARGIN);
  const plot = el("g");
  const svg = el("svg", {viewBox: `0 0 ${WIDTH} ${HEIGHT}`, class: "sketch-pad", role: "group", "aria-label": `${what}, ${unit}, by ${along}`}, plot);
  let curve: SketchCurve | undefined;
  let drawn: number[] | undefined;
  let open = true;
  let points: SVGElement[] = [];
  let line: SVGPathElement | undefined;
  let last: {index: number; value: number} | undefined;

  const count = () => curve?.values.length ?? 1;
  const x = (index: number) => LEFT + (index / (count() - 1)) * (WIDTH - LEFT - RIGHT);
  const y = (value: number) => TOP + (1 - (value - (curve?.least ?? 0)) / ((curve?.most ?? 1) - (curve?.least ?? 0))) * (HEIGHT - TOP - BOTTOM);
  const within = (value: number) => Math.min(curve?.most ?? 1, Math.max(curve?.least ?? 0, value));
  const start = () => Array.from({length: count()}, () => ((curve?.least ?? 0) + (curve?.most ?? 1)) / 2);
  const shown = () => drawn ?? start();
  const text = (value: number) => `${decimals(value, places)} ${unit}`;

  const place = () => {
    const values = shown();
    line?.setAttribute("d", pathThrough(values.map((value, i) => [x(i), y(value)] as const)));
    line?.classList.toggle("is-untouched", drawn === undefined);
    points.forEach((point, i) => {
      const value = values[i] as number;
      point.setAttribute("cy", String(y(value)));
      point.setAttribute("aria-valuenow", value.toFixed(places));
      point.setAttribute("aria-valuetext", `${text(value)} at ${curve?.at[i] ?? ""}`);
    });
  };
  const set = (index: number, value: number) => {
    drawn ??= start();
    drawn[index] = within(value);
  };
  /** Moves all points between the last place of the pointer and this one, so that a quick stroke leaves none out. */
  const stroke = ({clientX, clientY}: PointerEvent) => {
    if (!curve) return;
    const box = svg.getBoundingClientRect();
    const [px, py] = [((clientX - box.left) / box.width) * WIDTH, ((clientY - box.top) / box.height) * HEIGHT];
    const index = Math.min(count() - 1, Math.max(0, Math.round(((px - LEFT) / (WIDTH - LEFT - RIGHT)) * (count() - 1))));
    const value = within(curve.least + (1 - (py - TOP) / (HEIGHT - TOP - BOTTOM)) * (curve.most - curve.least));
    const from = last ?? {index, value};
    const steps = Math.abs(index - from.index);
    for (let i = 0; i <= steps; i++) {
      const share = steps === 0 ? 1 : i / steps;
      if (i > 0 || steps === 0) set(from.index + Math.sign(index - from.index) * i, from.value + share * (value - from.value));
    }
    last = {index, value};
    place();
  };
  svg.addEventListener("pointerdown", (event) => {
    if (!open || event.button !== 0) return;
    event.preventDefault();
    svg.setPointerCapture(event.pointerId);
    last = undefined;
    stroke(event);
    points[(last as {index: number} | undefined)?.index ?? 0]?.focus({preventScroll: true});
  });
  svg.addEventListener("pointermove", (event) => {
    if (open && svg.hasPointerCapture(event.pointerId)) stroke(event);
  });
  svg.addEventListener("keydown", (event) => {
    const index = points.indexOf(event.target as SVGElement);
    if (!open || index < 0 || !curve || event.altKey || event.ctrlKey || event.metaKey) return;
    const step = ((curve.most - curve.least) / STEPS) * (event.shiftKey ? FAR : 1);
    const up = {ArrowUp: step, PageUp: FAR * step, ArrowDown: -step, PageDown: -FAR * step}[event.key];
    const to = {ArrowLeft: index - 1, ArrowRight: index + 1, Home: 0, End: points.length - 1}[event.key];
    if (up === undefined && to === undefined) return;
    event.preventDefault();
    if (up !== undefined) {
      set(index, (shown()[index] as number) + up);
      place();
    } else if (to !== undefined) go(Math.min(points.length - 1, Math.max(0, to)));
  });
  const go = (index: number) => {
    points.forEach((point, i) => point.setAttribute("tabindex", i === index ? "0" : "-1"));
    points[index]?.focus();
  };

  let settled: readonly number[] | null | undefined;
  whenReadAnew(svg, () => draw(settled));
  const draw = (said: readonly number[] | null | undefined) => {
    settled = said;
    if (!curve) return;
    const {at, least, most, values} = curve;
    open = said === undefined;
    svg.classList.toggle("is-open", open);
    const kept = points.findIndex((point) => point === document.activeElement);
    const ticks = readerTicks(unit, least, most, [least, (least + most) / 2, most, ...(least < 0 ? [0] : [])].map((tick) => ({at: tick, text: formatTick(tick, places)})));
    const every = Math.ceil(at.length / 5);
    plot.replaceChildren(
      ...ticks.map((tick) => el("path", {d: `M${LEFT} ${y(tick.at)}H${WIDTH - RIGHT}`, class: tick.at === 0 ? "sketch-axis" : "sketch-grid"})),
      ...ticks.map(({at: tick, text: words}) => el("text", {x: LEFT - 12, y: y(tick) + 4, "text-anchor": "end"}, words)),
      el("text", {x: 2, y: 14}, `\u2191 ${what}, ${unit}`),
      el("text", {x: WIDTH - RIGHT, y: HEIGHT - 4, "text-anchor": "end"}, `${along} \u2192`),
      ...at.flatMap((words, i) => [
        el("path", {d: `M${x(i)} ${HEIGHT - BOTTOM}v5`, class: "sketch-axis"}),
        ...(i % every === 0 || i === at.length - 1 ? [el("text", {x: x(i), y: HEIGHT - BOTTOM + 19, "text-anchor": i === at.length - 1 ? "end" : "middle"}, words)] : []),
      ]),
    );
    if (said !== undefined) {
      plot.append(el("path", {d: pathThrough(values.map((value, i) => [x(i), y(value)] as const)), class: "sketch-truth"}));
      plot.append(el("text", {x: WIDTH - RIGHT, y: 14, class: "sketch-name", "text-anchor": "end"}, said === null ? "computed" : "solid: computed; dashed: yours"));
    }
    line = el("path", {class: "sketch-line", d: ""});
    points = said === null ? [] : shown().map((_, i) => el("circle", {
      cx: x(i), r: open ? 7 : 3, class: "sketch-point",
      ...(open ? {role: "slider", tabindex: i === 0 ? 0 : -1, "aria-orientation": "vertical", "aria-label": `${what} at ${at[i]}`, "aria-valuemin": least, "aria-valuemax": most} : {"aria-hidden": "true"}),
    }));
    if (said) drawn = [...said];
    if (said !== null) plot.append(line, ...points);
    place();
    if (open && kept >= 0) go(kept);
  };
  return {
    node: element("div", {class: "sketch-frame"}, svg),
    values: () => drawn,
    show(next, said) {
      // A drawing is of heights on the axis: with another axis it would be another.
      if (curve && open && drawn && (curve.most !== next.most || curve.least !== next.least)) drawn = undefined;
      curve = next;
      draw(said);
    },
    clear: () => (drawn = undefined),
    focus: () => go(0),
  };
}

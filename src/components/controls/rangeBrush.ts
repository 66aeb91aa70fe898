import {element, svgElement} from "../dom.js";
import {onGrid, stepsOf} from "./numberBox.js";

/** An interval that a reader marks out; an end that is left out is free. */
export type Interval = readonly [least: number | undefined, most: number | undefined];

/** What a range brush is told. */
export interface RangeBrushOptions {
  /** What is marked out: its handles are "floor-to-floor height, least" and "..., most". */
  readonly name: string;
  readonly unit: string;
  readonly get: () => Interval;
  /** Called when the reader lets go of a handle, and at each key. Throws InputError for an interval that is not possible. */
  readonly set: (interval: Interval) => void;
  /** Whether an end that stands at the scale's end is free; else it is a number like any other. */
  readonly free: boolean;
}

/** A line with two handles, by mouse, touch and keyboard; the numbers themselves stand in boxes beside it. */
export interface RangeBrush {
  readonly node: HTMLElement;
  /** Shows the interval as it is kept, on a scale, with a tick for each value that there is. */
  show(scale: RangeScale): void;
}

/** The line's ends, what a key moves a handle by, and the values that are marked on it. */
export interface RangeScale {
  readonly from: number;
  readonly to: number;
  readonly step: number;
  readonly values: readonly number[];
}

/** How near to a handle a finger means it, px; and the line's room in a picture of its own units. */
const REACH_PX = 22;
const LINE = {width: 1000, height: 20} as const;

export function rangeBrush({name, unit, get, set, free}: RangeBrushOptions): RangeBrush {
  let scale: RangeScale = {from: 0, to: 1, step: 1, values: []};
  /** What is marked out while the reader has hold of it. */
  let held: [number, number] | undefined;
  const ticks = svgElement("path", {class: "range-ticks"});
  const picture = svgElement("svg", {class: "range-values", viewBox: `0 0 ${LINE.width} ${LINE.height}`, preserveAspectRatio: "none", "aria-hidden": "true"}, ticks);
  const fill = element("div", {class: "range-fill", "aria-hidden": "true"});
  const handles = (["least", "most"] as const).map((end) => element("div", {class: "range-handle", role: "slider", tabindex: 0, "aria-label": `${name}, ${end}: handle`}));
  const track = element("div", {class: "range-track"}, picture, fill, ...handles);
  const node = element("div", {class: "range-brush"}, track);

  const inScale = (value: number) => Math.min(scale.to, Math.max(scale.from, value));
  /** A place of the line; the ends count too where they are no whole number of steps. */
  const snapped = (value: number) => {
    if (value <= scale.from) return scale.from;
    if (value >= scale.to) return scale.to;
    return inScale(onGrid(value, scale.step));
  };
  const ends = (): [number, number] => {
    if (held) return held;
    const [least, most] = get();
    return [inScale(least ?? scale.from), inScale(most ?? scale.to)];
  };
  const at = (value: number) => (scale.to > scale.from ? (value - scale.from) / (scale.to - scale.from) : 0.5);
  const place = () => {
    const now = ends();
    handles.forEach((handle, i) => {
      const value = now[i] as number;
      handle.style.left = `${100 * at(value)}%`;
      for (const [key, number] of [["min", scale.from], ["max", scale.to], ["now", value]] as const) handle.setAttribute(`aria-value${key}`, String(Number(number.toPrecision(6))));
      const isFree = free && value === (i === 0 ? scale.from : scale.to);
      handle.setAttribute("aria-valuetext", isFree ? "free" : `${Number(value.toPrecision(6))} ${unit}`.trim());
    });
    fill.style.left = `${100 * at(now[0])}%`;
    fill.style.right = `${100 * (1 - at(now[1]))}%`;
  };
  /** Keeps what is marked out; where it is not possible, the line goes back to what is kept. */
  const take = ([least, most]: readonly [number, number]) => {
    held = undefined;
    set([free && least <= scale.from ? undefined : least, free && most >= scale.to ? undefined : most]);
    place();
  };

  handles.forEach((handle, i) => handle.addEventListener("keydown", (event) => {
    const [least, most] = ends();
    const by = stepsOf(event);
    const to = event.key === "Home" ? scale.from : event.key === "End" ? scale.to : by === undefined ? undefined : snapped((i === 0 ? least : most) + by * scale.step);
    if (to === undefined) return;
    event.preventDefault();
    // A handle stops at the other one.
    take(i === 0 ? [Math.min(to, most), most] : [least, Math.max(to, least)]);
  }));

  /** From where the reader drags what: a handle, the whole interval, or a new one. */
  let drag: {readonly what: 0 | 1 | "both" | "new"; readonly from: number; readonly ends: readonly [number, number]} | undefined;
  const valueAt = (event: PointerEvent) => {
    const {left, width} = track.getBoundingClientRect();
    return scale.from + (scale.to - scale.from) * Math.min(1, Math.max(0, (event.clientX - left) / Math.max(1, width)));
  };
  track.addEventListener("pointerdown", (event) => {
    if (event.button !== 0 || !event.isPrimary) return;
    const {left, width} = track.getBoundingClientRect();
    const now = ends();
    const far = now.map((value) => Math.abs(event.clientX - left - width * at(value))) as [number, number];
    // Where both handles lie on each other, the side on which the reader takes hold says which is meant.
    const nearest: 0 | 1 = far[0] < far[1] || (far[0] === far[1] && event.clientX - left < width * at(now[0])) ? 0 : 1;
    const from = valueAt(event);
    const whole = now[0] <= scale.from && now[1] >= scale.to;
    const what = far[nearest] <= REACH_PX ? nearest : !whole && from > now[0] && from < now[1] ? "both" : "new";
    drag = {what, from, ends: now};
    track.setPointerCapture(event.pointerId);
    if (typeof what === "number") handles[what]?.focus({preventScroll: true});
    event.preventDefault();
  });
  track.addEventListener("pointermove", (event) => {
    if (!drag) return;
    const {what, from, ends: [least, most]} = drag;
    const now = valueAt(event);
    if (what === "new") held = [snapped(Math.min(from, now)), snapped(Math.max(from, now))];
    else if (what === "both") {
      const by = Math.min(scale.to - most, Math.max(scale.from - least, now - from));
      held = [snapped(least + by), snapped(most + by)];
    } else held = what === 0 ? [Math.min(snapped(now), most), most] : [least, Math.max(snapped(now), least)];
    place();
  });
  const drop = (keep: boolean) => {
    if (!drag) return;
    drag = undefined;
    const now = held;
    held = undefined;
    if (keep && now) take(now);
    else place();
  };
  track.addEventListener("pointerup", () => drop(true));
  track.addEventListener("pointercancel", () => drop(false));
  return {
    node,
    show(next) {
      if (next.values !== scale.values || next.from !== scale.from || next.to !== scale.to) {
        const drawn = new Set(next.values.map((value) => Math.round((LINE.width * (value - next.from)) / (next.to - next.from || 1))));
        ticks.setAttribute("d", [...drawn].map((x) => `M${x} 3V${LINE.height - 3}`).join(""));
      }
      scale = next;
      place();
    },
  };
}

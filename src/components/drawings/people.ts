import {el, px} from "./svg.js";
import type {Sheet} from "./sheet.js";
import type {View} from "./view.js";

/** Half of a standing figure's outline from the neck down, in: x from its middle, y above the floor. */
const HALF_FIGURE: readonly (readonly [number, number])[] = [
  [1.7, 60], [2, 57.6], [6.6, 55.8], [8.2, 53.4], [8.8, 46], [9.4, 39], [9, 32.4], [7.6, 31.2], [7, 33], [6.9, 39], [6.2, 45.5],
  [6, 39], [6.6, 33], [5.8, 18], [4.8, 8], [4.8, 2.2], [6, 0], [1.4, 0], [1.4, 2], [1.1, 16], [0, 31],
];

/** A person of 5'-8", standing on a floor at height `floor` with the middle at `x` (world inches). */
export function person(sheet: Sheet, view: View, x: number, floor: number): void {
  const right = HALF_FIGURE.map(([dx, y]) => view.at(x + dx, floor + y));
  const left = [...HALF_FIGURE].reverse().map(([dx, y]) => view.at(x - dx, floor + y));
  const outline = [...right, ...left].map(([a, b], i) => `${i ? "L" : "M"}${px(a)} ${px(b)}`).join("");
  sheet.body.append(el("g", {class: "person", "data-part": "person"},
    el("path", {d: `${outline}Z`}),
    el("ellipse", {cx: view.x(x), cy: view.y(floor + 63.6), rx: 3.5 * view.scale, ry: 4.4 * view.scale})));
}

/** A desk, 5 ft long and 29 in high, with a screen, and a chair at its right; `x` is its left end (world inches). */
export function desk(sheet: Sheet, view: View, x: number, floor: number): void {
  const box = (x0: number, y0: number, x1: number, y1: number) => {
    const [left, top] = view.at(x + x0, floor + y1);
    return el("rect", {x: left, y: top, width: (x1 - x0) * view.scale, height: (y1 - y0) * view.scaleY});
  };
  const stroke = (...points: (readonly [number, number])[]) =>
    el("path", {d: points.map(([a, b], i) => `${i ? "L" : "M"}${px(view.x(x + a))} ${px(view.y(floor + b))}`).join("")});
  sheet.body.append(el("g", {class: "furniture", "data-part": "desk"},
    box(0, 27.5, 60, 29), box(2, 0, 4, 27.5), box(38, 8, 57, 27.5), stroke([38, 17.75], [57, 17.75]),
    stroke([22, 29], [24, 33]), box(14, 33, 16, 48),
    // The chair: seat, back, post and foot.
    stroke([64, 18], [82, 18]), stroke([81, 20], [85, 36]), stroke([73, 18], [73, 3]), stroke([64, 1], [73, 4], [82, 1])));
}

/** A person who sits with the eye 4 ft above the floor, looking to the left; `x` is the eye (world inches). */
export function sitter(sheet: Sheet, view: View, x: number, floor: number): void {
  const outline = SITTER.map(([dx, y], i) => `${i ? "L" : "M"}${px(view.x(x + dx))} ${px(view.y(floor + y))}`).join("");
  sheet.body.append(
    el("g", {class: "person", "data-part": "person"}, el("path", {d: `${outline}Z`}),
      el("ellipse", {cx: view.x(x + 3), cy: view.y(floor + 47.5), rx: 3.6 * view.scale, ry: 4.6 * view.scale})),
    el("path", {d: `M${px(view.x(x - 13))} ${px(view.y(floor + 17))}H${px(view.x(x + 9))}M${px(view.x(x + 10))} ${px(view.y(floor + 18))}L${px(view.x(x + 13))} ${px(view.y(floor + 34))}M${px(view.x(x - 2))} ${px(view.y(floor + 17))}V${px(view.y(floor + 1))}M${px(view.x(x - 11))} ${px(view.y(floor))}H${px(view.x(x + 7))}`, class: "furniture-line"}),
  );
}

/** Outline of one who sits, seen from the side: neck, back, seat, thigh, shin, foot and up again. */
const SITTER: readonly (readonly [number, number])[] = [
  [5, 43.5], [8.5, 40], [9.5, 30], [8.5, 18], [-11, 18], [-12, 3], [-17, 2.5], [-17, 0], [-8, 0], [-7.5, 14], [-8.5, 23], [1, 23.5], [1, 33], [-9, 29.5], [-9.5, 31.5], [1.5, 39.5], [2.5, 43.5],
];

import {el, px} from "./svg.js";

/** Patterns that tell materials and meanings apart without color. */
export type PatternName = "plant" | "site" | "compression" | "tension" | "tributary" | "moment" | "shear" | "return";

/**
 * A pattern: concrete cast in the plant is finely dotted, concrete cast in place shows dots and angular stones, the
 * others are hatched in different directions.
 */
export function stipple(name: PatternName, id: string): SVGPatternElement {
  if (name === "plant") return concretePattern(id, "plant", 36, 26, 0);
  if (name === "site") return concretePattern(id, "site", 40, 14, 7);
  return hatch(id, `hatch-${name}`, name === "tributary" ? 9 : 6, name === "tension" || name === "shear" || name === "return" ? -45 : 45);
}

function concretePattern(id: string, kind: "plant" | "site", size: number, dots: number, stones: number): SVGPatternElement {
  const pattern = el("pattern", {id, width: size, height: size, patternUnits: "userSpaceOnUse"},
    el("rect", {width: size, height: size, class: `tint-${kind}`}));
  const places = scatter(size, dots + stones, stones, kind === "plant" ? 5 : 23);
  places.forEach(([x, y, turn], i) => {
    if (i < stones) {
      const corner = (share: number) => `${px(x + 2.3 * Math.cos(turn + share))} ${px(y + 2.3 * Math.sin(turn + share))}`;
      pattern.append(el("path", {d: `M${corner(0)}L${corner(2.2)}L${corner(4.1)}Z`, class: "stone"}));
    } else pattern.append(el("circle", {cx: x, cy: y, r: 0.45 + (i % 3) * 0.14, class: "grain"}));
  });
  return pattern;
}

function hatch(id: string, className: string, pitch: number, degrees: number): SVGPatternElement {
  return el("pattern", {id, width: pitch, height: pitch, patternUnits: "userSpaceOnUse", patternTransform: `rotate(${degrees})`},
    el("rect", {width: pitch, height: pitch, class: `${className}-ground`}),
    el("path", {d: `M0 0V${pitch}`, class: className}));
}

/** Places in a tile that look strewn, the same at every call: the best of a few candidates each. */
function scatter(size: number, count: number, stones: number, seed: number): [x: number, y: number, turn: number][] {
  let state = seed;
  const next = () => (state = (state * 16807) % 2147483647) / 2147483647;
  for (let i = 0; i < 5; i++) next();
  const places: [number, number, number][] = [];
  const wrapped = (a: number, b: number) => Math.min(Math.abs(a - b), size - Math.abs(a - b));
  while (places.length < count) {
    // A stone cut by the tile's edge would show; a grain is too small for that.
    const margin = places.length < stones ? 3 : 0.7;
    const along = () => margin + next() * (size - 2 * margin);
    const candidates = Array.from({length: 8}, () => [along(), along(), next() * 6.28] as [number, number, number]);
    const clear = ([x, y]: readonly number[]) =>
      Math.min(...places.map(([a, b]) => Math.hypot(wrapped(a, x as number), wrapped(b, y as number))), size);
    places.push(candidates.reduce((best, one) => (clear(one) > clear(best) ? one : best)));
  }
  return places;
}

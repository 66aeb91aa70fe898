/** Attributes of an element; `undefined` leaves one out. */
export type Attributes = Readonly<Record<string, string | number | undefined>>;

const SVG = "http://www.w3.org/2000/svg";

/** An SVG element with attributes and children; text children become text nodes. */
export function el<K extends keyof SVGElementTagNameMap>(
  name: K, attributes: Attributes = {}, ...children: (Node | string)[]
): SVGElementTagNameMap[K] {
  const node = document.createElementNS(SVG, name);
  for (const [key, value] of Object.entries(attributes)) {
    if (value !== undefined) node.setAttribute(key, typeof value === "number" ? String(px(value)) : value);
  }
  node.append(...children);
  return node;
}

/** Paper coordinates to a thousandth of a pixel: enough for the eye, and within a sixteenth of an inch on the plan of a long building. */
export const px = (value: number): number => Math.round(value * 1000) / 1000;

/** A point on the paper, px from the upper left corner. */
export type PaperPoint = readonly [number, number];

/** Path data through points. */
export function pathThrough(points: readonly PaperPoint[], closed = false): string {
  const steps = points.map(([x, y], i) => `${i ? "L" : "M"}${px(x)} ${px(y)}`).join("");
  return closed ? `${steps}Z` : steps;
}

/** Path data of a rectangle between two corners. */
export function pathOfBox(x0: number, y0: number, x1: number, y1: number): string {
  return pathThrough([[x0, y0], [x1, y0], [x1, y1], [x0, y1]], true);
}

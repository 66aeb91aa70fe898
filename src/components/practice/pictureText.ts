import type {BeamPicture, Picture, PlanPicture, SectionPicture, StackPicture} from "../../lib/practice/item.js";
import {measureText} from "../../lib/practice/prose.js";
import type {UnitSystem} from "../../lib/reader/system.js";

/** Width of a picture on paper, px at 96 to the inch. */
const WIDTH = 420;
const MARGIN = 26;

/**
 * An exercise's picture as SVG text, for paper: black lines, a tint for concrete, true to scale where it is a thing.
 *
 * @param mostPxPerIn - greatest scale of a section, so that several stand beside each other at one
 */
export function pictureText(picture: Picture, system: UnitSystem, widthPx = WIDTH, mostPxPerIn = Infinity): string {
  switch (picture.kind) {
    case "section":
      return section(picture, system, widthPx, mostPxPerIn);
    case "beam":
      return beam(picture, system, widthPx);
    case "plan":
      return plan(picture, system, widthPx);
    case "stack":
      return stack(picture, system, widthPx);
  }
}

const round = (value: number) => Number(value.toFixed(1));

function svg(widthPx: number, heightPx: number, label: string, body: string): string {
  return `<svg xmlns="http://www.w3.org/2000/svg" width="${round(widthPx)}" height="${round(heightPx)}" viewBox="0 0 ${round(widthPx)} ${round(heightPx)}" role="img" aria-label="${escaped(label)}" font-family="sans-serif" font-size="11" fill="none" stroke="#111" stroke-width="1">${body}</svg>`;
}

/** Text that may stand within markup. */
export function escaped(text: string): string {
  return text.replace(/&/g, "&amp;").replace(/</g, "&lt;").replace(/>/g, "&gt;").replace(/"/g, "&quot;");
}

const line = (x0: number, y0: number, x1: number, y1: number, more = "") => `<path d="M${round(x0)} ${round(y0)}L${round(x1)} ${round(y1)}"${more}/>`;
const words = (x: number, y: number, text: string, anchor = "middle") => `<text x="${round(x)}" y="${round(y)}" text-anchor="${anchor}" fill="#111" stroke="none">${escaped(text)}</text>`;
const box = (x: number, y: number, width: number, height: number, fill: string) => `<rect x="${round(x)}" y="${round(y)}" width="${round(width)}" height="${round(height)}" fill="${fill}"/>`;

/** The greatest scale at which each of some sections fits a width, px per in. */
export function commonScale(pictures: readonly (Picture | undefined)[], widthPx: number): number {
  const widths = pictures.map((picture) => (picture?.kind === "section" ? picture.shape.widthIn : 0));
  return (widthPx - 2 * MARGIN) / Math.max(1, ...widths);
}

function section({shape, toppingIn, strands, dimensions}: SectionPicture, system: UnitSystem, widthPx: number, mostPxPerIn: number): string {
  const room = dimensions ? 2 * MARGIN : 8;
  const scale = Math.min((widthPx - room) / shape.widthIn, 200 / (shape.depthIn + toppingIn), mostPxPerIn);
  const [left, top] = [4, 4 + toppingIn * scale];
  const at = (xIn: number, yIn: number) => [round(left + xIn * scale), round(top + (shape.depthIn - yIn) * scale)] as const;
  const path = shape.rings.map((ring) => `M${ring.map(([x, y]) => at(x, y).join(" ")).join("L")}Z`).join("");
  const foot = top + shape.depthIn * scale;
  const right = left + shape.widthIn * scale;
  // Room for the words of the depth and of a narrow width.
  return svg(right + room, foot + (dimensions ? 22 : 6), `Section ${dimensions ? "" : "of the member"}`, [
    toppingIn > 0 ? box(left, 4, shape.widthIn * scale, toppingIn * scale, "#f3f3f3") : "",
    `<path d="${path}" fill="#ddd" fill-rule="evenodd"/>`,
    ...strands.map(({xIn, yIn}) => `<circle cx="${at(xIn, yIn)[0]}" cy="${at(xIn, yIn)[1]}" r="1.6" fill="#111" stroke="none"/>`),
    ...(dimensions ? [
      line(left, foot + 8, right, foot + 8), words((left + right) / 2, foot + 20, measureText({value: shape.widthIn / 12, unit: "ft"}, system)),
      line(right + 6, top, right + 6, foot), words(right + 10, (top + foot) / 2 + 4, measureText({value: shape.depthIn, unit: "in"}, system), "start"),
    ] : []),
  ].join(""));
}

function beam({spanFt, uniform, points}: BeamPicture, system: UnitSystem, widthPx: number): string {
  const [left, right] = [MARGIN, widthPx - MARGIN];
  const at = (ft: number) => left + (ft / spanFt) * (right - left);
  const rows = uniform.map(({name, plf}, i) => {
    const y = 8 + i * 30;
    const arrows = Array.from({length: 13}, (_, k) => left + (k * (right - left)) / 12).map((x) => line(x, y + 14, x, y + 24)).join("");
    return `${line(left, y + 14, right, y + 14)}${arrows}${words((left + right) / 2, y + 10, `${name}, ${measureText({value: plf, unit: "plf"}, system)}`)}`;
  });
  const top = 12 + uniform.length * 30 + (points.length > 0 ? 26 : 0);
  const loads = points.map(({name, kip, atFt}) => `${line(at(atFt), top - 24, at(atFt), top - 2, " stroke-width=\"2\"")}${words(at(atFt) + 4, top - 14, `${name}, ${measureText({value: kip, unit: "kip"}, system)}`, "start")}`);
  const supports = [left, right].map((x) => `<path d="M${round(x)} ${round(top + 8)}l-7 12h14z"/>`).join("");
  return svg(widthPx, top + 46, "A simple beam under its loads", [...rows, ...loads, box(left, top, right - left, 8, "#ddd"), supports, line(left, top + 28, right, top + 28), words((left + right) / 2, top + 42, measureText({value: spanFt, unit: "ft"}, system))].join(""));
}

function plan({spanFt, beamSpanFt, baysAcross, baysAlong, marked}: PlanPicture, system: UnitSystem, widthPx: number): string {
  const [widthFt, heightFt] = [beamSpanFt * baysAlong, spanFt * baysAcross];
  const scale = Math.min((widthPx - 3 * MARGIN) / widthFt, 220 / heightFt);
  const at = (xFt: number, yFt: number) => [6 + xFt * scale, 6 + (heightFt - yFt) * scale] as const;
  const [x1, y1] = at(widthFt, 0);
  const beams = Array.from({length: baysAcross + 1}, (_, i) => line(6, at(0, i * spanFt)[1], x1, at(0, i * spanFt)[1], " stroke-width=\"2\"")).join("");
  const columns = Array.from({length: (baysAcross + 1) * (baysAlong + 1)}, (_, i) => at((i % (baysAlong + 1)) * beamSpanFt, Math.floor(i / (baysAlong + 1)) * spanFt))
    .map(([x, y]) => box(x - 3, y - 3, 6, 6, "#111")).join("");
  const [mx, my] = at(marked.xFt, marked.yFt + marked.heightFt);
  const mark = marked.widthFt > 0
    ? `<rect x="${round(mx)}" y="${round(my)}" width="${round(marked.widthFt * scale)}" height="${round(marked.heightFt * scale)}" fill="#ddd" stroke-dasharray="4 3"/>${words(mx + (marked.widthFt * scale) / 2, my + (marked.heightFt * scale) / 2 + 4, marked.name)}`
    : `<circle cx="${round(mx)}" cy="${round(my)}" r="8"/>${words(mx + 12, my - 6, marked.name, "start")}`;
  const bay = at(beamSpanFt, 0)[0];
  return svg(x1 + 2 * MARGIN, y1 + 24, `Plan of the column lines; marked: ${marked.name}`, [
    mark, beams, columns, line(6, y1 + 8, bay, y1 + 8), words((6 + bay) / 2, y1 + 20, measureText({value: beamSpanFt, unit: "ft"}, system)),
    line(x1 + 8, y1 - spanFt * scale, x1 + 8, y1), words(x1 + 12, y1 - (spanFt * scale) / 2 + 4, measureText({value: spanFt, unit: "ft"}, system), "start"),
  ].join(""));
}

function stack({layers}: StackPicture, system: UnitSystem, widthPx: number): string {
  const totalIn = layers.reduce((sum, {heightIn}) => sum + heightIn, 0);
  const scale = 200 / totalIn;
  let footPx = 206;
  const parts = layers.map(({name, heightIn, asked}) => {
    const heightPx = heightIn * scale;
    footPx -= heightPx;
    return {name, y: footPx, heightPx, text: asked ? "?" : measureText({value: heightIn, unit: "in"}, system), asked};
  });
  // Names keep a line's height from each other, however thin their layers are.
  let lowest = Infinity;
  const placed = parts.map((part) => {
    lowest = Math.min(part.y + part.heightPx / 2 + 4, lowest - 13);
    return {...part, nameY: lowest};
  });
  const up = Math.min(0, ...placed.map(({nameY}) => nameY - 12));
  return svg(widthPx, 212 - up, "Layers one above the other", `<g transform="translate(0 ${round(-up)})">${placed.map(({name, y, heightPx, text, asked, nameY}) =>
    `${box(6, y, 130, heightPx, asked ? "#fff" : "#ddd")}${line(136, y + heightPx / 2, 150, nameY - 4)}${words(154, nameY, `${name}, ${text}`, "start")}`).join("")}</g>`);
}

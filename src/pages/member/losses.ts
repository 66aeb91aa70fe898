import * as Plot from "@observablehq/plot";
import type {Losses} from "../../lib/prestress/losses.js";
import {decimals} from "../../lib/units.js";
import {svgElement} from "../../components/dom.js";
import {spread} from "../../components/drawings/placement.js";
import {lightsEach} from "../../components/charts/lights.js";
import {type FrameMark, LEAST_WIDTH_PX, place} from "../../components/charts/marks.js";

/** A stretch of the bar. */
interface Part {
  readonly name: string;
  readonly ksi: number;
  readonly from: number;
  readonly to: number;
  readonly fill: string;
}

/** The color of each loss, in this bar and over time. */
export const LOSS_COLORS = {
  "relaxation": "var(--near)", "shrinkage": "var(--concrete-site-edge)", "creep": "var(--concrete-plant-edge)", "shortening": "var(--load)",
} as const;

/** The name under which a loss lights, here, over time and in the worked steps; what is left is the strands'. */
export const lossPart = (name: string): string => (name === "left" ? "strand" : `loss by ${name}`);

/** The parts of the jacking stress: what is left at last, and what each cause takes, the last to come next to what is left. */
export function lossParts(losses: Losses): Part[] {
  let at = 0;
  const part = (name: string, ksi: number, fill: string): Part => ({name, ksi, fill, from: at, to: (at += ksi)});
  const loss = (name: keyof typeof LOSS_COLORS, ksi: number) => part(name, ksi, LOSS_COLORS[name]);
  return [
    part("left", losses.effectiveStressKsi, "var(--steel)"),
    loss("relaxation", losses.relaxationKsi),
    loss("shrinkage", losses.shrinkageKsi),
    loss("creep", losses.creepKsi),
    loss("shortening", losses.elasticKsi),
  ];
}

/** The stress in the strands as one bar: the whole jacking stress, and what each cause takes off its end. */
export function lossesChart(losses: Losses, widthPx: number): SVGSVGElement | HTMLElement {
  const parts = lossParts(losses);
  const whole = parts.at(-1)?.to ?? 0;
  return Plot.plot({
    width: Math.max(LEAST_WIDTH_PX, widthPx), height: 168, marginLeft: 2, marginRight: widthPx < 480 ? 40 : 90, marginTop: 34, marginBottom: 38,
    x: {label: "stress in the strands, ksi", domain: [0, whole], ticks: 6},
    y: {domain: [0, 1], axis: null},
    marks: [
      Plot.rect(parts, {x1: "from", x2: "to", y1: 0.45, y2: 1, fill: "fill", fillOpacity: (part: Part) => (part.name === "left" ? 0.85 : 0.6), stroke: "var(--paper)", strokeWidth: 1, ...lightsEach(parts, ({name}) => lossPart(name))}),
      Plot.text(parts.slice(0, 1), {x: (part: Part) => (part.from + part.to) / 2, y: 0.725, text: (part: Part) => `${decimals(part.ksi, 1)} ksi left long term`, fill: "var(--paper)", fontSize: 14, fontWeight: 600}),
      Plot.ruleX([whole], {y1: 0.45, y2: 1, stroke: "var(--ink)", strokeWidth: 2, insetTop: -8}),
      Plot.text([whole], {x: (ksi: number) => ksi, y: 1, text: (ksi: number) => `pulled to ${decimals(ksi, 1)} ksi`, textAnchor: "end", dy: -17, fontSize: 13, fontWeight: 600}),
      lossNames(parts.slice(1)),
    ],
  });
}

/** Each loss named below its stretch, led to it, in two lines. */
function lossNames(parts: readonly Part[]): FrameMark {
  return (_index, scales, _channels, {width}) => {
    const centers = parts.map((part) => place(scales, [(part.from + part.to) / 2, 0.45]));
    const at = spread(centers.map(([x]) => x), parts.map(() => 70), 36, width - 36, 2);
    const group = svgElement("g", {"font-size": 12.5, "text-anchor": "middle"});
    parts.forEach((part, i) => {
      const [x, y] = centers[i] as [number, number];
      const to = at[i] as number;
      group.append(
        svgElement("path", {d: `M${x} ${y + 1}V${y + 7}L${to} ${y + 14}`, fill: "none", stroke: "var(--ink-soft)"}),
        svgElement("text", {x: to, y: y + 27, fill: "var(--ink)", "data-part": lossPart(part.name)}, part.name),
        svgElement("text", {x: to, y: y + 42, fill: "var(--ink-soft)"}, `\u2212${decimals(part.ksi, 1)} ksi`),
      );
    });
    return group;
  };
}

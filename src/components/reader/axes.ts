import {svgElement} from "../dom.js";
import {textUnit, type TextUnit} from "../../lib/reader/siUnit.js";
import {niceTicks, tickTexts} from "../../lib/reader/ticks.js";
import type {UnitSystem} from "../../lib/reader/system.js";
import {unitOfHead} from "./cells.js";
import {AS_IS, usWords} from "./runs.js";

/** A scale as the plotting library gives it with its chart. */
interface ChartScale {
  readonly type?: string;
  readonly domain?: readonly unknown[];
  readonly range?: readonly number[];
  readonly apply?: (value: number) => number;
}
type Chart = SVGSVGElement & {scale?: (name: string) => ChartScale | undefined};

/** Parts of an axis that stand at its ticks, by the names that `figure` keeps of them. */
const AT_TICKS = ["tick", "tick label", "grid"] as const;
/** A chart's parts as they were drawn, for the way back. */
const drawn = new WeakMap<Element, readonly Node[]>();

/** Gives the axes of the charts within an element ticks at round numbers of the reader's units. Their labels are texts like any other. */
export function turnAxes(root: Element, system: UnitSystem): void {
  const charts = root.matches('svg[class^="plot"]') ? [root] : root.querySelectorAll('svg[class^="plot"]');
  for (const chart of charts) for (const name of ["x", "y"] as const) turnAxis(chart as Chart, name, system);
}

function turnAxis(chart: Chart, name: "x" | "y", system: UnitSystem): void {
  const groups = AT_TICKS.map((part) => [...chart.querySelectorAll<SVGGElement>(partNamed(`${name}-${part === "grid" ? "grid" : `axis ${part}`}`))]);
  const label = chart.querySelector(partNamed(`${name}-axis label`));
  for (const group of groups.flat()) {
    const before = drawn.get(group);
    if (before) group.replaceChildren(...before);
    for (const old of group.parentElement?.querySelectorAll(":scope > .second-scale") ?? []) old.remove();
  }
  // A chart whose heading is a mark of its own says its unit itself.
  const said = chart.dataset[`${name}Unit`];
  const unit = label ? unitOfHead(usWords(label)) : said === undefined ? undefined : textUnit(said);
  const scale = chart.scale?.(name);
  if (system === "US" || !unit || chart.closest(AS_IS) || !scale?.apply || scale.type !== "linear") return;
  const [low, high] = (scale.domain ?? []).map(Number).sort((a, b) => a - b);
  if (low === undefined || high === undefined || !Number.isFinite(low) || !Number.isFinite(high)) return;
  const count = Math.max(2, groups[1]?.[0]?.children.length ?? 5);
  const found = niceTicks(low * unit.factor, high * unit.factor, count);
  const texts = tickTexts(found);
  const ticks = found.map((si, i) => ({text: texts[i] as string, at: (scale.apply as (value: number) => number)(si / unit.factor)}));
  if (system === "SI") for (const group of groups.flat()) moveTo(group, ticks, name);
  else for (const group of groups[1] ?? []) secondScale(group, ticks, name, unit, scale);
}

const partNamed = (name: string): string => `g[data-mark="${name}"], g[aria-label="${name}"]`;

interface Tick {
  readonly text: string;
  readonly at: number;
}

const PLACE = /translate\(\s*(-?[\d.]+)[ ,]+(-?[\d.]+)\s*\)/;

/** Puts one of a group's signs at each tick, like the first of those that are there. */
function moveTo(group: SVGGElement, ticks: readonly Tick[], name: "x" | "y"): void {
  const first = group.firstElementChild;
  if (!first) return;
  const made = ticks.map(({text, at}) => {
    const sign = first.cloneNode(true) as SVGElement;
    if (sign.tagName === "line") {
      for (const end of ["1", "2"]) sign.setAttribute(name + end, String(at));
    } else {
      const [, x = "0", y = "0"] = PLACE.exec(sign.getAttribute("transform") ?? "") ?? [];
      sign.setAttribute("transform", name === "x" ? `translate(${at},${y})` : `translate(${x},${at})`);
    }
    if (sign.tagName === "text") sign.textContent = text;
    return sign;
  });
  drawn.set(group, [...group.childNodes]);
  group.replaceChildren(...made);
}

/** The SI numbers of a scale along the other side of the frame, small, beside the US ones that stay. */
function secondScale(labels: SVGGElement, ticks: readonly Tick[], name: "x" | "y", unit: TextUnit, scale: ChartScale): void {
  const chart = labels.closest("svg") as Chart | null;
  const across = chart?.scale?.(name === "x" ? "y" : "x")?.range?.map(Number);
  if (!across || across.length < 2) return;
  const along = (scale.range ?? []).map(Number);
  const [from, to] = [Math.min(...along) + 14, Math.max(...along) - 14];
  const edge = name === "x" ? Math.min(...across) : Math.max(...across);
  const inside = ticks.filter(({at}) => at >= from && at <= to);
  const last = name === "x" ? inside.length - 1 : inside.findIndex(({at}) => at === Math.min(...inside.map((each) => each.at)));
  const texts = inside.map(({text, at}, i) => svgElement(
    "text",
    name === "x" ? {x: at, y: edge + 11, "text-anchor": "middle"} : {x: edge - 6, y: at, dy: "0.32em", "text-anchor": "end"},
    text + (i === last ? `\u00a0${unit.si}` : ""),
  ));
  const marks = inside.map(({at}) => svgElement("path", {d: name === "x" ? `M${at} ${edge}v3` : `M${edge} ${at}h-3`, stroke: "currentColor"}));
  labels.parentElement?.append(svgElement("g", {class: "second-scale", "aria-hidden": "true", "data-units": "as is"}, ...marks, ...texts));
}

import type {MeasureEntry} from "../../lib/schemes/measures/measureList.js";
import type {MeasureKey} from "../../lib/schemes/measures/schemeMeasures.js";
import type {Range, Ranges} from "../../lib/schemes/cells.js";
import {decimals} from "../../lib/units.js";
import {button} from "../../components/controls.js";
import {numberBox} from "../../components/controls/numberBox.js";
import {element, uniqueId} from "../../components/dom.js";

/** Beyond any measure. */
const MOST = 1e9;

/** What the reader ticks, and within which ranges schemes count. */
export interface BayFilters {
  readonly node: HTMLElement;
  ticked(): readonly MeasureEntry[];
  ranges(): Ranges;
  /** Takes ranges that were marked out in a chart. */
  brush(ranges: readonly (readonly [MeasureEntry, Range])[]): void;
  /** Shows another list of measures; what was ticked stays so where it is still there. */
  offer(entries: readonly MeasureEntry[], first: readonly MeasureKey[]): void;
}

/** Measures to tick, each with the least and the most that is wanted; all by keyboard, and by brushing in the charts. */
export function bayFilters(changed: () => void): BayFilters {
  let entries: readonly MeasureEntry[] = [];
  let ticks = new Set<MeasureKey>();
  const ranges = new Map<MeasureKey, Range>();
  const list = element("div", {class: "bay-ticks"});
  const clear = button("Clear the ranges", () => {
    ranges.clear();
    draw();
    changed();
  }, {quiet: true});
  const node = element("fieldset", {class: "bay-filters"}, element("legend", {class: "control-label"}, "What counts for you, and within which range?"), list, element("p", {class: "row"}, clear));

  const bound = (entry: MeasureEntry, end: 0 | 1): HTMLElement => {
    const words = `${entry.name}, ${end === 0 ? "least" : "most"}`;
    const {input, message, show} = numberBox({
      rule: {path: `${entry.key}.${end === 0 ? "least" : "most"}`, label: words, unit: "", min: -MOST, max: MOST, step: 10 ** -entry.decimals},
      name: entry.unit ? `${words}, ${entry.unit}` : words, unset: end === 0 ? "from" : "to",
      get: () => {
        const value = ranges.get(entry.key)?.[end];
        return value === undefined ? undefined : Number(value.toPrecision(4));
      },
      set(value) {
        const [least, most] = ranges.get(entry.key) ?? [undefined, undefined];
        set(entry.key, end === 0 ? [value, most] : [least, value]);
        changed();
      },
    });
    show();
    return element("span", {class: "bay-bound"}, input, message.node);
  };
  const set = (key: MeasureKey, [least, most]: Range) => {
    if (least === undefined && most === undefined) ranges.delete(key);
    else ranges.set(key, [least, most]);
    clear.disabled = ranges.size === 0;
  };
  const draw = () => {
    clear.disabled = ranges.size === 0;
    list.replaceChildren(...entries.map((entry) => {
      const id = uniqueId("tick");
      const box = element("input", {type: "checkbox", id, checked: ticks.has(entry.key)});
      box.addEventListener("change", () => {
        if (box.checked) ticks.add(entry.key);
        else ticks.delete(entry.key);
        if (!box.checked) ranges.delete(entry.key);
        draw();
        list.querySelector<HTMLInputElement>(`[data-key="${entry.key}"]`)?.focus();
        changed();
      });
      box.dataset["key"] = entry.key;
      return element("div", {class: "bay-tick"}, element("label", {for: id}, box, ` ${entry.name}${entry.unit ? `, ${entry.unit}` : ""}`),
        ...(ticks.has(entry.key) ? [element("span", {class: "bay-bounds"}, bound(entry, 0), " to ", bound(entry, 1))] : []));
    }));
  };
  return {
    node,
    ticked: () => entries.filter(({key}) => ticks.has(key)),
    ranges: () => ranges,
    brush(list) {
      for (const [{key}, range] of list) set(key, range);
      draw();
      changed();
    },
    offer(next, first) {
      entries = next;
      const keys = new Set(entries.map(({key}) => key));
      ticks = new Set([...ticks].filter((key) => keys.has(key)));
      if (ticks.size === 0) ticks = new Set(first.filter((key) => keys.has(key)));
      for (const key of [...ranges.keys()]) if (!keys.has(key)) ranges.delete(key);
      draw();
    },
  };
}

/** Ranges in words, for those that are set. */
export function rangeWords(entries: readonly MeasureEntry[], ranges: Ranges): string {
  const words = entries.flatMap((entry) => {
    const [least, most] = ranges.get(entry.key) ?? [undefined, undefined];
    const text = (value: number) => `${decimals(value, entry.decimals)}${entry.unit ? ` ${entry.unit}` : ""}`;
    if (least === undefined && most === undefined) return [];
    return [`${entry.name} ${least === undefined ? `up to ${text(most as number)}` : most === undefined ? `from ${text(least)}` : `from ${text(least)} to ${text(most)}`}`];
  });
  return words.join(", ");
}

import type {Range, Ranges} from "../../lib/schemes/cells.js";
import type {MeasureEntry} from "../../lib/schemes/measures/measureList.js";
import type {MeasureKey} from "../../lib/schemes/measures/schemeMeasures.js";
import type {SchemeRow} from "../../lib/schemes/schemeRow.js";
import {decimals} from "../../lib/units.js";
import {measureName, measureUnit} from "../../components/compare/words.js";
import {button} from "../../components/controls.js";
import {element, uniqueId} from "../../components/dom.js";
import {unitText} from "../../components/symbols.js";
import {measureRange, type MeasureRange} from "./measureRange.js";

/** What the reader ticks, and within which ranges schemes count. */
export interface BayFilters {
  readonly node: HTMLElement;
  ticked(): readonly MeasureEntry[];
  ranges(): Ranges;
  /** Takes ranges that were marked out in a chart. */
  brush(ranges: readonly (readonly [MeasureEntry, Range])[]): void;
  /** Shows another list of measures; what was ticked stays so where it is still there. */
  offer(entries: readonly MeasureEntry[], first: readonly MeasureKey[]): void;
  /** The schemes among which the ranges choose. */
  among(rows: readonly SchemeRow[]): void;
}

/** Measures to tick, each with its range: a line with two handles and a box for either end. */
export function bayFilters(changed: () => void): BayFilters {
  let entries: readonly MeasureEntry[] = [];
  let ticks = new Set<MeasureKey>();
  let rows: readonly SchemeRow[] = [];
  const ranges = new Map<MeasureKey, Range>();
  let shown = new Map<MeasureKey, MeasureRange>();
  const list = element("div", {class: "bay-ticks"});
  const clear = button("Clear the ranges", () => {
    ranges.clear();
    show();
    changed();
  }, {quiet: true});
  const node = element("fieldset", {class: "bay-filters control"}, element("legend", {class: "control-label"}, "What counts for you, and within which range?"), list, element("p", {class: "row"}, clear));

  const set = (key: MeasureKey, [least, most]: Range) => {
    if (least === undefined && most === undefined) ranges.delete(key);
    else ranges.set(key, [least, most]);
  };
  const show = () => {
    clear.disabled = ranges.size === 0;
    for (const range of shown.values()) range.show(rows);
  };
  const draw = () => {
    shown = new Map(entries.filter(({key}) => ticks.has(key)).map((entry) => [entry.key, measureRange(entry, () => ranges.get(entry.key) ?? [undefined, undefined], (range) => {
      set(entry.key, range);
      show();
      changed();
    })]));
    list.replaceChildren(...entries.map((entry) => {
      const id = uniqueId("tick");
      const box = element("input", {type: "checkbox", id, checked: ticks.has(entry.key), "data-key": entry.key});
      box.addEventListener("change", () => {
        if (box.checked) ticks.add(entry.key);
        else {
          ticks.delete(entry.key);
          ranges.delete(entry.key);
        }
        draw();
        list.querySelector<HTMLInputElement>(`[data-key="${entry.key}"]`)?.focus();
        changed();
      });
      return element("div", {class: "bay-tick"}, element("label", {for: id}, box, ` ${measureName(entry)}`), shown.get(entry.key)?.node ?? null);
    }));
    show();
  };
  return {
    node,
    ticked: () => entries.filter(({key}) => ticks.has(key)),
    ranges: () => ranges,
    brush(marked) {
      for (const [{key}, range] of marked) set(key, range);
      show();
      changed();
    },
    offer(next, first) {
      entries = next;
      const keys = new Set(entries.map(({key}) => key));
      ticks = new Set([...ticks].filter((key) => keys.has(key)));
      if (ticks.size === 0) ticks = new Set(first.filter((key) => keys.has(key)));
      for (const key of [...ranges.keys()]) if (!ticks.has(key)) ranges.delete(key);
      draw();
    },
    among(next) {
      if (next === rows) return;
      rows = next;
      show();
    },
  };
}

/** Ranges in words, for those that are set. */
export function rangeWords(entries: readonly MeasureEntry[], ranges: Ranges): string {
  const words = entries.flatMap((entry) => {
    const [least, most] = ranges.get(entry.key) ?? [undefined, undefined];
    const text = (value: number) => `${decimals(value, entry.decimals)} ${measureUnit(entry.unit)}`.trim();
    const name = unitText(entry.name);
    if (least === undefined && most === undefined) return [];
    return [`${name} ${least === undefined ? `up to ${text(most as number)}` : most === undefined ? `from ${text(least)}` : `from ${text(least)} to ${text(most)}`}`];
  });
  return words.join(", ");
}

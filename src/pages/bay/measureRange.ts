import {InputError} from "../../lib/errors.js";
import type {Range} from "../../lib/schemes/cells.js";
import type {MeasureEntry} from "../../lib/schemes/measures/measureList.js";
import {measureOf, type SchemeRow} from "../../lib/schemes/schemeRow.js";
import {measureUnit} from "../../components/compare/words.js";
import {numberBox} from "../../components/controls/numberBox.js";
import {rangeBrush} from "../../components/controls/rangeBrush.js";
import {element} from "../../components/dom.js";
import {unitText} from "../../components/symbols.js";

/** The range of one measure: a line with two handles over the values that there are, and a box for either end. */
export interface MeasureRange {
  readonly node: HTMLElement;
  /** Shows the range as it is kept, over the values of some schemes. */
  show(rows: readonly SchemeRow[]): void;
}

/** No measure is less than nothing, or as much as this. */
const MOST = 1e6;
/** A key moves a handle by about this part of the line. */
const STEPS = 50;

export function measureRange(entry: MeasureEntry, get: () => Range, set: (range: Range) => void): MeasureRange {
  const unit = measureUnit(entry.unit);
  const brush = rangeBrush({name: unitText(entry.name), unit, get, set, free: true});
  const boxes = ([0, 1] as const).map((end) => {
    const word = end === 0 ? "least" : "most";
    const name = `${unitText(entry.name)}, ${word}`;
    return numberBox({
      rule: {path: `${entry.key}.${word}`, label: name, unit, min: 0, max: MOST, step: 10 ** -entry.decimals},
      name: unit ? `${name}, ${unit}` : name, unset: end === 0 ? "from" : "to",
      get: () => {
        const value = get()[end];
        return value === undefined ? undefined : Number(value.toPrecision(6));
      },
      set(value) {
        const next: Range = end === 0 ? [value, get()[1]] : [get()[0], value];
        const [least, most] = next;
        if (least !== undefined && most !== undefined && least > most) {
          throw new InputError({path: `${entry.key}.${word}`, label: name, value, unit, allowed: end === 0 ? `up to ${most}: the range ends there` : `${least} and more: the range begins there`});
        }
        set(next);
      },
    });
  });
  let known: readonly SchemeRow[] | undefined;
  let values: readonly number[] = [];
  let [from, to] = [0, 1];
  return {
    node: element("div", {class: "measure-range"}, brush.node, element("span", {class: "bay-bounds"}, boxes[0]?.input ?? null, " to ", boxes[1]?.input ?? null), ...boxes.map(({message}) => message.node)),
    show(rows) {
      if (rows !== known) {
        known = rows;
        values = rows.flatMap((row) => measureOf(row, entry) ?? []);
        [from, to] = values.length > 0 ? [Infinity, -Infinity] : [0, 1];
        for (const value of values) [from, to] = [Math.min(from, value), Math.max(to, value)];
      }
      brush.show({from, to, values, step: stepOf(to - from, entry.decimals)});
      for (const box of boxes) box.show();
    },
  };
}

/** A round step for a handle: about a fiftieth of the line, and no finer than the measure is shown. */
function stepOf(length: number, places: number): number {
  const least = 10 ** -places;
  const wanted = length / STEPS;
  if (wanted <= least) return least;
  const tens = 10 ** Math.floor(Math.log10(wanted));
  return [1, 2, 5, 10].map((times) => times * tens).find((step) => step >= wanted) ?? 10 * tens;
}

import {InputError} from "../../lib/errors.js";
import {readTyped} from "../../lib/typed.js";
import {element, uniqueId} from "../dom.js";
import {shownUnit, whenReadAnew} from "../reader/system.js";

/** A box to tick with its label. */
export interface Tick {
  readonly node: HTMLElement;
  readonly input: HTMLInputElement;
}

/** A box to tick; `title` says more where the label is terse. */
export function tick(label: string | Node, {checked = false, title, listed}: {checked?: boolean; title?: string; listed?: string} = {}): Tick {
  const input = element("input", {type: "checkbox", id: uniqueId("tick"), "aria-label": listed, checked});
  return {input, node: element("label", {class: "tick", for: input.id, title}, input, element("span", {}, label))};
}

/** A box for a number; empty reads as undefined. */
export interface NumberEntry {
  readonly node: HTMLElement;
  readonly input: HTMLInputElement;
  value(): number | undefined;
  /** Shows a number of the entry's own unit. */
  put(value: number): void;
}

/** A number with its label above and its unit beside it. A length in feet may be typed in feet and inches; `value` throws InputError where it cannot be read. */
export function numberEntry(label: string, unit: string, {value, min, max, step}: {value?: number; min: number; max: number; step?: number}): NumberEntry {
  const inFeet = unit === "ft";
  const input = element("input", {id: uniqueId("entry"), class: "number-box", ...(inFeet ? {type: "text", autocomplete: "off"} : {type: "number"})});
  let factor = 1;
  const read = (): number | undefined => {
    if (input.value === "") return undefined;
    return inFeet ? readTyped(input.value, {path: "", label, unit, min, max}, factor === 1 ? undefined : factor) : Number(input.value) / factor;
  };
  const put = (next: number | undefined) => {
    const shown = shownUnit(unit, step);
    factor = shown && !shown.beside ? shown.factor : 1;
    input.value = next === undefined || Number.isNaN(next) ? "" : factor === 1 || !shown ? String(next) : String(Number((next * factor).toFixed(shown.places)));
    if (inFeet) return;
    input.min = String(min * factor);
    input.max = String(max * factor);
    input.step = factor === 1 ? String(step ?? "any") : "any";
  };
  put(value);
  whenReadAnew(input, () => {
    let now: number | undefined;
    try {
      now = read();
    } catch (problem) {
      if (!(problem instanceof InputError)) throw problem;
      // What cannot be read stays as it was typed.
      return;
    }
    put(now);
  });
  return {
    input, put,
    node: element("div", {class: "table-choice"}, element("label", {for: input.id}, unit ? `${label}, ${unit}` : label), input),
    value: read,
  };
}

/** A list to choose one of, with its label above. */
export interface ListEntry {
  readonly node: HTMLElement;
  readonly select: HTMLSelectElement;
  /** Replaces what can be chosen; keeps the choice where it is still there. */
  offer(options: readonly (readonly [value: string, label: string])[]): void;
}

export function listEntry(label: string, options: readonly (readonly [value: string, label: string])[]): ListEntry {
  const select = element("select", {id: uniqueId("list")});
  const offer: ListEntry["offer"] = (next) => {
    const chosen = select.value;
    select.replaceChildren(...next.map(([value, words]) => element("option", {value}, words)));
    if (next.some(([value]) => value === chosen)) select.value = chosen;
  };
  offer(options);
  return {select, offer, node: element("div", {class: "table-choice"}, element("label", {for: select.id}, label), select)};
}

/** Choices that belong together, under a name. */
export function group(name: string, ...children: readonly (Node | null)[]): HTMLFieldSetElement {
  return element("fieldset", {class: "choice-group"}, element("legend", {}, name), ...children);
}

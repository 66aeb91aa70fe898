import {readTyped} from "../../lib/typed.js";
import {element, uniqueId} from "../dom.js";

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
}

/** A number with its label above and its unit beside it. A length in feet may be typed in feet and inches; `value` throws InputError where it cannot be read. */
export function numberEntry(label: string, unit: string, {value, min, max, step}: {value?: number; min: number; max: number; step?: number}): NumberEntry {
  const inFeet = unit === "ft";
  const input = element("input", {id: uniqueId("entry"), class: "number-box", value, ...(inFeet ? {type: "text", autocomplete: "off"} : {type: "number", min, max, step: step ?? "any"})});
  return {
    input,
    node: element("div", {class: "table-choice"}, element("label", {for: input.id}, unit ? `${label}, ${unit}` : label), input),
    value: () => (input.value === "" ? undefined : inFeet ? readTyped(input.value, {path: "", label, unit, min, max}) : Number(input.value)),
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

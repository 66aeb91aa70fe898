import {requireNumber, type NumberRule} from "../../lib/check.js";
import {numberField} from "../controls/number.js";
import {element, uniqueId} from "../dom.js";
import type {Observe} from "./deckSearch.js";

/** A value that belongs to a page and is not kept with the design. Fits `Generators.observe`. */
export interface PageValue<T> {
  readonly node: HTMLElement;
  readonly get: () => T;
  readonly observe: Observe<T>;
}

/** A number that other parts of the page set too, as a chart does. */
export interface PageNumber extends PageValue<number> {
  /** Throws InputError for a number that is not possible. */
  readonly set: (value: number) => void;
}

/** A choice that other parts of the page set too. */
export interface PageChoice<T> extends PageValue<T> {
  readonly set: (value: T) => void;
}

/** A value with its listeners. */
function held<T>(first: T): {get: () => T; set: (value: T) => void; observe: Observe<T>} {
  let value = first;
  const listeners = new Set<(value: T) => void>();
  return {
    get: () => value,
    set(next) {
      value = next;
      for (const tell of listeners) tell(next);
    },
    observe(change) {
      listeners.add(change);
      change(value);
      return () => void listeners.delete(change);
    },
  };
}

/** A number of the page, set as one of the design is. */
export function pageNumber({help, value, ...rule}: NumberRule & {readonly step: number; readonly value: number; readonly help?: string}): PageNumber {
  const {get, set, observe} = held(value);
  const setChecked = (next: number | undefined) => set(requireNumber(next, rule));
  const {node, show} = numberField({rule, get, set: setChecked}, {compact: help === undefined, help});
  observe(show);
  return {node, get, observe, set: setChecked};
}

/** One of a few choices of the page, side by side. */
export function pageChoice<T extends string>(label: string, choices: readonly {readonly value: T; readonly label: string}[], value: T): PageChoice<T> {
  const {get, set, observe} = held(value);
  const name = uniqueId("page-choice");
  const inputs = choices.map((choice) => element("input", {type: "radio", name, value: choice.value, id: `${name}-${choice.value}`}));
  const node = element("fieldset", {class: "control choice compact"}, element("legend", {class: "control-label"}, label),
    element("div", {class: "segments"}, ...choices.flatMap((choice, i) => {
      const input = inputs[i] as HTMLInputElement;
      return [input, element("label", {for: input.id}, choice.label)];
    })));
  node.addEventListener("change", () => {
    const chosen = inputs.find((input) => input.checked);
    if (chosen) set(chosen.value as T);
  });
  observe((now) => {
    for (const input of inputs) input.checked = input.value === now;
  });
  return {node, get, observe, set};
}

import {InputError} from "../../lib/errors.js";
import {requireNumber, type NumberRule} from "../../lib/check.js";
import {messageFor} from "../controls/frame.js";
import {formatPlain} from "../controls/number.js";
import {element, uniqueId} from "../dom.js";
import type {Observe} from "./deckSearch.js";

/** A value that belongs to a page and is not kept with the design. Fits `Generators.observe`. */
export interface PageValue<T> {
  readonly node: HTMLElement;
  readonly get: () => T;
  readonly observe: Observe<T>;
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

/** A number of the page: label, slider, box and unit. Arrow keys go one step, with Shift ten. */
export function pageNumber(rule: NumberRule & {readonly step: number; readonly value: number; readonly help?: string}): PageValue<number> {
  const {label, unit, min, max, step, value, help} = rule;
  const {get, set, observe} = held(value);
  const id = uniqueId("page-number");
  const slider = element("input", {type: "range", min, max, step, class: "slider", "aria-label": `${label}${unit ? `, ${unit}` : ""}: slider`});
  const box = element("input", {id, type: "text", inputmode: "decimal", autocomplete: "off", class: "number-box"});
  const message = messageFor([box]);
  box.setAttribute("aria-describedby", message.id);
  const show = () => {
    slider.value = String(get());
    slider.style.setProperty("--filled", `${(100 * (get() - min)) / (max - min)}%`);
    slider.setAttribute("aria-valuetext", `${formatPlain(get())} ${unit}`.trim());
    box.value = formatPlain(get());
    message.clear();
  };
  const take = (next: number) => {
    if (message.attempt(() => set(requireNumber(next, rule)))) show();
  };
  const typed = () => {
    const text = box.value.trim().replace(/,/g, "");
    if (text !== "" && Number.isFinite(Number(text))) take(Number(text));
    else message.attempt(() => {
      throw new InputError({path: rule.path, label, value: box.value, allowed: `a number, ${min} to ${max}${unit ? ` ${unit}` : ""}`});
    });
  };
  slider.addEventListener("input", () => take(Number(slider.value)));
  box.addEventListener("change", typed);
  box.addEventListener("keydown", (event) => {
    if (event.key === "Enter") typed();
    if (event.key !== "ArrowUp" && event.key !== "ArrowDown") return;
    event.preventDefault();
    const far = (event.key === "ArrowUp" ? 1 : -1) * (event.shiftKey ? 10 : 1) * step;
    take(Math.min(max, Math.max(min, get() + far)));
  });
  show();
  const capital = label.charAt(0).toUpperCase() + label.slice(1);
  return {
    get, observe,
    node: element("div", {class: `control number${help ? "" : " compact"}`}, element("label", {for: id, class: "control-label"}, capital), slider,
      element("span", {class: "number-entry"}, box, unit ? element("span", {class: "unit", "aria-hidden": "true"}, unit) : null), message.node, help ? element("p", {class: "control-help"}, help) : null),
  };
}

/** One of a few choices of the page, side by side. */
export function pageChoice<T extends string>(label: string, choices: readonly {readonly value: T; readonly label: string}[], value: T): PageValue<T> {
  const {get, set, observe} = held(value);
  const name = uniqueId("page-choice");
  const inputs = choices.map((choice) => element("input", {type: "radio", name, value: choice.value, id: `${name}-${choice.value}`}));
  for (const input of inputs) input.checked = input.value === value;
  const node = element("fieldset", {class: "control choice compact"}, element("legend", {class: "control-label"}, label),
    element("div", {class: "segments"}, ...choices.flatMap((choice, i) => {
      const input = inputs[i] as HTMLInputElement;
      return [input, element("label", {for: input.id}, choice.label)];
    })));
  node.addEventListener("change", () => {
    const chosen = inputs.find((input) => input.checked);
    if (chosen) set(chosen.value as T);
  });
  return {node, get, observe};
}

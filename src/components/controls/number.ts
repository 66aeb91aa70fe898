import {InputError} from "../../lib/errors.js";
import {valueAt} from "../../lib/design/edit.js";
import {OPTIONAL, type NumberField} from "../../lib/design/fields.js";
import type {DesignStore} from "../store.js";
import {element, uniqueId} from "../dom.js";
import {unitText} from "../symbols.js";
import {follow} from "./follow.js";
import {helpFor, labelOf, messageFor, requireField, type ControlOptions} from "./frame.js";

/** Shift with an arrow key, and the page keys, go this many steps at once. */
const COARSE = 10;

export interface NumberOptions extends ControlOptions {
  /** Step and range of the slider where they differ from the field's; the box takes what the field allows. */
  readonly step?: number;
  readonly min?: number;
  readonly max?: number;
  /** What an empty optional value means, such as "the member's own". */
  readonly unset?: string;
}

/** A number of the design: label, slider, box and unit. Arrow keys go one step, with Shift ten. */
export function numberControl(store: DesignStore, path: string, options: NumberOptions = {}): HTMLElement {
  const field = requireField(path);
  if (field.kind !== "number") throw new Error(`${path} is not a number.`);
  const {step = field.step, min = field.min, max = field.max, compact} = options;
  const words = options.label ?? field.label;
  const help = helpFor(options.help ?? field.help, compact);
  const boxId = uniqueId("number");
  const unit = unitText(field.unit);
  const spoken = (value: number) => `${formatPlain(value)} ${unit}`.trim();

  const slider = element("input", {
    type: "range", min, max, step: "any", class: "slider",
    "aria-label": `${words}${unit ? `, ${unit}` : ""}: slider`, "aria-describedby": help.id,
  });
  const box = element("input", {id: boxId, type: "text", inputmode: "decimal", autocomplete: "off", class: "number-box", placeholder: options.unset});
  const message = messageFor([box]);
  box.setAttribute("aria-describedby", `${help.id} ${message.id}`);

  const current = () => valueAt(store.get(), path) as number | undefined;
  const isTyping = () => document.activeElement === box && box.hasAttribute("data-typing");
  /** The value, or the reason why it was not taken beside the value that stays. */
  const take = (value: number) => {
    message.attempt(() => store.set(path, Math.min(max, Math.max(min, onGrid(value, step)))));
    show();
  };
  const show = () => {
    const value = current();
    const shown = value ?? (min + max) / 2;
    slider.value = String(shown);
    slider.setAttribute("aria-valuetext", value === undefined ? (options.unset ?? "not set") : spoken(value));
    slider.style.setProperty("--filled", `${(100 * (Math.min(max, Math.max(min, shown)) - min)) / (max - min)}%`);
    if (!isTyping()) box.value = value === undefined ? "" : formatPlain(value);
  };
  const typed = () => {
    box.removeAttribute("data-typing");
    const text = box.value.trim().replace(/,/g, "");
    const unset = text === "" && OPTIONAL.has(path);
    if (message.attempt(() => store.set(path, unset ? undefined : readNumber(text, path, field)))) show();
  };
  const byKey = (event: KeyboardEvent) => {
    const steps = stepsOf(event);
    if (steps === undefined) return;
    event.preventDefault();
    box.removeAttribute("data-typing");
    take((current() ?? Number(slider.value)) + steps * step);
  };

  slider.addEventListener("input", () => take(Number(slider.value)));
  slider.addEventListener("keydown", byKey);
  box.addEventListener("input", () => box.setAttribute("data-typing", ""));
  box.addEventListener("change", typed);
  box.addEventListener("keydown", (event) => {
    if (event.key === "Enter") typed();
    else if (event.key.startsWith("Arrow") && (event.key === "ArrowUp" || event.key === "ArrowDown")) byKey(event);
  });

  const node = element(
    "div",
    {class: `control number${compact ? " compact" : ""}`, "data-path": path},
    element("label", {for: boxId, class: "control-label"}, labelOf(words)),
    slider,
    element("span", {class: "number-entry"}, box, unit && element("span", {class: "unit", "aria-hidden": "true"}, unit)),
    message.node,
    help.node,
  );
  follow(store, node, () => {
    show();
    // A reason was for the design as it stood.
    if (!isTyping()) message.clear();
  });
  return node;
}

/** The number that a text means; throws what the field would say of anything else. */
function readNumber(text: string, path: string, field: NumberField): number {
  const value = text === "" ? NaN : Number(text);
  if (Number.isFinite(value)) return value;
  throw new InputError({path, label: field.label, value: text, allowed: `a number, ${field.min} to ${field.max}${field.unit ? ` ${field.unit}` : ""}`});
}

/** Steps that a key asks for, or undefined. */
function stepsOf(event: KeyboardEvent): number | undefined {
  if (event.ctrlKey || event.metaKey || event.altKey) return undefined;
  const one = event.shiftKey ? COARSE : 1;
  switch (event.key) {
    case "ArrowUp":
    case "ArrowRight":
      return one;
    case "ArrowDown":
    case "ArrowLeft":
      return -one;
    case "PageUp":
      return COARSE;
    case "PageDown":
      return -COARSE;
    default:
      return undefined;
  }
}

/** The nearest whole multiple of the step, free of the binary remainder. */
function onGrid(value: number, step: number): number {
  return Number((Math.round(value / step) * step).toFixed(6));
}

/** A number as it is typed: no more digits than it has. */
export function formatPlain(value: number): string {
  return Number(value.toFixed(6)).toString();
}

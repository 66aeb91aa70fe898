import {valueAt} from "../../lib/design/plain.js";
import {isOptional} from "../../lib/design/fields.js";
import type {DesignStore} from "../store.js";
import {element} from "../dom.js";
import {unitText} from "../symbols.js";
import {follow} from "./follow.js";
import {helpFor, labelOf, requireField, type ControlOptions} from "./frame.js";
import {keyedValue, numberBox, onRange, spokenNumber, type SetNumber} from "./numberBox.js";

/** What a number's slider may be reported. */
export interface SliderOptions extends ControlOptions {
  /** Step and range of the slider where they differ from the number's; the box takes what the number allows. */
  readonly step?: number;
  readonly min?: number;
  readonly max?: number;
}

export interface NumberOptions extends SliderOptions {
  /** What an empty optional value means, such as "the member's own". */
  readonly unset?: string;
}

/** A number with a slider. */
export interface NumberField {
  readonly node: HTMLElement;
  /** Shows the value after it may have changed. */
  show(): void;
}

/** A number: label, slider, box and unit. On the slider arrow keys go one of its steps, with Shift ten; see {@link numberBox} for the box. */
export function numberField(number: SetNumber, options: SliderOptions = {}): NumberField {
  const {rule, get, unset} = number;
  const {step = rule.step, min = rule.min, max = rule.max, compact} = options;
  const words = options.label ?? rule.label;
  const unit = unitText(rule.unit);
  const help = options.help === undefined ? undefined : helpFor(options.help, compact);
  const box = numberBox(number, help?.id);
  const slider = element("input", {
    type: "range", min, max, step: "any", class: "slider",
    "aria-label": `${words}${unit ? `, ${unit}` : ""}: slider`, "aria-describedby": help?.id,
  });
  const steps = {...rule, min, max, step};
  const slide = () => {
    const value = get();
    const shown = value ?? (min + max) / 2;
    slider.value = String(shown);
    slider.setAttribute("aria-valuetext", value === undefined ? (unset ?? "not set") : spokenNumber(value, steps));
    slider.style.setProperty("--filled", `${(100 * (Math.min(max, Math.max(min, shown)) - min)) / (max - min)}%`);
  };
  const take = (value: number) => {
    box.take(onRange(value, steps));
    slide();
  };
  slider.addEventListener("input", () => take(Number(slider.value)));
  slider.addEventListener("keydown", (event) => {
    const next = keyedValue(event, steps, get() ?? Number(slider.value));
    if (next === undefined) return;
    event.preventDefault();
    take(next);
  });
  slide();
  return {
    node: element(
      "div",
      {class: `control number${compact ? " compact" : ""}`},
      element("label", {for: box.input.id, class: "control-label"}, labelOf(words)),
      slider,
      box.entry,
      box.message.node,
      help?.node,
    ),
    show() {
      slide();
      box.show();
    },
  };
}

/** A number of the design, made from its field; see {@link numberField}. */
export function numberControl(store: DesignStore, path: string, options: NumberOptions = {}): HTMLElement {
  const field = requireField(path);
  if (field.kind !== "number") throw new Error(`${path} is not a number.`);
  const unset = isOptional(path) ? {unset: options.unset ?? ""} : {};
  const {node, show} = numberField({
    rule: {...field, path},
    get: () => valueAt(store.get(), path) as number | undefined,
    set: (value) => store.set(path, value),
    ...unset,
  }, {...options, help: options.help ?? field.help});
  node.dataset["path"] = path;
  follow(store, node, show);
  return node;
}

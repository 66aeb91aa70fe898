import type {NumberRule} from "../../lib/check.js";
import {readTyped, typedText} from "../../lib/typed.js";
import {IN_PER_FT} from "../../lib/units.js";
import {element, uniqueId} from "../dom.js";
import {unitText} from "../symbols.js";
import {messageFor, type Message} from "./frame.js";
import {begunTyping, endedTyping, isTyped} from "../typing.js";

/** Shift with an arrow key, and the page keys, go this many steps at once; of inches, a foot. */
const COARSE = 10;

/** A number that a reader may set: what it is called, its range and step, and where it is kept. */
export interface SetNumber {
  readonly rule: NumberRule & {readonly step: number};
  readonly get: () => number | undefined;
  /** Throws InputError for a value that is not possible; an empty box of an optional number gives undefined. */
  readonly set: (value: number | undefined) => void;
  /** What an empty box means, such as "the member's own"; only where the number may be left out. */
  readonly unset?: string;
  /** The number that an empty box stands for, where that is known: it is set in its place. */
  readonly usual?: () => number;
  /** What those who listen hear the box called, where no label is tied to it. */
  readonly name?: string;
}

/** A box for a number with its unit and the reason why a text was not taken. */
export interface NumberBox {
  readonly input: HTMLInputElement;
  /** The box with its unit. */
  readonly entry: HTMLElement;
  readonly message: Message;
  /** Shows the value as it is kept, without a reason that was for another; what is being typed or was refused stays. */
  show(): void;
  /** Sets a value; shows the reason beside the value that stays where it is not possible. */
  take(value: number): void;
}

/**
 * A box for a number. Lengths may be typed in feet and inches; feet are shown as drawings write them. The text is taken by
 * Enter, on leaving the box, and when the page goes; a refused text stays as it was typed until it is mended or given up by
 * Escape. Arrow keys go one step, with Shift ten; in feet, an inch and a foot.
 */
export function numberBox(number: SetNumber, describedBy = ""): NumberBox {
  const {rule, get, set, unset, usual, name} = number;
  const {unit, min, max} = rule;
  const inFeet = unit === "ft";
  const input = element("input", {
    id: uniqueId("number"), type: "text", inputmode: inFeet || unit === "in" ? "text" : "decimal", autocomplete: "off", spellcheck: "false", class: inFeet ? "number-box in-feet" : "number-box", placeholder: unset, "aria-label": name,
    title: inFeet ? "Feet and inches: 14'-8\", 14-8, 14.667 or 176in" : undefined,
  });
  const message = messageFor([input]);
  input.setAttribute("aria-describedby", `${describedBy} ${message.id}`.trim());

  let written = "";
  const write = () => {
    endedTyping(input);
    const value = get();
    written = value === undefined ? "" : typedText(value, unit);
    input.value = written;
  };
  const show = () => {
    if (isTyped(input)) return;
    message.clear();
    write();
  };
  const take = (value: number) => {
    message.attempt(() => set(value));
    write();
  };
  const meant = (text: string) => {
    if (text !== "") return readTyped(text, rule);
    return unset !== undefined ? undefined : usual ? usual() : readTyped(text, rule);
  };
  const typed = (): string | undefined => {
    const text = input.value.trim();
    // What is shown is rounded; to type it again is no change.
    if (!message.attempt(() => text === written || set(meant(text)))) return message.node.textContent ?? "";
    write();
    return undefined;
  };
  const begun = () => begunTyping(input, typed);
  // A change comes without typing where a reader's tools fill the box.
  const left = () => {
    begun();
    typed();
  };
  input.addEventListener("input", begun);
  input.addEventListener("change", left);
  input.addEventListener("keydown", (event) => {
    if (event.key === "Enter") left();
    if (event.key === "Escape" && isTyped(input)) {
      message.clear();
      write();
    }
    const steps = event.key === "ArrowUp" || event.key === "ArrowDown" ? stepsOf(event, inFeet ? IN_PER_FT : COARSE) : undefined;
    if (steps === undefined) return;
    event.preventDefault();
    const from = get() ?? usual?.() ?? (min + max) / 2;
    const step = inFeet ? 1 / IN_PER_FT : rule.step;
    take(onRange(from + steps * step, {min, max, step}));
  });
  write();
  return {
    input, message, show, take,
    // Feet carry their mark with them.
    entry: element("span", {class: "number-entry"}, input, unit !== "" && !inFeet && element("span", {class: "unit", "aria-hidden": "true"}, unitText(unit))),
  };
}

/** Steps that a key asks for, or undefined; `coarse` with Shift and by the page keys. */
export function stepsOf(event: KeyboardEvent, coarse = COARSE): number | undefined {
  if (event.ctrlKey || event.metaKey || event.altKey) return undefined;
  const one = event.shiftKey ? coarse : 1;
  switch (event.key) {
    case "ArrowUp":
    case "ArrowRight":
      return one;
    case "ArrowDown":
    case "ArrowLeft":
      return -one;
    case "PageUp":
      return coarse;
    case "PageDown":
      return -coarse;
    default:
      return undefined;
  }
}

/** The value that a key asks for: so many steps on, or an end of the range; undefined for any other key. */
export function keyedValue(event: KeyboardEvent, {min, max, step}: SetNumber["rule"], from: number): number | undefined {
  if (event.key === "Home") return min;
  if (event.key === "End") return max;
  const steps = stepsOf(event);
  return steps === undefined ? undefined : from + steps * step;
}

/** A number as those hear it who listen: feet as drawings write them, all else with its unit. */
export function spokenNumber(value: number, unit: string): string {
  return unit === "ft" ? typedText(value, "ft") : `${typedText(value, unit)} ${unitText(unit)}`.trim();
}

/** The nearest whole multiple of the step within the range. */
export function onRange(value: number, {min, max, step}: Pick<SetNumber["rule"], "min" | "max" | "step">): number {
  return Math.min(max, Math.max(min, onGrid(value, step)));
}

/** The nearest whole multiple of the step, free of the binary remainder. */
export function onGrid(value: number, step: number): number {
  const steps = Math.round(value / step);
  // A twelfth has no end in decimals.
  return step < 1 && Number.isInteger(Number((1 / step).toFixed(9))) ? steps / Math.round(1 / step) : Number((steps * step).toFixed(6));
}

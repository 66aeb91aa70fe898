import type {NumberRule} from "../../lib/check.js";
import {formatPlain, readTyped, typedText} from "../../lib/typed.js";
import {IN_PER_FT} from "../../lib/units.js";
import {element, uniqueId} from "../dom.js";
import {shownUnit, whenReadAnew, type ShownUnit} from "../reader/system.js";
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
  });
  const message = messageFor([input]);
  input.setAttribute("aria-describedby", `${describedBy} ${message.id}`.trim());

  // The reader's own units may change while the page stands.
  const si = () => shownUnit(unit, inFeet ? 1 : rule.step);
  const unitNode = element("span", {class: "unit", "aria-hidden": "true", "data-units": "as is"}, inFeet ? "" : unitText(unit));
  // Feet carry their mark with them.
  const entry = element("span", {class: "number-entry"}, input, unit !== "" && !inFeet && unitNode);
  let written = "";
  const write = () => {
    endedTyping(input);
    const value = get();
    const shown = si();
    const metric = value === undefined || !shown ? "" : inSi(value, shown);
    if (inFeet) input.title = siAlone(unit, 1) ? "Meters; or with their unit: 14'-8\", 4470 mm" : "Feet and inches: 14'-8\", 14-8, 14.667 or 176in";
    written = value === undefined ? "" : shown && !shown.beside ? metric : typedText(value, unit);
    input.value = written;
    if (!shown && !entry.classList.contains("is-turned")) return;
    entry.classList.toggle("is-turned", shown !== undefined);
    unitNode.textContent = !shown ? (inFeet ? "" : unitText(unit)) : !shown.beside ? shown.unit : `${inFeet ? "" : `${unitText(unit)} `}${metric && `(${metric}\u00a0${shown.unit})`}`;
    if (inFeet) input.after(unitNode);
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
    const shown = si();
    if (text !== "") return readTyped(text, rule, shown && !shown.beside ? shown.factor : undefined);
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
    const metric = siAlone(unit, 1);
    const steps = event.key === "ArrowUp" || event.key === "ArrowDown" ? stepsOf(event, inFeet && !metric ? IN_PER_FT : COARSE) : undefined;
    if (steps === undefined) return;
    event.preventDefault();
    const by = {...rule, step: !inFeet ? rule.step : metric ? 1 : 1 / IN_PER_FT};
    take(onRange((get() ?? usual?.() ?? (min + max) / 2) + steps * stepOf(by), by));
  });
  write();
  whenReadAnew(input, show);
  return {input, message, show, take, entry};
}

/** How a number shows where the page reads in SI alone; undefined where it shows in its own unit, with its SI value beside it or without. */
function siAlone(unit: string, step: number): ShownUnit | undefined {
  const shown = shownUnit(unit, step);
  return shown?.beside ? undefined : shown;
}

/** A value in its SI unit as its box shows it. */
function inSi(value: number, {factor, places}: ShownUnit): string {
  return formatPlain(Number((value * factor).toFixed(places)));
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

/** What of a number's rule its steps hang on. */
type Stepped = Pick<SetNumber["rule"], "unit" | "min" | "max" | "step">;

/** One step of a number in its own unit: of the SI steps where the page reads in SI alone. */
export function stepOf({unit, step}: Stepped): number {
  const metric = siAlone(unit, step);
  return metric ? metric.step / metric.factor : step;
}

/** The value that a key asks for: so many steps on, or an end of the range; undefined for any other key. */
export function keyedValue(event: KeyboardEvent, rule: Stepped, from: number): number | undefined {
  if (event.key === "Home") return rule.min;
  if (event.key === "End") return rule.max;
  const steps = stepsOf(event);
  return steps === undefined ? undefined : from + steps * stepOf(rule);
}

/** A number as those hear it who listen: in the reader's unit; feet as drawings write them, all else with its unit. */
export function spokenNumber(value: number, {unit, step}: Stepped): string {
  const metric = siAlone(unit, step);
  if (metric) return `${inSi(value, metric)} ${metric.unit}`;
  return unit === "ft" ? typedText(value, "ft") : `${typedText(value, unit)} ${unitText(unit)}`.trim();
}

/** The nearest whole multiple of the step within the range; of the SI steps where the page reads in SI alone. */
export function onRange(value: number, {unit, min, max, step}: Stepped): number {
  const metric = siAlone(unit, step);
  return Math.min(max, Math.max(min, metric ? onGrid(value * metric.factor, metric.step) / metric.factor : onGrid(value, step)));
}

/** The nearest whole multiple of the step, free of the binary remainder. */
export function onGrid(value: number, step: number): number {
  const steps = Math.round(value / step);
  // A twelfth has no end in decimals.
  return step < 1 && Number.isInteger(Number((1 / step).toFixed(9))) ? steps / Math.round(1 / step) : Number((steps * step).toFixed(6));
}

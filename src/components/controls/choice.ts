import type {Design} from "../../lib/design/design.js";
import {valueAt} from "../../lib/design/plain.js";
import type {DesignStore} from "../store.js";
import {element, uniqueId} from "../dom.js";
import {follow} from "./follow.js";
import {helpFor, labelOf, messageFor, requireField, type ControlOptions} from "./frame.js";

/** Up to this many choices lie side by side; more fold into a list. */
const SIDE_BY_SIDE = 4;

/** A choice's value in the design and the words for it. */
export interface Choice {
  readonly value: string;
  readonly label: string;
}

export interface ChoiceOptions extends ControlOptions {
  /** Choices where the field has none or not all apply; a function where they follow the design. */
  readonly options?: readonly Choice[] | ((design: Design) => readonly Choice[]);
}

/** One of several: side by side up to four, else a list. */
export function choiceControl(store: DesignStore, path: string, options: ChoiceOptions = {}): HTMLElement {
  const field = requireField(path);
  const own = field.kind === "choice" ? Object.entries(field.choices).map(([value, label]) => ({value, label})) : [];
  const given = options.options ?? own;
  const words = labelOf(options.label ?? field.label);
  const help = helpFor(options.help ?? field.help, options.compact);
  return typeof given === "function" || given.length > SIDE_BY_SIDE
    ? listControl(store, path, typeof given === "function" ? given : () => given, words, help, options.compact)
    : segmentedControl(store, path, given, words, help, options.compact);
}

type Help = ReturnType<typeof helpFor>;

function segmentedControl(store: DesignStore, path: string, choices: readonly Choice[], words: string, help: Help, compact = false): HTMLElement {
  const name = uniqueId("choice");
  const inputs = choices.map(({value}) => element("input", {type: "radio", name, value, id: `${name}-${value}`}));
  const message = messageFor([]);
  const node = element(
    "fieldset",
    {class: `control choice${compact ? " compact" : ""}`, "data-path": path, "aria-describedby": help.id},
    element("legend", {class: "control-label"}, words),
    element("div", {class: "segments"}, ...choices.flatMap(({label}, index) => {
      const input = inputs[index] as HTMLInputElement;
      return [input, element("label", {for: input.id}, label)];
    })),
    message.node,
    help.node,
  );
  const show = (design: Design) => {
    const value = valueAt(design, path);
    for (const input of inputs) input.checked = input.value === value;
  };
  node.addEventListener("change", () => {
    const chosen = inputs.find((input) => input.checked);
    if (chosen && !message.attempt(() => store.set(path, chosen.value))) show(store.get());
  });
  follow(store, node, (design) => {
    show(design);
    message.clear();
  });
  return node;
}

function listControl(store: DesignStore, path: string, choicesFor: (design: Design) => readonly Choice[], words: string, help: Help, compact = false): HTMLElement {
  const id = uniqueId("choice");
  const select = element("select", {id, "aria-describedby": help.id});
  const message = messageFor([select]);
  const node = element(
    "div",
    {class: `control choice${compact ? " compact" : ""}`, "data-path": path},
    element("label", {for: id, class: "control-label"}, words),
    select,
    message.node,
    help.node,
  );
  let shown = "";
  const show = (design: Design) => {
    const value = String(valueAt(design, path) ?? "");
    const choices = choicesFor(design);
    // A design file may hold a value that the list lacks; it stays what it is until the reader chooses.
    const all = choices.some((choice) => choice.value === value) ? choices : [{value, label: `${value} (not in this list)`}, ...choices];
    const key = JSON.stringify(all);
    if (key !== shown) select.replaceChildren(...all.map((choice) => element("option", {value: choice.value}, choice.label)));
    shown = key;
    select.value = value;
  };
  select.addEventListener("change", () => {
    if (!message.attempt(() => store.set(path, select.value))) show(store.get());
  });
  follow(store, node, (design) => {
    show(design);
    message.clear();
  });
  return node;
}

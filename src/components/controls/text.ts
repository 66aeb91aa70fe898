import type {Design} from "../../lib/design/design.js";
import {valueAt} from "../../lib/design/plain.js";
import type {DesignStore} from "../store.js";
import {element, uniqueId} from "../dom.js";
import {follow} from "./follow.js";
import {helpFor, labelOf, messageFor, requireField, type ControlOptions} from "./frame.js";

/** Yes or no. */
export function switchControl(store: DesignStore, path: string, options: ControlOptions = {}): HTMLElement {
  const field = requireField(path);
  const id = uniqueId("switch");
  const help = helpFor(options.help ?? field.help, options.compact);
  const input = element("input", {id, type: "checkbox", role: "switch", class: "switch", "aria-describedby": help.id});
  const message = messageFor([input]);
  const show = (design: Design) => {
    input.checked = valueAt(design, path) === true;
  };
  input.addEventListener("change", () => {
    if (!message.attempt(() => store.set(path, input.checked))) show(store.get());
  });
  const node = element(
    "div",
    {class: `control switch-control${options.compact ? " compact" : ""}`, "data-path": path},
    element("span", {class: "switch-line"}, input, element("label", {for: id, class: "control-label"}, labelOf(options.label ?? field.label))),
    message.node,
    help.node,
  );
  follow(store, node, (design) => {
    show(design);
    message.clear();
  });
  return node;
}

export interface TextOptions extends ControlOptions {
  readonly rows?: number;
  readonly placeholder?: string;
}

/** A text of the reader's own; several lines where the field allows them. */
export function textControl(store: DesignStore, path: string, options: TextOptions = {}): HTMLElement {
  const field = requireField(path);
  if (field.kind !== "text") throw new Error(`${path} is not a text.`);
  const id = uniqueId("text");
  const help = helpFor(options.help ?? field.help, options.compact);
  const shared = {id, placeholder: options.placeholder, maxlength: field.maxLength, "aria-describedby": help.id};
  const input = field.multiline ? element("textarea", {...shared, rows: options.rows ?? 3}) : element("input", {...shared, type: "text"});
  const message = messageFor([input]);
  input.addEventListener("input", () => message.attempt(() => store.set(path, input.value)));
  const node = element(
    "div",
    {class: `control text${options.compact ? " compact" : ""}`, "data-path": path},
    element("label", {for: id, class: "control-label"}, labelOf(options.label ?? field.label)),
    input,
    message.node,
    help.node,
  );
  follow(store, node, (design) => {
    const value = String(valueAt(design, path) ?? "");
    // Writing the same text again would move the cursor of one who types.
    if (input.value !== value) input.value = value;
    // A name that is longer than its box is read beside the pointer.
    if (!field.multiline) input.title = value;
  });
  return node;
}

export interface ButtonOptions {
  /** A button that should not draw the eye. */
  readonly quiet?: boolean;
  /** A longer name for those who listen, where the label is terse. */
  readonly name?: string;
}

/** A button; where what it does is refused, the reason stands behind it. */
export function button(label: string | Node, act: () => void, options: ButtonOptions = {}): HTMLButtonElement {
  const message = messageFor([]);
  const node = element("button", {type: "button", class: options.quiet ? "button quiet" : "button", "aria-label": options.name}, label);
  node.addEventListener("click", () => {
    if (message.attempt(act)) message.node.remove();
    else node.after(message.node);
  });
  return node;
}

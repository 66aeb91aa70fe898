import {InputError} from "../../lib/errors.js";
import type {Field} from "../../lib/design/entries.js";
import {fieldAt} from "../../lib/design/fields.js";
import {element, uniqueId} from "../dom.js";

/** What all controls can be told. */
export interface ControlOptions {
  /** Label alone, without the sentence of help below it. */
  readonly compact?: boolean;
  /** Other words than the field's own. */
  readonly label?: string;
  /** Other help than the field's own. */
  readonly help?: string;
}

/** The field at a path; a control for a path that has none is a mistake in the page. */
export function requireField(path: string): Field {
  const field = fieldAt(path);
  if (!field) throw new Error(`There is no field ${path}.`);
  return field;
}

/** A place beside a control for the reason why a value was not taken. */
export interface Message {
  readonly node: HTMLElement;
  readonly id: string;
  /** Runs a change; shows the reason if the value is impossible, and says whether it was taken. */
  attempt(change: () => void): boolean;
  clear(): void;
}

/** Makes the message of a control; `inputs` are marked as wrong while it shows. */
export function messageFor(inputs: readonly Element[]): Message {
  const id = uniqueId("message");
  const node = element("p", {id, class: "control-message", role: "alert", hidden: true});
  const show = (text: string) => {
    node.textContent = text;
    node.hidden = text === "";
    for (const input of inputs) {
      if (text) input.setAttribute("aria-invalid", "true");
      else input.removeAttribute("aria-invalid");
    }
  };
  return {
    node,
    id,
    attempt(change) {
      try {
        change();
        show("");
        return true;
      } catch (problem) {
        if (!(problem instanceof InputError)) throw problem;
        show(problem.message);
        return false;
      }
    },
    clear: () => show(""),
  };
}

/** The sentence below a control; in a compact one it is there for those who listen only. */
export function helpFor(text: string, compact = false): {node: HTMLElement; id: string} {
  const id = uniqueId("help");
  return {node: element("p", {id, class: compact ? "for-listeners" : "control-help"}, text), id};
}

/** The first letter large, as a label stands alone. */
export function labelOf(words: string): string {
  return words.charAt(0).toUpperCase() + words.slice(1);
}

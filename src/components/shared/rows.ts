import type {Design} from "../../lib/design/design.js";
import {LISTS} from "../../lib/design/fields.js";
import {valueAt} from "../../lib/design/plain.js";
import {button} from "../controls.js";
import {follow} from "../controls/follow.js";
import {messageFor} from "../controls/frame.js";
import {element} from "../dom.js";
import type {DesignStore} from "../store.js";

export interface RowsOptions<T> {
  readonly store: DesignStore;
  /** Path of the list: `loads.rooms`. */
  readonly path: string;
  /** What one entry is called: `room`. */
  readonly noun: string;
  /** The controls of the entry at an index; they follow the store by themselves. */
  readonly controls: (index: number) => readonly HTMLElement[];
  /** The name of an entry, for the button that removes it. */
  readonly nameOf: (entry: T) => string;
}

export interface Rows<T> {
  readonly node: HTMLElement;
  /** Adds an entry at the end and puts the cursor into it. */
  add(entry: T): void;
}

/**
 * The entries of a list of the design, each with its controls and a button that removes it. Rows are made anew only
 * when their number changes, so that typing in one keeps its place.
 */
export function rows<T>({store, path, noun, controls, nameOf}: RowsOptions<T>): Rows<T> {
  const list = element("ol", {class: "editor-rows", "aria-label": LISTS[path]?.label});
  const message = messageFor([]);
  const node = element("div", {class: "editor", "data-path": path}, list, message.node);
  const entries = (design: Design) => valueAt(design, path) as readonly T[];
  const change = (next: readonly T[]) => message.attempt(() => store.set(path, next));
  let shown = -1;

  function row(index: number): HTMLElement {
    const remove = button("×", () => {
      const all = entries(store.get());
      if (change(all.filter((_, at) => at !== index))) focusRow(Math.min(index, all.length - 2));
    }, {quiet: true, name: `Remove this ${noun}`});
    remove.classList.add("editor-remove");
    follow(store, remove, (design) => {
      const all = entries(design);
      const entry = all[index];
      const words = entry === undefined ? "" : `Remove ${nameOf(entry) || `this ${noun}`}`;
      remove.setAttribute("aria-label", words);
      remove.title = words;
      remove.disabled = all.length <= (LISTS[path]?.min ?? 0);
    });
    const parts = controls(index);
    const withNumber = parts.some((part) => part.classList.contains("number"));
    return element("li", {class: withNumber ? "editor-row has-number" : "editor-row"}, ...parts, remove);
  }

  function focusRow(index: number): void {
    const target = list.children[index]?.querySelector<HTMLElement>("input, select");
    target?.focus();
  }

  follow(store, node, (design) => {
    const count = entries(design).length;
    if (count === shown) return;
    shown = count;
    list.replaceChildren(...Array.from({length: count}, (_, index) => row(index)));
  });

  return {
    node,
    add(entry) {
      const all = entries(store.get());
      if (change([...all, entry])) focusRow(all.length);
    },
  };
}

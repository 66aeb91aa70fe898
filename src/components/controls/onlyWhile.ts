import type {Design} from "../../lib/design/design.js";
import {fieldUsed} from "../../lib/design/used.js";
import type {Followed} from "../store.js";
import {follow} from "./follow.js";

/** A control, or a part of the page, that is shown only while the design has a use for it; values are kept meanwhile. */
export function onlyWhile<T extends HTMLElement>(store: Followed, used: (design: Design) => boolean, node: T): T {
  follow(store, node, (design) => {
    node.hidden = !used(design);
  });
  return node;
}

/** The control of a field, shown while the design uses that field. */
export function whileUsed<T extends HTMLElement>(store: Followed, control: T): T {
  const path = control.dataset["path"];
  if (path === undefined) throw new Error("This control belongs to no field.");
  return onlyWhile(store, (design) => fieldUsed(design, path), control);
}

/** A part of the page by its id, shown while the design has what it is about. */
export function pagePart(store: Followed, id: string, has: (design: Design) => boolean): void {
  const node = document.getElementById(id);
  if (!node) throw new Error(`The page has no part ${id}.`);
  onlyWhile(store, has, node);
}

import type {Design} from "../../lib/design/design.js";
import {follow} from "../controls/follow.js";
import {element, uniqueId} from "../dom.js";
import type {DesignStore} from "../store.js";

/** One of the things that a picture can be looked at for. It is the reader's view of the page, no part of the design. */
export interface Look {
  readonly value: string;
  readonly label: string;
}

/** An element whose value is what is chosen; fits `view`. */
export type Chooser = HTMLElement & {value: string};

/**
 * A list of what may be looked at. What the design has follows the store; a choice that it no longer has falls back to
 * the first.
 */
export function chooser(store: DesignStore, label: string, looksOf: (design: Design) => readonly Look[], first?: string): Chooser {
  const id = uniqueId("look");
  const select = element("select", {id});
  const node = element(
    "div",
    {class: "control choice"},
    element("label", {for: id, class: "control-label"}, label),
    select,
  ) as unknown as Chooser;
  let wanted = first;
  let shown = "";
  const settle = () => {
    if (node.value === select.value) return;
    node.value = select.value;
    node.dispatchEvent(new Event("input", {bubbles: true}));
  };
  select.addEventListener("input", (event) => event.stopPropagation());
  select.addEventListener("change", () => {
    wanted = select.value;
    settle();
  });
  node.value = "";
  follow(store, node, (design) => {
    const looks = looksOf(design);
    const key = JSON.stringify(looks);
    if (key !== shown) select.replaceChildren(...looks.map((look) => element("option", {value: look.value}, look.label)));
    shown = key;
    select.value = looks.some((look) => look.value === wanted) ? (wanted as string) : (looks[0]?.value ?? "");
    settle();
  });
  return node;
}

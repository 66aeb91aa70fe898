import type {Design} from "../../lib/design/design.js";
import type {Followed} from "../store.js";
import {follow} from "./follow.js";

/** A control that is shown only while the design has a use for it; its value is kept meanwhile. */
export function onlyWhile(store: Followed, used: (design: Design) => boolean, control: HTMLElement): HTMLElement {
  follow(store, control, (design) => {
    control.hidden = !used(design);
  });
  return control;
}

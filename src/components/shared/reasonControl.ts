import type {ReasonName} from "../../lib/design/design.js";
import {reasonState, writtenNow} from "../../lib/design/reasons.js";
import {changesSentence} from "../../lib/record/reasonWords.js";
import {checkMark} from "../checks.js";
import {button, textControl, type TextOptions} from "../controls.js";
import {follow} from "../controls/follow.js";
import {element} from "../dom.js";
import type {DesignStore} from "../store.js";

/**
 * Where a reason is written. One that was written for an earlier choice says so, with what has changed since, and is
 * affirmed or begun anew by one press; a starter's is distinguished from the reader's own.
 */
export function reasonControl(store: DesignStore, name: ReasonName, options: TextOptions): HTMLElement {
  const path = `reasons.${name}`;
  const control = textControl(store, path, options);
  const words = element("p", {});
  const affirm = button("Still true", () => store.set(`writtenFor.${name}`, writtenNow(store.get(), name)));
  const anew = button("Write it anew", () => {
    store.set(path, "");
    control.querySelector<HTMLElement>("textarea")?.focus();
  });
  const presses = element("div", {class: "row"}, affirm, anew);
  const note = element("div", {class: "reason-note no-print", role: "status"}, words, presses);
  follow(store, note, (design) => {
    const state = reasonState(design, name);
    const earlier = state.standing === "earlier choice";
    const others = state.by === "starter" ? "The starter\u2019s words" : state.by === "rule" ? "The rule\u2019s words" : undefined;
    note.hidden = !earlier && others === undefined;
    note.dataset["standing"] = state.standing;
    presses.hidden = !earlier;
    words.replaceChildren(...(earlier
      ? [checkMark("near"), " ", element("strong", {}, `${others ? `${others}, w` : "W"}ritten for an earlier choice: not counted.`), ` ${changesSentence(state)}`]
      : [`${others ?? ""}, not yours; what you write replaces them.`]));
  });
  return element("div", {class: "reason"}, control, note);
}

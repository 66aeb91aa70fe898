import {decimals} from "../../lib/units.js";
import {button} from "../controls.js";
import {element} from "../dom.js";
import type {RunState, SchemeRun} from "./schemeRun.js";

/** How far a run is, in words and as a bar, with the button that ends it or begins it again; it follows the run. */
export function schemeStatus(run: SchemeRun, again: () => void): HTMLElement {
  const words = element("p", {role: "status"});
  const bar = element("progress", {max: 1, value: 0, "aria-label": "Schemes made"});
  const act = button("Cancel", () => (run.state().running ? run.cancel() : again()));
  const node = element("div", {class: "scheme-status"}, words, bar, act);
  run.observe((state) => {
    words.textContent = statusWords(state);
    bar.max = Math.max(1, state.total);
    bar.value = state.rows.length;
    bar.style.visibility = state.running ? "" : "hidden";
    act.textContent = state.running ? "Cancel" : "Compute again";
  });
  return node;
}

function statusWords({rows, total, running, canceled, problem, tookMs}: RunState): string {
  if (problem !== undefined) return `The search stopped with an error: ${problem}`;
  if (running) return `Searching: ${decimals(rows.length)} of ${decimals(total)} schemes made.`;
  if (canceled) return `Canceled after ${decimals(rows.length)} of ${decimals(total)} schemes.`;
  if (tookMs === undefined) return "Nothing has been searched yet.";
  return `${decimals(rows.length)} whole buildings, each sized and checked.`;
}

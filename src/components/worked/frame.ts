import type {Step} from "../../lib/step.js";
import {element} from "../dom.js";

/** A step's label and source above its equation, and a note below. */
export function stepFrame({label, source}: Pick<Step, "label" | "source">, equation: HTMLElement, note?: string): HTMLElement {
  reachable(equation);
  return element(
    "li",
    {class: "step"},
    element("p", {class: "step-label"}, element("span", {}, label), element("span", {class: "step-source"}, source)),
    equation,
    note ? element("p", {class: "step-note"}, note) : null,
  );
}

/** Lets the keyboard reach the lines of an equation that scroll because the page is narrow. */
function reachable(equation: HTMLElement): void {
  requestAnimationFrame(() => {
    for (const line of equation.querySelectorAll<HTMLElement>(".step-right")) {
      if (line.scrollWidth > line.clientWidth) line.tabIndex = 0;
    }
  });
}

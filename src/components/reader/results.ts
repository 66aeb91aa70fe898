import {siText} from "../../lib/reader/figures.js";
import {textUnit} from "../../lib/reader/siUnit.js";
import type {UnitSystem} from "../../lib/reader/system.js";
import {element} from "../dom.js";

/** Significant figures of a converted result, and decimals that may be needed for them. */
const DIGITS = 4;
const MOST_DECIMALS = 8;

/** Below an equation, which stays in its code's units, its result in SI; none while a question hides its numbers. */
export function addResults(root: Element, system: UnitSystem): void {
  for (const equation of root.matches(".step-equation[data-result-unit]") ? [root as HTMLElement] : root.querySelectorAll<HTMLElement>(".step-equation[data-result-unit]")) {
    const found = equation.parentElement?.querySelector(":scope > .step-si");
    const unit = textUnit(equation.dataset["resultUnit"] as string);
    if (system === "US" || !unit || equation.closest("[data-veiled]")) found?.remove();
    else if (!found) {
      const value = Number(equation.dataset["result"]);
      const text = siText({value, digits: DIGITS, decimals: MOST_DECIMALS}, unit);
      equation.after(element("p", {class: "step-si", "data-units": "as is"}, `= ${text}\u00a0${unit.si}`));
    }
  }
}

import {element} from "../../components/dom.js";
import {stepFrame} from "../../components/worked/frame.js";
import type {Formula} from "../../components/worked/formulas.js";

/** The formulas of a working in symbols alone, one to a line with name and source. */
export function formulas(list: readonly Formula[]): HTMLElement {
  return element("ul", {class: "worked", style: "max-width: var(--measure)"}, ...list.map(formula));
}

function formula({label, source, symbol, value}: Formula): HTMLElement {
  const equation = element("div", {class: "step-equation", role: "group", "aria-label": label});
  const left = element("span", {class: "step-left"});
  const right = element("span", {class: "step-right"});
  left.innerHTML = symbol;
  right.innerHTML = value;
  equation.append(left, right);
  return stepFrame({label, source}, equation);
}

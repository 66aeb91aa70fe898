import type {Step, Working} from "../../lib/steps/step.js";
import {element} from "../dom.js";
import {symbolTex} from "../symbols.js";
import {mathMarkup, stepFrame} from "../worked.js";
import {parseExpression} from "../worked/expression.js";
import {treeTex} from "../worked/tex.js";

/**
 * The formulas of a working in symbols alone, one to a line with name and source: the same texts that the worked steps
 * show with numbers, so that the two cannot differ.
 */
export function formulas(working: Working, symbols?: readonly string[]): HTMLElement {
  const steps = symbols ? symbols.flatMap((symbol) => working.steps.filter((step) => step.symbol === symbol).slice(0, 1)) : working.steps;
  return element("ul", {class: "worked", style: "max-width: var(--measure)"}, ...steps.map(formula));
}

function formula(step: Step): HTMLElement {
  const equation = element("div", {class: "step-equation", role: "group", "aria-label": step.label});
  const left = element("span", {class: "step-left"});
  const right = element("span", {class: "step-right"});
  left.innerHTML = mathMarkup(symbolTex(step.symbol));
  right.innerHTML = mathMarkup(`\\displaystyle = ${treeTex(parseExpression(step.expression))}`);
  equation.append(left, right);
  return stepFrame(step, equation);
}

import temml from "temml";
import type {Step, Working} from "../lib/step.js";
import {element} from "./dom.js";
import {symbolTex, unitTex} from "./symbols.js";
import {parseExpression, substitute, withParts} from "./worked/expression.js";
import {stepFrame} from "./worked/frame.js";
import {formatForEquation, numberTex} from "./worked/numbers.js";
import {partOfLabel} from "./worked/symbolParts.js";
import {partTex, treeTex} from "./worked/tex.js";

/**
 * A step as up to three lines of TeX, each the right-hand side of the one equation: symbols, numbers, result. A line
 * that would repeat the one before it is left out.
 *
 * @param partOf - the part of the drawings that a symbol stands for, which lights with it
 */
export function stepLines(step: Step, partOf: (name: string) => string | undefined = () => undefined): string[] {
  const tree = withParts(parseExpression(step.expression), partOf);
  const symbols = treeTex(tree);
  const numbers = treeTex(substitute(tree, step.values, (value) => formatForEquation(value)));
  const size = numberTex(formatForEquation(Math.abs(step.result)));
  const result = step.result < 0 ? `-${size}` : size;
  const lines = [symbols, numbers].filter((line, index, all) => line !== result && all.indexOf(line) === index);
  return [...lines, `${result}${unitTex(step.unit)}`];
}

/** TeX as MathML text, with what the style needs: names of several letters marked, and primes as tall as their letter. */
export function mathMarkup(tex: string, {display = false} = {}): string {
  return temml
    .renderToString(tex, {displayMode: display, throwOnError: false, trust: ({command}) => command === "\\data"})
    .replace(/<mi((?: data-part="[^"]*")?)>([^<]{2,})<\/mi>/g, (whole, part: string, name: string) => (/^&\w+;$/.test(name) ? whole : `<mi${part} class="word">${name}</mi>`))
    .replace(PRIMED_WITH_SUBSCRIPT, "<msub$1><mrow>$2$4</mrow>$3</msub>")
    .replace(PRIMED, "<mrow$1>$2$3</mrow>");
}

/**
 * A prime that the typesetter has raised as an exponent. Without a font made for mathematics it comes out too small and
 * too high, and pushes the root above it away from its sign; beside its letter it is right in every face.
 */
const PRIMED_WITH_SUBSCRIPT = /<msubsup((?: data-part="[^"]*")?)>(<mi>[^<]+<\/mi>)((?:(?!<msubsup[ >]).)*?)(<mo [^>]*class="tml-prime[^>]*>[^<]*<\/mo>)<\/msubsup>/g;
const PRIMED = /<msup((?: data-part="[^"]*")?)>(<mi>[^<]+<\/mi>)(<mo [^>]*class="tml-prime[^>]*>[^<]*<\/mo>)<\/msup>/g;

/** The steps of a working, one below the other. */
export function worked(working: Working): HTMLElement {
  return element("ol", {class: "worked"}, ...working.steps.map(stepElement));
}

function stepElement(step: Step): HTMLElement {
  const symbol = partTex(partOfLabel(step.label), symbolTex(step.symbol));
  const equation = element("div", {class: "step-equation", role: "group", "aria-label": step.label, "data-result": step.result, "data-result-unit": step.unit});
  const lines = stepLines(step, (name) => partOfLabel(Object.hasOwn(step.values, name) ? (step.values[name]?.label ?? "") : ""));
  equation.append(
    ...lines.flatMap((line, index) => {
      const left = element("span", {class: "step-left"});
      const right = element("span", {class: index === lines.length - 1 ? "step-right step-result" : "step-right"});
      left.innerHTML = index === 0 ? mathMarkup(symbol, {}) : "";
      right.innerHTML = mathMarkup(`\\displaystyle = ${line}`);
      return [left, right];
    }),
  );
  return stepFrame(step, equation, step.note);
}

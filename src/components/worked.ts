import temml from "temml";
import type {Step, Working} from "../lib/step.js";
import {element} from "./dom.js";
import {symbolTex, unitTex} from "./symbols.js";
import {parseExpression, substitute} from "./worked/expression.js";
import {stepFrame} from "./worked/frame.js";
import {formatForEquation, numberTex} from "./worked/numbers.js";
import {treeTex} from "./worked/tex.js";

/**
 * A step as up to three lines of TeX, each the right-hand side of the one equation: symbols, numbers, result. A line
 * that would repeat the one before it is left out.
 */
export function stepLines(step: Step): string[] {
  const tree = parseExpression(step.expression);
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
    .renderToString(tex, {displayMode: display, throwOnError: false})
    .replace(/<mi>([^<]{2,})<\/mi>/g, (whole, name: string) => (/^&\w+;$/.test(name) ? whole : `<mi class="word">${name}</mi>`))
    .replace(PRIMED_WITH_SUBSCRIPT, "<msub><mrow>$1$3</mrow>$2</msub>")
    .replace(PRIMED, "<mrow>$1$2</mrow>");
}

/**
 * A prime that the typesetter has raised as an exponent. Without a font made for mathematics it comes out too small and
 * too high, and pushes the root above it away from its sign; beside its letter it is right in every face.
 */
const PRIMED_WITH_SUBSCRIPT = /<msubsup>(<mi>[^<]+<\/mi>)((?:(?!<msubsup>).)*?)(<mo [^>]*class="tml-prime[^>]*>[^<]*<\/mo>)<\/msubsup>/g;
const PRIMED = /<msup>(<mi>[^<]+<\/mi>)(<mo [^>]*class="tml-prime[^>]*>[^<]*<\/mo>)<\/msup>/g;

/** The steps of a working, one below the other. */
export function worked(working: Working): HTMLElement {
  return element("ol", {class: "worked"}, ...working.steps.map(stepElement));
}

function stepElement(step: Step): HTMLElement {
  const symbol = symbolTex(step.symbol);
  const equation = element("div", {class: "step-equation", role: "group", "aria-label": step.label});
  const lines = stepLines(step);
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

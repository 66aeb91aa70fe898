import type {Answer, Earlier, ExercisePart} from "../../lib/practice/item.js";
import type {Hint} from "../../lib/practice/keys.js";
import {proseText} from "../../lib/practice/prose.js";
import type {UnitSystem} from "../../lib/reader/system.js";
import type {Step} from "../../lib/step.js";
import {unitText} from "../../lib/units.js";
import {element} from "../../components/dom.js";
import {answerText} from "../../components/practice/sheetText.js";
import {symbolTex} from "../../components/symbols.js";
import {mathMarkup, stepLines, worked} from "../../components/worked.js";
import {parseExpression} from "../../components/worked/expression.js";
import {treeTex} from "../../components/worked/tex.js";

/* What needs the typesetter; it comes when a hint, the worked steps or a calculation with a mistake are first shown. */

/** One worked step with its numbers withheld. */
export function hintNode({symbol, label, expression, where, unit, source}: Hint): HTMLElement {
  const math = (tex: string) => {
    const node = element("span", {class: "hint-math"});
    node.innerHTML = mathMarkup(tex);
    return node;
  };
  const equation = math(`\\displaystyle ${symbolTex(symbol)} = ${treeTex(parseExpression(expression))}`);
  // The keyboard reaches a long one that scrolls because the page is narrow.
  requestAnimationFrame(() => {
    if (equation.scrollWidth > equation.clientWidth) equation.tabIndex = 0;
  });
  return element("li", {},
    element("p", {class: "step-label"}, element("span", {}, `${label}${unit ? `, in ${unitText(unit)}` : ""}`), element("span", {class: "step-source"}, source)),
    equation,
    element("ul", {class: "hint-where"}, ...where.map((each) => element("li", {}, math(symbolTex(each.symbol)), ` ${each.label}${each.unit ? `, ${unitText(each.unit)}` : ""}`))));
}

/** The answer to a part, why it is, and the steps that lead to it from the answers before. */
export function workedNode(part: ExercisePart, earlier: Earlier, key: Answer, system: UnitSystem): HTMLElement {
  const working = part.working(earlier);
  const answer = part.key(earlier);
  return element("div", {class: "part-worked"},
    element("p", {}, "It comes to ", element("strong", {}, answerText(part, answer, system)), answer === key ? "." : `, from your answer above; from the right one, ${answerText(part, key, system)}.`),
    part.because ? element("p", {}, proseText(part.because, system)) : null,
    working.steps.length > 0 ? worked(working) : null);
}

/** A line of a calculation as somebody wrote it. */
export function lineMarkup(step: Step): string {
  const span = element("span", {}, `${step.label}: `);
  // Parted before each sign of equality, so that a long line breaks there.
  const lines = stepLines(step).map((tex, i) => mathMarkup(`\\displaystyle ${i === 0 ? symbolTex(step.symbol) : ""} = ${tex}`));
  return `${span.innerHTML}${lines.join(" ")}`;
}

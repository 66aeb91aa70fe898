import type {Step} from "../../lib/step.js";
import type {SectionWorkings} from "../../lib/record/worked.js";
import {element} from "../../components/dom.js";
import {unitText} from "../../components/symbols.js";
import {worked} from "../../components/worked.js";
import {parseExpression, substitute, writeExpression} from "../../components/worked/expression.js";
import {formatForEquation} from "../../components/worked/numbers.js";

/** The worked steps as they stand at the end of the record, decision by decision. */
export function workedSections(sections: readonly (SectionWorkings & {readonly title: string})[]): Node[] {
  return [
    element("h3", {}, "Worked steps"),
    element("p", {}, "The steps on which the numbers above rest, each as it was computed: symbols, numbers, result, with its source."),
    ...sections.flatMap(({title, workings}) => [
      element("h4", {class: "record-worked-part"}, title),
      ...workings.map((working) => {
        const list = worked(working);
        list.querySelectorAll<HTMLElement>(".step-equation").forEach((equation, i) => (equation.dataset["plain"] = stepText(working.steps[i] as Step)));
        return element("div", {class: "record-working"}, element("h5", {}, working.title), list);
      }),
    ]),
  ];
}

/** A step on one line, for a text that typesets nothing: "M_u = w * L^2 / 8 = 1.2 * 40^2 / 8 = 240 kip-ft". */
function stepText(step: Step): string {
  const tree = parseExpression(step.expression);
  const result = `${formatForEquation(step.result)} ${unitText(step.unit)}`.trim();
  const sides = [writeExpression(tree), writeExpression(substitute(tree, step.values, (value) => formatForEquation(value))), result];
  return [step.symbol, ...sides.filter((side, i) => sides.indexOf(side) === i)].join(" = ");
}

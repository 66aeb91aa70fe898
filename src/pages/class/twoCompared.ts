import {differingInputs} from "../../lib/compare/inputs.js";
import {isAlike, measureRows} from "../../lib/compare/standings.js";
import {measureName, standingText, valueText} from "../../components/compare/words.js";
import {element} from "../../components/dom.js";
import {dataTable} from "../../components/figure.js";
import {hrefOf} from "../../components/shared/pageList.js";
import {rowOf, type Student} from "./classData.js";

/** Two designs of the class side by side: the decisions in which they differ, and what came of them. */
export function twoCompared(one: Student, other: Student): HTMLElement {
  const inputs = differingInputs([one.design, other.design]);
  const [first, second] = [rowOf(one), rowOf(other)];
  const rows = first && second ? measureRows(first.measures, [second.measures]).filter((row) => !isAlike(row) && row.measure.partOf === undefined) : [];
  const names = [one.who, one.who === other.who ? other.fileName : other.who];
  const scrolls = (label: string, table: HTMLElement) => element("div", {class: "scrolls", tabindex: 0, role: "region", "aria-label": label}, table);
  return element("section", {class: "class-two", "aria-label": "Two designs of the class compared"},
    element("h3", {tabindex: -1}, `${names[0]} beside ${names[1]}`),
    inputs.length === 0 ? element("p", {}, "Their decisions are the same; only words may differ.")
      : scrolls("Decisions that differ", dataTable({columns: ["Decision", ...names], rows: inputs.map(({group, label, values}) => [`${group}: ${label}`, ...values])})),
    rows.length === 0 ? element("p", {}, first && second ? "All measures read alike." : "One of the two cannot be computed, so nothing is measured.")
      : scrolls("Measures that differ", dataTable({
        columns: ["Measure", ...names, `${names[1]} is`],
        rows: rows.map(({measure, open, others: [held]}) => [measureName(measure), valueText(measure, open), valueText(measure, held?.value), held ? standingText(measure, held.difference) : ""]),
      })),
    element("p", {class: "note"}, "Both are pinned now: ", element("a", {href: hrefOf("compare")}, "What else was possible?"), " draws them at one scale, beside the open design."));
}

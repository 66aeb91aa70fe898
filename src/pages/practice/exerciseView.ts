import type {Item, PracticeTable} from "../../lib/practice/item.js";
import {numberText, proseText} from "../../lib/practice/prose.js";
import type {UnitSystem} from "../../lib/reader/system.js";
import {toSi, unitText} from "../../lib/units.js";
import {pictureText} from "../../components/practice/pictureText.js";
import {element} from "../../components/dom.js";
import type {PartMark} from "../../lib/practice/marks.js";
import type {PartState} from "./partState.js";
import {partView, type ExerciseRules} from "./partView.js";

/** How an exercise is shown and where its answers are kept. */
export interface ExercisePlace {
  readonly rules: ExerciseRules;
  readonly system: UnitSystem;
  readonly states: () => readonly PartState[];
  readonly change: (index: number, state: PartState) => void;
  readonly marked?: (index: number, mark: PartMark, first: boolean) => void;
}

/** An exercise to be answered in the page. */
export function exerciseView(item: Item, {rules, system, states, change, marked}: ExercisePlace): HTMLElement {
  const {title, question, table, picture, number, parts} = item;
  const drawn = picture && element("div", {class: "exercise-picture"});
  if (drawn) drawn.innerHTML = pictureText(picture, system, 340);
  return element("article", {class: "exercise-card", "data-units": "as is"},
    element("h2", {class: "exercise-title", tabindex: -1}, `${rules.inSet ? `${number}. ` : ""}${title}`),
    element("div", {class: "exercise-question"},
      element("p", {}, question.map((each) => proseText(each, system)).join(" ")),
      drawn ?? null, table ? tableView(table, system) : null),
    ...parts.map((_, index) => partView({
      item, index, rules, system, states, change: (state) => change(index, state),
      ...(marked ? {marked: (mark: PartMark, first: boolean) => marked(index, mark, first)} : {}),
    })));
}

function tableView({title, columns, rows, source}: PracticeTable, system: UnitSystem): HTMLElement {
  const unitOf = (unit: string) => unitText(system === "SI" ? toSi(1, unit).unit : unit);
  const cell = (value: string | number, unit: string) => {
    if (typeof value === "string") return element("td", {}, value);
    return element("td", {class: "numeric"}, numberText(system === "SI" ? Number(toSi(value, unit).value.toPrecision(4)) : value));
  };
  return element("div", {class: "scrolls exercise-table", tabindex: 0, role: "region", "aria-label": title},
    element("table", {}, element("caption", {}, title),
      element("thead", {}, element("tr", {}, ...columns.map(({name, unit}) => element("th", {scope: "col"}, unit ? `${name}, ${unitOf(unit)}` : name)))),
      element("tbody", {}, ...rows.map((row) => element("tr", {}, ...row.map((value, i) => cell(value, columns[i]?.unit ?? "")))))),
    element("p", {class: "exercise-source"}, `Source: ${source}`));
}

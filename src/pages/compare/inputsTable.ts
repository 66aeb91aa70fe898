import {differingInputs, NOT_USED} from "../../lib/compare/inputs.js";
import type {CompareView} from "../../components/compare/view.js";
import {labelOf} from "../../components/controls/frame.js";
import {element} from "../../components/dom.js";

/** Most rows that stand open by themselves. */
const SHOWN = 24;

/** Inputs of which a pin has another value than the open design, group by group; `open` says whether a long list was unfolded before. */
export function inputsTable({open: own, pinned}: CompareView, open: boolean): HTMLElement {
  const rows = differingInputs([own.design, ...pinned.map(({design}) => design)]);
  if (pinned.length === 0) return element("p", {class: "note"}, "With a design pinned, this lists every input in which it differs from the open one.");
  if (rows.length === 0) return element("p", {class: "note"}, "No input differs: the pinned designs have the same results, and at most other words.");
  const words = rows.length === 1 ? "One input differs." : `${rows.length} inputs differ.`;
  const groups = [...new Set(rows.map(({group}) => group))];
  const table = element("div", {class: "scrolls compare-table", tabindex: 0, role: "region", "aria-label": "Inputs that differ"},
    element("table", {class: "compare is-inputs"},
      element("thead", {}, element("tr", {}, element("th", {scope: "col"}, "Input"), element("th", {scope: "col", class: "is-open"}, "Open design"),
        ...pinned.map(({letter, name}) => element("th", {scope: "col"}, element("span", {class: "pin-letter"}, letter), ` ${name}`)))),
      ...groups.map((group) => element("tbody", {},
        element("tr", {class: "compare-group"}, element("th", {scope: "rowgroup", colspan: 2 + pinned.length}, group)),
        ...rows.filter((row) => row.group === group).map(({label, values}) => element("tr", {}, element("th", {scope: "row"}, labelOf(label)),
          ...values.map((words, i) => element("td", {class: i === 0 ? "is-open" : words === NOT_USED ? "is-unused" : words === values[0] ? "is-alike" : "is-other"}, words))))))));
  // Another building differs in nearly all of them: then the list is there on request.
  return rows.length <= SHOWN ? element("div", {}, element("p", {class: "compare-count"}, words), table) : element("details", {class: "fold", open}, element("summary", {}, words), table);
}

import {COMPARED_MEASURES} from "../../lib/compare/measures.js";
import {isAlike, measureRows, type MeasureRow} from "../../lib/compare/standings.js";
import {comparedOf, type CompareView, type Entry} from "../../components/compare/view.js";
import {BETTER_WORDS, measureName, standingText, valueText} from "../../components/compare/words.js";
import {labelOf} from "../../components/controls/frame.js";
import {element, uniqueId} from "../../components/dom.js";

/** The measures of the open design and its pins, row by row, with what is better and by how much. */
export function differenceTable(): {readonly node: HTMLElement; show(view: CompareView): void} {
  const alike = tick("Leave out rows that are alike", false);
  const parts = tick("Show the parts of each total", false);
  const body = element("div", {class: "scrolls compare-table", tabindex: 0, role: "region", "aria-label": "Measures of the open design and the pinned ones"});
  const waiting = element("p", {class: "note", hidden: true});
  let last: CompareView | undefined;
  const draw = () => {
    if (!last) return;
    const {open, pinned} = last;
    const own = comparedOf(open);
    waiting.hidden = own !== undefined;
    waiting.textContent = open.found && "problem" in open.found ? `The open design cannot be compared: ${open.found.problem}` : "Being computed \u2026";
    // What stands there is a moment old until the open design's numbers come.
    if (!own) return;
    const rows = measureRows(own.measures, pinned.map((entry) => comparedOf(entry)?.measures))
      .filter((row) => (parts.box.checked || row.measure.partOf === undefined) && !(alike.box.checked && pinned.length > 0 && isAlike(row)));
    body.replaceChildren(tableOf(last, rows));
  };
  for (const {box} of [alike, parts]) box.addEventListener("change", draw);
  return {
    node: element("div", {}, element("div", {class: "compare-ticks control"}, alike.node, parts.node), waiting, body),
    show(view) {
      last = view;
      alike.node.hidden = view.pinned.length === 0;
      parts.node.hidden = COMPARED_MEASURES.every(({partOf}) => partOf === undefined);
      draw();
    },
  };
}

function tick(label: string, checked: boolean): {readonly node: HTMLElement; readonly box: HTMLInputElement} {
  const box = element("input", {type: "checkbox", id: uniqueId("compare-tick"), checked});
  return {node: element("label", {for: box.id, class: "compare-tick"}, box, label), box};
}

function tableOf({open, pinned}: CompareView, rows: readonly MeasureRow[]): HTMLElement {
  const groups = [...new Set(rows.map(({measure}) => measure.group))];
  return element("table", {class: "compare"},
    element("thead", {}, element("tr", {}, element("th", {scope: "col"}, "Measure"), element("th", {scope: "col", class: "is-open"}, head("Open design", open)), ...pinned.map((entry) => element("th", {scope: "col"}, head(entry.letter, entry))))),
    element("tbody", {}, element("tr", {}, element("th", {scope: "row"}, "Deck"), ...[open, ...pinned].map((entry) => element("td", {}, comparedOf(entry)?.deck ?? "\u2026"))), checksRow({open, pinned})),
    ...groups.map((group) => element("tbody", {}, ...rows.filter(({measure}) => measure.group === group).map((row) => measureRow(row, pinned)))));
}

function head(letter: string, {name}: Entry): HTMLElement {
  return element("span", {class: "compare-head"}, element("span", {class: "pin-letter"}, letter), " ", element("span", {}, name));
}

/** How many checks fail; fewer are better. */
function checksRow({open, pinned}: CompareView): HTMLElement {
  const base = comparedOf(open)?.fails.length ?? 0;
  const cell = (entry: Entry, other: boolean) => {
    const compared = comparedOf(entry);
    if (!compared) return element("td", {class: "numeric"}, entry.found ? "cannot be computed" : "\u2026");
    const count = compared.fails.length;
    const by = Math.abs(count - base);
    const standing = count === base ? "alike" : count < base ? "better" : "worse";
    return element("td", {class: `numeric is-${standing}`}, element("span", {class: "compare-value", title: compared.fails.join("; ") || undefined}, String(count)),
      other && element("span", {class: "compare-standing"}, standing === "alike" ? "alike" : `${standing} by ${by}`));
  };
  return element("tr", {}, element("th", {scope: "row"}, "Checks that fail", element("span", {class: "compare-better"}, BETTER_WORDS.less)), cell(open, false), ...pinned.map((entry) => cell(entry, true)));
}

function measureRow({measure, open, others}: MeasureRow, pinned: readonly Entry[]): HTMLElement {
  const part = measure.partOf !== undefined;
  return element("tr", {class: part ? "is-part" : undefined},
    element("th", {scope: "row"}, labelOf(measureName(measure)), !part && element("span", {class: "compare-better"}, BETTER_WORDS[measure.better])),
    element("td", {class: "numeric is-open"}, element("span", {class: "compare-value", "data-unit": unitOf(measure)}, valueText(measure, open))),
    ...others.map(({value, difference}, i) => {
      if (!comparedOf(pinned[i] as Entry)) return element("td", {class: "numeric"}, pinned[i]?.found ? "" : "\u2026");
      return element("td", {class: `numeric is-${difference.standing.replace(" ", "-")}`},
        element("span", {class: "compare-value", "data-unit": unitOf(measure)}, valueText(measure, value)), element("span", {class: "compare-standing", "data-unit": unitOf(measure)}, standingText(measure, difference)));
    }));
}

/** What a measure's numbers are in, for readers of other units. */
const unitOf = ({unit}: MeasureRow["measure"]) => unit || undefined;

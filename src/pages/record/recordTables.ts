import type {Check} from "../../lib/checks.js";
import {outcome} from "../../lib/record/checkGroups.js";
import type {CheckGroup, CheckRow, RecordTable} from "../../lib/record/parts.js";
import {checkMark, checkNumbers, checkWord} from "../../components/checks.js";
import {element} from "../../components/dom.js";
import {unitText} from "../../components/symbols.js";

/** The checks of one part, or the same checks of several side by side, with the remedies and notes that hold them. */
export function checkTable(group: CheckGroup): HTMLElement {
  const single = group.parts.length === 0;
  const heads = single ? ["Check", "Found", "Limit", "Outcome", "Source"] : ["Check", ...group.parts.map(capital), "Source"];
  const table = element("table", {class: `record-table record-checks${single ? " is-single" : ""}`},
    element("thead", {}, titleRow(`Checks: ${group.title}`, outcome(group), heads.length), headRow(heads, (i) => single && (i === 1 || i === 2))),
    element("tbody", {}, ...group.rows.map(single ? singleRow : besideRow)));
  return element("div", {class: "scrolls", tabindex: 0, role: "region", "aria-label": `Checks: ${group.title}`}, table,
    ...(group.noted.length > 0 ? [element("ul", {class: "record-notes"}, ...group.noted.map(note))] : []));
}

/** A small table of the record, its title in its head. */
export function recordTable({title, heads, rows}: RecordTable): HTMLElement {
  return element("div", {class: "scrolls", tabindex: 0, role: "region", "aria-label": title},
    element("table", {class: "record-table"},
      element("thead", {}, titleRow(title, "", heads.length), headRow(heads)),
      element("tbody", {}, ...rows.map((row) => element("tr", {}, ...row.map((text) => element("td", {}, text)))))));
}

function titleRow(title: string, rest: string, columns: number): HTMLElement {
  return element("tr", {}, element("th", {scope: "colgroup", colspan: columns, class: "record-table-title"}, title, rest ? element("span", {}, `: ${rest}`) : null));
}

function headRow(heads: readonly string[], numeric: (index: number) => boolean = () => false): HTMLElement {
  return element("tr", {}, ...heads.map((words, i) => element("th", {scope: "col", class: numeric(i) ? "numeric" : undefined}, words)));
}

function singleRow({label, clause, cells: [check]}: CheckRow): HTMLElement {
  if (!check || check === "none") return element("tr", {});
  const {found, limit} = checkNumbers(check);
  return element("tr", {"data-verdict": check.verdict},
    element("td", {}, label), element("td", {class: "numeric"}, found), element("td", {class: "numeric"}, short(limit)),
    element("td", {class: "record-verdict"}, checkMark(check.verdict), ` ${checkWord(check)}`), element("td", {}, clause));
}

/** One thing that is checked of several parts; its unit is said once. */
function besideRow({label, clause, cells}: CheckRow): HTMLElement {
  const unit = unitText(cells.find((check) => check !== "none")?.unit ?? "");
  return element("tr", {}, element("td", {}, unit ? `${label}, ${unit}` : label), ...cells.map(cell), element("td", {}, clause));
}

function cell(check: Check | "none"): HTMLElement {
  if (check === "none") return element("td", {}, "\u2013");
  const {found, limit} = checkNumbers({...check, unit: ""});
  return element("td", {"data-verdict": check.verdict}, checkMark(check.verdict, {named: true}), ` ${found ? `${found} (${short(limit)})` : limit}`,
    check.verdict === "ok" || check.verdict === "near" ? null : element("strong", {}, ` ${checkWord(check)}`));
}

/** A limit by its sign, so that its row stays on one line: "\u2264 40 kip". */
function short(limit: string): string {
  return limit.replace("at most", "\u2264").replace("at least", "\u2265");
}

function note(check: Check): HTMLElement {
  return element("li", {"data-verdict": check.verdict}, checkMark(check.verdict), " ", element("strong", {}, `${check.label}, ${checkWord(check)}.`), ` ${check.message}`);
}

function capital(words: string): string {
  return words.charAt(0).toUpperCase() + words.slice(1);
}

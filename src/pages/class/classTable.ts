import type {MeasureEntry} from "../../lib/schemes/measures/measureList.js";
import {kinshipWords} from "../../lib/classroom/kinship.js";
import {feetText} from "../../lib/units.js";
import {checkMark} from "../../components/checks.js";
import {button} from "../../components/controls.js";
import {element} from "../../components/dom.js";
import {measureText, rowOf, SHOWN_MEASURES, type ClassSort, type Student} from "./classData.js";

/** The class as a table: a row for each design, ordered by any column. */
export interface ClassTable {
  readonly node: HTMLElement;
  show(students: readonly Student[], sort: ClassSort): void;
  /** Marks the design that is being read. */
  mark(fileName: string | undefined): void;
}

/** What a press in the table does. */
export interface TableActions {
  sort(by: string): void;
  read(fileName: string): void;
  open(fileName: string): void;
  tick(fileName: string, ticked: boolean): void;
  readonly ticked: ReadonlySet<string>;
}

interface Column {
  /** The column of the saved table by which it is ordered. */
  readonly by: string;
  readonly head: string;
  readonly numeric?: boolean;
  readonly cell: (student: Student) => (Node | string)[];
}

/** Labels of failing checks that a cell names. */
const NAMED_FAILS = 2;

const MEASURED = SHOWN_MEASURES.map(({measure, name, unit}): Column => ({
  by: measure.column, head: `${name}, ${unit}`, numeric: true, cell: (student) => [cellText(student, measure)],
}));

const COLUMNS: readonly Column[] = [
  {by: "deck", head: "Deck", cell: (student) => [rowOf(student)?.deck ?? `${student.design.deck.member} ${student.design.deck.pattern}`]},
  {by: "span_ft", head: "Span", numeric: true, cell: ({design}) => [feetText(design.bay.spanFt)]},
  {by: "beam_span_ft", head: "Beams", numeric: true, cell: ({design}) => [feetText(design.bay.beamSpanFt)]},
  ...MEASURED,
  {by: "fails", head: "Checks that fail", cell: failsCell},
  {by: "reasons_standing", head: "Reasons that stand", cell: (student) => {
    const count = rowOf(student)?.count;
    return [count ? `${count.reader + count.starter + count.rule} of ${count.all}${count.starter + count.rule > 0 ? `, ${count.reader} their own` : ""}` : ""];
  }},
  {by: "told_apart", head: "What tells it apart", cell: ({kin}) => [kin ? kinshipWords(kin) : "Being compared."]},
  {by: "comments", head: "Comments", numeric: true, cell: ({design}) => [String(design.comments.length)]},
];

export function classTable(actions: TableActions): ClassTable {
  const heads = new Map<string, HTMLElement>();
  const head = (by: string, words: string, numeric = false) => {
    const node = element("th", {scope: "col", class: numeric ? "numeric" : undefined}, button(words, () => actions.sort(by), {quiet: true, name: `Order by ${words}`}));
    heads.set(by, node);
    return node;
  };
  const body = element("tbody");
  const table = element("table", {class: "class-table", "data-own-csv": true},
    element("thead", {}, element("tr", {}, element("th", {scope: "col"}, element("span", {class: "for-listeners"}, "To compare")), head("file", "Who"), ...COLUMNS.map(({by, head: words, numeric}) => head(by, words, numeric)))),
    body);
  const rows = new Map<string, HTMLElement>();
  let marked: string | undefined;
  const line = (student: Student) => {
    const {fileName, who} = student;
    const tick = element("input", {type: "checkbox", class: "class-tick", "aria-label": `Compare ${who}, ${fileName}`, checked: actions.ticked.has(fileName)});
    tick.addEventListener("change", () => actions.tick(fileName, tick.checked));
    return element("tr", {"data-file": fileName, class: fileName === marked ? "is-own" : undefined},
      element("td", {}, tick),
      element("th", {scope: "row"}, element("strong", {}, who), who === fileName ? null : element("span", {class: "class-file"}, fileName),
        element("span", {class: "class-acts"}, button("Read", () => actions.read(fileName), {quiet: true, name: `Read and comment ${who}, ${fileName}`}), button("Open", () => actions.open(fileName), {quiet: true, name: `Open ${who}, ${fileName}, as the open design`}))),
      ...COLUMNS.map(({numeric, cell}) => element("td", {class: numeric ? "numeric" : undefined}, ...cell(student))));
  };
  return {
    node: element("div", {class: "scrolls class-scroll", tabindex: 0, role: "region", "aria-label": "The class\u2019s designs"}, table),
    show(students, sort) {
      const {activeElement} = document;
      const focused = body.contains(activeElement) ? [activeElement?.closest("tr")?.dataset["file"], activeElement?.getAttribute("aria-label")] as const : undefined;
      rows.clear();
      body.replaceChildren(...students.map((student) => {
        const node = line(student);
        rows.set(student.fileName, node);
        return node;
      }));
      for (const [by, node] of heads) {
        if (by === sort.by) node.setAttribute("aria-sort", sort.down ? "descending" : "ascending");
        else node.removeAttribute("aria-sort");
      }
      if (focused?.[0]) [...rows.get(focused[0])?.querySelectorAll<HTMLElement>("button, input") ?? []].find((node) => node.getAttribute("aria-label") === focused[1])?.focus({preventScroll: true});
    },
    mark(fileName) {
      if (marked !== undefined) rows.get(marked)?.classList.remove("is-own");
      marked = fileName;
      if (marked !== undefined) rows.get(marked)?.classList.add("is-own");
    },
  };
}

function cellText(student: Student, measure: MeasureEntry): string {
  if (student.found === undefined) return "\u2026";
  const row = rowOf(student);
  return row ? measureText(measure, measure.read(row.measures)) : "";
}

function failsCell(student: Student): (Node | string)[] {
  const {found} = student;
  if (!found) return ["\u2026"];
  if ("problem" in found) return [checkMark("fails"), ` It cannot be computed: ${found.problem}`];
  const {fails, uncovered} = found;
  const beyond = uncovered.length > 0 ? `; ${uncovered.length} beyond the methods` : "";
  if (fails.length === 0) return [`none${beyond}`];
  const rest = fails.length - NAMED_FAILS;
  return [checkMark("fails"), ` ${fails.length}: ${fails.slice(0, NAMED_FAILS).join("; ")}${rest > 0 ? ` and ${rest} more` : ""}${beyond}`];
}

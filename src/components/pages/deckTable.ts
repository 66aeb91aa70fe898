import type {Catalogue} from "../../lib/catalogue.js";
import {HANDBOOK_HUMIDITY_PERCENT, HANDBOOK_STRENGTHS_PSI, handbookCriteria, type Criteria} from "../../lib/deck/criteria.js";
import {deckRow} from "../../lib/deck/deckMember.js";
import {SPAN_RANGE_FT, type SafeLoad} from "../../lib/deck/safeLoad.js";
import {safeLoadTable, usualPatterns, type DeckConditions, type TableRow} from "../../lib/deck/table.js";
import type {Evaluation} from "../../lib/evaluate.js";
import {decimals} from "../../lib/units.js";
import {LIMIT_LOOKS} from "../charts/limits.js";
import {button} from "../controls.js";
import {element, uniqueId} from "../dom.js";
import {download} from "../store/browser.js";
import {memberList} from "./deckControls.js";
import {diameterWords, patternWords} from "./deckWords.js";

/** The table of one member; it keeps the reader's choices while the design changes. */
export interface MemberTable {
  readonly node: HTMLElement;
  show(result: Evaluation): void;
}

/** Columns beyond which a table says no more than a shorter one. */
const MOST_COLUMNS = 40;

/** Safe loads of any catalogue member by span and pattern, over spans and by criteria of the reader's choice. */
export function memberTable(catalogue: Catalogue): MemberTable {
  const entry = (words: string, input: HTMLElement) => element("div", {class: "table-choice"}, element("label", {for: input.id}, words), input);
  const box = (value: number) => {
    const input = element("input", {id: uniqueId("table"), type: "number", class: "number-box", value, min: 1, max: SPAN_RANGE_FT.max});
    return {input, value: () => (input.value === "" ? NaN : Number(input.value))};
  };
  const list = memberList(catalogue, {id: uniqueId("table")});
  const [from, to, step, topping] = [box(20), box(80), box(4), box(2)];
  topping.input.min = "0";
  topping.input.max = "6";
  topping.input.step = "0.25";
  const rules = element("select", {id: uniqueId("table")}, element("option", {value: "own"}, "this floor's"), element("option", {value: "handbook"}, "the handbook's"));
  const strand = element("select", {id: uniqueId("table")}, ...catalogue.strands.map(({sixteenths}) => element("option", {value: sixteenths}, diameterWords(sixteenths))));
  const message = element("p", {class: "control-message", role: "alert", hidden: true});
  const grid = element("div", {class: "scrolls", role: "region", tabindex: 0, "aria-label": "Safe loads by span and pattern, psf"});
  const note = element("p", {class: "table-note"});
  let current: Evaluation | undefined;
  let rows: readonly TableRow[] = [];
  let table = tableOf(rows);
  let shown = "";
  let followed = "";

  const save = button("Save as CSV", () => download(`${list.value}-safe-loads.csv`, csvOf(rows)), {quiet: true});
  const node = element("div", {class: "member-table"},
    element("div", {class: "table-choices no-print"},
      entry("Member", list), entry("Strand", strand), entry("Criteria", rules),
      entry("From, ft", from.input), entry("to, ft", to.input), entry("every, ft", step.input), entry("Topping, in", topping.input)),
    message, grid, note, element("p", {class: "row no-print"}, save));

  const draw = () => {
    if (!current) return;
    const {design, deck} = current;
    const row = deckRow(catalogue, list.value);
    const handbook = rules.value === "handbook";
    topping.input.disabled = row.use === "pretopped";
    const toppingIn = row.use === "pretopped" ? 0 : topping.value();
    const [start, end, each] = [from.value(), to.value(), step.value()];
    const problem = problemWith(start, end, each, toppingIn);
    message.hidden = !problem;
    message.textContent = problem ?? "";
    if (problem) return;
    const criteria: Criteria = handbook ? handbookCriteria(toppingIn > 0) : deck.criteria;
    const conditions: DeckConditions = handbook ? handbookConditions(toppingIn) : {
      concreteKind: design.deck.concrete, strengthPsi: design.deck.strengthPsi, releaseStrengthPsi: design.deck.releaseStrengthPsi,
      toppingIn, toppingStrengthPsi: design.deck.toppingStrengthPsi, humidityPercent: design.criteria.humidityPercent,
    };
    const spansFt = Array.from({length: Math.floor((end - start) / each + 1e-9) + 1}, (_, i) => start + i * each);
    const ownApplies = !handbook && list.value === design.deck.member && toppingIn === design.deck.toppingIn && !design.deck.dimensions;
    const key = JSON.stringify([row.designation, strand.value, spansFt, conditions, criteria]);
    if (key !== shown) {
      shown = key;
      rows = safeLoadTable(catalogue, row, usualPatterns(row, Number(strand.value)), spansFt, conditions, criteria);
      table = tableOf(rows);
      grid.replaceChildren(table.node);
    }
    table.mark(ownApplies ? {pattern: design.deck.pattern, spanFt: design.bay.spanFt} : undefined);
    const words = noteFor(rows, conditions, criteria, ownApplies, deck.demandPsf);
    if (note.textContent !== words) note.textContent = words;
  };
  for (const input of [list, strand, rules, from.input, to.input, step.input, topping.input]) input.addEventListener("input", draw);
  list.addEventListener("input", () => {
    strand.value = deckRow(catalogue, list.value).use === "plank" ? "6" : "8";
    draw();
  });

  return {
    node,
    show(result) {
      current = result;
      const {member, toppingIn} = result.design.deck;
      // The table follows the design's member until the reader looks at another one.
      if (followed === "" || list.value === followed) {
        if (member !== followed) {
          list.value = member;
          strand.value = String(result.member.layout.strand.sixteenths);
          const [least, most] = result.member.shape.family === "double tee" ? [24, 84] : [12, 48];
          [from.input.value, to.input.value] = [String(least), String(most)];
        }
        if (toppingIn > 0 || member !== followed) topping.input.value = String(toppingIn);
        followed = member;
      }
      draw();
    },
  };
}

function problemWith(from: number, to: number, step: number, toppingIn: number): string | undefined {
  const {min, max} = SPAN_RANGE_FT;
  if (!(from >= min && from <= max)) return `first span: ${from} ft is not possible (${min} to ${max} ft)`;
  if (!(to >= from && to <= max)) return `last span: ${to} ft is not possible (${from} to ${max} ft)`;
  if (!(step > 0)) return `step: ${step} ft is not possible (above 0)`;
  if ((to - from) / step > MOST_COLUMNS) return `step: ${step} ft makes more than ${MOST_COLUMNS} columns; take a longer one`;
  if (!(toppingIn >= 0 && toppingIn <= 6)) return `topping thickness: ${toppingIn} in is not possible (0 to 6 in)`;
  return undefined;
}

function handbookConditions(toppingIn: number): DeckConditions {
  const {member, release, topping} = HANDBOOK_STRENGTHS_PSI;
  return {concreteKind: "normalweight", strengthPsi: member, releaseStrengthPsi: release, toppingIn, toppingStrengthPsi: topping, humidityPercent: HANDBOOK_HUMIDITY_PERCENT};
}

/** A table of cells, of which one can be marked as the design's own. */
interface LoadTable {
  readonly node: HTMLTableElement;
  mark(own: {pattern: string; spanFt: number} | undefined): void;
}

function tableOf(rows: readonly TableRow[]): LoadTable {
  const spans = rows[0]?.cells.map((cell) => cell.spanFt) ?? [];
  const cells = rows.map((row) => row.cells.map(loadCell));
  let marked: HTMLElement | undefined;
  const node = element("table", {class: "load-table"},
    element("thead", {}, element("tr", {}, element("th", {scope: "col"}, "Pattern"), ...spans.map((span) => element("th", {scope: "col", class: "numeric"}, `${Number(span.toFixed(2))} ft`)))),
    element("tbody", {}, ...rows.map(({pattern}, index) => element("tr", {}, element("th", {scope: "row", title: patternWords(pattern)}, pattern), ...(cells[index] ?? [])))));
  return {
    node,
    mark(own) {
      const nearest = spans.reduce((best, span, i) => (own && Math.abs(span - own.spanFt) < Math.abs((spans[best] ?? 0) - own.spanFt) ? i : best), 0);
      const next = own && cells[rows.findIndex((row) => row.pattern === own.pattern)]?.[nearest];
      if (next === marked) return;
      marked?.classList.remove("is-own");
      next?.classList.add("is-own");
      marked = next;
    },
  };
}

function loadCell({safeLoadPsf, governs, spanFt}: SafeLoad): HTMLElement {
  if (safeLoadPsf < 1) return element("td", {class: "numeric load-none"}, "\u2013");
  const {letter} = LIMIT_LOOKS[governs];
  return element("td", {class: "numeric", "data-governs": letter, title: `${decimals(safeLoadPsf, 1)} psf at ${spanFt} ft; ${governs} governs`},
    decimals(safeLoadPsf), element("span", {class: "letter"}, letter));
}

function noteFor(rows: readonly TableRow[], conditions: DeckConditions, criteria: Criteria, own: boolean, demandPsf: number): string {
  const letters = [...new Set(rows.flatMap((row) => row.cells.filter((cell) => cell.safeLoadPsf >= 1).map((cell) => cell.governs)))]
    .map((limit) => `${LIMIT_LOOKS[limit].letter} ${limit}`).join(", ");
  const concrete = `${decimals(conditions.strengthPsi)} psi ${conditions.concreteKind}`;
  return `Each cell is the safe load in psf beyond member and topping, with the letter of what governs: ${letters}. ${concrete}, ${decimals(criteria.superimposedDeadPsf, 1)} psf of it dead, class ${criteria.tensionClass}. A dash: it cannot carry itself. Release strength is not checked here.${own ? ` The outlined cell is this design, of which ${decimals(demandPsf)} psf is asked.` : ""}`;
}

/** One line for each cell, so that any program can read it. */
function csvOf(rows: readonly TableRow[]): string {
  const lines = rows.flatMap(({pattern, cells}) => cells.map((cell) => `${pattern},${cell.spanFt},${cell.safeLoadPsf.toFixed(1)},${cell.governs}`));
  return `${["pattern,span_ft,safe_load_psf,governs", ...lines].join("\n")}\n`;
}

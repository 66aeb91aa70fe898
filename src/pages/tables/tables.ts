import type {Catalog} from "../../lib/catalog.js";
import {sweepSize, sweepSpansFt, type SweepRow} from "../../lib/deck/sweep.js";
import {InputError} from "../../lib/errors.js";
import type {Evaluation} from "../../lib/evaluate.js";
import type {RawTables} from "../../lib/tables.js";
import {decimals} from "../../lib/units.js";
import {button} from "../../components/controls.js";
import {element, uniqueId} from "../../components/dom.js";
import {download} from "../../components/store/browser.js";
import type {DesignStore} from "../../components/store.js";
import {workPlace, type Work} from "../../components/worker/work.js";
import {tableChoices} from "./choices.js";
import {AS_MADE, asTheyCame, governCounts, rowId} from "./data.js";
import {tableFilters} from "./filters.js";
import {loadGrid} from "./grid.js";
import {openCell} from "./openCell.js";
import {tick} from "../../components/tables/parts.js";
import {RULE_WORDS, type TableView} from "./words.js";

/** The page's parts, to be placed one by one, and what they show. */
export interface LoadTables {
  readonly choices: HTMLElement;
  readonly run: HTMLElement;
  readonly table: HTMLElement;
  /** Calls whenever other rows show; fits `Generators.observe`. */
  observe(change: (view: TableView) => void): () => void;
}

/** Columns beyond which a table says no more than a shorter one. */
const MOST_SPANS = 60;
/** How often the table takes in what the worker has sent at most, ms, and for how many times as long as that takes it then rests. */
const TAKE_IN_MS = 200;
const REST = 6;

/** Whole tables of safe loads: choices, the work beside the page, and the table that grows from it. */
export function loadTables(catalog: Catalog, tables: RawTables, store: DesignStore, now: () => Evaluation): LoadTables {
  const start = workPlace(tables);
  const choices = tableChoices(catalog, now);
  let chosen = choices.read();
  let rows: SweepRow[] = [];
  let spansFt: number[] = [];
  let sort = AS_MADE;
  let work: Work<unknown> | undefined;
  const watchers = new Set<(view: TableView) => void>();
  let view: TableView | undefined;

  const status = element("p", {class: "sweep-status", role: "status"});
  const message = element("p", {class: "control-message", role: "alert", hidden: true});
  const size = element("span", {class: "sweep-size"});
  const bar = element("progress", {id: uniqueId("progress"), max: 1, value: 0});
  const far = element("span", {class: "sweep-far"});
  const go = button("Compute", () => void begin());
  const cancel = button("Cancel", () => work?.cancel());
  const progress = element("div", {class: "sweep-progress", hidden: true}, element("label", {for: bar.id}, "Working"), bar, far, cancel);
  const filters = tableFilters(() => void draw());
  const facts = tick("Show topping, depth, weight and strand", {checked: window.innerWidth >= 700});
  const count = element("p", {class: "table-note", role: "status"});
  const grid = loadGrid({
    sort: (next) => {
      sort = next;
      void draw();
    },
    open: (row, spanIndex, from) => openCell(catalog, store, chosen, {row, spanIndex, from}, (words) => (status.textContent = words)),
  });
  facts.input.addEventListener("change", () => grid.facts(facts.input.checked));
  grid.facts(facts.input.checked);
  const shown = async (): Promise<readonly SweepRow[]> => {
    const filter = filters.read();
    return asTheyCame(filter, sort) ? [...rows] : (await import("./rows.js")).shownRows(rows, filter, sort);
  };
  const save = button("Save as CSV", () => void saveRows(), {quiet: true});
  const saveRows = async () => {
    const [{cellTable}, visible] = await Promise.all([import("./rows.js"), shown()]);
    download("safe-loads.csv", cellTable(visible, {
      rules: RULE_WORDS[chosen.rules], limits_left_out: chosen.leftOut.join("; "), use: "for learning and preliminary sizing only",
    }).toCSV());
  };

  let draws = 0;
  const draw = async () => {
    const mine = ++draws;
    const visible = await shown();
    // What was asked for since then is drawn in its place.
    if (mine !== draws) return;
    grid.show(visible, spansFt, sort);
    const words = rows.length === visible.length ? `${decimals(rows.length)} decks.` : `${decimals(visible.length)} of ${decimals(rows.length)} decks.`;
    if (count.textContent !== words) count.textContent = words;
    save.disabled = visible.length === 0;
    view = {chosen, counts: governCounts(visible), rowsShown: visible.length, rowsMade: rows.length};
    for (const watcher of watchers) watcher(view);
  };
  /** Tells how much there is to do, or why it cannot be done. */
  const weigh = (): boolean => {
    try {
      const next = choices.read();
      const spans = sweepSpansFt(next.input.spansFt).length;
      if (spans > MOST_SPANS) throw new InputError({path: "spansFt.stepFt", label: "spans", value: spans, allowed: `at most ${MOST_SPANS}`, advice: "Take longer steps."});
      const {rows: decks, cells} = sweepSize(catalog, next.input);
      size.textContent = `${decimals(decks)} decks by ${spans} spans: ${decimals(cells)} cells`;
      message.hidden = true;
      go.disabled = false;
      return true;
    } catch (problem) {
      if (!(problem instanceof InputError)) throw problem;
      size.textContent = "";
      message.textContent = problem.message;
      message.hidden = false;
      go.disabled = true;
      return false;
    }
  };
  const begin = async () => {
    if (!weigh()) return;
    work?.cancel();
    chosen = choices.read();
    rows = [];
    spansFt = sweepSpansFt(chosen.input.spansFt);
    sort = AS_MADE;
    filters.offerSpans(spansFt);
    [bar.value, far.textContent, status.textContent] = [0, "", ""];
    progress.hidden = false;
    let next = 0;
    let cells = "";
    // A slow machine takes rows in less often, so that the page is at hand in between whatever it takes.
    const takeIn = async () => {
      const started = performance.now();
      next = Infinity;
      await draw();
      requestAnimationFrame(() => setTimeout(() => {
        const now = performance.now();
        next = now + Math.max(TAKE_IN_MS, REST * (now - started));
      }));
    };
    const mine = start("sweep", chosen.input, ({cellsDone, cellsInAll, rows: more}) => {
      rows.push(...more);
      cells = `${decimals(cellsDone)} of ${decimals(cellsInAll)} cells`;
      bar.value = cellsDone / cellsInAll;
      far.textContent = cells;
      if (performance.now() >= next) void takeIn();
    });
    work = mine;
    try {
      const done = await mine.done;
      if (work !== mine) return;
      status.textContent = done ? `Computed ${cells.split(" of ")[1] ?? "nothing"}.` : `Stopped after ${cells || "nothing"}; what was computed stays.`;
    } catch (problem) {
      if (work !== mine) return;
      message.textContent = problem instanceof Error ? problem.message : String(problem);
      message.hidden = false;
    }
    work = undefined;
    progress.hidden = true;
    await draw();
  };

  store.observe((design) => {
    const {member, pattern, toppingIn, dimensions} = design.deck;
    grid.mark(dimensions ? undefined : rowId({member, pattern, toppingIn}), design.bay.spanFt);
  });
  choices.node.addEventListener("input", weigh);
  choices.node.addEventListener("change", weigh);
  void begin();

  return {
    choices: choices.node,
    run: element("div", {class: "sweep-run no-print"}, element("p", {class: "row"}, go, size), message, progress, status),
    table: element("div", {class: "sweep"}, filters.node, element("div", {class: "sweep-above no-print"}, count, facts.node), grid.node, element("p", {class: "row no-print"}, save)),
    observe(change) {
      watchers.add(change);
      if (view) change(view);
      return () => watchers.delete(change);
    },
  };
}

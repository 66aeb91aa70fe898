import type {Catalog} from "../../lib/catalog.js";
import type {Design} from "../../lib/design/design.js";
import {evaluate} from "../../lib/evaluate.js";
import {DECK_KINDS, briefOf, steps, usualVary, type Brief, type DeckKind} from "../../lib/schemes/brief.js";
import {cellsOf, failCounts, isWithin, judged, lessIsBetter, unbeaten, type BayCell} from "../../lib/schemes/cells.js";
import {gridOf} from "../../lib/schemes/grid.js";
import type {MeasureEntry} from "../../lib/schemes/measures/measureList.js";
import {BLANK_PRICES} from "../../lib/schemes/measures/prices.js";
import type {MeasureKey} from "../../lib/schemes/measures/schemeMeasures.js";
import {coarseToFine} from "../../lib/schemes/order.js";
import {failsOf, holds, isMade, measureNamed, measureOf, type SchemeRow} from "../../lib/schemes/schemeRow.js";
import {wantedCeilingFt} from "../../lib/schemes/wanted.js";
import type {RawTables} from "../../lib/tables.js";
import {decimals, feetText} from "../../lib/units.js";
import {button} from "../../components/controls.js";
import {element, uniqueId} from "../../components/dom.js";
import {dataTable, figure} from "../../components/figure.js";
import {bayPlan} from "../../components/drawings/bayPlan.js";
import {storySection} from "../../components/drawings/storySection.js";
import type {DesignStore} from "../../components/store.js";
import {acrossSection} from "../../components/shared/acrossSection.js";
import {afterPaint} from "../../components/shared/deckSearch.js";
import {keptFactors} from "../../components/shared/ownFactors.js";
import {pageChoice} from "../../components/shared/pageValue.js";
import {planPicture, storyPicture} from "../../components/shared/pictures.js";
import {schemeCard} from "../../components/shared/schemeCard.js";
import {schemeRun} from "../../components/shared/schemeRun.js";
import {schemeStatus} from "../../components/shared/schemeStatus.js";
import {bayFilters, rangeWords} from "./bayFilters.js";
import {bayMap, cellWords} from "./bayMap.js";

/** The parts of the page, which stand apart on it and belong together. */
export interface BayPanel {
  readonly controls: HTMLElement;
  readonly map: HTMLElement;
  readonly fails: HTMLElement;
  readonly filters: HTMLElement;
  readonly charts: HTMLElement;
  readonly list: HTMLElement;
  readonly card: HTMLElement;
  readonly pictures: HTMLElement;
  resize(widthPx: number): void;
}

const SPANS_FT = {from: 20, to: 100, by: 4} as const;
const BEAM_SPANS_FT = {from: 20, to: 60, by: 4} as const;
/** How long a change of the design rests before everything is computed anew, and how often the page is drawn while it is, ms. */
const PAUSE_MS = 400;
const DRAW_MS = 400;
/** Schemes that the list shows, and charts beside each other. */
const MOST_LISTED = 40;
const MOST_CHARTS = 3;
const TWO_FROM_PX = 560;
const FIRST_TICKS: readonly MeasureKey[] = ["carbonWithoutColumnsKgPerFt2", "carbonKgPerFt2", "floorToFloorFt", "daylitPercent", "piecesWithoutColumns", "pieces"];

export function bayPanel(store: DesignStore, catalog: Catalog, tables: RawTables): BayPanel {
  const run = schemeRun(tables);
  const kindChoice = pageChoice("Kinds of deck", [{value: "considered", label: "as the design considers"}, {value: "all", label: "all"}], "considered");
  const bayChoice = pageChoice("Spans across the building", [...new Set([1, 2, 3, store.get().bay.baysAcross])].sort((a, b) => a - b).map((value) => ({value: String(value), label: String(value)})), String(store.get().bay.baysAcross));
  const frameChoice = pageChoice("Edge beams and girders", [{value: "own", label: "as in the design"}, {value: "all", label: "every kind"}], "own");
  const columnChoice = pageChoice("Columns and footings", [{value: "no", label: "not counted"}, {value: "yes", label: "sized and counted"}], "no");
  const select = element("select", {id: uniqueId("measure"), class: "bay-measure"});
  let rows: readonly SchemeRow[] = [];
  let kept: readonly SchemeRow[] = [];
  let best: readonly SchemeRow[] = [];
  let own: SchemeRow | undefined;
  let width = 0;
  let ranFor: string | undefined;
  let waiting: ReturnType<typeof setTimeout> | undefined;
  let chosen: SchemeRow | undefined;

  const withColumns = () => columnChoice.get() === "yes";
  const entryNow = (): MeasureEntry => measureNamed(select.value as MeasureKey);
  const asked = () => ({columns: withColumns(), ownFactors: keptFactors(catalog), prices: BLANK_PRICES, measures: [...judged(withColumns()).map(({column}) => column), measureNamed("parkingModules").column]});
  const offer = () => {
    const entries = judged(withColumns());
    const before = select.value;
    select.replaceChildren(...entries.map((entry) => element("option", {value: entry.key}, `${entry.name}${entry.unit ? `, ${entry.unit}` : ""}`)));
    select.value = entries.some(({key}) => key === before) ? before : withColumns() ? "carbonKgPerFt2" : "carbonWithoutColumnsKgPerFt2";
    filters.offer(entries, FIRST_TICKS);
  };
  const briefNow = (design: Design): Brief => {
    const usual = usualVary(design);
    return briefOf(design, wantedCeilingFt(evaluate(design, catalog)), {
      spansFt: steps(SPANS_FT), beamSpansFt: steps(BEAM_SPANS_FT), baysAcross: [Number(bayChoice.get())],
      ...(kindChoice.get() === "all" ? {kinds: Object.keys(DECK_KINDS) as DeckKind[]} : {}),
      ...(frameChoice.get() === "all" ? {edges: usual.edges, girders: usual.girders} : {}),
    });
  };
  const start = () => {
    clearTimeout(waiting);
    const design = store.get();
    ranFor = JSON.stringify(design);
    const brief = briefNow(design);
    const each = gridOf(brief, catalog).count / brief.vary.spansFt.length;
    run.start({brief, ...asked(), groups: coarseToFine(brief.vary.spansFt.length).map((i) => Array.from({length: each}, (_, k) => i * each + k))});
  };
  const measureOwn = () => {
    const design = store.get();
    run.ownRow(design, asked()).then((row) => {
      if (!row || store.get() !== design) return;
      own = row;
      draw();
    }, () => undefined);
  };

  const card = schemeCard({
    store, catalog, run, hint: "Choose a cell of the map, a mark of a chart or a line of the list: the scheme shows here.",
    draw(result, row) {
      const {parking} = result.design;
      const modules = Math.max(0, Math.round(measureOf(row, measureNamed("parkingModules")) ?? 0));
      const each = width >= 900 ? Math.floor((width - 24) / 2) : width;
      return element("div", {},
        figure(acrossSection(result, {modules, stallLengthIn: parking.stallLengthIn, aisleIn: parking.aisleIn}, Math.max(240, width)), {wide: true, title: `${row.deck} over ${feetText(row.span_ft)}, beams of ${feetText(row.beam_span_ft)}`, caption: "The whole width, true to scale: the daylight on the floor by its class, and below it a level of cars as far as a module fits."}),
        element("div", {class: "scheme-pair"},
          figure(bayPlan({...planPicture(result), widthPx: Math.max(240, each)}), {title: "The plan", caption: "Columns, beams and the joints of the deck, true to scale."}),
          figure(storySection({...storyPicture(result), own: false, widthPx: Math.max(240, each), mostHeightPx: 420}), {title: "The story at its edge", caption: "A cut through the edge of the building, true to scale."})));
    },
  });
  const said = element("p", {class: "bay-said", role: "status"}, "Point at a cell, or go through them with the arrow keys.");
  const choose = (row: SchemeRow | undefined) => {
    chosen = row;
    card.show(row);
    markMap();
    drawCharts();
  };
  const map = bayMap((cell, stay) => {
    said.textContent = cellWords(cell, entryNow());
    if (stay) choose(cell.best);
  });
  const markMap = () => map.mark(chosen ? [chosen.span_ft, chosen.beam_span_ft] : undefined, own && own.bays_across === Number(bayChoice.get()) ? nearestCell(own) : undefined);
  const failsPlace = element("div", {class: "bay-fails"});
  const charts = element("div", {class: "bay-charts"});
  const listPlace = element("div", {class: "bay-list"});
  const finding = element("p", {class: "bay-finding"});
  const title = element("span", {});
  const filters = bayFilters(() => draw());

  const draw = () => {
    if (width <= 0) return;
    const entry = entryNow();
    const ticked = filters.ticked();
    kept = rows.filter((row) => !isMade(row) || isWithin(row, filters.ranges()));
    best = unbeaten(kept, ticked);
    const brief = run.state().asked?.brief;
    const cells = cellsOf(kept, entry);
    if (brief) map.show(cells, entry, brief.vary.spansFt, brief.vary.beamSpansFt);
    title.textContent = mapFinding(cells, entry);
    markMap();
    // The best of the map stands there until the reader chooses.
    if (!run.state().running && (!chosen || !rows.includes(chosen))) choose((bestCell(cells, entry) ?? leastFailing(cells, entry))?.best);
    requestAnimationFrame(() => {
      failsPlace.replaceChildren(failTable(rows));
      drawList(ticked);
      requestAnimationFrame(drawCharts);
    });
  };
  // The charts' library is fetched once the reader comes near them.
  let scatter: typeof import("./bayScatter.js").bayScatter | undefined;
  const near = new IntersectionObserver((entries) => {
    if (!entries.some(({isIntersecting}) => isIntersecting)) return;
    near.disconnect();
    void import("./bayScatter.js").then(({bayScatter}) => {
      scatter = bayScatter;
      drawCharts();
    });
  }, {rootMargin: "300px"});
  near.observe(charts);
  const drawCharts = () => {
    if (width <= 0) return;
    const ticked = filters.ticked();
    const [first, ...others] = ticked;
    const holding = kept.filter(holds);
    const good = holding.length;
    finding.textContent = rows.length === 0 ? "No scheme is made yet." : good === 0 ? "No scheme that was made holds within these ranges: the table beside the map says what fails." : `Of ${decimals(good)} ${good === 1 ? "scheme that holds" : "schemes that hold"}${filters.ranges().size > 0 ? ` with ${rangeWords(ticked, filters.ranges())}` : ""}, ${decimals(best.length)} ${best.length === 1 ? "is" : "are"} beaten by none in ${ticked.map(({name}) => name).join(", ") || "nothing: tick what counts"}.`;
    const each = width >= TWO_FROM_PX ? Math.floor((width - 24) / 2) : width;
    const bayScatter = scatter;
    if (!bayScatter) return;
    charts.replaceChildren(...(first ? (others.length > 0 ? others.slice(0, MOST_CHARTS) : [first]).map((other) => {
      const chart = bayScatter({x: first, y: other, holding, best, own, chosen: chosen?.index}, each, {
        brush: (x, y) => filters.brush(other === first ? [[first, x]] : [[first, x], [other, y]]),
        pick: (index) => choose(rows.find((row) => row.index === index)),
      });
      chart.setAttribute("role", "img");
      chart.setAttribute("aria-label", `${other.name} against ${first.name} of ${good} schemes; the list below has those that no other beats`);
      for (const group of chart.querySelectorAll("g[aria-label]")) group.removeAttribute("aria-label");
      return element("div", {class: "bay-chart"}, chart);
    }) : []));
  };
  const drawList = (ticked: readonly MeasureEntry[]) => {
    if (best.length === 0) {
      listPlace.replaceChildren(element("p", {}, "There is none to list."));
      return;
    }
    const entry = entryNow();
    const sorted = [...best].sort((a, b) => ((measureOf(a, entry) ?? 0) - (measureOf(b, entry) ?? 0)) * (entry.better === "more" ? -1 : 1));
    const table = dataTable({
      columns: ["Scheme", "Deck, ft", "Beams, ft", "Edge", "Girder", ...ticked.map(({name, unit}) => (unit ? `${name}, ${unit}` : name))],
      rows: sorted.slice(0, MOST_LISTED).map((row) => [
        button(row.deck, () => choose(row), {quiet: true}), String(row.span_ft), String(row.beam_span_ft), row.edge, row.girder || "none",
        ...ticked.map((one) => decimals(measureOf(row, one) ?? 0, one.decimals)),
      ]),
    });
    listPlace.replaceChildren(element("div", {class: "scrolls", tabindex: 0, role: "region", "aria-label": "Schemes that no other beats"}, table),
      ...(sorted.length > MOST_LISTED ? [element("p", {class: "note"}, `${decimals(sorted.length - MOST_LISTED)} more are not listed: narrow the ranges, or tick fewer measures.`)] : []));
  };

  let drawn = -Infinity;
  let later: ReturnType<typeof setTimeout> | undefined;
  run.observe((state) => {
    rows = state.rows;
    clearTimeout(later);
    const since = performance.now() - drawn;
    const now = () => {
      drawn = performance.now();
      draw();
    };
    if (!state.running || since >= DRAW_MS) now();
    else later = setTimeout(now, DRAW_MS - since);
  });
  select.addEventListener("change", draw);
  afterPaint(store)((design) => {
    measureOwn();
    if (card.putIn(design) || JSON.stringify(design) === ranFor) return;
    clearTimeout(waiting);
    if (ranFor === undefined) {
      offer();
      start();
    } else waiting = setTimeout(start, PAUSE_MS);
  });
  let ready = false;
  for (const choice of [kindChoice, bayChoice, frameChoice]) choice.observe(() => ready && start());
  columnChoice.observe(() => {
    if (!ready) return;
    offer();
    measureOwn();
    start();
  });
  ready = true;

  const mapFigure = figure(element("div", {}, map.node, said), {
    wide: true, title,
    caption: "Each cell is a deck span and a beam span, with the best of its schemes by this measure; the darker the better, the best is outlined twice. Hatched: no scheme of the cell holds, and the number is of the one that fails least. A dash: none can be made. Outlined in the color of the open design: the cell nearest to it.",
  });
  return {
    controls: element("div", {class: "bay-controls"}, element("p", {class: "control"}, element("label", {for: select.id, class: "control-label"}, "Measure of the map"), select), kindChoice.node, bayChoice.node, frameChoice.node, columnChoice.node, schemeStatus(run, start)),
    map: mapFigure, fails: failsPlace, filters: filters.node, charts: element("div", {}, finding, charts), list: listPlace, card: card.words, pictures: card.pictures,
    resize(widthPx) {
      if (widthPx === width) return;
      width = widthPx;
      draw();
      card.redraw();
    },
  };
}

/** The cell of the grid that is nearest to a design. */
function nearestCell({span_ft, beam_span_ft}: SchemeRow): [number, number] {
  const near = (value: number, {from, to, by}: {readonly from: number; readonly to: number; readonly by: number}) => Math.min(to, Math.max(from, from + Math.round((value - from) / by) * by));
  return [near(span_ft, SPANS_FT), near(beam_span_ft, BEAM_SPANS_FT)];
}

/** The cell whose scheme holds and is best by the measure. */
function bestCell(cells: readonly BayCell[], entry: MeasureEntry): BayCell | undefined {
  return bestOf(cells.filter(({holds: good}) => good), entry);
}

/** Where nothing holds, the cell whose scheme fails in the fewest checks. */
function leastFailing(cells: readonly BayCell[], entry: MeasureEntry): BayCell | undefined {
  const made = cells.flatMap((cell) => (cell.best ? [{cell, fails: failsOf(cell.best).length}] : []));
  const least = Math.min(...made.map(({fails}) => fails));
  return bestOf(made.filter(({fails}) => fails === least).map(({cell}) => cell), entry);
}

function bestOf(cells: readonly BayCell[], entry: MeasureEntry): BayCell | undefined {
  const value = (cell: BayCell) => (cell.best && lessIsBetter(cell.best, entry)) ?? Infinity;
  return [...cells].sort((a, b) => value(a) - value(b))[0];
}

/** What the map shows, as its title. */
function mapFinding(cells: readonly BayCell[], entry: MeasureEntry): string {
  if (cells.length === 0) return "Deck span by beam span";
  const first = bestCell(cells, entry);
  const value = first?.best && measureOf(first.best, entry);
  if (!first || value === undefined) return "No cell has a scheme of which all checks hold";
  return `The ${entry.better === "more" ? "most" : "least"} ${entry.name}: ${decimals(value, entry.decimals)}${entry.unit ? ` ${entry.unit}` : ""} at a deck span of ${first.spanFt} ft on beams of ${first.beamSpanFt} ft`;
}

/** What fails, by how many schemes each check stops. */
function failTable(rows: readonly SchemeRow[]): HTMLElement {
  const made = rows.filter(isMade);
  const failing = made.filter((row) => !holds(row));
  const none = rows.length - made.length;
  const counts = failCounts(rows);
  const head = element("p", {}, `${decimals(rows.length - none - failing.length)} of ${decimals(rows.length)} schemes hold; ${decimals(failing.length)} fail a check, and ${decimals(none)} cannot be made, because no deck of the kind carries the span.`);
  return element("div", {}, head, element("div", {class: "scrolls", tabindex: 0, role: "region", "aria-label": "What fails, by check"}, dataTable({columns: ["Check that fails", "Schemes"], rows: counts.length > 0 ? counts.slice(0, 14).map(([id, count]) => [id, count]) : [["none", 0]]})));
}

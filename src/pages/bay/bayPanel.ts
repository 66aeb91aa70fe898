import type {Catalog} from "../../lib/catalog.js";
import type {Design} from "../../lib/design/design.js";
import {bestCell, growingCells, isWithin, leastFailingCell, unbeaten, type BayCell} from "../../lib/schemes/cells.js";
import {gridOf} from "../../lib/schemes/grid.js";
import type {MeasureKey} from "../../lib/schemes/measures/schemeMeasures.js";
import {coarseToFine} from "../../lib/schemes/order.js";
import {holds, isMade, sameScheme, type SchemeRow} from "../../lib/schemes/schemeRow.js";
import type {RawTables} from "../../lib/tables.js";
import {element} from "../../components/dom.js";
import {figure} from "../../components/figure.js";
import {ownPrices} from "../../components/prices/ownPrices.js";
import {pricesFold} from "../../components/prices/pricesFold.js";
import {pricedRows} from "../../components/prices/pricedRows.js";
import {afterPaint} from "../../components/shared/deckSearch.js";
import {inTurn, onceNear} from "../../components/shared/inTurn.js";
import {pacedDraws} from "../../components/shared/pacedDraws.js";
import {schemeCard} from "../../components/shared/schemeCard.js";
import {schemeRun} from "../../components/shared/schemeRun.js";
import {schemeStatus} from "../../components/shared/schemeStatus.js";
import type {DesignStore} from "../../components/store.js";
import {bayCharts} from "./bayCharts.js";
import {bayChoices} from "./bayChoices.js";
import {bayFilters} from "./bayFilters.js";
import {bayList} from "./bayList.js";
import {bayMap} from "./bayMap.js";
import {bayPictures} from "./bayPictures.js";
import {cellWords, failTable, mapFinding} from "./bayWords.js";
import {closerLook} from "./closerLook.js";

/** The parts of the page, which stand apart on it and belong together. */
export interface BayPanel {
  readonly controls: HTMLElement;
  readonly prices: HTMLElement;
  readonly map: HTMLElement;
  readonly closer: HTMLElement;
  readonly fails: HTMLElement;
  readonly filters: HTMLElement;
  readonly charts: HTMLElement;
  readonly list: HTMLElement;
  readonly card: HTMLElement;
  readonly pictures: HTMLElement;
  resize(widthPx: number): void;
}

/** How long a change of the design rests before everything is computed anew, ms. */
const PAUSE_MS = 400;
const FIRST_TICKS: readonly MeasureKey[] = ["carbonWithoutColumnsKgPerFt2", "carbonKgPerFt2", "floorToFloorFt", "daylitPercent", "piecesWithoutColumns", "pieces"];
const POINT = "Point at a cell, or go through them with the arrow keys; drag, or hold Shift, to mark a part of the map.";
const MARKED = "Marked:";

export function bayPanel(store: DesignStore, catalog: Catalog, tables: RawTables): BayPanel {
  const run = schemeRun(tables);
  const prices = ownPrices();
  const fold = pricesFold(prices);
  const choices = bayChoices(store.get(), catalog);
  const closer = closerLook(() => start());
  const filters = bayFilters(() => draw());
  const charts = bayCharts(filters, (index) => choose(rows.find((row) => row.index === index)));
  const card = schemeCard({
    store, catalog, run, hint: "Choose a cell of the map, a mark of a chart or a line of the list: the scheme shows here.",
    draw: (result, row) => bayPictures(result, row, width),
  });
  const said = element("p", {class: "bay-said", role: "status"}, POINT);
  const map = bayMap({
    choose(cell, stay) {
      said.textContent = cellWords(cell, choices.entry());
      if (stay) choose(cell.best);
    },
    markOut(part) {
      closer.marked(part);
      if (!part && said.textContent.startsWith(MARKED)) said.textContent = POINT;
      if (part) said.textContent = `${MARKED} deck ${part.deckFt.fromFt} to ${part.deckFt.toFt} ft, beams ${part.beamFt.fromFt} to ${part.beamFt.toFt} ft. \u201cLook closer at the marked part\u201d, below, tries more spans of it.`;
    },
  });
  const [title, failsPlace, listPlace] = [element("span", {}), element("div", {class: "bay-fails"}), element("div", {class: "bay-list"})];

  /** Rows with their cost, where prices are there for all of them. */
  const priced = pricedRows(prices);
  let rows: readonly SchemeRow[] = [];
  let holding: readonly SchemeRow[] = [];
  /** Those that the ranges let into the map, and of these the ones whose checks hold. */
  let letIn: readonly SchemeRow[] = [];
  let within: readonly SchemeRow[] = [];
  /** Those that no other beats; undefined until somebody asks. */
  let best: readonly SchemeRow[] | undefined;
  const cellsNow = growingCells();
  /** The open design as it was measured, and with its cost. */
  let measured: SchemeRow | undefined;
  let own: SchemeRow | undefined;
  let chosen: SchemeRow | undefined;
  let width = 0;
  let ranFor: string | undefined;
  let waiting: ReturnType<typeof setTimeout> | undefined;

  function start(): void {
    clearTimeout(waiting);
    const design = store.get();
    ranFor = JSON.stringify(design);
    const brief = choices.brief(design, closer.get());
    const each = gridOf(brief, catalog).count / brief.vary.spansFt.length;
    run.start({brief, ...choices.asked(), groups: coarseToFine(brief.vary.spansFt.length).map((i) => Array.from({length: each}, (_, k) => i * each + k))});
  }
  function measureOwn(): void {
    const design: Design = store.get();
    run.ownRow(design, choices.asked()).then((row) => {
      if (!row || store.get() !== design) return;
      measured = row;
      take();
    }, () => undefined);
  }
  /** Takes what the run has by now, at the prices of the moment. */
  function take(): void {
    const found = priced([...run.state().rows, ...(measured ? [measured] : [])], choices.withColumns());
    fold.show(found.lacking);
    if (choices.offer(found.known)) filters.offer(choices.entries(), FIRST_TICKS);
    rows = measured ? found.rows.slice(0, -1) : found.rows;
    own = measured && found.rows.at(-1);
    holding = rows.filter(holds);
    draw();
  }
  function choose(row: SchemeRow | undefined): void {
    look(row);
    drawChosen();
  }
  function look(row: SchemeRow | undefined): void {
    chosen = row;
    card.show(row);
    closer.chosen(row ? [row.span_ft, row.beam_span_ft] : undefined);
  }
  function markMap(): void {
    map.mark(chosen ? [chosen.span_ft, chosen.beam_span_ft] : undefined, ownIfAlike() && nearestCell(own as SchemeRow, run.state().asked?.brief.vary));
  }
  /** The open design, where it has as many bays across as the schemes. */
  function ownIfAlike(): SchemeRow | undefined {
    return own?.bays_across === choices.baysAcross() ? own : undefined;
  }
  function unbeatenNow(): readonly SchemeRow[] {
    return (best ??= unbeaten(within, filters.ticked()));
  }
  function drawMap(): void {
    const entry = choices.entry();
    const brief = run.state().asked?.brief;
    const cells = cellsNow(letIn, entry);
    if (brief) map.show(cells, entry, brief.vary.spansFt, brief.vary.beamSpansFt);
    title.textContent = mapFinding(cells, entry);
    if (!run.state().running && (!chosen || !rows.includes(chosen))) look(nextChosen(chosen, rows, cells));
    markMap();
  }
  function draw(): void {
    letIn = rows.filter((row) => !isMade(row) || isWithin(row, filters.ranges()));
    within = letIn.filter(holds);
    best = undefined;
    if (width > 0) drawAll();
  }
  /** The same scheme among others, or else the best of the map. */
  function nextChosen(before: SchemeRow | undefined, all: readonly SchemeRow[], cells: readonly BayCell[]): SchemeRow | undefined {
    const same = before && all.find((row) => sameScheme(row, before));
    return same ?? (bestCell(cells, choices.entry()) ?? leastFailingCell(cells, choices.entry()))?.best;
  }

  // Much is drawn anew while a run goes on, and what searches beside the page has the same processors: so what the reader does not see waits.
  const part = (place: HTMLElement, paint: () => void) => onceNear(place, paint, () => run.state().running);
  let failsFor: readonly SchemeRow[] | undefined;
  const mapPart = part(map.node, drawMap);
  const listPart = part(listPlace, () => listPlace.replaceChildren(...bayList(unbeatenNow(), filters.ticked(), choices.entry(), choose)));
  const chartsPart = part(charts.node, () => charts.draw({made: rows.length > 0, ticked: filters.ticked(), ranges: filters.ranges(), holding, within, best: unbeatenNow(), own, chosen: chosen?.index}, width));
  const failsPart = part(failsPlace, () => {
    if (rows !== failsFor) failsPlace.replaceChildren(failTable(rows));
    failsFor = rows;
  });
  const drawAll = inTurn(mapPart, failsPart, part(filters.node, () => filters.among(holding)), listPart, chartsPart);
  // The control itself first: what it asks of the map comes a frame later, so that it answers at once while a run goes on.
  const drawMeasure = inTurn(() => true, mapPart, listPart);
  const drawChosen = inTurn(part(map.node, markMap), chartsPart);
  const more = pacedDraws(take);
  run.observe(({running, rows: found}) => more(!running || found.length === 0));
  prices.observe(() => take());
  filters.offer(choices.entries(), FIRST_TICKS);
  afterPaint(store)((design) => {
    measureOwn();
    if (card.putIn(design) || JSON.stringify(design) === ranFor) return;
    clearTimeout(waiting);
    if (ranFor === undefined) start();
    else waiting = setTimeout(start, PAUSE_MS);
  });
  choices.observe({
    measure: drawMeasure,
    schemes: start,
    columns() {
      filters.offer(choices.entries(), FIRST_TICKS);
      measureOwn();
      start();
    },
  });
  return {
    controls: element("div", {class: "bay-controls"}, ...choices.nodes, schemeStatus(run, start)),
    prices: fold.node,
    map: figure(element("div", {}, map.node, said), {
      wide: true, title,
      caption: "Each cell is a deck span and a beam span, with the best of its schemes by this measure; the darker the better, the best is outlined twice. Hatched: no scheme of the cell holds, and the number is of the one that fails least. A dash: none can be made. Outlined in the color of the open design: the cell nearest to it.",
    }),
    closer: closer.node, fails: failsPlace, filters: filters.node, charts: charts.node, list: listPlace, card: card.words, pictures: card.pictures,
    resize(widthPx) {
      if (widthPx === width) return;
      width = widthPx;
      draw();
      card.redraw();
    },
  };
}

/** The cell of the map that is nearest to a design. */
function nearestCell({span_ft, beam_span_ft}: SchemeRow, vary: {readonly spansFt: readonly number[]; readonly beamSpansFt: readonly number[]} | undefined): [number, number] | undefined {
  const near = (value: number, list: readonly number[]) => [...list].sort((a, b) => Math.abs(a - value) - Math.abs(b - value))[0];
  const [span, beam] = [near(span_ft, vary?.spansFt ?? []), near(beam_span_ft, vary?.beamSpansFt ?? [])];
  return span === undefined || beam === undefined ? undefined : [span, beam];
}

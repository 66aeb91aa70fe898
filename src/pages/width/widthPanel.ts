import type {Catalog} from "../../lib/catalog.js";
import type {Design} from "../../lib/design/design.js";
import {evaluate, peopleWork} from "../../lib/evaluate.js";
import {DECK_KINDS, briefOf, steps, type Brief, type DeckKind} from "../../lib/schemes/brief.js";
import {gridOf} from "../../lib/schemes/grid.js";
import {coarseToFine} from "../../lib/schemes/order.js";
import {measureNamed, type SchemeRow} from "../../lib/schemes/schemeRow.js";
import {wantedCeilingFt} from "../../lib/schemes/wanted.js";
import {leadOf} from "../../lib/schemes/lead.js";
import type {WidthFacts} from "../../lib/schemes/widthWords.js";
import type {RawTables} from "../../lib/tables.js";
import {element} from "../../components/dom.js";
import {ownPrices} from "../../components/prices/ownPrices.js";
import {pricedRows} from "../../components/prices/pricedRows.js";
import {pricesFold} from "../../components/prices/pricesFold.js";
import type {DesignStore} from "../../components/store.js";
import {afterPaint} from "../../components/shared/deckSearch.js";
import {lastOf} from "../../components/shared/liveFigure.js";
import {pageChoice, pageNumber} from "../../components/shared/pageValue.js";
import {pacedDraws} from "../../components/shared/pacedDraws.js";
import {schemeCard} from "../../components/shared/schemeCard.js";
import {schemeRun} from "../../components/shared/schemeRun.js";
import {schemeStatus} from "../../components/shared/schemeStatus.js";
import {keptFactors} from "../../components/shared/ownFactors.js";
import {untilGuessed} from "../../components/veil.js";
import {QUESTION, SPANS_FT, WIDTH_MEASURES} from "./widthMeasures.js";
import {widthStack} from "./widthStack.js";

/** The parts of the page, which stand apart on it and belong together. */
export interface WidthPanel {
  readonly controls: HTMLElement;
  readonly prices: HTMLElement;
  readonly charts: HTMLElement;
  readonly card: HTMLElement;
  /** The schemes of the span in numbers, beside the open design. */
  readonly readout: HTMLElement;
  readonly pictures: HTMLElement;
  readonly findings: HTMLElement;
  readonly verdict: HTMLElement;
  /** Widths of the charts and of the pictures, px. */
  resize(chartPx: number, picturePx: number): void;
}

/** How long a change of the design rests before everything is computed anew, ms. */
const PAUSE_MS = 400;
const COLUMNS = [...WIDTH_MEASURES.map(({key}) => key), "daylitPercent", "parkingModules", "parkingFt2PerStall", "carbonWithoutColumnsKgPerFt2"] as const;

export function widthPanel(store: DesignStore, catalog: Catalog, tables: RawTables): WidthPanel {
  const run = schemeRun(tables);
  const prices = ownPrices();
  const fold = pricesFold(prices);
  const priced = pricedRows(prices);
  // Cost is made of the amounts in the rows, at the prices of the moment.
  const asked = {columns: true, ownFactors: keptFactors(catalog), prices: {}, amounts: true, measures: COLUMNS.map((key) => measureNamed(key).column)};
  const span = pageNumber({path: "span", label: "deck span", unit: "ft", min: SPANS_FT.from, max: SPANS_FT.to, step: 1, integer: true, value: Math.min(SPANS_FT.to, Math.max(SPANS_FT.from, Math.round(store.get().bay.spanFt)))});
  const kindChoice = pageChoice("Kinds of deck", [{value: "considered", label: "as the design considers"}, {value: "all", label: "all"}], "considered");
  const bays = store.get().bay.baysAcross;
  const bayChoice = pageChoice("Spans across the building", [...new Set([1, 2, 3, bays])].sort((a, b) => a - b).map((value) => ({value: String(value), label: String(value)})), String(bays));
  const stack = widthStack(span);
  let rows: readonly SchemeRow[] = [];
  /** The open design as it was measured, and with its cost. */
  let measured: SchemeRow | undefined;
  let own: SchemeRow | undefined;
  let width = 0;
  let wide = 0;
  let ranFor: string | undefined;
  let waiting: ReturnType<typeof setTimeout> | undefined;

  const briefNow = (design: Design): Brief => {
    const kinds = kindChoice.get() === "all" ? Object.keys(DECK_KINDS) as DeckKind[] : undefined;
    return briefOf(design, wantedCeilingFt(evaluate(design, catalog)), {spansFt: steps(SPANS_FT), baysAcross: [Number(bayChoice.get())], ...(kinds ? {kinds} : {})});
  };
  const worksIn = lastOf((design) => peopleWork(evaluate(design, catalog).loads));
  const facts = (): WidthFacts => {
    const base = run.state().asked?.brief.base ?? store.get();
    const {daylight, parking} = base;
    return {sides: daylight.sides, lightWanted: worksIn(base), stallLengthIn: parking.stallLengthIn, aisleIn: parking.aisleIn};
  };
  const start = () => {
    clearTimeout(waiting);
    const design = store.get();
    ranFor = JSON.stringify(design);
    const brief = briefNow(design);
    const each = gridOf(brief, catalog).count / brief.vary.spansFt.length;
    run.start({brief, ...asked, groups: coarseToFine(brief.vary.spansFt.length).map((i) => Array.from({length: each}, (_, k) => i * each + k))});
  };
  const measureOwn = () => {
    const design = store.get();
    run.ownRow(design, asked).then((row) => {
      if (!row || store.get() !== design) return;
      measured = row;
      take();
    }, () => undefined);
  };

  // What stands below the charts is fetched once the reader comes near it.
  let below: typeof import("./widthBelow.js") | undefined;
  const near = new IntersectionObserver((entries) => {
    if (!entries.some(({isIntersecting}) => isIntersecting)) return;
    near.disconnect();
    void import("./widthBelow.js").then((found) => {
      below = found;
      point();
      tell();
      card.redraw();
    });
  }, {rootMargin: "200px"});

  const card = schemeCard({
    store, catalog, run, hint: "The scheme at this span shows here as soon as it is made.",
    draw: (result, row) => below?.pictures(result, row, wide) ?? element("div", {}),
  });
  const [readout, findings, verdict] = [element("div", {class: "width-readout"}), element("div", {class: "width-findings"}), element("div", {class: "width-verdict"})];
  for (const place of [card.pictures, readout, findings]) near.observe(place);

  const drawStack = () => stack.draw({rows, own: own?.bays_across === Number(bayChoice.get()) ? own : undefined, kinds: run.state().asked?.brief.vary.kinds ?? [], widthPx: width});
  const at = (spanFt: number) => rows.filter(({span_ft}) => span_ft === spanFt);
  const point = () => {
    const spanFt = span.get();
    const here = at(spanFt);
    const lead = leadOf(here) ?? here[0];
    stack.point(spanFt, lead);
    if (below) readout.replaceChildren(untilGuessed(QUESTION, below.readoutTable(here, own)));
    card.show(lead);
  };
  const tell = () => {
    const {running, total} = run.state();
    const now = below?.argued(rows, facts());
    const whole = !running && rows.length >= total;
    stack.title.textContent = now?.title ?? "How everything answers to the span";
    if (!below || !now) return;
    findings.replaceChildren(untilGuessed(QUESTION, below.findingsOf(rows, facts())),
      ...(whole || rows.length === 0 ? [] : [element("p", {class: "note"}, "Not every span has been computed; the sentences follow what is there.")]));
    verdict.replaceChildren(untilGuessed(QUESTION, now.node));
    if (whole) stack.numbers.replaceChildren(untilGuessed(QUESTION, below.allSpans(rows)));
  };
  /** Takes what the run has by now, at the prices of the moment. */
  function take(): void {
    const found = priced([...run.state().rows, ...(measured ? [measured] : [])], true);
    fold.show(found.lacking);
    rows = measured ? found.rows.slice(0, -1) : found.rows;
    own = measured && found.rows.at(-1);
    drawStack();
    point();
    tell();
  }
  span.observe(point);
  const more = pacedDraws(take);
  let seen = -1;
  run.observe(({running, rows: found}) => {
    if (running && found.length === seen) return;
    seen = found.length;
    more(!running || found.length === 0);
  });
  prices.observe(take);

  afterPaint(store)((design) => {
    measureOwn();
    if (card.putIn(design) || JSON.stringify(design) === ranFor) return;
    clearTimeout(waiting);
    if (ranFor === undefined) start();
    else waiting = setTimeout(start, PAUSE_MS);
  });
  let ready = false;
  for (const choice of [kindChoice, bayChoice]) choice.observe(() => ready && start());
  ready = true;

  return {
    controls: element("div", {class: "width-controls"}, span.node, kindChoice.node, bayChoice.node, schemeStatus(run, start)),
    prices: fold.node, charts: stack.node, card: card.words, readout, pictures: card.pictures, findings, verdict,
    resize(chartPx, picturePx) {
      if (chartPx === width && picturePx === wide) return;
      width = chartPx;
      wide = picturePx;
      drawStack();
      point();
      card.redraw();
    },
  };
}

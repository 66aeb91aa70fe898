import type {Catalog} from "../../lib/catalog.js";
import type {Design} from "../../lib/design/design.js";
import {evaluate, peopleWork} from "../../lib/evaluate.js";
import {DECK_KINDS, briefOf, steps, type Brief, type DeckKind} from "../../lib/schemes/brief.js";
import {gridOf} from "../../lib/schemes/grid.js";
import {BLANK_PRICES} from "../../lib/schemes/measures/prices.js";
import {coarseToFine} from "../../lib/schemes/order.js";
import {failsOf, isMade, measureNamed, type SchemeRow} from "../../lib/schemes/schemeRow.js";
import {wantedCeilingFt} from "../../lib/schemes/wanted.js";
import {leadOf} from "../../lib/schemes/lead.js";
import type {WidthFacts} from "../../lib/schemes/widthWords.js";
import type {RawTables} from "../../lib/tables.js";
import {element} from "../../components/dom.js";
import {figure} from "../../components/figure.js";
import {stepsOf} from "../../components/controls/numberBox.js";
import type {DesignStore} from "../../components/store.js";
import {afterPaint} from "../../components/shared/deckSearch.js";
import {lastOf} from "../../components/shared/liveFigure.js";
import {pageChoice, pageNumber} from "../../components/shared/pageValue.js";
import {schemeCard} from "../../components/shared/schemeCard.js";
import {kindLook} from "../../components/shared/schemeLooks.js";
import {schemeRun} from "../../components/shared/schemeRun.js";
import {schemeStatus} from "../../components/shared/schemeStatus.js";
import {keptFactors} from "../../components/shared/ownFactors.js";
import {untilGuessed} from "../../components/veil.js";
import {widthChart} from "./widthCharts.js";
import {QUESTION, SPANS_FT, WIDTH_MEASURES, spanAt, spanPx} from "./widthMeasures.js";

/** The parts of the page, which stand apart on it and belong together. */
export interface WidthPanel {
  readonly controls: HTMLElement;
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
  const asked = {columns: true, ownFactors: keptFactors(catalog), prices: BLANK_PRICES, measures: COLUMNS.map((key) => measureNamed(key).column)};
  const span = pageNumber({path: "span", label: "deck span", unit: "ft", min: SPANS_FT.from, max: SPANS_FT.to, step: 1, integer: true, value: Math.min(SPANS_FT.to, Math.max(SPANS_FT.from, Math.round(store.get().bay.spanFt)))});
  const kindChoice = pageChoice("Kinds of deck", [{value: "considered", label: "as the design considers"}, {value: "all", label: "all"}], "considered");
  const bays = store.get().bay.baysAcross;
  const bayChoice = pageChoice("Spans across the building", [...new Set([1, 2, 3, bays])].sort((a, b) => a - b).map((value) => ({value: String(value), label: String(value)})), String(bays));
  let rows: readonly SchemeRow[] = [];
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
  const kindsOf = (): string[] => (run.state().asked?.brief.vary.kinds ?? []).map((kind) => DECK_KINDS[kind]);
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
      own = row;
      drawAll();
      point();
    }, () => undefined);
  };

  // Charts: drawn one in each frame, so that a control under the reader's hand is never kept waiting.
  const places = WIDTH_MEASURES.map(({title}) => ({title, node: element("div", {class: "width-chart"})}));
  const ribbonPlace = element("div", {class: "width-ribbon-place"});
  const line = element("div", {class: "width-line", "aria-hidden": "true"}, element("span", {}));
  const ownLine = element("span", {class: "width-own-name", "aria-hidden": "true"}, "this design");
  const stack = element("div", {
    class: "width-stack", role: "slider", tabindex: 0, "aria-label": "Deck span: the charts answer", "aria-valuemin": SPANS_FT.from, "aria-valuemax": SPANS_FT.to, "aria-valuenow": span.get(),
  }, line, ownLine, ...places.flatMap(({title, node}) => [element("p", {class: "width-title"}, title), node]), ribbonPlace);
  const title = element("span", {});
  const numbers = element("div", {class: "width-numbers"});
  const charts = element("div", {class: "width-figure"});
  const key = element("span", {});
  charts.append(figure(stack, {
    wide: true, title, table: numbers,
    caption: element("span", {}, key, " A check of a hollow mark fails, hatched below; diamond and upright line are the open design. Below: which member each kind takes, what governs it, where it ends. Click or use the arrow keys to move the span."),
  }));
  let dirty = new Set<number>();
  let drawing = false;
  const drawAll = () => {
    dirty = new Set([...places.keys(), places.length]);
    if (drawing || width <= 0) return;
    drawing = true;
    const next = () => {
      const [i] = dirty;
      if (i === undefined) {
        drawing = false;
        return;
      }
      dirty.delete(i);
      drawOne(i);
      requestAnimationFrame(next);
    };
    next();
  };
  // The band below the charts is drawn once the reader comes near it.
  let ribbon: typeof import("./ribbon.js").ribbon | undefined;
  const nearRibbon = new IntersectionObserver((entries) => {
    if (!entries.some(({isIntersecting}) => isIntersecting)) return;
    nearRibbon.disconnect();
    void import("./ribbon.js").then((found) => {
      ({ribbon} = found);
      drawAll();
    });
  }, {rootMargin: "100px"});
  nearRibbon.observe(ribbonPlace);
  const drawOne = (i: number) => {
    const place = places[i];
    if (!place) {
      if (ribbon) ribbonPlace.replaceChildren(untilGuessed(QUESTION, ribbon(rows, kindsOf(), width)));
      key.replaceChildren(...kindsOf().map((kind) => keyOf(kind)));
      return;
    }
    const measure = WIDTH_MEASURES[i] as (typeof WIDTH_MEASURES)[number];
    const shown = own && own.bays_across === Number(bayChoice.get()) ? own : undefined;
    const chart = widthChart(measure, rows, shown, width, i === places.length - 1);
    chart.setAttribute("role", "img");
    chart.setAttribute("aria-label", measure.title);
    for (const group of chart.querySelectorAll("g[aria-label]")) group.removeAttribute("aria-label");
    place.node.replaceChildren(measure.key === "goodDaylightPercent" ? untilGuessed(QUESTION, chart) : chart);
    ownLine.style.left = `${spanPx(store.get().bay.spanFt, width)}px`;
    ownLine.hidden = shown === undefined;
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
  const readout = element("div", {class: "width-readout"});
  const findings = element("div", {class: "width-findings"});
  for (const place of [card.pictures, readout, findings]) near.observe(place);
  const verdict = element("div", {class: "width-verdict"});

  const at = (spanFt: number) => rows.filter(({span_ft}) => span_ft === spanFt);
  const point = () => {
    const spanFt = span.get();
    const here = at(spanFt);
    const lead = leadOf(here) ?? here[0];
    line.style.left = `${spanPx(spanFt, width)}px`;
    (line.firstChild as HTMLElement).textContent = `${spanFt} ft`;
    line.classList.toggle("is-left", spanFt > (SPANS_FT.from + SPANS_FT.to) / 2);
    stack.setAttribute("aria-valuenow", String(spanFt));
    stack.setAttribute("aria-valuetext", lead ? `${spanFt} ft: ${isMade(lead) ? `${lead.deck}, ${failsOf(lead).length === 0 ? "all checks hold" : `${failsOf(lead).length} checks fail`}` : lead.fails}` : `${spanFt} ft, not made yet`);
    if (below) readout.replaceChildren(untilGuessed(QUESTION, below.readoutTable(here, own)));
    card.show(lead);
  };
  span.observe(point);

  const tell = () => {
    const {running, total} = run.state();
    const now = below?.argued(rows, facts());
    const whole = !running && rows.length >= total;
    title.textContent = now?.title ?? "How everything answers to the span";
    if (!below || !now) return;
    findings.replaceChildren(untilGuessed(QUESTION, below.findingsOf(rows, facts())),
      ...(whole || rows.length === 0 ? [] : [element("p", {class: "note"}, "Not every span has been computed; the sentences follow what is there.")]));
    verdict.replaceChildren(untilGuessed(QUESTION, now.node));
    if (whole) numbers.replaceChildren(untilGuessed(QUESTION, below.allSpans(rows)));
  };
  let seen = -1;
  run.observe((state) => {
    const changed = state.rows.length !== seen || !state.running;
    seen = state.rows.length;
    rows = state.rows;
    if (!changed) return;
    drawAll();
    point();
    tell();
  });

  stack.addEventListener("keydown", (event) => {
    const by = stepsOf(event);
    const to = event.key === "Home" ? SPANS_FT.from : event.key === "End" ? SPANS_FT.to : by === undefined ? undefined : span.get() + by;
    if (to === undefined) return;
    event.preventDefault();
    span.set(Math.min(SPANS_FT.to, Math.max(SPANS_FT.from, to)));
  });
  const follow = (event: PointerEvent) => span.set(spanAt(event.clientX - stack.getBoundingClientRect().left, width));
  stack.addEventListener("pointerdown", (event) => {
    if (event.button === 0) follow(event);
  });
  stack.addEventListener("pointermove", (event) => {
    if (event.buttons === 1) follow(event);
  });

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
    charts, card: card.words, readout, pictures: card.pictures, findings, verdict,
    resize(chartPx, picturePx) {
      if (chartPx === width && picturePx === wide) return;
      width = chartPx;
      wide = picturePx;
      drawAll();
      point();
      card.redraw();
    },
  };
}

/** A kind with its line, for the caption. */
function keyOf(kind: string): HTMLElement {
  const {dash, color} = kindLook(kind);
  const swatch = document.createElementNS("http://www.w3.org/2000/svg", "svg");
  for (const [name, value] of Object.entries({width: "30", height: "8", viewBox: "0 0 30 8", "aria-hidden": "true"})) swatch.setAttribute(name, value);
  const stroke = document.createElementNS("http://www.w3.org/2000/svg", "path");
  for (const [name, value] of Object.entries({d: "M0 4H30", style: `stroke: ${color}; stroke-width: 2; stroke-dasharray: ${dash ?? "none"}`})) stroke.setAttribute(name, value);
  swatch.append(stroke);
  return element("span", {class: "scheme-key"}, swatch, ` ${kind} `);
}

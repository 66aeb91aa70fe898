import {DECK_KINDS} from "../../lib/schemes/brief.js";
import {failsOf, isMade, type SchemeRow} from "../../lib/schemes/schemeRow.js";
import {element, svgElement} from "../../components/dom.js";
import {figure} from "../../components/figure.js";
import {whenReadAnew} from "../../components/reader/system.js";
import {stepsOf} from "../../components/controls/numberBox.js";
import type {PageNumber} from "../../components/shared/pageValue.js";
import {kindLook} from "../../components/shared/schemeLooks.js";
import {untilGuessed} from "../../components/veil.js";
import {widthChart} from "./widthCharts.js";
import {QUESTION, SPANS_FT, WIDTH_MEASURES, knownMeasures, spanAt, spanPx} from "./widthMeasures.js";

/** What the aligned charts show. */
export interface StackNow {
  readonly rows: readonly SchemeRow[];
  /** The open design, where it has as many bays across. */
  readonly own: SchemeRow | undefined;
  readonly kinds: readonly (keyof typeof DECK_KINDS)[];
  readonly widthPx: number;
}

/** The aligned charts over one axis, along which the reader moves the span. */
export interface WidthStack {
  readonly node: HTMLElement;
  readonly title: HTMLElement;
  /** The place of the schemes in numbers, folded away below. */
  readonly numbers: HTMLElement;
  /** Draws the charts anew, one in each frame, so that a control under the reader's hand is never kept waiting. */
  draw(now: StackNow): void;
  /** Shows where the span stands, and which scheme leads there. */
  point(spanFt: number, lead: SchemeRow | undefined): void;
}

/** Charts wait this long after the reader has moved the span, ms: what is under the hand comes first. */
const HAND_MS = 150;

export function widthStack(span: PageNumber): WidthStack {
  const places = WIDTH_MEASURES.map((measure) => ({measure, title: element("p", {class: "width-title"}, measure.title), node: element("div", {class: "width-chart"})}));
  const ribbonPlace = element("div", {class: "width-ribbon-place"});
  const lineName = element("span", {});
  const line = element("div", {class: "width-line", "aria-hidden": "true"}, lineName);
  const ownName = element("span", {class: "width-own-name", "aria-hidden": "true", hidden: true}, "this design");
  const stack = element("div", {
    class: "width-stack", role: "slider", tabindex: 0, "aria-label": "Deck span: the charts answer", "aria-valuemin": SPANS_FT.from, "aria-valuemax": SPANS_FT.to, "aria-valuenow": span.get(),
  }, line, ownName, ...places.flatMap(({title, node}) => [title, node]), ribbonPlace);
  const [title, key, numbers] = [element("span", {}), element("span", {}), element("div", {class: "width-numbers"})];
  let now: StackNow = {rows: [], own: undefined, kinds: [], widthPx: 0};
  let dirty = new Set<number>();
  let drawing = false;
  /** When the reader moved the span last. */
  let moved = -Infinity;

  // The band below the charts is drawn once the reader comes near it.
  let ribbon: typeof import("./ribbon.js").ribbon | undefined;
  const near = new IntersectionObserver((entries) => {
    if (!entries.some(({isIntersecting}) => isIntersecting)) return;
    near.disconnect();
    void import("./ribbon.js").then((found) => {
      ({ribbon} = found);
      drawAll();
    });
  }, {rootMargin: "100px"});
  near.observe(ribbonPlace);

  const drawOne = (i: number) => {
    const {rows, own, kinds, widthPx} = now;
    const place = places[i];
    if (!place) {
      const words = kinds.map((kind) => DECK_KINDS[kind]);
      if (ribbon) ribbonPlace.replaceChildren(untilGuessed(QUESTION, ribbon(rows, words, widthPx)));
      key.replaceChildren(...words.map(keyOf));
      return;
    }
    const {measure, node, title: name} = place;
    // Cost has a chart only where it is known.
    const shown = knownMeasures(rows).includes(measure);
    name.hidden = node.hidden = !shown;
    if (!shown) return;
    const chart = widthChart(measure, rows, own, widthPx, i === places.length - 1);
    chart.setAttribute("role", "img");
    chart.setAttribute("aria-label", measure.title);
    node.replaceChildren(measure.key === "goodDaylightPercent" ? untilGuessed(QUESTION, chart) : chart);
  };
  function drawAll(): void {
    dirty = new Set([...places.keys(), places.length]);
    if (drawing || now.widthPx <= 0) return;
    drawing = true;
    const next = () => {
      const left = moved + HAND_MS - performance.now();
      if (left > 0) {
        setTimeout(next, left);
        return;
      }
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
  }

  whenReadAnew(stack, drawAll);
  stack.addEventListener("keydown", (event) => {
    const by = stepsOf(event);
    const to = event.key === "Home" ? SPANS_FT.from : event.key === "End" ? SPANS_FT.to : by === undefined ? undefined : span.get() + by;
    if (to === undefined) return;
    event.preventDefault();
    span.set(Math.min(SPANS_FT.to, Math.max(SPANS_FT.from, to)));
  });
  const follow = (event: PointerEvent) => {
    const to = spanAt(event.clientX - stack.getBoundingClientRect().left, now.widthPx);
    if (to !== span.get()) span.set(to);
  };
  stack.addEventListener("pointerdown", (event) => {
    if (event.button === 0) follow(event);
  });
  stack.addEventListener("pointermove", (event) => {
    if (event.buttons === 1) follow(event);
  });

  return {
    node: element("div", {class: "width-figure"}, figure(stack, {
      wide: true, title, table: numbers,
      caption: element("span", {}, key, " A check of a hollow mark fails, hatched below; diamond and upright line are the open design. Below: which member each kind takes, what governs it, where it ends. Click or use the arrow keys to move the span."),
    })),
    title, numbers,
    draw(next) {
      now = next;
      ownName.hidden = now.own === undefined;
      if (now.own) ownName.style.left = `${spanPx(now.own.span_ft, now.widthPx)}px`;
      drawAll();
    },
    point(spanFt, lead) {
      if (Number(stack.getAttribute("aria-valuenow")) !== spanFt) moved = performance.now();
      line.style.left = `${spanPx(spanFt, now.widthPx)}px`;
      lineName.textContent = `${spanFt} ft`;
      line.classList.toggle("is-left", spanFt > (SPANS_FT.from + SPANS_FT.to) / 2);
      stack.setAttribute("aria-valuenow", String(spanFt));
      stack.setAttribute("aria-valuetext", lead ? `${spanFt} ft: ${isMade(lead) ? `${lead.deck}, ${failsOf(lead).length === 0 ? "all checks hold" : `${failsOf(lead).length} checks fail`}` : lead.fails}` : `${spanFt} ft, not made yet`);
    },
  };
}

/** A kind with its line, for the caption. */
function keyOf(kind: string): HTMLElement {
  const {dash, color} = kindLook(kind);
  return element("span", {class: "scheme-key"}, svgElement("svg", {width: 30, height: 8, viewBox: "0 0 30 8", "aria-hidden": "true"},
    svgElement("path", {d: "M0 4H30", style: `stroke: ${color}; stroke-width: 2; stroke-dasharray: ${dash ?? "none"}`})), ` ${kind} `);
}

import type {FrontierDeck} from "../../lib/deck/frontier.js";
import type {MeasureName} from "../../lib/deck/measures.js";
import {tradeOffChart, type TradeOffChart, type TradeOffData} from "./tradeOff.js";
import {element} from "../../components/dom.js";
import {figure} from "../../components/figure.js";
import {KIND_MARKS, MEASURE_LOOKS, concreteWords, deckName, measureText} from "./tradeOffLooks.js";
import {deckMark} from "./tradeOffList.js";
import {pairFinding} from "./tradeOffWords.js";

/** Pairs of measures that are drawn: what depth costs, what weight costs, and where the steel stands in for concrete. */
const PAIRS: readonly (readonly [MeasureName, MeasureName])[] = [
  ["depthIn", "carbonKgPerFt2"], ["depthIn", "strandPsf"], ["weightPsf", "carbonKgPerFt2"], ["concreteFt", "strandPsf"],
];
/** How near the pointer must be to a mark to mean it, px. */
const REACH_PX = 26;
/** Two charts side by side from this width on, px, and the room between them. */
const TWO_FROM_PX = 520;
const GAP_PX = 24;

export type TradeOffPicture = Omit<TradeOffData, "x" | "y"> & {readonly title: string; readonly stale: boolean};

/** What a chart tells of: a deck that the pointer passes, or one that is picked to stay. */
export interface ChartEvents {
  hover(id: string | undefined): void;
  pick(id: string | undefined): void;
  /** The reader wants to act on the deck that is lit. */
  enter(): void;
}

/** The charts, linked: one deck is lit in all of them. */
export interface TradeOffCharts {
  readonly node: HTMLElement;
  draw(picture: TradeOffPicture, widthPx: number): void;
  light(id: string | undefined): void;
}

export function tradeOffCharts(events: ChartEvents): TradeOffCharts {
  const node = element("div", {class: "trade-figure"});
  let charts: readonly {chart: TradeOffChart; place: HTMLElement; order: readonly FrontierDeck[]}[] = [];
  let lit: string | undefined;
  const showLit = () => {
    for (const {chart, place, order} of charts) {
      chart.light(lit);
      tell(place, order, lit);
    }
  };
  return {
    node,
    draw({title, stale, ...data}, widthPx) {
      const focused = charts.findIndex(({place}) => place === document.activeElement);
      const two = widthPx >= TWO_FROM_PX;
      const each = Math.floor(two ? (widthPx - GAP_PX) / 2 : widthPx);
      charts = PAIRS.map(([x, y]) => {
        const chart = tradeOffChart({...data, x, y}, each);
        const order = [...data.decks].sort((a, b) => a.measures[x] - b.measures[x] || a.measures[y] - b.measures[y]);
        return {chart, order, place: chartPlace(chart, order, [x, y], events, () => lit)};
      });
      const grid = element("div", {class: "trade-grid", style: `grid-template-columns: repeat(${two ? 2 : 1}, minmax(0, 1fr))`},
        ...charts.map(({place}, i) => element("div", {}, element("p", {class: "trade-finding"}, pairFinding(data.decks, ...PAIRS[i]!)), place)));
      const drawn = figure(grid, {title, caption: key(data.decks), wide: true});
      drawn.classList.toggle("is-stale", stale);
      node.replaceChildren(drawn);
      showLit();
      charts[focused]?.place.focus({preventScroll: true});
    },
    light(id) {
      lit = id;
      showLit();
    },
  };
}

/** A chart with its keys: the arrows go from deck to deck, Enter to the button that puts it in. */
function chartPlace(chart: TradeOffChart, order: readonly FrontierDeck[], [x, y]: readonly [MeasureName, MeasureName], events: ChartEvents, lit: () => string | undefined): HTMLElement {
  const names = `${MEASURE_LOOKS[x].name} against ${MEASURE_LOOKS[y].name}`;
  chart.node.setAttribute("aria-label", `${names}: ${pairFinding(order, x, y)}`);
  if (order.length === 0) return element("div", {class: "trade-chart"}, chart.node);
  const place = element("div", {class: "trade-chart", role: "slider", tabindex: 0, "aria-label": `Decks by ${names}`, "aria-valuemin": 1, "aria-valuemax": order.length, "aria-valuenow": 1}, chart.node);
  const idAt = (event: PointerEvent): string | undefined => {
    const box = chart.node.getBoundingClientRect();
    const scale = Number(chart.node.getAttribute("width")) / box.width;
    let nearest: {id: string; px: number} | undefined;
    for (const [id, [sx, sy]] of chart.spots) {
      const px = Math.hypot((event.clientX - box.left) * scale - sx, (event.clientY - box.top) * scale - sy);
      if (px < REACH_PX && (!nearest || px < nearest.px)) nearest = {id, px};
    }
    return nearest?.id;
  };
  place.addEventListener("pointermove", (event) => {
    if (event.pointerType === "mouse") events.hover(idAt(event));
  });
  place.addEventListener("pointerleave", () => events.hover(undefined));
  place.addEventListener("click", (event) => events.pick(idAt(event as PointerEvent)));
  place.addEventListener("keydown", (event) => {
    const at = order.findIndex(({id}) => id === lit());
    const to = goal(event.key, at, order.length);
    if (to !== undefined) events.pick(order[to]?.id);
    else if (event.key === "Enter" && at >= 0) events.enter();
    else if (event.key === "Escape") events.pick(undefined);
    else return;
    event.preventDefault();
  });
  return place;
}

/** The place to which a key goes from another; undefined for a key that goes nowhere. */
function goal(key: string, at: number, count: number): number | undefined {
  switch (key) {
    case "ArrowRight":
    case "ArrowUp":
      return Math.min(count - 1, at + 1);
    case "ArrowLeft":
    case "ArrowDown":
      return Math.max(0, at - 1);
    case "Home":
      return 0;
    case "End":
      return count - 1;
    default:
      return undefined;
  }
}

/** Tells those who listen which deck is lit. */
function tell(place: HTMLElement, order: readonly FrontierDeck[], id: string | undefined): void {
  if (order.length === 0) return;
  const at = order.findIndex((deck) => deck.id === id);
  const deck = order[at];
  place.setAttribute("aria-valuenow", String(Math.max(1, at + 1)));
  place.setAttribute("aria-valuetext", deck
    ? `${deckName(deck)}, ${concreteWords(deck)}: ${Object.entries(MEASURE_LOOKS).map(([name, look]) => `${look.name} ${measureText(name as MeasureName, deck.measures[name as MeasureName])} ${look.unit}`).join(", ")}`
    : "no deck is highlighted; the arrow keys move from deck to deck");
}

/** What the marks mean, of those that occur. */
function key(decks: readonly FrontierDeck[]): HTMLElement {
  const uses = [...new Set(decks.map(({use}) => use))];
  const light = decks.some(({concreteKind}) => concreteKind !== "normalweight");
  const entry = (mark: Element, words: string) => element("span", {class: "trade-key-entry"}, mark, ` ${words}`);
  return element("span", {},
    element("span", {class: "trade-keys"}, ...uses.map((use) => entry(deckMark({use, concreteKind: "normalweight"}), KIND_MARKS[use].word)),
    light && uses[0] ? entry(deckMark({use: uses[0], concreteKind: "sand-lightweight"}), "hollow: lightweight concrete") : null),
    decks.length > 0
      ? "A mark is a deck that no other beats in everything; it may trail another in one chart and lead it in the next. Specks are decks that work but are beaten; to the left of the stair and below it, none works. Point at a mark, or step through them with the arrow keys: it lights up in all four charts and in the list."
      : "The diamond is this design. Each deck that no other beats gets a mark beside it.");
}

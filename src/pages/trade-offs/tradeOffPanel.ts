import type {Catalog} from "../../lib/catalog.js";
import {exceeds} from "../../lib/checks.js";
import {changesForCandidate} from "../../lib/deck/choose.js";
import {leastIn, passesGates, type Frontier, type FrontierDeck} from "../../lib/deck/frontier.js";
import {MEASURES, deckMeasures, type DeckMeasures, type MeasureName} from "../../lib/deck/measures.js";
import type {Design} from "../../lib/design/design.js";
import {withValues} from "../../lib/design/edit.js";
import {evaluate, type Evaluation} from "../../lib/evaluate.js";
import {decimals} from "../../lib/units.js";
import {button} from "../../components/controls.js";
import {element, uniqueId} from "../../components/dom.js";
import {pinDesign} from "../../components/pinned.js";
import {hrefOf} from "../../components/shared/pageList.js";
import type {DesignStore} from "../../components/store.js";
import type {CarbonTable} from "./carbonTable.js";
import {afterPaint} from "../../components/shared/deckSearch.js";
import {patternWords} from "../../components/shared/deckWords.js";
import {tradeOffCharts} from "./tradeOffCharts.js";
import {tradeOffList} from "./tradeOffList.js";
import {KIND_MARKS, MEASURE_LOOKS, concreteWords, deckName, measureText} from "./tradeOffLooks.js";
import type {TradeOffSearch, TradeOffState} from "./tradeOffSearch.js";
import {tradeOffFinding} from "./tradeOffWords.js";

/** The parts of the page on trade-offs, which stand apart on it and belong together. */
export interface TradeOffPanel {
  readonly charts: HTMLElement;
  /** The highlighted deck, beside the design's own. */
  readonly card: HTMLElement;
  /** What counts, and the search with its progress. */
  readonly controls: HTMLElement;
  readonly list: HTMLElement;
  /** Draws the charts for a width, px. */
  resize(widthPx: number): void;
}

/** The deck of the open design as the charts show it. */
interface Own {
  readonly design: Design;
  readonly measures: DeckMeasures;
  readonly fails: boolean;
}

export function tradeOffPanel(store: DesignStore, catalog: Catalog, search: TradeOffSearch, table: CarbonTable): TradeOffPanel {
  let names: readonly MeasureName[] = MEASURES;
  let state: TradeOffState | undefined;
  let own = ownOf(store.get(), catalog, table);
  let width = 0;
  let hovered: string | undefined;
  let picked: string | undefined;

  const deckOf = (id: string | undefined): FrontierDeck | undefined => state?.found?.decks.find((deck) => deck.id === id);
  const showLit = () => {
    const id = deckOf(hovered)?.id ?? deckOf(picked)?.id;
    charts.light(id);
    list.light(id);
    fillCard(card, deckOf(id), own, state?.found, {
      put(deck) {
        store.setMany(changesForCandidate(deck));
      },
      pin: (deck) => pinDesign(withValues(store.get(), changesForCandidate(deck)), `${store.get().name}, ${deckName(deck)}`, "the decks that no other beats").name,
    });
  };
  const hover = (id: string | undefined) => {
    if (id === hovered) return;
    hovered = id;
    showLit();
  };
  const charts = tradeOffCharts({
    hover,
    pick(id) {
      picked = id;
      hovered = undefined;
      showLit();
    },
    enter: () => card.querySelector("button")?.focus(),
  });
  const list = tradeOffList(store, hover);
  const card = element("section", {class: "trade-card", "aria-label": "The highlighted deck"});

  const draw = () => {
    if (width <= 0) return;
    const decks = state?.found?.decks ?? [];
    charts.draw({
      decks, working: state?.found?.working ?? [], counted: new Set(leastIn(decks, names).map(({id}) => id)), own,
      title: tradeOffFinding(state?.found, names), stale: state?.stale ?? false,
    }, width);
    list.show(leastIn(decks, names), (deck) => isOwn(deck, own.design));
    showLit();
  };
  const status = element("div", {class: "trade-status"});
  search.observe((next) => {
    const redraw = next.found !== state?.found || next.stale !== state?.stale;
    state = next;
    showStatus(status, next, search);
    if (redraw) draw();
  });
  const renew = () => {
    const next = ownOf(store.get(), catalog, table);
    const same = next.fails === own.fails && MEASURES.every((name) => next.measures[name] === own.measures[name]) && next.design.deck === own.design.deck;
    own = next;
    if (!same) draw();
  };
  afterPaint(store)(renew);
  table.observe(renew);

  const controls = element("div", {class: "trade-controls control"},
    measureChoice((next) => {
      names = next;
      draw();
    }),
    kindChoice(search), status);
  return {
    charts: charts.node, card, controls, list: list.node,
    resize(widthPx) {
      if (widthPx === width) return;
      width = widthPx;
      draw();
    },
  };
}

function ownOf(design: Design, catalog: Catalog, table: CarbonTable): Own {
  const result = evaluate(design, catalog);
  return {design, measures: deckMeasures(result.member, table.factors()), fails: ownFails(result)};
}

/** Whether the design's own deck would not be among those that work. */
export function ownFails({design, member, deck}: Evaluation): boolean {
  return exceeds(deck.demandPsf, deck.safe.safeLoadPsf) || !passesGates(member, design.bay.spanFt, deck.criteria);
}

function isOwn(deck: FrontierDeck, {deck: now}: Design): boolean {
  return now.member === deck.designation && now.pattern === deck.pattern && now.toppingIn === deck.toppingIn && now.concrete === deck.concreteKind
    && now.strengthPsi === deck.strengthPsi && now.releaseStrengthPsi === deck.releaseStrengthPsi && !now.dimensions;
}

/** Which measures count; at least one does. */
function measureChoice(change: (names: readonly MeasureName[]) => void): HTMLElement {
  const boxes = MEASURES.map((name) => ({name, box: element("input", {type: "checkbox", checked: true, id: uniqueId("counts")})}));
  const take = () => {
    const chosen = boxes.filter(({box}) => box.checked).map(({name}) => name);
    for (const {box} of boxes) box.disabled = chosen.length === 1 && box.checked;
    change(chosen);
  };
  for (const {box} of boxes) box.addEventListener("change", take);
  return element("fieldset", {class: "trade-measures"}, element("legend", {class: "control-label"}, "What counts for you?"),
    ...boxes.map(({name, box}) => element("label", {for: box.id}, box, MEASURE_LOOKS[name].name)),
    element("p", {class: "control-help"}, "Decks that are beaten in what counts fade and leave the list."));
}

function kindChoice(search: TradeOffSearch): HTMLElement {
  const box = element("input", {type: "checkbox", id: uniqueId("kinds"), checked: !search.everyKind});
  box.addEventListener("change", () => (search.everyKind = !box.checked));
  return element("p", {class: "trade-kinds"}, element("label", {for: box.id}, box, "Only the kinds of deck that this design considers"));
}

/** The search in words, with the button that starts or ends it. */
function showStatus(node: HTMLElement, {running, stale, problem, found}: TradeOffState, search: TradeOffSearch): void {
  const words = problem !== undefined ? `The search stopped with an error: ${problem}`
    : running ? `Searching: ${decimals(running.tried)}${running.total ? ` of ${decimals(running.total)}` : ""} decks tried, ${decimals(running.worked)} work.`
      : stale ? "The charts show decks for the design as it was before the last change."
        : found ? `${decimals(found.tried)} decks tried, ${decimals(found.worked)} work.` : "Nothing has been searched yet.";
  const bar = running ? element("progress", {max: Math.max(1, running.total), value: running.tried, "aria-label": "Decks tried"}) : null;
  const act = running ? button("Cancel", search.cancel) : button(found ? "Search again" : "Search", search.start);
  const focused = node.contains(document.activeElement) && document.activeElement instanceof HTMLButtonElement;
  node.classList.toggle("is-stale", stale && !running);
  // While it counts, the words change in place, so that the button can be pressed.
  const old = node.querySelector("button");
  if (old && old.textContent === act.textContent && running) {
    (node.firstChild as HTMLElement).textContent = words;
    node.querySelector("progress")?.replaceWith(bar as Node);
    return;
  }
  node.replaceChildren(element("p", {role: "status"}, words), ...(bar ? [bar] : []), act);
  if (focused) act.focus({preventScroll: true});
}

/** What can be done with the lit deck: put into the design, or pinned beside it; the pin's name comes back. */
interface CardActs {
  put(deck: FrontierDeck): void;
  pin(deck: FrontierDeck): string;
}

/** The lit deck in words and numbers, beside the design's own. */
function fillCard(card: HTMLElement, deck: FrontierDeck | undefined, own: Own, found: Frontier | undefined, {put, pin}: CardActs): void {
  card.classList.toggle("has-deck", deck !== undefined);
  if (!deck) {
    card.replaceChildren(element("p", {class: "trade-hint"}, found && found.decks.length > 0 ? "Point at a mark, tap it, or use the arrow keys in a chart: the deck shows here, beside this design's." : "Decks that no other beats will show here once they are found."));
    return;
  }
  const rows = MEASURES.map((name) => {
    const change = deck.measures[name] - own.measures[name];
    const text = measureText(name, Math.abs(change));
    const same = text === measureText(name, 0);
    return element("tr", {}, element("th", {scope: "row"}, MEASURE_LOOKS[name].name),
      element("td", {class: "numeric"}, `${measureText(name, deck.measures[name])} ${MEASURE_LOOKS[name].unit}`),
      element("td", {class: `numeric ${same ? "" : change < 0 ? "is-less" : "is-more"}`}, same ? "same" : `${text} ${change < 0 ? "less" : "more"}`));
  });
  const act = isOwn(deck, own.design) ? element("p", {class: "in-design"}, "It is in the design.") : button("Put it in the design", () => put(deck));
  const beside = element("span", {role: "status"}, button("Pin it", () => {
    const name = pin(deck);
    beside.replaceChildren("Pinned: ", element("a", {href: hrefOf("compare")}, "compare it"), element("span", {class: "for-listeners"}, ` as ${name}`));
    beside.querySelector("a")?.focus({preventScroll: true});
  }, {quiet: true, name: `Pin this deck beside the open design: ${deckName(deck)}`}));
  const focused = card.contains(document.activeElement) && document.activeElement instanceof HTMLButtonElement;
  card.replaceChildren(
    element("p", {class: "trade-card-name"}, deckName(deck)),
    element("p", {class: "trade-card-words"}, `${KIND_MARKS[deck.use].word}; ${concreteWords(deck)}; ${patternWords(deck.pattern)}`),
    element("table", {}, element("thead", {class: "for-listeners"}, element("tr", {}, ...["Measure", "This deck", "Beside the design's"].map((words) => element("th", {scope: "col"}, words)))), element("tbody", {}, ...rows)),
    element("div", {class: "row"}, act, beside));
  if (focused && act instanceof HTMLButtonElement) act.focus({preventScroll: true});
}

import {changesForCandidate} from "../../lib/deck/choose.js";
import type {FrontierDeck} from "../../lib/deck/frontier.js";
import {MEASURES, type MeasureName} from "../../lib/deck/measures.js";
import {decimals} from "../../lib/units.js";
import {shapeOf} from "./tradeOff.js";
import {button} from "../../components/controls.js";
import {element, svgElement} from "../../components/dom.js";
import type {DesignStore} from "../../components/store.js";
import {patternWords} from "../../components/shared/deckWords.js";
import {KIND_MARKS, MEASURE_LOOKS, concreteWords, deckName, measureText} from "./tradeOffLooks.js";

/** The decks as rows that can be ordered by any measure and lit. */
export interface TradeOffList {
  readonly node: HTMLElement;
  show(decks: readonly FrontierDeck[], isOwn: (deck: FrontierDeck) => boolean): void;
  light(id: string | undefined): void;
}

/** The list; `hover` is notified of the deck that the pointer or the focus is on. */
export function tradeOffList(store: DesignStore, hover: (id: string | undefined) => void): TradeOffList {
  const body = element("tbody");
  const rows = new Map<string, HTMLElement>();
  let shown: readonly FrontierDeck[] = [];
  let own: (deck: FrontierDeck) => boolean = () => false;
  let by: MeasureName = "depthIn";
  let rising = true;
  const heads = new Map<MeasureName, HTMLElement>();
  const head = (name: MeasureName) => {
    const {axis} = MEASURE_LOOKS[name];
    const node = element("th", {scope: "col", class: "numeric"}, button(axis, () => {
      rising = by === name ? !rising : true;
      by = name;
      fill();
    }, {quiet: true, name: `Order by ${axis}`}));
    heads.set(name, node);
    return node;
  };
  const table = element("table", {class: "trade-list"},
    element("thead", {}, element("tr", {}, element("th", {scope: "col"}, "Deck"), ...MEASURES.map(head), element("th", {scope: "col", class: "numeric"}, "carries, of required, psf"), element("th", {scope: "col"}, element("span", {class: "for-listeners"}, "In the design")))),
    body);
  const node = element("div", {class: "scrolls", role: "region", tabindex: 0, "aria-label": "Decks that no other beats"}, table);
  body.addEventListener("pointerover", (event) => hover(idAt(event)));
  body.addEventListener("pointerleave", () => hover(undefined));
  body.addEventListener("focusin", (event) => hover(idAt(event)));
  body.addEventListener("focusout", () => hover(undefined));

  const row = (deck: FrontierDeck) => {
    const isOwn = own(deck);
    const take = button("Put it in", () => store.setMany(changesForCandidate(deck)), {quiet: true, name: `Put it in the design: ${deck.id}`});
    const node = element("tr", {class: isOwn ? "is-own" : undefined, "data-deck": deck.id, "data-part": deck.id},
      element("th", {scope: "row"}, element("span", {class: "trade-name"}, deckMark(deck), element("span", {}, element("strong", {title: patternWords(deck.pattern)}, deckName(deck)),
        element("span", {class: "trade-concrete"}, `${concreteWords(deck)}${deck.profile === "straight" ? "" : ", depressed strand"}`)))),
      ...MEASURES.map((name) => element("td", {class: "numeric"}, measureText(name, deck.measures[name]))),
      element("td", {class: "numeric"}, `${decimals(deck.safeLoadPsf)} of ${decimals(deck.askedPsf)}`),
      element("td", {class: "pick"}, isOwn ? element("span", {class: "in-design"}, "in the design") : take));
    rows.set(deck.id, node);
    return node;
  };
  const fill = () => {
    const focused = document.activeElement?.closest("tr")?.dataset["deck"];
    const sorted = [...shown].sort((a, b) => (rising ? 1 : -1) * (a.measures[by] - b.measures[by]));
    rows.clear();
    body.replaceChildren(...sorted.map(row));
    for (const [name, th] of heads) {
      if (name === by) th.setAttribute("aria-sort", rising ? "ascending" : "descending");
      else th.removeAttribute("aria-sort");
    }
    if (focused && !node.contains(document.activeElement)) rows.get(focused)?.querySelector<HTMLElement>("button")?.focus({preventScroll: true});
  };
  let lit: HTMLElement | undefined;
  return {
    node,
    show(decks, isOwn) {
      shown = decks;
      own = isOwn;
      node.hidden = decks.length === 0;
      fill();
    },
    light(id) {
      lit?.classList.remove("is-picked");
      lit = id === undefined ? undefined : rows.get(id);
      lit?.classList.add("is-picked");
    },
  };
}

function idAt(event: Event): string | undefined {
  return event.target instanceof Element ? event.target.closest<HTMLElement>("[data-deck]")?.dataset["deck"] : undefined;
}

/** The mark that stands for a deck in the charts. */
export function deckMark(deck: Pick<FrontierDeck, "use" | "concreteKind">): SVGElement {
  const hollow = deck.concreteKind !== "normalweight";
  return svgElement("svg", {class: "trade-key", viewBox: "-8 -8 16 16", width: 16, height: 16, role: "img", "aria-label": `${KIND_MARKS[deck.use].word}${hollow ? ", lightweight" : ""}`},
    svgElement("g", {class: `trade-mark${hollow ? " is-hollow" : ""}`}, shapeOf(deck.use, 5)));
}

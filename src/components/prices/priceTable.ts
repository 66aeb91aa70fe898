import {PRICE_LIST, priceRule, type PriceName} from "../../lib/schemes/measures/prices.js";
import {button} from "../controls.js";
import {numberBox, type NumberBox} from "../controls/numberBox.js";
import {element} from "../dom.js";
import {unitText} from "../symbols.js";
import type {OwnPrices} from "./ownPrices.js";

/** The unit prices as boxes, blank until the reader fills them. */
export interface PriceTable {
  readonly node: HTMLElement;
  /** Marks the prices that are blank and needed. */
  mark(lacking: readonly PriceName[]): void;
}

const NAMES = Object.keys(PRICE_LIST) as PriceName[];
/** A step of the arrow keys: coarse for what is bought by the piece or the yard, fine for steel. */
const STEPS: Readonly<Partial<Record<PriceName, number>>> = {strandPerLb: 0.05, barsPerLb: 0.05, envelopePerFt2: 1};
const STEP = 10;

export function priceTable(prices: OwnPrices): PriceTable {
  const rows = new Map<PriceName, {readonly box: NumberBox; readonly needed: HTMLElement}>();
  const rowOf = (name: PriceName): HTMLElement => {
    const {name: words, unit} = PRICE_LIST[name];
    const box = numberBox({
      rule: {...priceRule(name), step: STEPS[name] ?? STEP}, name: `Price of ${words}, per ${unitText(unit)}`, unset: "blank",
      get: () => prices.get()[name], set: (value) => prices.set(name, value),
    });
    const needed = element("span", {class: "price-needed"});
    rows.set(name, {box, needed});
    return element("tr", {}, element("th", {scope: "row"}, words), element("td", {class: "numeric"}, box.input), element("td", {}, `per ${unitText(unit)}`), element("td", {}, needed));
  };
  const clear = button("Make all blank", prices.clear, {quiet: true, name: "Make all blank: the unit prices"});
  const node = element("div", {class: "prices-table control", "data-units": "as is"},
    element("p", {}, "In a currency of your own, for the place and the year that you have in mind: none is known here, and none is invented. Concrete is priced cast and finished, without the steel in it; a piece by what its setting takes, a truckload by its way. They stay in this browser, apart from the design, and count on every page that has a cost."),
    element("div", {class: "scrolls", role: "region", tabindex: 0, "aria-label": "Unit prices"},
      element("table", {},
        element("thead", {}, element("tr", {}, ...["What is paid for", "Price", "For", ""].map((words, i) => (words ? element("th", {scope: "col", class: i === 1 ? "numeric" : undefined}, words) : element("td", {}))))),
        element("tbody", {}, ...NAMES.map(rowOf)))),
    ...[...rows.values()].map(({box}) => box.message.node), element("p", {class: "row"}, clear));
  prices.observe((now) => {
    for (const {box} of rows.values()) box.show();
    clear.disabled = Object.keys(now).length === 0;
  });
  return {
    node,
    mark(lacking) {
      for (const [name, {needed}] of rows) needed.textContent = lacking.includes(name) ? "needed" : "";
    },
  };
}

/** What the prices make of the cost, in a sentence. */
export function priceWords(lacking: readonly PriceName[] | undefined): string {
  if (lacking === undefined) return "Whether these prices are enough shows as soon as something is computed.";
  if (lacking.length === 0) return "Every price that these buildings need is there: cost counts, in your currency.";
  const names = lacking.map((name) => PRICE_LIST[name].name);
  return `No cost is counted yet: ${names.length === 1 ? "a price is" : "prices are"} missing for ${names.join("; ")}.`;
}

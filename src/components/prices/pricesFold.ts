import type {PriceName} from "../../lib/schemes/measures/prices.js";
import {element} from "../dom.js";
import type {OwnPrices} from "./ownPrices.js";

/** The unit prices on a page: folded away until the reader wants a cost, with what is lacking for one. */
export interface PricesFold {
  readonly node: HTMLElement;
  /** Says which blank prices are needed by what the page shows; undefined while that is not known. */
  show(lacking: readonly PriceName[] | undefined): void;
}

/** The table is fetched when it is first unfolded, or where prices are there already and words are needed. */
export function pricesFold(prices: OwnPrices): PricesFold {
  const place = element("div", {});
  const said = element("p", {class: "prices-said", role: "status"});
  const details = element("details", {class: "fold prices"}, element("summary", {}, "What would it cost? Enter unit prices"), place);
  let lacking: readonly PriceName[] | undefined;
  let table: import("./priceTable.js").PriceTable | undefined;
  let words: ((lacking: readonly PriceName[] | undefined) => string) | undefined;
  let asked = false;
  const tell = () => {
    said.textContent = words && prices.any() ? words(lacking) : "";
    table?.mark(lacking ?? []);
  };
  const fetched = () => {
    if (asked) return;
    asked = true;
    void import("./priceTable.js").then(({priceTable, priceWords}) => {
      table = priceTable(prices);
      words = priceWords;
      place.replaceChildren(table.node);
      tell();
    });
  };
  details.addEventListener("toggle", () => details.open && fetched());
  prices.observe(() => {
    if (prices.any()) fetched();
    tell();
  });
  return {
    node: element("div", {class: "prices-place"}, details, said),
    show(next) {
      lacking = next;
      tell();
    },
  };
}

import type {Catalog} from "../../lib/catalog.js";
import {deckMember} from "../../lib/deck/deckMember.js";
import type {Design} from "../../lib/design/design.js";
import {placedStrands} from "../../lib/prestress/layout.js";
import {feetText} from "../../lib/units.js";
import {button} from "../../components/controls.js";
import {follow} from "../../components/controls/follow.js";
import {element, uniqueId} from "../../components/dom.js";
import {thumbnail} from "../../components/drawings/crossSection.js";
import type {Seed} from "../../components/notebook.js";
import type {DesignStore} from "../../components/store.js";

/** What makes each starter design worth an hour, by the name of its file. */
const HARD: Readonly<Record<string, string>> = {
  "branch-library": "Books are among the heaviest things people keep, and the reading rooms want height and light.",
  "classroom-wing": "The planks are almost at their limit: find out what one more foot of span does.",
  "parking-structure": "Sixty feet without a column, no topping to level the joints, and the code's own rule for garages.",
  "records-store": "Nearly all of the load stays for good, so whatever sags keeps sagging.",
};

/** The starter designs as cards: deck in section, place, span, what is hard about it, and a button to begin. */
export function starterCards(store: DesignStore, seeds: readonly Seed[], catalog: Catalog): HTMLElement {
  return element("ul", {class: "cards"}, ...seeds.map((seed) => card(store, seed, catalog)));
}

function card(store: DesignStore, {id, design}: Seed, catalog: Catalog): HTMLElement {
  const member = deckMember(design, catalog);
  const drawing = thumbnail(member.shape, placedStrands(member.shape, member.layout, 0.5), design.deck.toppingIn, 54, 230);
  const title = uniqueId("starter");
  const begin = button("Begin with this", () => {
    store.replace(design);
    document.getElementById("open-design")?.scrollIntoView();
  });
  begin.setAttribute("aria-describedby", title);
  const open = element("span", {class: "card-open"});
  const node = element(
    "li",
    {class: "card", id: `starter-${id}`},
    element("div", {class: "card-drawing", "aria-hidden": "true"}, drawing),
    element("h3", {id: title}, design.name),
    element("p", {class: "card-facts"}, facts(design)),
    element("p", {}, design.setting),
    HARD[id] ? element("p", {class: "card-hard"}, HARD[id]) : null,
    element("div", {class: "row"}, begin, open),
  );
  follow(store, node, (current) => {
    const same = current.name === design.name;
    open.textContent = same ? "Open now" : "";
    node.classList.toggle("is-open", same);
    begin.textContent = same ? "Begin anew" : "Begin with this";
  });
  return node;
}

function facts({bay, deck}: Design): string {
  const topping = deck.toppingIn > 0 ? ` with ${Number(deck.toppingIn.toFixed(2))} in of topping` : ", no topping";
  return `${feetText(bay.spanFt)} span, ${deck.member}${topping}`;
}

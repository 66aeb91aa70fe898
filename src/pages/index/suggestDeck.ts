import type {Catalog} from "../../lib/catalog.js";
import {changesForCandidate} from "../../lib/deck/choose.js";
import type {Design} from "../../lib/design/design.js";
import {candidates} from "../../lib/evaluate.js";
import {button} from "../../components/controls.js";
import {follow} from "../../components/controls/follow.js";
import {element} from "../../components/dom.js";
import type {DesignStore} from "../../components/store.js";

/** What the deck search would take at this span, with a button that takes it. It follows the design by itself. */
export function suggestDeck(store: DesignStore, catalog: Catalog): HTMLElement {
  const words = element("p", {class: "suggestion-words", "aria-live": "polite"});
  const take = button("Take it", () => {
    const [first] = candidates(store.get(), catalog);
    if (first?.works) store.setMany(changesForCandidate(first));
  });
  const node = element("div", {class: "suggestion"}, words, take);
  let waiting = false;
  const show = () => {
    waiting = false;
    const design = store.get();
    const all = candidates(design, catalog);
    const working = all.filter((candidate) => candidate.works);
    const first = working[0];
    const open = first && isOpen(design, first);
    words.textContent = !first
      ? `Of the ${all.length} decks that the search tries, none carries this floor over this span. A shorter span would help, or other kinds of deck: choose them on the page about decks.`
      : `Of the ${all.length} decks that the search tries, ${working.length} ${working.length === 1 ? "carries" : "carry"} this floor over this span. By your weights, ${first.id} comes first${open ? ", and it is the one in the design." : "."}`;
    take.hidden = !first || open === true;
  };
  // The search is a frame's work, so it comes after the picture under the reader's hand.
  follow(store, node, () => {
    if (waiting) return;
    waiting = true;
    requestAnimationFrame(() => requestAnimationFrame(show));
  });
  return node;
}

function isOpen({deck}: Design, first: {designation: string; pattern: string; toppingIn: number}): boolean {
  return deck.member === first.designation && deck.pattern === first.pattern && deck.toppingIn === first.toppingIn;
}

import {deckName} from "../../lib/deck/deckName.js";
import type {Candidate} from "../../lib/deck/search.js";
import type {Evaluation} from "../../lib/evaluate.js";
import {storyStack} from "../../lib/story/stack.js";
import {decimals, feetAndInches} from "../../lib/units.js";
import {dataTable} from "../../components/figure.js";
import {element} from "../../components/dom.js";

/** Decks that are compared. */
const MOST = 6;

/** The decks that carry this floor, shallowest first, each with the ceiling and the glass that it would leave. */
export function otherDecks({design, story}: Evaluation, candidates: readonly Candidate[]): HTMLElement {
  const working = candidates.filter((candidate) => candidate.works).slice(0, MOST).sort((a, b) => a.measures.depthIn - b.measures.depthIn);
  if (working.length === 0) return element("p", {}, "No deck that the search considers carries this floor over this span.");
  const {member, pattern, toppingIn} = design.deck;
  const open = deckName(member, toppingIn, pattern);
  const rows = working.map(({id, measures}) => {
    const stack = storyStack(design, measures.depthIn, story.ledgeDepthIn);
    return [id === open ? `${id}, open now` : id, `${decimals(measures.depthIn, measures.depthIn % 1 ? 2 : 0)} in`, feetAndInches(stack.ceilingHeightIn), feetAndInches(Math.max(0, stack.glassIn))];
  });
  const table = element(
    "div",
    {class: "scrolls unbroken", tabindex: 0, role: "region", "aria-label": "Other decks in this story"},
    dataTable({columns: ["Deck and strands", "Depth", design.story.ceiling === "none" ? "Under the deck" : "Ceiling", "Glass"], rows}),
  );
  const words = "Every deck in this table carries the load. What a deeper one saves in strand or in pieces it takes from the ceiling and the glass. Add up those inches over the floors of a building and they become a story, or a broken height limit.";
  return element("div", {}, table, element("p", {class: "after-table"}, words));
}

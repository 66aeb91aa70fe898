import type {Candidate} from "../../lib/deck/search.js";
import type {Evaluation} from "../../lib/evaluate.js";
import {storeyStack} from "../../lib/storey/stack.js";
import {decimals, feetAndInches} from "../../lib/units.js";
import {dataTable} from "../figure.js";
import {element} from "../dom.js";

/** Decks that are compared. */
const MOST = 6;

/** The decks that carry this floor, shallowest first, each with the ceiling and the glass that it would leave. */
export function otherDecks({design}: Evaluation, candidates: readonly Candidate[]): HTMLElement {
  const working = candidates.filter((candidate) => candidate.works).slice(0, MOST).sort((a, b) => a.measures.depthIn - b.measures.depthIn);
  if (working.length === 0) return element("p", {}, "No deck that the search looks at carries this floor on this span.");
  const rows = working.map(({id, measures}) => {
    const stack = storeyStack(design, measures.depthIn);
    return [id, `${decimals(measures.depthIn, measures.depthIn % 1 ? 2 : 0)} in`, feetAndInches(stack.ceilingHeightIn), feetAndInches(Math.max(0, stack.glassIn))];
  });
  return element(
    "div",
    {class: "scrolls", tabindex: 0, role: "region", "aria-label": "Other decks in this storey"},
    dataTable({columns: ["Deck and strands", "Depth", design.storey.ceiling === "none" ? "Under the deck" : "Ceiling", "Glass"], rows}),
  );
}

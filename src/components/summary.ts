import {worst} from "../lib/checks.js";
import type {Catalog} from "../lib/catalog.js";
import type {Design} from "../lib/design/design.js";
import {columnsOf, evaluate} from "../lib/evaluate.js";
import {placedStrands} from "../lib/prestress/layout.js";
import {pairText} from "../lib/pair.js";
import {shown, told} from "../lib/told.js";
import {formatPlain} from "../lib/typed.js";
import {feetAndInches, feetText} from "../lib/units.js";
import {thumbnail} from "./drawings/crossSection.js";
import {hrefOf} from "./shared/pageList.js";
import type {Summary} from "./strip.js";

/**
 * The check of the deck that has its own place in the strip: the load against what it carries. Of the others those with a
 * word of their own are left to the lists of checks: they do not fail, but ask for a remedy such as steel in the top.
 */
const LOAD_CHECK = "deck load";

/** What the strip shows of a design: what the reader has decided and what came of it, each with its page. */
export function summarize(design: Design, catalog: Catalog): Summary {
  const result = evaluate(design, catalog);
  const {member, deck, edgeBeam, girder, story} = result;
  const topping = design.deck.toppingIn > 0 ? ` + ${formatPlain(design.deck.toppingIn)} in` : "";
  const load = pairText(deck.demandPsf, deck.safe.safeLoadPsf);
  return {
    thumbnail: thumbnail(member.shape, placedStrands(member.shape, member.layout, 0.5), design.deck.toppingIn),
    items: [
      {label: "span", value: [shown("span, in", feetText(design.bay.spanFt))], href: hrefOf("index")},
      {label: "deck", value: `${design.deck.member}${topping} ${design.deck.pattern}`, href: hrefOf("deck"), verdict: worst(deck.checks.filter((check) => check.id !== LOAD_CHECK && !check.word))},
      {label: "load", value: told`${shown("demand, psf", load.asked)} psf, at most ${shown("safe load, psf", load.given)}`, href: hrefOf("deck"), verdict: worst(deck.checks.filter((check) => check.id === LOAD_CHECK))},
      // The beam has a place only where it fails, so that the line stays short.
      ...(edgeBeam.checks.some((check) => check.verdict === "fails")
        ? [{label: "edge beam", value: [shown("beam depth, in", feetAndInches(edgeBeam.depthIn))], href: hrefOf("edge-beam"), verdict: "fails" as const}]
        : []),
      ...(girder?.checks.some((check) => check.verdict === "fails")
        ? [{label: "girder", value: [shown("girder depth, in", feetAndInches(girder.depthIn))], href: hrefOf("girder"), verdict: "fails" as const}]
        : []),
      {label: design.story.ceiling === "none" ? "clear height" : "ceiling", value: [shown("ceiling, in", feetAndInches(story.ceilingHeightIn))], href: hrefOf("story"), verdict: worst(story.checks)},
    ],
    // Columns take longer than all else; a failed one is told once the reader's hand rests.
    later: () => columnsOf(result, catalog).columns.filter(({checks}) => checks.some((check) => check.verdict === "fails")).slice(0, 1)
      .map(({position, column}) => ({label: position, value: feetAndInches(column.sideIn), href: hrefOf("columns"), verdict: "fails" as const})),
  };
}

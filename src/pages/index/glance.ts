import type {Evaluation} from "../../lib/evaluate.js";
import type {Check, Verdict} from "../../lib/checks.js";
import {deckPieces} from "../../lib/deck/pieces.js";
import {pairText} from "../../lib/pair.js";
import {isReduced} from "../../lib/loads/floorLoads.js";
import {decimals, feetAndInches} from "../../lib/units.js";
import {checkMark, checkWord} from "../../components/checks.js";
import {element} from "../../components/dom.js";
import {live} from "../../components/live.js";
import {figureOf, quantity} from "../../components/quantity.js";
import {workingOf} from "../../components/worked/workingOf.js";

/** Four facts of the open design and its verdict, for the first page. */
export function glance(result: Evaluation): HTMLElement {
  const {design, deck, member, story, edgeBeam} = result;
  const pieces = deckPieces(design, member);
  const load = pairText(deck.demandPsf, deck.safe.safeLoadPsf);
  const fact = (value: Node, ...words: (string | Node)[]) => element("div", {class: "fact"}, element("dt", {}, ...words), element("dd", {}, value));
  return element(
    "dl",
    {class: "facts"},
    fact(quantity("safe load, psf", live(`${load.given} psf`, () => workingOf("safeLoad", result))), "carried safely, where ", figureOf("demand, psf", `${load.asked} psf`), ` is required${isReduced(result.deck.load.governing) ? ", live load reduced" : ""}`),
    fact(quantity("pieces", live(`${pieces.perFloor} pieces`)), "for one floor, each weighing ", figureOf("piece, tons", `${decimals(pieces.weightTon, 1)} tons`)),
    fact(quantity("beam depth, in", live(feetAndInches(edgeBeam.depthIn), () => workingOf("beamDepth", result))), "deep edge beam, sill and all"),
    fact(quantity("ceiling, in", live(feetAndInches(story.ceilingHeightIn), () => workingOf("story", result))), design.story.ceiling === "none" ? "clear under the deck" : "from floor to ceiling"),
  );
}

/** What all checks together say, a line for each kind of outcome with its mark. */
export function verdict(checks: readonly Check[]): HTMLElement {
  const of = (kind: Verdict) => checks.filter((check) => check.verdict === kind);
  const list = (some: readonly Check[]) => some.map((check) => check.label.toLowerCase()).join("; ");
  const names = (kind: Verdict) => list(of(kind));
  // What holds by a remedy or with a note is not near its limit: it says its own word.
  const near = new Map<string, Check[]>();
  for (const check of of("near")) near.set(checkWord(check), [...near.get(checkWord(check)) ?? [], check]);
  const failing = of("fails").length;
  const line = (kind: Verdict, words: string) => element("li", {"data-verdict": kind}, checkMark(kind), " ", words);
  return element(
    "ul",
    {class: "verdict", "aria-label": "What the checks say"},
    failing ? line("fails", `${failing} of ${checks.length} checks ${failing === 1 ? "fails" : "fail"}: ${names("fails")}.`) : line("ok", `None of the ${checks.length} checks fails.`),
    ...[...near].map(([word, some]) => line("near", `${word.charAt(0).toUpperCase()}${word.slice(1)}: ${list(some)}.`)),
    of("out of range").length ? line("out of range", `Out of range of a first size, for the engineer: ${names("out of range")}.`) : null,
  );
}

import {worst, type Check} from "../lib/checks.js";
import type {ColumnsResult} from "../lib/columns/columnsResult.js";
import type {Catalog} from "../lib/catalog.js";
import type {Design} from "../lib/design/design.js";
import {columnsOf, evaluate, type Evaluation} from "../lib/evaluate.js";
import {placedStrands} from "../lib/prestress/layout.js";
import {pairText} from "../lib/pair.js";
import {shown, sentence, type Sentence} from "../lib/sentence.js";
import {formatPlain} from "../lib/typed.js";
import {feetAndInches, feetText} from "../lib/units.js";
import {thumbnail} from "./drawings/crossSection.js";
import {hrefOf} from "./shared/pageList.js";
import type {Summary} from "./strip.js";
import type {SummaryItem} from "./stripItems.js";

/** The check of the deck that has its own place in the strip: the load against what it carries. */
const LOAD_CHECK = "deck load";

/** What the strip shows of a design: what the reader has decided and what came of it, each with its page. */
export function summarize(design: Design, catalog: Catalog): Summary {
  const result = evaluate(design, catalog);
  const {member} = result;
  return {
    thumbnail: thumbnail(member.shape, placedStrands(member.shape, member.layout, 0.5), design.deck.toppingIn),
    items: itemsOf(result),
    // Columns take longer than all else; they are told once the reader's hand rests.
    later: () => {
      const columns = columnsOf(result, catalog);
      const checks = [...result.checks, ...columns.checks];
      return {items: itemsOf(result, columns), failing: checks.filter(({verdict}) => verdict === "fails").length, checks: checks.length};
    },
  };
}

/** All facts, the worst first; those of the columns where these have been computed. */
export function itemsOf(result: Evaluation, columns?: ColumnsResult): SummaryItem[] {
  const {design, deck, story} = result;
  const topping = design.deck.toppingIn > 0 ? ` + ${formatPlain(design.deck.toppingIn)} in` : "";
  const load = pairText(deck.demandPsf, deck.safe.safeLoadPsf);
  return byWorst([
    item("span", [shown("span, in", feetText(design.bay.spanFt))], hrefOf("index")),
    item("deck", `${design.deck.member}${topping} ${design.deck.pattern}`, hrefOf("deck"), deck.checks.filter(({id}) => id !== LOAD_CHECK)),
    item("load", sentence`${shown("demand, psf", load.asked)} psf, at most ${shown("safe load, psf", load.given)}`, hrefOf("deck"), deck.checks.filter(({id}) => id === LOAD_CHECK)),
    item(design.story.ceiling === "none" ? "clear height" : "ceiling", [shown("ceiling, in", feetAndInches(story.ceilingHeightIn))], hrefOf("story"), story.checks),
    ...inNeed("live load", hrefOf("loads"), result.loads.checks),
    ...inNeed("topping", hrefOf("topping"), result.topping?.checks),
    ...inNeed("joint", hrefOf("topping"), result.joint?.checks),
    ...inNeed("edge beam", hrefOf("edge-beam"), result.edgeBeam.checks),
    ...inNeed("girder", hrefOf("girder"), result.girder?.checks),
    ...inNeed("loads on the roof", hrefOf("snow"), result.roofLoads.checks),
    ...inNeed("floor held sideways", hrefOf("columns"), result.diaphragm.checks),
    ...inNeed("ducts", hrefOf("story"), result.services.checks),
    ...inNeed("daylight", hrefOf("daylight"), result.daylight?.checks),
    ...(columns?.columns ?? []).flatMap((column) => inNeed(column.position, hrefOf("columns"), column.checks)),
    ...inNeed("columns", hrefOf("columns"), columns?.unsized.length ? columns.checks.filter(({verdict}) => verdict === "out of range") : []),
  ]);
}

/** A part that has a place only where it fails or comes near a limit, with the check that says so. */
function inNeed(label: string, href: string, checks: readonly Check[] = []): SummaryItem[] {
  const [first] = byWorst(asked(checks));
  if (!first || first.verdict === "ok") return [];
  // "Interior column: corbel in shear" need not name the column again.
  const own = `${label}: `;
  return [{...item(label, undefined, href, checks), check: first.label.toLowerCase().startsWith(own) ? first.label.slice(own.length) : first.label}];
}

function item(label: string, value: Sentence | undefined, href: string, checks: readonly Check[] = []): SummaryItem {
  const [first] = byWorst(asked(checks));
  return {label, ...(value === undefined ? {} : {value}), href, verdict: worst(asked(checks)), utilization: first?.utilization ?? 0};
}

/** Checks with a word of their own do not fail, but ask for a remedy such as steel in the top: the lists of checks say so. */
function asked(checks: readonly Check[]): Check[] {
  return checks.filter(({word}) => !word);
}

const RANK = {"fails": 0, "out of range": 1, "near": 2, "ok": 3} as const;

/** What fails first, then what no method covers, then what is near its limit, the nearest first; the rest as it stands. */
function byWorst<T extends Pick<Check, "verdict" | "utilization">>(all: readonly T[]): T[] {
  return [...all].sort((a, b) => RANK[a.verdict] - RANK[b.verdict] || (a.verdict === "ok" ? 0 : b.utilization - a.utilization));
}

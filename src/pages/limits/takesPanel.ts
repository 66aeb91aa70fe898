import type {Catalog} from "../../lib/catalog.js";
import {longestWholeFt, reachOf} from "../../lib/deck/reach.js";
import {leastDepth, leastStrand, takingOf} from "../../lib/deck/takes.js";
import type {Evaluation} from "../../lib/evaluate.js";
import type {Profile} from "../../lib/prestress/pattern.js";
import {decimals, feetAndInches} from "../../lib/units.js";
import {gapWords, reachWords} from "../../components/charts/reachWords.js";
import {button} from "../../components/controls.js";
import {element} from "../../components/dom.js";
import type {DesignStore} from "../../components/store.js";
import {patternWords} from "../../components/shared/deckWords.js";

/** Answers to "what would it take", each with a button that puts it into the design. */
export interface TakesPanel {
  readonly node: HTMLElement;
  show(result: Evaluation): void;
}

/** Changes that an answer makes to the design. */
type Changes = Readonly<Record<string, unknown>>;

/** One question and its answer. */
interface Answer {
  readonly asks: string;
  readonly answer: string;
  readonly stops: string;
  readonly changes?: Changes;
  /** Whether the design has it already. */
  readonly same?: boolean;
}

/** What would carry this floor's load: fewest strands, least depth, longest span, each with all else kept. */
export function takesPanel(store: DesignStore, catalog: Catalog): TakesPanel {
  const body = element("tbody", {});
  const table = element("table", {class: "takes"},
    element("thead", {}, element("tr", {}, ...["All else unchanged", "It takes", "What governs then", ""].map((words) => element("th", {scope: "col"}, words)))), body);
  const row = ({asks, answer, stops, changes, same}: Answer) => {
    const put = changes ? button("Put it in", () => store.setMany(changes), {quiet: true, name: `Put it in the design: ${asks}, ${answer}`}) : "";
    return element("tr", {}, element("th", {scope: "row"}, asks), element("td", {}, answer), element("td", {"data-name": "then governs:"}, stops), element("td", {class: "no-print"}, same ? "as it is" : put));
  };
  return {
    node: element("div", {class: "scrolls", role: "region", tabindex: 0, "aria-label": "What would carry this floor's load"}, table),
    show: (result) => body.replaceChildren(...answers(result, catalog).map(row)),
  };
}

function answers(result: Evaluation, catalog: Catalog): Answer[] {
  const {design, member, deck} = result;
  const of = takingOf(design, catalog, deck.criteria, deck.demandPsf);
  const strand = (profile: Profile, words: string): Answer => {
    const found = leastStrand(of, profile);
    const asks = `Fewest strands, ${words}`;
    if (!found) return {asks, answer: "no number that fits", stops: ""};
    const same = found.pattern === design.deck.pattern && design.deck.strandHeightCenterIn === undefined && design.deck.strandHeightEndIn === undefined;
    return {
      asks, answer: `${found.pattern}: ${patternWords(found.pattern)}`, stops: found.governs,
      ...(same ? {same} : {changes: {"deck.pattern": found.pattern, "deck.strandHeightEndIn": undefined, "deck.strandHeightCenterIn": undefined}}),
    };
  };
  const depth = leastDepth(of);
  const reach = reachOf(member, deck.criteria, deck.demandPsf);
  const whole = reach && longestWholeFt(reach);
  const takesDepressed = member.shape.family === "double tee";
  return [
    strand("straight", "straight"),
    ...(takesDepressed ? [strand("one-point", "depressed at one point")] : []),
    depth
      ? {
        asks: "Least depth of the section", answer: `${decimals(depth.exactIn, 1)} in, so ${feetAndInches(depth.depthIn)}${depth.until ? `; ${feetAndInches(depth.until.depthIn)} is too deep again (${depth.until.governs})` : ""}`,
        stops: depth.governs,
        ...(depth.depthIn === member.shape.depthIn ? {same: true} : {changes: {"deck.dimensions": {...design.deck.dimensions, depthIn: depth.depthIn}}}),
      }
      : {asks: "Least depth of the section", answer: "none that this kind is made in", stops: ""},
    reach
      ? {
        asks: "Longest span", answer: `${reachWords(reach.longestFt)} ft${gapWords(reach)}`, stops: reach.stops ?? "nothing that is required",
        ...(whole === undefined ? {} : whole === design.bay.spanFt ? {same: true} : {changes: {"bay.spanFt": whole}}),
      }
      : {asks: "Longest span", answer: "none", stops: ""},
  ];
}

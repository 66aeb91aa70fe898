import {comparison, type Check, type Verdict} from "../lib/checks.js";
import {pairText, usedPercent} from "../lib/pair.js";
import {element, svgElement} from "./dom.js";
import {unitText} from "./symbols.js";
import {formatForEquation} from "./worked/numbers.js";

const WORDS: Readonly<Record<Verdict, string>> = {ok: "holds", near: "near the limit", fails: "fails", "out of range": "out of range"};

/** A shape for each verdict, so that none depends on its color: disc, triangle, crossed square, diamond. */
const SHAPES: Readonly<Record<Verdict, string>> = {
  ok: "M8 1.5a6.5 6.5 0 1 0 0 13a6.5 6.5 0 1 0 0-13zM4.6 8.2l2.4 2.4l4.4-5",
  near: "M8 1.5L15 14.5H1zM8 6v4M8 12v.6",
  fails: "M1.5 1.5h13v13h-13zM5 5l6 6M11 5l-6 6",
  "out of range": "M8 .8L15.2 8L8 15.2L.8 8zM8 4.6v4.2M8 11v.6",
};

/** The mark of a verdict; with `named` it carries the word for those who listen. */
export function checkMark(verdict: Verdict, {named = false} = {}): SVGSVGElement {
  const name = named ? {role: "img", "aria-label": WORDS[verdict]} : {"aria-hidden": "true"};
  return svgElement("svg", {class: "mark", "data-verdict": verdict, viewBox: "0 0 16 16", width: 16, height: 16, ...name}, svgElement("path", {d: SHAPES[verdict]}));
}

/** The word for a verdict. */
export function verdictWord(verdict: Verdict): string {
  return WORDS[verdict];
}

/** How a check ended, in its own word where it has one: "needs top steel". */
export function checkWord(check: Pick<Check, "verdict" | "word">): string {
  return check.word ?? WORDS[check.verdict];
}

/** What a check found and its limit, as lists, tables and the record write them: "33.3 kip" and "at most 39.6 kip". */
export function checkNumbers(check: Check): {readonly found: string; readonly limit: string} {
  const compared = comparison(check);
  if (!compared) return {found: "", limit: "not covered"};
  const {asked, given} = pairText(check.demand, check.capacity, 3, formatForEquation);
  const [found, limit] = (check.sense === "at most" ? [asked, given] : [given, asked]).map((text) => `${text} ${unitText(check.unit)}`.trim());
  return {found: found as string, limit: `${compared.side} ${limit}`};
}

/** Checks, one to a row: mark, word, what was found and its limit, and a bar with the limit marked on it. */
export function checkList(checks: readonly Check[], {label = "Checks"}: {label?: string} = {}): HTMLElement {
  return element("ul", {class: "checks", "aria-label": label}, ...checks.map(row));
}

function row(check: Check): HTMLElement {
  const {found, limit} = checkNumbers(check);
  return element(
    "li",
    {class: "check", "data-verdict": check.verdict, "data-check": check.id},
    checkMark(check.verdict),
    element("span", {class: "check-label"}, check.label),
    element("span", {class: "check-word"}, checkWord(check)),
    check.verdict === "out of range" ? null : bar(check),
    check.verdict === "out of range" ? null : element("span", {class: "check-numbers"}, `${found}, `, element("span", {class: "check-limit"}, limit)),
    element("span", {class: "check-message"}, check.message, check.message && check.clause ? " " : null, element("span", {class: "step-source"}, sourceSentence(check.clause))),
  );
}

/** A source that stands after a sentence: with a capital, as the next sentence has. */
export function sourceSentence(clause: string): string {
  return clause.charAt(0).toUpperCase() + clause.slice(1);
}

/** The bar's full width stands for this much of the limit, so that what exceeds it can be seen to. */
const BAR_TO = 1.25;

function bar(check: Check): HTMLElement {
  const share = Number.isFinite(check.utilization) ? Math.max(0, check.utilization) : BAR_TO;
  const node = element("span", {class: "check-bar", role: "img", "aria-label": `${usedPercent(share)} of the limit`}, element("span", {class: "check-fill"}));
  node.style.setProperty("--share", `${(100 * Math.min(share, BAR_TO)) / BAR_TO}%`);
  node.style.setProperty("--limit", `${100 / BAR_TO}%`);
  return node;
}

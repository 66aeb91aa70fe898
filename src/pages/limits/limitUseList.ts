import type {Check} from "../../lib/checks.js";
import {cellOf} from "../../lib/deck/cell.js";
import {limitNamed} from "../../lib/deck/limits.js";
import type {Evaluation} from "../../lib/evaluate.js";
import {limitUses, type LimitUse} from "../../lib/report/limitUse.js";
import {limitWorking} from "../../lib/steps/cell.js";
import {usedPercent} from "../../lib/pair.js";
import {decimals} from "../../lib/units.js";
import {checkMark, sourceSentence, verdictWord} from "../../components/checks.js";
import {LIMIT_LOOKS} from "../../components/charts/limits.js";
import {element} from "../../components/dom.js";
import {limitPart} from "../../components/drawings/parts.js";
import {live} from "../../components/live.js";

/** The bar's full width stands for this much of the limit. */
const BAR_TO = 1.25;
/** A use beyond this is put in words. */
const FAR_BEYOND = 9.99;

/** A limit with what its row says. */
export interface LimitRow extends LimitUse {
  /** Whether this floor requires it: all gates that have something to ask, and the limits of its criteria. */
  readonly asked: boolean;
  readonly word: string;
}

/** All limits at the design's own load: those that are asked from the most used to the least, then the others. */
export function limitRows({member, design, deck}: Evaluation): LimitRow[] {
  const cell = cellOf(member, design.bay.spanFt, deck.criteria);
  const rows = limitUses(member, design.bay.spanFt, deck.criteria, deck.demandPsf).map((use): LimitRow => {
    const asked = use.utilization !== null && (use.counts || limitNamed(use.name).kind === "gate");
    return {...use, asked, word: wordFor(use, asked, () => limitNamed(use.name).checks(cell, deck))};
  });
  const rank = (row: LimitRow) => (row.asked ? 0 : row.utilization === null ? 2 : 1);
  return rows.sort((a, b) => rank(a) - rank(b) || (b.utilization ?? 0) - (a.utilization ?? 0));
}

/** Where a remedy stands in a limit's own checks, steel in the top or a permit, and none of them fails, the remedy's word. */
function wordFor({verdict, utilization}: LimitUse, asked: boolean, own: () => readonly Check[]): string {
  if (verdict === "does not apply" || utilization === null) return "does not apply";
  if (!asked) return "not required here";
  const checks = verdict === "fails" ? own() : [];
  const remedy = checks.find(({word}) => word);
  return remedy?.word && !checks.some((check) => check.verdict === "fails") ? remedy.word : verdictWord(verdict);
}

/** The limits as a list of bars, most used first. */
export function limitUseList(result: Evaluation): HTMLElement {
  return element("ul", {class: "checks limit-uses", "aria-label": "All limits by how much of them is used"}, ...limitRows(result).map((row) => listRow(row, result)));
}

function listRow({name, clause, allowedPsf, utilization, verdict, asked, word}: LimitRow, {member, design, deck}: Evaluation): HTMLElement {
  const look = element("span", {class: "limit-letter", "aria-hidden": "true"}, LIMIT_LOOKS[name].letter);
  look.style.setProperty("--look", LIMIT_LOOKS[name].color);
  const ask = utilization === null ? null : live("why?", () => limitWorking(member, design.bay.spanFt, deck.criteria, name));
  ask?.setAttribute("aria-label", `why? ${name}`);
  const shown = verdict === "does not apply" ? undefined : word === verdictWord(verdict) ? verdict : "near";
  return element(
    "li",
    {class: "check limit-use", "data-limit": name, "data-part": limitPart(name), "data-verdict": asked ? shown : undefined},
    asked && shown ? checkMark(shown) : element("span", {}),
    element("span", {class: "check-label"}, look, " ", name),
    element("span", {class: "check-word"}, word),
    utilization === null ? element("span", {}) : bar(utilization),
    element("span", {class: "check-numbers"}, utilization === null ? "" : numbers(utilization, allowedPsf)),
    element(
      "span", {class: "check-message"}, limitNamed(name).asks, " ", element("span", {class: "step-source"}, sourceSentence(clause)), " ", ask,
    ),
  );
}

function numbers(utilization: number, allowedPsf: number | null): string {
  if (utilization > FAR_BEYOND) return allowedPsf === null ? "far beyond" : `allows ${decimals(Math.max(0, allowedPsf))} psf`;
  return allowedPsf === null ? usedPercent(utilization) : `${usedPercent(utilization)} of ${decimals(Math.max(0, allowedPsf))} psf`;
}

function bar(utilization: number): HTMLElement {
  const node = element("span", {class: "check-bar", role: "img", "aria-label": `${usedPercent(Math.min(FAR_BEYOND, utilization))} of the limit`}, element("span", {class: "check-fill"}));
  node.style.setProperty("--share", `${(100 * Math.min(utilization, BAR_TO)) / BAR_TO}%`);
  node.style.setProperty("--limit", `${100 / BAR_TO}%`);
  return node;
}

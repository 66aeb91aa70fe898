import type {SweepCell, SweepRow} from "../../lib/deck/sweep.js";
import {decimals, feetAndInches, feetText} from "../../lib/units.js";
import {LIMIT_LOOKS} from "../../components/charts/limits.js";
import {element} from "../../components/dom.js";
import {patternWords} from "../../components/shared/deckWords.js";
import {LEAST_SHOWN_PSF} from "./data.js";

/** A fact of a row that stands between its name and its loads. */
export interface Fact {
  readonly key: "toppingIn" | "depthIn" | "weightPsf" | "strands" | "strandPsf";
  /** Head of its column, and its name where there is room. */
  readonly label: string;
  readonly name: string;
  readonly text: (row: SweepRow) => string;
}

export const FACTS: readonly Fact[] = [
  {key: "toppingIn", label: "Topping", name: "topping", text: ({toppingIn}) => (toppingIn > 0 ? `${toppingIn}\u00a0in` : "none")},
  {key: "depthIn", label: "Depth", name: "depth with topping", text: ({depthIn}) => feetAndInches(depthIn)},
  {key: "weightPsf", label: "psf", name: "weight with topping, psf", text: ({weightPsf}) => decimals(weightPsf)},
  {key: "strands", label: "Strands", name: "number of strands", text: ({strands, profile}) => `${strands}${profile === "straight" ? "" : "\u00a0\u2304"}`},
  {key: "strandPsf", label: "lb/ft\u00b2", name: "strand by floor area, lb per square foot", text: ({strandPsf}) => decimals(strandPsf, 2)},
];

/** A row's name. */
export function rowHead({member, toppingIn, pattern}: SweepRow): HTMLElement {
  return element("th", {scope: "row", class: "row-head", tabindex: -1, title: patternWords(pattern)},
    `${member}${toppingIn > 0 ? `\u00a0+\u00a0${toppingIn}` : ""}`, " ", element("span", {class: "pattern"}, pattern));
}

/** One of a row's facts. */
export function factCell(fact: Fact, row: SweepRow): HTMLElement {
  return element("td", {class: "row-fact numeric", tabindex: -1}, fact.text(row));
}

/** A load with the letter of what governs; a dash where nothing can be carried. Opens its worked steps. */
export function cellOf({safeLoadPsf, governs, spanFt}: SweepCell, spanIndex: number): HTMLElement {
  const {letter, color} = LIMIT_LOOKS[governs];
  const none = safeLoadPsf < LEAST_SHOWN_PSF;
  const text = none ? "\u2013" : decimals(safeLoadPsf);
  const words = none ? `carries nothing over ${feetText(spanFt)} because of ${governs}` : `${decimals(safeLoadPsf)} psf over ${feetText(spanFt)}, ${governs} governs`;
  const cell = element("td", {class: none ? "numeric load none" : "numeric load", tabindex: -1, "data-span": spanIndex, "data-unit": "psf", "data-governs": letter, "aria-haspopup": "dialog", "aria-label": `${text} ${letter}: ${words}`, title: words},
    text, " ", element("span", {class: "letter"}, letter));
  cell.style.setProperty("--look", color);
  return cell;
}

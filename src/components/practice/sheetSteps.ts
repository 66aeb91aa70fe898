import type {Step} from "../../lib/step.js";
import {symbolTex} from "../symbols.js";
import {mathMarkup, stepLines} from "../worked.js";
import {escaped} from "./pictureText.js";

/** A worked step on a sheet: its label, its equation in symbols, numbers and result, and its source. */
export function stepMarkup(step: Step): string {
  const lines = stepLines(step).map((tex, i) => mathMarkup(`\\displaystyle ${i === 0 ? symbolTex(step.symbol) : ""} = ${tex}`)).join(" ");
  return `${escaped(step.label)}: <span class="math">${lines}</span> <small>${escaped(step.source)}</small>`;
}

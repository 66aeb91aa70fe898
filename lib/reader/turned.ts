import {piecesOf, type Piece} from "./pieces.js";
import type {UnitSystem} from "./system.js";

/** A change of a text: what stands from one place to the next gives way to other words. */
export interface Change {
  readonly from: number;
  readonly to: number;
  readonly words: string;
}

/** How many texts are remembered; a page has some thousand, and a moving control makes some hundred a second. */
const MOST_KEPT = 6000;
const kept: Record<"SI" | "both", Map<string, readonly Change[]>> = {SI: new Map(), both: new Map()};
/** Whether a text can hold a US unit at all: most cannot. */
const HAS_UNIT = /['"$]|\b(?:\d*(?:ft|in|yd|lbs?|kips?|psf|ksf|plf|klf|psi|ksi|pcf|pci|cfm|fpm|mph)|inch\w*|foot|feet|yards?|pounds?|tons?|miles|ft-|kg|kgCO)/;

/**
 * What changes in a text for a reader of a system: each US quantity is written in SI, or has its SI value behind it in parentheses (in
 * brackets where it stands in parentheses already). A text that has been changed is not changed again.
 */
export function changesOf(text: string, system: UnitSystem): readonly Change[] {
  if (system === "US" || !HAS_UNIT.test(text)) return [];
  const found = kept[system].get(text);
  if (found) return found;
  const changes = system === "SI" ? piecesOf(text).map(({from, to, si}) => ({from, to, words: si})) : piecesOf(text).flatMap((piece) => both(piece, text));
  if (kept[system].size >= MOST_KEPT) kept[system].clear();
  kept[system].set(text, changes);
  return changes;
}

function both({from, to, si, hasNumber}: Piece, text: string): Change[] {
  const words = text.slice(from, to);
  // Each of a series of words such as "each inch" says itself what it counts.
  if (!hasNumber) return LABEL_UNIT.test(words) && !text.slice(to).startsWith("\u00a0[") && labelEnds(text, to) ? [{from, to, words: `${words}\u00a0[${si}]`}] : [];
  if (BESIDE.test(text.slice(to))) return [];
  const inside = (text.slice(0, from).match(/\(/g)?.length ?? 0) > (text.slice(0, from).match(/\)/g)?.length ?? 0);
  const plain = si.replace(/^(?:(?:[Ee]ach|[Ee]very)(?: added)?|the|one more|added|whole|a darker) /, "");
  return [{from, to, words: `${words}\u00a0${inside ? "[" : "("}${plain}${inside ? "]" : ")"}`}];
}

/** An SI value that stands beside the US one already. */
const BESIDE = /^[ \u00a0][([]\$?[\d\u2212][^()]*?[ \u00a0/](?:m|mm|k[NmPg]|MPa|kPa|Pa|L|t|MN)(?![a-z])/;

/** A unit that stands for itself, as at the end of a label. */
const LABEL_UNIT = /^[a-z/$-]+[23\u00b2\u00b3\u2074]?$/;
const labelEnds = (text: string, at: number): boolean => /^(?:$|\)|:| \u2192)/.test(text.slice(at));

/** A text with its changes made. */
export function changed(text: string, changes: readonly Change[]): string {
  let made = "";
  let at = 0;
  for (const {from, to, words} of changes) {
    made += text.slice(at, from) + words;
    at = to;
  }
  return at === 0 ? text : made + text.slice(at);
}

/** A text as a reader of a system reads it. */
export function inSystem(text: string, system: UnitSystem): string {
  return changed(text, changesOf(text, system));
}

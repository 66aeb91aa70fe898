import {readNumber, siText} from "../../lib/reader/figures.js";
import {textUnit, type TextUnit} from "../../lib/reader/siUnit.js";
import type {UnitSystem} from "../../lib/reader/system.js";

/** The unit at the end of a head: `Span, ft`, `Weight (psf)`, or `psf` alone. */
export function unitOfHead(words: string): TextUnit | undefined {
  const plain = words.replace(/\s+/g, " ").trim().replace(/^[\u2191\u2193\u2190] | [\u2192\u2191\u2193]$/g, "");
  const [, listed, bracketed] = /(?:,|:)\s([^,:]+?)(?: \([^)]*\))?$|\(([^()]+)\)$/.exec(plain) ?? [];
  return textUnit((listed ?? bracketed ?? plain).replace(/ \(.*\)$| each$/, ""));
}

/** The unit of a number that stands alone in a cell: of its element's `data-unit`, its column's head or its row's. */
export function unitOfCell(node: Text, words: (node: Node) => string): TextUnit | undefined {
  const marked = node.parentElement?.closest<HTMLElement>("[data-unit]");
  if (marked) return textUnit(marked.dataset["unit"] as string);
  const cell = node.parentElement?.closest<HTMLTableCellElement>("td, th");
  const row = cell?.closest("tr");
  const table = cell?.closest("table");
  if (!cell || !row || !table || cell.closest("thead")) return undefined;
  const at = placeOf(row, cell);
  for (const head of [...(table.tHead?.rows ?? [])].reverse()) {
    const found = [...head.cells].find((each) => placeOf(head, each) <= at && at < placeOf(head, each) + each.colSpan);
    const unit = found && unitOfHead(words(found));
    if (unit) return unit;
  }
  const name = row.querySelector<HTMLElement>("th[scope=row]");
  return name && name !== cell ? unitOfHead(words(name)) : undefined;
}

function placeOf(row: HTMLTableRowElement, cell: HTMLTableCellElement): number {
  let place = 0;
  for (const each of row.cells) {
    if (each === cell) break;
    place += each.colSpan;
  }
  return place;
}

const NUMBER = "[-\\u2212]?(?:\\d{1,3}(?:,\\d{3})+|\\d+)(?:\\.\\d+)?";
const PART = `(?:[+\\u00b1] ?)?${NUMBER}|of ${NUMBER}|\\([\\u2264\\u2265<>] ${NUMBER}\\)|[A-Z]{1,2}`;
/** Percentages are the same in all units. */
const NUMBERS = new RegExp(`${NUMBER}(?![\\d,.]*\\d|[ \\u00a0]?%)`, "g");
const ALONE = new RegExp(`^\\s*(?:${PART})(?: (?:${PART}))*\\s*$`);

/** Whether a text is nothing but numbers, with what they are held against or the letter of what governs them: `160 of 160`, `13.2 (\u2264 20)`, `991 S`. */
export function isNumbers(text: string): boolean {
  return /\d/.test(text) && ALONE.test(text);
}

/** The numbers of a text in SI, or one with its SI value behind it, several with theirs at the end. */
export function turnNumbers(text: string, unit: TextUnit, system: UnitSystem): string {
  const si = text.replace(NUMBERS, (number) => siText(readNumber(number), unit));
  if (system !== "both") return si;
  return (text.match(NUMBERS)?.length ?? 0) > 1 ? `${text.trimEnd()}\u00a0[${si.trim()}]` : text.replace(NUMBERS, (number) => `${number}\u00a0(${siText(readNumber(number), unit)})`);
}

import {readNumber, siText} from "../../lib/reader/figures.js";
import {textUnit, type TextUnit} from "../../lib/reader/siUnit.js";
import type {UnitSystem} from "../../lib/reader/system.js";

/** The unit at the end of a head: `Span, ft`, `Weight (psf)`, or `psf` alone. */
export function unitOfHead(words: string): TextUnit | undefined {
  const plain = words.replace(/\s+/g, " ").trim().replace(/^[\u2191\u2193\u2190] | [\u2192\u2191\u2193]$/g, "");
  const [, listed, bracketed] = /(?:,|:)\s([^,:]+?)(?: \([^)]*\))?$|\(([^()]+)\)$/.exec(plain) ?? [];
  return textUnit((listed ?? bracketed ?? plain).replace(/ \(.*\)$/, ""));
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

/** A number alone in SI, or with its SI value behind it. */
export function loneNumber(text: string, unit: TextUnit, system: UnitSystem): string {
  const plain = text.trim();
  const si = siText(readNumber(plain), unit);
  return text.replace(plain, system === "both" ? `${plain}\u00a0(${si})` : si);
}

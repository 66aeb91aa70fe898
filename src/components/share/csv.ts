import {csvFormatRows} from "d3-dsv";

/** A table of the page as CSV: its words as they stand, a cell that spans several columns followed by empty ones. */
export function csvOf(table: HTMLTableElement): string {
  const rows = [...table.rows].map((row) => [...row.cells].flatMap((cell) => [
    (cell.textContent ?? "").replace(/\s+/g, " ").trim(), ...Array.from({length: cell.colSpan - 1}, () => ""),
  ]));
  return `${csvFormatRows(rows)}\n`;
}

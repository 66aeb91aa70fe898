import {csvFormatRows} from "d3-dsv";
import {inSystem} from "../../lib/reader/turned.js";
import {isNumbers, turnNumbers, unitOfHead} from "../reader/cells.js";
import {usText} from "../reader/runs.js";
import {readerSystem} from "../reader/system.js";
import {downloadBlob} from "../store/browser.js";
import {gridOf, harmless} from "./csvCells.js";

/**
 * A table of the page as CSV (RFC 4180): its words as they stand, with what is typed or chosen in it; see {@link gridOf} and {@link harmless}.
 * For a reader of both systems every column stays in US units, and each whose head names one is followed by the same in SI.
 */
export function csvOf(table: HTMLTableElement): string {
  const both = readerSystem() === "both";
  const words = both ? usText : ({data}: Text) => data;
  const rows = gridOf([...table.rows].map((row) => [...row.cells].map((cell) => ({text: linesOf(cell, words).join("; "), columns: cell.colSpan, rows: cell.rowSpan}))));
  return `${csvFormatRows((both ? withSi(rows) : rows).map((row) => row.map(harmless)))}\n`;
}

/** Saves a table of the page as a file; the mark before its first letter lets spreadsheets read it as UTF-8. */
export function saveCsv(name: string, table: HTMLTableElement): void {
  downloadBlob(`${name}.csv`, new Blob([`\ufeff${csvOf(table)}`], {type: "text/csv"}));
}

/** The lines of a cell, which its style sets below each other. */
function linesOf(cell: Element, words: (text: Text) => string): string[] {
  const lines = [""];
  const walk = (node: Node) => {
    if (node instanceof Text) lines.push(`${lines.pop() ?? ""}${words(node)}`);
    if (!(node instanceof Element) || node instanceof SVGElement) return;
    const typed = valueOf(node);
    const {display} = getComputedStyle(node);
    if (display === "none") return;
    const apart = node !== cell && !/^(inline|contents)/.test(display);
    if (apart || node.tagName === "BR") lines.push("");
    if (typed !== undefined) lines.push(`${lines.pop() ?? ""} ${typed} `);
    else for (const child of node.childNodes) walk(child);
    if (apart) lines.push("");
  };
  walk(cell);
  return lines.map((line) => line.replace(/\s+/g, " ").trim()).filter((line) => line !== "");
}

/** What is typed into, chosen or ticked in a control; undefined of anything else. */
function valueOf(control: Element): string | undefined {
  if (control instanceof HTMLSelectElement) return control.selectedOptions[0]?.text ?? "";
  if (control instanceof HTMLInputElement) return ["checkbox", "radio"].includes(control.type) ? (control.checked ? "yes" : "no") : control.value;
  return control instanceof HTMLTextAreaElement ? control.value : undefined;
}

function withSi(rows: readonly (readonly string[])[]): string[][] {
  const units = (rows[0] ?? []).map(unitOfHead);
  return rows.map((row, at) => row.flatMap((cell, i) => {
    const unit = units[i];
    if (!unit) return [cell];
    return [cell, at === 0 ? inSystem(cell, "SI") : isNumbers(cell) ? turnNumbers(cell, unit, "SI") : ""];
  }));
}

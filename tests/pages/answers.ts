import type {Page} from "playwright-core";
import {decimals, feetAndInches} from "../../lib/units.js";

/** Ways in which a page may write a number: in feet and inches or with its unit, a square's as figure or raised, rounded as pages round. */
export function writings(value: number, unit: string): string[] {
  const units = [...new Set([unit, unit.replace(/2$/, "\u00b2")])];
  const plain = [0, 1, 2].filter((digits) => Math.abs(value) >= 0.5 * 10 ** -digits).flatMap((digits) => units.map((one) => `${decimals(Math.abs(value), digits)} ${one}`));
  // Below a few inches, feet and inches would be a fraction such as others have too.
  const feet = unit === "in" && value >= 3 ? [feetAndInches(value), feetAndInches(value, 4, true)] : [];
  return [...new Set([...plain, ...feet])];
}

/** Those of some writings that stand in a text as whole numbers. */
export function found(text: string, written: readonly string[]): string[] {
  return written.filter((one) => new RegExp(`(?<![\\d.,/'-])${one.replace(/[.*+?^${}()|[\]\\]/g, "\\$&")}(?![\\w/])`).test(text));
}

/**
 * All that a page says, seen or not: text line by line, attributes, and cells of tables with the unit that stands in their
 * column's head. What the reader has set with a control is left out, as are numbers of `except`.
 */
export function allSaid(page: Page, except = ".guess"): Promise<string> {
  return page.evaluate((skip) => {
    const lines: string[] = [];
    let line = "";
    const end = () => {
      if (line.trim()) lines.push(line);
      line = "";
    };
    const INLINE = new Set(["SPAN", "A", "STRONG", "EM", "B", "I", "BUTTON", "SUB", "SUP", "CODE"]);
    const walk = (node: Node) => {
      if (node instanceof Text) line += node.data;
      if (!(node instanceof Element) || node.matches(`script, style, template, .control, ${skip}`)) return;
      for (const {value} of node.attributes) if (/\d/.test(value)) lines.push(value);
      const block = !INLINE.has(node.tagName);
      if (block) end();
      for (const child of node.childNodes) walk(child);
      if (block) end();
    };
    walk(document.documentElement);
    end();
    for (const table of document.querySelectorAll("table")) {
      const heads = [...table.querySelectorAll("thead tr:last-child th")].map((head) => head.textContent.split(", ").at(-1) ?? "");
      for (const row of table.querySelectorAll("tbody tr")) {
        [...row.children].forEach((cell, i) => lines.push(`${cell.textContent.trim()} ${heads[i] ?? ""}`));
      }
    }
    return lines.join("\n").replace(/\u00a0/g, " ");
  }, except);
}

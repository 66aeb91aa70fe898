import {element} from "./dom.js";

/** The numbers of a figure as a table. */
export interface FigureTable {
  readonly columns: readonly string[];
  readonly rows: readonly (readonly (string | number)[])[];
}

export interface FigureOptions {
  /** What the figure shows, in a sentence or two; may hold live numbers. */
  readonly caption: string | Node;
  /** The finding: "Past 58 ft tension governs, not strength". */
  readonly title?: string | Node;
  /** Breaks out of the column of text where there is room. */
  readonly wide?: boolean;
  /** Its numbers, folded away below it. */
  readonly table?: FigureTable | Node;
}

/** A picture with its finding as a title, a caption, and its numbers on request. */
export function figure(node: Node, {caption, title, wide = false, table}: FigureOptions): HTMLElement {
  return element(
    "figure",
    {class: wide ? "wide" : undefined},
    title ? element("p", {class: "figure-title"}, title) : null,
    element("div", {class: "figure-body"}, node),
    element("figcaption", {}, caption),
    table
      ? element("details", {class: "figure-table"}, element("summary", {}, "The numbers"), element("div", {class: "scrolls", tabindex: 0, role: "region", "aria-label": "The numbers"}, table instanceof Node ? table : dataTable(table)))
      : null,
  );
}

/** A plain table; columns of numbers are set to the right. */
export function dataTable({columns, rows}: FigureTable): HTMLTableElement {
  const numeric = columns.map((_, index) => rows.every((row) => typeof row[index] === "number"));
  const side = (index: number) => (numeric[index] ? "numeric" : undefined);
  return element(
    "table",
    {},
    element("thead", {}, element("tr", {}, ...columns.map((name, index) => element("th", {scope: "col", class: side(index)}, name)))),
    element("tbody", {}, ...rows.map((row) => element("tr", {}, ...row.map((cell, index) => element("td", {class: side(index)}, cell))))),
  );
}

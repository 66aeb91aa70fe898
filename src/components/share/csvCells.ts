/** A cell of a table with how many columns and rows it spans. */
export interface Cell {
  readonly text: string;
  readonly columns: number;
  readonly rows: number;
}

/** A table's rows as a grid: a cell that spans several columns or rows is followed, or stands above, empty ones. */
export function gridOf(rows: readonly (readonly Cell[])[]): string[][] {
  const grid: string[][] = rows.map(() => []);
  rows.forEach((cells, at) => {
    let column = 0;
    for (const {text, columns, rows: down} of cells) {
      while (grid[at]?.[column] !== undefined) column += 1;
      for (let i = 0; i < down; i++) {
        const row = grid[at + i];
        for (let j = 0; row && j < columns; j++) row[column + j] = i === 0 && j === 0 ? text : "";
      }
    }
  });
  // A row may be spanned beyond its own last cell.
  return grid.map((row) => Array.from(row, (text) => text ?? ""));
}

/** A number with its sign, alone or with its unit: -3.2, +40 psf, -0.6 %. */
const SIGNED = /^[-+\u2212](?=[\d.])(\d[\d,]*)?(\.\d+)?( ?[\p{L}%\u00b0\u00b2\u00b3\u2082\u00b7/-]+){0,2}$/u;
const FORMULA = /^[=+\-@\t\r]/;

/**
 * A cell as a spreadsheet may have it: what it would run as a formula is marked as text by an apostrophe (common practice), and a minus sign
 * of type before a number is the one that it reads.
 */
export function harmless(text: string): string {
  if (SIGNED.test(text)) return text.replace("\u2212", "-");
  return FORMULA.test(text) ? `'${text}` : text;
}

import {InputError} from "./errors.js";

/** The tables of `data/` as text, by file name without its ending. */
export type RawTables = Readonly<Record<string, readonly Readonly<Record<string, string>>[]>>;

/** The rows of a table; throws {@link InputError} if there is no such table. */
export function tableRows(tables: RawTables, table: string): CsvRow[] {
  const found = tables[table];
  if (!found) throw new InputError({path: table, label: "table", value: Object.keys(tables).join(", "), allowed: `a table named ${table}`});
  return found.map((cells, index) => new CsvRow(cells, `${table}[${index + 1}]`));
}

/** One row of a text table, read cell by cell; an unusable cell throws {@link InputError} with its place. */
export class CsvRow {
  constructor(private readonly cells: Readonly<Record<string, string>>, private readonly place: string) {}

  /** The cell's text, empty where there is none. */
  optional(column: string): string {
    return this.cells[column]?.trim() ?? "";
  }

  text(column: string): string {
    const value = this.optional(column);
    if (value) return value;
    throw this.wrong(column, "text");
  }

  number(column: string): number {
    return this.parse(column, this.optional(column));
  }

  optionalNumber(column: string): number | undefined {
    const text = this.optional(column);
    return text === "" ? undefined : this.parse(column, text, "a number or nothing");
  }

  /** A number that is part of the cell's text. */
  parse(column: string, text: string, allowed = "a number"): number {
    const value = Number(text);
    if (text !== "" && Number.isFinite(value)) return value;
    throw this.wrong(column, allowed);
  }

  choice<T extends string>(column: string, choices: readonly T[]): T {
    const value = this.optional(column) as T;
    if (choices.includes(value)) return value;
    throw this.wrong(column, choices.join(", "));
  }

  yes(column: string): boolean {
    return this.choice(column, ["yes", "no"]) === "yes";
  }

  private wrong(column: string, allowed: string): InputError {
    return new InputError({path: `${this.place}.${column}`, label: `${this.place} ${column}`, value: this.cells[column], allowed});
  }
}

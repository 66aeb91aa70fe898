import type {RawTables} from "../catalogue.js";
import {InputError} from "../errors.js";
import {CONFIDENCES, type Citation, type Confidence} from "./compare.js";

/** One property of a section as printed. */
export interface PublishedSection extends Citation {
  readonly member: string;
  /** 0 for the bare member. */
  readonly toppingIn: number;
  readonly quantity: string;
  readonly value: number;
  readonly unit: string;
}

/** One cell of a printed load table, with the two cambers printed beside it. */
export interface PublishedDeckLoad extends Omit<Citation, "tolerance" | "asserted"> {
  readonly member: string;
  readonly pattern: string;
  /** Height of the strands' centroid as printed or assumed, in; straight strands. */
  readonly strandHeightIn: number;
  readonly toppingIn: number;
  readonly spanFt: number;
  readonly safeLoadPsf: number;
  readonly safeLoadTolerancePsf: number;
  readonly safeLoadAsserted: boolean;
  /** What the printed cell is taken to be limited by. */
  readonly limit: "strength" | "shear";
  readonly erectionCamberIn: number;
  readonly longTimeCamberIn: number;
  readonly camberToleranceIn: number;
}

/** A value of another kind: a table's number, a code's constant, a worked example. */
export interface PublishedValue extends Citation {
  readonly group: string;
  /** Which function finds ours, and what it is asked. */
  readonly kind: string;
  readonly key: string;
  readonly quantity: string;
  readonly value: number;
  readonly unit: string;
}

/** All published values that the kit compares itself with. */
export interface Published {
  readonly sections: readonly PublishedSection[];
  readonly deckLoads: readonly PublishedDeckLoad[];
  readonly values: readonly PublishedValue[];
}

/**
 * Reads the tables of published values.
 *
 * @throws InputError naming table, row and column of the first cell that cannot be used
 */
export function readPublished(tables: RawTables): Published {
  return {
    sections: rows(tables, "published-sections", (cell) => ({
      member: cell.text("member"), toppingIn: cell.number("topping_in"), quantity: cell.text("quantity"),
      value: cell.number("value"), unit: cell.text("unit"), ...citation(cell, cell.number("value")),
    })),
    deckLoads: rows(tables, "published-deck-loads", (cell) => ({
      member: cell.text("member"), pattern: cell.text("pattern"), strandHeightIn: cell.number("strand_height_in"),
      toppingIn: cell.number("topping_in"), spanFt: cell.number("span_ft"), safeLoadPsf: cell.number("safe_load_psf"),
      safeLoadTolerancePsf: cell.number("safe_load_tolerance_psf"), safeLoadAsserted: cell.yes("safe_load_asserted"),
      limit: cell.choice("limit", ["strength", "shear"]), erectionCamberIn: cell.number("erection_camber_in"),
      longTimeCamberIn: cell.number("long_time_camber_in"), camberToleranceIn: cell.number("camber_tolerance_in"),
      ...origin(cell),
    })),
    values: rows(tables, "published-values", (cell) => ({
      group: cell.text("group"), kind: cell.text("kind"), key: cell.optional("key"), quantity: cell.text("quantity"),
      value: cell.number("value"), unit: cell.optional("unit"), ...citation(cell, cell.number("value")),
    })),
  };
}

function citation(cell: Cells, value: number): Citation {
  return {tolerance: tolerance(cell, value), asserted: cell.yes("asserted"), ...origin(cell)};
}

function origin(cell: Cells): Pick<Citation, "source" | "confidence" | "note"> {
  return {source: cell.text("source"), confidence: cell.choice<Confidence>("confidence", CONFIDENCES), note: cell.optional("note")};
}

/** `0.1%` of the value, `0.5` in its unit, or `exact`. */
function tolerance(cell: Cells, value: number): number {
  const text = cell.text("tolerance");
  if (text === "exact") return 0;
  if (text.endsWith("%")) return (Math.abs(value) * cell.parse("tolerance", text.slice(0, -1))) / 100;
  return cell.number("tolerance");
}

function rows<T>(tables: RawTables, table: string, read: (cell: Cells) => T): T[] {
  const found = tables[table];
  if (!found) throw new InputError({path: table, label: "table", value: Object.keys(tables).join(", "), allowed: `a table named ${table}`});
  return found.map((row, index) => read(new Cells(row, `${table}[${index + 1}]`)));
}

/** One row of a text table, read cell by cell. */
class Cells {
  constructor(private readonly row: Readonly<Record<string, string>>, private readonly place: string) {}

  optional(column: string): string {
    return this.row[column]?.trim() ?? "";
  }

  text(column: string): string {
    const value = this.optional(column);
    if (value) return value;
    throw this.wrong(column, "text");
  }

  number(column: string): number {
    return this.parse(column, this.text(column));
  }

  parse(column: string, text: string): number {
    const value = Number(text);
    if (text !== "" && Number.isFinite(value)) return value;
    throw this.wrong(column, "a number");
  }

  choice<T extends string>(column: string, choices: readonly T[]): T {
    const value = this.text(column) as T;
    if (choices.includes(value)) return value;
    throw this.wrong(column, choices.join(", "));
  }

  yes(column: string): boolean {
    return this.choice(column, ["yes", "no"]) === "yes";
  }

  private wrong(column: string, allowed: string): InputError {
    return new InputError({path: `${this.place}.${column}`, label: `${this.place} ${column}`, value: this.row[column], allowed});
  }
}

import {InputError} from "./errors.js";
import type {Bar} from "./materials/reinforcement.js";
import type {Strand} from "./materials/strand.js";
import type {Family} from "./sections/shape.js";

/** The tables of `data/` as text, by file name without its ending. */
export type RawTables = Readonly<Record<string, readonly RawRow[]>>;
type RawRow = Readonly<Record<string, string>>;

/** All that the kit knows of materials, members and loads before a reader decides anything. */
export interface Catalogue {
  readonly strands: readonly Strand[];
  readonly bars: readonly Bar[];
  readonly occupancies: readonly Occupancy[];
  readonly layers: readonly {readonly name: string; readonly loadPsf: number; readonly source: string}[];
  readonly deckMembers: readonly DeckMemberRow[];
  readonly ledgeBeams: readonly LedgeBeamRow[];
}

/** How the code lets a live load be reduced: as usual, not at all, or by the rules for heavy loads or garages. */
export type ReductionRule = "yes" | "no" | "heavy" | "garage";

/** A row of the table of live loads. */
export interface Occupancy {
  readonly id: string;
  readonly name: string;
  readonly group: string;
  /** Uniform live load Lo, psf. */
  readonly livePsf: number;
  /** Concentrated live load, lb, where the table gives one. */
  readonly concentratedLb: number | undefined;
  readonly reduction: ReductionRule;
  /** Whether walls are usually moved about in such rooms. */
  readonly partitions: boolean;
  /** Part of the live load that stays for years (common practice). */
  readonly sustainedShare: number;
  readonly source: string;
}

/** A deck member's generic cross-section and the strands that it may hold. */
export interface DeckMemberRow {
  readonly designation: string;
  readonly family: Family;
  /** How it is finished: topped on site, cast with its full flange, or a plank. */
  readonly use: "field-topped" | "pretopped" | "plank";
  /** The cross-section's dimensions by name, as its shape takes them. */
  readonly dimensions: Readonly<Record<string, number>>;
  /** Height of the lowest strands above the soffit, in. */
  readonly lowestStrandIn: number;
  readonly leastStrands: number;
  readonly mostStrands: number;
  readonly source: string;
}

/** An L-beam's or inverted tee's generic cross-section. */
export interface LedgeBeamRow {
  readonly designation: string;
  readonly family: Family;
  readonly dimensions: Readonly<Record<string, number>>;
  readonly source: string;
}

/** Column of a CSV table to name of a dimension. */
const DIMENSION_COLUMNS: Readonly<Record<string, string>> = {
  width_in: "widthIn", depth_in: "depthIn", flange_in: "flangeIn", stem_bottom_in: "stemBottomIn", stem_top_in: "stemTopIn",
  stem_spacing_in: "stemSpacingIn", chamfer_in: "chamferIn", void_count: "voidCount", void_diameter_in: "voidDiameterIn",
  web_width_in: "webWidthIn", ledge_projection_in: "ledgeProjectionIn", ledge_depth_in: "ledgeDepthIn",
};

/**
 * Makes the catalogue from the text tables of `data/`.
 *
 * @throws InputError naming table, row and column of the first cell that cannot be used
 */
export function readCatalogue(tables: RawTables): Catalogue {
  return {
    strands: rows(tables, "strands").map((row) => ({
      sixteenths: row.number("sixteenths"), diameterIn: row.number("diameter_in"),
      areaIn2: row.number("area_in2"), weightPlf: row.number("weight_plf"),
    })),
    bars: rows(tables, "bars").map((row) => ({
      size: row.text("size"), diameterIn: row.number("diameter_in"), areaIn2: row.number("area_in2"),
    })),
    occupancies: rows(tables, "occupancies").map((row) => ({
      id: row.text("id"), name: row.text("name"), group: row.text("group"), livePsf: row.number("live_psf"),
      concentratedLb: row.optionalNumber("concentrated_lb"),
      reduction: row.choice("reduction", ["yes", "no", "heavy", "garage"]),
      partitions: row.choice("partitions", ["yes", "no"]) === "yes",
      sustainedShare: row.number("sustained_share"), source: row.text("source"),
    })),
    layers: rows(tables, "layers").map((row) => ({name: row.text("name"), loadPsf: row.number("load_psf"), source: row.text("source")})),
    deckMembers: rows(tables, "deck-members").map((row) => ({
      designation: row.text("designation"), family: row.choice("family", ["double tee", "hollow core", "flat slab"]),
      use: row.choice("use", ["field-topped", "pretopped", "plank"]), dimensions: row.dimensions(),
      lowestStrandIn: row.number("lowest_strand_in"), leastStrands: row.number("least_strands"),
      mostStrands: row.number("most_strands"), source: row.text("source"),
    })),
    ledgeBeams: rows(tables, "ledge-beams").map((row) => ({
      designation: row.text("designation"), family: row.choice("family", ["L-beam", "inverted tee"]),
      dimensions: row.dimensions(), source: row.text("source"),
    })),
  };
}

/** The occupancy with an id; throws {@link InputError} if there is none. */
export function occupancyOf(catalogue: Catalogue, id: string, path = "occupancy"): Occupancy {
  const found = catalogue.occupancies.find((row) => row.id === id);
  if (found) return found;
  throw new InputError({path, label: "occupancy", value: id, allowed: catalogue.occupancies.map((row) => row.id).join(", ")});
}

/** The bar of a size; throws {@link InputError} if there is none. */
export function barOf(catalogue: Catalogue, size: string, path = "barSize"): Bar {
  const found = catalogue.bars.find((row) => row.size === size);
  if (found) return found;
  throw new InputError({path, label: "bar size", value: size, allowed: catalogue.bars.map((row) => row.size).join(", ")});
}

function rows(tables: RawTables, table: string): Cells[] {
  const found = tables[table];
  if (!found) throw new InputError({path: table, label: "table", value: Object.keys(tables).join(", "), allowed: `a table named ${table}`});
  return found.map((row, index) => new Cells(row, `${table}[${index + 1}]`));
}

/** One row of a text table, read cell by cell. */
class Cells {
  constructor(private readonly row: RawRow, private readonly place: string) {}

  text(column: string): string {
    const value = this.row[column]?.trim();
    if (value) return value;
    throw this.wrong(column, "text");
  }

  number(column: string): number {
    const value = this.optionalNumber(column);
    if (value === undefined) throw this.wrong(column, "a number");
    return value;
  }

  optionalNumber(column: string): number | undefined {
    const text = this.row[column]?.trim() ?? "";
    if (text === "") return undefined;
    const value = Number(text);
    if (Number.isFinite(value)) return value;
    throw this.wrong(column, "a number or nothing");
  }

  choice<T extends string>(column: string, choices: readonly T[]): T {
    const value = this.text(column) as T;
    if (choices.includes(value)) return value;
    throw this.wrong(column, choices.join(", "));
  }

  dimensions(): Record<string, number> {
    const entries = Object.entries(DIMENSION_COLUMNS).flatMap(([column, name]) => {
      const value = this.optionalNumber(column);
      return value === undefined ? [] : [[name, value] as const];
    });
    return Object.fromEntries(entries);
  }

  private wrong(column: string, allowed: string): InputError {
    return new InputError({path: `${this.place}.${column}`, label: `${this.place} ${column}`, value: this.row[column], allowed});
  }
}

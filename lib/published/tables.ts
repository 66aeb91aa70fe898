import {tableRows, type RawTables, type CsvRow} from "../tables.js";
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

/** One cell of a printed load table of beams, with the two cambers printed beside it. */
export interface PublishedBeamLoad extends Omit<Citation, "tolerance" | "asserted"> {
  readonly member: string;
  readonly strands: number;
  /** Height of the strands' centroid as printed, in; straight strands of 1/2 in. */
  readonly strandHeightIn: number;
  readonly spanFt: number;
  readonly safeLoadPlf: number;
  readonly safeLoadTolerancePlf: number;
  readonly safeLoadAsserted: boolean;
  readonly erectionCamberIn: number;
  /** Undefined where it could not be read. */
  readonly longTimeCamberIn: number | undefined;
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
  readonly beamLoads: readonly PublishedBeamLoad[];
  readonly values: readonly PublishedValue[];
}

/**
 * Reads the tables of published values.
 *
 * @throws InputError naming table, row and column of the first cell that cannot be used
 */
export function readPublished(tables: RawTables): Published {
  return {
    sections: tableRows(tables, "published-sections").map((cell) => ({
      member: cell.text("member"), toppingIn: cell.number("topping_in"), quantity: cell.text("quantity"),
      value: cell.number("value"), unit: cell.text("unit"), ...citation(cell, cell.number("value")),
    })),
    deckLoads: tableRows(tables, "published-deck-loads").map((cell) => ({
      member: cell.text("member"), pattern: cell.text("pattern"), strandHeightIn: cell.number("strand_height_in"),
      toppingIn: cell.number("topping_in"), spanFt: cell.number("span_ft"), safeLoadPsf: cell.number("safe_load_psf"),
      safeLoadTolerancePsf: cell.number("safe_load_tolerance_psf"), safeLoadAsserted: cell.yes("safe_load_asserted"),
      limit: cell.choice("limit", ["strength", "shear"]), erectionCamberIn: cell.number("erection_camber_in"),
      longTimeCamberIn: cell.number("long_time_camber_in"), camberToleranceIn: cell.number("camber_tolerance_in"),
      ...origin(cell),
    })),
    beamLoads: tableRows(tables, "published-beam-loads").map((cell) => ({
      member: cell.text("member"), strands: cell.number("strands"), strandHeightIn: cell.number("strand_height_in"),
      spanFt: cell.number("span_ft"), safeLoadPlf: cell.number("safe_load_plf"),
      safeLoadTolerancePlf: cell.number("safe_load_tolerance_plf"), safeLoadAsserted: cell.yes("safe_load_asserted"),
      erectionCamberIn: cell.number("erection_camber_in"), longTimeCamberIn: cell.optionalNumber("long_time_camber_in"),
      camberToleranceIn: cell.number("camber_tolerance_in"), ...origin(cell),
    })),
    values: tableRows(tables, "published-values").map((cell) => ({
      group: cell.text("group"), kind: cell.text("kind"), key: cell.optional("key"), quantity: cell.text("quantity"),
      value: cell.number("value"), unit: cell.optional("unit"), ...citation(cell, cell.number("value")),
    })),
  };
}

function citation(cell: CsvRow, value: number): Citation {
  return {tolerance: tolerance(cell, value), asserted: cell.yes("asserted"), ...origin(cell)};
}

function origin(cell: CsvRow): Pick<Citation, "source" | "confidence" | "note"> {
  return {source: cell.text("source"), confidence: cell.choice<Confidence>("confidence", CONFIDENCES), note: cell.optional("note")};
}

/** `0.1%` of the value, `0.5` in its unit, or `exact`. */
function tolerance(cell: CsvRow, value: number): number {
  const text = cell.text("tolerance");
  if (text === "exact") return 0;
  if (text.endsWith("%")) return (Math.abs(value) * cell.parse("tolerance", text.slice(0, -1))) / 100;
  return cell.number("tolerance");
}

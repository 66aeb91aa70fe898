import type {Catalog} from "../catalog.js";
import {compareBeamLoads, type BeamLoadComparison} from "./beamLoads.js";
import type {Comparison} from "./compare.js";
import {compareDeckLoads, type DeckLoadComparison} from "./deckLoads.js";
import {compareSections} from "./sections.js";
import type {Published} from "./tables.js";
import {compareValues} from "./values.js";

/** Published values beside ours, by kind. */
export interface Comparisons {
  readonly sections: readonly Comparison[];
  readonly deckLoads: readonly DeckLoadComparison[];
  readonly beamLoads: readonly BeamLoadComparison[];
  readonly values: readonly Comparison[];
  /** Every single value, the three of each load-table cell among them. */
  readonly all: readonly Comparison[];
}

/** Computes our value for every published one. */
export function comparePublished(catalog: Catalog, published: Published): Comparisons {
  const sections = compareSections(catalog, published.sections);
  const deckLoads = compareDeckLoads(catalog, published.deckLoads);
  const beamLoads = compareBeamLoads(catalog, published.beamLoads);
  const values = compareValues(catalog, published.values);
  const cells = deckLoads.flatMap((cell) => [cell.safeLoad, cell.erectionCamber, cell.longTimeCamber]);
  const beamCells = beamLoads.flatMap((cell) => [cell.safeLoad, ...cell.cambers]);
  return {sections, deckLoads, beamLoads, values, all: [...sections, ...cells, ...beamCells, ...values]};
}

/** How many values there are, are asserted, and agree. */
export interface AgreementCount {
  readonly values: number;
  readonly asserted: number;
  /** Asserted values within their tolerance. */
  readonly agree: number;
  readonly fromMemory: number;
}

/** Counts values by what became of them. */
export function tally(rows: readonly Comparison[]): AgreementCount {
  const asserted = rows.filter((row) => row.asserted);
  return {
    values: rows.length, asserted: asserted.length, agree: asserted.filter((row) => row.within).length,
    fromMemory: rows.filter((row) => row.confidence === "from memory").length,
  };
}

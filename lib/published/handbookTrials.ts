import type {Catalog} from "../catalog.js";
import {beamTrials, strengthWindows, type BeamTrial, type StrengthWindow} from "./beamTrials.js";
import type {Comparison} from "./compare.js";
import {allowanceTrials, type AllowanceTrial} from "./releaseForce.js";
import {compareSections} from "./sections.js";
import type {Published} from "./tables.js";

/** What the page of methods tells of the handbook's tables: found when the site is built, for it is the same on every visit. */
export interface HandbookTrials {
  /** Volume over surface of a tee, and the area of a plank. */
  readonly surface: Comparison;
  readonly plank: Comparison;
  /** What allowances at release do to the printed cambers, and over how many cells. */
  readonly allowances: readonly AllowanceTrial[];
  readonly deckCells: number;
  /** What guesses do to the printed loads of beams, over how many cells, and what strength they leave by either rounding. */
  readonly beams: readonly BeamTrial[];
  readonly beamCells: number;
  readonly nearest: StrengthWindow;
  readonly down: StrengthWindow;
}

/** @throws Error where the published tables lack a row that is told of */
export function handbookTrials(catalog: Catalog, {sections, deckLoads, beamLoads}: Published): HandbookTrials {
  const only = (member: string, quantity: string) => first(compareSections(catalog, sections.filter((row) => row.member === member && row.quantity === quantity && row.toppingIn === 0)), `${quantity} of ${member}`);
  return {
    surface: only("10DT24", "volume to surface"), plank: only("4HC8", "area"),
    allowances: allowanceTrials(catalog, deckLoads, [0.02, 0.03, 0.04]), deckCells: deckLoads.length,
    beams: beamTrials(catalog, beamLoads), beamCells: beamLoads.length,
    nearest: first(strengthWindows(catalog, beamLoads, "to the nearest"), "page of beams"),
    down: first(strengthWindows(catalog, beamLoads, "down"), "page of beams"),
  };
}

function first<T>(list: readonly T[], what: string): T {
  const [one] = list;
  if (one === undefined) throw new Error(`The published tables have no ${what}.`);
  return one;
}

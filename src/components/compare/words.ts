import {differenceWords, type Difference, type StandingCount} from "../../lib/compare/difference.js";
import type {MeasureEntry} from "../../lib/schemes/measures/measureList.js";
import {decimals} from "../../lib/units.js";
import {unitText} from "../symbols.js";

/** A measure with its unit, as a row begins: "floor-to-floor height, ft". */
export function measureName({name, unit}: MeasureEntry): string {
  return unit === "" ? unitText(name) : `${unitText(name)}, ${measureUnit(unit)}`;
}

/** A unit as it is written: "kgCO₂e/ft²". */
export function measureUnit(unit: string): string {
  return unitText(unit.replace("CO2", "CO\u2082"));
}

/** A value as it stands under its measure. */
export function valueText({decimals: places}: MeasureEntry, value: number | undefined): string {
  return value === undefined ? "none" : decimals(value, places);
}

/** How a value stands to the open design's. */
export function standingText({decimals: places}: MeasureEntry, difference: Difference): string {
  return differenceWords(difference, places);
}

/** How a design fares beside the open one, by count alone. */
export function tallySentence({better, worse, different, alike}: StandingCount): string {
  const parts = [[better, "better in"], [worse, "worse in"], [different, "only different in"], [alike, "alike in"]] as const;
  const told = parts.filter(([count]) => count > 0).map(([count, words]) => `${words} ${count}`);
  return told.length === 0 ? "Nothing of it can be compared." : `Beside the open design: ${told.join(", ")} of ${better + worse + different + alike} measures.`;
}

/** Which way is better, as it stands below a measure's name. */
export const BETTER_WORDS: Readonly<Record<MeasureEntry["better"], string>> = {less: "less is better", more: "more is better", neither: "neither is better"};

import {difference, type Difference, type Standing} from "./difference.js";
import type {MeasureEntry} from "../schemes/measures/measureList.js";
import type {SchemeMeasures} from "../schemes/measures/schemeMeasures.js";
import {COMPARED_MEASURES} from "./measures.js";

/** A measure of several designs: the open one's value, and how each other stands to it. */
export interface MeasureRow {
  readonly measure: MeasureEntry;
  readonly open: number | undefined;
  /** Undefined for a design that is not computed, or has not what is measured. */
  readonly others: readonly {readonly value: number | undefined; readonly difference: Difference}[];
}

/** All measures that any of the designs has, and cost where all have it; parts of totals come after their totals. */
export function measureRows(open: SchemeMeasures, others: readonly (SchemeMeasures | undefined)[]): MeasureRow[] {
  return COMPARED_MEASURES.flatMap((measure) => {
    const base = measure.read(open);
    const values = others.map((one) => (one ? measure.read(one) : undefined));
    if (base === undefined && values.every((value) => value === undefined)) return [];
    // A cost beside one that no price is known for would read as if the other cost nothing.
    if (measure.group === "cost" && (base === undefined || others.some((one, i) => one && values[i] === undefined))) return [];
    return [{measure, open: base, others: values.map((value) => ({value, difference: difference(measure, base, value)}))}];
  });
}

/** Whether a row says the same of all designs that have it. */
export function isAlike({others}: MeasureRow): boolean {
  return others.every(({difference: {standing}}) => standing === "alike");
}

/** How a design stands to the open one in each measure that is no part of another. */
export function standingsOf(open: SchemeMeasures, other: SchemeMeasures): Standing[] {
  return measureRows(open, [other]).flatMap(({measure, others}) => (measure.partOf === undefined && others[0] ? [others[0].difference.standing] : []));
}

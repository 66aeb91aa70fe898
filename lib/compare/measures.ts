import {MEASURE_LIST, type MeasureEntry} from "../schemes/measures/measureList.js";

/** Totals without columns and footings stand in for those that a design without columns has not; here all have them. */
const STAND_INS: ReadonlySet<string | undefined> = new Set(MEASURE_LIST.map(({withoutColumns}) => withoutColumns));

/** The measures that designs are compared by, in the order in which a table lists them. */
export const COMPARED_MEASURES: readonly MeasureEntry[] = MEASURE_LIST.filter(({key}) => !STAND_INS.has(key));

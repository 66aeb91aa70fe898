import type {Check} from "../checks.js";

const OF_COLUMN = /^[a-z ]+ column: /;

/** Whether a check is one of a column, which take longer to compute than all others. */
export const isOfColumn = ({id}: Pick<Check, "id">): boolean => OF_COLUMN.test(id);
/** Whether a check is one of the roof's own deck and beams. */
export const isOfRoof = ({id}: Pick<Check, "id">): boolean => id.startsWith("roof: ");
/** A check's name without the column or the level that it belongs to, or the number of its room: what the table of remedies has it under. */
export const plainId = ({id}: Pick<Check, "id">): string => id.replace(OF_COLUMN, "").replace(/^(roof|top level|end strip): /, "").replace(/^(own live load) \d+$/, "$1");

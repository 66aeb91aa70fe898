import type {UnitSystem} from "../../lib/practice/prose.js";

/** In which units exercises are worded in the pages, and in which a number without a unit is meant; a number with an SI unit is taken as well. */
export const EXERCISE_UNITS: UnitSystem = "US";

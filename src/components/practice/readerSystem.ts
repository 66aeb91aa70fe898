import type {UnitSystem} from "../../lib/practice/prose.js";

/** In which units exercises are worded, and in which a number without a unit is meant. */
export function readerSystem(): UnitSystem {
  return "US";
}

import type {Told} from "../../lib/told.js";

/** The sentence as plain text. */
export function plainTold(of: Told): string {
  return typeof of === "string" ? of : of.map((part) => (typeof part === "string" ? part : part.text)).join("");
}

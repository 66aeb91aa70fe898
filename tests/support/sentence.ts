import type {Sentence} from "../../lib/sentence.js";

/** The sentence as plain text. */
export function plainSentence(of: Sentence): string {
  return typeof of === "string" ? of : of.map((part) => (typeof part === "string" ? part : part.text)).join("");
}

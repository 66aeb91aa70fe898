import {group, number} from "../entries.js";

/** Weights of the trade's preferences in the search. */
export const preferencesFields = group("Weights of the search, 0 to 10", {
  shallow: number("prefer shallow", "", 0, 10, 1, "How much each inch of depth counts against a candidate."),
  fewStrands: number("prefer few strands", "", 0, 10, 1, "How much each pound of strand counts against a candidate."),
  straight: number("prefer straight strand", "", 0, 10, 1, "How much depressing the strand counts against a candidate."),
  light: number("prefer light", "", 0, 10, 1, "How much each pound of concrete counts against a candidate."),
  wide: number("prefer few pieces", "", 0, 10, 1, "How much each extra piece to haul and lift counts against a candidate."),
});

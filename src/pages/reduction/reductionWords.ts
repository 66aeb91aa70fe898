import type {ReductionCase} from "../../lib/loads/reduction.js";
import type {LoadElement} from "../../lib/loads/elements.js";
import type {PlanElement} from "../../components/drawings/bayPlan.js";

/** What decided on a reduction, as a table says it. */
export const CASE_WORDS: Readonly<Record<ReductionCase, string>> = {
  "formula": "the formula",
  "lower limit": "the lower limit: no less than this",
  "area too small": "not reduced: less than 400 ft² of influence area",
  "no reduction": "not reduced: people crowd into such rooms on purpose",
  "taken in full": "not reduced: a load of your own, taken in full",
  "heavy load": "not reduced: above 100 psf, on one floor",
  "heavy load on several floors": "above 100 psf: at most 20 % off, on two floors or more",
  "garage": "not reduced: a garage does fill up, on one floor",
  "garage on several floors": "garage: at most 20 % off, on two floors or more",
};

/** The same as a sentence of prose. */
export function caseSentence(decides: ReductionCase): string {
  const words = CASE_WORDS[decides];
  return decides === "formula" || decides === "lower limit" ? `What decides: ${words}.` : `${words.charAt(0).toUpperCase()}${words.slice(1)}.`;
}

/** The plan's names for the elements that loads are reduced for. */
export const ON_PLAN: Readonly<Record<LoadElement, PlanElement>> = {
  "deck member": "deck",
  "edge beam": "edge beam",
  "interior beam": "interior girder",
  "interior column": "interior column",
  "edge column": "edge column",
  "girder end column": "girder end column",
  "corner column": "corner column",
};

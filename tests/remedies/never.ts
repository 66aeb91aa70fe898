const CHOSEN = "the first size of a column is the least that keeps it";
const TOP_STEEL = "bonded bars take the tension of the top";
/** Checks that fail in no design, and why. */
export const NEVER: Readonly<Record<string, string>> = {
  "deck hauling": "a heavy piece needs a permit",
  "beam weight": "a heavy beam needs a permit",
  "ledge lever": "a longer lever is out of the method's range",
  "girder ledge lever": "a longer lever is out of the method's range",
  "girder pad place": "the pad is made to fit its room",
  "girder pad width": "the pad is made as wide as the stem",
  "stripping tension top": TOP_STEEL, "hauling tension top": TOP_STEEL, "girder stripping tension top": TOP_STEEL, "girder hauling tension top": TOP_STEEL,
  "beam stripping tension top": TOP_STEEL, "beam hauling tension top": TOP_STEEL,
  "beam tension": "a beam that cracks is out of the method's range",
  "diaphragm proportions": "a longer floor is out of the method's range",
  "girder web opening": "an opening that the engineer may allow is a remedy itself",
  "footing side": "a larger footing is out of the method's range",
  "pocket foot": "no method covers it",
  "pocket twist": "no method covers it",
  "first size": "no method covers it",
  "daylight depth": "no method covers it",
  "snow exposure": "no method covers it",
  "unbalanced snow": "no method covers it",
  "column slenderness": "a more slender column is out of the method's range",
  "column least steel": CHOSEN, "column most steel": CHOSEN, "column bar spacing": CHOSEN, "column buckling": CHOSEN, "column magnifier": CHOSEN,
  "corbel arm": "the corbel is made as deep as it must be", "corbel bending": "the corbel is made as deep as it must be",
};

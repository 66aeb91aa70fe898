/** Parts of a floor for which live load may be reduced. */
export const LOAD_ELEMENTS = ["deck member", "edge beam", "interior beam", "interior column", "edge column", "girder end column", "corner column"] as const;
export type LoadElement = (typeof LOAD_ELEMENTS)[number];

/**
 * Live load element factor KLL: the influence area over the tributary area (ASCE 7-16 Table 4.7-1).
 *
 * Deck members joined by separate connectors fall under "all other members", because they pass no continuous shear to
 * their neighbors: 1. Edge and corner columns, and those at the building's ends on which a line of girders ends, are taken
 * without cantilevered slabs, as in a precast frame: 4.
 */
export const ELEMENT_FACTOR: Readonly<Record<LoadElement, number>> = {
  "deck member": 1,
  "edge beam": 2,
  "interior beam": 2,
  "interior column": 4,
  "edge column": 4,
  "girder end column": 4,
  "corner column": 4,
};

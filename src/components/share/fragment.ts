/** What stands before the packed design in the fragment of an address. Apart from the packing, which few pages ever need. */
export const BEGINS = "#design=";

/** Whether the fragment of an address claims to hold a design. */
export const holdsDesign = (fragment: string): boolean => fragment.startsWith(BEGINS);

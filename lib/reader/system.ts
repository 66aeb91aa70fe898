/** The units in which a reader wants to see quantities. The design and all results stay in US units. */
export type UnitSystem = "US" | "SI" | "both";

export const UNIT_SYSTEMS: readonly UnitSystem[] = ["US", "SI", "both"];

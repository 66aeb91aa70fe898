/** Minimum number of accessible stalls by all stalls of a facility (ADA 2010 Standards, Table 208.2): up to so many, so many. */
const TABLE: readonly (readonly [upTo: number, needed: number])[] = [[25, 1], [50, 2], [75, 3], [100, 4], [150, 5], [200, 6], [300, 7], [400, 8], [500, 9]];

/** Widths of accessible stalls and their access aisles, in (ADA 2010 Standards 502.2 with its exception, 502.3.1). */
export const ACCESSIBLE_IN = {stall: 96, aisle: 60, vanAisle: 96} as const;

/** Height that accessible vans need over their stall, its aisle and all of their way, in (ADA 2010 Standards 502.5). */
export const VAN_CLEAR_IN = 98;

/**
 * Accessible stalls required for a number of stalls: by the table up to 500, 2 % up to 1,000, then 20 and one for each
 * hundred beyond, or part of one (ADA 2010 Standards, Table 208.2).
 */
export function accessibleNeeded(stalls: number): number {
  if (stalls <= 0) return 0;
  const row = TABLE.find(([upTo]) => stalls <= upTo);
  if (row) return row[1];
  // Stryker disable next-line EqualityOperator: the two rules meet there
  return stalls <= 1000 ? Math.ceil(stalls * 0.02 - 1e-9) : 20 + Math.ceil((stalls - 1000) / 100);
}

/** Of accessible stalls one in six, or part of six, is for a van (ADA 2010 Standards 208.2.4). */
export function vansNeeded(accessible: number): number {
  return Math.ceil(accessible / 6);
}

/** One accessible stall or two that share the aisle between them. */
export interface AccessibleUnit {
  /** Side by side: a stall, its access aisle, and the other stall that shares it; widths in inches. */
  readonly parts: readonly {readonly kind: "van" | "accessible" | "access aisle"; readonly widthIn: number}[];
  readonly stalls: number;
}

/** Stalls of some units; access aisles are none. */
export function stallsOfUnits(units: readonly AccessibleUnit[]): number {
  return units.reduce((sum, {stalls}) => sum + stalls, 0);
}

/** Accessible stalls in pairs that share an access aisle, those with a van first (ADA 2010 Standards 502.3: two may share one). */
export function accessibleUnits(cars: number, vans: number): AccessibleUnit[] {
  const units: AccessibleUnit[] = [];
  let [carsLeft, vansLeft] = [cars, vans];
  while (carsLeft + vansLeft > 0) {
    const van = vansLeft > 0 ? 1 : 0;
    vansLeft -= van;
    const second = carsLeft > (van ? 0 : 1);
    carsLeft -= (van ? 0 : 1) + (second ? 1 : 0);
    const stall = (kind: "van" | "accessible") => ({kind, widthIn: ACCESSIBLE_IN.stall});
    const aisle = {kind: "access aisle" as const, widthIn: van ? ACCESSIBLE_IN.vanAisle : ACCESSIBLE_IN.aisle};
    units.push({parts: [stall(van ? "van" : "accessible"), aisle, ...(second ? [stall("accessible")] : [])], stalls: second ? 2 : 1});
  }
  return units;
}

import type {ValuesOf} from "./entries.js";
import type {DESIGN_FIELDS} from "./fieldTable.js";

/** Marks a design file; a file without it is not one. */
export const DESIGN_FORMAT = "plank-and-tee-design";

type Fields = ValuesOf<typeof DESIGN_FIELDS>;

/**
 * A design: all that a reader decides, and nothing that is computed. Its fields are those of the table in `fieldTable.ts`,
 * with their meanings and ranges. Values are immutable; `withValue` makes a changed copy.
 */
export interface Design extends Omit<Fields, "criteria"> {
  /** As the table has them. A roof is worked out as a floor of a design of its own, whose sag limit is the roof's. */
  readonly criteria: Omit<Fields["criteria"], "sagLimit"> & {readonly sagLimit: SagLimit};
  readonly format: typeof DESIGN_FORMAT;
  readonly version: number;
  /** What each reason was written for; none for a reason that is blank. */
  readonly writtenFor: Readonly<Partial<Record<ReasonName, WrittenFor>>>;
}

/** The decisions that a reason may be given for. */
export type ReasonName = keyof Fields["reasons"];

/** Who wrote a reason, and the choice that it was written for. */
export interface WrittenFor {
  readonly by: "reader" | "starter" | "rule";
  /** Values of the fields that the reason explains, by path; "none" for one that was left out. See `reasons.ts`. */
  readonly choice: Readonly<Record<string, unknown>>;
}

/** What someone says of a design, of the whole or of one decision. */
export type Comment = Design["comments"][number];
/** A room on the plan and the row of the live load table that it falls under. */
export type Room = Design["loads"]["rooms"][number];
/** A live load of the reader's own. */
export type OwnLoad = NonNullable<Room["own"]>;
/** A layer of superimposed dead load. */
export type Layer = Design["loads"]["layers"][number];
/** Weights of the trade's preferences in the deck search, 0 (does not matter) to 10. */
export type Preferences = Design["preferences"];
/** Which kinds of member the deck search looks at. */
export type Consider = Design["consider"];

/** Class of a prestressed flexural member by its computed tension under full service load (ACI 318-19 24.5.2.1). */
export type TensionClass = Design["criteria"]["tensionClass"];
/** How far a floor or a roof may move (ACI 318-19 Table 24.2.2). */
export type SagLimit = Fields["criteria"]["sagLimit"] | Fields["roof"]["sagLimit"];
/** How people move about on a floor that is judged by how still it stays. */
export type WalkingUse = Exclude<Design["criteria"]["walking"], "none">;

/** What a limit needs to be told apart and explained by. */
export interface LimitInfo {
  /** Whether it bounds the load, or lets the member pass or not whatever the load. */
  readonly kind: "load" | "gate";
  /** Standard and clause, or "common practice". */
  readonly clause: string;
  /** What it asks, as a reader would. */
  readonly asks: string;
}

/** Every limit on a deck member, in the words that tables print and in reading order. */
export const LIMIT_INFO = {
  "strength": {kind: "load", clause: "ACI 318-19 22.3, 21.2.2", asks: "Would it break in bending under the factored load?"},
  "development": {kind: "load", clause: "ACI 318-19 25.4.8, 21.2.3", asks: "Can the strands develop that stress so close to their ends?"},
  "minimum strength": {kind: "load", clause: "ACI 318-19 9.6.2", asks: "Would it crack and sag before it breaks?"},
  "shear": {kind: "load", clause: "ACI 318-19 22.5.6.3, 22.5.1.2, 7.6.3.1", asks: "Would a web tear along a slant near the ends?"},
  "horizontal shear": {kind: "load", clause: "ACI 318-19 16.4", asks: "Would the topping slip on the member?"},
  "service tension": {kind: "load", clause: "ACI 318-19 24.5.2.1", asks: "Does the soffit stay within its class under full load?"},
  "crack control": {kind: "load", clause: "ACI 318-19 24.3.2", asks: "Do the cracks of a class C member stay fine?"},
  "sustained compression": {kind: "load", clause: "ACI 318-19 24.5.4.1", asks: "Would sustained load compress the concrete until creep runs away?"},
  "total compression": {kind: "load", clause: "ACI 318-19 24.5.4.1", asks: "Is the concrete compressed too hard under full load?"},
  "deflection": {kind: "load", clause: "ACI 318-19 24.2.2, 24.2.3.9", asks: "Does it deflect more than what is built on it can tolerate?"},
  "camber": {kind: "load", clause: "common practice", asks: "Does it still arch, not sag, under sustained load in the long term?"},
  "bearing": {kind: "load", clause: "ACI 318-19 22.8.3", asks: "Would its ends crush on their seats?"},
  "transfer": {kind: "gate", clause: "ACI 318-19 24.5.3.1", asks: "Can the young concrete take the prestress at release?"},
  "soffit compression": {kind: "gate", clause: "ACI 318-19 24.5.4.1", asks: "Do the strands compress the soffit of an empty floor until creep runs away?"},
  "vibration": {kind: "gate", clause: "AISC Design Guide 11 (from memory)", asks: "Would people feel others walk?"},
  "fire": {kind: "gate", clause: "IBC 2021 722.2.2, 722.2.3", asks: "Does it hold back the heat and keep its strength for the hours required?"},
  "stripping": {kind: "gate", clause: "ACI 318-19 24.5.3; trade handbook (from memory)", asks: "Can it be lifted and hauled without extra steel in its top?"},
  "hauling": {kind: "gate", clause: "road rules (common practice)", asks: "Can a truck take one piece without an overweight permit?"},
} as const satisfies Readonly<Record<string, LimitInfo>>;

export type LimitName = keyof typeof LIMIT_INFO;

/** All limits in reading order. */
export const LIMITS = Object.keys(LIMIT_INFO) as readonly LimitName[];
/** Those that bound the load. */
export const LOAD_LIMITS: readonly LimitName[] = LIMITS.filter((name) => LIMIT_INFO[name].kind === "load");
/** Those that a member passes or not, whatever the load. */
export const GATES: readonly LimitName[] = LIMITS.filter((name) => LIMIT_INFO[name].kind === "gate");
/**
 * Those by which the trade handbook's load tables are made (the compressions from memory), with development and bearing:
 * these govern none of the printed cells, but short of the printed spans they stop a member before the others do.
 */
export const HANDBOOK_LIMITS: readonly LimitName[] = ["strength", "development", "shear", "service tension", "sustained compression", "total compression", "bearing"];

/** How a check ended. "out of range" means that the method does not cover the case, and says so. */
export type Verdict = "ok" | "near" | "fails" | "out of range";

/** One comparison of a demand with a capacity. */
export interface Check {
  readonly id: string;
  readonly label: string;
  readonly demand: number;
  readonly capacity: number;
  readonly unit: string;
  /** Whether the demand must stay below the capacity, or the given (`capacity`) must reach the least (`demand`). */
  readonly sense: "at most" | "at least";
  /** Demand over capacity; 1 is the limit. */
  readonly utilization: number;
  readonly verdict: Verdict;
  /** Standard and clause, or "common practice". */
  readonly clause: string;
  /** What it means for the building, in a sentence. */
  readonly message: string;
  /** Said in place of the verdict's own word, where there is a better one. */
  readonly word?: string;
  /** Set where a value that just meets the limit is as good as any. */
  readonly meetingIsEnough?: true;
}

/** A check as a reader meets it: what was found, and the limit that it is held against. */
export interface CheckNumbers {
  readonly found: number;
  readonly limit: number;
  /** The limit's side, as it stands before its number: "at most 12 kip", "at least 3 in". */
  readonly side: Check["sense"];
}

/**
 * What a check found and the limit for it, in one wording for both senses: of an upper limit the demand is what was
 * found, of a lower one the given. Undefined where no method covers the case, as no limit is known there.
 */
export function comparison({sense, demand, capacity, verdict}: Pick<Check, "sense" | "demand" | "capacity" | "verdict">): CheckNumbers | undefined {
  if (verdict === "out of range") return undefined;
  return sense === "at most" ? {found: demand, limit: capacity, side: sense} : {found: capacity, limit: demand, side: sense};
}

/** From this utilization on a check that holds is called near its limit. */
export const NEAR = 0.95;

type CheckText = Pick<Check, "id" | "label" | "unit" | "clause"> & {
  /** Said when it holds, and when it fails; words with numbers in them are made only where they are said. */
  readonly holds: string;
  readonly fails: string | (() => string);
  /** Where a value that just meets the limit is as good as any: least dimensions, not loads. */
  readonly meetingIsEnough?: boolean;
};

/** A check that a demand stays at or below a capacity. */
export function atMost(text: CheckText, demand: number, capacity: number): Check {
  return finish(text, "at most", demand, capacity);
}

/** A check that a given quantity reaches a least value: a seat's length, a ceiling's height. */
export function atLeast(text: CheckText, given: number, least: number): Check {
  return finish(text, "at least", least, given);
}

/** A check whose method does not cover the case. */
export function outOfRange(text: Omit<CheckText, "holds" | "fails" | "meetingIsEnough"> & {message: string}, demand: number, capacity: number): Check {
  return {id: text.id, label: text.label, unit: text.unit, clause: text.clause, message: text.message, sense: "at most", demand, capacity, utilization: utilizationOf(demand, capacity), verdict: "out of range"};
}

/** A limit that may be passed where a remedy, named in word and message, is built in: near, never ok. */
export function requires(text: Omit<CheckText, "holds" | "fails" | "meetingIsEnough"> & {message: string; word: string}, demand: number, capacity: number): Check {
  return {id: text.id, label: text.label, unit: text.unit, clause: text.clause, word: text.word, message: text.message, sense: "at most", demand, capacity, utilization: utilizationOf(demand, capacity), verdict: "near"};
}

function finish(text: CheckText, sense: Check["sense"], demand: number, capacity: number): Check {
  const utilization = utilizationOf(demand, capacity);
  const verdict: Verdict = beyondLimit(utilization) ? "fails" : utilization >= NEAR && !text.meetingIsEnough ? "near" : "ok";
  const message = verdict !== "fails" ? text.holds : typeof text.fails === "string" ? text.fails : text.fails();
  // Both written out: checks are made by the thousand, and a copy that grows by a field takes twice as long.
  return text.meetingIsEnough
    ? {id: text.id, label: text.label, sense, demand, capacity, unit: text.unit, utilization, verdict, clause: text.clause, message, meetingIsEnough: true}
    : {id: text.id, label: text.label, sense, demand, capacity, unit: text.unit, utilization, verdict, clause: text.clause, message};
}

/** Rounding in the last digit does not turn a design that meets a limit exactly into a failed one. */
const HAIR = 1e-9;

/** Whether a demand lies above its capacity: the one rule by which checks, searches and shown numbers tell that it fails. */
export function exceeds(demand: number, capacity: number): boolean {
  return beyondLimit(utilizationOf(demand, capacity));
}

function beyondLimit(utilization: number): boolean {
  return utilization > 1 + HAIR;
}

/** Largest utilization that is reported; what has no capacity at all is far beyond every limit. */
const BEYOND = 99;

/** Demand over capacity as a check has it: 0 where nothing is demanded, far beyond 1 where there is no capacity. */
export function utilizationOf(demand: number, capacity: number): number {
  if (demand <= 0) return demand <= capacity ? 0 : BEYOND;
  // Stryker disable next-line EqualityOperator: anything over nothing is beyond as well
  return capacity > 0 ? Math.min(BEYOND, demand / capacity) : BEYOND;
}

/** The worst verdict of several checks: what fails first, then what is out of range, then what is near. */
export function worst(checks: readonly Check[]): Verdict {
  let found: Verdict = "ok";
  for (const {verdict} of checks) {
    if (verdict === "fails") return verdict;
    if (verdict === "out of range" || (verdict === "near" && found === "ok")) found = verdict;
  }
  return found;
}

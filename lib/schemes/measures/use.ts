import type {Check} from "../../checks.js";

/** The greatest use of a part's limits, and the name of that check. */
export interface GreatestUse {
  readonly use: number | undefined;
  readonly check: string | undefined;
}

const NO_USE: GreatestUse = {use: undefined, check: undefined};

/**
 * The greatest share of a limit that a part takes up. Least dimensions, which a rule meets exactly, say nothing of how hard
 * a part works, and a limit that is passed with its remedy built in no longer limits: both are passed over unless they
 * fail. Where no method covers a part, the use is undefined and the check is the one that says so.
 */
export function greatestUse(checks: readonly Check[] | undefined): GreatestUse {
  let most: Check | undefined;
  for (const check of checks ?? []) {
    if (check.verdict === "out of range") return {use: undefined, check: check.label};
    if (check.verdict !== "fails" && (check.meetingIsEnough || check.word !== undefined)) continue;
    if (!most || check.utilization > most.utilization) most = check;
  }
  return most ? {use: most.utilization, check: most.label} : NO_USE;
}

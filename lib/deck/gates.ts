import type {Member} from "../member/member.js";
import {cellOf, type Cell} from "./cell.js";
import type {Criteria} from "./criteria.js";
import {WORKING_GATES, limitNamed, limitsOf, type Asked, type LimitName} from "./limits.js";
import type {Rules} from "./rules.js";

/** Whether a limit is a gate that a cell does not pass. */
export function shuts({use}: Asked, cell: Cell): boolean {
  // Stryker disable next-line EqualityOperator: to the last digit
  return use !== undefined && (use(cell) ?? 0) > 1 + 1e-9;
}

/** The gates that a member does not pass on a span, of those that count. */
export function failedGates(member: Member, spanFt: number, criteria: Criteria): LimitName[] {
  const cell = cellOf(member, spanFt, criteria);
  return limitsOf(criteria.limits).filter((limit) => shuts(limit, cell)).map(({name}) => name);
}

/** The gates of a search that a member does not pass on a span; see {@link WORKING_GATES}. */
export function failedWorkingGates(member: Member, spanFt: number, rules: Rules): LimitName[] {
  return failedGates(member, spanFt, {...rules, limits: WORKING_GATES});
}

/** How much of a gate a member uses, 1 being its limit; undefined where it asks nothing, and for limits on the load. */
export function gateUse(name: LimitName, member: Member, spanFt: number, rules: Rules): number | undefined {
  const limit = limitNamed(name);
  return limit.kind === "gate" ? limit.use(cellOf(member, spanFt, rules)) : undefined;
}

/** Why a deck that does not pass a gate of the search loses it, in a sentence. */
export function losesBy(name: LimitName, member: Member, spanFt: number, rules: Rules): string {
  const limit = limitNamed(name);
  // Stryker disable next-line ConditionalExpression: no limit on the load has such words
  return (limit.kind === "gate" && limit.loses?.(cellOf(member, spanFt, rules))) || limit.asks;
}

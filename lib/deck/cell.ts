import type {Member} from "../member/member.js";
import {prestressState, type PrestressState} from "../member/prestressState.js";
import {countsOf, type Counts, type Criteria} from "./criteria.js";

/** One cell of a load table: a member on a span under some criteria, as its limits ask about it. */
export interface Cell {
  readonly member: Member;
  readonly spanFt: number;
  readonly criteria: Criteria;
  readonly counts: Counts;
  /** Superimposed dead load, plf of member. */
  readonly deadPlf: number;
  readonly midspan: PrestressState;
}

/** A cell, with what each of its limits needs to know. */
export function cellOf(member: Member, spanFt: number, criteria: Criteria): Cell {
  const deadPlf = criteria.superimposedDeadPsf * member.widthFt;
  return {member, spanFt, criteria, counts: countsOf(criteria), deadPlf, midspan: prestressState(member, spanFt, 0.5, deadPlf)};
}

/** Prestress at a place of a cell's span; that of midspan is at hand. */
export function prestressAt({member, spanFt, deadPlf, midspan}: Cell, share: number): PrestressState {
  return share === midspan.share ? midspan : prestressState(member, spanFt, share, deadPlf);
}

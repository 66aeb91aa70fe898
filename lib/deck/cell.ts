import type {FlexuralStrength} from "../member/flexure.js";
import type {Member} from "../member/member.js";
import {prestressState, type PrestressState} from "../member/prestressState.js";
import {memberStrength} from "../member/strength.js";
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
  /** Strengths found so far; several limits ask for those of the same few places. */
  readonly strengths: {readonly share: number; readonly strength: FlexuralStrength}[];
}

/** A cell, with what each of its limits needs to know. */
export function cellOf(member: Member, spanFt: number, criteria: Criteria): Cell {
  const deadPlf = criteria.superimposedDeadPsf * member.widthFt;
  return {member, spanFt, criteria, counts: countsOf(criteria), deadPlf, midspan: prestressState(member, spanFt, 0.5, deadPlf), strengths: []};
}

/** Prestress at a place of a cell's span; that of midspan is at hand. */
export function prestressAt({member, spanFt, deadPlf, midspan}: Cell, share: number): PrestressState {
  return share === midspan.share ? midspan : prestressState(member, spanFt, share, deadPlf);
}

/** Strength in bending at a place of a cell's span, its strands fully developed there. */
export function strengthAt(cell: Cell, share: number): FlexuralStrength {
  for (const known of cell.strengths) if (known.share === share) return known.strength;
  const strength = memberStrength(cell.member, share, prestressAt(cell, share).losses.effectiveStressKsi);
  cell.strengths.push({share, strength});
  return strength;
}

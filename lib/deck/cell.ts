import {allowables, type Allowables} from "../member/allowables.js";
import {camber, type Camber} from "../member/camber.js";
import type {FlexuralStrength} from "../member/flexure.js";
import type {Member} from "../member/member.js";
import {prestressState, type PrestressState} from "../member/prestressState.js";
import {memberStrength} from "../member/strength.js";
import type {FiberStresses} from "../member/stress.js";
import type {Rules} from "./rules.js";

/** One cell of a load table: a member on a span under some rules, as its limits ask about it. */
export interface Cell {
  readonly member: Member;
  readonly spanFt: number;
  readonly rules: Rules;
  /** Superimposed dead load, plf of member. */
  readonly deadPlf: number;
  readonly midspan: PrestressState;
  /** What several limits ask for, kept when the first of them has. */
  readonly strengths: {readonly share: number; readonly strength: FlexuralStrength}[];
  places: readonly ServicePlace[] | undefined;
  allowed: Allowables | undefined;
  shape: Camber | undefined;
}

/** A place along the span in service, before the superimposed load. */
export interface ServicePlace {
  readonly state: PrestressState;
  /** Under prestress, member and topping. */
  readonly own: FiberStresses;
  /** Moment of one psf, kip-in. */
  readonly perPsf: number;
}

// Stryker disable ArrayDeclaration,ConditionalExpression,ObjectLiteral: what a cell keeps, it keeps to be quick

/** A cell, with what each of its limits needs to know. */
export function cellOf(member: Member, spanFt: number, rules: Rules): Cell {
  const deadPlf = rules.superimposedDeadPsf * member.widthFt;
  return {
    member, spanFt, rules, deadPlf, midspan: prestressState(member, spanFt, 0.5, deadPlf),
    strengths: [], places: undefined, allowed: undefined, shape: undefined,
  };
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

// Stryker restore all

/** The stresses that a cell's member is allowed. */
export function stressesAllowed(cell: Cell): Allowables {
  return cell.allowed ??= allowables(cell.member, cell.rules.tensionClass);
}

/** Camber of a cell's member under its dead load, set at the usual age. */
export function camberOf(cell: Cell): Camber {
  return cell.shape ??= camber(cell.member, cell.spanFt, cell.deadPlf);
}

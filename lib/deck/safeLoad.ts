import {requireNumber, type NumberRule} from "../check.js";
import {fieldOf} from "../design/fields.js";
import type {Member} from "../member/member.js";
import {cellOf, type Cell} from "./cell.js";
import type {Criteria} from "./criteria.js";
import {shuts} from "./gates.js";
import {LIMITS, limitsOf, type Asked, type LimitName} from "./limits.js";

/** The safe superimposed service load of a member on a span. */
export interface SafeLoad {
  readonly spanFt: number;
  /** Least of the limits, psf; 0 where one of them allows no load: not always because the member could not carry itself. */
  readonly safeLoadPsf: number;
  readonly governs: LimitName;
  /**
   * Superimposed load that each limit allows, psf; negative where dead load alone exceeds it. A limit that no load can
   * reach is absent: sustained compression where none of the live load stays, or a gate that the member passes. One
   * that it does not pass allows 0.
   */
  readonly limitsPsf: Limits;
}

/** Loads by limit. */
export type Limits = Readonly<Partial<Record<LimitName, number>>>;

const SPAN = fieldOf("bay.spanFt");
/** Spans that the methods are meant for, ft: those that a design may have. */
export const SPAN_RANGE_FT = {min: SPAN.min, max: SPAN.max};
const SPAN_RULE: NumberRule = {path: "spanFt", label: "span", unit: "ft", ...SPAN_RANGE_FT};

/**
 * The safe superimposed load, psf of floor: the load beyond the member's own weight and topping at which the first of
 * the criteria's limits is reached. Each is linear in the load between breaks, so each has a closed form.
 *
 * @throws InputError if the span is out of range
 */
export function safeLoad(member: Member, spanFt: number, criteria: Criteria): SafeLoad {
  requireSpan(spanFt);
  return safeLoadOf(cellOf(member, spanFt, criteria), criteria.limits);
}

/** The safe load of a cell by the limits that count. */
export function safeLoadOf(cell: Cell, limits: readonly LimitName[]): SafeLoad {
  const limitsPsf: Partial<Record<LimitName, number>> = {};
  let governs = LIMITS[0] as LimitName;
  let leastPsf = Infinity;
  for (const limit of limitsOf(limits)) {
    const psf = allowedPsf(limit, cell);
    if (psf === undefined) continue;
    limitsPsf[limit.name] = psf;
    if (psf < leastPsf) {
      leastPsf = psf;
      governs = limit.name;
    }
  }
  return {spanFt: cell.spanFt, safeLoadPsf: reported(leastPsf), governs, limitsPsf};
}

/** The load that a limit allows; none is allowed by a gate that is not passed. */
export function allowedPsf(limit: Asked, cell: Cell): number | undefined {
  const {reached} = limit;
  if (reached !== undefined) return reached(cell)?.psf;
  return shuts(limit, cell) ? 0 : undefined;
}

/** Throws InputError where the methods do not cover a span, ft. */
export function requireSpan(spanFt: number): void {
  requireNumber(spanFt, SPAN_RULE);
}

/** Load that is reported where no limit counts, psf: no floor carries as much. */
const MOST_PSF = 9999;

/** The safe load where the least of the limits is given: not negative. */
export function reported(leastPsf: number): number {
  return Math.min(MOST_PSF, Math.max(0, leastPsf));
}

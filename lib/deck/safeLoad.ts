import {requireNumber, type NumberRule} from "../check.js";
import {fieldOf} from "../design/fields.js";
import type {Member} from "../member/member.js";
import {cellOf} from "./cell.js";
import type {Criteria} from "./criteria.js";
import {failedGates} from "./gates.js";
import type {LimitName} from "./limits.js";
import {note, type LoadsByLimit, type LoadsFound} from "./loadOf.js";
import {serviceLimits, stiffnessLimits} from "./serviceLimits.js";
import {bearingLimit, contactLimit, shearLimit} from "./shearLimits.js";
import {developmentLimit, minimumStrengthLimit, strengthLimit} from "./strengthLimits.js";

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
export type Limits = Readonly<LoadsByLimit>;

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
  requireNumber(spanFt, SPAN_RULE);
  const cell = cellOf(member, spanFt, criteria);
  const {counts} = cell;
  const found: LoadsFound = {limitsPsf: {}, governs: "strength", leastPsf: Infinity};
  if (counts.strength) note(found, "strength", strengthLimit(cell));
  if (counts["minimum strength"]) note(found, "minimum strength", minimumStrengthLimit(cell));
  if (counts.development) note(found, "development", developmentLimit(cell));
  if (counts.shear) note(found, "shear", shearLimit(cell));
  if (counts["horizontal shear"]) note(found, "horizontal shear", contactLimit(cell));
  if (counts.bearing) note(found, "bearing", bearingLimit(cell));
  serviceLimits(cell, found);
  if (counts.deflection || counts.camber) stiffnessLimits(cell, found);
  if (counts.anyGate) for (const gate of failedGates(member, spanFt, criteria)) note(found, gate, 0);
  return {spanFt, safeLoadPsf: Math.min(MOST_PSF, Math.max(0, found.leastPsf)), governs: found.governs, limitsPsf: found.limitsPsf};
}

/** Load that is told where no limit counts, psf: no floor carries as much. */
const MOST_PSF = 9999;

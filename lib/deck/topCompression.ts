import {given, type Step, type StepValue} from "../step.js";
import type {Cell, ServicePlace} from "./cell.js";
import type {MostPressed} from "./compression.js";
import type {Reached} from "./limit.js";
import {UNIT_MOMENT, common, type LimitCase} from "./limitSteps.js";
import {lastingPsf} from "./loadOf.js";
import {ownStressSteps} from "./ownStressSteps.js";
import {servicePlaces} from "./servicePlaces.js";

/** Where the top is compressed as hard as is allowed: in the member, or in its topping. */
export interface Squeezed extends Reached {
  readonly place: ServicePlace;
  readonly inTopping: boolean;
  /** The load that presses, psf: all of it, or the part that lasts. */
  readonly pressingPsf: number;
}

/**
 * The first place at which the top of the member, or of its topping, reaches a compression; undefined where no load
 * brings it there.
 *
 * @param mostKsi - what the member's concrete is allowed
 * @param toppingKsi - what the topping's is; undefined without topping
 * @param lasting - whether only what lasts of the load presses
 */
export function squeezed(cell: Cell, mostKsi: number, toppingKsi: number | undefined, lasting: boolean): Squeezed | undefined {
  const {full, composite} = cell.member;
  const armIn = composite ? composite.interfaceAboveCentroidIn : full.ytIn;
  const toppingPerKsi = composite ? composite.modularRatio / composite.stIn3 : 0;
  const places = servicePlaces(cell);
  let at = places[0] as ServicePlace;
  // Stryker disable next-line BooleanLiteral: some load always presses the member or its topping too hard
  let inTopping = false;
  let pressingPsf = Infinity;
  for (const place of places) {
    // Stress of the member's top by one psf of superimposed load.
    const perPsfKsi = (place.perPsf * armIn) / full.inertiaIn4;
    // Stryker disable next-line EqualityOperator: over nothing it is without limit as well
    const memberPsf = perPsfKsi > 0 ? (mostKsi - place.own.topKsi) / perPsfKsi : Infinity;
    const toppingPsf = toppingKsi ? toppingKsi / (toppingPerKsi * place.perPsf) : Infinity;
    const leastPsf = Math.min(memberPsf, toppingPsf);
    // Stryker disable next-line EqualityOperator: of two alike either does
    if (leastPsf < pressingPsf) {
      pressingPsf = leastPsf;
      at = place;
      // Stryker disable next-line EqualityOperator: of two alike either does
      inTopping = toppingPsf < memberPsf;
    }
  }
  const psf = lasting ? lastingPsf(pressingPsf, cell.rules) : pressingPsf;
  return psf === undefined ? undefined : {psf, share: at.state.share, place: at, inTopping, pressingPsf};
}

/**
 * How that load is computed.
 *
 * @param part - of the concrete's strength that is allowed
 * @param last - the last step from the load's expression and its values
 */
export function squeezedSteps(limit: LimitCase, {share, place, inTopping}: Squeezed, part: number, last: (expression: string, values: Step["values"]) => Step): Step[] {
  const {member} = limit.cell;
  const {full, composite} = member;
  const {b, L, s} = common(limit, share);
  // Stryker disable OptionalChaining: what is in the topping has one
  const strengthPsi = inTopping ? (member.topping?.concrete.strengthPsi ?? 0) : member.concrete.strengthPsi;
  const f_c: StepValue = given((part * strengthPsi) / 1000, "ksi", "compression that is allowed");
  const allowed: Step = {
    symbol: "f_c", label: `compression that the ${inTopping ? "topping" : "member"} is allowed`, expression: `${part} * f_cprime / 1000`,
    values: {f_cprime: given(strengthPsi, "psi", "concrete strength")}, result: f_c.value, unit: "ksi", source: "ACI 318-19 24.5.4.1",
  };
  if (inTopping) {
    return [allowed, last(`f_c * S_tt / (n * ${UNIT_MOMENT})`, {
      f_c, S_tt: given(composite?.stIn3 ?? 0, "in3", "modulus at the topping's top"), n: given(composite?.modularRatio ?? 1, "", "modulus of the topping over the member's"), b, L, s,
    })];
  }
  // Stryker restore OptionalChaining
  return [...ownStressSteps(limit, place, "top"), allowed, last(`(f_c - f_o) * I_f / (y * ${UNIT_MOMENT})`, {
    f_c, f_o: given(place.own.topKsi, "ksi", "stress before the superimposed load"), I_f: given(full.inertiaIn4, "in4", "second moment of the full section"),
    y: given(composite ? composite.interfaceAboveCentroidIn : full.ytIn, "in", "top of the member above the centroid"), b, L, s,
  })];
}

/** The place that is compressed most, in words. */
export function pressedWords({face, share}: MostPressed, spanFt: number): string {
  return `${face}, ${share === 0.5 ? "at midspan" : `${(share * spanFt).toFixed(1)} ft from the ends`}`;
}

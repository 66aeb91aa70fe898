import {atMost} from "../../checks.js";
import {sag} from "../../member/camber.js";
import {liveLoadForSagPlf} from "../../member/deflection.js";
import {LASTING_MULTIPLIER, SAG_LIMITS, allowedSagIn, creepSagIn} from "../../member/sagLimit.js";
import {given, type Step} from "../../step.js";
import {IN_PER_FT} from "../../units.js";
import {camberOf, type Cell} from "../cell.js";
import type {LoadLimit, Reached} from "../limit.js";
import {allows, common} from "../limitSteps.js";

interface Here extends Reached {
  readonly allowedIn: number;
  /** Sag that creep still brings under dead load, in; 0 where only the live load's counts. */
  readonly creepIn: number;
  /** Immediate sag left to the live load, in, and the load that sags so far, plf; 0 where creep alone uses the limit up. */
  readonly liveIn: number;
  readonly livePlf: number;
}

/** It sags as far as what is built on it can tolerate. */
export const deflectionLimit: LoadLimit<"deflection", Here> = {
  name: "deflection", kind: "load",
  clause: "ACI 318-19 24.2.2, 24.2.3.9",
  asks: "Does it deflect more than what is built on it can tolerate?",
  look: {letter: "F", line: "dashes far apart", dash: "5 6", color: "accent"},

  reached(cell): Here {
    const {member, spanFt, rules: {sagLimit, superimposedDeadPsf: deadPsf, sustainedLiveShare}, deadPlf, midspan} = cell;
    const attached = SAG_LIMITS[sagLimit].counts === "attached";
    const allowedIn = allowedSagIn(sagLimit, spanFt);
    const creepIn = attached ? creepSagIn(camberOf(cell)) : 0;
    const roomIn = allowedIn - creepIn;
    // Where creep under dead load alone uses the limit up, dead load has to go until it does not.
    // Stryker disable next-line EqualityOperator: with no room left either way leaves the dead load alone
    if (roomIn <= 0) return {psf: deadPsf + roomIn / ((LASTING_MULTIPLIER - 1) * sagPerPsfIn(cell)), share: 0.5, allowedIn, creepIn, liveIn: 0, livePlf: 0};
    // Creep multiplies the lasting part of the sag; the whole sag may be cracked, so its share is taken of that.
    const liveIn = roomIn / (1 + (LASTING_MULTIPLIER - 1) * (attached ? sustainedLiveShare : 0));
    const livePlf = liveLoadForSagPlf(member, spanFt, midspan, deadPlf, liveIn);
    return {psf: deadPsf + livePlf / member.widthFt, share: 0.5, allowedIn, creepIn, liveIn, livePlf};
  },

  checks({rules: {sagLimit}}, {service}) {
    const attached = SAG_LIMITS[sagLimit].counts === "attached";
    return [atMost({
      id: "deck sag", label: attached ? `Movement after partitions are in, ${sagLimit}` : `Deflection under live load, ${sagLimit}`, unit: "in", clause: deflectionLimit.clause,
      holds: service.liveDeflection.uncrackedShare < 1 ? "It cracks under part of the load and still deflects little enough." : "It stays uncracked and deflects little enough.",
      fails: "It deflects more than what is built on it can tolerate: a deeper member or a shorter span.",
    }, service.movementIn, service.allowedMovementIn)];
  },

  steps(limit, {allowedIn, creepIn, liveIn, livePlf}) {
    const {cell} = limit;
    const {spanOver, counts} = SAG_LIMITS[cell.rules.sagLimit];
    const attached = counts === "attached";
    const {b, L, w_sd} = common(limit);
    const a = given(allowedIn, "in", "movement that is allowed");
    const c = given(creepIn, "in", "sag that creep still brings");
    const k = given(cell.rules.sustainedLiveShare, "", "share of the live load that stays");
    const allowed: Step = {symbol: "a", label: "movement that is allowed", expression: `12 * L / ${spanOver}`, values: {L}, result: allowedIn, unit: "in", source: "ACI 318-19 Table 24.2.2"};
    const steps = attached ? [allowed, creepStep(cell, creepIn)] : [allowed];
    // Stryker disable next-line EqualityOperator: creep meets no limit to the last digit
    if (allowedIn <= creepIn) {
      return [...steps, allows(limit, `w_sd + (a - c) / (${LASTING_MULTIPLIER - 1} * k)`, {
        w_sd, a, c, k: given(sagPerPsfIn(cell), "in", "immediate sag by one psf"),
      }, {note: "Creep under dead load alone uses the limit up."})];
    }
    return [
      ...steps,
      {
        symbol: "d_L", label: "immediate sag that is left to live load", expression: attached ? `(a - c) / (1 + ${LASTING_MULTIPLIER - 1} * k)` : "a",
        values: attached ? {a, c, k} : {a}, result: liveIn, unit: "in", source: "definition",
      },
      allows(limit, "w_sd + w_L / b", {w_sd, w_L: given(livePlf, "plf", "live load that sags so far"), b}, {
        note: "Up to cracking the whole section bends, beyond it the cracked one (ACI 318-19 24.2.3.9).",
      }),
    ];
  },
};

function creepStep(cell: Cell, creepIn: number): Step {
  const {toppedIn, superimposedIn, longTermIn} = camberOf(cell);
  return {
    symbol: "c", label: "sag that creep still brings under dead load", expression: "max(0, d_3 + d_s - d_4)",
    values: {
      d_3: given(toppedIn, "in", "camber right after topping"), d_s: given(superimposedIn, "in", "sag under superimposed dead load"),
      d_4: given(longTermIn, "in", "long-term camber"),
    },
    result: creepIn, unit: "in", source: "Martin 1977, multipliers",
  };
}

/** Immediate sag of the whole section under one psf, in. */
export function sagPerPsfIn({member, spanFt}: Cell): number {
  return sag(member.widthFt, spanFt * IN_PER_FT, member.modulusKsi, member.full.inertiaIn4);
}

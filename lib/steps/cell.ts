import type {Criteria} from "../deck/criteria.js";
import {gateUse} from "../deck/gates.js";
import {GATES, LIMITS, type LimitName} from "../deck/limits.js";
import {safeLoad} from "../deck/safeLoad.js";
import type {Member} from "../member/member.js";
import {gateLimit, gateMeasure} from "./limitGates.js";
import {camberLimit, compressionLimit, crackLimit, sagLimit, tensionLimit} from "./limitService.js";
import type {LimitCase} from "./limitSteps.js";
import {bearingLimit, contactLimit, developmentLimit, minimumStrengthLimit, shearLimit, strengthLimit} from "./limitStrength.js";
import {given, type Step, type Working} from "../step.js";

/** How each limit on the load is worked out. */
const OF_LOAD: Partial<Record<LimitName, (limit: LimitCase) => Step[]>> = {
  "strength": strengthLimit,
  "development": developmentLimit,
  "minimum strength": minimumStrengthLimit,
  "shear": shearLimit,
  "horizontal shear": contactLimit,
  "service tension": tensionLimit,
  "crack control": crackLimit,
  "sustained compression": compressionLimit,
  "total compression": compressionLimit,
  "deflection": sagLimit,
  "camber": camberLimit,
  "bearing": bearingLimit,
};

/**
 * The safe superimposed load of any member on any span by any criteria: the limit that governs, step by step, and the
 * least of all that count.
 *
 * @param title - what is worked out; without it the load alone is named
 * @throws InputError if the span is out of range
 */
export function cellWorking(member: Member, spanFt: number, criteria: Criteria, title = "Safe superimposed load"): Working {
  const {safeLoadPsf, governs, limitsPsf} = safeLoad(member, spanFt, criteria);
  const found = LIMITS.flatMap((name) => {
    const psf = limitsPsf[name];
    return psf === undefined ? [] : [{name, psf}];
  });
  const index = found.findIndex(({name}) => name === governs);
  const governing = found[index];
  const steps = governing ? limitSteps({member, spanFt, criteria, ...governing, symbol: `w_${index + 1}`}) : [];
  return {title, steps: [...steps, leastStep(found, governs, safeLoadPsf)]};
}

/**
 * One limit on a member, step by step, whether it governs or not; without steps where it asks nothing here.
 *
 * @throws InputError if the span is out of range
 */
export function limitWorking(member: Member, spanFt: number, criteria: Criteria, name: LimitName): Working {
  const title = `${name.charAt(0).toUpperCase()}${name.slice(1)}`;
  const limit: LimitCase = {member, spanFt, criteria: {...criteria, limits: [name]}, name, symbol: "w_1", psf: 0};
  if (GATES.includes(name)) return {title, steps: gateUse(name, member, spanFt, criteria) === undefined ? [] : gateMeasure(limit)};
  const psf = safeLoad(member, spanFt, limit.criteria).limitsPsf[name];
  return {title, steps: psf === undefined ? [] : limitSteps({...limit, psf})};
}

/** The steps of one limit. */
function limitSteps(limit: LimitCase): Step[] {
  return GATES.includes(limit.name) ? gateLimit(limit) : (OF_LOAD[limit.name]?.(limit) ?? []);
}

function leastStep(found: readonly {readonly name: LimitName; readonly psf: number}[], governs: LimitName, safeLoadPsf: number): Step {
  const symbols = found.map((_, i) => `w_${i + 1}`);
  const least = symbols.length > 1 ? `min(${symbols.join(", ")})` : symbols[0];
  // Where nothing bounds the load, or what does lies beyond any floor, the load that is told is a round number.
  const bounded = found.some(({psf}) => psf <= safeLoadPsf || psf < 0);
  return {
    symbol: "w_safe", label: `safe superimposed load; ${governs} governs`,
    expression: bounded ? `max(0, ${least})` : String(safeLoadPsf),
    values: bounded ? Object.fromEntries(found.map(({name, psf}, i) => [`w_${i + 1}`, given(psf, "psf", `load that ${name} allows`)])) : {},
    result: safeLoadPsf, unit: "psf", source: "least of the limits", note: bounded ? `${found.map(({name}, i) => `${symbols[i]?.replace("_", "")} ${name}`).join(", ")}.` : "None of the limits that count bounds the load.",
  };
}

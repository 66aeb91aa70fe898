import {cellOf, type Cell} from "../deck/cell.js";
import type {Criteria} from "../deck/criteria.js";
import type {Gate, LoadLimit, Reached} from "../deck/limit.js";
import {allows, type LimitCase} from "../deck/limitSteps.js";
import {LIMITS, limitNamed, type LimitName} from "../deck/limits.js";
import {requireSpan, safeLoad} from "../deck/safeLoad.js";
import type {Member} from "../member/member.js";
import {given, type Step, type Working} from "../step.js";

/**
 * The safe superimposed load of any member on any span by any criteria: the limit that governs, step by step, and the
 * least of all that count.
 *
 * @param title - what is computed; without it the load alone is named
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
  const steps = governing ? governingSteps(cellOf(member, spanFt, criteria), governs, `w_${index + 1}`) : [];
  return {title, steps: [...steps, leastStep(found, governs, safeLoadPsf)]};
}

/**
 * One limit on a member, step by step, whether it governs or not; without steps where it asks nothing here.
 *
 * @throws InputError if the span is out of range
 */
export function limitWorking(member: Member, spanFt: number, criteria: Criteria, name: LimitName): Working {
  requireSpan(spanFt);
  const title = `${name.charAt(0).toUpperCase()}${name.slice(1)}`;
  const cell = cellOf(member, spanFt, criteria);
  const limit = limitNamed(name);
  if (limit.kind === "gate") return {title, steps: measured(limit, cell)};
  return {title, steps: loadSteps(limit, cell, "w_1")};
}

/** The steps of the limit that governs: what it allows, or by how much a gate is not passed, and that no load is left. */
function governingSteps(cell: Cell, name: LimitName, symbol: string): readonly Step[] {
  const limit = limitNamed(name);
  return limit.kind === "load" ? loadSteps(limit, cell, symbol) : gateSteps(limit, cell, symbol);
}

/** From the place where a limit is reached first to the load that it allows; none where no load reaches it. */
function loadSteps(limit: LoadLimit, cell: Cell, symbol: string): readonly Step[] {
  const at = limit.reached(cell);
  return at ? limit.steps(caseOf(limit, cell, symbol, at), at) : [];
}

/** What a gate measures, passed or not; nothing where it asks nothing. */
function measured(limit: Gate, cell: Cell): readonly Step[] {
  const use = limit.use(cell);
  return use === undefined ? [] : [limit.measure(cell, use)];
}

function gateSteps(limit: Gate, cell: Cell, symbol: string): readonly Step[] {
  return [...measured(limit, cell), allows(caseOf(limit, cell, symbol, {psf: 0}), "0", {}, {label: `load that is left where ${limit.name} is not passed`})];
}

function caseOf({name, clause}: LoadLimit | Gate, cell: Cell, symbol: string, {psf}: Pick<Reached, "psf">): LimitCase {
  return {cell, name, clause, symbol, psf};
}

function leastStep(found: readonly {readonly name: LimitName; readonly psf: number}[], governs: LimitName, safeLoadPsf: number): Step {
  const symbols = found.map((_, i) => `w_${i + 1}`);
  const least = symbols.length > 1 ? `min(${symbols.join(", ")})` : symbols[0];
  // Where nothing bounds the load, or what does lies beyond any floor, the load that is reported is a round number.
  const bounded = found.some(({psf}) => psf <= safeLoadPsf);
  return {
    symbol: "w_safe", label: `safe superimposed load; ${governs} governs`,
    expression: bounded ? `max(0, ${least})` : String(safeLoadPsf),
    values: bounded ? Object.fromEntries(found.map(({name, psf}, i) => [`w_${i + 1}`, given(psf, "psf", `load that ${name} allows`)])) : {},
    result: safeLoadPsf, unit: "psf", source: "least of the limits", note: bounded ? `${found.map(({name}, i) => `w${i + 1} ${name}`).join(", ")}.` : "None of the limits that count bounds the load.",
  };
}

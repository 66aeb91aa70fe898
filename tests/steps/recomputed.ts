import {evaluate as evaluateExpression} from "mathjs";
import {expect} from "vitest";
import type {Step, Working} from "../../lib/steps/step.js";

/** What the expression on the page gives, by a mathematics library that knows nothing of the kit. */
function recomputed(step: Step): number {
  const scope = Object.fromEntries(Object.entries(step.values).map(([name, {value}]) => [name, value]));
  return evaluateExpression(step.expression, scope) as number;
}

/** Wants every step's expression to give the code's number; returns how many steps there were. */
export function checkWorking(working: Working): number {
  for (const step of working.steps) {
    const value = recomputed(step);
    const scale = Math.max(Math.abs(step.result), 1e-12);
    expect(Math.abs(value - step.result) / scale, `${working.title}: ${step.symbol} = ${step.expression} gives ${value}, the code ${step.result}`).toBeLessThan(1e-9);
  }
  return working.steps.length;
}

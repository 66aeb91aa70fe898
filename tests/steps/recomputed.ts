import {compile, type EvalFunction} from "mathjs";
import {expect} from "vitest";
import type {Step, Working} from "../../lib/step.js";

/** Expressions as they were read once; many designs share them. */
const READ = new Map<string, EvalFunction>();

/** What the expression on the page gives, by a mathematics library that knows nothing of the kit. */
function recomputed(step: Step): number {
  const read = READ.get(step.expression) ?? compile(step.expression);
  READ.set(step.expression, read);
  const scope = Object.fromEntries(Object.entries(step.values).map(([name, {value}]) => [name, value]));
  return read.evaluate(scope) as number;
}

/** Names that an expression takes values for; every expression is read once. */
const NAMES = new Map<string, ReadonlySet<string>>();
function namesIn(expression: string): ReadonlySet<string> {
  const names = NAMES.get(expression) ?? new Set(expression.match(/[A-Za-z_]\w*/g));
  NAMES.set(expression, names);
  return names;
}

/** Wants every step's expression to give the code's number, and to take each of its values; returns how many steps there were. */
export function checkWorking(working: Working): number {
  for (const step of working.steps) {
    for (const name of Object.keys(step.values)) {
      if (!namesIn(step.expression).has(name)) expect.fail(`${working.title}: ${step.symbol} = ${step.expression} takes no ${name}`);
    }
    const value = recomputed(step);
    const scale = Math.max(Math.abs(step.result), 1e-12);
    // Ten thousands of steps: what tells of one is written only where it is wrong.
    if (Math.abs(value - step.result) / scale < 1e-9) continue;
    expect.fail(`${working.title}: ${step.symbol} = ${step.expression} gives ${value}, the code ${step.result}`);
  }
  return working.steps.length;
}

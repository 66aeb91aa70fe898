import type {Answer, Earlier, Item, NumberPart, ExercisePart, Slip, Tolerance} from "./item.js";
import type {Step, Working} from "../step.js";
import {measureText, numberText} from "./prose.js";
import type {UnitSystem} from "../reader/system.js";

/** Keys by the parts that they belong to. */
const KEYS = new WeakMap<Item["parts"], readonly Answer[]>();

/** The key: the right answer to each part, each from those before it. */
export function keysOf({parts}: Pick<Item, "parts">): readonly Answer[] {
  const known = KEYS.get(parts);
  if (known) return known;
  const keys: Answer[] = [];
  for (const part of parts) keys.push(part.key([...keys]));
  KEYS.set(parts, keys);
  return keys;
}

/** How far an answer may be off, in the part's unit. */
export function toleranceOf({tolerance}: Pick<NumberPart, "tolerance">, key: number): number {
  return "percent" in tolerance ? (Math.abs(key) * tolerance.percent) / 100 : tolerance.within;
}

/** The tolerance in words: "to within 2 %", "to within 0.5 in", "exactly". */
export function toleranceWords(tolerance: Tolerance, unit: string, system: UnitSystem = "US"): string {
  if ("percent" in tolerance) return `to within ${numberText(tolerance.percent)} %`;
  return tolerance.within === 0 ? "exactly" : `to within ${measureText({value: tolerance.within, unit}, system)}`;
}

/** How many tolerances a slip must lie off the key, and off the slips before it, to be told apart. */
const APART = {key: 1.5, slip: 0.5} as const;

/**
 * The usual slips of a part that can be told: where these numbers make a slip come to the right answer, or to the same as
 * a slip before it, it is left out.
 */
export function slipsOf(part: NumberPart, earlier: Earlier): Slip[] {
  const key = part.key(earlier);
  const told: Slip[] = [];
  for (const slip of part.slips(earlier)) {
    const apart = (value: number, times: number) => Math.abs(slip.value - value) > Math.max(times * toleranceOf(part, value), 1e-6 * Math.abs(value));
    if (Number.isFinite(slip.value) && apart(key, APART.key) && told.every(({value}) => apart(value, APART.slip))) told.push(slip);
  }
  return told;
}

/** A worked step with its numbers withheld. */
export interface Hint {
  readonly symbol: string;
  readonly label: string;
  readonly expression: string;
  /** What each symbol stands for. */
  readonly where: readonly {readonly symbol: string; readonly label: string; readonly unit: string}[];
  readonly unit: string;
  readonly source: string;
}

/** Hints to a part: its worked steps without numbers, one after the other. */
export function hintsOf(part: ExercisePart, earlier: Earlier): Hint[] {
  return part.working(earlier).steps.map(({symbol, label, expression, values, unit, source}) => ({
    symbol, label, expression, unit, source,
    where: Object.entries(values).map(([name, value]) => ({symbol: name, label: value.label, unit: value.unit})),
  }));
}

/** A working of one step. */
export function oneStep(title: string, step: Step): Working {
  return {title, steps: [step]};
}

/** No steps: an answer that is read, not computed. */
export const READ_OFF: Working = {title: "Read it off", steps: []};

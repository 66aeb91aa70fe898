import type {Catalog} from "../catalog.js";
import type {Check} from "../checks.js";
import {withValues} from "../design/edit.js";
import type {Design} from "../design/design.js";
import {FIELDS, fieldAt} from "../design/fields.js";
import {valueAt} from "../design/plain.js";
import {InputError} from "../errors.js";

/** What a failed check says of itself, as a move reads it. */
export interface Told {
  readonly check: Check;
  /** The words of its message that name the remedy, with what their pattern found in them. */
  readonly said: RegExpExecArray;
  readonly catalog: Catalog;
}

/** A design changed in one direction, step by step farther; one that a field does not allow is undefined. */
export interface Way {
  readonly steps: number;
  /** @param step - from 1 to {@link steps} */
  at(step: number): Design | undefined;
}

/** The ways in which a design can be changed by one remedy; none where it asks nothing of this design. */
export type Move = (design: Design, told: Told) => readonly Way[];

/** What can be made of a design with some values; undefined where they cannot be. */
export function made(design: Design, values: Readonly<Record<string, unknown>>): Design | undefined {
  return allowed(() => withValues(design, values));
}

/** What some work makes; undefined where the input is refused. */
export function allowed<T>(work: () => T): T | undefined {
  try {
    return work();
  } catch (problem) {
    if (problem instanceof InputError) return undefined;
    throw problem;
  }
}

/** A way of one step. */
export const single = (changed: Design | undefined): readonly Way[] => (changed ? [{steps: 1, at: () => changed}] : []);

const HAIR = 1e-9;

/** A number moved by the steps of its control to an end of its range; a value between two steps goes to the next one first. */
function toward(path: string, end: "min" | "max"): Move {
  const field = fieldAt(path);
  if (field?.kind !== "number") throw new Error(`${path} is not a number`);
  return (design) => numberWay(design, path, field[end]);
}

/** The way of a number by the steps of its control to another value, which is its last. */
export function numberWay(design: Design, path: string, to: number): readonly Way[] {
  const field = fieldAt(path);
  const from = valueAt(design, path);
  if (field?.kind !== "number" || typeof from !== "number") return [];
  const {step} = field;
  const sign = to > from ? 1 : -1;
  const start = sign * Math.floor((sign * from) / step + HAIR);
  const steps = Math.ceil((sign * (to - start * step)) / step - HAIR);
  if (steps <= 0) return [];
  const valueOf = (count: number) => (count === steps ? to : Number(((start + sign * count) * step).toFixed(6)));
  return [{steps, at: (count) => made(design, {[path]: valueOf(count)})}];
}

/** A number made larger, to the end of its range. */
export const more = (path: string): Move => toward(path, "max");
/** A number made smaller, to the end of its range. */
export const less = (path: string): Move => toward(path, "min");

/** A value set. */
export const set = (path: string, value: unknown): Move => (design) => (valueAt(design, path) === value ? [] : single(made(design, {[path]: value})));

/** Any other value of a choice, but for one that only leaves the part out. */
export const other = (path: string, leavesOut?: string): Move => {
  const field = FIELDS[path];
  if (field?.kind !== "choice") throw new Error(`${path} is not a choice`);
  return (design, told) => Object.keys(field.choices).filter((choice) => choice !== leavesOut).flatMap((choice) => set(path, choice)(design, told));
};

/** The values of a choice that stand after the design's own in its list, one after the other; with `back` those before it. */
function along(path: string, back: boolean): Move {
  const field = FIELDS[path];
  if (field?.kind !== "choice") throw new Error(`${path} is not a choice`);
  const choices = back ? Object.keys(field.choices).reverse() : Object.keys(field.choices);
  return (design) => {
    const left = choices.slice(choices.indexOf(String(valueAt(design, path))) + 1);
    return left.length > 0 ? [{steps: left.length, at: (step) => made(design, {[path]: left[step - 1]})}] : [];
  };
}

/** The next values of a choice whose list ascends. */
export const larger = (path: string): Move => along(path, false);
/** The values before the design's own. */
export const smaller = (path: string): Move => along(path, true);

/** A number set to one of those that the message tells. */
export const toldNumber = (path: string): Move => (design, words) => numbersIn(words).flatMap((value) => set(path, value)(design, words));

/** The numbers that the words of a remedy tell: "24 or 36". */
export function numbersIn({said}: Told): number[] {
  return (said[1] ?? "").split(" or ").map(Number);
}

/** One move or another. */
export const either = (...moves: readonly Move[]): Move => (design, words) => moves.flatMap((move) => move(design, words));

/** Several moves at once, each as far along its way as the others. */
export const together = (...moves: readonly Move[]): Move => (design, words) => allAlong(design, moves.map((move) => (changed) => move(changed, words)));

/** Several ways to change a design gone at once, the first of each with the first of the others, and so on. */
export function allAlong(design: Design, moves: readonly ((design: Design) => readonly Way[])[]): readonly Way[] {
  const found = moves.map((move) => move(design)).filter((ways) => ways.length > 0);
  return Array.from({length: Math.max(0, ...found.map((ways) => ways.length))}, (_, i) => {
    const steps = Math.max(...found.map((ways) => (ways[Math.min(i, ways.length - 1)] as Way).steps));
    return {
      steps,
      at: (step) => moves.reduce((changed, move) => {
        const ways = move(changed);
        const way = ways[Math.min(i, ways.length - 1)];
        return way?.at(Math.ceil((step / steps) * way.steps)) ?? changed;
      }, design),
    };
  });
}

/** Steps of a way that are looked at first: near ones closely, farther ones less so, and the last. */
export function outward({steps}: Way): number[] {
  const found: number[] = [];
  for (let step = 1; step < steps; step = Math.max(step + 1, Math.floor(step * 1.8))) found.push(step);
  return [...found, steps];
}

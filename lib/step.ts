/**
 * A worked step: one line of a calculation as a person would write it down.
 *
 * The expression is held once, as text. Pages derive the typeset equation and the substituted numbers from it, and a
 * test evaluates it with an independent mathematics library and requires `result`, so that an equation on a page cannot
 * drift from the code beneath it. Steps are built on request, never inside a sweep.
 */
export interface Step {
  /** The result's symbol, such as `f_pe`. Typeset by {@link symbolTex}. */
  readonly symbol: string;
  /** The result in plain words, such as "effective prestress". */
  readonly label: string;
  /**
   * The right-hand side, with + - * / ^, parentheses and sqrt, min, max, abs, cos, sin, tan, log10.
   * Every name in it is a key of `values`.
   */
  readonly expression: string;
  /** Each symbol of the expression with its value. */
  readonly values: Readonly<Record<string, StepValue>>;
  /** What the code computed. */
  readonly result: number;
  /** Unit of the result; empty for a pure number. */
  readonly unit: string;
  /** Standard and clause, textbook, "common practice", or "definition". */
  readonly source: string;
  /** Why this branch of a rule applies, or how an implicit value was found. */
  readonly note?: string;
}

/** A number that goes into a step. */
export interface StepValue {
  readonly value: number;
  readonly unit: string;
  /** The symbol in plain words. */
  readonly label: string;
}

/** A named group of steps: the answer to one "why?". */
export interface Working {
  /** What is computed, in words. */
  readonly title: string;
  readonly steps: readonly Step[];
}

/** Shorthand for a value with unit and label. */
export function given(value: number, unit: string, label: string): StepValue {
  return {value, unit, label};
}

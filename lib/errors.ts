/** What is wrong with an input, in the parts of its message. */
interface Problem {
  readonly path: string;
  readonly label: string;
  readonly value: unknown;
  /** How the value reads, where it should not stand as a file writes it: a text as it was typed, a file in words. */
  readonly reads?: string;
  readonly unit?: string;
  readonly allowed: string;
  readonly advice?: string;
}

/**
 * The one error type of the library: an input that cannot be used.
 *
 * The message reads "span: -3 ft is not possible (10 to 150 ft)", or "span: missing (...)" where there is no value; pages and commands show it as it is.
 * A doubtful design is not an error: it is a failed check in the results.
 */
export class InputError extends Error {
  readonly #problem: Problem;
  /** Where the value stands, as a dotted path from the root of the input: `bay.spanFt`. */
  readonly path: string;
  /** The value that was given. */
  readonly value: unknown;
  /** What would have been accepted, in words: `10 to 150 ft`. */
  readonly allowed: string;

  constructor(problem: Problem) {
    const {path, label, value, reads, unit, allowed, advice} = problem;
    const shown = value === undefined ? "missing" : `${reads === undefined ? show(value) : short(reads)}${unit ? ` ${unit}` : ""} is not possible`;
    super(`${label}: ${shown} (${allowed})${advice ? `. ${advice}` : ""}`);
    this.name = "InputError";
    this.#problem = problem;
    this.path = path;
    this.value = value;
    this.allowed = allowed;
  }

  /**
   * The error for a value that a person gave, where this one is about what was computed from it: "clear cover: 4 in is
   * not possible (less: it makes the effective depth 4.94 in, where 5 to 10 in are possible)".
   */
  behind(given: Pick<Problem, "path" | "label" | "value" | "unit">, wanted: string): InputError {
    const {label, value, unit, allowed} = this.#problem;
    const shown = typeof value === "number" ? String(Number(value.toPrecision(4))) : show(value);
    return new InputError({...given, allowed: `${wanted}: it makes the ${label} ${shown}${unit ? ` ${unit}` : ""}, where ${allowed} are possible`});
  }

  /** The same error for an input that stands at another place than it was found at, and is called otherwise there. */
  at(path: string, label: string): InputError {
    return new InputError({...this.#problem, path, label});
  }

  /** The same error for an input of one of several things, which the message then names first: "pinned design 2, span: ...". */
  of(whose: string): InputError {
    return new InputError({...this.#problem, label: `${whose}, ${this.#problem.label}`});
  }

  /** The same error for an input that is a branch of a larger one: `pattern` below `deck` is `deck.pattern`. */
  under(branch: string): InputError {
    return new InputError({...this.#problem, path: this.path ? `${branch}.${this.path}` : branch});
  }
}

/** Runs work on a branch of a larger input, so that its errors name their place in the whole. */
export function under<T>(branch: string, work: () => T): T {
  try {
    return work();
  } catch (problem) {
    throw problem instanceof InputError ? problem.under(branch) : problem;
  }
}

/** A value as it may stand in a message: short, on one line. */
function show(value: unknown): string {
  // Nine digits tell any two values of the trade apart, and a third of a foot has no end.
  return typeof value === "number" ? String(Number(value.toPrecision(9))) : short(written(value));
}

function short(text: string): string {
  return text.length > 60 ? `${text.slice(0, 57)}...` : text;
}

function written(value: unknown): string {
  try {
    return JSON.stringify(value) ?? String(value);
  } catch {
    // Nested deeper than the machine can follow, or within itself.
    return Array.isArray(value) ? "a list nested too deep" : "an object nested too deep";
  }
}

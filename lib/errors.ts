/**
 * The one error type of the library: an input that cannot be used.
 *
 * The message reads "span: -3 ft is not possible (10 to 150 ft)"; pages and commands show it as it is.
 * A doubtful design is not an error: it is a failed check in the results.
 */
export class InputError extends Error {
  /** Where the value stands, as a dotted path from the root of the input: `bay.spanFt`. */
  readonly path: string;
  /** The value that was given. */
  readonly value: unknown;
  /** What would have been accepted, in words: `10 to 150 ft`. */
  readonly allowed: string;

  constructor(problem: {path: string; label: string; value: unknown; unit?: string; allowed: string; advice?: string}) {
    const {path, label, value, unit, allowed, advice} = problem;
    const shown = `${show(value)}${unit ? ` ${unit}` : ""}`;
    super(`${label}: ${shown} is not possible (${allowed})${advice ? `. ${advice}` : ""}`);
    this.name = "InputError";
    this.path = path;
    this.value = value;
    this.allowed = allowed;
  }
}

/** A value as it may stand in a message: short, on one line. */
function show(value: unknown): string {
  if (value === undefined) return "nothing";
  if (typeof value === "number") return String(value);
  const text = JSON.stringify(value) ?? String(value);
  return text.length > 60 ? `${text.slice(0, 57)}...` : text;
}

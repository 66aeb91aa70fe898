import {InputError} from "./errors.js";

/** A number's allowed range, with the words that a message needs. */
export interface NumberRule {
  readonly path: string;
  readonly label: string;
  readonly unit: string;
  readonly min: number;
  readonly max: number;
  readonly integer?: boolean;
}

/** Returns the value if it is a number within the rule's range (both ends allowed); throws {@link InputError} otherwise. */
export function requireNumber(value: unknown, rule: NumberRule): number {
  const {min, max, integer} = rule;
  const usable = typeof value === "number" && Number.isFinite(value) && value >= min && value <= max;
  if (usable && (!integer || Number.isInteger(value))) return value;
  const {path, label, unit} = rule;
  const allowed = allowedWords(rule, typeof value === "number" ? "" : "a number, ");
  throw new InputError({path, label, value, unit: typeof value === "number" ? unit : undefined, allowed});
}

/** What a rule allows, in words: `10 to 150 ft`, `whole number, 1 to 30`; `kind` stands before the range where any number will do. */
export function allowedWords({min, max, unit, integer}: NumberRule, kind = ""): string {
  return `${integer ? "whole number, " : kind}${min} to ${max}${unit ? ` ${unit}` : ""}`;
}

/** Returns the value if it is one of the choices; throws {@link InputError} otherwise. */
export function requireChoice<T extends string>(
  value: unknown,
  rule: {path: string; label: string; choices: readonly T[]},
): T {
  if (typeof value === "string" && (rule.choices as readonly string[]).includes(value)) return value as T;
  throw new InputError({...rule, value, allowed: rule.choices.join(", ")});
}

/**
 * The content of a file's text as JSON.
 *
 * @param label - what the file is, for the message
 * @throws InputError that shows how the text begins, or says that the file is none, as of a picture
 */
export function readJson(fileText: string, label: string): unknown {
  try {
    // Some editors put a byte order mark before the text.
    return JSON.parse(fileText.replace(/^\uFEFF/, ""));
  } catch (cause) {
    const file = {path: "", label, value: fileText.slice(0, 40), allowed: "JSON text"};
    if (fileText.trim() === "") throw new InputError({...file, reads: "an empty file"});
    // No text holds these signs; a picture does, and neither its bytes nor what the reader of JSON says of them help anyone.
    if (/[\0-\x08\x0E-\x1F\uFFFD]/.test(fileText)) throw new InputError({...file, reads: "a file that is not text"});
    throw new InputError({...file, advice: cause instanceof Error ? cause.message.replace(/\s+/g, " ") : undefined});
  }
}

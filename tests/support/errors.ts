import {expect} from "vitest";
import {InputError} from "../../lib/errors.js";

/** What an {@link InputError} must say; a text that is left out is not looked at. */
interface Expected {
  readonly path?: string;
  readonly value?: unknown;
  readonly allowed?: string | RegExp;
  readonly message?: string | RegExp;
}

/** Runs work that must throw an {@link InputError}, compares what it carries, and returns it. */
export function refused(work: () => unknown, expected: Expected = {}): InputError {
  let thrown: unknown;
  try {
    work();
  } catch (problem) {
    thrown = problem;
  }
  expect(thrown).toBeInstanceOf(InputError);
  const error = thrown as InputError;
  if ("path" in expected) expect(error.path).toBe(expected.path);
  if ("value" in expected) expect(error.value).toEqual(expected.value);
  for (const key of ["allowed", "message"] as const) {
    const text = expected[key];
    if (text instanceof RegExp) expect(error[key]).toMatch(text);
    else if (text !== undefined) expect(error[key]).toBe(text);
  }
  return error;
}

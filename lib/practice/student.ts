import {InputError} from "../errors.js";
import {hashOf} from "./hash.js";

/** Longest name of a student, letters. */
export const LONGEST_NAME = 80;

/** A student's name or number as it is compared: small letters, one space between words, no accents that a keyboard may lack. */
export function studentKey(name: string): string {
  return name.normalize("NFKD").replace(/\p{M}/gu, "").toLowerCase().replace(/\s+/g, " ").trim();
}

/** A name as it was typed, without what surrounds it; throws {@link InputError} where there is none, or it is too long. */
export function requireName(name: unknown): string {
  const text = typeof name === "string" ? name.replace(/\s+/g, " ").trim() : "";
  if (text !== "" && text.length <= LONGEST_NAME && studentKey(text) !== "") return text;
  throw new InputError({path: "student", label: "name or number", value: text || undefined, allowed: `1 to ${LONGEST_NAME} letters`});
}

/**
 * The seed of one student's numbers. Numbers, such as seats, follow each other, and then no two students of a class meet
 * the same numbers in any exercise; names are spread at random over all seeds, where two may meet in an exercise now and
 * then.
 *
 * @param seed - of the set, 0 to 2^32 - 1
 * @param name - as the teacher gave it; capital letters and spaces do not matter
 */
export function studentSeed(seed: number, name: string): number {
  const key = studentKey(name);
  const step = /^\d{1,9}$/.test(key) ? Number(key) : hashOf(key);
  return (seed + step) % 2 ** 32;
}

/**
 * Names or numbers out of a text, one a line, each once; empty lines are passed over.
 *
 * @throws InputError for one that is too long, and for more than `most`
 */
export function studentsIn(text: string, most = 300): string[] {
  const lines = text.split(/\r?\n/).map((line) => line.replace(/\s+/g, " ").trim()).filter((line) => line !== "");
  const seen = new Set<string>();
  const names = lines.map(requireName).filter((name) => !seen.has(studentKey(name)) && seen.add(studentKey(name)));
  if (names.length > most) throw new InputError({path: "students", label: "names", value: names.length, allowed: `at most ${most}`});
  return names;
}

import type {KeptGuess} from "../lib/exercises/progress.js";

const KEY = "plank-and-tee/guesses";
/** Older guesses than so many give way. */
const MOST = 500;

type Sent = KeptGuess extends infer Kind ? (Kind extends KeptGuess ? Omit<Kind, "at"> : never) : never;

/** This reader's guesses, kept in the browser and nowhere else, the oldest first. */
export function keptGuesses(): readonly KeptGuess[] {
  try {
    const kept: unknown = JSON.parse(localStorage.getItem(KEY) ?? "[]");
    return Array.isArray(kept) ? kept.filter(isGuess) : [];
  } catch {
    return [];
  }
}

export function keepGuess(guess: Sent): void {
  try {
    localStorage.setItem(KEY, JSON.stringify([...keptGuesses(), {...guess, at: Date.now()}].slice(-MOST)));
  } catch {
    // Without storage there is no history.
  }
}

export function forgetGuesses(): void {
  try {
    localStorage.removeItem(KEY);
  } catch {
    // As above.
  }
}

/** What another version kept, or a hand changed, may be anything. */
function isGuess(value: unknown): value is KeptGuess {
  const {name, at, kind, guess, truth, offPercent, right} = (value ?? {}) as Record<string, unknown>;
  if (typeof name !== "string" || !Number.isFinite(at)) return false;
  return kind === "number" ? Number.isFinite(guess) && Number.isFinite(truth) : kind === "sketch" ? Number.isFinite(offPercent) : kind === "pick" && typeof right === "boolean";
}

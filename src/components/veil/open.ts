import {GUESSES, type Guess, type GuessName} from "../../lib/exercises/guesses.js";
import {lock, tellNotes} from "./lock.js";

/** What a reader has said to a question: a guess, or null where the answer was asked for instead. */
export type Said = number | null;

const KEY = "plank-and-tee/guess/";

/** The page that is open, by the name of its folder, as the list of pages marks it. */
function pageName(): string {
  const link = document.querySelector<HTMLAnchorElement>('#pages a[aria-current="page"]');
  return /\/pages\/([^/]+)\//.exec(link?.href ?? "")?.[1] ?? "index";
}

/** What was said to a question since the browser was opened. */
function recall(name: GuessName | typeof ALL): Said | undefined {
  try {
    const text = sessionStorage.getItem(`${KEY}${name}`);
    return text === null ? undefined : (JSON.parse(text) as Said);
  } catch {
    return undefined;
  }
}

function keep(name: GuessName, said: Said): void {
  try {
    sessionStorage.setItem(`${KEY}${name}`, JSON.stringify(said));
  } catch {
    // Without storage it lasts as long as the page.
  }
}

const names = Object.keys(GUESSES) as GuessName[];
const here = typeof document === "undefined" ? [] : names.filter((name) => (GUESSES[name] as Guess).page === pageName());
/** A question that was waived is open all the same where answers are locked. */
const heard = (said: Said | undefined): Said | undefined => (said === null && lock.on() ? undefined : said);
const answersOf = new Map<GuessName, () => readonly number[]>();
/** Where the browser keeps that all answers were asked for. */
const ALL = "*";
let waivedAll = typeof document !== "undefined" && recall(ALL) === null;
const saidTo = new Map<GuessName, Said | undefined>(here.map((name) => {
  const said = recall(name);
  return [name, said === undefined && waivedAll ? null : said];
}));
const listeners = new Set<() => void>();

function tellListeners(): void {
  for (const listener of listeners) listener();
  tellNotes();
}

/** The questions of this page that wait for a guess. Every function works without `this`. */
export const openGuesses = {
  all: (): readonly GuessName[] => here.filter((name) => heard(saidTo.get(name)) === undefined),
  has: (name: GuessName): boolean => here.includes(name) && heard(saidTo.get(name)) === undefined,
  said: (name: GuessName): Said | undefined => heard(saidTo.has(name) ? saidTo.get(name) : recall(name)),
  /** Takes the guess, or null where the reader asks for the answer. */
  settle(name: GuessName, said: Said): void {
    keep(name, said);
    saidTo.set(name, said);
    tellListeners();
  },
  /** Takes all questions of all pages as answered, for one who is here to work. */
  waiveAll(): void {
    for (const name of names) if (openGuesses.said(name) === undefined) keep(name, null);
    for (const name of openGuesses.all()) saidTo.set(name, null);
    waivedAll = true;
    try {
      sessionStorage.setItem(`${KEY}${ALL}`, "null");
    } catch {
      // As above.
    }
    tellListeners();
  },
  /** Whether all answers were asked for, those included that are no numbers; and whether that counts, which it does not while answers are locked. */
  allWaived: (): boolean => waivedAll,
  takesWaivers: (): boolean => !lock.on(),
  /** Whether worked steps are closed: answers are locked, and a question of this page or of the path waits. */
  locksWorkings: (): boolean => lock.waits() || (lock.on() && openGuesses.all().length > 0),
  /** Opens what was locked: waived questions count as answered again. */
  unlock(): void {
    lock.open();
    tellListeners();
  },
  /** Calls after each guess. */
  observe: (listener: () => void) => void listeners.add(listener),
  /** Says what a question's answer is now, with what else it hides, so that worked steps can be held against it. */
  tellAnswers: (name: GuessName, answers: () => readonly number[]) => void answersOf.set(name, answers),
  answers: (name: GuessName): readonly number[] => answersOf.get(name)?.() ?? [],
};

/** A lesson path that this reader follows. */
export interface Followed {
  /** Name of the path's file. */
  readonly lesson: string;
  /** The stop that the reader is at, from 0. */
  readonly stop: number;
  /** Answers and worked steps stay closed until the reader has guessed. */
  readonly locked: boolean;
}

/** Why answers are locked: the path is followed so, or the link that led here asks for it. */
export type LockedBy = "path" | "link";

/** Where the browser keeps the path, and for a visit that a link locked the answers. */
const PATH_KEY = "plank-and-tee/path";
const LOCK_KEY = "plank-and-tee/locked";

/** What the fragment of an address asks for, each with its value: `#path=first-class&stop=3&answers=locked`. */
const asked = (hash: string): URLSearchParams => new URLSearchParams(hash.startsWith("#design=") ? "" : hash.slice(1));

/** Whether an address sets out on a path. */
export const namesPath = (hash: string): boolean => asked(hash).has("path");

/** The path that an address sets out on; the first stop where it names none, counted from 1. */
export function pathIn(hash: string): Followed | undefined {
  const of = asked(hash);
  const lesson = of.get("path");
  const stop = Number(of.get("stop") ?? 1);
  return lesson ? {lesson, stop: Number.isInteger(stop) && stop > 0 ? stop - 1 : 0, locked: of.get("answers") === "locked"} : undefined;
}

/** What an address shows on a projector: the name of a board, or empty where it leaves that open; null where it shows none. */
export const shownIn = (hash: string): string | null => asked(hash).get("show");

/** The fragment that {@link pathIn} reads. */
export function pathFragment({lesson, stop, locked}: Followed): string {
  return `#path=${encodeURIComponent(lesson)}&stop=${stop + 1}${locked ? "&answers=locked" : ""}`;
}

/** The path that is followed in this browser. */
export function followed(): Followed | undefined {
  try {
    const {lesson, stop, locked} = JSON.parse(localStorage.getItem(PATH_KEY) ?? "null") as Followed;
    return typeof lesson === "string" && Number.isInteger(stop) && stop >= 0 ? {lesson, stop, locked: locked === true} : undefined;
  } catch {
    // None, or no storage: then a path ends with its page.
    return undefined;
  }
}

/** Keeps which path is followed, or that none is. */
export function keepFollowed(now: Followed | undefined): void {
  try {
    if (now) localStorage.setItem(PATH_KEY, JSON.stringify(now));
    else localStorage.removeItem(PATH_KEY);
  } catch {
    // As above.
  }
}

/** Why answers are locked here, undefined where they are open. A link's lock holds for the visit, in this tab. */
export function lockedBy(): LockedBy | undefined {
  const link = asked(location.hash);
  if (link.has("path") ? link.get("answers") === "locked" : followed()?.locked) return "path";
  if (link.get("answers") === "locked") keepLink("link");
  try {
    return sessionStorage.getItem(LOCK_KEY) === "link" ? "link" : undefined;
  } catch {
    return link.get("answers") === "locked" ? "link" : undefined;
  }
}

/** Opens what a link has locked. */
export const unlockLink = (): void => keepLink(undefined);

function keepLink(by: "link" | undefined): void {
  try {
    if (by) sessionStorage.setItem(LOCK_KEY, by);
    else sessionStorage.removeItem(LOCK_KEY);
  } catch {
    // Without storage the lock ends with the page.
  }
}

import {lockedBy, type LockedBy} from "../followed.js";
import {element} from "../dom.js";

/** Why answers are locked on this page; settled as the page begins, and only ever taken away after that. */
let by: LockedBy | undefined = typeof document === "undefined" ? undefined : lockedBy();
/** Questions that wait for an answer besides the page's own guesses: what a path asks to predict. */
let waiting = false;

const WHY: Readonly<Record<LockedBy, string>> = {
  path: "The lesson path that you follow asks for a guess first.",
  link: "The link that you came by asks for a guess first.",
};

/** The lock on answers and worked steps. Every function works without `this`. */
export const lock = {
  on: (): boolean => by !== undefined,
  /** Whether the path waits for a prediction. */
  waits: (): boolean => by !== undefined && waiting,
  /** Says whether the path waits for a prediction on this page. */
  wait(now: boolean): void {
    waiting = now;
    if (!now) tellNotes();
  },
  /** Takes the lock away for this page. */
  open(): void {
    by = undefined;
    tellNotes();
  },
};

/** Says in the place of something locked why it is, and how it opens; `again` is called when it may have opened. */
export function lockNote(what: string, again: () => void): HTMLElement {
  const node = element("p", {class: "lock-note"}, element("strong", {}, `${what} until you have guessed. `), `${by ? WHY[by] : ""} The lock is there for the sake of the guess and keeps no secret: the page \u201cWhere should a class begin?\u201d opens it.`);
  node.addEventListener("unlock", again);
  return node;
}

/** Lets what stands locked on the page look again whether it may show itself. */
export function tellNotes(): void {
  for (const node of document.querySelectorAll(".lock-note")) node.dispatchEvent(new Event("unlock"));
}

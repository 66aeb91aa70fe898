import type {Design} from "../lib/design/design.js";
import {valueAt, withValue, withValues} from "../lib/design/edit.js";
import * as history from "../lib/design/history.js";
import {parseDesign, validateDesign} from "../lib/design/validate.js";
import {asFile} from "./store/designFile.js";
import {loadHistory, reasonOf, setAside, storedDesign, writeHistory, type Found, type KeyValueStore} from "./store/persistence.js";

/** Changes of one value that follow each other within this time are one step for undo: one drag of a control. */
const SAME_GESTURE_MS = 600;

/** Something that the reader should know: a file that was refused, a stored design that could not be read. */
export interface Notice {
  readonly kind: "problem" | "done";
  readonly message: string;
  /** A text that would otherwise be out of reach, offered as a file. */
  readonly keep?: {readonly fileName: string; readonly text: string};
}

/** Where the store lives; the browser in the notebook, plain objects in a test. */
export interface Surroundings {
  /** The design that opens where there is none yet. */
  readonly first: Design;
  /** Throws InputError for a design whose parts do not fit each other, such as a pattern and its member. */
  readonly check: (design: Design) => void;
  readonly storage: KeyValueStore | undefined;
  /** Runs a piece of work when the page has time for it. */
  readonly later: (work: () => void) => void;
  readonly now: () => number;
  /** Hands a text to the reader as a file. */
  readonly download: (fileName: string, text: string) => void;
}

/** The open design, for all pages and tabs. Every function works without `this`. */
export interface DesignStore {
  get(): Design;
  /** Calls at once and after each change; returns the end of it. Fits `Generators.observe`. */
  observe(change: (design: Design) => void): () => void;
  /** Changes one value. Throws InputError for an impossible one; the open design is then untouched. */
  set(path: string, value: unknown): void;
  /** Several changes as one step. */
  setMany(changes: Readonly<Record<string, unknown>>): void;
  /** Opens another design as one step that can be undone. */
  replace(design: Design): void;
  undo(): void;
  redo(): void;
  readonly canUndo: boolean;
  readonly canRedo: boolean;
  /** Opens a design file; resolves to false, with a notice, where it is not one. */
  openFile(file: {readonly name: string; text(): Promise<string>}): Promise<boolean>;
  saveFile(): void;
  /** Calls at once and whenever there is something to tell or no longer anything. */
  observeNotice(change: (notice: Notice | undefined) => void): () => void;
  dismissNotice(): void;
  /** Writes what is not yet written; before a page goes away. */
  flush(): void;
  /** Takes over what another tab has written. */
  reload(): void;
}

/** The open design as something that follows it sees it. */
export type Followed = Pick<DesignStore, "get" | "observe">;

/** Makes a store; see {@link DesignStore}. Listeners are called before `set` returns, writing waits for a quiet moment. */
export function createStore(surroundings: Surroundings): DesignStore {
  const {first, check, storage, later, now, download} = surroundings;
  const listeners = new Set<(design: Design) => void>();
  const noticeListeners = new Set<(notice: Notice | undefined) => void>();
  let notice: Notice | undefined;
  /** Why the browser last refused to keep the design. */
  let refusal: string | undefined;
  let gesture: {key: string; at: number} | undefined;
  let unwritten = false;
  /** What was changed here and is not yet written, by what was changed: it comes on top of what another tab writes meanwhile. */
  const changes = new Map<string, (design: Design) => Design>();
  /** The stored design as this tab last read or wrote it. */
  let seen = storedDesign(storage);
  const found = loadHistory(storage, first, check);
  let current = found.history ?? history.begin(first);
  if (found.problem) {
    notice = unusable(found.problem, `so "${current.present.name}" is open instead: ${current.present === first ? "a starter" : "the last one that can"}.`);
    // Written over at once, or every page would set it aside again.
    write();
  }

  /** Keeps a stored design that cannot be opened, and says so. */
  function unusable({text, message}: NonNullable<Found["problem"]>, instead: string): Notice {
    return {
      kind: "problem",
      message: `The design kept in this browser cannot be worked out, ${instead} ${message}`,
      keep: {fileName: setAside(storage, text, new Date(now())), text},
    };
  }

  function tell(next: Notice | undefined): void {
    notice = next;
    for (const listener of noticeListeners) listener(notice);
  }

  function show(next: history.History, {written = false} = {}): void {
    if (next === current) return;
    const changed = next.present !== current.present;
    current = next;
    if (!written) write();
    if (changed) for (const listener of listeners) listener(current.present);
  }

  function write(): void {
    if (unwritten) return;
    unwritten = true;
    later(flush);
  }

  function flush(): void {
    if (!unwritten) return;
    takeOver();
    unwritten = false;
    const problem = writeHistory(storage, current);
    if (problem) {
      if (problem !== refusal) tell({kind: "problem", message: problem});
    } else {
      seen = storedDesign(storage);
      changes.clear();
      if (refusal && notice?.message === refusal) tell(undefined);
    }
    refusal = problem;
  }

  /** Takes what another tab has written since this one last looked; what is not yet written here comes on top of it. */
  function takeOver(): void {
    const text = storedDesign(storage);
    if (text === null || text === seen) return;
    seen = text;
    const theirs = loadHistory(storage, first, check);
    if (theirs.problem) tell(unusable(theirs.problem, "so the open one stays."));
    if (theirs.problem || !theirs.history) return;
    const mine = current.present;
    let merged = theirs.history;
    try {
      for (const change of changes.values()) {
        const design = change(merged.present);
        check(design);
        merged = history.advance(merged, design);
      }
    } catch (problem) {
      merged = theirs.history;
      changes.clear();
      tell({kind: "problem", message: `What was changed here does not fit what another tab has changed meanwhile. ${reasonOf(problem)}`, keep: asFile(mine)});
    }
    if (changes.size === 0) {
      gesture = undefined;
      unwritten = false;
    }
    show(merged, {written: changes.size === 0});
  }

  /** Remembers a change until it is written; the newest is the last. */
  function remember(key: string, change: (design: Design) => Design): void {
    changes.delete(key);
    changes.set(key, change);
  }

  /** Adds a step, or goes on with the one that the same control has just begun. */
  function step(key: string, change: (design: Design) => Design): void {
    const design = change(current.present);
    check(design);
    const elapsed = gesture ? now() - gesture.at : NaN;
    // A clock may be set back.
    const continues = gesture?.key === key && elapsed >= 0 && elapsed < SAME_GESTURE_MS;
    gesture = {key, at: now()};
    remember(key, change);
    show(continues ? history.amend(current, design) : history.advance(current, design));
  }

  /** Opens a whole design, whatever another tab does meanwhile. */
  function turnTo(next: history.History): void {
    gesture = undefined;
    changes.clear();
    remember("", () => next.present);
    show(next);
  }

  function replace(design: Design): void {
    check(validateDesign(design));
    turnTo(history.advance(current, design));
  }

  /** Goes along the history to the next design that can be worked out; one that cannot is passed over and stays where it is. */
  function move(to: (from: history.History) => history.History): void {
    let passed: {design: Design; reason: string} | undefined;
    for (let from = current, next = to(from); ; from = next, next = to(from)) {
      if (next === from) break;
      try {
        check(next.present);
        turnTo(next);
        break;
      } catch (problem) {
        passed ??= {design: next.present, reason: reasonOf(problem)};
      }
    }
    if (passed) tell({kind: "problem", message: `"${passed.design.name}" as it was then cannot be worked out, so it was passed over. ${passed.reason}`, keep: asFile(passed.design)});
  }

  function subscribe<T>(set: Set<(value: T) => void>, change: (value: T) => void, value: T): () => void {
    set.add(change);
    change(value);
    return () => set.delete(change);
  }

  return {
    get: () => current.present,
    observe: (change) => subscribe(listeners, change, current.present),
    set(path, value) {
      if (valueAt(current.present, path) === value) return;
      step(path, (design) => withValue(design, path, value));
    },
    setMany(values) {
      step(Object.keys(values).join(" "), (design) => withValues(design, values));
    },
    replace,
    undo: () => move(history.undo),
    redo: () => move(history.redo),
    get canUndo() {
      return current.past.length > 0;
    },
    get canRedo() {
      return current.future.length > 0;
    },
    async openFile(file) {
      try {
        const design = parseDesign(await file.text());
        replace(design);
        tell({kind: "done", message: `Opened "${design.name}" from ${file.name}.`});
        return true;
      } catch (problem) {
        tell({kind: "problem", message: `${file.name} was not opened; the open design is as it was. ${reasonOf(problem)}`});
        return false;
      }
    },
    saveFile() {
      const {fileName, text} = asFile(current.present);
      download(fileName, text);
    },
    observeNotice: (change) => subscribe(noticeListeners, change, notice),
    dismissNotice: () => tell(undefined),
    flush,
    reload: takeOver,
  };
}

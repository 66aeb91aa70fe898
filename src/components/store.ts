import type {Design} from "../lib/design/design.js";
import {commentsSentence} from "../lib/design/comments.js";
import {withValue, withValues} from "../lib/design/edit.js";
import {valueAt} from "../lib/design/plain.js";
import * as history from "../lib/design/history.js";
import {InputError} from "../lib/errors.js";
import {parseDesign, validateDesign} from "../lib/design/validate.js";
import {loadHistory, setAside, writeHistory, type KeyValueStore} from "./store/persistence.js";

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
  /** Hears of a design that gives way to another one; may be left out. */
  readonly replaced?: (before: Design, by: Design) => void;
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
  /** The open design with those that undo and redo lead to. */
  steps(): history.History;
  /** Opens a design file; resolves to false, with a notice, where it is not one. */
  openFile(file: {readonly name: string; text(): Promise<string>}): Promise<boolean>;
  saveFile(): void;
  /** Calls at once and whenever there is something to tell or no longer anything. */
  observeNotice(change: (notice: Notice | undefined) => void): () => void;
  dismissNotice(): void;
  /** Tells the reader something in the place of what is being told. */
  tell(notice: Notice): void;
  /** Tells the reader of a problem that is none of the store's, beside what is being told. */
  remark(message: string): void;
  /** Writes what is not yet written; before a page goes away. */
  flush(): void;
  /** Takes over what another tab has written. */
  reload(): void;
  /** Calls all who observe with the design as it is: what they show of it has changed, not the design. */
  refresh(): void;
}

/** The open design as something that follows it sees it. */
export type Followed = Pick<DesignStore, "get" | "observe">;

/** Makes a store; see {@link DesignStore}. Listeners are called before `set` returns, writing waits for a quiet moment. */
export function createStore(surroundings: Surroundings): DesignStore {
  const {first, check, storage, later, now, download} = surroundings;
  const listeners = new Set<(design: Design) => void>();
  const noticeListeners = new Set<(notice: Notice | undefined) => void>();
  let notice: Notice | undefined;
  let gesture: {key: string; at: number} | undefined;
  let unwritten = false;
  const found = loadHistory(storage, check);
  let current = found.history ?? history.begin(first);
  if (found.problem) {
    const {text, message} = found.problem;
    notice = {
      kind: "problem",
      message: `The design kept in this browser cannot be read, so "${first.name}" is open instead. ${message}`,
      keep: {fileName: setAside(storage, text, new Date(now())), text},
    };
    // Written over at once, or every page would set it aside again.
    write();
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
    unwritten = false;
    const problem = writeHistory(storage, current);
    if (problem && notice?.message !== problem) tell({kind: "problem", message: problem});
  }

  /** Adds a step, or goes on with the one that the same control has just begun. */
  function step(key: string, design: Design): void {
    check(design);
    const continues = gesture?.key === key && now() - gesture.at < SAME_GESTURE_MS;
    gesture = {key, at: now()};
    show(continues ? history.amend(current, design) : history.advance(current, design));
  }

  function replace(design: Design): void {
    check(validateDesign(design));
    gesture = undefined;
    const before = current.present;
    show(history.advance(current, design));
    surroundings.replaced?.(before, design);
  }

  /** Goes a step back or forward; a step that can no longer be computed, from an older kit, is gone past. */
  function move(to: (from: history.History) => history.History): void {
    gesture = undefined;
    for (let from = current, next = to(from); next !== from; from = next, next = to(from)) {
      if (!works(next.present)) continue;
      show(next);
      return;
    }
  }

  function works(design: Design): boolean {
    try {
      check(design);
      return true;
    } catch (problem) {
      if (problem instanceof InputError) return false;
      throw problem;
    }
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
      step(path, withValue(current.present, path, value));
    },
    setMany(changes) {
      step(Object.keys(changes).join(" "), withValues(current.present, changes));
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
    steps: () => current,
    async openFile(file) {
      try {
        const design = parseDesign(await file.text());
        replace(design);
        tell({kind: "done", message: `Opened "${design.name}" from ${file.name}. ${commentsSentence(design)}`.trimEnd()});
        return true;
      } catch (problem) {
        const reason = problem instanceof Error ? problem.message : String(problem);
        tell({kind: "problem", message: `The open design is as it was: ${file.name} was not opened. ${reason}`});
        return false;
      }
    },
    saveFile() {
      const design = current.present;
      download(`${fileNameOf(design.name)}.json`, `${JSON.stringify(design, null, 2)}\n`);
    },
    observeNotice: (change) => subscribe(noticeListeners, change, notice),
    dismissNotice: () => tell(undefined),
    tell,
    remark: (message) => tell({...notice, kind: "problem", message: notice ? `${notice.message} ${message}` : message}),
    flush,
    reload() {
      const found = loadHistory(storage, check);
      if (!found.history) return;
      gesture = undefined;
      // What the other tab wrote counts; a change of ours that is not yet written gives way, so that all tabs agree.
      unwritten = false;
      show(found.history, {written: true});
    },
    refresh() {
      for (const listener of listeners) listener(current.present);
    },
  };
}

/** A name that any file system takes: "Branch library, Lindow" becomes `branch-library-lindow`. */
export function fileNameOf(name: string): string {
  const plain = name.normalize("NFKD").replace(/\p{M}/gu, "").toLowerCase().replace(/[^a-z0-9]+/g, "-").replace(/^-+|-+$/g, "");
  return plain.slice(0, 60) || "design";
}

import {readClassFiles, type ClassDesign, type ClassFile, type NotTaken} from "../../lib/classroom/classFiles.js";
import type {Comment} from "../../lib/design/design.js";
import {withValue} from "../../lib/design/edit.js";

/** The class's designs as they stand. */
export interface ClassNow {
  readonly designs: readonly ClassDesign[];
  /** What of the last files could not be taken, and why. */
  readonly refused: readonly NotTaken[];
  /** Whether the browser keeps the list through a reload; it is too long for that otherwise. */
  readonly kept: boolean;
}

/** The list of a class's designs in this browser. Every function works without `this`. */
export interface ClassList {
  get(): ClassNow;
  /** Calls at once and after each change; returns the end of it. */
  observe(change: (now: ClassNow) => void): () => void;
  add(files: readonly ClassFile[]): void;
  /** Puts comments in the place of those that a design's file has. Throws InputError for one that is too long. */
  comment(fileName: string, comments: readonly Comment[]): void;
  remove(fileName: string): void;
  /** Forgets all of it, in the browser too. */
  forget(): void;
}

/** Where the list is kept; a plain object in a test. */
export interface ClassStorage {
  getItem(key: string): string | null;
  setItem(key: string, value: string): void;
  removeItem(key: string): void;
}

const KEY = "plank-and-tee/class";
/** Most letters that are kept: the browser's room is shared with the open design and its history. */
const MOST_KEPT = 1_800_000;

/** The list, with what is kept of it from before. */
export function classList(storage: ClassStorage | undefined): ClassList {
  const listeners = new Set<(now: ClassNow) => void>();
  let now: ClassNow = begun(storage);
  const show = (designs: readonly ClassDesign[], refused: readonly NotTaken[]) => {
    now = {designs, refused, kept: keep(storage, designs)};
    for (const listener of listeners) listener(now);
  };
  return {
    get: () => now,
    observe(change) {
      listeners.add(change);
      change(now);
      return () => listeners.delete(change);
    },
    add(files) {
      const {designs, refused} = readClassFiles(now.designs, files);
      show([...now.designs, ...designs], refused);
    },
    comment(fileName, comments) {
      const designs = now.designs.map((one) => (one.fileName === fileName ? {fileName, design: withValue(one.design, "comments", comments)} : one));
      show(designs, now.refused);
    },
    remove: (fileName) => show(now.designs.filter((one) => one.fileName !== fileName), now.refused),
    forget: () => show([], []),
  };
}

function begun(storage: ClassStorage | undefined): ClassNow {
  try {
    const text = storage?.getItem(KEY);
    const kept = text ? (JSON.parse(text) as {readonly fileName: string; readonly design: unknown}[]) : [];
    // Read like any file: what an older kit kept is brought up, and what cannot be read is named.
    const {designs, refused} = readClassFiles([], kept.map(({fileName, design}) => ({fileName, text: JSON.stringify(design)})));
    return {designs, refused, kept: true};
  } catch {
    return {designs: [], refused: [], kept: true};
  }
}

function keep(storage: ClassStorage | undefined, designs: readonly ClassDesign[]): boolean {
  try {
    if (designs.length === 0) storage?.removeItem(KEY);
    else {
      const text = JSON.stringify(designs);
      if (text.length > MOST_KEPT) throw new Error("too long");
      storage?.setItem(KEY, text);
    }
    return storage !== undefined;
  } catch {
    // An older list in its place would come back at the next visit.
    try {
      storage?.removeItem(KEY);
    } catch {
      // A browser that keeps nothing has nothing to forget.
    }
    return false;
  }
}

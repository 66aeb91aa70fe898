import type {Design} from "../../lib/design/design.js";
import type {History} from "../../lib/design/history.js";
import {validateDesign} from "../../lib/design/validate.js";

/** The part of the browser's storage that is used here. */
export interface KeyValueStore {
  getItem(key: string): string | null;
  setItem(key: string, value: string): void;
}

/** The open design alone: small, and readable without its history. */
export const DESIGN_KEY = "plank-and-tee/design";
/** What came before and after it. */
export const HISTORY_KEY = "plank-and-tee/history";
const ASIDE_PREFIX = "plank-and-tee/set-aside/";

/** What was found in the storage: a history, or a design that cannot be used. */
export interface Found {
  readonly history?: History;
  readonly problem?: {readonly text: string; readonly message: string};
}

/** Reads the stored design and its history. Steps of the history that no longer fit are left out; the design itself must fit. */
export function loadHistory(storage: KeyValueStore | undefined, check: (design: Design) => void): Found {
  const text = read(storage, DESIGN_KEY);
  if (text === null) return {};
  let present: Design;
  try {
    present = validateDesign(JSON.parse(text));
    check(present);
  } catch (problem) {
    return {problem: {text, message: problem instanceof Error ? problem.message : String(problem)}};
  }
  const steps = parse(read(storage, HISTORY_KEY));
  // The two parts are written one after the other; a history of another design is not this one's.
  const own = steps?.["of"] === text;
  return {history: {past: own ? usable(steps["past"]) : [], present, future: own ? usable(steps["future"]) : []}};
}

/** Writes a history; returns what to tell the reader if the browser refuses, and undefined otherwise. */
export function writeHistory(storage: KeyValueStore | undefined, history: History): string | undefined {
  const present = JSON.stringify(history.present);
  // The fullest history that the storage takes; the design itself matters more than its history.
  for (const depth of [100, 20, 0]) {
    const steps = {of: present, past: depth ? history.past.slice(-depth) : [], future: history.future.slice(0, depth)};
    try {
      storage?.setItem(HISTORY_KEY, JSON.stringify(steps));
      storage?.setItem(DESIGN_KEY, present);
      if (storage) return undefined;
    } catch {
      continue;
    }
  }
  return "This browser stores nothing for this site, so the design will be lost when the page closes. Save it as a file.";
}

/** Puts a design that cannot be used under another key; returns a file name for it. */
export function setAside(storage: KeyValueStore | undefined, text: string, date: Date): string {
  const stamp = date.toISOString().replace(/[:.]/g, "-");
  try {
    storage?.setItem(`${ASIDE_PREFIX}${stamp}`, text);
  } catch {
    // The reader is offered the text as a file in any case.
  }
  return `set-aside-${stamp}.json`;
}

function read(storage: KeyValueStore | undefined, key: string): string | null {
  try {
    return storage?.getItem(key) ?? null;
  } catch {
    return null;
  }
}

function parse(text: string | null): Record<string, unknown> | undefined {
  if (text === null) return undefined;
  try {
    return JSON.parse(text) as Record<string, unknown>;
  } catch {
    return undefined;
  }
}

function usable(steps: unknown): Design[] {
  if (!Array.isArray(steps)) return [];
  return steps.flatMap((step) => {
    try {
      return [validateDesign(step)];
    } catch {
      return [];
    }
  });
}

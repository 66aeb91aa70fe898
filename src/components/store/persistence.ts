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

/** What was found in the storage: what to open, and a stored design that cannot be opened. */
export interface Found {
  /** Undefined where nothing is stored. */
  readonly history?: History;
  readonly problem?: {readonly text: string; readonly message: string};
}

/**
 * Reads the stored design and its history. Where the design cannot be worked out, the nearest step of its history that
 * can is taken in its place, and where there is none the first design; the steps around it stay in their order.
 *
 * @param first - what is opened where nothing that is stored can be
 * @param check - throws for a design that cannot be worked out
 */
export function loadHistory(storage: KeyValueStore | undefined, first: Design, check: (design: Design) => void): Found {
  const text = storedDesign(storage);
  if (text === null) return {};
  const steps = parse(read(storage, HISTORY_KEY));
  const past = usable(steps?.["past"]);
  const future = usable(steps?.["future"]);
  let present: Design | undefined;
  try {
    present = validateDesign(JSON.parse(text));
    check(present);
  } catch (problem) {
    return {history: nearest(past, present ? [present] : [], future, first, check), problem: {text, message: reasonOf(problem)}};
  }
  // The two parts are written one after the other; a history of another design is not this one's.
  const own = steps?.["of"] === text;
  return {history: {past: own ? past : [], present, future: own ? future : []}};
}

/** The text of the stored design, or null where there is none. */
export function storedDesign(storage: KeyValueStore | undefined): string | null {
  return read(storage, DESIGN_KEY);
}

/** The history with the nearest step that can be worked out as its present: the last one before, or the first one after. */
function nearest(past: readonly Design[], broken: readonly Design[], future: readonly Design[], first: Design, check: (design: Design) => void): History {
  const line = [...past, ...broken, ...future];
  const order = [...past.keys()].reverse().concat([...future.keys()].map((i) => past.length + broken.length + i));
  const at = order.find((i) => works(line[i] as Design, check));
  if (at === undefined) return {past: [...past, ...broken], present: first, future};
  return {past: line.slice(0, at), present: line[at] as Design, future: line.slice(at + 1)};
}

/** What an error says, whatever was thrown. */
export function reasonOf(problem: unknown): string {
  return problem instanceof Error ? problem.message : String(problem);
}

function works(design: Design, check: (design: Design) => void): boolean {
  try {
    check(design);
    return true;
  } catch {
    return false;
  }
}

/** Writes a history; returns what to tell the reader if the browser refuses, and undefined otherwise. */
export function writeHistory(storage: KeyValueStore | undefined, history: History): string | undefined {
  const present = JSON.stringify(history.present);
  let full = false;
  // The fullest history that the storage takes; the design itself matters more than its history.
  for (const depth of [100, 20, 0]) {
    const steps = {of: present, past: depth ? history.past.slice(-depth) : [], future: history.future.slice(0, depth)};
    try {
      storage?.setItem(HISTORY_KEY, JSON.stringify(steps));
      storage?.setItem(DESIGN_KEY, present);
      if (storage) return undefined;
    } catch (problem) {
      full ||= isFull(problem);
    }
  }
  return full
    ? "This browser has no more room for this site, so the last changes are lost when the page closes. Save the design as a file."
    : "This browser keeps nothing for this site, so the design is lost when the page closes. Save it as a file.";
}

/** Whether a storage refused for want of room rather than by the reader's settings; browsers have two names for it. */
function isFull(problem: unknown): boolean {
  return ["QuotaExceededError", "NS_ERROR_DOM_QUOTA_REACHED"].includes((problem as {name?: string} | undefined)?.name ?? "");
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

import type {Design} from "./design.js";

/** A design with what came before it and what was undone. */
export interface History {
  readonly past: readonly Design[];
  readonly present: Design;
  readonly future: readonly Design[];
}

/** Steps that can be undone; older ones are forgotten so that the history fits in a browser's store. */
const DEPTH = 100;

/** A history that begins with the given design. */
export function begin(design: Design): History {
  return {past: [], present: design, future: []};
}

/** Adds a design as the newest; what was undone before is dropped. */
export function advance(history: History, design: Design): History {
  if (design === history.present) return history;
  return {past: [...history.past, history.present].slice(-DEPTH), present: design, future: []};
}

/** Replaces the newest design without a step of its own, so that one drag of a control is one undo. */
export function amend(history: History, design: Design): History {
  return {...history, present: design, future: []};
}

/** One step back, or the same history where there is none. */
export function undo(history: History): History {
  const previous = history.past.at(-1);
  if (!previous) return history;
  return {past: history.past.slice(0, -1), present: previous, future: [history.present, ...history.future]};
}

/** One step forward again, or the same history where there is none. */
export function redo(history: History): History {
  const [next, ...rest] = history.future;
  if (!next) return history;
  return {past: [...history.past, history.present], present: next, future: rest};
}

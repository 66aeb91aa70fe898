import type {ComparedDesign, NotComputed} from "../../lib/compare/column.js";
import type {Design} from "../../lib/design/design.js";
import type {MeasuredBy} from "../../lib/schemes/measures.js";
import type {StartWork} from "../worker/work.js";

/** What is known of designs that are compared, computed beside the page. */
export interface Comparing {
  /** Undefined while it is being computed. */
  known(design: Design): ComparedDesign | NotComputed | undefined;
  /** What is to be known next; what no longer matters is not begun. */
  want(designs: readonly Design[]): void;
  /** Takes over what has been computed elsewhere. */
  learn(design: Design, found: ComparedDesign): void;
  /** Measures by something else from now on: what was known is computed anew. */
  measureBy(next: MeasuredBy): void;
  /** Calls whenever more is known; returns the end of it. */
  observe(change: () => void): () => void;
}

/** Compares designs by work that is never broken off: each takes some milliseconds, and starting anew takes longer. */
export function comparing(start: StartWork, first: MeasuredBy): Comparing {
  let by = first;
  let results = new WeakMap<Design, ComparedDesign | NotComputed>();
  const listeners = new Set<() => void>();
  let wanted: readonly Design[] = [];
  let running = false;
  const learn = (design: Design, found: ComparedDesign | NotComputed) => {
    results.set(design, found);
    for (const listener of listeners) listener();
  };
  const begin = async () => {
    const designs = wanted.filter((design) => !results.has(design));
    if (running || designs.length === 0) return;
    running = true;
    // What comes by measures of before is of no use any more.
    const of = results;
    try {
      await start("compareDesigns", {designs, by}, ({index, found}) => of === results && learn(designs[index] as Design, found)).done;
    } catch (problem) {
      const message = problem instanceof Error ? problem.message : String(problem);
      if (of === results) for (const design of designs) if (!results.has(design)) learn(design, {problem: message});
    }
    running = false;
    void begin();
  };
  return {
    known: (design) => results.get(design),
    want(designs) {
      wanted = designs;
      void begin();
    },
    learn,
    measureBy(next) {
      by = next;
      results = new WeakMap();
      for (const listener of listeners) listener();
      void begin();
    },
    observe(change) {
      listeners.add(change);
      return () => listeners.delete(change);
    },
  };
}

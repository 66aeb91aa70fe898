import type {Catalog} from "../../lib/catalog.js";
import {searchDeck, type Candidate} from "../../lib/deck/search.js";
import type {Design} from "../../lib/design/design.js";
import {demandOf, type Evaluation} from "../../lib/evaluate.js";
import type {DesignStore} from "../store.js";

/** Fits `Generators.observe`: calls with a value at once and after each change; returns the end of it. */
export type Observe<T> = (change: (value: T) => void) => () => void;

/** The search for a deck with what it was made for. */
export interface DeckSearch {
  readonly result: Evaluation;
  readonly found: readonly Candidate[];
  /** What the floor requires of a candidate, psf. */
  readonly askedPsf: (candidate: Candidate) => number;
}

/** The deck search for a design that has been computed. */
export function deckSearch(result: Evaluation, catalog: Catalog): DeckSearch {
  const demand = demandOf(result.design, catalog, result.loads);
  return {result, found: searchDeck(catalog, demand), askedPsf: (candidate) => demand.demandPsf(candidate.member.widthFt)};
}

/** A part of the open design, notified only when it has changed: for pictures of which the rest is of no account. */
export function partOf<T>(store: DesignStore, pick: (design: Design) => T): Observe<T> {
  return (change) => {
    let known: T | undefined;
    return store.observe((design) => {
      const part = pick(design);
      if (part === known) return;
      known = part;
      change(part);
    });
  };
}

/**
 * The open design, notified after the browser has painted: for lists and tables, which may lag a frame or two behind the
 * picture under the reader's hand.
 */
export function afterPaint(store: DesignStore): Observe<Design> {
  return (change) => {
    let waiting = false;
    let first = true;
    return store.observe((design) => {
      if (first) {
        first = false;
        change(design);
        return;
      }
      if (waiting) return;
      waiting = true;
      // A task that is posted from a frame runs after that frame has been painted; the second frame lets cells finish.
      requestAnimationFrame(() => requestAnimationFrame(() => setTimeout(() => {
        waiting = false;
        change(store.get());
      })));
    });
  };
}

import type {Catalogue} from "../../lib/catalogue.js";
import type {Candidate} from "../../lib/deck/search.js";
import type {Design} from "../../lib/design/design.js";
import {candidates, demandOf, evaluate, type Evaluation} from "../../lib/evaluate.js";
import type {DesignStore} from "../store.js";
import {deckId, rivalsOf} from "./deckCurves.js";

/** Fits `Generators.observe`: calls with a value at once and after each change; returns the end of it. */
export type Observe<T> = (change: (value: T) => void) => () => void;

/** The search for a deck with what it was made for. */
export interface DeckSearch {
  readonly result: Evaluation;
  readonly found: readonly Candidate[];
  /** What the floor asks of a candidate, psf. */
  readonly askedPsf: (candidate: Candidate) => number;
}

/**
 * The deck search of the open design. It lags behind the design until the browser has painted, so that the picture under
 * the reader's hand comes first.
 */
export function deckSearch(store: DesignStore, catalogue: Catalogue): Observe<DeckSearch> {
  const search = (design: Design): DeckSearch => {
    const result = evaluate(design, catalogue);
    const demand = demandOf(design, catalogue, result.loads);
    return {result, found: candidates(design, catalogue), askedPsf: (candidate) => demand.demandPsf(candidate.member.widthFt)};
  };
  return afterPaint(store, (design, change) => change(search(design)));
}

/** The few candidates that the chart shows; told only when they are others, or made of something else. */
export function deckRivals(search: Observe<DeckSearch>): Observe<readonly Candidate[]> {
  return (change) => {
    let known = "";
    return search(({result, found}) => {
      const rivals = rivalsOf(found, deckId(result));
      const {deck, criteria} = result.design;
      const key = JSON.stringify([rivals.map((rival) => rival.id), deck, criteria]);
      if (key === known) return;
      known = key;
      change(rivals);
    });
  };
}

/** A part of the open design, told only when it has changed: for pictures of which the rest is of no account. */
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

function afterPaint<T>(store: DesignStore, tell: (design: Design, change: (value: T) => void) => void): Observe<T> {
  return (change) => {
    let waiting = false;
    let first = true;
    return store.observe((design) => {
      if (first) {
        first = false;
        tell(design, change);
        return;
      }
      if (waiting) return;
      waiting = true;
      // A task that is posted from a frame runs after that frame has been painted; the second frame lets cells finish.
      requestAnimationFrame(() => requestAnimationFrame(() => setTimeout(() => {
        waiting = false;
        tell(store.get(), change);
      })));
    });
  };
}

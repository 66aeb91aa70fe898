import type {Catalog} from "../../lib/catalog.js";
import {ownTrials, type Frontier, type FrontierProgress} from "../../lib/deck/frontier.js";
import {ownStrand} from "../../lib/deck/trials.js";
import type {Design} from "../../lib/design/design.js";
import type {DesignStore} from "../../components/store.js";
import type {StartWork, Work} from "../../components/worker/work.js";
import type {CarbonTable} from "./carbonTable.js";

/** Where the search for trade-offs stands. */
export interface TradeOffState {
  /** The last result, if there is one. */
  readonly found: Frontier | undefined;
  /** Whether the design, the kinds or the factors have changed since. */
  readonly stale: boolean;
  /** How far a search is that is running; undefined where none is. */
  readonly running: FrontierProgress | undefined;
  /** Why the last search failed. */
  readonly problem: string | undefined;
}

/** The search beside the page. */
export interface TradeOffSearch {
  /** Calls at once and after each change of the state. */
  observe(change: (state: TradeOffState) => void): () => void;
  start(): void;
  cancel(): void;
  /** Whether every kind of deck is tried, or those alone that the design considers. */
  everyKind: boolean;
}

/** A search that took no longer than this starts again by itself after a change, ms. */
const CHEAP_MS = 1000;
/** How long a change rests before it does. */
const PAUSE_MS = 350;

/** Runs the search in a worker: at once, then after each change that matters if that is cheap, and on demand. */
export function tradeOffSearch(store: DesignStore, catalog: Catalog, startWork: StartWork, table: CarbonTable): TradeOffSearch {
  const listeners = new Set<(state: TradeOffState) => void>();
  let state: TradeOffState = {found: undefined, stale: false, running: undefined, problem: undefined};
  let everyKind = true;
  let work: Work<Frontier> | undefined;
  let searched = "";
  let tookMs: number | undefined;
  let waiting: ReturnType<typeof setTimeout> | undefined;
  const tell = (next: Partial<TradeOffState>) => {
    state = {...state, ...next};
    for (const listener of listeners) listener(state);
  };
  const key = () => JSON.stringify([mattering(store.get(), catalog), table.own(), everyKind, everyKind || store.get().consider]);

  const start = () => {
    clearTimeout(waiting);
    const asked = key();
    // The worker's own start is no part of what another search would take.
    let from: number | undefined;
    searched = asked;
    tell({running: {tried: 0, worked: 0, total: 0}, problem: undefined});
    const mine = (work = startWork("tradeOffs", {design: store.get(), ownFactors: table.own(), everyKind}, (running) => {
      from ??= performance.now();
      if (work === mine) tell({running});
    }));
    mine.done.then((found) => {
      if (work !== mine || !found) return;
      tookMs = performance.now() - (from ?? performance.now());
      tell({found, running: undefined, stale: key() !== asked});
    }, (problem: unknown) => {
      if (work === mine) tell({running: undefined, problem: problem instanceof Error ? problem.message : String(problem)});
    });
  };
  const changed = () => {
    if (key() === searched) {
      clearTimeout(waiting);
      if (state.stale && !state.running) tell({stale: false});
      return;
    }
    if (state.found && !state.stale) tell({stale: true});
    clearTimeout(waiting);
    if (tookMs !== undefined && tookMs < CHEAP_MS) waiting = setTimeout(start, PAUSE_MS);
  };
  store.observe(changed);
  table.observe(changed);

  return {
    observe(change) {
      listeners.add(change);
      change(state);
      return () => listeners.delete(change);
    },
    start,
    cancel() {
      work?.cancel();
      work = undefined;
      searched = "";
      tookMs = undefined;
      tell({running: undefined, stale: state.found !== undefined});
    },
    get everyKind() {
      return everyKind;
    },
    set everyKind(next) {
      everyKind = next;
      changed();
    },
  };
}

/** What of a design the search hangs on: not its words, its beams or its story, nor which of the decks is in it now. */
function mattering({bay, loads, deck, criteria}: Design, catalog: Catalog): unknown {
  const {member, pattern, dimensions: _dimensions, concrete: _concrete, strandHeightEndIn: _end, strandHeightCenterIn: _center,
    strengthPsi, releaseStrengthPsi, toppingIn, ...conditions} = deck;
  return [bay, loads, criteria, conditions, ownTrials({strengthPsi, releaseStrengthPsi, toppingIn}, ownStrand(catalog, {member, pattern}))];
}

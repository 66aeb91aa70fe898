import type {Evaluation} from "../../lib/evaluate.js";
import {floorSpread} from "../../lib/topping/floorSpread.js";
import type {Spread, SpreadInput} from "../../lib/topping/spread.js";
import type {StartWork} from "../../components/worker/work.js";
import {afterPaint, type Observe} from "../../components/shared/deckSearch.js";
import type {DesignStore} from "../../components/store.js";
import type {SpreadControls} from "./spreadControls.js";

/** Pieces that have been tried, and what they were tried for. */
export interface SpreadTried {
  readonly spread: Spread;
  readonly input: SpreadInput;
  readonly result: Evaluation;
}

/** Where the trial of pieces stands. */
export interface SpreadState {
  /** The last one, if there is one; it may be of the design before the last change while another runs. */
  readonly tried: SpreadTried | undefined;
  readonly running: boolean;
  /** Why the last one failed. */
  readonly problem: string | undefined;
}

/**
 * Tries the pieces of the open design in a worker, at once and after each change. Changes that come while it runs wait
 * for its end, and only the last of them counts, so that a slider that is dragged shows one trial after another.
 */
export function spreadRun(store: DesignStore, startWork: StartWork, controls: SpreadControls, evaluated: (design: ReturnType<DesignStore["get"]>) => Evaluation): Observe<SpreadState> {
  const listeners = new Set<(state: SpreadState) => void>();
  let state: SpreadState = {tried: undefined, running: false, problem: undefined};
  let asked = false;
  const tell = (next: Partial<SpreadState>) => {
    state = {...state, ...next};
    for (const listener of listeners) listener(state);
  };
  const start = () => {
    if (state.running) {
      asked = true;
      return;
    }
    asked = false;
    const result = evaluated(store.get());
    const input = floorSpread(result, controls.get());
    tell({running: true});
    startWork("spread", input).done.then(
      (spread) => tell({running: false, problem: undefined, ...(spread ? {tried: {spread, input, result}} : {})}),
      (problem: unknown) => tell({running: false, problem: problem instanceof Error ? problem.message : String(problem)}),
    ).then(() => {
      if (asked) start();
    });
  };
  afterPaint(store)(start);
  controls.observe(start);
  return (change) => {
    listeners.add(change);
    change(state);
    return () => void listeners.delete(change);
  };
}

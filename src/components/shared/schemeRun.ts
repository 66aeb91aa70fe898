import type {Design} from "../../lib/design/design.js";
import {sharedOut} from "../../lib/schemes/order.js";
import type {RowsAsked, PlainScheme} from "../../lib/schemes/rows.js";
import type {Brief} from "../../lib/schemes/brief.js";
import type {SchemeRow} from "../../lib/schemes/schemeRow.js";
import type {RawTables} from "../../lib/tables.js";
import {workPlace} from "../worker/work.js";
import type {Observe} from "./deckSearch.js";

/** What a page asks for: a brief's schemes in an order, in groups that share their parts. */
export interface RunAsked extends RowsAsked {
  readonly brief: Brief;
  readonly groups: readonly (readonly number[])[];
}

/** Where a run stands. */
export interface RunState {
  /** Rows so far; each state has a list of its own. */
  readonly rows: readonly SchemeRow[];
  readonly total: number;
  readonly running: boolean;
  /** Set where the run was canceled before its end. */
  readonly canceled: boolean;
  /** Why it failed. */
  readonly problem: string | undefined;
  /** What the rows are of. */
  readonly asked: RunAsked | undefined;
  /** From the start to the first rows and to the last, ms. */
  readonly firstMs: number | undefined;
  readonly tookMs: number | undefined;
}

/** Runs schemes beside the page, on two workers. */
export interface SchemeRun {
  readonly observe: Observe<RunState>;
  readonly state: () => RunState;
  /** Begins anew, a run that goes on is canceled; one of the last few that came to their end is there at once. */
  start(asked: RunAsked): void;
  cancel(): void;
  /** The design of one of a run's schemes, of this run's if none is named; of several calls in a row the last alone is answered, the others give undefined. */
  one(index: number, of?: RunAsked): Promise<PlainScheme | undefined>;
  /** The same with its rules' words as reasons. */
  worded(index: number, of?: RunAsked): Promise<PlainScheme | undefined>;
  /** A design as it is, as a row beside the schemes. */
  ownRow(design: Design, asked: RowsAsked): Promise<SchemeRow | undefined>;
}

const WORKERS = 2;
/** Those who watch a run are told this often, ms: more would take the time of the page's controls, and be read aloud by none. */
const TELL_MS = 400;
/** Runs that are kept once they have come to their end: a reader goes back and forth between two or three. */
const MOST_KEPT = 5;

export function schemeRun(tables: RawTables): SchemeRun {
  const listeners = new Set<(state: RunState) => void>();
  const places = Array.from({length: WORKERS}, () => workPlace(tables));
  const single = queue(workPlace(tables));
  let state: RunState = {rows: [], total: 0, running: false, canceled: false, problem: undefined, asked: undefined, firstMs: undefined, tookMs: undefined};
  let cancels: (() => void)[] = [];
  let run = 0;
  const tell = (next: Partial<RunState>) => {
    state = {...state, ...next};
    for (const listener of listeners) listener(state);
  };
  const end = () => {
    run += 1;
    for (const cancel of cancels) cancel();
    cancels = [];
  };
  const finished = new Map<string, Pick<RunState, "rows" | "total">>();
  const askedOf = async (index: number, of: RunAsked | undefined, ask: (input: {brief: Brief; columns: boolean; index: number}) => Promise<PlainScheme | undefined>): Promise<PlainScheme | undefined> =>
    (of ? ask({brief: of.brief, columns: of.columns, index}) : undefined);
  return {
    observe(change) {
      listeners.add(change);
      change(state);
      return () => void listeners.delete(change);
    },
    state: () => state,
    start(asked) {
      end();
      const mine = run;
      const {groups, ...input} = asked;
      const rows: SchemeRow[] = [];
      const total = groups.reduce((sum, group) => sum + group.length, 0);
      const key = JSON.stringify(asked);
      const before = finished.get(key);
      if (before) {
        tell({...before, running: false, canceled: false, problem: undefined, asked, firstMs: 0, tookMs: 0});
        return;
      }
      const from = performance.now();
      let firstMs: number | undefined;
      let waiting: ReturnType<typeof setTimeout> | undefined;
      tell({rows: [], total, running: true, canceled: false, problem: undefined, asked, firstMs: undefined, tookMs: undefined});
      const take = (batch: readonly SchemeRow[]) => {
        if (run !== mine) return;
        rows.push(...batch);
        if (firstMs === undefined) {
          firstMs = performance.now() - from;
          tell({rows: [...rows], firstMs});
        }
        waiting ??= setTimeout(() => {
          waiting = undefined;
          if (run === mine && state.running) tell({rows: [...rows]});
        }, TELL_MS);
      };
      const works = sharedOut(groups, WORKERS).map((order, i) => (places[i] as ReturnType<typeof workPlace>)("schemes", {...input, order}, take));
      cancels = works.map(({cancel}) => cancel);
      Promise.all(works.map(({done}) => done)).then(
        () => ({problem: undefined}),
        (problem: unknown) => ({problem: problem instanceof Error ? problem.message : String(problem)}),
      ).then(({problem}) => {
        if (run !== mine) return;
        clearTimeout(waiting);
        if (problem !== undefined) end();
        else {
          finished.set(key, {rows: [...rows], total});
          for (const old of [...finished.keys()].slice(0, -MOST_KEPT)) finished.delete(old);
        }
        tell({rows: [...rows], running: false, problem, tookMs: performance.now() - from});
      });
    },
    cancel() {
      if (!state.running) return;
      end();
      tell({running: false, canceled: true});
    },
    one: (index, of = state.asked) => single((start) => askedOf(index, of, (input) => start("oneScheme", input).done)),
    worded: (index, of = state.asked) => single((start) => askedOf(index, of, (input) => start("wordedScheme", input).done)),
    ownRow: (design, asked) => workPlaceOnce(tables)("designRow", {design, ...asked}).done,
  };
}

let ownPlace: ReturnType<typeof workPlace> | undefined;

/** The place where the open design is measured: a new question takes the place of the last. */
function workPlaceOnce(tables: RawTables): ReturnType<typeof workPlace> {
  return (ownPlace ??= workPlace(tables));
}

type Start = ReturnType<typeof workPlace>;

/** Asks one thing at a time, so that its worker keeps what it knows; of those that wait the last alone is asked. */
function queue(start: Start): <T>(ask: (start: Start) => Promise<T>) => Promise<T | undefined> {
  let last = 0;
  let before: Promise<unknown> = Promise.resolve();
  return (ask) => {
    const mine = ++last;
    const answer = before.then(() => (mine === last ? ask(start) : undefined));
    before = answer.catch(() => undefined);
    return answer;
  };
}

import type {RawTables} from "../../lib/tables.js";
import type {Answer, Request, Rest, Stop, TaskInput, TaskName, TaskProgress, TaskResult} from "./messages.js";

/** A piece of work that runs beside the page. */
export interface Work<R> {
  /** The result; undefined where the work was canceled. Rejects with the reason where it could not be done. */
  readonly done: Promise<R | undefined>;
  cancel(): void;
}

/** Starts long work beside the page, so that the page never stutters. */
export type StartWork = <K extends TaskName>(
  task: K, input: TaskInput<K>, progress?: (now: TaskProgress<K>) => void,
) => Work<TaskResult<K>>;

/**
 * Tasks whose steps are so short that their worker is let live when they are canceled, for it knows much that the next
 * one asks, and that they can step aside while the page draws.
 */
const SHORT_STEPS: ReadonlySet<TaskName> = new Set(["schemes"]);

/** What the reader does that the page answers at once. */
const ACTS = ["keydown", "pointerdown", "input"] as const;
/** Workers at such a task. */
const busy = new Set<Worker>();
let asides = 0;

/**
 * Lets long work beside the page rest until the next frame is painted, where its steps are short enough: on a machine
 * with two processors, two workers would have the page wait for its turn three times as long as it draws.
 */
export function stepAside(): void {
  if (busy.size === 0) return;
  const mine = ++asides;
  tell(true);
  requestAnimationFrame(() => setTimeout(() => {
    if (mine === asides) tell(false);
  }));
}

function tell(rest: boolean): void {
  for (const worker of busy) worker.postMessage({rest} satisfies Rest);
}

/**
 * A place for one kind of work: a new piece takes the place of the one before, which is canceled.
 *
 * Canceling ends the worker, for a step in progress cannot be interrupted otherwise, and the next piece starts another;
 * where steps are short the worker goes no further than the one at hand, and the next piece finds it warm.
 */
export function workPlace(tables: RawTables): StartWork {
  let worker: Worker | undefined;
  let cancelLast: (() => void) | undefined;
  let ids = 0;
  return <K extends TaskName>(task: K, input: TaskInput<K>, progress?: (now: TaskProgress<K>) => void): Work<TaskResult<K>> => {
    cancelLast?.();
    const engine = (worker ??= new Worker(import.meta.resolve("./engine.js"), {type: "module"}));
    const id = ++ids;
    let cancel = () => {};
    const done = new Promise<TaskResult<K> | undefined>((resolve, reject) => {
      const finish = () => {
        engine.onmessage = null;
        engine.onerror = null;
        cancelLast = undefined;
        busy.delete(engine);
      };
      cancel = () => {
        if (cancelLast !== cancel) return;
        finish();
        if (SHORT_STEPS.has(task)) engine.postMessage({id: ++ids} satisfies Stop);
        else {
          engine.terminate();
          worker = undefined;
        }
        resolve(undefined);
      };
      engine.onmessage = ({data}: MessageEvent<Answer<K>>) => {
        if (data.id !== id) return;
        if (data.kind === "progress") return progress?.(data.progress);
        finish();
        if (data.kind === "done") resolve(data.result);
        else reject(new Error(data.message));
      };
      engine.onerror = (event) => {
        finish();
        engine.terminate();
        worker = undefined;
        reject(new Error(event.message));
      };
      cancelLast = cancel;
    });
    if (SHORT_STEPS.has(task)) {
      busy.add(engine);
      // Added again, a listener is the same one.
      for (const act of ACTS) window.addEventListener(act, stepAside, {capture: true, passive: true});
    }
    engine.postMessage({id, task, tables, input} satisfies Request<K>);
    return {done, cancel};
  };
}

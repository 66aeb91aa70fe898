import type {Tasks} from "./tasks.js";
import type {RawTables} from "../../lib/tables.js";

export type TaskName = keyof Tasks;
export type TaskInput<K extends TaskName> = Parameters<Tasks[K]>[1];
/** A step that has nothing to tell yields undefined: a place where the work may rest or end. */
export type TaskProgress<K extends TaskName> = ReturnType<Tasks[K]> extends Generator<infer P, unknown, unknown> ? NonNullable<P> : never;
export type TaskResult<K extends TaskName> = ReturnType<Tasks[K]> extends Generator<unknown, infer R, unknown> ? R : never;

/** What the page asks of the worker. */
export interface Request<K extends TaskName = TaskName> {
  readonly id: number;
  readonly task: K;
  readonly tables: RawTables;
  readonly input: TaskInput<K>;
}

/** Ends what is asked, between two steps of it. */
export interface Stop {
  readonly id: number;
}

/** Lets the work rest before its next step, while the page has something to draw, or go on. */
export interface Rest {
  readonly rest: boolean;
}

/** What the worker answers: how far it is, with what it has so far, and at last the result or why there is none. */
export type Answer<K extends TaskName = TaskName> = {readonly id: number} & (
  | {readonly kind: "progress"; readonly progress: TaskProgress<K>}
  | {readonly kind: "done"; readonly result: TaskResult<K>}
  | {readonly kind: "failed"; readonly message: string}
);

/// <reference lib="webworker" />
import {readCatalog, type Catalog} from "../../lib/catalog.js";
import type {Answer, Request} from "./messages.js";
import {TASKS} from "./tasks.js";

/** The worker's side: runs one task at a time, and tells how far it is between two steps of it. */
declare const self: DedicatedWorkerGlobalScope;

let catalog: Catalog | undefined;

self.onmessage = async ({data}: MessageEvent<Request>) => {
  const answer = (message: Answer) => self.postMessage(message);
  try {
    catalog ??= readCatalog(data.tables);
    const task = await TASKS[data.task]() as (catalog: Catalog, input: unknown) => Generator<unknown, unknown>;
    const work = task(catalog, data.input);
    let step = work.next();
    for (; !step.done; step = work.next()) answer({id: data.id, kind: "progress", progress: step.value as never});
    answer({id: data.id, kind: "done", result: step.value as never});
  } catch (problem) {
    answer({id: data.id, kind: "failed", message: problem instanceof Error ? problem.message : String(problem)});
  }
};

/// <reference lib="webworker" />
import {readCatalog, type Catalog} from "../../lib/catalog.js";
import type {Answer, Request, Rest, Stop} from "./messages.js";
import {TASKS} from "./tasks.js";

/** The worker's side: runs one task at a time, and tells how far it is between two steps of it, where it also hears of others. */
declare const self: DedicatedWorkerGlobalScope;

let catalog: Catalog | undefined;
/** The request that counts: a later one ends those before it. */
let current = 0;
/** The longest rest, ms: a page that is not shown draws nothing, and would never say that it has drawn. */
const MOST_REST_MS = 100;
let rest: Promise<void> | undefined;
let endRest = () => {};

self.onmessage = async ({data}: MessageEvent<Request | Stop | Rest>) => {
  if ("rest" in data) return takeRest(data);
  current = data.id;
  if (!("task" in data)) return;
  const answer = (message: Answer) => self.postMessage(message);
  try {
    catalog ??= readCatalog(data.tables);
    const task = await TASKS[data.task]() as (catalog: Catalog, input: unknown) => Generator<unknown, unknown>;
    const work = task(catalog, data.input);
    let step = work.next();
    for (; !step.done; step = work.next()) {
      if (step.value !== undefined) answer({id: data.id, kind: "progress", progress: step.value as never});
      await turn();
      while (rest) await rest;
      if (current !== data.id) return;
    }
    answer({id: data.id, kind: "done", result: step.value as never});
  } catch (problem) {
    answer({id: data.id, kind: "failed", message: problem instanceof Error ? problem.message : String(problem)});
  }
};

function takeRest({rest: wanted}: Rest): void {
  endRest();
  if (!wanted) return;
  const mine = new Promise<void>((resolve) => {
    endRest = resolve;
    setTimeout(resolve, MOST_REST_MS);
  }).then(() => {
    // Told to rest again, it rests on.
    if (rest === mine) rest = undefined;
  });
  rest = mine;
}

/** Lets messages in that have come meanwhile. A timer would wait four thousandths of a second each time. */
function turn(): Promise<void> {
  return new Promise((resolve) => {
    const {port1, port2} = new MessageChannel();
    port1.onmessage = () => {
      port1.close();
      resolve();
    };
    port2.postMessage(undefined);
  });
}

import {readFileSync} from "node:fs";
import {join} from "node:path";
import {beforeAll, expect, test, vi} from "vitest";
import {readBrief} from "../../lib/schemes/readBrief.js";
import type {RowsInput} from "../../lib/schemes/rows.js";
import type {Answer, Request, Rest} from "../../src/components/worker/messages.js";
import {readRawTables} from "../../src/headless/readCatalog.js";
import {catalog} from "../support/designs.js";

/** The worker's own window, as far as the engine looks at it. */
const self: {onmessage?: (event: {data: unknown}) => Promise<void>; postMessage(answer: Answer): void} = {postMessage: (answer) => void answers.push(answer)};
const answers: Answer[] = [];

beforeAll(async () => {
  vi.stubGlobal("self", self);
  await import("../../src/components/worker/engine.js");
});

const input = (): RowsInput => {
  const brief = readBrief(readFileSync(join(import.meta.dirname, "../../seeds/briefs/teaching-building.json"), "utf8"), catalog);
  return {brief, columns: false, ownFactors: {}, prices: {}, order: Array.from({length: 60}, (_, i) => i)};
};
const ask = (id: number, order: readonly number[]) =>
  self.onmessage?.({data: {id, task: "schemes", tables: readRawTables(), input: {...input(), order}} satisfies Request<"schemes">}) ?? Promise.resolve();
const of = (id: number) => answers.filter((answer) => answer.id === id);

test("a worker sends the first scheme by itself, stops between two batches when told, and answers what comes next", async () => {
  const {order} = input();
  const first = ask(1, order);
  await vi.waitUntil(() => of(1).length > 0, {timeout: 20_000, interval: 1});
  const [sent] = of(1);
  expect(sent?.kind === "progress" && Array.isArray(sent.progress) ? sent.progress.length : undefined).toBe(1);
  void self.onmessage?.({data: {id: 2}});
  await first;
  expect(of(1).map(({kind}) => kind)).not.toContain("done");
  const before = of(1).length;
  await ask(3, order.slice(0, 3));
  expect(of(1)).toHaveLength(before);
  expect(of(3).at(-1)).toMatchObject({kind: "done", result: 3});
  expect(of(3).flatMap((answer) => (answer.kind === "progress" ? answer.progress as unknown[] : []))).toHaveLength(3);
});

test("a later request ends the one before it", async () => {
  const {order} = input();
  const first = ask(4, order);
  await vi.waitUntil(() => of(4).length > 0, {timeout: 20_000, interval: 1});
  await Promise.all([first, ask(5, order.slice(0, 2))]);
  expect(of(4).map(({kind}) => kind)).not.toContain("done");
  expect(of(5).at(-1)).toMatchObject({kind: "done", result: 2});
});

test("a worker that is told to rest makes no more until it is told to go on, or has rested long enough", async () => {
  const tell = (rest: boolean) => void self.onmessage?.({data: {rest} satisfies Rest});
  const later = async () => {
    for (let i = 0; i < 200; i++) await new Promise((resolve) => setImmediate(resolve));
  };
  vi.useFakeTimers({toFake: ["setTimeout"]});
  try {
    for (const [id, goOn] of [[6, () => tell(false)], [7, () => vi.advanceTimersByTime(1000)]] as const) {
      const work = ask(id, input().order.slice(0, 12));
      tell(true);
      tell(true);
      await later();
      expect(of(id).map(({kind}) => kind)).toEqual(["progress"]);
      goOn();
      await work;
      expect(of(id).at(-1)).toMatchObject({kind: "done", result: 12});
    }
  } finally {
    vi.useRealTimers();
  }
});

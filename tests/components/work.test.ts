import {afterEach, beforeEach, expect, test, vi} from "vitest";
import {stepAside, workPlace} from "../../src/components/worker/work.js";
import {readRawTables} from "../../src/headless/readCatalog.js";

/** A worker that does nothing but note what it is told. */
class Noting {
  static readonly all: Noting[] = [];
  readonly told: unknown[] = [];
  onmessage: ((event: {data: unknown}) => void) | null = null;
  onerror: unknown = null;
  constructor() {
    Noting.all.push(this);
  }
  postMessage(message: unknown) {
    this.told.push(message);
  }
  terminate() {
    this.told.push("ended");
  }
  /** What it was told of rests. */
  get rests() {
    return this.told.filter((message) => typeof message === "object" && message !== null && "rest" in message).map((message) => (message as {rest: boolean}).rest);
  }
}

let page: EventTarget;
let frames: (() => void)[] = [];
/** Paints what waits for a frame, and lets what follows it run. */
const paint = async () => {
  for (const frame of frames.splice(0)) frame();
  await new Promise((resolve) => setTimeout(resolve, 5));
};

beforeEach(() => {
  Noting.all.length = 0;
  page = new EventTarget();
  frames = [];
  vi.stubGlobal("Worker", Noting);
  vi.stubGlobal("window", page);
  vi.stubGlobal("requestAnimationFrame", (frame: () => void) => frames.push(frame));
});
afterEach(() => vi.unstubAllGlobals());

const asked = {} as never;

test("a search rests from a key or a drawing until what came last has been painted; other work goes on", async () => {
  const search = workPlace(readRawTables())("schemes", asked);
  const other = workPlace(readRawTables())("sweep", asked);
  const [searching, sweeping] = Noting.all as [Noting, Noting];
  for (const act of ["keydown", "pointerdown", "input"]) {
    searching.told.length = 0;
    page.dispatchEvent(new Event(act));
    expect(searching.rests).toEqual([true]);
    stepAside();
    await paint();
    expect(searching.rests).toEqual([true, true, false]);
  }
  expect(sweeping.rests).toEqual([]);
  search.cancel();
  other.cancel();
});

test("a search that has come to its end is not told to rest", () => {
  const search = workPlace(readRawTables())("schemes", asked);
  const [searching] = Noting.all as [Noting];
  search.cancel();
  page.dispatchEvent(new Event("keydown"));
  stepAside();
  expect(searching.rests).toEqual([]);
});

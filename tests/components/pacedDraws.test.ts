import {afterEach, beforeEach, expect, test, vi} from "vitest";
import {pacedDraws} from "../../src/components/shared/pacedDraws.js";

let frameMs = 16;
let draws: number[] = [];
const more = () => pacedDraws(() => draws.push(performance.now()));
/** Times between drawings, ms. */
const gaps = () => draws.slice(1).map((ms, i) => ms - (draws[i] as number));

beforeEach(() => {
  [frameMs, draws] = [16, []];
  vi.useFakeTimers({toFake: ["setTimeout", "clearTimeout", "performance"]});
  vi.stubGlobal("requestAnimationFrame", (then: () => void) => setTimeout(then, frameMs));
});
afterEach(() => {
  vi.unstubAllGlobals();
  vi.useRealTimers();
});

/** Tells of more every 20 ms for a while. */
function tell(of: (atOnce: boolean) => void, forMs: number): void {
  for (let ms = 0; ms < forMs; ms += 20) {
    of(false);
    vi.advanceTimersByTime(20);
  }
}

test("the first is drawn at once and the next ones a while later, however often there is more", () => {
  tell(more(), 1300);
  expect(gaps()).toEqual([400, 400, 400]);
});

test("what takes long to paint is drawn the more seldom", () => {
  frameMs = 100;
  tell(more(), 5000);
  // Eight times three frames and a task of 1 ms.
  expect(gaps()).toEqual([2408, 2408]);
});

test("the longer a run goes on the more seldom it is drawn, until another begins", () => {
  const of = more();
  tell(of, 12_000);
  const late = gaps().at(-1) as number;
  expect(late).toBeGreaterThan(1000);
  expect(late).toBeLessThan(1200);
  of(true);
  tell(of, 900);
  expect(gaps().slice(-2)).toEqual([400, 400]);
});

test("a run that begins or ends is drawn at once, and owes no rest to the drawings before it", () => {
  const of = more();
  frameMs = 100;
  tell(of, 100);
  of(true);
  expect(gaps()).toEqual([100]);
  frameMs = 16;
  of(true);
  tell(of, 420);
  expect(gaps()).toEqual([100, 0, 400]);
});

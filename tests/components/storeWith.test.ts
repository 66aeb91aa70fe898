import {expect, test} from "vitest";
import {createStore} from "../../src/components/store.js";
import {inputOf, storeWith} from "../../src/components/shared/storeWith.js";
import {sampleDesign} from "./sample.js";

/** A value of a page that tells its listeners, at once and after a change, as those of the pages do. */
function pageValue() {
  const listeners = new Set<(value: number) => void>();
  return {
    listeners,
    change: (value: number) => listeners.forEach((tell) => tell(value)),
    observe: (tell: (value: number) => void) => {
      listeners.add(tell);
      tell(0);
      return () => void listeners.delete(tell);
    },
  };
}

test("storeWith tells of the design once at first, after each change of it, and after each of the page's value, until it is ended", () => {
  const store = createStore({first: sampleDesign(), check: () => undefined, storage: undefined, later: () => undefined, now: () => 0, download: () => undefined});
  const value = pageValue();
  const spans: number[] = [];
  const stop = storeWith(store, value.observe).observe((design) => spans.push(design.bay.spanFt));
  const first = store.get().bay.spanFt;
  expect(spans).toEqual([first]);
  store.set("bay.spanFt", first + 2);
  value.change(1);
  expect(spans).toEqual([first, first + 2, first + 2]);
  stop();
  store.set("bay.spanFt", first + 4);
  value.change(2);
  expect(spans).toHaveLength(3);
  expect(value.listeners.size).toBe(0);
});

test("inputOf tells of each choice in an element until it is ended", () => {
  const node = new EventTarget() as HTMLElement;
  let told = 0;
  const stop = inputOf(node)(() => (told += 1));
  node.dispatchEvent(new Event("input"));
  expect(told).toBe(1);
  stop();
  node.dispatchEvent(new Event("input"));
  expect(told).toBe(1);
});

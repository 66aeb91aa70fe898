import {expect, test} from "vitest";
import {once} from "./once.js";

test("work that is shared is done when first asked for, and once", () => {
  let times = 0;
  const shared = once(() => {
    times += 1;
    return undefined;
  });
  expect(times).toBe(0);
  expect([shared(), shared()]).toEqual([undefined, undefined]);
  expect(times).toBe(1);
});

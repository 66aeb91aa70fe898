import {expect, test} from "vitest";
import {builtPages} from "./dist.js";
import {siteAndBrowser} from "./reader.js";
import {weights} from "./weights.js";

/** What a reader with a slow connection may be asked to wait for: the first page, and each next one beyond it. */
const FIRST = {requests: 30, bytes: 350_000};
const NEXT_BYTES = 100_000;

const served = siteAndBrowser();

test("the first page comes in few files and little weight, and each next one adds a third of it at most", async () => {
  const {first, next} = await weights(served.browser, served.origin, builtPages());
  expect(first.requests).toBeLessThanOrEqual(FIRST.requests);
  expect(first.bytes).toBeLessThanOrEqual(FIRST.bytes);
  // What a page asks for must be seen at all, or the limits hold of nothing.
  expect(first.bytes).toBeGreaterThan(FIRST.bytes / 4);
  expect(next.filter(({bytes}) => bytes > NEXT_BYTES)).toEqual([]);
});

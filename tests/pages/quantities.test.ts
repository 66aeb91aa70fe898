import fc from "fast-check";
import type {Page} from "playwright-core";
import {afterAll, beforeAll, describe, expect, test} from "vitest";
import type {Design} from "../../lib/design/design.js";
import {withValue} from "../../lib/design/edit.js";
import {FIELDS} from "../../lib/design/fields.js";
import {evaluate} from "../../lib/evaluate.js";
import {InputError} from "../../lib/errors.js";
import {QUANTITIES, type QuantityName} from "../../lib/quantities.js";
import {SEED, valueOf} from "../properties/arbitrary.js";
import {catalog, seeds} from "../support/designs.js";
import {WHOLE_PAGE, faultsOf, marks, openDesign, quantitiesOf, seenWithoutFault, type Mark} from "./marks.js";
import {siteReader} from "./reader.js";

/** Pages that tell a quantity which another page tells too. */
const PAGES = ["/", "/loads", "/deck", "/limits", "/member", "/camber", "/topping", "/edge-beam", "/girder", "/snow", "/roof", "/columns", "/walls", "/story", "/air", "/parking", "/daylight", "/compare", "/record"];
/**
 * Designs drawn at random; each is opened on every fifth page, so that each page sees a fifth of them. The starters are
 * opened on every page, and their quantities read there, by the walk.
 */
const RANDOM_DESIGNS = 30;
const EVERY = 5;
/** A busy machine takes its time. */
const PATIENCE_MS = 400_000;
function worksOut(design: Design): boolean {
  try {
    evaluate(design, catalog);
    return true;
  } catch (problem) {
    if (problem instanceof InputError) return false;
    throw problem;
  }
}

/** One field of a design with any value that it allows; names and words are left, and lists. */
const anyChange = fc.constantFrom(...Object.entries(FIELDS).filter(([path, field]) => field.kind !== "text" && !path.includes("*")))
  .chain(([path, field]) => valueOf(field).map((value) => [path, value] as const));
/** A starter with a few fields changed, wildly or not: what a reader comes by who tries things out. */
const changedStarter = fc.record({start: fc.constantFrom(...seeds), changes: fc.array(anyChange, {minLength: 2, maxLength: 8})})
  .map(({start, changes}) => changes.reduce((design, [path, value]) => withValue(design, path, value), start.design));

const random = fc.sample(changedStarter, {seed: SEED, numRuns: 4 * RANDOM_DESIGNS}).filter(worksOut).slice(0, RANDOM_DESIGNS)
  .map((design, i) => withValue(design, "name", `Drawn at random, ${i}`));

const reader = siteReader();
let page: Page;
/** Where each quantity was met over all tests. */
const met = new Map<QuantityName, Set<string>>();

beforeAll(async () => {
  page = await reader.begin();
  await page.setViewportSize(WHOLE_PAGE);
});
afterAll(() => reader.end());

/** The columns' page tells of one column at a time: each design is looked at through another. */
async function followColumn(i: number): Promise<void> {
  const chooser = page.getByLabel("Follow the load down");
  if (!await chooser.isVisible()) return;
  await chooser.selectOption({index: i % await chooser.locator("option").count()});
}

describe.each(PAGES)("%s", (path) => {
  test("tells each quantity as every other page tells it, for designs drawn at random", async () => {
    const before = reader.problems.length;
    await reader.open(path);
    const place = PAGES.indexOf(path);
    for (const [i, design] of random.filter((_, i) => i % EVERY === place % EVERY).entries()) {
      await openDesign(page, design);
      if (path === "/columns") await followColumn(i);
      const valueOf = quantitiesOf(design);
      const faults = (shown: readonly Mark[]) => faultsOf(design.name, valueOf, shown);
      const shown = await seenWithoutFault(() => marks(page), faults);
      expect(faults(shown)).toEqual([]);
      for (const {quantity, inStrip} of shown) met.set(quantity, (met.get(quantity) ?? new Set()).add(inStrip ? "the strip" : path));
    }
    expect(await page.locator(".observablehq--error").allTextContents()).toEqual([]);
    expect(reader.problems.slice(before)).toEqual([]);
  }, PATIENCE_MS);
});

test("every quantity was met in two places or more", () => {
  const names = Object.keys(QUANTITIES) as QuantityName[];
  expect(names.filter((name) => (met.get(name)?.size ?? 0) < 2)).toEqual([]);
});

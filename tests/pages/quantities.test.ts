import fc from "fast-check";
import type {Page} from "playwright-core";
import {afterAll, beforeAll, describe, expect, test} from "vitest";
import type {Design} from "../../lib/design/design.js";
import {withValue} from "../../lib/design/edit.js";
import {FIELDS} from "../../lib/design/fields.js";
import {columnsOf, evaluate} from "../../lib/evaluate.js";
import {InputError} from "../../lib/errors.js";
import {QUANTITIES, type QuantityName} from "../../lib/quantities.js";
import {SEED, valueOf} from "../properties/arbitrary.js";
import {catalog, seeds} from "../support/designs.js";
import {readShown, reads} from "../support/shownNumber.js";
import {siteReader} from "./reader.js";

/** Pages that tell a quantity which another page tells too. */
const PAGES = ["/", "/loads", "/deck", "/limits", "/member", "/camber", "/topping", "/edge-beam", "/girder", "/columns", "/story", "/daylight", "/record"];
/** Designs drawn at random; each is opened on every fourth page, so that each page sees a quarter of them. */
const RANDOM_DESIGNS = 50;
const EVERY = 4;
/** A busy machine takes its time. */
const PATIENCE_MS = 400_000;
/** All of a page is in sight, so that no picture waits until it is. */
const WHOLE_PAGE = {width: 1280, height: 12_000};

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

/** A number that a page shows, and what it stands for. */
interface Mark {
  readonly quantity: QuantityName;
  readonly text: string;
}

const reader = siteReader();
let page: Page;
/** Where each quantity was met over all tests. */
const met = new Map<QuantityName, Set<string>>();

beforeAll(async () => {
  page = await reader.begin();
  await page.setViewportSize(WHOLE_PAGE);
});
afterAll(() => reader.end());

/** Opens a design in the page that is open, as a reader opens a file. */
async function openDesign(design: Design): Promise<void> {
  await page.locator(".strip-file").setInputFiles({name: "floor.json", mimeType: "application/json", buffer: Buffer.from(JSON.stringify(design))});
  await page.waitForFunction((name) => document.querySelector(".strip-name")?.textContent === name, design.name);
}

/** The columns' page tells of one column at a time: each design is looked at through another. */
async function followColumn(i: number): Promise<void> {
  const chooser = page.getByLabel("Follow the load down");
  if (!await chooser.isVisible()) return;
  await chooser.selectOption({index: i % await chooser.locator("option").count()});
}

/** What the page shows once its frames have passed; parts that the design has not are left out. */
function marks(): Promise<(Mark & {inStrip: boolean})[]> {
  return page.evaluate(async () => {
    for (let i = 0; i < 4; i++) await new Promise(requestAnimationFrame);
    return [...document.querySelectorAll<HTMLElement | SVGElement>("[data-quantity]")].filter((node) => !node.closest("[hidden]"))
      .map((node) => ({quantity: node.dataset["quantity"] as never, text: node.textContent, inStrip: node.closest("#strip") !== null}));
  });
}

/** What a page says otherwise than the library. */
function faultsOf(design: Design, shown: readonly Mark[]): string[] {
  const evaluation = evaluate(design, catalog);
  const columns = () => columnsOf(evaluation, catalog);
  return shown.flatMap(({quantity, text}) => {
    const value = QUANTITIES[quantity](evaluation, columns);
    const unit = quantity.split(", ")[1] ?? "";
    return value !== undefined && reads(readShown(text, unit), value) ? [] : [`${design.name}: ${quantity} reads ${text}, and is ${value}`];
  });
}

describe.each(PAGES)("%s", (path) => {
  test("tells each quantity as every other page tells it, for the starters and for designs drawn at random", async () => {
    const before = reader.problems.length;
    await reader.open(path);
    const place = PAGES.indexOf(path);
    for (const [i, design] of [...seeds.map((seed) => seed.design), ...random.filter((_, i) => i % EVERY === place % EVERY)].entries()) {
      await openDesign(design);
      if (path === "/columns") await followColumn(i);
      // Words lag behind the design by some frames, on a busy machine by many.
      const until = Date.now() + 10_000;
      let shown = await marks();
      while (faultsOf(design, shown).length > 0 && Date.now() < until) shown = await marks();
      expect(faultsOf(design, shown)).toEqual([]);
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

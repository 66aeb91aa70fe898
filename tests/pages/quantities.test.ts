import fc from "fast-check";
import type {Page} from "playwright-core";
import {afterAll, beforeAll, describe, expect, test} from "vitest";
import type {Design} from "../../lib/design/design.js";
import {withValue} from "../../lib/design/edit.js";
import {columnsOf, evaluate} from "../../lib/evaluate.js";
import {InputError} from "../../lib/errors.js";
import {QUANTITIES, type QuantityName} from "../../lib/quantities.js";
import {SEED, fittingDesign} from "../properties/arbitrary.js";
import {catalogue, seeds} from "../support/designs.js";
import {readShown, reads} from "../support/shownNumber.js";
import {siteReader} from "./reader.js";

/** Pages that tell a quantity which another page tells too. */
const PAGES = ["/", "/loads", "/deck", "/limits", "/member", "/camber", "/topping", "/edge-beam", "/girder", "/columns", "/storey", "/daylight", "/record"];
/** Designs drawn by lot; each is opened on every fourth page, so that each page sees a quarter of them. */
const RANDOM_DESIGNS = 50;
const EVERY = 4;
/** All of a page is in sight, so that no picture waits until it is. */
const WHOLE_PAGE = {width: 1280, height: 12_000};

function worksOut(design: Design): boolean {
  try {
    evaluate(design, catalogue);
    return true;
  } catch (problem) {
    if (problem instanceof InputError) return false;
    throw problem;
  }
}

const random = fc.sample(fittingDesign, {seed: SEED, numRuns: 2 * RANDOM_DESIGNS}).filter(worksOut).slice(0, RANDOM_DESIGNS)
  .map((design, i) => withValue(design, "name", `Drawn by lot, ${i}`));

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
  const evaluation = evaluate(design, catalogue);
  const columns = () => columnsOf(evaluation, catalogue);
  return shown.flatMap(({quantity, text}) => {
    const value = QUANTITIES[quantity](evaluation, columns);
    const unit = quantity.split(", ")[1] ?? "";
    return value !== undefined && reads(readShown(text, unit), value) ? [] : [`${design.name}: ${quantity} reads ${text}, and is ${value}`];
  });
}

describe.each(PAGES)("%s", (path) => {
  test("tells each quantity as every other page tells it, for the starters and for designs drawn by lot", async () => {
    await reader.open(path);
    const place = PAGES.indexOf(path);
    for (const design of [...seeds.map((seed) => seed.design), ...random.filter((_, i) => i % EVERY === place % EVERY)]) {
      await openDesign(design);
      // Words lag behind the design by some frames, on a busy machine by many.
      const until = Date.now() + 10_000;
      let shown = await marks();
      while (faultsOf(design, shown).length > 0 && Date.now() < until) shown = await marks();
      expect(faultsOf(design, shown)).toEqual([]);
      for (const {quantity, inStrip} of shown) met.set(quantity, (met.get(quantity) ?? new Set()).add(inStrip ? "the strip" : path));
    }
    expect(await page.locator(".observablehq--error").allTextContents()).toEqual([]);
    expect(reader.problems).toEqual([]);
  });
});

test("every quantity was met in two places or more", () => {
  const names = Object.keys(QUANTITIES) as QuantityName[];
  expect(names.filter((name) => (met.get(name)?.size ?? 0) < 2)).toEqual([]);
});

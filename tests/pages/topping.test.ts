import type {Page} from "playwright-core";
import {afterEach, beforeEach, expect, test} from "vitest";
import {evaluate} from "../../lib/evaluate.js";
import {quantileOf} from "../../lib/topping/distribution.js";
import {floorSpread} from "../../lib/topping/floorSpread.js";
import {SCATTER} from "../../lib/topping/scatter.js";
import {decimals} from "../../lib/units.js";
import {catalog, seeds} from "../support/designs.js";
import {siteReader} from "./reader.js";
import {spreadNow} from "../support/spread.js";

const reader = siteReader();
let page: Page;

beforeEach(async () => {
  page = await reader.begin("/topping");
});
afterEach(async () => {
  expect(reader.problems).toEqual([]);
  await reader.end();
});

const status = () => page.locator(".spread-status").innerText();
/** Every number of the charts, from the tables under them. */
const numbers = () => page.locator(".spread-charts table").evaluateAll((tables) => tables.map((table) => table.textContent));
const box = (label: string) => page.getByLabel(label, {exact: true});
const enter = async (label: string, value: string) => {
  await box(label).fill(value);
  await box(label).press("Enter");
};

test("one seed gives the same pieces again, another seed others, and both are the library's", async () => {
  await expect.poll(status, {timeout: 30_000}).toMatch(/^5,000 pieces tried with seed 1\./);
  const first = await numbers();
  expect(first.length).toBe(4);
  await page.getByRole("button", {name: "Draw again"}).click();
  await expect.poll(status).toMatch(/with seed 2\./);
  const other = await numbers();
  for (const [i, table] of other.entries()) expect(table).not.toBe(first[i]);
  await enter("seed", "1");
  await expect.poll(status).toMatch(/with seed 1\./);
  expect(await numbers()).toEqual(first);

  const {design} = seeds[0] as (typeof seeds)[number];
  const {erection} = spreadNow(floorSpread(evaluate(design, catalog), {scatter: SCATTER, seed: 1, count: 5000, raisedIn: 0}));
  expect(await page.locator(".spread-charts .figure-title").first().innerText()).toContain(`${decimals(quantileOf(erection, 0.05), 2)} to ${decimals(quantileOf(erection, 0.95), 2)} in`);
});

test("follows a change of the design and of the scatter by itself, and raising the surface saves nineteen of twenty", async () => {
  await expect.poll(status, {timeout: 30_000}).toMatch(/^5,000 pieces/);
  await enter("pieces", "20000");
  await expect.poll(status).toMatch(/^20,000 pieces/);
  const before = await numbers();
  await enter("force in the strands, %", "6");
  await expect.poll(numbers).not.toEqual(before);
  const wide = await numbers();
  await page.locator('[data-path="bay.spanFt"] .number-box').first().fill("44");
  await page.locator('[data-path="bay.spanFt"] .number-box').first().press("Enter");
  await expect.poll(numbers).not.toEqual(wide);
  await page.getByRole("button", {name: /^Raise the surface by/}).click();
  await expect.poll(status).toMatch(/the surface raised by/);
  await expect.poll(() => page.locator(".spread-charts .figure-title").nth(2).innerText()).toMatch(/meets that over 19 of 20 at least$/);
});

test("refuses a scatter that cannot be, with the reason, and keeps the last pieces", async () => {
  await expect.poll(status, {timeout: 30_000}).toMatch(/^5,000 pieces/);
  await enter("stiffness, %", "90");
  expect(await page.locator(".spread-controls .control-message:visible").innerText()).toContain("stiffness: 90 % is not possible (0 to 25 %)");
  expect(await status()).toMatch(/^5,000 pieces tried with seed 1\./);
});

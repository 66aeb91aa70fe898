import type {Page} from "playwright-core";
import {afterEach, beforeEach, expect, test} from "vitest";
import {DESIGN_KEY} from "../../src/components/store/persistence.js";
import {withValues} from "../../lib/design/edit.js";
import {seed} from "../support/designs.js";
import {siteReader} from "./reader.js";

const reader = siteReader();
let page: Page;

beforeEach(async () => {
  page = await reader.begin("/record");
});
afterEach(async () => {
  expect(reader.problems).toEqual([]);
  await reader.end();
});

const lead = () => page.locator("p.lead").innerText();
const deck = () => page.locator("#record-deck");
const note = () => deck().locator(".reason-note");
const press = (name: string) => note().getByRole("button", {name}).click();

test("a starter's reason is distinguished from the reader's, and is not counted once the deck is another, until it is affirmed", async () => {
  expect(await lead()).toContain("All of its 9 decisions have a reason that stands, in the starter\u2019s words.");
  expect(await note().innerText()).toBe("The starter\u2019s words, not yours; what you write replaces them.");

  await reader.open("/");
  const span = page.locator('[data-path="bay.spanFt"] .number-box').first();
  await span.fill("44");
  await span.press("Enter");
  await reader.open("/record");
  await expect.poll(() => note().innerText()).toContain("written for an earlier choice: not counted. Changed since: span 40 ft \u2192 44 ft.");
  await expect.poll(lead).toMatch(/^A year from now .* 3 of its 9 decisions have a reason that stands/);
  await page.emulateMedia({media: "print"});
  expect(await deck().locator(".record-reason").innerText()).toMatch(/^Reason in the starter\u2019s words, written for an earlier choice and not counted\. Ten-foot tees.*Changed since: span 40 ft/);
  await page.emulateMedia({media: "screen"});

  await press("Still true");
  await expect.poll(() => note().isVisible()).toBe(false);
  await expect.poll(lead).toContain("4 of its 9 decisions have a reason that stands, 1 in your words and 3 in the starter\u2019s.");
});

test("what the reader writes in a starter's place is the reader's", async () => {
  await page.locator("#record-deck textarea").fill("Three tees fill a bay.");
  await expect.poll(() => note().isVisible()).toBe(false);
  await expect.poll(lead).toContain("1 in your words and 8 in the starter\u2019s.");
});

test("each check that fails has its remedy on the record, and a press mends it as one step", async () => {
  await page.evaluate(([key, text]) => localStorage.setItem(key, text), [DESIGN_KEY, JSON.stringify(withValues(seed("branch-library"), {"edgeBeam.ledgeDepthIn": 5}))] as const);
  await reader.open("/record");
  const open = page.locator(".record-open");
  const failing = open.locator("li[data-verdict='fails']");
  const count = await failing.count();
  expect(count).toBeGreaterThan(5);
  const acts = open.getByRole("button");
  await expect.poll(() => acts.count()).toBe(count);
  const end = failing.filter({hasText: "Ledge under the outermost stem with the strip"});
  expect(await end.innerText()).toContain("Set the edge beam's ledge depth to 13 in rather than 5 in: the check then holds (95\u00a0% of its limit), and no check fails any more.");
  await end.getByRole("button").focus();
  await page.keyboard.press("Enter");
  await expect.poll(() => failing.count()).toBe(0);
  expect(await open.innerText()).toContain("No check fails");
  expect(await page.evaluate(() => document.activeElement?.getAttribute("aria-label"))).toBe("Open checks");
  await page.getByRole("button", {name: "Undo", exact: true}).click();
  await expect.poll(() => failing.count()).toBe(count);
});

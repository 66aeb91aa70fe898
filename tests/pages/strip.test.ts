import type {Page} from "playwright-core";
import {afterEach, beforeEach, describe, expect, test} from "vitest";
import {itemsOf} from "../../src/components/summary.js";
import {DESIGN_KEY} from "../../src/components/store/persistence.js";
import type {Design} from "../../lib/design/design.js";
import {withValues} from "../../lib/design/edit.js";
import {columnsOf, evaluate} from "../../lib/evaluate.js";
import {catalog, seed} from "../support/designs.js";
import {siteReader} from "./reader.js";

const reader = siteReader();
let page: Page;

beforeEach(async () => {
  page = await reader.begin();
});
afterEach(() => reader.end());

async function open(path: string, design: Design): Promise<void> {
  await page.goto(reader.origin);
  await page.evaluate(([key, text]) => localStorage.setItem(key, text), [DESIGN_KEY, JSON.stringify(design)] as const);
  await reader.open(path);
}

/** Fails in its deck, beams, columns, ducts, room and light. */
const POOR = withValues(seed("branch-library"), {
  "bay.spanFt": 62, "bay.floors": 8, "edgeBeam.ledgeDepthIn": 8, "services.mainDepthIn": 7, "services.mainWidthIn": 10,
  "daylight.obstructionDeg": 60, "story.floorToFloorFt": 11, "ground.allowablePsf": 1500,
});
const LONG = "Teachinglaboratoriesandthequietreadingroomsofthewesternwingx";

describe.each([1280, 390])("the strip of a design that fails in many ways, at %i px", (width) => {
  test("shows what fails first, cuts nothing without counting it, and opens the whole by tap and by key", async () => {
    await page.setViewportSize({width, height: 844});
    await open("/methods", POOR);
    const result = evaluate(POOR, catalog);
    const all = itemsOf(result, columnsOf(result, catalog));
    expect(all.filter(({verdict}) => verdict === "fails").length).toBeGreaterThan(4);
    const labels = () => page.locator(".strip-items li:not([hidden]) .strip-label").allTextContents();
    const more = page.locator(".strip-more");
    // The columns come once the reader's hand rests.
    await expect.poll(async () => (await labels()).length + Number((await more.textContent())?.match(/\d+/)?.[0] ?? 0)).toBe(all.length);
    expect(await labels()).toEqual(all.slice(0, (await labels()).length).map(({label}) => label));
    expect(await more.innerText()).toMatch(/^and \d+ more/);

    const cut = () => page.locator(".strip-items, .strip-items li:not([hidden]), .strip-row").evaluateAll((nodes) => nodes.filter((node) => node.scrollWidth > node.clientWidth + 1).map((node) => node.className));
    expect(await cut()).toEqual([]);
    const inside = await page.locator(".strip-more, .strip-items li:not([hidden]), .strip-tools").evaluateAll((nodes) => nodes.every((node) => {
      const {left, right} = node.getBoundingClientRect();
      return left >= 0 && right <= window.innerWidth;
    }));
    expect(inside).toBe(true);

    const whole = page.locator(".strip-whole");
    for (const opens of [() => more.click(), async () => {
      await more.focus();
      await page.keyboard.press("Enter");
    }]) {
      await opens();
      await expect.poll(() => whole.locator("li").count()).toBe(all.length);
      for (const {check} of all) if (check) expect(await whole.innerText()).toContain(check);
      const box = await whole.boundingBox();
      expect(box && box.x >= 0 && box.x + box.width <= width && box.y > 0).toBe(true);
      await page.keyboard.press("Escape");
      await expect.poll(() => whole.isVisible()).toBe(false);
    }
    expect(reader.problems).toEqual([]);
  });
});

test("a name of 60 letters without a space widens no page on a phone, and the column of loads writes all of it", async () => {
  await page.setViewportSize({width: 390, height: 844});
  const design = withValues(seed("classroom-wing"), {"name": LONG, "loads.rooms.0.name": `B${LONG}`.slice(0, 60), "loads.rooms.1.name": LONG, "loads.layers.0.name": LONG});
  for (const path of ["/", "/loads", "/reduction", "/deck", "/columns", "/record"]) {
    await open(path, design);
    await expect.poll(() => page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth), {message: path}).toBeLessThanOrEqual(0);
  }
  await open("/loads", seed("classroom-wing"));
  const column = () => page.locator("svg.drawing-load text").allTextContents();
  expect((await column()).filter((text) => text.includes("\u2026"))).toEqual([]);
  await open("/loads", design);
  expect((await column()).join("").replace(/\s/g, "")).toContain(LONG);
});

test("the line below the strip of a design that fails says the first remedy, a press of the keyboard does it, and undo takes it back", async () => {
  await open("/methods", withValues(seed("branch-library"), {"edgeBeam.ledgeDepthIn": 5}));
  const line = page.locator(".remedy");
  const act = line.getByRole("button", {name: "Do this"});
  const depth = () => page.evaluate((key) => (JSON.parse(localStorage.getItem(key) ?? "{}") as Design).edgeBeam.ledgeDepthIn, DESIGN_KEY);
  const failing = async () => Number(/^(\d+) of \d+ checks? fails?$/.exec((await line.locator(".remedy-fold").innerText()).trim())?.[1]);
  /** What is shown once it is of the design as it stands. */
  const shown = async () => {
    await expect.poll(() => line.getAttribute("data-stale")).toBe("false");
    return {failing: await failing(), words: await line.getByRole("status").innerText()};
  };
  await expect.poll(() => act.isVisible()).toBe(true);
  const before = await shown();
  expect(before.words).toMatch(/^First: Depth of the ledge\. Set the edge beam's ledge depth to 8 in rather than 5 in: the check then just holds, and so do \d others; nothing new fails\.$/);

  await act.focus();
  await page.keyboard.press("Enter");
  await expect.poll(depth).toBe(8);
  const after = await shown();
  expect(after.failing).toBeLessThan(before.failing);
  expect(await page.evaluate(() => document.activeElement?.textContent)).toBe("Do this");
  await line.getByRole("button", {name: "Undo it"}).focus();
  await page.keyboard.press("Enter");
  await expect.poll(depth).toBe(5);
  await expect.poll(shown).toEqual(before);
  expect(await page.evaluate(() => document.activeElement?.textContent)).toBe("Do this");

  // A phone has room for the first check alone, and unfolds the rest; pressed to the end, nothing fails.
  await page.setViewportSize({width: 390, height: 844});
  const fold = line.locator(".remedy-fold");
  await fold.focus();
  await page.keyboard.press("Enter");
  await expect.poll(() => act.isVisible()).toBe(false);
  await page.keyboard.press("Enter");
  let left = before.failing;
  for (;;) {
    await act.focus();
    await page.keyboard.press("Enter");
    await expect.poll(() => line.getAttribute("data-stale")).toBe("true");
    await expect.poll(() => line.getAttribute("data-stale")).toBe("false");
    if ((await line.getAttribute("data-verdict")) === "ok") break;
    const now = await failing();
    expect(now).toBeLessThan(left);
    left = now;
  }
  expect(await fold.innerText()).toContain("No check fails any more");
  expect(await page.evaluate(() => document.activeElement?.textContent)).toBe("Undo it");
  expect(reader.problems).toEqual([]);
});

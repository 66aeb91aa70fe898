import {expect, test} from "vitest";
import {seeds} from "../support/designs.js";
import {settled} from "./browser.js";
import {builtPages, placeOf} from "./dist.js";
import {siteAndBrowser} from "./reader.js";

/** How far what is seen of a page may move while it loads: the shares of the window that moved, times how far, in all. */
const SHIFT = 0.05;
/** Markdown, markup or an entity that stands in a sentence as it was typed. */
const RAW = /\]\(|\*\*|`|<\/?[a-z]|&[a-z]+;|(^|\s)[*_]\p{L}/imu;

const served = siteAndBrowser();

/** Words of a picture of which the end is hidden by the part of the page that holds it; a pixel or three are a font's. */
const cutWords = () => [...document.querySelectorAll("main svg text")].flatMap((node) => {
  const at = node.getBoundingClientRect();
  if (at.width === 0 || node.closest("details:not([open])")) return [];
  for (let box = node.parentElement; box; box = box.parentElement) {
    const inside = box instanceof SVGElement && !(box instanceof SVGSVGElement);
    if (inside || getComputedStyle(box).overflowX === "visible") continue;
    const {left, right} = box.getBoundingClientRect();
    if (at.left < left - 3 || at.right > right + 3) return [node.textContent];
  }
  return [];
});

/** Pages take turns between the two widths, and the first page has both: all at each would take minutes. */
const pagesAt = (width: number) => builtPages().filter((path, i) => placeOf(path) === "/" || (i % 2 === 0) === (width === 1280));

test.each([1280, 390])("no page moves about while it loads, %i px wide; none cuts the words of its pictures or shows what it is written in", async (width) => {
  for (const path of pagesAt(width)) {
    // Each page as one who comes for the first time: nothing is kept in the browser.
    const context = await served.browser.newContext({viewport: {width, height: 850}});
    const page = await context.newPage();
    await page.addInitScript(() => {
      const seen = {shift: 0};
      Object.assign(window, {seen});
      new PerformanceObserver((list) => {
        for (const entry of list.getEntries() as (PerformanceEntry & {value: number; hadRecentInput: boolean})[]) seen.shift += entry.hadRecentInput ? 0 : entry.value;
      }).observe({type: "layout-shift", buffered: true});
    });
    await page.goto(served.origin + placeOf(path));
    await settled(page);
    await page.waitForTimeout(600);
    expect(await page.evaluate(() => (window as unknown as {seen: {shift: number}}).seen.shift), `${path}: layout shift`).toBeLessThanOrEqual(SHIFT);
    expect(await page.evaluate(cutWords), `${path}: words cut`).toEqual([]);
    const text = await page.locator("body").innerText();
    expect(text, path).toContain("Caution.");
    expect(RAW.exec(text)?.[0], `${path}: ${text.slice((RAW.exec(text)?.index ?? 0) - 60).slice(0, 120)}`).toBeUndefined();
    await context.close();
  }
}, 240_000);

test.each([1280, 390])("the letters of the limits stand on their curves and on no words, %i px wide", async (width) => {
  // Two starters at each width.
  for (const {id} of seeds.filter((_, i) => (i % 2 === 0) === (width === 1280))) {
    const context = await served.browser.newContext({viewport: {width, height: 850}});
    const page = await context.newPage();
    await page.goto(served.origin + placeOf("/"));
    await settled(page);
    await page.locator(`#starter-${id}`).getByRole("button").first().click();
    await page.goto(served.origin + placeOf("/limits"));
    await settled(page);
    const {letters, on} = await page.evaluate(() => {
      const found = [...document.querySelectorAll(".limit-letter")];
      // The box of a text is higher than its letters.
      const boxes = [...(found[0]?.closest("svg")?.querySelectorAll("text") ?? [])].map((node) => {
        const {left, right, top, bottom} = node.getBoundingClientRect();
        return {text: node.textContent, letter: found.includes(node), left: left + 1, right: right - 1, top: top + 3, bottom: bottom - 3};
      });
      return {letters: found.length, on: boxes.filter(({letter}) => letter).flatMap((a) =>
        boxes.filter((b) => a !== b && a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom).map((b) => `${a.text} on ${b.text}`))};
    });
    expect(letters, id).toBeGreaterThan(4);
    expect(on, id).toEqual([]);
    await context.close();
  }
});

import {expect, test} from "vitest";
import {settled} from "./browser.js";
import {builtPages, placeOf} from "./dist.js";
import {siteAndBrowser} from "./reader.js";

/** How far what is seen of a page may move while it loads: the shares of the window that moved, times how far, in all. */
const SHIFT = 0.05;
/** Markdown, markup or an entity that stands in a sentence as it was typed. */
const RAW = /\]\(|\*\*|`|<\/?[a-z]|&[a-z]+;|(^|\s)[*_]\p{L}/imu;

const served = siteAndBrowser();

test.each([1280, 390])("no page moves about while it loads, %i px wide, and none shows what it is written in", async (width) => {
  for (const path of builtPages()) {
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
    const text = await page.locator("body").innerText();
    expect(text, path).toContain("Caution.");
    expect(RAW.exec(text)?.[0], `${path}: ${text.slice((RAW.exec(text)?.index ?? 0) - 60).slice(0, 120)}`).toBeUndefined();
    await context.close();
  }
}, 240_000);

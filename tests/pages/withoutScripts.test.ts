import {afterAll, beforeAll, expect, test} from "vitest";
import type {Browser} from "playwright-core";
import {launch} from "./browser.js";
import {DIST, builtPages} from "./dist.js";
import {serve, type Site} from "./serve.js";

let site: Site;
let browser: Browser;

beforeAll(async () => {
  [site, browser] = await Promise.all([serve(DIST), launch()]);
});

afterAll(async () => {
  await browser?.close();
  await site?.close();
});

test("without scripts every page says what it is and what it needs, and shows no half sentence", async () => {
  const context = await browser.newContext({javaScriptEnabled: false});
  const page = await context.newPage();
  for (const path of builtPages()) {
    await page.goto(site.origin + path);
    expect(await page.locator(".without-scripts").innerText(), path).toContain("needs scripts");
    expect((await page.locator("#observablehq-main").innerText()).trim(), path).toBe((await page.locator("#observablehq-main h1").innerText()).trim());
    // The caution stays, whatever the browser can do.
    expect(await page.locator("#observablehq-footer").innerText(), path).toContain("preliminary sizing only");
  }
});

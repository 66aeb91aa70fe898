import {expect, test} from "vitest";
import {builtPages, placeOf} from "./dist.js";
import {siteAndBrowser} from "./reader.js";

const served = siteAndBrowser();

test("without scripts every page says what it is and what it needs, and shows no half sentence", async () => {
  const context = await served.browser.newContext({javaScriptEnabled: false});
  const page = await context.newPage();
  page.setDefaultTimeout(90_000);
  for (const path of builtPages()) {
    await page.goto(served.origin + placeOf(path));
    expect(await page.locator(".without-scripts").innerText(), path).toContain("needs scripts");
    expect((await page.locator("#observablehq-main").innerText()).trim(), path).toBe((await page.locator("#observablehq-main h1").innerText()).trim());
    // The caution stays, whatever the browser can do.
    expect(await page.locator("#observablehq-footer").innerText(), path).toContain("preliminary sizing only");
  }
});

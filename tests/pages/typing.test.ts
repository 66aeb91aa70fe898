import type {Locator, Page} from "playwright-core";
import {afterEach, beforeEach, describe, expect, test} from "vitest";
import {DESIGN_KEY} from "../../src/components/store/persistence.js";
import {settled} from "./browser.js";
import {siteReader} from "./reader.js";

const reader = siteReader();
let page: Page;
beforeEach(async () => {
  page = await reader.begin("/");
});
afterEach(async () => {
  expect(reader.problems).toEqual([]);
  await reader.end();
});

const control = (path = "bay.spanFt") => page.locator(`[data-path="${path}"]`).first();
const box = (path?: string): Locator => control(path).locator(".number-box");
const message = (path?: string): Locator => control(path).locator(".control-message");
const notice = () => page.locator(".notice");
const shown = () => box().inputValue();

/** The span as the browser keeps it, ft. */
async function keptFt(): Promise<number> {
  await page.evaluate(() => window.dispatchEvent(new Event("pagehide")));
  return page.evaluate((key) => (JSON.parse(localStorage.getItem(key) ?? "{}") as {bay: {spanFt: number}}).bay.spanFt, DESIGN_KEY);
}

/** Types as a person does, key by key, and leaves the text as it stands. */
async function type(text: string): Promise<void> {
  await box().click({clickCount: 3});
  await page.keyboard.type(text);
}

describe("a length in feet", () => {
  test("is taken as it is spelled, shown as drawings have it, and kept in decimal feet", async () => {
    for (const text of ["44'-8\"", "44' 8", "44-8", "536in", "44\u2019-8\u201d", "44 ft 8 in"]) {
      await type("40");
      await page.keyboard.press("Enter");
      expect(await shown()).toBe("40'-0\"");
      await type(text);
      await page.keyboard.press("Enter");
      expect(await shown(), text).toBe("44'-8\"");
      expect(await keptFt(), text).toBeCloseTo(536 / 12, 12);
    }
    await type("44.5");
    await page.keyboard.press("Enter");
    expect([await shown(), await keptFt()]).toEqual(["44'-6\"", 44.5]);
    await expect.poll(() => page.locator("main").innerText()).toContain("44'-6\"");
  });

  test("goes by the inch in its box, by the foot with Shift, and by the field's step on its slider", async () => {
    await type("40");
    await page.keyboard.press("Enter");
    await box().press("ArrowUp");
    expect(await shown()).toBe("40'-1\"");
    await box().press("Shift+ArrowDown");
    expect(await shown()).toBe("39'-1\"");
    await control().locator(".slider").press("ArrowRight");
    expect([await shown(), await control().locator(".slider").getAttribute("aria-valuetext")]).toEqual(["40'-0\"", "40'-0\""]);
  });

  test("that is refused stays as it was typed, with the reason, the range, and how it may be written", async () => {
    for (const [text, reason] of [["44 1/2", "a length, 10 to 150 ft, such as 14'-8\", 14-8, 14.667 or 176in"], ["44'-13\"", "a length, 10 to 150 ft"], ["200'-0\"", "10 to 150 ft"]] as const) {
      await type(text);
      await page.keyboard.press("Tab");
      expect(await shown()).toBe(text);
      expect(await message().innerText()).toContain(`span: ${text} is not possible (${reason}`);
    }
  });
});

test("a refused text stays with its reason while other things change, until it is mended or given up", async () => {
  const before = await shown();
  await type("44 1/2");
  await control("bay.beamSpanFt").locator(".slider").press("ArrowRight");
  expect([await shown(), await message().isVisible()]).toEqual(["44 1/2", true]);
  await box().press("Escape");
  expect([await shown(), await message().isVisible()]).toEqual([before, false]);
});

describe("a number that is typed without Enter", () => {
  test("is kept when the page is loaded anew, and undone after it", async () => {
    const before = await shown();
    await type("44-8");
    await page.reload();
    await settled(page);
    expect(await shown()).toBe("44'-8\"");
    await page.getByRole("button", {name: "Undo"}).click();
    expect(await shown()).toBe(before);
  });

  test("is kept when the reader goes to another page, by its address, by a link and by the way back", async () => {
    await type("41");
    await reader.open("/deck");
    expect(await shown()).toBe("41'-0\"");
    await type("42");
    await page.locator(".onward a").first().click();
    await settled(page);
    await reader.open("/member");
    expect(await shown()).toBe("42'-0\"");
    await type("43");
    await page.goBack();
    await reader.open("/");
    expect(await shown()).toBe("43'-0\"");
  });

  test("is taken when the tab is hidden", async () => {
    await type("41");
    await page.evaluate(() => {
      Object.defineProperty(document, "visibilityState", {value: "hidden", configurable: true});
      document.dispatchEvent(new Event("visibilitychange"));
    });
    expect(await shown()).toBe("41'-0\"");
  });

  test("and is not possible is reported on the next page, once", async () => {
    const before = await shown();
    await type("44 1/2");
    await reader.open("/deck");
    expect(await notice().innerText()).toContain("What was typed on the page before was not accepted. span: 44 1/2 is not possible (a length, 10 to 150 ft");
    expect(await shown()).toBe(before);
    await reader.open("/loads");
    expect(await notice().isVisible()).toBe(false);
  });
});

test("all steps, back and forward, are there after a reload and on other pages", async () => {
  const first = await shown();
  for (const ft of ["41", "42", "43"]) {
    await type(ft);
    await page.keyboard.press("Enter");
    // Changes of one number that follow at once are one step.
    await page.waitForTimeout(700);
  }
  await page.getByRole("button", {name: "Undo"}).click();
  await page.reload();
  await settled(page);
  expect(await shown()).toBe("42'-0\"");
  await page.getByRole("button", {name: "Redo"}).click();
  expect(await shown()).toBe("43'-0\"");
  await reader.open("/deck");
  for (const wanted of ["42'-0\"", "41'-0\"", first]) {
    await page.getByRole("button", {name: "Undo"}).click();
    await expect.poll(shown).toBe(wanted);
  }
  expect(await page.getByRole("button", {name: "Undo"}).isDisabled()).toBe(true);
});

test("a file that is no design is reported in words, without its bytes, and one of a later version by the versions that are read", async () => {
  const open = (name: string, buffer: Buffer) => page.locator(".strip-file").setInputFiles({name, mimeType: "application/json", buffer});
  await open("photo.json", Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a, 0, 0, 0, 0x0d]));
  await expect.poll(() => notice().innerText()).toContain("The open design is as it was: photo.json was not opened. design file: a file that is not text is not possible (JSON text)");
  await open("later.json", Buffer.from('{"format":"plank-and-tee-design","version":99}'));
  await expect.poll(() => notice().innerText()).toMatch(/version of the design file: 99 is not possible \(this kit reads versions 1 to \d+\)\. It was saved by a newer version of the kit/);
});

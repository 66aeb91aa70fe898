import type {Locator, Page} from "playwright-core";
import {afterEach, beforeEach, describe, expect, test} from "vitest";
import {siteReader} from "./reader.js";

const reader = siteReader();
let page: Page;
beforeEach(async () => {
  page = await reader.begin("/deck");
});
afterEach(() => reader.end());

/** The control of the release strength, which may not pass the concrete strength: 5,000 psi in the first starter. */
const PATH = "deck.releaseStrengthPsi";
const REFUSAL = /release strength: [\d.]+ psi is not possible \(2500 to \d+ psi/;

interface Parts {
  readonly box: Locator;
  readonly slider: Locator;
  readonly message: Locator;
}

function control(): Parts {
  const node = page.locator(`[data-path="${PATH}"]`).first();
  return {box: node.locator(".number-box"), slider: node.locator(".slider"), message: node.locator(".control-message")};
}

/** Sets the highest release strength that the concrete allows, and returns it. */
async function atItsLimit(): Promise<string> {
  const strength = (await page.locator('[data-path="deck.strengthPsi"] .number-box').first().inputValue()).replace(/,/g, "");
  const {box, message} = control();
  await box.fill(strength);
  await box.press("Enter");
  await expect.poll(() => message.isVisible()).toBe(false);
  return strength;
}

describe("a value that the rest of the design does not allow is refused with its reason, and the old one stays,", () => {
  test("typed", async () => {
    await atItsLimit();
    const {box, message} = control();
    await box.fill("9900");
    await box.press("Enter");
    expect(await message.innerText()).toMatch(REFUSAL);
  });

  test("by an arrow key on the slider and in the box", async () => {
    const strength = await atItsLimit();
    for (const part of ["slider", "box"] as const) {
      const {box, message, [part]: pressed} = control();
      await pressed.press("ArrowUp");
      expect(await message.innerText(), part).toMatch(REFUSAL);
      expect(await box.inputValue(), part).toBe(strength);
      await pressed.press("ArrowDown");
      expect(await message.isVisible(), part).toBe(false);
      await pressed.press("ArrowUp");
    }
  });

  test("by dragging the slider", async () => {
    const strength = await atItsLimit();
    const {box, slider, message} = control();
    await slider.scrollIntoViewIfNeeded();
    const at = await slider.boundingBox();
    if (!at) throw new Error("the slider is not on the page");
    await page.mouse.move(at.x + at.width / 3, at.y + at.height / 2);
    await page.mouse.down();
    await page.mouse.move(at.x + at.width - 2, at.y + at.height / 2, {steps: 5});
    expect(await message.innerText()).toMatch(REFUSAL);
    await page.mouse.up();
    expect(await message.innerText()).toMatch(REFUSAL);
    expect(Number(await box.inputValue())).toBeLessThanOrEqual(Number(strength));
    expect(await slider.inputValue()).toBe(await box.inputValue());
  });
});

test("a refusal goes once the design has changed", async () => {
  await atItsLimit();
  const {slider, message} = control();
  await slider.press("ArrowUp");
  expect(await message.isVisible()).toBe(true);
  await page.locator('[data-path="bay.spanFt"] .slider').first().press("ArrowUp");
  await expect.poll(() => message.isVisible()).toBe(false);
});

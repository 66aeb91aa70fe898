import {readFileSync} from "node:fs";
import type {Locator, Page} from "playwright-core";
import {afterEach, beforeEach, describe, expect, test} from "vitest";
import {DESIGN_KEY} from "../../src/components/store/persistence.js";
import {seeds} from "../support/designs.js";
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

describe("the page that compares, by keyboard alone,", () => {
  const cards = () => page.locator(".pin-card");
  const said = () => page.locator(".pin-said").innerText();
  const press = async (name: string | RegExp, key = "Enter") => {
    await page.getByRole("button", {name}).first().focus();
    await page.keyboard.press(key);
  };
  /** What stands below the section of the open design's deck. */
  const drawn = () => page.locator(".side-words").first().innerText();
  /** The table's row of a measure, as it reads. */
  const row = (name: string) => page.locator(".compare tr", {has: page.locator("th", {hasText: name})}).first().innerText();

  test("pins the open design and a moment of its past, names them, notes, puts one into the design, undoes, removes and brings back", async () => {
    const span = page.locator('[data-path="bay.spanFt"] .number-box').first();
    await span.fill("60");
    await span.press("Enter");
    await reader.open("/compare");
    expect(await cards().count()).toBe(0);
    await press("Pin the open design");
    expect(await said()).toMatch(/^Pinned as A: /);
    await press("Pin the open design");
    expect(await said()).toMatch(/^This design is pinned already, as A: /);
    const moment = page.getByLabel("An earlier moment of the open design");
    await moment.focus();
    expect(await moment.locator("option").first().innerText()).toBe("1 step back: before span 40 ft \u2192 60 ft");
    await page.keyboard.press("Tab");
    await page.keyboard.press("Enter");
    await expect.poll(() => cards().count()).toBe(2);
    await expect.poll(() => cards().nth(1).innerText()).toContain("No check fails");
    expect(await cards().nth(0).innerText()).toMatch(/\d+ checks? fails?|One check fails/);
    await expect.poll(() => row("Checks that fail")).toMatch(/\d+\s+\d+\s+alike\s+0\s+better by \d+/);

    const name = page.getByLabel("Name of pinned design B");
    await name.focus();
    await page.keyboard.press("Control+A");
    await page.keyboard.type("As it was");
    await page.keyboard.press("Tab");
    await expect.poll(() => page.locator(".compare thead").first().innerText()).toContain("As it was");
    // The next stop is the note.
    await page.keyboard.type("It holds.");
    await page.reload();
    await reader.open("/compare");
    expect(await page.getByLabel("Note on pinned design B").inputValue()).toBe("It holds.");
    expect(await name.inputValue()).toBe("As it was");

    await press("Put it into the open design: B");
    await expect.poll(drawn).toContain("spans 40'-0\"");
    expect(await said()).toContain("is now the open design");
    await press("Undo");
    await expect.poll(drawn).toContain("spans 60'-0\"");

    await press("Remove A");
    await expect.poll(() => cards().count()).toBe(1);
    expect(await page.evaluate(() => document.activeElement?.textContent)).toBe("Bring it back");
    await page.keyboard.press("Enter");
    await expect.poll(() => cards().count()).toBe(2);
    expect(reader.problems).toEqual([]);
  });

  test("takes files, refuses one that is no design with its reason, and shows what another tab pins", async () => {
    await reader.open("/compare");
    const [, second] = seeds;
    const text = JSON.stringify({...second?.design, name: "A longer name"});
    const file = (label: string, content: string) => ({name: label, mimeType: "application/json", buffer: Buffer.from(content)});
    await page.locator(".pin-file").setInputFiles([file("longer.json", text), file("bad.json", "{")]);
    await expect.poll(said).toContain("bad.json was not pinned.");
    expect(await cards().count()).toBe(1);
    expect(await cards().first().innerText()).toContain("from longer.json");
    // The whole comparison goes to a file and comes back from it.
    const save = page.getByRole("button", {name: "Save the comparison as a file"});
    const [saved] = await Promise.all([page.waitForEvent("download"), save.click()]);
    expect(saved.suggestedFilename()).toMatch(/-comparison\.json$/);
    const comparison = readFileSync(await saved.path(), "utf8");
    await page.locator(".pin-file").setInputFiles([file("all.json", comparison)]);
    await expect.poll(said).toBe("all.json: 0 designs pinned, 1 pinned already.");
    await page.locator(".pin-file").setInputFiles([file("wide.json", comparison.replace(/"spanFt": [\d.]+/g, '"spanFt": 400'))]);
    await expect.poll(said).toMatch(/^wide\.json was not pinned\. the open design, span: 400 ft is not possible/);
    const other = await reader.another();
    await other.page.goto(page.url());
    await other.page.getByRole("button", {name: "Remove A"}).click();
    await page.bringToFront();
    await expect.poll(() => cards().count()).toBe(0);
    expect(other.problems).toEqual([]);
  });
});

describe("the pages of whole buildings, by keyboard alone,", () => {
  const status = () => page.locator(".scheme-status p").innerText();
  const name = () => page.locator(".scheme-name").innerText();
  const press = async (label: string) => {
    await page.getByRole("button", {name: label}).first().focus();
    await page.keyboard.press("Enter");
  };
  /** The open design's span, as its own page shows it. */
  const designSpan = () => page.evaluate((key) => (JSON.parse(localStorage.getItem(key) ?? "{}") as {bay?: {spanFt: number}}).bay?.spanFt, DESIGN_KEY);

  test("the width answers while the schemes are made, the arrows move the span, one press puts a scheme in and undo takes it out", async () => {
    await reader.open("/width");
    const stack = page.locator(".width-stack");
    // How long a key takes to its paint while the search runs beside the page; on a busy machine some wait for the machine.
    await stack.focus();
    const waits = await stack.evaluate(async (node) => {
      const found: number[] = [];
      for (let i = 0; i < 12; i++) {
        const asked = performance.now();
        node.dispatchEvent(new KeyboardEvent("keydown", {key: i % 2 ? "ArrowLeft" : "ArrowRight", bubbles: true, cancelable: true}));
        await new Promise((done) => requestAnimationFrame(() => done(undefined)));
        found.push(performance.now() - asked);
        await new Promise((done) => setTimeout(done, 20));
      }
      return found;
    });
    expect(waits.sort((a, b) => a - b)[4]).toBeLessThan(100);
    await expect.poll(status, {timeout: 120_000}).toMatch(/^81 whole buildings/);
    expect(await stack.getAttribute("aria-valuenow")).toBe("40");
    await page.keyboard.press("ArrowLeft");
    await page.keyboard.press("ArrowLeft");
    expect(await stack.getAttribute("aria-valuetext")).toMatch(/^38 ft: \S+ \d+-\S+, /);
    await expect.poll(() => page.getByRole("button", {name: "Put it into the design"}).isEnabled()).toBe(true);
    await press("Put it into the design");
    await expect.poll(() => page.locator(".scheme-note").innerText()).toContain("It is in the design now");
    expect(await status(), "nothing is computed anew for it").toMatch(/^81 whole buildings/);
    await expect.poll(designSpan).toBe(38);
    await press("Undo");
    await expect.poll(designSpan).toBe(40);
    for (const [key, span] of [["Home", "20"], ["End", "100"]] as const) {
      await stack.focus();
      await page.keyboard.press(key);
      expect(await stack.getAttribute("aria-valuenow")).toBe(span);
    }
    expect(await stack.getAttribute("aria-valuetext")).toMatch(/strongest/);
    expect(reader.problems).toEqual([]);
  });

  test("the page of bays answers while thousands of schemes are made; what is out of sight is drawn for paper, as the reader comes to it, and at the end", async () => {
    await reader.open("/bay");
    const fails = page.locator(".bay-fails");
    const measure = page.locator(".bay-measure");
    await expect.poll(() => fails.innerText(), {timeout: 180_000}).toMatch(/of 231 schemes hold/);
    // Every kind of deck, edge beam and girder over two spans, with columns.
    for (const label of ["all", "2", "every kind", "sized and counted"]) await page.locator(".bay-controls").getByText(label, {exact: true}).click();
    await measure.scrollIntoViewIfNeeded();
    await expect.poll(status, {timeout: 60_000}).toMatch(/^Searching: [1-9][\d,]* of 3,696/);
    // From a change of the measure to the message after the frame in which the map has it; on a busy machine some wait for the machine.
    const waits = await measure.evaluate(async (node: HTMLSelectElement) => {
      const found: number[] = [];
      for (let i = 0; i < 12; i++) {
        const asked = performance.now();
        node.selectedIndex = i % 2;
        node.dispatchEvent(new Event("change"));
        await new Promise((done) => requestAnimationFrame(() => setTimeout(done)));
        found.push(performance.now() - asked);
        await new Promise((done) => setTimeout(done, 30));
      }
      return found;
    });
    expect(await fails.innerText()).toMatch(/of 231 schemes hold/);
    expect(waits.sort((a, b) => a - b)[3]).toBeLessThan(100);
    await page.evaluate(() => window.dispatchEvent(new Event("beforeprint")));
    const printed = await fails.innerText();
    expect(printed).not.toMatch(/of 231 schemes hold/);
    await page.evaluate(() => window.dispatchEvent(new Event("afterprint")));
    await fails.scrollIntoViewIfNeeded();
    await expect.poll(() => fails.innerText()).not.toBe(printed);
    expect(await status()).toMatch(/^Searching/);
    await measure.scrollIntoViewIfNeeded();
    await press("Cancel");
    const made = /^Canceled after ([\d,]+) of 3,696/.exec(await status())?.[1];
    await expect.poll(() => fails.innerText()).toContain(`of ${made} schemes hold`);
    expect(reader.problems).toEqual([]);
  });

  test("the map of bays is walked by the arrows, a cell is chosen, ranges narrow what counts, and what fails is told", async () => {
    await reader.open("/bay");
    await expect.poll(status, {timeout: 180_000}).toMatch(/^\d+ whole buildings/);
    await page.locator(".bay-map td[tabindex='0']").focus();
    for (const key of ["ArrowRight", "ArrowRight", "ArrowRight", "ArrowDown", "ArrowDown"]) await page.keyboard.press(key);
    await expect.poll(() => page.locator(".bay-said").innerText()).toMatch(/^Deck 32 ft, beams 52 ft: /);
    await page.keyboard.press("Enter");
    await expect.poll(() => page.locator(".scheme-words").first().innerText()).toContain("over 32 ft, beams of 52 ft");
    expect(await name()).toMatch(/\d+-\S+/);
    await expect.poll(() => page.locator(".scheme-pictures .figure-body > svg").count()).toBe(3);
    const finding = () => page.locator(".bay-finding").innerText();
    await expect.poll(finding).toMatch(/^Of \d+ schemes that hold, \d+ (is|are) beaten by none/);
    const all = Number(/^Of (\d+)/.exec(await finding())?.[1]);
    const most = page.getByLabel("floor-to-floor height, most, ft");
    await most.focus();
    // Lower than any story of these decks and beams.
    await page.keyboard.type("9");
    await page.keyboard.press("Enter");
    await expect.poll(finding).toMatch(/^No scheme that was made holds within these ranges/);
    expect(all).toBeGreaterThan(0);
    await press("Clear the ranges");
    await expect.poll(finding).toMatch(new RegExp(`^Of ${all} `));
    expect(await page.locator(".bay-fails").innerText()).toMatch(/schemes hold; \d+ fail a check, and \d+ cannot be made/);
    expect(await page.locator(".bay-fails tbody tr").count()).toBeGreaterThan(0);

    // A handle of a range moves by the arrows, and its end is free again at the end of the line.
    const handle = page.getByRole("slider", {name: "floor-to-floor height, most: handle"});
    await handle.focus();
    await page.keyboard.press("PageDown");
    await expect.poll(finding).toContain("with floor-to-floor height up to ");
    await page.keyboard.press("End");
    expect(await handle.getAttribute("aria-valuetext")).toBe("free");
    await expect.poll(finding).toMatch(new RegExp(`^Of ${all} `));

    // A part is marked out with Shift, looked at more closely, and all bays are there again at once.
    const looked = () => page.locator(".bay-window").innerText();
    await page.locator(".bay-map td[tabindex='0']").focus();
    await page.keyboard.press("Shift+ArrowRight");
    await page.keyboard.press("Shift+ArrowDown");
    expect(await page.locator(".bay-map td.is-marked").count()).toBe(4);
    await press("Look closer at the marked part");
    await expect.poll(looked).toMatch(/deck spans from 32 to 36 ft and beam spans from 48 to 52 ft, every 2 ft/);
    await expect.poll(status, {timeout: 60_000}).toMatch(/^\d+ whole buildings/);
    expect(await page.locator(".bay-map td").count()).toBe(9);
    await press("All bays, every 4 ft");
    await expect.poll(() => page.locator(".bay-map td").count()).toBe(231);
    expect(reader.problems).toEqual([]);
  });

  test("unit prices are blank, refused by name where they are not possible, and make a cost once all that are needed are there, here and on the page that compares", async () => {
    await reader.open("/bay");
    await expect.poll(status, {timeout: 180_000}).toMatch(/^\d+ whole buildings/);
    await page.locator(".prices summary").focus();
    await page.keyboard.press("Enter");
    const boxes = page.locator(".prices-table .number-box");
    await boxes.first().focus();
    const costs = () => page.locator(".bay-measure option", {hasText: /^cost/}).count();
    await page.keyboard.type("-3");
    await page.keyboard.press("Tab");
    expect(await page.locator(".prices-table .control-message:visible").innerText()).toContain("precast concrete of the deck: -3 per yd3 is not possible (0 to 1000000 per yd3)");
    await boxes.first().focus();
    await page.keyboard.press("Escape");
    const many = await boxes.count();
    for (let i = 0; i < many; i++) {
      if (i === many - 1) {
        // One is missing still, and is named.
        expect(await page.locator(".prices-said").innerText()).toMatch(/^No cost is counted yet: a price is missing for walls, windows and roofing/);
        expect(await costs()).toBe(0);
      }
      await boxes.nth(i).focus();
      await page.keyboard.type(String(100 + i));
      await page.keyboard.press("Tab");
    }
    await expect.poll(costs).toBe(1);
    await reader.open("/compare");
    await page.getByRole("button", {name: "Pin this starter"}).focus();
    await page.keyboard.press("Enter");
    await expect.poll(() => page.locator(".compare tr", {hasText: "Cost, per ft"}).count(), {timeout: 30_000}).toBe(1);
    expect(reader.problems).toEqual([]);
  });
});

describe("what a drawing and a sentence show can be taken hold of,", () => {
  const valueOf = async (of: Locator) => Number(await of.getAttribute("aria-valuenow"));

  test("a drawing's upstand and ledge by arrow keys and by pointer, as one step for undo each; the slider follows, and a file of the picture has no handles", async () => {
    await reader.open("/edge-beam");
    const handle = (label: string) => page.getByRole("slider", {name: `${label}, in the drawing`});
    const upstand = handle("Upstand");
    const before = await valueOf(upstand);
    await upstand.press("ArrowUp");
    expect(await valueOf(upstand)).toBe(before + 1);
    await upstand.press("Shift+ArrowUp");
    expect(await valueOf(upstand)).toBe(before + 11);
    expect(await page.locator('.control[data-path="edgeBeam.upstandIn"] .number-box').inputValue()).toBe(String(before + 11));
    // It is under the focus still, in a drawing that was made anew.
    expect(await upstand.evaluate((node) => node === document.activeElement)).toBe(true);

    const projection = handle("Ledge projection");
    const wide = await valueOf(projection);
    await projection.scrollIntoViewIfNeeded();
    const box = (await projection.boundingBox()) ?? {x: 0, y: 0, width: 0, height: 0};
    const at = [box.x + box.width / 2, box.y + box.height / 2] as const;
    await page.mouse.move(...at);
    await page.mouse.down();
    await page.mouse.move(at[0] + 12, at[1]);
    await page.mouse.move(at[0] + 24, at[1]);
    await page.mouse.up();
    expect(await valueOf(projection)).toBeGreaterThan(wide);
    await page.getByRole("button", {name: /^Undo/}).first().click();
    expect(await valueOf(projection)).toBe(wide);
    expect(await page.locator("figure .handle").count()).toBe(0);
  });

  test("a number of a sentence by arrow keys, sideways, and typed; the sentence stays one", async () => {
    await reader.open("/reduction");
    const number = page.getByRole("spinbutton", {name: "span", exact: true}).first();
    const before = await valueOf(number);
    await number.focus();
    await page.keyboard.press("ArrowRight");
    await expect.poll(() => valueOf(number)).toBe(before + 1);
    // Said anew, it keeps the focus.
    await expect.poll(() => number.evaluate((node) => node === document.activeElement)).toBe(true);
    await page.keyboard.press("Enter");
    await page.keyboard.type("41");
    await page.keyboard.press("Enter");
    await expect.poll(() => valueOf(number)).toBe(41);
    expect(await number.innerText()).toBe("41 ft");
    // Out from under whatever hangs over the page's upper edge.
    await number.evaluate((node) => node.scrollIntoView({block: "center", behavior: "instant"}));
    // Pictures that are drawn anew above it may still move it: the pointer waits until it lies still.
    await number.hover({position: {x: 4, y: 4}});
    const box = (await number.boundingBox()) ?? {x: 0, y: 0, width: 0, height: 0};
    await page.mouse.down();
    await page.mouse.move(box.x + 4 - 18, box.y + 4);
    await page.mouse.up();
    await expect.poll(() => valueOf(number)).toBe(38);
  });
});

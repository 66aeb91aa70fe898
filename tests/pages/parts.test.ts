import {afterEach, beforeEach, describe, expect, test} from "vitest";
import type {Page} from "playwright-core";
import type {Design} from "../../lib/design/design.js";
import {withValues} from "../../lib/design/edit.js";
import {DESIGN_KEY} from "../../src/components/store/persistence.js";
import {seed} from "../support/designs.js";
import {siteReader} from "./reader.js";

const reader = siteReader();
let page: Page;

beforeEach(async () => {
  page = await reader.begin("/glossary");
});
afterEach(() => reader.end());

/** Opens a page with a design, and what is seen of it. */
async function seen(design: Design, path: string): Promise<{words: string; headings: string[]; controls: number; pictures: number}> {
  await page.evaluate(([key, text]) => localStorage.setItem(key as string, text as string), [DESIGN_KEY, JSON.stringify(design)]);
  await reader.open(path);
  const visible = (selector: string) => page.locator(selector).filter({visible: true});
  return {
    words: (await page.locator("main").innerText()).replace(/\s+/g, " "), headings: await visible("main h2").allInnerTexts(),
    controls: await visible("main .control, main .guess").count(), pictures: await visible("main svg.drawing").count(),
  };
}

describe("a part that the design has not is one sentence", () => {
  test("one bay across has no girder: no picture, control or heading of one, and none of its inputs on the record", async () => {
    const design = withValues(seed("branch-library"), {"bay.baysAcross": 1});
    const girder = await seen(design, "/girder");
    expect(girder).toMatchObject({headings: [], controls: 0, pictures: 0});
    expect(girder.words).toContain("This floor is one bay across.");
    const record = await seen(design, "/record");
    expect(record.words).toContain("The floor has one bay across, and no girder.");
    expect(record.words).not.toMatch(/girder web width/i);
    expect(reader.problems).toEqual([]);
  });

  test("with two bays the girder is there", async () => {
    const girder = await seen(seed("branch-library"), "/girder");
    expect(girder.headings.length).toBeGreaterThan(3);
    expect(girder.controls).toBeGreaterThan(5);
  });

  test("a floor without glass has no daylight to look at", async () => {
    const dark = await seen(withValues(seed("branch-library"), {"edgeBeam.upstandIn": 60, "story.floorToFloorFt": 9}), "/daylight");
    expect(dark).toMatchObject({headings: [], pictures: 0});
    expect(dark.words.match(/There is no glass here/g)).toHaveLength(1);
  });

  test("without air there are no ducts to draw, and without a topping nothing asks for its strength", async () => {
    const design = withValues(seed("branch-library"), {"services.airCfmPerFt2": 0, "deck.toppingIn": 0, "deck.member": "10DT32", "edgeBeam.kind": "below"});
    const story = await seen(design, "/story");
    expect(story.words).toContain("No air is required, so there are no ducts to fit.");
    expect(await page.locator('main [data-path^="services.main"], main [data-path^="services.branch"]').filter({visible: true}).count()).toBe(0);
    await seen(design, "/deck");
    expect(await page.locator('main [data-path="deck.toppingStrengthPsi"]').filter({visible: true}).count()).toBe(0);
    const beam = await seen(design, "/edge-beam");
    expect(beam.words).toContain("nothing twists it, nothing rolls it");
    expect(beam.headings).not.toContain("Holding it upright");
  });
});

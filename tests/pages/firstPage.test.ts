import type {Page} from "playwright-core";
import {afterEach, beforeEach, expect, test} from "vitest";
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

const frame = () => page.locator(".drawing-frame");
const parts = (name: string) => frame().locator(`[data-part="${name}"]`);
async function set(path: string, value: string): Promise<void> {
  const box = page.locator(`[data-path="${path}"] .number-box`).first();
  await box.fill(value);
  await box.press("Enter");
}

test("the first page sets bay, bays, floors and story, and the building drawn beside them follows each", async () => {
  let label = await frame().getAttribute("aria-label");
  for (const [path, value, told] of [
    ["bay.spanFt", "44-6", "44'-6\""], ["bay.beamSpanFt", "28'", "28'-0\""], ["bay.baysAlong", "5", "5 by "], ["bay.baysAcross", "3", " by 3 bays"],
    ["bay.floors", "4", "4 floors and a roof"], ["story.floorToFloorFt", "14'-8\"", "14'-8\" apart"],
  ] as const) {
    await set(path, value);
    const before = label;
    await expect.poll(async () => (label = await frame().getAttribute("aria-label")), {message: path}).not.toBe(before);
    expect(label, path).toContain(told);
  }
  for (const words of ["5 \u00d7 28'-0\"", "3 \u00d7 44'-6\"", "5 \u00d7 14'-8\""]) expect(await frame().textContent()).toContain(words);
  // Four floors and the roof stand on five rows of columns; two girders carry each floor's three bays.
  expect([await parts("column").count(), await parts("girder").count()]).toEqual([5, 2]);
});

test("the building is true to scale: a foot is as long along the edge, across and up", async () => {
  await set("bay.spanFt", "30");
  await set("bay.beamSpanFt", "30");
  const lengths = await parts("bay").evaluate((node) => {
    const [a, b, , d] = [...(node.getAttribute("d") ?? "").matchAll(/[ML](\S+) (\S+?)(?=[LZ])/g)].map((point) => [Number(point[1]), Number(point[2])]) as [number, number][];
    const far = (p: readonly number[] = [], q: readonly number[] = []) => Math.hypot((p[0] as number) - (q[0] as number), (p[1] as number) - (q[1] as number));
    return [far(a, b), far(a, d)];
  });
  await set("story.floorToFloorFt", "15");
  const [x0, y0, x1, y1] = await parts("column").first().evaluate((node) => (node.getAttribute("d") ?? "").match(/[\d.]+/g)?.slice(0, 4).map(Number) as [number, number, number, number]);
  expect(lengths[0]).toBeCloseTo(lengths[1] as number, 1);
  expect(x1).toBe(x0);
  expect(Math.abs(y1 - y0) / (lengths[0] as number)).toBeCloseTo(15 / 30, 2);
});

test("the page on reduction tells of the bay and leads to where it is set", async () => {
  await set("bay.floors", "4");
  await reader.open("/reduction");
  expect(await page.locator('main [data-path^="bay."]').count()).toBe(0);
  expect(await page.locator("main").innerText()).toContain("floors carried: 4");
  await page.getByRole("link", {name: "where the floor begins"}).first().click();
  await expect.poll(() => page.locator("h1").innerText()).toBe("Where does a floor begin?");
});

import type {Page, Response} from "playwright-core";
import {afterEach, beforeAll, expect, test} from "vitest";
import {seeds} from "../support/designs.js";
import {builtPages} from "./dist.js";
import {siteReader} from "./reader.js";
import {weightsOf} from "./weights.js";

/** How far what is seen of a page may move while it loads: the shares of the window that moved, times how far, in all. */
const SHIFT = 0.05;
/** Markdown, markup or an entity that stands in a sentence as it was typed. */
const RAW = /\]\(|\*\*|`|<\/?[a-z]|&[a-z]+;|(^|\s)[*_]\p{L}/imu;

/** What a reader with a slow connection may be asked to wait for: the first page, and each next one beyond it. */
const FIRST = {requests: 30, bytes: 352_000};
const NEXT_BYTES = 105_000;

const reader = siteReader({kept: false});

beforeAll(async () => {
  const page = await reader.begin();
  // Each page as one who comes for the first time: the browser fetches every file anew, and adds up what moves.
  const session = await page.context().newCDPSession(page);
  await session.send("Network.setCacheDisabled", {cacheDisabled: true});
  await page.addInitScript(() => {
    const seen = {shift: 0};
    Object.assign(window, {seen});
    new PerformanceObserver((list) => {
      for (const entry of list.getEntries() as (PerformanceEntry & {value: number; hadRecentInput: boolean})[]) seen.shift += entry.hadRecentInput ? 0 : entry.value;
    }).observe({type: "layout-shift", buffered: true});
  });
});
afterEach(() => reader.end());

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

/** Which files each page has asked for, by its path. */
const filesOf = new Map<string, ReadonlySet<string>>();
const PAGES = builtPages();

/** A window as a reader has it who comes for the first time: nothing is kept, and every file is fetched. */
async function newcomer(width: number): Promise<Page> {
  const page = await reader.begin(undefined, {asked: true});
  await page.setViewportSize({width, height: 850});
  return page;
}

/** Pages take turns between the two widths, and the first page has both: all at each would take minutes. */
const VISITS = [...PAGES.map((path, i) => ({path, width: i % 2 === 0 ? 1280 : 390})), {path: "/", width: 390}];

test.each(VISITS)("$path does not move about while it loads, $width px wide, cuts no words of its pictures and shows nothing as it was typed", async ({path, width}) => {
  const page = await newcomer(width);
  const files = new Set<string>();
  const note = (response: Response) => {
    if (response.url().startsWith(reader.origin)) files.add(new URL(response.url()).pathname);
  };
  page.on("response", note);
  await reader.open(path);
  expect(await page.evaluate(cutWords), "words cut").toEqual([]);
  const text = await page.locator("body").innerText();
  expect(text).toContain("Caution.");
  expect(RAW.exec(text)?.[0], text.slice((RAW.exec(text)?.index ?? 0) - 60).slice(0, 120)).toBeUndefined();
  await page.waitForTimeout(600);
  await page.waitForLoadState("networkidle");
  page.off("response", note);
  filesOf.set(path, new Set([...(filesOf.get(path) ?? []), ...files]));
  expect(await page.evaluate(() => (window as unknown as {seen: {shift: number}}).seen.shift), "layout shift").toBeLessThanOrEqual(SHIFT);
});

test("the first page comes in few files and little weight, and each next one adds a third of it at most", () => {
  expect([...filesOf.keys()].sort()).toEqual([...PAGES].sort());
  const {first, next} = weightsOf(filesOf);
  expect(first.requests).toBeLessThanOrEqual(FIRST.requests);
  expect(first.bytes).toBeLessThanOrEqual(FIRST.bytes);
  // What a page asks for must be seen at all, or the limits hold of nothing.
  expect(first.bytes).toBeGreaterThan(FIRST.bytes / 4);
  expect(next.filter(({bytes}) => bytes > NEXT_BYTES)).toEqual([]);
});

test.each([1280, 390])("the letters of the limits stand on their curves and on no words, %i px wide", async (width) => {
  // Two starters at each width.
  for (const {id, design} of seeds.filter((_, i) => (i % 2 === 0) === (width === 1280))) {
    const page = await newcomer(width);
    await reader.open("/");
    await page.locator(`#starter-${id}`).getByRole("button").first().click();
    await page.waitForFunction((name) => document.querySelector(".strip-name")?.textContent === name, design.name);
    await reader.open("/limits");
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
  }
});

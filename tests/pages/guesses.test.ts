import type {Page} from "playwright-core";
import {afterEach, beforeEach, describe, expect, test} from "vitest";
import {DESIGN_KEY} from "../../src/components/store/persistence.js";
import type {Design} from "../../lib/design/design.js";
import {columnsOf, evaluate, type Evaluation} from "../../lib/evaluate.js";
import {GUESSES, type Guess, type GuessName} from "../../lib/exercises/guesses.js";
import {QUANTITIES} from "../../lib/quantities.js";
import {catalog, seeds} from "../support/designs.js";
import {allSaid, found, writings} from "./answers.js";
import {siteReader} from "./reader.js";

const reader = siteReader();
let page: Page;

beforeEach(async () => {
  page = await reader.begin(undefined, {asked: true});
});
afterEach(() => reader.end());

const ASKED = (Object.keys(GUESSES) as GuessName[]).map((name) => [name, GUESSES[name] as Guess] as const);

/** What the page writes of an answer where that is not the very number: a column's foot is told with the column's weight. */
const WRITTEN: Partial<Record<GuessName, (evaluation: Evaluation) => number>> = {
  columnLoad: (evaluation) => columnsOf(evaluation, catalog).columns[0]?.foot.governingService.kip ?? 0,
};

/** Lines that write the same number of something else: whether a design's numbers happen to agree is chance. */
const OTHERWISE: Partial<Record<GuessName, RegExp>> = {
  lossShare: /\d % of (live|the limit)/,
  neighborStep: /above level/,
  beamDepth: /\d'-\d+" wide/,
  toppingVolume: /for one member/,
  roofRise: /, but next to |stirrups, spacing/,
};

/** Whether a design has what the question asks about. */
const asksOf = ({answer}: Guess, evaluation: Evaluation) => answer(evaluation) !== 0;

async function open({page: name}: Guess, design: Design): Promise<void> {
  if (!page.url().startsWith(reader.origin)) await page.goto(reader.origin);
  await page.evaluate(([key, text]) => {
    sessionStorage.clear();
    localStorage.setItem(key, text);
  }, [DESIGN_KEY, JSON.stringify(design)] as const);
  await reader.open(`/${name}`);
}

const marks = (names: readonly string[]) => page.locator("[data-quantity]").evaluateAll((nodes, quantities) =>
  nodes.filter((node) => quantities.includes((node as HTMLElement).dataset["quantity"] ?? "")).map((node) => node.textContent), names);
/** Where headings, pictures and tables stand, px. */
const tops = () => page.locator("main h2, main figure, main table, main .checks").evaluateAll((nodes) => nodes.map((node) => Math.round(node.getBoundingClientRect().top + window.scrollY)));
/** The same once nothing moves on its own any more: a search beside the page may end after the page is there, and some wait for the reader's hand to rest. */
async function restingTops(): Promise<number[]> {
  await page.waitForFunction(() => !/Searching:|Nothing has been searched yet|Looking for what/.test(document.querySelector("main")?.innerText ?? ""), undefined, {timeout: 60_000});
  await page.waitForTimeout(300);
  let places = await tops();
  for (;;) {
    await page.waitForTimeout(400);
    const now = await tops();
    if (now.join() === places.join()) return now;
    places = now;
  }
}
const settle = (name: GuessName, button: string) => page.locator(`[data-guess="${name}"]`).getByRole("button", {name: button, exact: true}).click();

/** A starter that asks the question, another one for each question in turn: every page with every kind of floor would take minutes. */
const starterOf = (name: GuessName, guess: Guess) => {
  const at = ASKED.findIndex(([asked]) => asked === name);
  const found = [...seeds.slice(at % seeds.length), ...seeds].find(({design}) => asksOf(guess, evaluate(design, catalog)));
  if (!found) throw new Error(`no starter asks ${name}`);
  return found;
};

/** Two questions of three are asked on a phone, where lines break most often, the third on a wide window. */
const ASKED_AT = ASKED.map(([name, guess], i) => ({name, guess, width: i % 3 === 2 ? 1280 : 390}));

describe.each(ASKED_AT)("$name, $width px wide,", ({name, guess, width}) => {
  test("is answered nowhere on its page before a guess, for one of the starters, and everywhere after it, and nothing moves", async () => {
    await page.setViewportSize({width, height: 12_000});
    const {design} = starterOf(name, guess);
    const evaluation = evaluate(design, catalog);
    await open(guess, design);
    const places = await restingTops();
    const written = writings((WRITTEN[name] ?? guess.answer)(evaluation), guess.unit);
    const before = (await allSaid(page)).split("\n").filter((line) => !OTHERWISE[name]?.test(line));
    expect(before.filter((line) => found(line, written).length > 0)).toEqual([]);
    const hidden = guess.hides.filter((quantity) => QUANTITIES[quantity](evaluation, () => columnsOf(evaluation, catalog)) !== undefined);
    expect((await marks(hidden)).filter((text) => /\d/.test(text ?? ""))).toEqual([]);
    await settle(name, "Tell me");
    expect(await tops()).toEqual(places);
    expect(found(await allSaid(page, ".nothing"), written)).not.toEqual([]);
    expect((await marks(hidden)).filter((text) => !/\d/.test(text ?? ""))).toEqual([]);
    expect(reader.problems).toEqual([]);
  });
});

describe("a guess", () => {
  const {design} = seeds[0] as (typeof seeds)[number];

  test("is asked before the answer shows, and a usual slip is named", async () => {
    await open(GUESSES.demand, design);
    const guess = page.locator(".guess").first();
    expect(await guess.locator(".guess-answer").innerText()).toBe("");
    await guess.locator("input").fill(String(evaluate(design, catalog).deck.livePsf));
    await guess.getByRole("button", {name: "Guess"}).click();
    expect(await guess.locator(".guess-answer").innerText()).toMatch(/live load alone|Close/);
    expect(await page.locator("[data-veiled]").count()).toBe(0);
  });

  test("is hidden from those who listen too, and worked steps that lead to it show no number", async () => {
    await open(GUESSES.ceilingHeight, design);
    const mark = page.locator("main [data-quantity='ceiling, in']").first();
    expect(await mark.getAttribute("aria-label")).toBe("hidden until you have guessed");
    const why = page.locator("main details.why").first();
    await why.locator("summary").click();
    await expect.poll(() => why.locator("mn").count()).toBeGreaterThan(0);
    expect((await why.locator("mn").allTextContents()).filter((text) => /\d/.test(text))).toEqual([]);
    await settle("ceilingHeight", "Tell me");
    expect((await why.locator("mn").allTextContents()).filter((text) => /\d/.test(text))).not.toEqual([]);
    expect(await mark.getAttribute("aria-label")).toBeNull();
  });

  test("hides the converted results of worked steps from a reader of SI, and tells them with the answer", async () => {
    await open(GUESSES.ceilingHeight, design);
    await page.evaluate(() => localStorage.setItem("plank-and-tee/units", JSON.stringify("SI")));
    await reader.open(`/${GUESSES.ceilingHeight.page}`);
    await expect.poll(() => page.locator("[data-path='story.floorToFloorFt'] .unit").first().innerText()).toBe("m");
    const why = page.locator("main details.why").first();
    await why.locator("summary").click();
    await expect.poll(() => why.locator("mn").count()).toBeGreaterThan(0);
    await page.waitForTimeout(300);
    expect(await why.locator(".step-si").allTextContents()).toEqual([]);
    await settle("ceilingHeight", "Tell me");
    await expect.poll(() => why.locator(".step-si").first().innerText()).toMatch(/^= [\d,.]+\smm$/);
    expect(reader.problems).toEqual([]);
  });

  test("that is waived on every page hides nothing on any, and one that is open hides nothing elsewhere", async () => {
    await open(GUESSES.ceilingHeight, design);
    await page.goto(reader.origin);
    expect(await page.locator("[data-veiled]").count()).toBe(0);
    await open(GUESSES.ceilingHeight, design);
    await settle("ceilingHeight", "Tell me on every page");
    await reader.open(`/${GUESSES.beamDepth.page}`);
    expect(await page.locator("[data-veiled]").count()).toBe(0);
    expect(await page.locator(".guess-answer").innerText()).not.toBe("");
  });
});

test("a change says nothing of what an open question asks", async () => {
  const [seed] = seeds;
  await open(GUESSES.ceilingHeight as Guess, (seed as (typeof seeds)[number]).design);
  const since = page.locator(".since-held");
  const taller = () => page.locator('.control[data-path="story.floorToFloorFt"] .slider').press("Shift+ArrowRight");
  await taller();
  await since.waitFor();
  expect(await since.textContent()).not.toMatch(/ceiling/);
  await settle("ceilingHeight", "Tell me");
  await taller();
  await expect.poll(() => since.textContent()).toMatch(/more ceiling/);
});

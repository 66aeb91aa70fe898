import type {Locator, Page} from "playwright-core";
import {afterAll, afterEach, beforeAll, beforeEach, describe, expect, test} from "vitest";
import type {Design} from "../../lib/design/design.js";
import {withValues} from "../../lib/design/edit.js";
import {candidates, evaluate} from "../../lib/evaluate.js";
import {QUANTITIES, type QuantityName} from "../../lib/quantities.js";
import {decimals, feetAndInches} from "../../lib/units.js";
import {listPages} from "../../src/headless/pages.js";
import {catalog, seeds} from "../support/designs.js";
import {once} from "../support/once.js";
import {drawnDesigns} from "./drawnDesigns.js";
import {WHOLE_PAGE, faultsOf, marks, openDesign, quantitiesOf, seenWithoutFault, type Mark} from "./marks.js";
import {siteReader} from "./reader.js";

/** All pages in reading order, as a reader would walk them. */
const WALK = listPages().map(({name}) => (name === "index" ? "/" : `/${name}`));

const reader = siteReader();
let page: Page;

type Seed = (typeof seeds)[number];
/** A busy machine takes its time. */
const PATIENCE_MS = 400_000;

/** Opens the first page and begins with a starter design, as a reader would. */
async function begin(id: string, name: string): Promise<void> {
  await reader.open("/");
  await page.locator(`#starter-${id}`).getByRole("button").first().click();
  await page.waitForFunction((wanted) => document.querySelector(".strip-name")?.textContent === wanted, name);
}

/** Types a value into the first control of a field on the open page. */
async function type(field: string, value: string): Promise<void> {
  const box = page.locator(`[data-path="${field}"] .number-box`).first();
  await box.fill(value);
  await box.press("Enter");
}

/** What the open page says, without the scripts that say it. */
const text = () => page.locator("main").innerText();

/** What pages say of a design, by their path. */
function saidOf(design: Design): Readonly<Record<string, readonly string[]>> {
  const result = evaluate(design, catalog);
  const [first] = candidates(design, catalog);
  const psf = (value: number) => `${decimals(value)} psf`;
  return {
    "/loads": [psf(result.deck.demandPsf), psf(result.deck.livePsf)],
    "/deck": [psf(result.deck.safe.safeLoadPsf), first?.id.split(" ")[0] ?? ""],
    "/limits": [psf(result.deck.safe.safeLoadPsf), result.deck.safe.governs, `${decimals(result.deck.service.movementIn, 2)} in`],
    "/member": [`${decimals(result.deck.midspan.losses.effectiveStressKsi, 1)} ksi`],
    "/camber": [decimals(result.deck.camber.erectionIn, 2)],
    "/topping": [result.topping ? `${decimals(result.topping.bayYd3, 1)} cubic yards` : decimals(result.joint?.meanIn ?? NaN, 2)],
    "/edge-beam": [feetAndInches(result.edgeBeam.depthIn)],
    "/story": [feetAndInches(result.story.ceilingHeightIn), feetAndInches(result.story.glassIn)],
    "/record": [design.name, psf(result.deck.safe.safeLoadPsf), feetAndInches(result.edgeBeam.depthIn), "licensed engineer"],
  };
}

/** Pages of words alone, and of exercises, of which not every one has a picture. */
const WITHOUT_PICTURE: ReadonlySet<string> = new Set(["/gallery", "/class", "/glossary", "/lessons", "/methods", "/practice", "/sets"]);

/** Whether a page has a picture of a design: one of a part that the design has not says so in a sentence. */
function hasPicture(path: string, {roof, parking}: Design): boolean {
  if (path === "/roof") return roof.given === "deck";
  return path === "/parking" ? parking.place !== "none" : !WITHOUT_PICTURE.has(path);
}

/** Pages that tell a quantity which another page tells too. */
const TELLING: readonly string[] = ["/", "/loads", "/deck", "/limits", "/member", "/camber", "/topping", "/edge-beam", "/girder", "/snow", "/roof", "/columns", "/walls", "/story", "/air", "/parking", "/daylight", "/compare", "/record"];
/** Each design drawn at random is opened on every fifth of them, so that each page sees a fifth of the designs. */
const EVERY = 5;

/** The columns' page tells of one column at a time: each design is looked at through another. */
async function followColumn(i: number): Promise<void> {
  const chooser = page.getByLabel("Follow the load down");
  if (await chooser.isVisible()) await chooser.selectOption({index: Math.max(i, 0) % await chooser.locator("option").count()});
}

/** What a page shows of a design, and what is wrong with it. */
async function lookedAt(path: string, {name}: Design, {said, valueOf}: {readonly said?: ReturnType<typeof saidOf>; readonly valueOf: ReturnType<typeof quantitiesOf>}): Promise<{readonly shown: readonly Mark[]; readonly faults: readonly string[]}> {
  const look = async () => ({shown: await marks(page), words: (await text()).replace(/\s+/g, " ")});
  const faults = ({shown, words}: Awaited<ReturnType<typeof look>>) => [
    ...faultsOf(name, valueOf, shown),
    ...(said?.[path] ?? []).filter((word) => !words.includes(word)).map((word) => `${name}: does not say ${word}`),
    ...(words.match(/.{0,40}(?:NaN|Infinity|undefined|\[object).{0,20}/g) ?? []).map((found) => `${name}: ${found}`),
  ];
  const seen = await seenWithoutFault(look, faults);
  return {shown: seen.shown, faults: faults(seen)};
}

/**
 * Every page meets every starter, and one that tells a quantity meets designs drawn at random, all in one load: it is loaded
 * with the design that the page before was left with, and the others are opened on it as files. The last one opened goes on
 * to the next page: a starter, another one from each page, or where a page has met designs drawn at random, by turns one of these.
 */
describe("a reader's walk", () => {
  let open = (seeds[0] as Seed).design;
  const starters = once(() => new Map(seeds.map(({design}) => [design, {said: saidOf(design), valueOf: quantitiesOf(design)}])));
  /** Where each quantity of the designs drawn at random was met. */
  const met = new Map<QuantityName, Set<string>>();

  beforeAll(async () => {
    page = await reader.begin();
    await page.setViewportSize(WHOLE_PAGE);
    await begin((seeds[0] as Seed).id, open.name);
  }, PATIENCE_MS);
  afterAll(() => reader.end());

  test.each(WALK)("goes through %s without a fault, with every starter and with designs drawn at random, and meets the numbers that the library gives", async (path) => {
    const before = reader.problems.length;
    await reader.open(path);
    expect(await page.locator(".strip-name").innerText(), "the design comes along").toBe(open.name);
    const [place, telling] = [WALK.indexOf(path), TELLING.indexOf(path)];
    const own = seeds.map((_, i) => (seeds[(i + place) % seeds.length] as Seed).design);
    const drawn = telling < 0 ? [] : drawnDesigns().filter((_, i) => i % EVERY === telling % EVERY);
    const first = open;
    for (const design of [first, ...(telling % 2 === 0 ? [...own, ...drawn] : [...drawn, ...own]).filter((other) => other !== first)]) {
      if (design !== open) await openDesign(page, design);
      open = design;
      const starter = starters().get(design);
      if (path === "/columns" && !starter) await followColumn(drawn.indexOf(design));
      const {shown, faults} = await lookedAt(path, design, starter ?? {valueOf: quantitiesOf(design)});
      expect(faults).toEqual([]);
      expect(await page.locator(".observablehq--error").allTextContents(), design.name).toEqual([]);
      if (starter && hasPicture(path, design)) expect(await page.locator("main svg").count(), `${design.name}: a picture`).toBeGreaterThan(0);
      if (!starter) for (const {quantity, inStrip} of shown) met.set(quantity, (met.get(quantity) ?? new Set()).add(inStrip ? "the strip" : path));
    }
    expect(reader.problems.slice(before)).toEqual([]);
  }, PATIENCE_MS);

  test("every quantity of designs drawn at random was met in two places or more", () => {
    const names = Object.keys(QUANTITIES) as QuantityName[];
    expect(names.filter((name) => (met.get(name)?.size ?? 0) < 2)).toEqual([]);
  });
});

describe("a change on one page", () => {
  const {id, design} = seeds[0] as Seed;
  beforeEach(async () => {
    page = await reader.begin();
  });
  afterEach(() => reader.end());

  test("is seen on the others", async () => {
    await begin(id, design.name);
    await reader.open("/deck");
    await type("bay.spanFt", "44");
    const changed = evaluate(withValues(design, {"bay.spanFt": 44}), catalog);
    await expect.poll(async () => (await text()).includes(`${decimals(changed.deck.safe.safeLoadPsf)} psf`)).toBe(true);
    await reader.open("/edge-beam");
    expect(await text()).toContain(`${decimals(changed.edgeBeam.loads.factoredPlf)} plf`);
    await type("edgeBeam.upstandIn", "34");
    await reader.open("/story");
    const taller = evaluate(withValues(design, {"bay.spanFt": 44, "edgeBeam.upstandIn": 34}), catalog);
    expect(await text()).toContain(feetAndInches(taller.story.glassIn));
    expect(reader.problems).toEqual([]);
  });

  test("that makes the floor fail is shown as a failure, in the strip and on the page, and is not hidden on the record", async () => {
    await begin(id, design.name);
    await reader.open("/deck");
    await type("bay.spanFt", "60");
    await expect.poll(() => page.locator("#strip [data-verdict=fails]").count()).toBeGreaterThan(0);
    expect(await page.locator("main [data-verdict=fails]").count()).toBeGreaterThan(0);
    await reader.open("/record");
    expect(await text()).toContain("The load on this floor is more than the member can safely carry");
  });

  test("that makes a control idle hides it and keeps its value", async () => {
    await begin(id, design.name);
    await reader.open("/girder");
    const [ledge, depth] = ["girder.ledgeDepthIn", "girder.depthIn"].map((path) => page.locator(`main .control[data-path="${path}"]`)) as [Locator, Locator];
    const before = await ledge.locator(".number-box").inputValue();
    expect(await depth.isVisible()).toBe(false);
    await page.getByText("rectangle: deck on top").click();
    await expect.poll(() => depth.isVisible()).toBe(true);
    expect(await ledge.isVisible()).toBe(false);
    await page.getByText("inverted tee: deck on its ledges", {exact: true}).click();
    await expect.poll(() => ledge.isVisible()).toBe(true);
    expect(await ledge.locator(".number-box").inputValue()).toBe(before);
  });

  test("of what a page looks at draws its picture anew", async () => {
    await begin(id, design.name);
    await reader.open("/columns");
    const picture = page.locator("main figure", {has: page.locator("svg")}).first();
    await expect.poll(() => picture.innerText()).toContain("the interior column");
    await page.getByLabel("Follow the load down").selectOption("edge column");
    await expect.poll(() => page.locator("main figure", {has: page.locator("svg")}).first().innerText()).toContain("the edge column");
  });

  test("that cannot be worked out is refused with its reason, and nothing is lost", async () => {
    await begin(id, design.name);
    await reader.open("/deck");
    const box = page.locator('[data-path="bay.spanFt"] .number-box').first();
    const before = await box.inputValue();
    await type("bay.spanFt", "9");
    expect(await page.locator('[data-path="bay.spanFt"] .control-message').first().innerText()).toContain("9");
    await reader.open("/loads");
    expect(await page.locator("#strip").innerText()).toContain(design.name);
    await reader.open("/deck");
    expect(await box.inputValue()).toBe(before);
  });
});

describe("a why", () => {
  afterEach(() => reader.end());

  test("opens the worked steps beside the number and gives the focus back", async () => {
    page = await reader.begin("/deck");
    const number = page.locator("main button.live").first();
    await number.click();
    const steps = page.locator("[popover]:popover-open math");
    await expect.poll(() => steps.count()).toBeGreaterThan(0);
    await page.keyboard.press("Escape");
    await expect.poll(() => page.locator("[popover]:popover-open").count()).toBe(0);
    expect(await number.evaluate((node) => node === document.activeElement)).toBe(true);
  });
});

import DxfParser, {type ILwpolylineEntity, type ITextEntity} from "dxf-parser";
import {createRequire} from "node:module";
import {existsSync, readFileSync} from "node:fs";
import {join} from "node:path";
import {csvParseRows} from "d3-dsv";
import type {Locator, Page} from "playwright-core";
import {afterAll, afterEach, beforeAll, beforeEach, describe, expect, test} from "vitest";
import {FIELDS} from "../../lib/design/fields.js";
import {typedText} from "../../lib/typed.js";
import {DESIGN_KEY} from "../../src/components/store/persistence.js";
import {minutesOf, lessonStops} from "../../lib/lessons/lesson.js";
import {readLessons} from "../../src/headless/readLessons.js";
import {EMBED_WIDTH_PX, FIGURES, NOT_ALONE} from "../../src/components/embed/figures.js";
import {seeds} from "../support/designs.js";
import {settled} from "./browser.js";
import {DIST, builtPages, placeOf} from "./dist.js";
import {siteReader} from "./reader.js";

const AXE = readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");
const PAGES = builtPages();

const reader = siteReader();
let page: Page;

async function begin(): Promise<void> {
  page = await reader.begin();
}

/** The open design as the browser keeps it, once it is written. */
async function keptDesign(): Promise<Record<string, unknown>> {
  await page.evaluate(() => window.dispatchEvent(new Event("pagehide")));
  return JSON.parse((await page.evaluate((key) => localStorage.getItem(key), DESIGN_KEY)) ?? "null") as Record<string, unknown>;
}

/** Opens the first page that has a slider, moves it by one step, and returns the page's path and the control's. */
async function moveSlider(): Promise<{path: string; control: string; before: string; after: string}> {
  for (const path of PAGES) {
    await reader.open(path);
    const control = page.locator(".control.number").first();
    if ((await control.count()) === 0) continue;
    const box = control.locator(".number-box");
    const before = await box.inputValue();
    await control.locator(".slider").focus();
    await page.keyboard.press("ArrowRight");
    return {path, control: (await control.getAttribute("data-path")) ?? "", before, after: await box.inputValue()};
  }
  throw new Error("no page has a slider");
}

// The tests of one page share one visit, as opening it takes longer than looking at it.
describe.each(PAGES)("%s", (path) => {
  beforeAll(async () => {
    await begin();
    await reader.open(path);
  });
  afterAll(() => reader.end());

  test("asks for nothing from elsewhere and reports no error", async () => {
    expect(await page.locator(".observablehq--error").allTextContents()).toEqual([]);
    expect(reader.problems).toEqual([]);
  });

  test("has one first heading, a language, a caution, and can be zoomed", async () => {
    expect(await page.locator("h1").count()).toBe(1);
    expect(await page.locator("html").getAttribute("lang")).toBe("en");
    expect(await page.locator("meta[name=viewport]").getAttribute("content")).not.toContain("maximum-scale");
    expect(await page.locator(".caution").innerText()).toContain("Local codes govern");
  });

  test("leads nowhere that is not there, in what its scripts have made too", async () => {
    const links = await page.locator("a[href]").evaluateAll((nodes) => nodes.map((node) => (node as HTMLAnchorElement).href));
    const paths = links.filter((href) => href.startsWith(`${reader.origin}/`)).map((href) => new URL(href).pathname);
    expect(paths.filter((target) => !existsSync(join(DIST, target, target.endsWith("/") ? "index.html" : "")))).toEqual([]);
  });

  test("has the headings and pictures at which lesson paths halt", async () => {
    const name = path === "/" ? "index" : path.slice(1);
    const wanted = readLessons().flatMap(lessonStops).flatMap(({stop}) => (stop.page === name ? [{heading: stop.heading ?? null, figure: stop.figure ?? 0}] : []));
    const lost = await page.evaluate((stops) => {
      const nodes = [...document.querySelectorAll("main :is(h1, h2, h3, figure)")];
      const pictures = (heading: string | null) => {
        const at = nodes.findIndex((node) => (heading === null ? node.tagName === "H1" : node.tagName !== "FIGURE" && node.textContent?.trim() === heading));
        const rest = nodes.slice(at + 1);
        const next = rest.findIndex((node) => node.tagName !== "FIGURE");
        return at < 0 ? -1 : next < 0 ? rest.length : next;
      };
      return stops.filter(({heading, figure}) => pictures(heading) < figure);
    }, wanted);
    expect(lost).toEqual([]);
  });

  test("has no serious fault of access, in light and dark", async () => {
    await page.evaluate(AXE);
    // What a page is made of is the same in both: all is asked in one of them, page by page in turn, and in the other what depends on color.
    const whole = PAGES.indexOf(path) % 2 === 0 ? "light" : "dark";
    for (const colorScheme of ["light", "dark"] as const) {
      await page.emulateMedia({colorScheme});
      expect(await faultsOfAccess(colorScheme === whole ? undefined : RULES_OF_COLOR), colorScheme).toEqual([]);
    }
    await page.emulateMedia({colorScheme: "light"});
  });

  test("has each of its figures among those that stand alone in a page of another site", async () => {
    const name = path === "/" ? "index" : path.slice(1);
    if (NOT_ALONE[name]) return;
    const pictures = await page.evaluate(() => {
      const nodes = [...document.querySelectorAll<HTMLElement>("main :is(h1, h2, h3, figure)")].filter((node) => !node.closest("[hidden]") && (node.tagName !== "FIGURE" || !node.parentElement?.closest("figure, .guess")));
      let heading = "";
      const counts: Record<string, number> = {};
      for (const node of nodes) {
        if (node.tagName === "FIGURE") counts[heading] = (counts[heading] ?? 0) + 1;
        else heading = node.tagName === "H1" ? "top" : node.id || (node.textContent ?? "").trim().toLowerCase().replace(/[^a-z0-9]+/g, "-");
      }
      return counts;
    });
    const listed = (heading: string) => FIGURES.filter((figure) => figure.page === name && figure.at[0] === heading).length;
    expect(Object.entries(pictures).filter(([heading, count]) => count > listed(heading)), "to be added to components/embed/figures.ts").toEqual([]);
  });

  test("paints the words of its pictures", async () => {
    const unseen = await page.evaluate(() => [...document.querySelectorAll("main svg text")]
      .filter((text) => text.textContent?.trim() && text.getClientRects().length > 0 && getComputedStyle(text).fill === "none").map((text) => text.textContent));
    expect(unseen).toEqual([]);
  });

  test("offers each of its tables as CSV, once", async () => {
    await page.mouse.move(500, 400);
    const left = () => page.evaluate(() => [...document.querySelectorAll<HTMLTableElement>("main table")].filter((table) => {
      const before = (table.closest(".scrolls") ?? table).previousElementSibling;
      const own = table.closest("[data-own-csv]") ? [...document.querySelectorAll("main button")].filter((button) => / CSV$/.test(button.textContent)).length : 0;
      const ways = (before?.matches(".table-csv") ? 1 : 0) + (own > 0 ? 1 : 0) + (table.closest("figure")?.querySelector(".figure-save") ? 1 : 0);
      return table.rows.length > 1 && ways !== 1;
    }).map((table) => table.textContent.slice(0, 80)));
    await expect.poll(left).toEqual([]);
  });

  test("does not scroll sideways on a narrow phone", async () => {
    await page.setViewportSize({width: 360, height: 740});
    // Pictures are drawn anew for the width.
    await expect.poll(() => page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth)).toBeLessThanOrEqual(0);
    await page.setViewportSize({width: 1280, height: 900});
  });

  test("hides its controls on paper, the name of a fold that has nothing else to print, and words for a browser without scripts", async () => {
    await page.emulateMedia({media: "print"});
    for (const selector of ["#strip", "#pages", "main .control"]) {
      expect(await page.locator(selector).filter({visible: true}).count(), selector).toBe(0);
    }
    const left = await page.evaluate(() => {
      window.dispatchEvent(new Event("beforeprint"));
      const shown = (node: Element) => node.getClientRects().length > 0;
      const folds = [...document.querySelectorAll("main details")].filter((fold) => shown(fold) && fold.getBoundingClientRect().height < (fold.querySelector("summary")?.getBoundingClientRect().height ?? 0) + 8);
      const words = [...document.querySelectorAll("noscript")].filter(shown);
      window.dispatchEvent(new Event("afterprint"));
      return [...folds, ...words].map((node) => node.textContent?.slice(0, 60));
    });
    expect(left).toEqual([]);
    await page.emulateMedia({media: "screen"});
  });
});

/** Rules of the checker whose outcome depends on colors. */
const RULES_OF_COLOR = ["color-contrast", "link-in-text-block"];

/** What the checker finds serious or worse by the given rules or all, with the first elements concerned. What it calls moderate at most, as it does `region`, which takes long, would not count. */
function faultsOfAccess(rules?: readonly string[]): Promise<string[]> {
  return page.evaluate(async (values) => {
    const {axe} = window as unknown as {axe: {run(options: object): Promise<{violations: {id: string; impact: string; nodes: {html: string}[]}[]}>}};
    const {violations} = await axe.run({resultTypes: ["violations"], selectors: false, preload: false, ...(values ? {runOnly: {type: "rule", values}} : {rules: {region: {enabled: false}}})});
    return violations
      .filter(({impact}) => impact === "serious" || impact === "critical")
      .map(({id, nodes}) => `${id}: ${nodes.map(({html}) => html).slice(0, 3).join(" ")}`);
  }, rules);
}

describe("the open design", () => {
  beforeEach(begin);
  afterEach(() => reader.end());

  test("survives a reload, and is undone from any page", async () => {
    const {path, control, before, after} = await moveSlider();
    expect(after).not.toBe(before);
    await page.reload();
    await settled(page);
    const box = page.locator(`[data-path="${control}"] .number-box`).first();
    expect(await box.inputValue()).toBe(after);
    await reader.open(PAGES.find((other) => other !== path) ?? path);
    await page.getByRole("button", {name: "Undo"}).click();
    await reader.open(path);
    expect(await box.inputValue()).toBe(before);
    await page.locator("h1").click();
    await page.keyboard.press("Control+Shift+Z");
    expect(await box.inputValue()).toBe(after);
    await page.keyboard.press("Control+Z");
    expect(await box.inputValue()).toBe(before);
    expect(reader.problems).toEqual([]);
  });

  test("leaves a trace of where it was in the picture while a control moves, and says what has changed", async () => {
    const {path} = await moveSlider();
    const since = page.locator(".since-held");
    await since.waitFor();
    expect(await since.textContent()).toMatch(/ (more|less|fewer) /);
    expect(await page.locator("main .trace").count(), path).toBeGreaterThan(0);
    // Once the hand has let go the trace fades, and the line is read out once.
    await page.waitForFunction(() => document.querySelector(".trace") === null);
    expect(await page.locator(".for-listeners[role=status]").allTextContents()).toContain(await since.textContent());

  });

  test("is reported to another tab", async () => {
    const other = await reader.another();
    const {path, control, before, after} = await moveSlider();
    await other.page.goto(reader.origin + placeOf(path));
    await settled(other.page);
    const box = other.page.locator(`[data-path="${control}"] .number-box`).first();
    await expect.poll(() => box.inputValue()).toBe(after);
    // A tab that is not looked at is slow to act, so the reader turns to the one whose button is pressed.
    await page.bringToFront();
    await page.getByRole("button", {name: "Undo"}).click();
    await other.page.bringToFront();
    await expect.poll(() => box.inputValue()).toBe(before);
  });

  test("is left alone by a file that is not one, and the reader is reported why", async () => {
    const {control, after} = await moveSlider();
    const kept = await keptDesign();
    const broken = {...kept, bay: {...(kept["bay"] as object), spanFt: -3}};
    await page.locator(".strip-file").setInputFiles({name: "floor.json", mimeType: "application/json", buffer: Buffer.from(JSON.stringify(broken))});
    const notice = page.locator(".notice");
    await notice.waitFor();
    expect(await notice.innerText()).toContain("span: -3 ft is not possible (10 to 150 ft)");
    expect(await page.locator(`[data-path="${control}"] .number-box`).first().inputValue()).toBe(after);
    expect(await keptDesign()).toEqual(kept);
  });

  test("is replaced by a file that is one, as one step", async () => {
    await moveSlider();
    const kept = await keptDesign();
    const renamed = {...kept, name: "Another floor"};
    await page.locator(".strip-file").setInputFiles({name: "floor.json", mimeType: "application/json", buffer: Buffer.from(JSON.stringify(renamed))});
    await expect.poll(() => page.locator(".strip-name").innerText()).toBe("Another floor");
    await page.getByRole("button", {name: "Undo"}).click();
    await expect.poll(() => page.locator(".strip-name").innerText()).toBe(kept["name"]);
  });

  test("travels as a link, by keyboard: whoever follows it has the whole design, and one undo leads back", async () => {
    await page.context().grantPermissions(["clipboard-read", "clipboard-write"], {origin: reader.origin});
    await moveSlider();
    const sent = await keptDesign();
    await page.getByRole("button", {name: "Copy a link to the design"}).press("Enter");
    const notice = page.locator(".notice");
    await expect.poll(() => notice.innerText()).toContain("Copied a link that holds all of");
    const link = await page.evaluate(() => navigator.clipboard.readText());
    expect(link).toMatch(/^http[^#]+\/#design=1\.[\w-]+$/);
    await page.getByRole("button", {name: "Undo"}).click();
    const mine = await keptDesign();
    expect(mine).not.toEqual(sent);
    await page.goto(reader.origin + placeOf("/loads"));
    await settled(page);
    await page.goto(link);
    await expect.poll(() => notice.innerText()).toContain("from the link");
    expect(await keptDesign()).toEqual(sent);
    // The address no longer holds it, so that a reload does not open it over what the reader does next.
    expect(new URL(page.url()).hash).toBe("");
    await page.getByRole("button", {name: "Undo"}).click();
    expect(await keptDesign()).toEqual(mine);
    await page.evaluate((cut) => (location.hash = cut), new URL(link).hash.slice(0, 300));
    await expect.poll(() => notice.innerText()).toContain("The open design is as it was: the link was not opened.");
    expect(await keptDesign()).toEqual(mine);
    expect(reader.problems).toEqual([]);
  });

  test("has its tables as CSV by keyboard, as they stand there, with what is typed into them", async () => {
    await reader.open("/trade-offs");
    await page.locator("summary", {hasText: "The carbon factors"}).press("Enter");
    const factors = page.locator("main table:has(input)").first();
    await factors.locator("input").first().fill("123.4");
    const save = page.getByRole("button", {name: "Save as CSV: Carbon factors"});
    await save.focus();
    const [file] = await Promise.all([page.waitForEvent("download"), page.keyboard.press("Enter")]);
    expect(file.suggestedFilename()).toBe("trade-offs-carbon-factors.csv");
    const bytes = readFileSync(await file.path());
    // What spreadsheets know UTF-8 by; a decoder takes it off.
    expect([...bytes.subarray(0, 3)]).toEqual([0xef, 0xbb, 0xbf]);
    const rows = csvParseRows(new TextDecoder().decode(bytes).trimEnd());
    expect(new Set(rows.map((row) => row.length)).size).toBe(1);
    expect(rows[0]?.slice(0, 3)).toEqual(["Material", "kgCO\u2082e", "per"]);
    expect(rows).toHaveLength(await factors.locator("tr").count());
    expect(rows[1]?.[1]).toBe("123.4");
    await page.getByRole("button", {name: "Save as CSV: Which part has the carbon?"}).focus();
    expect(await page.locator(".table-csv[data-shown]").evaluateAll((shown) => shown.map((node) => getComputedStyle(node).opacity))).toEqual(["1"]);
    expect(reader.problems).toEqual([]);
  });

  test("is kept as a moment, by keyboard and by itself when another opens, and is gone back to as one step", async () => {
    await reader.open("/");
    const moments = page.locator(".moments .card");
    const slider = page.locator('.control.number[data-path="bay.spanFt"] .slider').first();
    await slider.press("ArrowRight");
    const summary = page.locator("summary", {hasText: "go back to an earlier one"});
    await summary.press("Enter");
    await page.getByLabel("Name of this moment").first().fill("before the longer span");
    await page.keyboard.press("Enter");
    await expect.poll(() => moments.count()).toBe(1);
    const kept = await keptDesign();
    await slider.press("ArrowRight");
    const longer = await keptDesign();
    expect(longer["bay"]).not.toEqual(kept["bay"]);
    await moments.first().getByRole("button", {name: "Go back to it"}).press("Enter");
    await expect.poll(() => keptDesign()).toEqual(kept);
    // What gave way is among the moments, after a reload too.
    await expect.poll(() => moments.count()).toBe(2);
    await reader.open("/");
    await summary.press("Enter");
    await expect.poll(() => moments.locator(".moment-name").evaluateAll((names) => names.map((name) => (name as HTMLInputElement).value))).toEqual([`${String(kept["name"])}, before it was replaced`, "before the longer span"]);
    await moments.first().getByRole("button", {name: "Go back to it"}).press("Enter");
    await expect.poll(() => keptDesign()).toEqual(longer);
    await moments.nth(1).getByRole("button", {name: "Compare"}).press("Enter");
    await moments.nth(1).getByRole("button", {name: "Remove"}).press("Enter");
    await expect.poll(() => moments.count()).toBe(1);
    await page.getByRole("button", {name: "Bring it back"}).press("Enter");
    await expect.poll(() => moments.count()).toBe(2);
    await reader.open("/compare");
    expect(await page.locator("main").innerText()).toContain("a moment of a design");
    expect(reader.problems).toEqual([]);
  });

  test("refuses a typed value that is impossible, beside the control", async () => {
    const {control, after} = await moveSlider();
    const box = page.locator(`[data-path="${control}"] .number-box`).first();
    await box.fill("-99999");
    await box.press("Enter");
    expect(await page.locator(`[data-path="${control}"] .control-message`).first().innerText()).toContain("-99999");
    const [group, field] = control.split(".") as [string, string];
    const kept = (await keptDesign())[group] as Record<string, number>;
    const rule = FIELDS[control];
    expect(typedText(kept[field] as number, rule?.kind === "number" ? rule.unit : "")).toBe(after);
  });
});

describe("a lesson path", () => {
  beforeEach(begin);
  afterEach(() => reader.end());
  const bar = () => page.locator(".path-bar");

  test("is begun, followed and left by keyboard, and stays over a reload", async () => {
    await reader.open("/lessons");
    const [first] = readLessons();
    const section = page.locator(".lesson").first();
    expect(await section.innerText()).toContain(`${minutesOf(first as NonNullable<typeof first>)} minutes`);
    await section.getByRole("button", {name: "Start with the open design"}).press("Enter");
    await expect.poll(() => bar().innerText()).toContain("stop 1 of 8");
    await page.keyboard.press("Alt+PageDown");
    await expect.poll(() => new URL(page.url()).pathname).toBe(placeOf("/loads"));
    await expect.poll(() => bar().innerText()).toContain("stop 2 of 8");
    await page.reload();
    await settled(page);
    await expect.poll(() => page.locator("h2[data-stop='2']").innerText()).toBe("One square foot of floor");
    await reader.open("/snow");
    await expect.poll(() => bar().innerText()).toContain("This page is off the path.");
    await bar().getByRole("button", {name: "Leave the path"}).press("Enter");
    await page.reload();
    await settled(page);
    expect(await bar().count()).toBe(0);
    expect(reader.problems).toEqual([]);
  });

  test("whose link locks the answers opens them with a guess, not for the asking", async () => {
    await page.goto(`${reader.origin}${placeOf("/loads")}#path=first-class&stop=2&answers=locked`);
    await settled(page);
    const why = page.locator("main details.why").first();
    await why.locator("summary").press("Enter");
    await expect.poll(() => why.innerText()).toContain("Locked until you have guessed.");
    // Seen on every page before, as far as this visit knows: that does not open it.
    expect(await page.getByRole("button", {name: "Tell me", exact: true}).filter({visible: true}).count()).toBe(0);
    expect(await page.locator("main [data-veiled]").count()).toBeGreaterThan(0);
    await page.locator("[data-guess] input").fill("150");
    await page.keyboard.press("Enter");
    await expect.poll(() => why.locator("mn").count()).toBeGreaterThan(0);
    expect(await page.locator("main [data-veiled]").count()).toBe(0);
    await expect.poll(() => bar().innerText()).toContain("The guess: 150 psf.");
    expect(reader.problems).toEqual([]);
  });

  test("any page is shown on a projector, one picture at a time, and one thing lights wherever it stands", async () => {
    await page.goto(`${reader.origin}${placeOf("/edge-beam")}#show=the-section`);
    await settled(page);
    const figures = () => page.locator("main figure").filter({visible: true}).count();
    await expect.poll(figures).toBe(1);
    const slider = page.locator('main .control[data-path="edgeBeam.upstandIn"]').filter({visible: true});
    const before = await slider.locator(".number-box").inputValue();
    await slider.locator(".slider").press("ArrowRight");
    await expect.poll(() => slider.locator(".number-box").inputValue()).not.toBe(before);
    expect(await figures()).toBe(1);
    await page.keyboard.press("Escape");
    for (let i = 0; i < 12 && (await page.locator(".projector-thing").innerText()) !== "ledge"; i++) await page.keyboard.press("ArrowDown");
    expect(await page.locator("main figure svg .is-lit").count()).toBeGreaterThan(0);
    expect(await page.locator("main p .is-lit").innerText()).toBe("13 in");
    await page.evaluate(AXE);
    expect(await faultsOfAccess()).toEqual([]);
    await page.keyboard.press("Escape");
    await page.keyboard.press("ArrowRight");
    await expect.poll(() => new URL(page.url()).hash).not.toBe("#show=the-section");
    const {hash} = new URL(page.url());
    await page.reload();
    await settled(page);
    await expect.poll(figures).toBeLessThanOrEqual(1);
    expect(new URL(page.url()).hash).toBe(hash);
    await page.keyboard.press("Escape");
    await expect.poll(figures).toBeGreaterThan(3);
    expect(new URL(page.url()).hash).toBe("");
    expect(reader.problems).toEqual([]);
  });
});

describe("a picture", () => {
  beforeEach(begin);
  afterEach(() => reader.end());

  /** What a press on one of the offers of the first figure's menu hands over, by keyboard. */
  async function saved(offer: string): Promise<Buffer> {
    await page.locator(".figure-save").first().press("Enter");
    const button = page.locator(".figure-menu").getByRole("button", {name: offer, exact: true});
    const [file] = await Promise.all([page.waitForEvent("download"), button.press("Enter")]);
    await expect.poll(() => page.locator(".figure-menu").count()).toBe(0);
    return readFileSync(await file.path());
  }

  /** Where everything drawn stands, from the first of it on, and in what color; in the page or in a file of its own. */
  const places = (within: Locator) => within.evaluateAll((nodes) => {
    // A color that the style mixes is written another way than the same color in a file.
    const plain = (color: string) => color.replace(/^color\(srgb ([\d.]+) ([\d.]+) ([\d.]+)\)$/, (_, ...shares: string[]) => `rgb(${shares.slice(0, 3).map((share) => Math.round(255 * Number(share))).join(", ")})`);
    const drawn = nodes.filter((node) => /^(path|line|rect|circle|text)$/.test(node.tagName) && !node.closest("defs, pattern, clipPath") && (node as SVGElement).getBoundingClientRect().width + (node as SVGElement).getBoundingClientRect().height > 0);
    const [first] = drawn;
    if (!first) throw new Error("nothing is drawn");
    const from = first.getBoundingClientRect();
    return drawn.map((node) => {
      const {left, top, width, height} = node.getBoundingClientRect();
      const {fill, stroke} = getComputedStyle(node);
      return {numbers: [left - from.left, top - from.top, width, height].map(Math.round), look: `${node.tagName} ${plain(fill)} ${plain(stroke)}`, words: node.tagName === "text" ? node.textContent : ""};
    });
  });

  test("leaves as a file that looks the same without the site, in light colors on a dark screen too, with its caption and where it comes from", async () => {
    await reader.open("/edge-beam");
    const wanted = await places(page.locator("figure:has(.figure-save)").first().locator(".figure-body svg *"));
    const caption = await page.locator("figcaption").first().innerText();
    await page.emulateMedia({colorScheme: "dark"});
    const svg = (await saved("SVG")).toString("utf8");
    const png = await saved("PNG");
    await page.emulateMedia({colorScheme: null});
    expect(reader.problems).toEqual([]);

    const site = svg.match(/url\((?!["']?(#|&quot;#|data:)).{40}|href="(?!#).{40}| class=.{40}|var\(.{40}|<script.{40}/g);
    expect(site).toBeNull();
    const size = /width="(\d+)" height="(\d+)"/.exec(svg)?.slice(1).map(Number) as [number, number];
    expect(png.subarray(1, 4).toString()).toBe("PNG");
    expect([png.readUInt32BE(16), png.readUInt32BE(20)]).toEqual(size.map((px) => 3 * px));

    await page.setContent(`<body style="margin: 0">${svg}</body>`);
    await page.evaluate(() => document.fonts.ready);
    const found = await places(page.locator("svg svg *"));
    expect(found.map(({look, words}) => `${look} ${words}`)).toEqual(wanted.map(({look, words}) => `${look} ${words}`));
    found.forEach(({numbers}, i) => numbers.forEach((number, k) => expect(Math.abs(number - (wanted[i]?.numbers[k] ?? Number.NaN)), wanted[i]?.look).toBeLessThanOrEqual(1)));
    const words = (await page.locator("svg > text").allTextContents()).join(" ");
    for (const part of [caption, "What carries the edge?", "For learning and preliminary sizing only"]) expect(words).toContain(part);
  });

  test("that is true to scale has the same length between its dimensions' ticks as SVG and as DXF, each as an independent reader finds it", async () => {
    await reader.open("/walls");
    const figure = page.locator("figure:has(.figure-save)").first();
    const pxPerIn = await figure.locator("svg[data-px-per-in]").evaluate((drawing) => Number((drawing as SVGSVGElement).dataset["pxPerIn"]));
    const longest = (lengths: readonly number[]) => Math.max(...lengths);
    const file = new DxfParser().parseSync((await saved("DXF")).toString("utf8"));
    expect(file?.header["$INSUNITS"]).toBe(1);
    const lines = (file?.entities ?? []).filter((one): one is ILwpolylineEntity => one.type === "LWPOLYLINE" && one.layer === "Dimension" && (one as ILwpolylineEntity).vertices.length === 2);
    const inDxf = longest(lines.map(({vertices: [from, to]}) => Math.hypot((to?.x ?? 0) - (from?.x ?? 0), (to?.y ?? 0) - (from?.y ?? 0))));
    const words = (file?.entities ?? []).flatMap((one) => (one.type === "TEXT" ? [(one as ITextEntity).text] : [])).join(" ");
    expect(words).toContain("For learning and preliminary sizing only");
    const svg = (await saved("SVG")).toString("utf8");
    // Without its style the file's dimension lines are the thin ones in the soft color: the longest straight path of two points is enough.
    const drawn = [...svg.matchAll(/ d="M(-?[\d.]+) (-?[\d.]+)L(-?[\d.]+) (-?[\d.]+)"/g)].map((found) => found.slice(1).map(Number) as [number, number, number, number]);
    const inSvg = drawn.map(([x0, y0, x1, y1]) => Math.hypot(x1 - x0, y1 - y0) / pxPerIn);
    expect(inDxf).toBeGreaterThan(60);
    expect(Math.min(...inSvg.map((lengthIn) => Math.abs(lengthIn - inDxf)))).toBeLessThan(1 / 16);
  });

  test("hands over its numbers as CSV", async () => {
    await reader.open("/limits");
    const csv = csvParseRows(new TextDecoder().decode(await saved("Its numbers, CSV")));
    const rows = await page.locator(".figure-table").first().locator("tr").count();
    expect(csv).toHaveLength(rows);
    expect(new Set(csv.map((row) => row.length)).size).toBe(1);
  });
});

describe("help with words", () => {
  beforeEach(begin);
  afterEach(() => reader.end());

  test("a word opens what it means by keyboard, and a search leads to a place, both without a pointer", async () => {
    await reader.open("/camber");
    await page.keyboard.press("Shift");
    const word = page.locator('.term[data-term="camber"]').first();
    await word.waitFor();
    const text = await page.locator("main").innerText();
    await word.focus();
    await page.keyboard.press("Enter");
    const card = page.locator(".word-card");
    await expect.poll(() => card.locator(".word-meaning").innerText()).toContain("arch");
    expect(await card.locator("svg").count()).toBe(1);
    expect(await word.getAttribute("aria-expanded")).toBe("true");
    await page.keyboard.press("Escape");
    expect(await card.isVisible()).toBe(false);
    expect(await word.evaluate((node) => node === document.activeElement)).toBe(true);
    // The marks change no word, nor does a sentence that is written anew lose or double any.
    await page.locator(".control.number .slider").first().focus();
    for (const key of ["ArrowRight", "ArrowLeft"]) await page.keyboard.press(key);
    await expect.poll(() => page.locator("main").innerText()).toBe(text);

    await page.locator("h1").click();
    await page.keyboard.press("/");
    await page.locator("dialog.search").waitFor();
    await page.keyboard.type("puching");
    await expect.poll(() => page.locator('[role=option][aria-selected="true"]').innerText()).toContain("punching");
    await page.keyboard.press("Enter");
    await page.waitForURL("**/glossary/#word-punching");
    await settled(page);
    await expect.poll(() => page.evaluate(() => document.activeElement?.id)).toBe("word-punching");
    expect(reader.problems).toEqual([]);
  });
});

describe("a figure in a page of another site", () => {
  beforeEach(begin);
  afterEach(() => reader.end());

  test.each([...new Set(FIGURES.map((figure) => figure.page))])("stands alone with its control, whole in its frame: those of %s", async (name) => {
    const own = FIGURES.filter((figure) => figure.page === name);
    await page.setViewportSize({width: EMBED_WIDTH_PX, height: 600});
    for (const [i, figure] of own.entries()) {
      const query = `?embed=${figure.name}&starter=${figure.starter ?? "branch-library"}`;
      if (i === 0) await page.goto(`${reader.origin}${placeOf(name === "index" ? "/" : `/${name}`)}${query}`);
      else await page.evaluate((to) => {
        history.pushState(null, "", to);
        window.dispatchEvent(new PopStateEvent("popstate"));
      }, query);
      await page.locator("figure[data-place=kept]").filter({visible: true}).waitFor();
      expect(await page.evaluate(() => {
        const seen = (selector: string) => [...document.querySelectorAll(selector)].filter((node) => node.getClientRects().length > 0);
        return {
          figures: seen("main figure").length,
          drawn: seen("main figure .figure-body :is(svg, table, .governs)").length > 0 || seen("main figure .figure-body *").length > 3,
          controls: seen("main :is(input, select)").some((node) => !node.closest("figure")),
          words: seen("main :is(h1, h2, h3, p)").filter((node) => !node.closest("figure, .control")).map((node) => node.textContent),
          shell: seen(".bar, #pages, nav, .figure-save").length,
          caution: seen(".caution").length,
          wide: document.documentElement.scrollWidth,
        };
      }), figure.name).toEqual({figures: 1, drawn: true, controls: true, words: [], shell: 0, caution: 1, wide: EMBED_WIDTH_PX});
      const bottom = () => page.locator("#observablehq-footer").evaluate((foot) => foot.getBoundingClientRect().bottom + scrollY);
      // Letters are a little wider on one machine than on another.
      await expect.poll(bottom, {message: figure.name}).toBeLessThan(figure.heightPx + 60);
      expect(await bottom(), figure.name).toBeGreaterThan(figure.heightPx - 140);
    }
    expect(reader.problems).toEqual([]);
  });

  test("moves a copy of its own: what this browser keeps is neither read nor touched, refused or not", async () => {
    await moveSlider();
    const mine = await keptDesign();
    const kept = () => page.evaluate(() => JSON.stringify([localStorage, sessionStorage]));
    const before = await kept();
    await page.goto(`${reader.origin}${placeOf("/deck")}?embed=reach&starter=records-store`);
    const slider = page.locator('[data-path="bay.spanFt"] .slider');
    await slider.waitFor();
    const box = page.locator('[data-path="bay.spanFt"] .number-box');
    const first = await box.inputValue();
    await slider.press("ArrowRight");
    expect(await box.inputValue()).not.toBe(first);
    const source = page.locator(".embed-source");
    expect(await source.innerText()).toContain(seeds.find(({id}) => id === "records-store")?.design.name);
    expect(await source.getByRole("link").evaluate((link) => [(link as HTMLAnchorElement).target, (link as HTMLAnchorElement).rel, (link as HTMLAnchorElement).hash])).toEqual(["_blank", "noopener", "#how-far-does-it-reach"]);
    await page.evaluate(() => window.dispatchEvent(new Event("pagehide")));
    await page.evaluate(AXE);
    expect(await faultsOfAccess()).toEqual([]);
    await reader.open("/deck");
    expect(await kept()).toBe(before);
    expect(await keptDesign()).toEqual(mine);
    expect(reader.problems).toEqual([]);
  });

  test("is found in the gallery, which copies its code and shows it in its frame, with the open design too", async () => {
    await page.context().grantPermissions(["clipboard-read", "clipboard-write"], {origin: reader.origin});
    await reader.open("/gallery");
    expect(await page.locator(".gallery-card").evaluateAll((cards) => cards.map((card) => (card as HTMLElement).dataset["figure"]))).toEqual(
      (await page.evaluate(() => [...document.querySelectorAll<HTMLElement>(".gallery-page")].map((section) => section.dataset["page"]))).flatMap((name) => FIGURES.filter((figure) => figure.page === name).map((figure) => figure.name)),
    );
    expect(await page.locator(".gallery-card").count()).toBe(FIGURES.length);
    const card = page.locator('[data-figure="reach"]');
    await page.getByLabel("They begin with").selectOption("the open design");
    await card.getByRole("button", {name: "Copy the code"}).press("Enter");
    await expect.poll(() => card.locator(".gallery-said").innerText()).toBe("Copied.");
    const code = await page.evaluate(() => navigator.clipboard.readText());
    expect(code).toMatch(/^<iframe src="http[^"]+\?embed=reach#design=1\.[\w-]+" title="[^"]+\?" width="720"/);
    await card.getByRole("button", {name: "Show it"}).click();
    const inside = card.frameLocator("iframe");
    await inside.locator("figure[data-place=kept]").waitFor();
    // Small pictures come where the reader looks.
    await page.locator('[data-page="loads"]').scrollIntoViewIfNeeded();
    await page.mouse.move(500, 400);
    await page.locator('[data-page="loads"] img').first().waitFor();
    expect(reader.problems).toEqual([]);
  });
});

/** Quantities in US units: what no text of a page that reads in SI may hold. Strand is called by its size in inches in both. */
const IN_US = /\d'(?!\w)|\d"|[\d?]\s(?:psf|psi|ksi|plf|klf|pcf|cfm|kips?|kip-ft|kip-in|ft|feet|lb|pounds|yards)\b|[\d?]\s(?:ft|in)\u00b2|\d\sin(?= (?:of|deep|wide|thick|high|above|below|less|more|to|at)\b)/;

/** The lines of the page's words, without those that say that they keep their units. */
const lines = () => page.evaluate(() => [...document.querySelectorAll("main :is(h1, h2, h3, p, li, td, th, dt, dd, summary, figcaption, label, .figure-title, svg text)")]
  .filter((node) => !node.closest('[data-units="as is"], math, code, .katex') && !node.querySelector("math, [data-units]"))
  .map((node) => node.textContent.replace(/\s+/g, " ").trim()).filter((line) => line !== ""));

/** Chooses the reader's units by keyboard: each press goes one on. */
async function goUnits(key: "ArrowRight" | "ArrowLeft"): Promise<void> {
  await page.locator('.unit-switch input:checked').focus();
  await page.keyboard.press(key);
}

describe("a reader of SI", () => {
  beforeEach(begin);
  afterEach(() => reader.end());

  test.each(["/", "/deck", "/member", "/story", "/columns", "/edge-beam", "/record"])("finds no US unit left on %s, and US units again as they were", async (path) => {
    await reader.open(path);
    await page.evaluate(() => document.querySelectorAll("main details").forEach((fold) => ((fold as HTMLDetailsElement).open = true)));
    await page.waitForTimeout(500);
    const before = await lines();
    expect(before.filter((line) => IN_US.test(line)).length).toBeGreaterThan(3);
    await goUnits("ArrowRight");
    await expect.poll(async () => (await lines()).filter((line) => IN_US.test(line))).toEqual([]);
    await goUnits("ArrowLeft");
    await expect.poll(lines).toEqual(before);
    expect(reader.problems).toEqual([]);
  });

  test("sets the span in meters by box and slider, on every page and after a reload, and reads the same length in feet", async () => {
    await reader.open("/deck");
    await goUnits("ArrowRight");
    const control = page.locator('[data-path="bay.spanFt"]').first();
    const box = control.locator(".number-box");
    await expect.poll(() => control.locator(".unit").innerText()).toBe("m");
    await box.fill("12.5");
    await box.press("Enter");
    expect(((await keptDesign())["bay"] as {spanFt: number}).spanFt).toBeCloseTo(12.5 / 0.3048, 6);
    await control.locator(".slider").focus();
    await page.keyboard.press("ArrowRight");
    expect(await box.inputValue()).toBe("12.6");
    expect(await control.locator(".slider").getAttribute("aria-valuetext")).toBe("12.6 m");
    // What is typed with a unit of its own is read in that.
    await box.fill("41'-6\"");
    await box.press("Enter");
    expect(((await keptDesign())["bay"] as {spanFt: number}).spanFt).toBeCloseTo(41.5, 6);
    await box.fill("99");
    await box.press("Enter");
    expect(await control.locator(".message, [role=alert]").first().innerText()).toMatch(/99(?:\.0+)?\sm\b.*to 45\.7\sm/);
    await box.press("Escape");
    await page.reload();
    await settled(page);
    await expect.poll(() => box.inputValue()).toBe("12.649");
    await goUnits("ArrowLeft");
    await expect.poll(() => box.inputValue()).toBe("41'-6\"");
    expect(reader.problems).toEqual([]);
  });
});

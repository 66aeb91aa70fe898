import {readFileSync} from "node:fs";
import {inflateSync} from "node:zlib";
import type {Page} from "playwright-core";
import {afterEach, expect, test} from "vitest";
import {seeds} from "../support/designs.js";
import {sheetsOf} from "../support/pdfText.js";
import {settled} from "./browser.js";
import {placeOf} from "./dist.js";
import {siteReader} from "./reader.js";

const reader = siteReader();

afterEach(async () => {
  expect(reader.problems).toEqual([]);
  await reader.end();
});

/** The most letter sheets that the record of a starter may take. */
const MOST_SHEETS = 8;
/** Fewer glyphs than these are no more than a running title, a number and the caution. */
const LEAST_GLYPHS = 450;

/** The sheets of a page as they are printed, each with the number of glyphs on it. */
async function printed(page: Page): Promise<number[]> {
  const pdf = await page.pdf({format: "Letter"});
  const text = pdf.toString("latin1");
  const objects = new Map([...text.matchAll(/(\d+) 0 obj\b([\s\S]*?)endobj/g)].map((found) => [found[1], {body: found[2] as string, at: found.index}]));
  return [...objects.values()].filter(({body}) => /\/Type\s*\/Page\b/.test(body)).map(({body}) => {
    const contents = objects.get(/\/Contents (\d+) 0 R/.exec(body)?.[1] ?? "");
    if (!contents) throw new Error("A sheet has no contents.");
    const begin = text.indexOf("stream", contents.at) + "stream".length;
    const from = begin + (text[begin] === "\r" ? 2 : 1);
    return glyphs(inflateSync(pdf.subarray(from, text.indexOf("endstream", from))).toString("latin1"));
  });
}

/** How many glyphs a sheet's contents show: strings of them stand in angle brackets, two bytes for each. */
function glyphs(contents: string): number {
  return [...contents.matchAll(/<([0-9A-F]+)>/gi)].reduce((sum, [, hex = ""]) => sum + hex.length / 4, 0);
}

for (const {design} of seeds) {
  test(`the record of ${design.name} prints on eight letter sheets at most, none of them blank, with the design's name and the kinds that fail`, async () => {
    const page = await reader.begin("/record");
    await page.locator(".strip-file").setInputFiles({name: "floor.json", mimeType: "application/json", buffer: Buffer.from(JSON.stringify(design))});
    await expect.poll(() => page.locator(".record-paper h2").innerText()).toBe(design.name);
    const sheets = await printed(page);
    expect(sheets.length).toBeGreaterThan(1);
    expect(sheets.length).toBeLessThanOrEqual(MOST_SHEETS);
    for (const count of sheets) expect(count).toBeGreaterThan(LEAST_GLYPHS);
    await page.locator(".segments label", {hasText: "One page"}).click();
    expect(await printed(page)).toHaveLength(1);
    await page.locator(".segments label", {hasText: "Whole record"}).click();
    await page.emulateMedia({media: "print"});
    expect(await page.evaluate(() => getComputedStyle(document.documentElement).getPropertyValue("--running-title"))).toBe(JSON.stringify(design.name));
    expect(await page.locator("#record-deck .record-alternatives").last().innerText()).toMatch(/Hollow-core planks .*\nSolid slabs /);
  });
}

test("the record takes in what is pinned when it is asked to, on as many more sheets as it says at most", async () => {
  const page = await reader.begin("/compare");
  for (let i = 0; i < seeds.length; i++) {
    await page.getByLabel("A starter", {exact: true}).selectOption({index: i});
    await page.getByRole("button", {name: "Pin this starter"}).click();
  }
  await page.getByLabel("Note on pinned design A").fill("Its bays are too small for the stacks.");
  await reader.open("/record");
  const before = (await printed(page)).length;
  expect(before).toBeLessThanOrEqual(MOST_SHEETS);
  expect(await page.locator("#record-considered").isVisible()).toBe(false);
  await page.getByLabel("Take the pinned designs into the record").click();
  await expect.poll(() => page.locator("#record-considered table").count()).toBe(1);
  const told = await page.locator(".switch-control", {hasText: "Take the pinned designs"}).innerText();
  const most = /adds (one|\d+) sheets? at most/.exec(told)?.[1] ?? "";
  const after = (await printed(page)).length;
  expect(after - before).toBeLessThanOrEqual(most === "one" ? 1 : Number(most));
  expect(await page.locator("#record-considered").innerText()).toContain("Its bays are too small for the stacks.");
});

test("every table of the record says at its head what it is about, and its head is repeated where it goes on", async () => {
  const page = await reader.begin("/record");
  await page.emulateMedia({media: "print"});
  // In one look: the record is drawn anew when a search beside it ends.
  const heads = await page.evaluate(() => [...document.querySelectorAll<HTMLTableElement>(".record-paper table")].map((table) => {
    const head = table.querySelector("thead");
    return {title: head?.rows[0]?.textContent ?? "", display: head ? getComputedStyle(head).display : ""};
  }));
  expect(heads.length).toBeGreaterThan(6);
  for (const {title, display} of heads) {
    expect(title).not.toBe("");
    expect(display).toBe("table-header-group");
  }
});

test("a first sheet holds more than a title and its lead: the page on the story begins with its picture", async () => {
  const page = await reader.begin("/story");
  const [first] = await printed(page);
  expect(first).toBeGreaterThan(900);
});

test("the record leaves with its worked steps: on paper, as one HTML file that needs nothing else, and as Markdown", async () => {
  const page = await reader.begin("/record");
  const whole = (await printed(page)).length;
  await page.locator(".segments label", {hasText: "With worked steps"}).click();
  await expect.poll(() => page.locator(".record-worked .step").count()).toBeGreaterThan(200);
  const sheets = await printed(page);
  expect(sheets.length).toBeGreaterThan(whole + 5);
  for (const count of sheets) expect(count).toBeGreaterThan(LEAST_GLYPHS);
  const saved = async (name: string) => {
    const [file] = await Promise.all([page.waitForEvent("download"), page.getByRole("button", {name}).click()]);
    return readFileSync(await file.path(), "utf8");
  };
  const markdown = await saved("Save as Markdown");
  const headings = await page.locator(".record-paper :is(h2, h3):visible").allInnerTexts();
  for (const heading of headings) expect(markdown).toMatch(new RegExp(`^##? ${heading.replace(/[^\w ]/g, ".")}$`, "m"));
  expect(markdown.match(/^\d+\. \*\*.+\*\* \(.+\): `.+ = .+`/gm)?.length).toBe(await page.locator(".record-worked .step").count());
  for (const caution of await page.locator(".record-cautions li").allInnerTexts()) expect(markdown).toContain(caution);
  expect(markdown).not.toMatch(/undefined|NaN|\[object/);

  const html = await saved("Save as HTML");
  const words = () => page.locator(".record-paper").evaluate((paper) => paper.querySelectorAll("td, dd, .step-equation, .record-decision").length);
  const [before, reasons] = [await words(), await page.locator(".record-reason").allTextContents()];
  // No equation is wider than a sheet between its margins (letter, 8.5 in less 14 mm at each side, at 96 px to the inch).
  await page.setViewportSize({width: Math.floor((8.5 - 28 / 25.4) * 96), height: 1000});
  await page.emulateMedia({media: "print"});
  const wide = await page.locator(".record-worked .step-right").evaluateAll((lines) => lines.filter((line) => line.scrollWidth > line.parentElement!.clientWidth + 1).map((line) => line.textContent?.slice(0, 80)));
  expect(wide).toEqual([]);
  await page.goto("about:blank");
  await page.emulateMedia({media: null});
  await page.setContent(html);
  await page.evaluate(() => document.fonts.ready);
  expect(await words()).toBe(before);
  // What cannot be written there stands there.
  expect(await page.locator(".record-reason:visible").allTextContents()).toEqual(reasons);
  expect(await page.locator("textarea, input, button, script, a").count()).toBe(0);
  expect(await page.evaluate(() => [...document.fonts].filter(({status}) => status === "loaded").length)).toBeGreaterThan(2);
});

/** How often a text stands on sheets whose spaces are gone. */
const timesOn = (sheets: readonly string[], text: string) => sheets.join("").split(text.replace(/\s/g, "")).length - 1;

test("a set of exercises prints with all of its items and without its key, the key apart, and each student's own on sheets with the name", async () => {
  const page = await reader.begin("/sets");
  const made = () => page.locator(".set-paper[data-made]").waitFor();
  const print = async (what: string) => {
    await page.locator(".segments label").getByText(what, {exact: true}).click();
    await page.waitForTimeout(200);
    await made();
    return sheetsOf(await page.pdf({format: "Letter"}));
  };
  await made();
  const [set, key] = [await print("The set"), await print("Its key")];
  const headings = await page.locator(".set-paper h4").allTextContents();
  expect(headings).toHaveLength(6);
  for (const [sheets, most] of [[set, 5], [key, 3]] as const) {
    expect(sheets.length).toBeLessThanOrEqual(most);
    headings.forEach((heading) => expect(timesOn(sheets, heading), heading).toBe(1));
    for (const sheet of sheets) {
      expect(sheet).toContain("Localcodesgovern;alicensedengineer");
      expect(sheet).toContain("Fromtheroomtothebeam");
      expect(sheet).not.toMatch(/undefined|NaN|AlderRow/);
    }
  }
  expect(timesOn(set, "Usual slips")).toBe(0);
  expect(timesOn(key, "Usual slips")).toBeGreaterThan(5);
  await page.getByLabel("Names or numbers of the class").fill("Ada Quill\n17\nBen Rook");
  const [sets, keys] = [await print("A set for each name"), await print("The key for each name")];
  for (const [sheets, words] of [[sets, "Name"], [keys, "Numbers of "]] as const) {
    for (const name of ["Ada Quill", "17", "Ben Rook"]) expect(sheets.filter((sheet) => sheet.includes(`${words}${name}`.replace(/\s/g, ""))), name).toHaveLength(1);
    headings.forEach((heading) => expect(timesOn(sheets, heading), heading).toBe(3));
  }
  expect([timesOn(sets, "Usual slips"), timesOn(keys, "Numbers of ")]).toEqual([0, 3]);
});

test("a set goes out and comes back by keyboard alone: link, answers that outlast a reload, file, marks; a file that was changed is named", async () => {
  const page = await reader.begin("/sets");
  await page.getByRole("switch", {name: "Students can check their answers"}).press("Space");
  await page.getByLabel("From which page?").selectOption("camber");
  await page.getByRole("button", {name: "Add When it stands highest"}).press("Enter");
  await page.locator(".set-see").waitFor();
  const link = await page.locator(".set-see").getAttribute("href");
  expect(link).toMatch(/\/pages\/practice\/#set=1\.[\w-]+$/);
  await page.goto(reader.origin + placeOf("/practice") + new URL(link ?? "", reader.origin).hash);
  await settled(page);
  await page.getByLabel("Your name or number").fill("17");
  await page.keyboard.press("Enter");
  const first = page.locator(".answer-box").first();
  await first.fill("1 psf");
  await first.press("Enter");
  await expect.poll(() => page.locator(".part-says[data-verdict]").count()).toBe(1);
  const handle = page.locator(".order-handle").first();
  const before = await page.locator(".order-text").allInnerTexts();
  await handle.press("ArrowDown");
  const after = await page.locator(".order-text").allInnerTexts();
  expect(after.slice(0, 2)).toEqual([before[1], before[0]]);
  await page.reload();
  await settled(page);
  expect(await first.inputValue()).toBe("1 psf");
  expect(await page.locator(".order-text").allInnerTexts()).toEqual(after);
  await page.getByRole("button", {name: "A hint"}).first().press("Enter");
  await expect.poll(() => page.locator(".part-hints math").count()).toBeGreaterThan(0);
  await page.getByRole("button", {name: "Show the worked steps"}).first().press("Enter");
  await expect.poll(() => page.locator(".part-worked math").count()).toBeGreaterThan(0);
  const [file] = await Promise.all([page.waitForEvent("download"), page.getByRole("button", {name: "Save the answers"}).press("Enter")]);
  const text = readFileSync(await file.path(), "utf8");
  await reader.open("/sets");
  const json = (name: string, content: string) => ({name, mimeType: "application/json", buffer: Buffer.from(content)});
  await page.locator(".answer-files").setInputFiles([json("cut.json", text.slice(0, 90)), json("good.json", text), json("changed.json", text.replace("1 psf", "2 psf")), json("again.json", text)]);
  const told = () => page.locator(".marking").innerText();
  await expect.poll(told).toContain("4 files: one student marked; 2 files not marked");
  expect(await told()).toMatch(/changed\.json: answer file: a file that was changed after it was saved/);
  expect(await told()).toMatch(/again\.json: another file of 17, with the same answers/);
  const [csv] = await Promise.all([page.waitForEvent("download"), page.getByRole("button", {name: "Save the marks as CSV"}).press("Enter")]);
  expect(readFileSync(await csv.path(), "utf8")).toMatch(/^student,points,of,1 superimposed-load,[\s\S]*\n17,/);
});

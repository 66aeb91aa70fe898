import {readFileSync} from "node:fs";
import {join} from "node:path";
import {expect, test} from "vitest";
import {chapters, type PageEntry} from "../../src/components/shared/pageList.js";
import {frontOf, listPages} from "../../src/headless/pages.js";
import {ROOT} from "../../src/headless/root.js";

const FRONT = '---\ndescription: "How far."\norder: 35\nkind: step\n---\n\n# How far does it reach?\n';

test("a page tells its title, description, place and kind itself", () => {
  expect(frontOf(FRONT, "reach")).toEqual({title: "How far does it reach?", description: "How far.", order: 35, kind: "step"});
});

test.each([
  ["a description", FRONT.replace(/description.*\n/, ""), "page reach: description"],
  ["a place in the order", FRONT.replace("35", "soon"), 'page reach: order in the front matter must be a number above 0, not "soon"'],
  ["a known kind", FRONT.replace("kind: step", "kind: chapter"), "step or reference"],
  ["a first heading", FRONT.replace("# ", "## "), "page reach has no first heading"],
])("a page without %s is refused by name", (_, text, message) => expect(() => frontOf(text, "reach")).toThrow(message));

test("the pages are read in order, the first first, and those to consult stand last", () => {
  const pages = listPages();
  expect(pages.length).toBeGreaterThan(15);
  expect(pages[0]?.name).toBe("index");
  const kinds = pages.map(({kind}) => kind).join(" ");
  expect(kinds).toMatch(/^(step )+reference( reference)*$/);
  expect(new Set(pages.map(({title}) => title)).size).toBe(pages.length);
});

test("no two pages claim one place in the order", () => {
  const orders = listPages().map(({order}) => order);
  expect(new Set(orders).size).toBe(orders.length);
});

test("chapters hold every page once, in reading order and numbered through", () => {
  const pages = listPages();
  const told = chapters(pages);
  expect(told.flatMap(({pages: own}) => own)).toEqual(pages);
  let number = 1;
  for (const {first, pages: own} of told.slice(0, -1)) {
    expect([first, own.length > 0]).toEqual([number, true]);
    number += own.length;
  }
  expect(told.at(-1)).toMatchObject({title: "For reference", first: undefined});
  expect(Math.max(...told.map(({pages: own}) => own.length))).toBeLessThanOrEqual(9);
});

test("a page falls into the chapter of its place, and a chapter without pages is not told", () => {
  const page = (order: number, kind: PageEntry["kind"] = "step"): PageEntry => ({name: String(order), title: String(order), description: "", kind, order});
  const told = chapters([page(10), page(39), page(40), page(134), page(135), page(170, "reference")]);
  expect(told.map(({title, first, pages}) => [title, first, pages.map(({order}) => order)])).toEqual([
    ["To begin with", 1, [10, 39]], ["The deck", 3, [40]], ["Beams, roof, columns", 4, [134]], ["The building", 5, [135]], ["For reference", undefined, [170]],
  ]);
});

test("README lists the pages as they tell themselves, in their order", () => {
  const readme = readFileSync(join(ROOT, "README.md"), "utf8");
  const pages = listPages();
  const line = ({title, description}: (typeof pages)[number]) => `**${title}**${title.endsWith("?") ? "" : ":"} ${description}`;
  const listed = readme.split("\n").filter((each) => /^(\d+\.|-) \*\*/.test(each));
  expect(listed).toEqual([
    ...pages.filter(({kind}) => kind === "step").map((page, i) => `${i + 1}. ${line(page)}`),
    ...pages.filter(({kind}) => kind === "reference").map((page) => `- ${line(page)}`),
  ]);
});

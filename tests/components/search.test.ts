import MiniSearch from "minisearch";
import {readFileSync} from "node:fs";
import {describe, expect, test} from "vitest";
import {INDEX_OPTIONS, search, tokens} from "../../src/components/search/searchIndex.js";
import {anchorOf} from "../../src/components/search/anchors.js";
import {sectionsOf} from "../../src/headless/pageProse.js";
import {listPages, sourceOf} from "../../src/headless/pages.js";
import {readRawTables} from "../../src/headless/readCatalog.js";
import {searchDocuments} from "../../src/headless/searchDocuments.js";
import {catalog, seeds} from "../support/designs.js";
import {once} from "../support/once.js";

const documents = once(() => searchDocuments(listPages(), readRawTables(), seeds.map(({design}) => design), catalog));
const index = once(() => {
  const made = new MiniSearch(INDEX_OPTIONS);
  made.addAll(documents());
  // As the site hands it over.
  return MiniSearch.loadJSON(JSON.stringify(made), INDEX_OPTIONS);
});
const first = (query: string) => {
  const group = search(index(), query)[0];
  return group && `${group.name}: ${group.found[0]?.title}`;
};

describe("what is found", () => {
  test("first is the thing itself, in whatever number or case", () => {
    expect(first("camber")).toBe("word: camber");
    expect(first("Ledges")).toBe("word: ledge");
    expect(first("ledge depth")).toBe("input: ledge depth");
  });

  test("is found by its beginning, and with a letter wrong", () => {
    expect(first("cambr")).toBe("word: camber");
    expect(first("puching")).toBe("word: punching");
    expect(search(index(), "no sky").flatMap(({found}) => found.map(({title}) => title))).toContain("no-sky line");
  });

  test("has something of all words, or else of some; and nothing is made up", () => {
    const all = search(index(), "ledge punching", 100).flatMap(({found}) => found);
    expect(all.length).toBeGreaterThan(0);
    expect(search(index(), "ledge qqqqqqq").length).toBeGreaterThan(0);
    expect(search(index(), "qqqqqqq")).toEqual([]);
    expect(search(index(), "  ")).toEqual([]);
  });

  test("is cut to the best of each kind, and says how many more there are", () => {
    const [cut, whole] = [2, 1000].map((most) => search(index(), "deck", most));
    expect(cut?.map(({found, more}) => found.length + more)).toEqual(whole?.map(({found}) => found.length));
    expect(whole?.every(({more}) => more === 0)).toBe(true);
  });
});

test("every page, word and limit is there once, and everything leads to a page", () => {
  const pages = listPages();
  const of = (group: string) => documents().filter((each) => each.group === group);
  expect(of("page").filter(({anchor}) => anchor === "").map(({page}) => page)).toEqual(pages.map(({name}) => name));
  expect(of("word").map(({title}) => title)).toEqual((readRawTables()["glossary"] ?? []).map(({term}) => term));
  const places = documents().map(({group, page, anchor, title}) => `${group} ${page} ${anchor} ${title}`);
  expect(new Set(places).size).toBe(places.length);
  for (const {page, title} of documents()) expect(pages.some(({name}) => name === page), title).toBe(true);
  // A computed number is no words.
  expect(documents().filter(({text}) => /\$\{|<\w|\]\(/.test(text)).map(({title}) => title)).toEqual([]);
});

describe("a page's prose", () => {
  test("is cut at its headings, whose places are named as the generator names them", () => {
    const text = '---\norder: 1\n---\n\n# Why *this*?\n\n```js\nconst hidden = 1;\n```\n\nIt spans ${live(`${decimals(a.b)} ft`, () => ({}))} and [more](../x/).\n\n## What lifts it, what pushes it down\n\n<p class="x">The end</p>\n\n<h2 id="units">Units</h2>\n\nA kip.';
    expect(sectionsOf(text)).toEqual([
      {title: "Why this?", anchor: "", text: "It spans and more."}, {title: "What lifts it, what pushes it down", anchor: "what-lifts-it-what-pushes-it-down", text: "The end"}, {title: "Units", anchor: "units", text: "A kip."},
    ]);
  });

  test("of a real page has all its second headings", () => {
    const text = readFileSync(sourceOf("camber"), "utf8");
    expect(sectionsOf(text).slice(1).map(({title}) => title)).toEqual([...text.matchAll(/^## (.+)$/gm)].map(([, title]) => title));
  });
});

test("a symbol is one word, with its underscore or without", () => {
  expect(tokens("f_se, 10DT24")).toEqual(["f_se", "fse", "10DT24"]);
  expect(anchorOf.word("blend (of a ramp)")).toBe("word-blend-of-a-ramp-");
});

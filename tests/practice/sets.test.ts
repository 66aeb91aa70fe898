import {describe, expect, test} from "vitest";
import {readCatalog} from "../../lib/catalog.js";
import {keysOf} from "../../lib/practice/keys.js";
import {KINDS, itemOf, itemsOf, kindsNamed} from "../../lib/practice/kinds.js";
import {plainItem} from "../../lib/practice/plain.js";
import {readRawTables} from "../../src/headless/readCatalog.js";
import {stepMarkup} from "../../src/components/practice/sheetSteps.js";
import {setPage} from "../../src/components/practice/sheetText.js";
import {once} from "../support/once.js";

const catalog = once(() => readCatalog(readRawTables()));

describe("a set", () => {
  test("has the kinds in their order and over again, with other numbers each time", () => {
    const kinds = kindsNamed("loads, camber-order");
    expect(kinds.length).toBeGreaterThan(4);
    const items = itemsOf(kinds, 3 * kinds.length, 7, catalog());
    expect(items.map(({number}) => number)).toEqual(items.map((_, i) => i + 1));
    for (const [i, kind] of kinds.entries()) {
      const own = items.filter((item) => item.kind === kind.id);
      expect(own.map(({turn}) => turn)).toEqual([1, 2, 3]);
      expect(own[0]?.number).toBe(i + 1);
      expect(new Set(own.map(({givens, table}) => JSON.stringify([givens, table?.rows]))).size).toBe(3);
    }
    // Each can be made again by itself.
    const last = items.at(-1)!;
    expect(keysOf(itemOf(last.kind, last.seed, catalog(), last.turn))).toEqual(keysOf(last));
  });

  test("covers at least 40 kinds over all levels, and any page's topic by name", () => {
    expect(KINDS.length).toBeGreaterThanOrEqual(40);
    expect(new Set(KINDS.map(({level}) => level)).size).toBe(3);
    expect(kindsNamed("all")).toEqual(KINDS);
    expect(kindsNamed("camber").every(({topic}) => topic === "camber")).toBe(true);
    const parts = itemsOf(KINDS, KINDS.length, 1, catalog()).flatMap((item) => item.parts.map(({type}) => type));
    expect([...new Set(parts)].sort()).toEqual(["choice", "mistake", "number", "order"]);
  });

  test.each([
    [() => kindsNamed("loads,nonsense"), /^kinds: nonsense is not possible \(all; topics loads, /], [() => itemsOf(KINDS, 0, 1, catalog()), "count: 0 is not possible (whole number, 1 to 500)"],
    [() => itemsOf(KINDS, 501, 1, catalog()), "count: 501"], [() => itemsOf([], 1, 1, catalog()), "kinds: missing"], [() => itemOf("factored-load", -1, catalog()), "seed: -1 is not possible (whole number, 0 to 4294967295)"],
    [() => itemOf("factored-load", 2 ** 32, catalog()), "seed: 42949673"], [() => itemOf("factored-load", 1.5, catalog()), "seed: 1.5"], [() => itemOf("factored-load", 1, catalog(), 0), "turn: 0"], [() => itemOf("none", 1, catalog()), /^kind: "none" is not possible/],
  ] as const)("refuses what cannot be, by its field (%#)", (make, says) => {
    expect(make).toThrow(says instanceof RegExp ? says : says);
  });
});

describe("an exercise as plain data", () => {
  test("holds its key only where it is wanted, and hints without a number", () => {
    const item = itemOf("reduced-live-load", 5, catalog());
    const without = plainItem(item, {key: false, hints: true, system: "US"});
    expect(JSON.stringify(without)).not.toMatch(/"answer"|"slips"|"steps"|"result"/);
    expect(without.parts[0]?.hints?.[0]).toMatchObject({symbol: "A_T", expression: "a * b", where: [{symbol: "a", unit: "ft"}, {symbol: "b", unit: "ft"}]});
    const withKey = plainItem(item, {key: true, hints: false, system: "US"});
    expect(withKey.parts.map(({answer}) => answer)).toEqual(keysOf(item));
    expect(withKey.answer).toBe(keysOf(item).at(-1));
    expect(withKey.parts[0]?.slips?.length).toBeGreaterThan(0);
    expect(withKey.parts[2]?.steps?.length).toBeGreaterThan(0);
    expect(withKey).toMatchObject({kind: "reduced-live-load", seed: 5, turn: 1, unit: "psf", tolerance: {percent: 2}});
  });

  test("survives a round through a file for every kind", () => {
    for (const item of itemsOf(KINDS, KINDS.length, 3, catalog())) {
      const plain = plainItem(item, {key: true, hints: true, system: "both"});
      expect(JSON.parse(JSON.stringify(plain))).toEqual(JSON.parse(JSON.stringify(plain)));
      expect(JSON.stringify(plain)).not.toContain("null");
      expect(plain.question.length).toBeGreaterThan(20);
    }
  });
});

describe("a printed set", () => {
  const count = (text: string, what: RegExp) => text.match(what)?.length ?? 0;
  test.each(["US", "SI", "both"] as const)("has every exercise with space to work in, and its key apart, in %s", (system) => {
    const items = itemsOf(KINDS, KINDS.length, 11, catalog());
    const html = setPage(items, {title: "Set <1>", key: true, system, steps: stepMarkup});
    const [sheet = "", key = ""] = html.split('<section class="key">');
    const parts = items.flatMap((item) => item.parts);
    expect(count(sheet, /<article class="exercise">/g)).toBe(items.length);
    expect(count(key, /<article class="solution">/g)).toBe(items.length);
    expect(count(sheet, /<p class="ask">/g)).toBe(parts.length);
    expect(count(sheet, /<div class="space">/g)).toBe(parts.filter(({type}) => type === "number" || type === "order").length);
    expect(count(key, /<strong>/g)).toBe(parts.length);
    expect(html).toContain("Set &lt;1&gt;");
    expect(html).toContain("break-before: page");
    for (const half of [sheet, key]) expect(half).toContain("For learning and preliminary sizing only. Local codes govern; a licensed engineer and the producer design the real structure.");
    // Nothing is fetched, nothing undefined is printed, and what is opened is closed.
    expect(html).not.toMatch(/https?:\/\/(?!www\.w3\.org)|undefined|NaN|\[object/);
    for (const tag of ["article", "div", "p", "table", "ul", "ol", "svg", "math", "section", "figure"]) expect(count(html, new RegExp(`<${tag}[ >]`, "g")), tag).toBe(count(html, new RegExp(`</${tag}>`, "g")));
    expect(count(sheet, /<svg /g)).toBeGreaterThan(10);
  });

  test("has no key where none is wanted", () => {
    const html = setPage(itemsOf(KINDS, 20, 11, catalog()), {title: "Set", key: false, system: "US", steps: stepMarkup});
    expect(html).not.toMatch(/class="key"|Usual slips/);
  });
});

import {existsSync} from "node:fs";
import {expect, it} from "vitest";
import {evaluate} from "../../lib/evaluate.js";
import {symbolMeanings} from "../../src/components/shared/symbolMeanings.js";
import {readRawTables} from "../../src/headless/readCatalog.js";
import {sourceOf} from "../../src/headless/pages.js";
import {catalog, seeds} from "../support/designs.js";

const terms = readRawTables()["glossary"] ?? [];

it("explains each word once, in a sentence, with a source", () => {
  expect(terms.length).toBeGreaterThan(60);
  expect(new Set(terms.map(({term}) => term)).size).toBe(terms.length);
  for (const {term, meaning, source} of terms) {
    expect(meaning, term).toMatch(/^[A-Z].*\.$/);
    expect(source, term).not.toBe("");
  }
});

it("sends each word to a page that is there", () => {
  for (const page of new Set(terms.map(({page}) => page))) expect(existsSync(sourceOf(page as string)), page).toBe(true);
});

it("gives every symbol of the worked steps a meaning", () => {
  const symbols = symbolMeanings(seeds.map(({design}) => evaluate(design, catalog)));
  expect(symbols.map(({name}) => name)).toEqual(expect.arrayContaining(["f_se", "K_LL", "M_u", "epsilon_t"]));
  for (const {name, meanings} of symbols) expect(meanings.length, name).toBeGreaterThan(0);
  // What a step can say of "it" a list cannot.
  const leaning = symbols.flatMap(({name, meanings}) => meanings.filter(({words}) => /^(its?|their)\b|\b(it|them|there)$|^for an? /.test(words)).map(({words}) => `${name}: ${words}`));
  expect(leaning).toEqual([]);
  // One letter for several things: beside each, where it means that.
  const several = symbols.find(({name}) => name === "h_w");
  expect(several?.meanings).toEqual(expect.arrayContaining([{words: "height of the work plane", subjects: ["no-sky line", "sky component"]}]));
});

import {describe, expect, it, test} from "vitest";
import {findTerms, termIndex} from "../../src/components/words/findTerms.js";
import {WORD_PICTURES} from "../../src/components/words/pictures.js";
import {termForms, type FormsRow} from "../../src/components/words/termList.js";
import {readRawTables} from "../../src/headless/readCatalog.js";
import {BEAMS} from "../../src/components/words/pictures/beams.js";
import {BUILDING} from "../../src/components/words/pictures/building.js";
import {SECTIONS} from "../../src/components/words/pictures/sections.js";
import {SPANS} from "../../src/components/words/pictures/spans.js";
import {once} from "../support/once.js";
import {onPaper} from "../support/paper.js";

const tables = once(() => {
  const raw = readRawTables();
  return {terms: raw["glossary"] as unknown as {term: string; page: string; meaning: string}[], rows: raw["glossary-forms"] as unknown as FormsRow[]};
});
const forms = once(() => termForms(tables().terms, tables().rows));
const found = (text: string, page = "deck") => findTerms(text, termIndex(forms(), page)).map(({term, from, to}) => [term, text.slice(from, to)]);

describe("words in a sentence", () => {
  test("are found by the longest form, whatever its case, number or the width of its spaces", () => {
    expect(found("Depressed strands lift a double tee; an inverted\u00a0tee carries it.")).toEqual([["depressed strand", "Depressed strands"], ["double tee", "double tee"], ["inverted tee", "inverted\u00a0tee"]]);
    expect(found("It cambers. The floor-to-floor height counts.")).toEqual([["camber", "cambers"], ["floor-to-floor height", "floor-to-floor height"]]);
    // A safe load is no load that is safe: the words must follow each other, with nothing between.
    expect(found("The dead, live load")).toEqual([["live load", "live load"]]);
    expect(found("dead (load)")).toEqual([]);
  });

  test("are whole words: what only holds one is left alone", () => {
    expect(found("A teeing bedroom, steel and a no-tee rule, a committee")).toEqual([]);
  });

  test("that mean something else elsewhere are marked on their own page only, or in a form that is sure", () => {
    expect(found("Return to the cover and the head.", "story")).toEqual([]);
    expect(found("The cover is thin.", "edge-beam")).toEqual([["cover", "cover"]]);
    expect(found("The return air passes; at release the window head stands.")).toEqual([["return", "return air"], ["release", "at release"], ["head", "window head"]]);
    expect(found("80 psf and 3 kip")).toEqual([]);
  });
});

describe("forms of a word", () => {
  it("are its own: no two terms share one", () => {
    const all = forms().flatMap(({term, forms: own}) => own.map((form) => ({term, form})));
    expect(all.filter(({form}, i) => all.findIndex((other) => other.form === form) !== i)).toEqual([]);
  });

  it("are its regular plural where nothing is said", () => {
    expect(termForms([{term: "plank", page: "deck"}], [])).toEqual([{term: "plank", forms: ["plank", "planks"]}]);
  });

  it("belong to a term that is there, marked in a way that is known", () => {
    const row = {term: "plank", forms: "", marked: "", symbol: "", unit: "", drawing: ""};
    expect(() => termForms([], [row])).toThrow('"plank" is no term');
    expect(() => termForms([{term: "plank", page: "deck"}], [{...row, marked: "often"}])).toThrow('marked "often"');
    expect(termForms([{term: "plank", page: "deck"}], [{...row, marked: "never"}])).toEqual([]);
  });
});

test("every drawing that the table names is there, and every drawing is named", () => {
  const named = tables().rows.map(({drawing}) => drawing).filter(Boolean);
  expect([...new Set(named)].sort()).toEqual(Object.keys(WORD_PICTURES).sort());
});

describe("a word's drawing", () => {
  const kinds: Readonly<Record<string, Readonly<Record<string, () => SVGSVGElement>>>> = {sections: SECTIONS, beams: BEAMS, spans: SPANS, building: BUILDING};

  test("stands in the module that the list names, and in no other", () => {
    for (const [kind, drawings] of Object.entries(kinds)) expect(Object.keys(drawings).sort(), kind).toEqual(Object.keys(WORD_PICTURES).filter((name) => WORD_PICTURES[name] === kind).sort());
  });

  test.each(Object.keys(WORD_PICTURES))("%s has a name, words, and lines that are somewhere", (name) => {
    const svg = onPaper(kinds[WORD_PICTURES[name] as string]?.[name] as () => SVGSVGElement);
    expect(svg.get("aria-label")).toMatch(/^[A-Z].*\.$/);
    const all = svg.all();
    expect(all.filter((node) => node.name === "text").length).toBeGreaterThan(0);
    const paths = all.flatMap((node) => node.get("d") ?? []);
    expect(paths.length).toBeGreaterThan(0);
    for (const node of all) for (const [key, value] of node.attributes) if (key !== "aria-label") expect(value, `${node.name} ${key}`).not.toMatch(/NaN|undefined|Infinity/);
  });
});

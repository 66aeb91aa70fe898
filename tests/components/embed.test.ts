import {runInNewContext} from "node:vm";
import {expect, test} from "vitest";
import {FIELDS} from "../../lib/design/fields.js";
import {FIGURES, NOT_ALONE, type EmbeddedFigure} from "../../src/components/embed/figures.js";
import {designText, linkOf} from "../../src/components/share/designLink.js";
import {EMBED_SCRIPT} from "../../src/headless/embedScript.js";
import {listPages} from "../../src/headless/pages.js";
import {embedAddress, frameCode} from "../../src/pages/gallery/frameCode.js";
import {seeds} from "../support/designs.js";

const PAGE = "https://floors.example/notebook/pages/deck/";
const [first] = FIGURES as readonly [EmbeddedFigure];

test("each figure has a name of its own, a page, a question, and controls of fields that there are", () => {
  expect(new Set(FIGURES.map(({name}) => name)).size).toBe(FIGURES.length);
  const pages = listPages().map(({name}) => name);
  for (const {name, page, asks, controls = [], starter, heightPx} of FIGURES) {
    expect(name).toMatch(/^[a-z][a-z0-9-]*$/);
    expect(pages, name).toContain(page);
    expect(NOT_ALONE[page], name).toBeUndefined();
    expect(asks, name).toMatch(/\?$/);
    expect(controls.filter((path) => !FIELDS[path]), name).toEqual([]);
    if (starter) expect(seeds.map(({id}) => id), name).toContain(starter);
    expect(heightPx, name).toBeGreaterThan(300);
  }
  expect(Object.keys(NOT_ALONE).filter((page) => !pages.includes(page))).toEqual([]);
});

test("the code of a frame leads to the figure with its design, and is named for those who listen", async () => {
  const odd = {...first, title: "Shear & \"torsion\"", asks: "Is 1 < 2?"};
  const address = embedAddress(odd, PAGE, {starter: "branch-library"}, "US");
  expect(address).toBe(`${PAGE}?embed=${first.name}&starter=branch-library`);
  const code = frameCode(odd, address);
  expect(code).toContain(`src="${PAGE}?embed=${first.name}&amp;starter=branch-library"`);
  expect(code).toContain("title=\"Shear &amp; &quot;torsion&quot;: Is 1 &lt; 2?\"");
  expect(code).toMatch(/ width="720" height="\d+" .*loading="lazy"><\/iframe>$/);
  const design = (seeds[1] as (typeof seeds)[number]).design;
  const held = new URL(embedAddress(odd, PAGE, {fragment: await linkOf(design, "")}, "US"));
  expect(held.search).toBe(`?embed=${first.name}`);
  expect(JSON.parse(await designText(held.hash))).toEqual(design);
});

test("a figure that only one starter has begins with that one, unless a whole design is given", () => {
  const ramp = FIGURES.find(({name}) => name === "ramp") as EmbeddedFigure;
  expect(embedAddress(ramp, PAGE, {starter: "branch-library"}, "US")).toContain("starter=parking-structure");
  expect(embedAddress(ramp, PAGE, {fragment: "#design=1.abc"}, "US")).toBe(`${PAGE}?embed=ramp#design=1.abc`);
  expect(embedAddress(ramp, PAGE, {fragment: "#design=1.abc"}, "SI")).toBe(`${PAGE}?embed=ramp&units=SI#design=1.abc`);
});

/** What a page's head does with an address, where its browser has a storage or refuses it. */
function head(search: string, refuses: boolean): {readonly name: string | undefined; readonly local: () => Storage; readonly kept: Map<string, string>} {
  const kept = new Map([["plank-and-tee/design", "mine"]]);
  const window = {};
  const own = {getItem: (key: string) => kept.get(key) ?? null, setItem: (key: string, value: string) => kept.set(key, value)};
  for (const name of ["localStorage", "sessionStorage"]) {
    Object.defineProperty(window, name, {configurable: true, get: () => {
      if (refuses) throw new Error("SecurityError");
      return own;
    }});
  }
  const document = {documentElement: {dataset: {} as Record<string, string>}};
  runInNewContext(EMBED_SCRIPT, {window, document, location: {search}, URLSearchParams});
  return {name: document.documentElement.dataset["embed"], local: () => (window as {localStorage: Storage}).localStorage, kept};
}

test.each([false, true])("an embed reads and writes nothing that the browser keeps; storage refused: %s", (refuses) => {
  const {name, local, kept} = head("?embed=reach&starter=x", refuses);
  expect(name).toBe("reach");
  expect(local().getItem("plank-and-tee/design")).toBeNull();
  local().setItem("plank-and-tee/design", "the embed's");
  expect(local().getItem("plank-and-tee/design")).toBe("the embed's");
  local().removeItem("plank-and-tee/design");
  expect([local().getItem("plank-and-tee/design"), local().length, local().key(0), local().key(1)]).toEqual([null, 1, "plank-and-tee/guess/*", null]);
  expect([...kept]).toEqual([["plank-and-tee/design", "mine"]]);
});

test.each([["&units=SI", "\"SI\""], ["&units=both", "\"both\""], ["&units=US", null], ["&units=furlongs", null], ["", null]])("an embed with %s reads in %s", (units, kept) => {
  expect(head(`?embed=reach${units}`, false).local().getItem("plank-and-tee/units")).toBe(kept);
});

test("a whole page has the browser's storage", () => {
  const {name, local} = head("?topic=deck", false);
  expect(name).toBeUndefined();
  expect(local().getItem("plank-and-tee/design")).toBe("mine");
});

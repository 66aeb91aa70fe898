import {describe, expect, test} from "vitest";
import {withValue, withValues} from "../../lib/design/edit.js";
import type {Design} from "../../lib/design/design.js";
import {candidates, evaluate} from "../../lib/evaluate.js";
import {compared} from "../../lib/record/compared.js";
import {deckSection} from "../../lib/record/deck.js";
import {catalog, seed} from "../support/designs.js";

const LIBRARY = seed("branch-library");
const GARAGE = seed("parking-structure");
const deck = (design: Design) => deckSection(evaluate(design, catalog), compared(design, catalog));
const waysOf = (design: Design, title: RegExp) => deck(design).alternatives.find((group) => title.test(group.title))?.ways ?? [];

describe("what a design was compared with", () => {
  test("has the nearest of each kind of deck, those too that the search leaves out", () => {
    const {kinds} = compared(GARAGE, catalog);
    expect(kinds.map(({name, considered}) => [name, considered])).toEqual([
      ["Tees topped in the field", false], ["Pretopped tees", true], ["Hollow-core planks", false], ["Solid slabs", false],
    ]);
    const planks = kinds.find(({name}) => name === "Hollow-core planks");
    // A garage's 60 ft are half as long again as the longest plank goes.
    expect(planks?.nearest).toMatchObject({designation: "4HC12", works: false});
    expect(planks?.nearest.safe.safeLoadPsf).toBeLessThan(43);
  });

  test("answers why not planks with what they carry of what is asked", () => {
    const planks = waysOf(GARAGE, /^Kinds of deck/).find(({name}) => name === "Hollow-core planks");
    expect(planks?.outcome).toMatch(/^None works: 4HC12 \d+-S carries \d+ of the 43 psf required, at its strongest; \w+ governs\. The search leaves this kind out\.$/);
    const tees = waysOf(GARAGE, /^Kinds of deck/).find(({name}) => name === "Pretopped tees");
    expect(tees?.outcome).toMatch(/^\S+ \S+ works, [\d.]+ in deep and \d+ psf in weight\.$/);
  });

  test("looks for the best of a kind as the search does where the search looks at it", () => {
    const {kinds} = compared(LIBRARY, catalog);
    expect(kinds[0]?.nearest.id).toBe(candidates(LIBRARY, catalog)[0]?.id);
  });

  test("has two shorter and two longer spans in whole feet, a tenth of the span apart, and the span itself", () => {
    expect(compared(LIBRARY, catalog).spans.map(({spanFt}) => spanFt)).toEqual([32, 36, 40, 44, 48]);
    expect(compared(withValue(LIBRARY, "bay.spanFt", 40.5), catalog).spans.map(({spanFt}) => spanFt)).toEqual([33, 37, 40.5, 45, 49]);
  });

  test("says of each span what the chosen deck carries there, by the same numbers as a design of that span", () => {
    for (const tried of compared(LIBRARY, catalog).spans) {
      const there = evaluate(withValue(LIBRARY, "bay.spanFt", tried.spanFt), catalog).deck;
      expect([tried.askedPsf, tried.safePsf, tried.governs]).toEqual([there.demandPsf, there.safe.safeLoadPsf, there.safe.governs]);
      expect(tried.first?.id).toBe(candidates(withValue(LIBRARY, "bay.spanFt", tried.spanFt), catalog).find(({works}) => works)?.id);
    }
    expect(compared(LIBRARY, catalog).spans.map(({carries}) => carries)).toEqual([true, true, true, false, false]);
  });

  test("sets the spans down in one table, the design's own marked, those that are too long named as such", () => {
    const [spans] = deck(LIBRARY).tables;
    expect(spans?.heads).toEqual(["Span", "Required", "10DT32+2 108-S carries", "What governs it", "First choice of the search there"]);
    expect(spans?.rows[2]?.[0]).toBe("40 ft, as designed");
    expect(spans?.rows[4]?.slice(0, 4)).toEqual(["48 ft", "160 psf", expect.stringMatching(/^1[12]\d psf$/), "strength; too little"]);
    for (const row of spans?.rows ?? []) expect(row).toHaveLength(5);
  });

  test("names the gate that stops a deck which would be strong enough", () => {
    const store = withValues(seed("records-store"), {"deck.strengthPsi": 6000, "deck.pattern": "108-S", "deck.releaseStrengthPsi": 4800});
    const short = deck(store).tables[0]?.rows[0];
    const [tried] = compared(store, catalog).spans;
    expect(tried?.safePsf).toBeGreaterThan(tried?.askedPsf ?? Infinity);
    expect(tried?.gates).toEqual(["transfer"]);
    expect(short?.[3]).toMatch(/; transfer fails$/);
  });

  test("stays the same while only words of a design change, and is made anew when a number does", () => {
    const first = compared(LIBRARY, catalog);
    expect(compared(withValues(LIBRARY, {name: "Another name", "reasons.deck": "Because."}), catalog)).toBe(first);
    expect(compared(withValue(LIBRARY, "loads.partitions", false), catalog)).not.toBe(first);
  });
});

import {describe, expect, test} from "vitest";
import {FEW_INPUTS, kinships, kinshipWords, type NamedDesign} from "../../lib/classroom/kinship.js";
import {differingInputs} from "../../lib/compare/inputs.js";
import type {Design} from "../../lib/design/design.js";
import {withValues} from "../../lib/design/edit.js";
import {seeds} from "../support/designs.js";

const STARTERS: readonly NamedDesign[] = seeds.map(({design}) => ({name: design.name, design}));
const [LIBRARY, WING] = STARTERS as [NamedDesign, NamedDesign];
const from = (base: Design, name: string, changes: Readonly<Record<string, unknown>>): NamedDesign => ({name, design: withValues(base, changes)});

describe("designs of one ancestor", () => {
  test("starters differ in far more inputs than one from its own", () => {
    for (const one of STARTERS) for (const other of STARTERS) {
      if (one !== other) expect(differingInputs([one.design, other.design]).length, `${one.name}, ${other.name}`).toBeGreaterThan(2 * FEW_INPUTS);
    }
  });

  test("are told apart by what was changed, and those alike are named", () => {
    const files = [
      from(LIBRARY.design, "a.json", {"bay.spanFt": 44, "deck.toppingIn": 3}), from(LIBRARY.design, "b.json", {}), from(WING.design, "c.json", {"bay.beamSpanFt": 24}),
      // The same decisions in other words.
      from(LIBRARY.design, "d.json", {"bay.spanFt": 44, "deck.toppingIn": 3, "author": "Dora", "reasons.deck": "Because."}),
    ];
    const [a, b, c, d] = kinships(files, STARTERS);
    expect(a?.from).toEqual({name: LIBRARY.name, kind: "starter"});
    expect(a?.differs.map(({path}) => path)).toEqual(["bay.spanFt", "deck.toppingIn"]);
    expect([a?.same, d?.same]).toEqual([["d.json"], ["a.json"]]);
    expect(b).toMatchObject({from: {name: LIBRARY.name}, differs: [], same: []});
    expect(c?.from?.name).toBe(WING.name);
    expect([a, b, c, d].map((one) => one?.family)).toEqual([1, 1, 2, 1]);
    expect(kinshipWords(a as NonNullable<typeof a>)).toMatch(/^Differs from the starter \u201c.*\u201d in span, .*topping.*\. The same decisions as d\.json\.$/);
    expect(kinshipWords(b as NonNullable<typeof b>)).toMatch(/^As the starter .*, unchanged\.$/);
  });

  test("without a starter stand around the one that differs least from all, and a stranger stands alone", () => {
    const own = withValues(LIBRARY.design, {"bay.spanFt": 50});
    const files = [from(own, "z.json", {"bay.beamSpanFt": 20, "deck.toppingIn": 3}), from(own, "m.json", {}), from(own, "y.json", {"story.floorToFloorFt": 16}), {name: "w.json", design: WING.design}];
    const found = kinships(files, []);
    expect(found.map((one) => one.from?.name)).toEqual(["m.json", undefined, "m.json", undefined]);
    expect(found.map((one) => one.family)).toEqual([1, 1, 1, undefined]);
    expect(kinshipWords(found[1] as (typeof found)[0])).toBe("In the midst of its family.");
    expect(kinshipWords(found[3] as (typeof found)[0])).toBe("Like none of the others.");
    // Any order of the files tells the same of each.
    const turned = kinships([...files].reverse(), []).reverse();
    expect(turned.map(({from, differs, same}) => ({from, differs, same}))).toEqual(found.map(({from, differs, same}) => ({from, differs, same})));
  });

  test("two that are alike in all name each other, and only the first by name is their midst", () => {
    const found = kinships([from(LIBRARY.design, "b.json", {}), from(LIBRARY.design, "a.json", {})], []);
    expect(found.map((one) => [one.from?.name, one.same])).toEqual([["a.json", ["a.json"]], [undefined, ["b.json"]]]);
  });

  test("both sides of few: one input more and it is a stranger", () => {
    const all = {
      "bay.spanFt": 47, "bay.beamSpanFt": 27, "deck.toppingIn": 2.75, "deck.strengthPsi": 5250, "deck.releaseStrengthPsi": 3650, "deck.toppingStrengthPsi": 3250, "edgeBeam.webWidthIn": 13,
      "edgeBeam.ledgeProjectionIn": 9, "edgeBeam.ledgeDepthIn": 9, "edgeBeam.upstandIn": 31, "story.floorToFloorFt": 14.75, "criteria.humidityPercent": 66, "preferences.shallow": 4,
    };
    const loads = (count: number) => Object.fromEntries(Object.entries(all).slice(0, count));
    for (const [count, family] of [[FEW_INPUTS, 1], [FEW_INPUTS + 1, undefined]] as const) {
      const other = from(LIBRARY.design, "x.json", loads(count));
      expect(differingInputs([LIBRARY.design, other.design])).toHaveLength(count);
      expect(kinships([other], [LIBRARY])[0]?.family).toBe(family);
    }
  });

  test("two hundred are told apart in a moment", () => {
    const files = Array.from({length: 200}, (_, i) => from(i % 2 ? LIBRARY.design : WING.design, `${i}.json`, {"bay.spanFt": 30 + i / 8}));
    const started = performance.now();
    const found = kinships(files, STARTERS);
    expect(performance.now() - started).toBeLessThan(3000);
    expect(found.every((one) => one.from?.kind === "starter" && one.differs.length <= 1)).toBe(true);
  });
});

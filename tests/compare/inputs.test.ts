import {describe, expect, test} from "vitest";
import {NOT_USED, differingInputs, stepWords} from "../../lib/compare/inputs.js";
import {withValues} from "../../lib/design/edit.js";
import {DESIGN_FIELDS} from "../../lib/design/fieldTable.js";
import {ENTRIES, FIELDS} from "../../lib/design/fields.js";
import {seeds} from "../support/designs.js";

const library = (seeds.find(({id}) => id === "branch-library") as (typeof seeds)[number]).design;

describe("inputs that differ", () => {
  test("are none between a design and itself, or one with other words", () => {
    expect(differingInputs([library, library])).toEqual([]);
    expect(differingInputs([library, withValues(library, {name: "Another", brief: "Another", "reasons.deck": "Another"})])).toEqual([]);
  });

  test("are told by group, with their values in words, in the order of the designs", () => {
    const other = withValues(library, {"bay.spanFt": 44, "deck.toppingIn": 3});
    expect(differingInputs([library, other, library])).toEqual([
      {path: "bay.spanFt", group: "Grid", label: "span", values: ["40 ft", "44 ft", "40 ft"]},
      {path: "deck.toppingIn", group: "Deck", label: "topping thickness", values: ["2 in", "3 in", "2 in"]},
    ]);
  });

  test("are not used where a design has not their part, and left out where none has it", () => {
    const alone = withValues(library, {"bay.baysAcross": 1});
    const rows = differingInputs([library, alone]);
    expect(rows.find(({path}) => path === "girder.kind")?.values).toEqual([FIELDS["girder.kind"]?.kind === "choice" ? FIELDS["girder.kind"].choices["inverted tee"] : "", NOT_USED]);
    const otherGirder = withValues(alone, {"girder.ledgeDepthIn": library.girder.ledgeDepthIn + 2});
    expect(differingInputs([alone, otherGirder])).toEqual([]);
  });

  test("are fields, each by itself: neither groups of them nor what stands in a list", () => {
    const flat = withValues(library, {"roof.given": "loads", "bay.baysAcross": 1, "edgeBeam.kind": "pockets"});
    const rows = differingInputs([library, flat]);
    expect(rows.length).toBeGreaterThan(10);
    for (const {path, group, values} of rows) {
      expect([path, path.includes("*"), ENTRIES.get(path)?.kind === "group"]).toEqual([path, false, false]);
      expect(values.join(), path).not.toContain("[object");
      expect(group, path).not.toBe("");
    }
  });

  test("all belong to a group, whose label a row has; comments are no input", () => {
    const paths = [...ENTRIES.keys()].filter((path) => path.includes(".") && !path.startsWith("comments."));
    expect(paths.length).toBeGreaterThan(100);
    for (const path of paths) expect(DESIGN_FIELDS[path.split(".")[0] as keyof typeof DESIGN_FIELDS]?.kind, path).toBe("group");
    const outside = Object.keys(DESIGN_FIELDS).filter((name) => DESIGN_FIELDS[name as keyof typeof DESIGN_FIELDS].kind !== "group");
    expect(differingInputs([library, withValues(library, Object.fromEntries(outside.map((name) => [name, name === "comments" ? [{words: "Why?", on: "deck", by: ""}] : "Other words"])))])).toEqual([]);
  });

  test("count lists as one input", () => {
    const other = withValues(library, {"loads.layers": library.loads.layers.slice(1)});
    expect(differingInputs([library, other]).map(({path}) => path)).toEqual(["loads.layers"]);
  });
});

describe("a step in words", () => {
  test("names up to two changes and counts the rest", () => {
    expect(stepWords(library, withValues(library, {"bay.spanFt": 44}))).toBe("span 40 ft \u2192 44 ft");
    const four = withValues(library, {"bay.spanFt": 44, "bay.beamSpanFt": 24, "deck.toppingIn": 3, "bay.baysAlong": 5});
    expect(stepWords(library, four)).toBe("span 40 ft \u2192 44 ft, beam span 30 ft \u2192 24 ft and 2 more");
  });

  test("says so where only words or the name have changed", () => {
    expect(stepWords(library, withValues(library, {brief: "Another"}))).toBe("words alone");
    expect(stepWords(library, withValues(library, {name: "Another"}))).toBe(`the name \u201c${library.name}\u201d \u2192 \u201cAnother\u201d`);
  });

  test("shows values of 28 letters whole, and of longer ones 27 at the most without a gap before the dots", () => {
    const layer = (name: string) => stepWords(library, withValues(library, {"loads.layers": [{name, loadPsf: 5}]})).split(" \u2192 ")[1];
    expect(layer("Tiles on mortar + sand")).toBe("Tiles on mortar + sand 5 psf");
    expect(layer("Tiles over mortar, sand")).toBe("Tiles over mortar, sand 5 p\u2026");
    expect(layer("Tiles on mortar and sand")).toBe("Tiles on mortar and sand 5\u2026");
  });

  test("shortens values that would fill a line", () => {
    const words = stepWords(library, withValues(library, {"loads.layers": library.loads.layers.slice(1)}));
    expect(words.length).toBeLessThan(90);
    expect(words).toContain("\u2026");
  });
});

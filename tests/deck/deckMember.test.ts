import {describe, expect, test} from "vitest";
import {deckMember, deckRow, layoutOf, strandOf, unlistedStrands} from "../../lib/deck/deckMember.js";
import type {Design} from "../../lib/design/design.js";
import {withValues} from "../../lib/design/edit.js";
import {parsePattern} from "../../lib/prestress/pattern.js";
import {shapeOf} from "../../lib/sections/designation.js";
import {catalog, seed, seeds} from "../support/designs.js";
import {refused} from "../support/errors.js";

const LIBRARY = seed("branch-library");
const made = (changes: Record<string, unknown>) => deckMember(withValues(LIBRARY, changes), catalog);

describe("deckMember", () => {
  test("makes the member of every starter design", () => {
    for (const {design} of seeds) expect(deckMember(design, catalog).shape.designation).toBe(design.deck.member);
  });

  test("puts changed dimensions in place of the catalog's", () => {
    expect(made({"deck.dimensions": {depthIn: 34, flangeIn: 4}}).section.depthIn).toBe(34);
  });

  test("takes the centroid's heights where they are given, one for both if one is given", () => {
    expect(made({"deck.strandHeightCenterIn": 5}).layout).toMatchObject({centroidEndIn: 5, centroidCenterIn: 5});
    expect(made({"deck.strandHeightEndIn": 5}).layout).toMatchObject({centroidEndIn: 5, centroidCenterIn: 5});
    expect(made({"deck.pattern": "108-D1", "deck.strandHeightEndIn": 14, "deck.strandHeightCenterIn": 5}).layout).toMatchObject({centroidEndIn: 14, centroidCenterIn: 5});
  });

  test("names the whole path of the part of the design that does not fit", () => {
    const wrong: readonly [Record<string, unknown>, string][] = [
      [{"deck.member": "10DT25"}, "deck.member"],
      [{"deck.pattern": "many"}, "deck.pattern"],
      [{"deck.pattern": "98-S"}, "deck.pattern"],
      [{"deck.pattern": "968-S"}, "deck.pattern"],
      [{"deck.releaseStrengthPsi": 6000}, "deck.releaseStrengthPsi"],
      [{"deck.strandHeightCenterIn": 40}, "deck.strandHeightCenterIn"],
      [{"deck.strandHeightEndIn": 9, "deck.strandHeightCenterIn": 5}, "deck.strandHeightEndIn"],
      [{"deck.dimensions": {depthIn: 5}}, "deck.dimensions.depthIn"],
      [{"deck.dimensions": {voidCount: 3}}, "deck.dimensions.voidCount"],
      [{"deck.dimensions": {stemSpacingIn: 3}}, "deck.dimensions.stemSpacingIn"],
    ];
    for (const [changes, path] of wrong) refused(() => made(changes), {path});
  });

  test("never takes a beam for a deck member", () => {
    const design: Design = {...LIBRARY, deck: {...LIBRARY.deck, member: "20LB20"}};
    refused(() => deckMember(design, catalog), {path: "deck.member", value: "20LB20"});
  });
});

describe("deckRow, strandOf and layoutOf", () => {
  test("find rows of the catalog", () => {
    expect(deckRow(catalog, "10DT24")).toMatchObject({family: "double tee", use: "field-topped", lowestStrandIn: 2});
    expect(strandOf(catalog, parsePattern("1010-S"))).toMatchObject({diameterIn: 0.6, areaIn2: 0.217});
    expect(strandOf(catalog, parsePattern("108-S"))).toMatchObject({diameterIn: 0.5, areaIn2: 0.153});
  });

  test("say what there is where a row is missing", () => {
    refused(() => deckRow(catalog, "9DT9"), {path: "member", allowed: /10DT24.*4HC8/});
    refused(() => strandOf({...catalog, strands: []}, parsePattern("108-S")), {path: "pattern", value: "8/16"});
  });

  test("list the strands there are where a size is missing", () => {
    const few = {...catalog, strands: catalog.strands.filter(({sixteenths}) => sixteenths === 6 || sixteenths === 10)};
    refused(() => strandOf(few, parsePattern("108-S")), {path: "pattern", allowed: "6, 10"});
  });

  test("say of a number of strands outside the catalog's range on which side it lies, and nothing within it", () => {
    const row = {...deckRow(catalog, "10DT24"), leastStrands: 4, mostStrands: 16};
    const said = (text: string) => unlistedStrands(row, parsePattern(text));
    expect(said("48-S")).toBeUndefined();
    expect(said("168-S")).toBeUndefined();
    expect(said("28-S")).toBe("2 strands are fewer than the 4 to 16 that the catalog lists for a 10DT24, so ask a producer");
    expect(said("188-S")).toBe("18 strands are more than the 4 to 16 that the catalog lists for a 10DT24, so ask a producer");
  });

  test("take the usual layout where no height is given", () => {
    const pattern = parsePattern("68-S");
    const row = deckRow(catalog, "10DT24");
    const layout = layoutOf(shapeOf(catalog, "10DT24"), pattern, strandOf(catalog, pattern), row, undefined, undefined);
    expect(layout.rows).toHaveLength(3);
  });
});

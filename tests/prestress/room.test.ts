import {describe, expect, test} from "vitest";
import {strandOf} from "../../lib/deck/deckMember.js";
import {usualLayout, centroidLayout} from "../../lib/prestress/layout.js";
import {parsePattern} from "../../lib/prestress/pattern.js";
import {LEAST_SIDE_COVER_IN, centroidRangeIn, clearOfVoids, requireStemRoom} from "../../lib/prestress/room.js";
import {shapeOf} from "../../lib/sections/designation.js";
import {catalog} from "../support/designs.js";
import {refused} from "../support/errors.js";

const narrow = (stemBottomIn: number) => shapeOf(catalog, "10DT24", {stemBottomIn});
const strand = (text: string) => strandOf(catalog, parsePattern(text));

describe("requireStemRoom", () => {
  const check = (stemBottomIn: number, text: string, heightIn = 2) => requireStemRoom(narrow(stemBottomIn), parsePattern(text), strand(text), heightIn);

  test("takes a 0.6 in strand in the catalog's narrowest stem", () => {
    expect(() => check(3.75, "610-S")).not.toThrow();
  });

  test("refuses it where a stem was made narrower than the strand and its cover", () => {
    // 2.5 in at the soffit and 5.75 in 22 in up: 2.795 in at 2 in; 0.6 in and twice 1.125 in are 2.85 in.
    refused(() => check(2.5, "610-S"), {path: "pattern", value: "610-S",
      message: `strand pattern: "610-S" is not possible (a 0.6 in strand needs a stem 2.85 in wide, with 1.125 in of concrete on either side; this one has 2.8 in at its lowest strand)`});
    expect(() => check(2.5, "68-S")).not.toThrow();
    refused(() => check(2.5, "68-S", 1));
  });

  test("takes a stem that is just wide enough", () => {
    const slab = shapeOf(catalog, "10DT24", {stemBottomIn: 0.6 + 2 * LEAST_SIDE_COVER_IN, stemTopIn: 0.6 + 2 * LEAST_SIDE_COVER_IN});
    expect(() => requireStemRoom(slab, parsePattern("610-S"), strand("610-S"), 2)).not.toThrow();
  });

  test("is asked for both kinds of layout", () => {
    const pattern = parsePattern("610-S");
    refused(() => usualLayout(narrow(2.5), pattern, strand("610-S"), 2), {path: "pattern", allowed: /stem 2\.85 in wide/});
    refused(() => centroidLayout(narrow(2.5), pattern, strand("610-S"), 2, 2), {path: "pattern", allowed: /stem 2\.85 in wide/});
  });
});

describe("centroidRangeIn", () => {
  test("leaves an inch at soffit and top, and half the stack in a stem", () => {
    const range = (member: string, text: string) => centroidRangeIn(shapeOf(catalog, member), parsePattern(text), strand(text));
    expect(range("10DT24", "28-S")).toEqual({min: 1, max: 23});
    expect(range("10DT24", "108-S")).toEqual({min: 2, max: 22});
    expect(range("12DT32", "1810-D1")).toEqual({min: 3.4, max: 28.6});
    expect(range("4HC8", "76-S")).toEqual({min: 1, max: 7});
    // Strands of a slab lie side by side, however many.
    expect(range("4FS8", "238-S")).toEqual({min: 1, max: 7});
  });
});

describe("clearOfVoids", () => {
  const plank = shapeOf(catalog, "4HC8");
  const half = strand("78-S");

  test("takes a strand that just touches a void, and none that reaches into it", () => {
    // Voids of 6 in at 4, 12, 20 in and so on, 4 in up: a 1/2 in strand keeps 3.25 in from their centers.
    expect(clearOfVoids(plank, half, [{xIn: 4, yIn: 0.75}])).toBe(true);
    expect(clearOfVoids(plank, half, [{xIn: 4, yIn: 0.76}])).toBe(false);
    expect(clearOfVoids(plank, half, [{xIn: 8, yIn: 4}])).toBe(true);
    expect(clearOfVoids(plank, half, [{xIn: 8, yIn: 4}, {xIn: 12, yIn: 4}])).toBe(false);
    expect(clearOfVoids(plank, half, [{xIn: 44, yIn: 7.3}])).toBe(true);
  });

  test("has nothing against a member without voids", () => {
    expect(clearOfVoids(shapeOf(catalog, "4FS8"), half, [{xIn: 24, yIn: 4}])).toBe(true);
  });
});

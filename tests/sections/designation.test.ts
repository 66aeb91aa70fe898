import {describe, expect, test} from "vitest";
import {makeShape, shapeOf} from "../../lib/sections/designation.js";
import {sectionProperties} from "../../lib/sections/shape.js";
import {catalog} from "../support/designs.js";
import {refused} from "../support/errors.js";

describe("shapeOf", () => {
  test("makes a shape of every member and beam of the catalog, as wide as its name says", () => {
    for (const {designation, family} of [...catalog.deckMembers, ...catalog.ledgeBeams]) {
      const shape = shapeOf(catalog, designation);
      const [, width, depth] = /^(\d+)[A-Z]+(\d+)$/.exec(designation) as RegExpExecArray;
      expect(shape.family, designation).toBe(family);
      expect(shape.depthIn, designation).toBe(Number(depth));
      expect(shape.widthIn, designation).toBe(Number(width) * (/[LI][BT]/.test(designation) ? 1 : 12));
      expect(sectionProperties(shape).areaIn2, designation).toBeGreaterThan(0);
    }
  });

  test("reads a rectangular beam from its name: inches wide, inches deep", () => {
    expect(shapeOf(catalog, "12RB24")).toMatchObject({family: "rectangular beam", widthIn: 12, depthIn: 24});
    refused(() => shapeOf(catalog, "4RB24"), {path: "dimensions.widthIn"});
  });

  test("puts other dimensions in place of the catalog's", () => {
    const shape = shapeOf(catalog, "10DT24", {depthIn: 26, flangeIn: 4});
    expect(shape.depthIn).toBe(26);
    expect(sectionProperties(shape).areaIn2).toBeCloseTo(449 + 240, 10);
  });

  test("refuses a dimension that the family does not have, and lists those it has", () => {
    refused(() => shapeOf(catalog, "10DT24", {voidCount: 3}), {path: "dimensions.voidCount", value: "voidCount", allowed: /^one of widthIn, depthIn, flangeIn/});
    refused(() => shapeOf(catalog, "10DT24", {toString: 3} as unknown as Record<string, number>), {path: "dimensions.toString"});
  });

  test("refuses a name that is in no table, and says what there is", () => {
    for (const name of ["10DT25", "10dt24", "", " 10DT24", "123RB24", "12RB24-"]) {
      refused(() => shapeOf(catalog, name), {path: "member", value: name, allowed: /10DT24.*28IT28.*12RB24/});
    }
  });
});

test("makeShape makes a shape of a family from its dimensions", () => {
  expect(makeShape("flat slab", "4FS8", {widthIn: 48, depthIn: 8})).toMatchObject({designation: "4FS8", family: "flat slab"});
  refused(() => makeShape("double tee", "x", {}), {path: "dimensions.widthIn", value: undefined});
});

import {describe, expect, test} from "vitest";
import {deckRow, strandOf} from "../../lib/deck/deckMember.js";
import {centroidAt, centroidLayout, depression, holdDownShare, mostTeeStrands, placedStrands, usualLayout} from "../../lib/prestress/layout.js";
import {parsePattern} from "../../lib/prestress/pattern.js";
import {widthAt} from "../../lib/sections/polygon.js";
import {shapeOf} from "../../lib/sections/designation.js";
import {catalogue} from "../support/designs.js";
import {refused} from "../support/errors.js";

const strand = (text: string) => strandOf(catalogue, parsePattern(text));
const usual = (member: string, text: string) =>
  usualLayout(shapeOf(catalogue, member), parsePattern(text), strand(text), deckRow(catalogue, member).lowestStrandIn);
const byCentroid = (member: string, text: string, endIn: number, centreIn: number) =>
  centroidLayout(shapeOf(catalogue, member), parsePattern(text), strand(text), endIn, centreIn);

describe("usualLayout of a tee", () => {
  test("puts straight strands in a column of each stem, 2 in apart from 2 in up", () => {
    // 3, 4, 5, 6 and 9 to a stem: their middles lie 2 in plus one pitch less than the count above the soffit.
    for (const [text, heightIn] of [["28-S", 2], ["68-S", 4], ["88-S", 5], ["108-S", 6], ["128-S", 7]] as const) {
      expect(usual("10DT24", text).centroidCentreIn, text).toBe(heightIn);
      expect(usual("10DT24", text).centroidEndIn, text).toBe(heightIn);
    }
    expect(usual("12DT32", "188-S").centroidCentreIn).toBe(10);
  });

  test("bundles depressed strands at midspan, one diameter apart", () => {
    // n to a stem at 2, 2.5, 3 ... : their middle is 2 + (n - 1) / 4.
    for (const [text, heightIn] of [["88-D1", 2.75], ["128-D1", 3.25], ["148-D1", 3.5], ["188-D1", 4], ["188-D2", 4]] as const) {
      expect(usual("12DT32", text).centroidCentreIn, text).toBe(heightIn);
    }
  });

  test("spreads depressed strands evenly up the stem at the ends, to 3 in below the top", () => {
    // From 2 to 29 in: their middle is 15.5 whatever the number.
    const layout = usual("12DT32", "128-D1");
    expect(layout.rows.map((row) => row.endIn)).toEqual([2, 7.4, 12.8, 18.2, 23.6, 29]);
    expect(layout.centroidEndIn).toBeCloseTo(15.5, 12);
  });

  test("adds up count and area", () => {
    const layout = usual("10DT24", "108-S");
    expect(layout).toMatchObject({count: 10, profile: "straight"});
    expect(layout.areaIn2).toBeCloseTo(1.53, 12);
    expect(layout.rows).toHaveLength(5);
    expect(layout.rows.reduce((sum, row) => sum + row.areaIn2, 0)).toBeCloseTo(1.53, 12);
  });

  test("refuses an odd number, because each stem holds as many as the other", () => {
    refused(() => usual("10DT24", "78-S"), {path: "pattern", value: "78-S", allowed: "a multiple of 2 strands, the same in each stem"});
  });

  test("refuses more than a column of each stem can hold", () => {
    // From 2 in to 24 - 1.5 in at 2 in: 11 to a stem; depressed, to 24 - 3 in: 10.
    expect(usual("10DT24", "228-S").count).toBe(22);
    refused(() => usual("10DT24", "248-S"), {path: "pattern", allowed: "at most 22 strands of this profile fit a 10DT24"});
    expect(usual("10DT24", "208-D1").count).toBe(20);
    refused(() => usual("10DT24", "228-D1"), {allowed: "at most 20 strands of this profile fit a 10DT24"});
  });
});

test("mostTeeStrands counts the places of the grid", () => {
  expect(mostTeeStrands(24, 2, "straight", 2)).toBe(22);
  expect(mostTeeStrands(24, 2, "one-point", 2)).toBe(20);
  expect(mostTeeStrands(32, 2, "straight", 2)).toBe(30);
});

describe("usualLayout of a plank", () => {
  test("puts all strands in one row", () => {
    expect(usual("4HC8", "76-S").rows).toEqual([{count: 7, areaIn2: expect.closeTo(0.595, 12), endIn: 1.5, centreIn: 1.5}]);
    expect(usual("4FS4", "46-S").centroidCentreIn).toBe(1.5);
  });

  test("refuses depressed strands", () => {
    refused(() => usual("4HC8", "68-D1"), {path: "pattern", allowed: "straight strands (S) in a hollow core"});
  });

  test("refuses more strands than stand side by side", () => {
    // One for each 2 in of 48 in, less one for the edges.
    expect(usual("4FS8", "236-S").count).toBe(23);
    refused(() => usual("4FS8", "246-S"), {path: "pattern", allowed: "at most 23 strands of this profile fit a 4FS8"});
  });
});

describe("centroidLayout", () => {
  test("takes all strands at the heights given", () => {
    expect(byCentroid("12DT28", "188-D1", 14.39, 4)).toMatchObject({count: 18, centroidEndIn: expect.closeTo(14.39, 12), centroidCentreIn: 4, rows: [{count: 18, endIn: 14.39, centreIn: 4}]});
  });

  test("refuses a height outside the member, an inch of concrete included", () => {
    expect(byCentroid("10DT24", "68-S", 1, 1).centroidEndIn).toBe(1);
    expect(byCentroid("10DT24", "68-S", 23, 23).centroidEndIn).toBe(23);
    refused(() => byCentroid("10DT24", "68-S", 0.9, 0.9), {path: "strandHeightEndIn", message: "strand height at the ends: 0.9 in is not possible (1 to 23 in in a 24 in member)"});
    refused(() => byCentroid("10DT24", "68-D1", 20, 24), {path: "strandHeightCentreIn"});
    refused(() => byCentroid("10DT24", "68-S", NaN, NaN), {path: "strandHeightEndIn"});
  });

  test("refuses ends that differ from midspan for straight strands", () => {
    refused(() => byCentroid("10DT24", "68-S", 5, 4), {path: "strandHeightEndIn", value: 5, allowed: "4 in, as at midspan: the strands of 68-S are straight"});
  });

  test("refuses the patterns that the member is not cast with, as the usual layout does", () => {
    refused(() => byCentroid("10DT24", "78-S", 4, 4), {path: "pattern", allowed: /multiple of 2/});
    refused(() => byCentroid("4HC8", "68-D1", 4, 1.5), {path: "pattern", allowed: /straight strands/});
  });
});

describe("depression and centroidAt", () => {
  test("rise from the ends to the hold-down, and stay level between two", () => {
    expect([0, 0.25, 0.5, 0.75, 1].map((share) => depression("one-point", share))).toEqual([0, 0.5, 1, 0.5, 0]);
    expect([0, 0.2, 0.4, 0.5, 0.6, 0.8, 1].map((share) => Number(depression("two-point", share).toFixed(12)))).toEqual([0, 0.5, 1, 1, 1, 0.5, 0]);
    expect(depression("straight", 0)).toBe(1);
  });

  test("hold one-point strands at midspan and two-point strands at 0.4 of the span", () => {
    expect([holdDownShare("one-point"), holdDownShare("two-point"), holdDownShare("straight")]).toEqual([0.5, 0.4, 0.5]);
  });

  test("give the centroid's height along the span", () => {
    const layout = byCentroid("12DT28", "188-D1", 14, 4);
    expect([0, 0.25, 0.5, 1].map((share) => centroidAt(layout, share))).toEqual([14, 9, 4, 14]);
  });
});

describe("placedStrands", () => {
  const layouts = catalogue.deckMembers.flatMap((row) => {
    const size = row.use === "plank" ? 6 : 8;
    const texts = [`${row.leastStrands}${size}-S`, `${row.mostStrands}${size}-S`, ...(row.use === "plank" ? [] : ["128-D1"])];
    return texts.map((text) => ({member: row.designation, text, shape: shapeOf(catalogue, row.designation), layout: usual(row.designation, text)}));
  });

  test("places every strand in concrete, at the height of its row", () => {
    for (const {member, text, shape, layout} of layouts) for (const share of [0, 0.25, 0.5]) {
      const strands = placedStrands(shape, layout, share);
      expect(strands, `${member} ${text}`).toHaveLength(layout.count);
      const mean = strands.reduce((sum, {yIn}) => sum + yIn, 0) / layout.count;
      expect(mean, `${member} ${text}`).toBeCloseTo(centroidAt(layout, share), 10);
      for (const {xIn, yIn} of strands) {
        expect(xIn, `${member} ${text}`).toBeGreaterThanOrEqual(1);
        expect(xIn, `${member} ${text}`).toBeLessThanOrEqual(shape.widthIn - 1);
        expect(widthAt(shape.rings, yIn), `${member} ${text}`).toBeGreaterThan(0);
      }
    }
  });

  test("is symmetrical about the middle of the member", () => {
    for (const {member, text, shape, layout} of layouts) {
      const strands = placedStrands(shape, layout, 0.5);
      expect(strands.reduce((sum, {xIn}) => sum + xIn, 0) / layout.count, `${member} ${text}`).toBeCloseTo(shape.widthIn / 2, 9);
    }
  });

  test("puts no two strands in one place", () => {
    for (const {member, text, shape, layout} of layouts) {
      const places = new Set(placedStrands(shape, layout, 0).map(({xIn, yIn}) => `${xIn.toFixed(6)} ${yIn.toFixed(6)}`));
      expect(places.size, `${member} ${text}`).toBe(layout.count);
    }
  });

  test("stacks strands that are known by their centroid about it", () => {
    const strands = placedStrands(shapeOf(catalogue, "10DT24"), byCentroid("10DT24", "68-S", 4, 4), 0.5);
    expect(strands.filter(({xIn}) => xIn === 30).map(({yIn}) => yIn)).toEqual([2, 4, 6]);
    expect(strands.filter(({xIn}) => xIn === 90)).toHaveLength(3);
  });
});

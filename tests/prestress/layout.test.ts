import {describe, expect, test} from "vitest";
import {deckRow, strandOf} from "../../lib/deck/deckMember.js";
import {centroidAt, centroidLayout, depression, holdDownShare, mostTeeStrands, placedStrands, usualLayout} from "../../lib/prestress/layout.js";
import {parsePattern} from "../../lib/prestress/pattern.js";
import {hollowCore} from "../../lib/sections/hollowCore.js";
import {widthAt} from "../../lib/sections/polygon.js";
import {shapeOf} from "../../lib/sections/designation.js";
import {catalog} from "../support/designs.js";
import {refused} from "../support/errors.js";

const strand = (text: string) => strandOf(catalog, parsePattern(text));
const usual = (member: string, text: string) =>
  usualLayout(shapeOf(catalog, member), parsePattern(text), strand(text), deckRow(catalog, member).lowestStrandIn);
const byCentroid = (member: string, text: string, endIn: number, centerIn: number) =>
  centroidLayout(shapeOf(catalog, member), parsePattern(text), strand(text), endIn, centerIn);

describe("usualLayout of a tee", () => {
  test("puts straight strands in a column of each stem, 2 in apart from 2 in up", () => {
    // 3, 4, 5, 6 and 9 to a stem: their middles lie 2 in plus one pitch less than the count above the soffit.
    for (const [text, heightIn] of [["28-S", 2], ["68-S", 4], ["88-S", 5], ["108-S", 6], ["128-S", 7]] as const) {
      expect(usual("10DT24", text).centroidCenterIn, text).toBe(heightIn);
      expect(usual("10DT24", text).centroidEndIn, text).toBe(heightIn);
    }
    expect(usual("12DT32", "188-S").centroidCenterIn).toBe(10);
  });

  test("bundles depressed strands at midspan, one diameter apart", () => {
    // n to a stem at 2, 2.5, 3 ... : their middle is 2 + (n - 1) / 4.
    for (const [text, heightIn] of [["88-D1", 2.75], ["128-D1", 3.25], ["148-D1", 3.5], ["188-D1", 4], ["188-D2", 4]] as const) {
      expect(usual("12DT32", text).centroidCenterIn, text).toBe(heightIn);
    }
  });

  test("spreads depressed strands evenly up the stem at the ends, to 3 in below the top", () => {
    // From 2 to 29 in: their middle is 15.5 whatever the number.
    const layout = usual("12DT32", "128-D1");
    expect(layout.rows.map((row) => row.endIn)).toEqual([2, 7.4, 12.8, 18.2, 23.6, 29]);
    expect(layout.centroidEndIn).toBeCloseTo(15.5, 12);
  });

  test("puts a single depressed strand of each stem 3 in below the top at the ends", () => {
    expect(usual("10DT24", "28-D1").rows).toMatchObject([{count: 2, endIn: 21, centerIn: 2}]);
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
    expect(usual("4HC8", "76-S").rows).toEqual([{count: 7, areaIn2: expect.closeTo(0.595, 12), endIn: 1.5, centerIn: 1.5}]);
    expect(usual("4FS4", "46-S").centroidCenterIn).toBe(1.5);
  });

  test("refuses depressed strands", () => {
    refused(() => usual("4HC8", "68-D1"), {path: "pattern", allowed: "straight strands (S) in a hollow core"});
  });

  test("refuses more strands than stand side by side", () => {
    // One for each 2 in of 48 in, less one for the edges.
    expect(usual("4FS8", "236-S").count).toBe(23);
    refused(() => usual("4FS8", "246-S"), {path: "pattern", allowed: "at most 23 strands of this profile fit a 4FS8"});
    // Two for each of seven webs.
    refused(() => usual("4HC8", "156-S"), {path: "pattern", value: "156-S", allowed: "at most 14 strands of this profile fit a 4HC8"});
  });

  test("refuses strands that would reach into a void, and counts those that do not", () => {
    const wide = shapeOf(catalog, "4HC8", {voidDiameterIn: 7.25});
    const row = (text: string) => usualLayout(wide, parsePattern(text), strand(text), 1.5);
    expect(row("76-S").count).toBe(7);
    const {allowed} = refused(() => row("146-S"), {path: "pattern", value: "146-S", allowed: /^at most \d+ strands of this profile fit a 4HC8$/});
    const most = Number(/\d+/.exec(allowed)?.[0]);
    expect(row(`${most}6-S`).count).toBe(most);
    refused(() => row(`${most + 1}6-S`), {path: "pattern"});
  });
});

describe("centroidLayout", () => {
  test("takes all strands at the heights given", () => {
    expect(byCentroid("12DT28", "188-D1", 14.39, 4)).toMatchObject({count: 18, centroidEndIn: expect.closeTo(14.39, 12), centroidCenterIn: 4, rows: [{count: 18, endIn: 14.39, centerIn: 4}]});
  });

  test("refuses a height outside the member, an inch of concrete included", () => {
    expect(byCentroid("10DT24", "28-S", 1, 1).centroidEndIn).toBe(1);
    expect(byCentroid("10DT24", "28-S", 23, 23).centroidEndIn).toBe(23);
    refused(() => byCentroid("10DT24", "28-S", 0.9, 0.9), {path: "strandHeightEndIn", message: "strand height at the ends: 0.9 in is not possible (1 to 23 in in a 24 in member)"});
    refused(() => byCentroid("10DT24", "68-D1", 20, 24), {path: "strandHeightCenterIn"});
    refused(() => byCentroid("10DT24", "68-S", NaN, NaN), {path: "strandHeightEndIn"});
  });

  test("leaves room in each stem for its strands on each other, half below and half above", () => {
    // Five 1/2 in strands on each other: their middles reach 1 in down and up.
    expect(byCentroid("10DT24", "108-S", 2, 2).centroidEndIn).toBe(2);
    refused(() => byCentroid("10DT24", "108-S", 1.9, 1.9), {message: "strand height at the ends: 1.9 in is not possible (2 to 22 in with 5 strands in each stem of a 24 in member)"});
    refused(() => byCentroid("10DT24", "108-D1", 22.5, 4), {path: "strandHeightEndIn", value: 22.5});
    // Forty-five on each other fill a stem from 1 to 23 in: one height is left.
    expect(byCentroid("10DT24", "908-S", 12, 12).count).toBe(90);
    refused(() => byCentroid("10DT24", "908-S", 12.1, 12.1), {message: /12 to 12 in with 45 strands/});
    refused(() => byCentroid("10DT24", "928-S", 12, 12), {path: "pattern", allowed: "at most 90 strands of this profile fit a 10DT24"});
  });

  test("refuses a plank's strands in its voids", () => {
    // The first web's strand stands 3 in beside the first void's center, 4 in up; it clears 3 + 3/16 in up to 2.92 in.
    expect(byCentroid("4HC8", "76-S", 2.9, 2.9).centroidEndIn).toBe(2.9);
    refused(() => byCentroid("4HC8", "76-S", 4, 4), {path: "strandHeightEndIn", value: 4, allowed: "1 to 2.9 in: higher up 7 strands of a 4HC8 would stand in its voids"});
    // One strand stands in the middle web, which is 2 in wide at its narrowest.
    expect(byCentroid("4HC8", "16-S", 4, 4).centroidEndIn).toBe(4);
    expect(byCentroid("4FS8", "76-S", 4, 4).centroidEndIn).toBe(4);
  });

  test("refuses ends that differ from midspan for straight strands", () => {
    refused(() => byCentroid("10DT24", "68-S", 5, 4), {path: "strandHeightEndIn", value: 5, allowed: "4 in, as at midspan: the strands of 68-S are straight"});
  });

  test("refuses the patterns that the member is not cast with, as the usual layout does", () => {
    refused(() => byCentroid("10DT24", "78-S", 4, 4), {path: "pattern", allowed: /multiple of 2/});
    refused(() => byCentroid("4HC8", "68-D1", 4, 1.5), {path: "pattern", allowed: /straight strands/});
  });
});

describe("centroidLayout of one height, or of none", () => {
  test("takes the height that is given for both", () => {
    const one = (endIn?: number, centerIn?: number) => centroidLayout(shapeOf(catalog, "10DT24"), parsePattern("68-D1"), strand("68-D1"), endIn, centerIn);
    expect(one(undefined, 4)).toMatchObject({centroidEndIn: 4, centroidCenterIn: 4});
    expect(one(7)).toMatchObject({centroidEndIn: 7, centroidCenterIn: 7});
  });

  test("refuses depressed strands that would rise toward midspan", () => {
    refused(() => byCentroid("10DT24", "68-D1", 4.9, 5), {path: "strandHeightEndIn", value: 4.9, allowed: /^5 in or more/});
    expect(byCentroid("10DT24", "68-D1", 5, 5).centroidEndIn).toBe(5);
  });

  test("says in good grammar how deep the member is, and speaks of stems in tees alone", () => {
    refused(() => byCentroid("4HC8", "76-S", 0.5, 0.5), {allowed: "1 to 7 in in an 8 in member"});
    refused(() => byCentroid("8DT18", "28-S", 0.5, 0.5), {allowed: "1 to 17 in in an 18 in member"});
    refused(() => byCentroid("12DT28", "28-S", 0.5, 0.5), {allowed: "1 to 27 in in a 28 in member"});
  });

  test("refuses strands for which a plank's voids leave no height", () => {
    const wide = shapeOf(catalog, "4HC8", {voidDiameterIn: 7.25});
    refused(() => centroidLayout(wide, parsePattern("146-S"), strand("146-S"), 1.5, 1.5), {path: "strandHeightEndIn", allowed: /leave no height for 14 strands/});
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
  const layouts = () => catalog.deckMembers.flatMap((row) => {
    const size = row.use === "plank" ? 6 : 8;
    const texts = [`${row.leastStrands}${size}-S`, `${row.mostStrands}${size}-S`, ...(row.use === "plank" ? [] : ["128-D1"])];
    return texts.map((text) => ({member: row.designation, text, shape: shapeOf(catalog, row.designation), layout: usual(row.designation, text)}));
  });

  test("places every strand in concrete, at the height of its row", () => {
    for (const {member, text, shape, layout} of layouts()) for (const share of [0, 0.25, 0.5]) {
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
    for (const {member, text, shape, layout} of layouts()) {
      const strands = placedStrands(shape, layout, 0.5);
      expect(strands.reduce((sum, {xIn}) => sum + xIn, 0) / layout.count, `${member} ${text}`).toBeCloseTo(shape.widthIn / 2, 9);
    }
  });

  test("puts no two strands in one place", () => {
    for (const {member, text, shape, layout} of layouts()) {
      const places = new Set(placedStrands(shape, layout, 0).map(({xIn, yIn}) => `${xIn.toFixed(6)} ${yIn.toFixed(6)}`));
      expect(places.size, `${member} ${text}`).toBe(layout.count);
    }
  });

  test("keeps strands that are known by their centroid an inch inside the member, high or low", () => {
    const shape = shapeOf(catalog, "10DT24");
    for (const heightIn of [2, 3, 12, 21, 22]) {
      const heights = placedStrands(shape, byCentroid("10DT24", "108-S", heightIn, heightIn), 0.5).map(({yIn}) => yIn);
      expect(Math.min(...heights), String(heightIn)).toBeGreaterThanOrEqual(1);
      expect(Math.max(...heights), String(heightIn)).toBeLessThanOrEqual(23);
      expect(heights.reduce((sum, yIn) => sum + yIn, 0) / heights.length).toBeCloseTo(heightIn, 12);
    }
  });

  test("puts a plank's pairs 1.5 in apart, about each web and inwards of the outer ones", () => {
    // Four voids of 8 in in 48 in: webs of 4 in at 12, 24 and 36 in, and two outer ones.
    const shape = hollowCore("12 in plank", {widthIn: 48, depthIn: 12, voidCount: 4, voidDiameterIn: 8});
    const [first, last] = [shape.webCentersIn[0] as number, shape.webCentersIn.at(-1) as number];
    const at = placedStrands(shape, usualLayout(shape, parsePattern("106-S"), strand("106-S"), 1.5), 0.5).map(({xIn}) => xIn);
    expect(at).toEqual([first, first + 1.5, 11.25, 12.75, 23.25, 24.75, 35.25, 36.75, last - 1.5, last]);
  });

  test("stacks strands that are known by their centroid about it", () => {
    const strands = placedStrands(shapeOf(catalog, "10DT24"), byCentroid("10DT24", "68-S", 4, 4), 0.5);
    expect(strands.filter(({xIn}) => xIn === 30).map(({yIn}) => yIn)).toEqual([2, 4, 6]);
    expect(strands.filter(({xIn}) => xIn === 90)).toHaveLength(3);
  });
});

import {describe, expect, test} from "vitest";
import {isBeam, placedBeamStrands, prestressedBeam} from "../../lib/beams/prestressedBeam.js";
import {published} from "../published/support.js";
import {catalog} from "../support/designs.js";
import {refused} from "../support/errors.js";

const rows = (designation: string, strands: number) =>
  prestressedBeam(catalog, {designation, strands}).layout.rows.map((row) => [row.count, row.centerIn]);

describe("isBeam", () => {
  test("knows inverted tees, L-beams and rectangles from deck members", () => {
    for (const beam of ["28IT20", "28IT60", "20LB20", "12RB24", "16RB40"]) expect(isBeam(catalog, beam)).toBe(true);
    for (const other of ["10DT24", "4HC8", "4FS6", "29IT20", "RB24", "12RB", "12RB24x", ""]) expect(isBeam(catalog, other)).toBe(false);
  });
});

describe("prestressedBeam", () => {
  test("fills its rows from below: the web's places, and one more in each ledge in the lowest row", () => {
    expect(rows("28IT28", 13)).toEqual([[7, 2], [5, 4], [1, 6]]);
    expect(rows("20LB20", 8)).toEqual([[6, 2], [2, 4]]);
    expect(rows("12RB24", 8)).toEqual([[5, 2], [3, 4]]);
    expect(rows("16RB24", 8)).toEqual([[7, 2], [1, 4]]);
    expect(rows("12RB24", 1)).toEqual([[1, 2]]);
  });

  // Strands and their height as the handbook prints them (MNL-120 ch. 3, sec. 3.11), seen in text; 28IT24 with 11 strands.
  test.each([
    ["28IT20", 9, 2.44], ["28IT24", 11, 2.73], ["28IT28", 13, 3.08], ["28IT32", 15, 3.47], ["28IT40", 19, 4.21],
    ["28IT44", 20, 4.4], ["28IT52", 24, 5.17],
  ] as const)("gives %s with %d strands the printed height %d in", (designation, strands, heightIn) => {
    expect(prestressedBeam(catalog, {designation, strands}).layout.centroidCenterIn).toBeCloseTo(heightIn, 2);
  });

  test.each([["28IT36", 16, 3.5], ["28IT48", 22, 4.55], ["28IT56", 26, 5.23], ["28IT60", 28, 5.57]] as const)(
    "puts the strands of %s (%d) up to 0.4 in higher than the printed %d in", (designation, strands, heightIn) => {
      const {centroidCenterIn} = prestressedBeam(catalog, {designation, strands}).layout;
      expect(centroidCenterIn).toBeGreaterThan(heightIn);
      expect(centroidCenterIn - heightIn).toBeLessThan(0.4);
    });

  test("sets all strands at one height where it is given", () => {
    const {layout} = prestressedBeam(catalog, {designation: "28IT28", strands: 13, strandHeightIn: 3.08});
    expect(layout.rows).toEqual([{count: 13, areaIn2: 13 * 0.153, endIn: 3.08, centerIn: 3.08}]);
    expect(layout.centroidEndIn).toBe(layout.centroidCenterIn);
  });

  test("has no row at or above the section's centroid, so that every strand works", () => {
    for (const [designation, most] of [["28IT20", 17], ["12RB16", 15], ["20LB20", 21]] as const) {
      const member = prestressedBeam(catalog, {designation, strands: most});
      for (const row of member.layout.rows) expect(row.centerIn).toBeLessThan(member.section.ybIn);
      refused(() => prestressedBeam(catalog, {designation, strands: most + 1}), {path: "strands", allowed: `whole number, 1 to ${most}`});
    }
  });

  test("has its strands on a grid of 2 in about the web's middle, and in the ledges 2 in from their faces", () => {
    const placesIn = (designation: string, strands: number) => {
      const {shape, layout} = prestressedBeam(catalog, {designation, strands});
      return placedBeamStrands(shape, layout).map(({xIn, yIn}) => [xIn, yIn]);
    };
    // A web of 12 in between ledges of 8 in, whose middle stands 14 in from either side.
    expect(placesIn("28IT28", 13)).toEqual([...[10, 12, 14, 16, 18, 2, 26].map((xIn) => [xIn, 2]), ...[10, 12, 14, 16, 18].map((xIn) => [xIn, 4]), [14, 6]]);
    // The same web with one ledge, at its right.
    expect(placesIn("20LB20", 8)).toEqual([...[2, 4, 6, 8, 10, 18].map((xIn) => [xIn, 2]), [5, 4], [7, 4]]);
  });

  test("has room for more strands than lie below its centroid where their common height is given", () => {
    expect(prestressedBeam(catalog, {designation: "28IT20", strands: 20, strandHeightIn: 4}).layout.count).toBe(20);
  });

  test("is of the handbook's concrete unless otherwise stated, of 0.6 in strand if asked", () => {
    const plain = prestressedBeam(catalog, {designation: "28IT28", strands: 13});
    expect(plain.concrete.strengthPsi).toBe(5000);
    expect(plain.selfWeightPlf).toBeCloseTo(550, 9);
    const other = prestressedBeam(catalog, {
      designation: "28IT28", strands: 13, strandSixteenths: 10, concreteKind: "sand-lightweight", strengthPsi: 6000, releaseStrengthPsi: 4000, humidityPercent: 60,
    });
    expect(other.layout.areaIn2).toBeCloseTo(13 * 0.217, 12);
    expect([other.concrete.strengthPsi, other.releaseStrengthPsi, other.humidityPercent]).toEqual([6000, 4000, 60]);
    expect(other.selfWeightPlf).toBeLessThan(plain.selfWeightPlf);
  });

  test("refuses what is no beam, and what cannot be", () => {
    refused(() => prestressedBeam(catalog, {designation: "10DT24", strands: 6}), {path: "member"});
    refused(() => prestressedBeam(catalog, {designation: "nothing", strands: 6}), {path: "member"});
    refused(() => prestressedBeam(catalog, {designation: "28IT28", strands: 13, strandSixteenths: 5}), {path: "strandSixteenths"});
    refused(() => prestressedBeam(catalog, {designation: "28IT28", strands: 13, strandHeightIn: 0.5}), {path: "strandHeightEndIn"});
    refused(() => prestressedBeam(catalog, {designation: "28IT28", strands: 100, strandHeightIn: 3}), {path: "strands"});
    for (const strands of [0, -1, 1.5, NaN]) refused(() => prestressedBeam(catalog, {designation: "28IT28", strands}), {path: "strands"});
  });
});

test("the properties of every printed beam are compared: 11 inverted tees, 11 rectangles, an L-beam", () => {
  const beams = new Set(published.sections.map((row) => row.member).filter((member) => isBeam(catalog, member)));
  const count = (letters: string) => [...beams].filter((member) => member.includes(letters)).length;
  expect([count("IT"), count("RB"), count("LB")]).toEqual([11, 11, 1]);
});

import {describe, expect, test} from "vitest";
import {biaxialUse} from "../../lib/columns/biaxial.js";
import type {ColumnBending} from "../../lib/columns/columnBending.js";
import {storeyCases} from "../../lib/columns/columnStorey.js";
import {takedown} from "../../lib/columns/takedown.js";
import {floorLevel} from "./levels.js";
import {bar, columnOf} from "./sections.js";

const casesOf = (alongKip: number, acrossKipIn: number) => {
  const bending: ColumnBending = {
    seat: {seatIn: 4, cutForIn: 16},
    patterns: [{words: "", levels: [{along: {deadKip: alongKip, liveKip: 0, roofKip: 0}, across: {deadKipIn: acrossKipIn, liveKipIn: 0, roofKipIn: 0}}], curvature: {along: "double", across: "double"}}],
  };
  const [cases = []] = storeyCases({bending, lengthFactor: 1, sways: false, sustainedLiveShare: 0.2}, columnOf(), takedown({position: "corner column", levels: [floorLevel({storeyHeightFt: 20})], columnPlf: 300}).storeys);
  return cases.filter(({combination}) => combination.name === "1.4D");
};

describe("the least moment of a slender column", () => {
  test("counts along the beams and across them, but never both ways at once", () => {
    const cases = casesOf(0, 0);
    expect(cases.map(({leastCounts}) => leastCounts)).toEqual(["along", "across"]);
    const least = cases[0]?.along.slenderness.leastMomentKipIn ?? NaN;
    const delta = cases[0]?.along.slenderness.magnifier ?? NaN;
    expect(cases.map(({asked}) => [asked.widthMomentKipIn, asked.depthMomentKipIn])).toEqual([[expect.closeTo(delta * least, 9), 0], [0, expect.closeTo(delta * least, 9)]]);
  });

  test("stands beside the other way's own moment", () => {
    // 2 kip at 12 in, 1.4 times: 33.6 kip-in along, below the least; 700 kip-in across, above it.
    const [only, ...others] = casesOf(2, 500);
    expect(others).toEqual([]);
    expect(only?.leastCounts).toBe("along");
    expect(only?.asked.widthMomentKipIn).toBeCloseTo((only?.along.slenderness.magnifier ?? NaN) * (only?.along.slenderness.leastMomentKipIn ?? NaN), 9);
    expect(only?.asked.depthMomentKipIn).toBeCloseTo((only?.across.slenderness.magnifier ?? NaN) * 700, 9);
  });

  test("adds nothing where both moments are above it", () => {
    const cases = casesOf(50, 900);
    expect(cases).toHaveLength(1);
    expect(cases[0]?.along.slenderness.endMomentKipIn).toBeCloseTo(1.4 * 50 * 12, 9);
  });
});

test("the smaller end of a column bent to both sides counts without live load on its level, so Cm is larger", () => {
  // Each level brings 20 kip dead and 30 live at 12 in: half of the lower one's goes up, all of the upper one's down.
  const levels = [floorLevel({storeyHeightFt: 20, name: "floor 3"}), floorLevel({storeyHeightFt: 20})];
  const along = {deadKip: 20, liveKip: 30, roofKip: 0};
  const bent = (curvature: "double" | "single") => {
    const level = {along, across: {deadKipIn: 0, liveKipIn: 0, roofKipIn: 0}};
    const bending: ColumnBending = {seat: {seatIn: 4, cutForIn: 16}, patterns: [{words: "", levels: [level, level], curvature: {along: curvature, across: "single"}}]};
    const [cases = []] = storeyCases({bending, lengthFactor: 1, sways: false, sustainedLiveShare: 0.2}, columnOf(), takedown({position: "corner column", levels, columnPlf: 300}).storeys);
    return cases.find(({combination}) => combination.name === "1.2D + 1.6L")?.along.slenderness;
  };
  // M2 = (1.2 * 20 + 1.6 * 30) * 12 = 864; M1 = 1.2 * 20 * 12 / 2 = 144 and not 432: Cm = 0.6 - 0.4 * 144 / 864.
  expect(bent("double")).toMatchObject({endMomentKipIn: expect.closeTo(864, 9), evenMomentFactor: expect.closeTo(0.6 - 0.4 * (144 / 864), 9)});
  // Bent to one side the greater M1 is worse: 432.
  expect(bent("single")?.evenMomentFactor).toBeCloseTo(0.6 + 0.4 * (432 / 864), 9);
});

test("a column bent into a corner uses more of its strength than one that is bent either way alone", () => {
  const use = (along: number, across: number) => Math.max(...casesOf(along, across).map(({utilisation}) => utilisation));
  expect(use(50, 900)).toBeGreaterThan(1.25 * Math.max(use(50, 0), use(0, 900)));
});

describe("corner columns of four floors, by another integration of small squares", () => {
  // Side, bar, cover; axial load, moment along, half or all of the beam's end twist across; use worked out apart.
  const rows = [
    ["a library's", 12, "#7", 1.5, 192.0, 814, 634.5, 1.43], ["a parking structure's", 14, "#8", 2, 118.9, 1278, 979, 1.55],
    ["a records store's", 12, "#7", 1.5, 238.4, 680, 707.5, 1.34], ["a classroom wing's", 12, "#7", 1.5, 121.5, 255, 193.5, 0.46],
  ] as const;

  test.each(rows)("%s", (_, side, size, coverIn, axialKip, along, across, printed) => {
    const section = columnOf({widthIn: side, depthIn: side, bar: bar(size), count: 4, coverIn});
    expect(biaxialUse(section, {axialKip, depthMomentKipIn: across, widthMomentKipIn: along})).toBeCloseTo(printed, 2);
  });
});

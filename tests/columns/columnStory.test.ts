import {describe, expect, test} from "vitest";
import {biaxialUse} from "../../lib/columns/biaxial.js";
import type {ColumnBending} from "../../lib/columns/columnBending.js";
import {hardest, useWithoutSlenderness, type ColumnStory} from "../../lib/columns/columnStory.js";
import type {ColumnLevel} from "../../lib/columns/levels.js";
import type {ColumnSection} from "../../lib/columns/section.js";
import {takedown} from "../../lib/columns/takedown.js";
import {storyCases} from "./cases.js";
import {floorLevel} from "./levels.js";
import {bar, columnOf} from "./sections.js";

const casesOf = (alongKip: number, acrossKipIn: number) => {
  const bending: ColumnBending = {
    seat: {seatIn: 4, cutForIn: 16},
    patterns: [{words: "", levels: [{along: {deadKip: alongKip, liveKip: 0, roofKip: 0}, across: {deadKipIn: acrossKipIn, liveKipIn: 0, roofKipIn: 0}}], curvature: {along: "double", across: "double"}}],
  };
  const [cases = []] = storyCases({bending, lengthFactor: 1, sways: false, sustainedLiveShare: 0.2}, columnOf(), takedown({position: "corner column", levels: [floorLevel({storyHeightFt: 20})], columnPlf: 300}).stories);
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
  const levels = [floorLevel({storyHeightFt: 20, name: "floor 3"}), floorLevel({storyHeightFt: 20})];
  const along = {deadKip: 20, liveKip: 30, roofKip: 0};
  const bent = (curvature: "double" | "single") => {
    const level = {along, across: {deadKipIn: 0, liveKipIn: 0, roofKipIn: 0}};
    const bending: ColumnBending = {seat: {seatIn: 4, cutForIn: 16}, patterns: [{words: "", levels: [level, level], curvature: {along: curvature, across: "single"}}]};
    const [cases = []] = storyCases({bending, lengthFactor: 1, sways: false, sustainedLiveShare: 0.2}, columnOf(), takedown({position: "corner column", levels, columnPlf: 300}).stories);
    return cases.find(({combination}) => combination.name === "1.2D + 1.6L")?.along.slenderness;
  };
  // M2 = (1.2 * 20 + 1.6 * 30) * 12 = 864; M1 = 1.2 * 20 * 12 / 2 = 144 and not 432: Cm = 0.6 - 0.4 * 144 / 864.
  expect(bent("double")).toMatchObject({endMomentKipIn: expect.closeTo(864, 9), evenMomentFactor: expect.closeTo(0.6 - 0.4 * (144 / 864), 9)});
  // Bent to one side the greater M1 is worse: 432.
  expect(bent("single")?.evenMomentFactor).toBeCloseTo(0.6 + 0.4 * (432 / 864), 9);
});

test("a column bent into a corner uses more of its strength than one that is bent either way alone", () => {
  const use = (along: number, across: number) => Math.max(...casesOf(along, across).map(({utilization}) => utilization));
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

describe("a story", () => {
  const none = {deadKip: 0, liveKip: 0, roofKip: 0};
  const level = (deadKip: number, liveKip = 0, twistKipIn = 0) => ({along: {...none, deadKip, liveKip}, across: {deadKipIn: twistKipIn, liveKipIn: 0, roofKipIn: 0}});
  const casesUnder = (of: {levels: readonly ColumnLevel[]; brought: readonly ReturnType<typeof level>[]; section?: ColumnSection; sways?: boolean; columnPlf?: number}) => storyCases({
    bending: {seat: {seatIn: 4, cutForIn: 16}, patterns: [{words: "", levels: of.brought, curvature: {along: "double", across: "double"}}]},
    lengthFactor: 1, sways: of.sways ?? false, sustainedLiveShare: 0.2,
  }, of.section ?? columnOf(), takedown({position: "corner column", levels: of.levels, columnPlf: of.columnPlf ?? 300}).stories);
  const two = [floorLevel({storyHeightFt: 20, name: "floor 3"}), floorLevel({storyHeightFt: 20})];

  test("is bent by the greater of its two ends, the foot of an upper one where the floor below brings more", () => {
    // The upper level brings 1.2 x 5 x 12 = 72 kip-in; the lower (120 + 48) x 12 = 2,016, half of it up.
    const [upper = []] = casesUnder({levels: two, brought: [level(5), level(100, 30)]});
    const {slenderness} = upper.find(({combination}) => combination.name === "1.2D + 1.6L")?.along ?? {};
    expect(slenderness).toMatchObject({endMomentKipIn: expect.closeTo(1008, 9), evenMomentFactor: expect.closeTo(0.6 - 0.4 * (72 / 1008), 9)});
  });

  test("over a splice leaves all of the level's moment to the story below", () => {
    const [upper = [], lower = []] = casesUnder({levels: [two[0] as ColumnLevel, {...two[1] as ColumnLevel, spliceAbove: true}], brought: [level(20), level(40)]});
    expect([upper, lower].map(([one]) => [one?.along.ends.topKipIn, one?.along.ends.bottomKipIn])).toEqual([[1.4 * 20 * 12, 0], [1.4 * 40 * 12, 0]]);
  });

  test("sees its width where the beams bend it and its depth where they twist it", () => {
    const section = columnOf({widthIn: 12, depthIn: 24});
    const [[one] = []] = casesUnder({levels: [floorLevel({storyHeightFt: 20})], brought: [level(20, 0, 240)], section});
    // 240 in over 0.3 of 12 and of 24 in; I = 24 x 12^3 / 12 and 12 x 24^3 / 12: four times as stiff.
    expect([one?.along.slenderness.ratio, one?.across.slenderness.ratio]).toEqual([expect.closeTo(240 / 3.6, 9), expect.closeTo(240 / 7.2, 9)]);
    expect((one?.across.slenderness.criticalKip ?? NaN) / (one?.along.slenderness.criticalKip ?? NaN)).toBeCloseTo(4, 9);
  });

  test("does not carry where it would buckle one way alone, however little of its strength it uses", () => {
    // 40 ft over 0.3 of 10 in is 160, beyond the method; over 0.3 of 40 in it is 40.
    const section = columnOf({widthIn: 10, depthIn: 40});
    const [[one] = []] = casesUnder({levels: [floorLevel({storyHeightFt: 40, tributaryFt2: 50})], brought: [level(1, 0, 20)], section});
    expect(one?.across.slenderness.checks.every(({verdict}) => verdict === "ok")).toBe(true);
    expect(one).toMatchObject({carries: false});
    expect(one?.utilization).toBeLessThan(1);
    // Where no enlargement is known it is reported with its end moment: 1.4 x 1 kip at 20 + 4 in.
    expect(one?.along.momentKipIn).toBeCloseTo(1.4 * 24, 9);
  });

  test("is bent at 45 degrees by equal moments, at 0 by its beams' reactions alone and at 90 by their twist alone", () => {
    const angle = (alongKip: number, acrossKipIn: number) => casesOf(alongKip, acrossKipIn).map(({angleDeg}) => angleDeg);
    expect(angle(50, 600)).toEqual([expect.closeTo(45, 9)]);
    expect(angle(0, 0)).toEqual([0, 90]);
    expect(casesOf(50, 600)[0]?.momentKipIn).toBeCloseTo((casesOf(50, 600)[0]?.along.momentKipIn ?? NaN) * Math.SQRT2, 9);
  });

  test("uses its strength in full at most to carry", () => {
    for (const [deadKip, twistKipIn] of [[20, 240], [50, 900], [150, 2500]] as const) {
      for (const {utilization, carries} of casesOf(deadKip, twistKipIn)) expect(carries).toBe(utilization <= 1);
    }
    expect(casesOf(150, 2500).some(({carries}) => carries)).toBe(false);
    expect(casesOf(20, 240).every(({carries}) => carries)).toBe(true);
  });

  test("without slenderness uses what its end moments alone would", () => {
    const section = columnOf();
    const [[one] = []] = casesUnder({levels: [floorLevel({storyHeightFt: 30})], brought: [level(50, 0, 900)]});
    if (!one) throw new Error("no case");
    expect(useWithoutSlenderness(section, one)).toBeCloseTo(biaxialUse(section, {axialKip: one.axialKip, depthMomentKipIn: 1.4 * 900, widthMomentKipIn: 1.4 * 50 * 12}), 9);
    expect(useWithoutSlenderness(section, one)).toBeLessThan(one.utilization);
  });

  test("that nothing presses is bent all the same", () => {
    const bare = floorLevel({deckPsf: 0, toppingPsf: 0, superimposedPsf: 0, beamPlf: 0, livePsf: 0});
    const [[one] = []] = casesUnder({levels: [bare], brought: [level(10)], columnPlf: 0});
    expect(one?.asked).toEqual({axialKip: 0, depthMomentKipIn: 0, widthMomentKipIn: 1.4 * 10 * 12});
  });
});

test("the case that asks most is one that fails by slenderness, else the one that uses most; of equals the first", () => {
  const case_ = (utilization: number, carries: boolean) => ({utilization, carries}) as ColumnStory;
  const [low, high, over, farOver, buckling, full] = [case_(0.3, true), case_(0.9, true), case_(1.2, false), case_(1.5, false), case_(0.2, false), case_(1, false)];
  expect(hardest([low, high, over, farOver])).toBe(farOver);
  expect(hardest([low, high])).toBe(high);
  expect(hardest([high, buckling, farOver])).toBe(buckling);
  expect(hardest([farOver, full])).toBe(full);
  expect(hardest([high, case_(0.9, true)])).toBe(high);
});

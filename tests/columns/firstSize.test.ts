import {describe, expect, test} from "vitest";
import {biaxialUse} from "../../lib/columns/biaxial.js";
import {chooseBars, usualColumnBars} from "../../lib/columns/chooseBars.js";
import {firstColumn, type FirstColumnInput} from "../../lib/columns/firstSize.js";
import {columnSection} from "../../lib/columns/section.js";
import {catalog} from "../support/designs.js";
import {refused} from "../support/errors.js";
import {centered, onCorbels, twisted} from "./bending.js";
import {floorLevel, roofLevel} from "./levels.js";
import {useOf} from "./oneAxis.js";
import {bar} from "./sections.js";

const BARS = catalog.bars.filter(({size}) => ["#6", "#7", "#8", "#9", "#10", "#11"].includes(size));
const floors = (count: number, different = {}) => Array.from({length: count}, (_, i) => floorLevel({name: `floor ${count - i + 1}`, ...different}));
const input = (different: Partial<FirstColumnInput> = {}): FirstColumnInput => ({
  position: "interior column", levels: [roofLevel(), ...floors(3)], strengthPsi: 6000, coverIn: 1.5, steelRatio: 0.015, bars: BARS,
  bending: onCorbels(different.levels ?? [roofLevel(), ...floors(3)], 4, "two"), lengthFactor: 1, sways: false, sustainedLiveShare: 0.25, pieceLengthFt: 60, ...different,
});

describe("chooseBars", () => {
  test("takes the fewest bars that reach the share, and of these the thinnest", () => {
    // 1.5 % of 256 in2 is 3.84: four #9 are 4.00. 2 % of 400 in2 is 8.00: four #11 are 6.24, eight #9 are 8.00.
    expect(chooseBars(16, 0.015, BARS, 1.5)).toEqual({bar: bar("#9"), count: 4});
    expect(chooseBars(20, 0.02, BARS, 1.5)).toEqual({bar: bar("#9"), count: 8});
  });

  test("chooses among usual bars, and gives sections without failed checks", () => {
    expect(usualColumnBars([...catalog.bars].reverse()).map((entry) => entry.size)).toEqual(["#6", "#7", "#8", "#9", "#10", "#11"]);
    for (let side = 12; side <= 48; side += 2) {
      for (const ratio of [0.01, 0.02, 0.03]) {
        const bars = chooseBars(side, ratio, BARS, 1.5);
        if (!bars) continue;
        const section = columnSection({...bars, widthIn: side, depthIn: side, faces: "all", coverIn: 1.5, strengthPsi: 5000});
        expect(section.checks.filter((check) => check.verdict === "fails"), `${side} in, ${ratio}`).toEqual([]);
        expect(section.steelRatio).toBeGreaterThanOrEqual(ratio);
      }
    }
  });

  test("wants the code's clear distance between them, up to eight in a face and 8 % of steel", () => {
    // Twelve #8 in 12 in: (12 - 3.75 - 1) / 3 - 1 = 1.42 in clear, below 1.5; eight #10: 6.98 / 2 - 1.27 = 2.22 over 1.905.
    expect(chooseBars(12, 0.06, [bar("#8")], 1.5)).toBeUndefined();
    expect(chooseBars(12, 0.06, [bar("#10"), bar("#9")], 1.5)).toEqual({bar: bar("#10"), count: 8});
    // 28 #6 are 12.32 in2: 1 % of 34 in square is 11.56, of 36 in 12.96.
    expect(chooseBars(34, 0.01, [bar("#6")], 1.5)).toEqual({bar: bar("#6"), count: 28});
    expect(chooseBars(36, 0.01, [bar("#6")], 1.5)).toBeUndefined();
    // Eight #10 are 8.4 % of 11 in square, though they would fit behind a thin cover.
    expect(chooseBars(11, 0.075, [bar("#10")], 0.75)).toBeUndefined();
    expect(chooseBars(20, 0.02, [...BARS].reverse(), 1.5)).toEqual({bar: bar("#9"), count: 8});
  });

  test("finds none where none fit, and refuses an empty choice", () => {
    expect(chooseBars(12, 0.06, [bar("#6")], 1.5)).toBeUndefined();
    refused(() => chooseBars(16, 0.015, [], 1.5), {path: "bars"});
    refused(() => chooseBars(16, 0.09, BARS, 1.5), {path: "steelRatio"});
  });
});

describe("firstColumn", () => {
  test("is the least size in steps of 2 in that carries every story", () => {
    const column = firstColumn(input());
    expect(column.suffices).toBe(true);
    expect(column.tried.map((entry) => entry.sideIn)).toEqual(Array.from({length: column.tried.length}, (_, i) => 12 + 2 * i));
    expect(column.tried.at(-1)).toMatchObject({sideIn: column.sideIn, carries: true});
    expect(column.tried.slice(0, -1).every((entry) => !entry.carries)).toBe(true);
    expect(column.stories).toHaveLength(4);
    for (const story of column.stories) expect(story.utilization).toBeLessThanOrEqual(1);
    expect(column.checks.filter((check) => check.verdict === "fails" || check.verdict === "out of range")).toEqual([]);
  });

  test("carries its own weight, and works out each story again from its parts", () => {
    const column = firstColumn(input());
    const plf = (column.sideIn ** 2 / 144) * 150;
    column.stories.forEach((story) => {
      expect(story.load.columnKip).toBeCloseTo((plf * 12) / 1000, 9);
      expect(story.utilization).toBe(biaxialUse(column.section, story.asked));
      expect(story.asked.widthMomentKipIn).toBeGreaterThanOrEqual(story.along.slenderness.endMomentKipIn);
    });
    expect(column.worst.utilization).toBe(Math.max(...column.stories.map((story) => story.utilization)));
  });

  test("by hand: a stub under one floor with its beams on the center line", () => {
    // 115 kip dead and 25 kip live (50 x 0.5): 1.4 x 119.x against 1.2 D + 1.6 L; 12 in square, 6,000 psi, four #7 of 2.4 in2.
    const one = firstColumn(input({levels: [floorLevel()], bending: centered([floorLevel()])}));
    const deadKip = 115 + 0.15 * 12;
    expect(one.sideIn).toBe(12);
    expect(one.section).toMatchObject({count: 4, bar: bar("#7")});
    expect(one.worst.axialKip).toBeCloseTo(1.2 * deadKip + 1.6 * 25, 9);
    // k lu / r = 144 / 3.6 = 40 > 22: slender, so the least moment counts.
    expect(one.worst.along.slenderness).toMatchObject({slender: true, ratio: expect.closeTo(40, 9)});
    expect(one.governs).toBe("least size");
  });

  test("says what decides", () => {
    // Beams on both sides of a stocky column leave little moment; a corbel on one side a great deal.
    const stocky = {clearHeightFt: 7.5};
    const balanced = input({levels: floors(8, stocky), bending: centered(floors(8, stocky))});
    expect(firstColumn(balanced)).toMatchObject({governs: "axial load", worst: {load: {level: {name: "floor 2"}}}});
    const oneSided = firstColumn(input({position: "corner column", levels: floors(2, stocky), bending: onCorbels(floors(2, stocky), 4, "one")}));
    expect(oneSided.governs).toBe("axial load with moment");
    expect(firstColumn(input({levels: [floorLevel({storyHeightFt: 30})], bending: twisted([floorLevel({storyHeightFt: 30})], 2)})).governs).toBe("slenderness");
  });

  test("is decided by room for bars where a smaller one would carry but not hold them", () => {
    // Behind 4 in of cover, 12 in leave 2.25 in between corner bars: 1.25 in clear. 14 in leave 3.25.
    const light = [floorLevel({tributaryFt2: 100})];
    const column = firstColumn(input({coverIn: 4, bars: [bar("#8")], levels: light, bending: centered(light)}));
    expect(column).toMatchObject({sideIn: 14, governs: "room for bars", tried: [{sideIn: 12, carries: false}, {sideIn: 14, carries: true}]});
    refused(() => firstColumn(input({coverIn: 4, steelRatio: 0.08, bars: [bar("#6")]})), {path: "bars", allowed: "bars that reach 8 % and fit a column of 12 to 48 in"});
  });

  test("tells each check of slenderness with its story", () => {
    const messages = firstColumn(input()).checks.filter(({id}) => ["column buckling", "column magnifier", "column slenderness"].includes(id)).map(({message}) => message);
    expect(messages.length).toBeGreaterThan(0);
    for (const message of messages) expect(message).toMatch(/^In the story under (the roof|floor \d): (the column is|slenderness magnifies) [a-z, ]+\.$/);
  });

  test("grows with floors, length, eccentricity, and weaker concrete", () => {
    const size = (different: Partial<FirstColumnInput>) => firstColumn(input(different)).sideIn;
    expect(size({levels: floors(5)})).toBeGreaterThan(size({levels: floors(2)}));
    expect(size({levels: floors(2, {storyHeightFt: 30})})).toBeGreaterThan(size({levels: floors(2)}));
    const all = [roofLevel(), ...floors(3)];
    expect(size({bending: onCorbels(all, 24, "one")})).toBeGreaterThan(size({bending: onCorbels(all, 4, "one")}));
    expect(size({strengthPsi: 4000, levels: floors(5)})).toBeGreaterThan(size({strengthPsi: 9000, levels: floors(5)}));
  });

  test("fails openly where no size carries, and where the method does not reach", () => {
    const heavy = firstColumn(input({levels: floors(2, {tributaryFt2: 20000, deckPsf: 300})}));
    expect(heavy).toMatchObject({suffices: false, sideIn: 48});
    expect(heavy.checks.find((check) => check.id === "column strength")?.verdict).toBe("fails");
    const sways = firstColumn(input({sways: true, lengthFactor: 2.1, levels: [roofLevel({storyHeightFt: 60})]}));
    expect(sways.suffices).toBe(false);
    expect(sways.checks.find((check) => check.id === "column slenderness")?.verdict).toBe("out of range");
  });

  test("counts pieces of whole stories", () => {
    // Four stories of 12 ft: 48 ft in one piece of 60 ft, two of 24 to 47 ft, four of 12 to 23 ft.
    expect(firstColumn(input({pieceLengthFt: 48})).pieces).toBe(1);
    expect(firstColumn(input({pieceLengthFt: 47})).pieces).toBe(2);
    expect(firstColumn(input({pieceLengthFt: 24})).pieces).toBe(2);
    expect(firstColumn(input({pieceLengthFt: 12})).pieces).toBe(4);
    // 10 ft over 20 over 20: two of them in 30 ft, whichever end one begins from. A piece must hold the tallest story.
    const uneven = [10, 20, 20].map((storyHeightFt) => floorLevel({storyHeightFt}));
    expect([uneven, [...uneven].reverse()].map((levels) => firstColumn(input({levels, pieceLengthFt: 30})).pieces)).toEqual([2, 2]);
    refused(() => firstColumn(input({levels: uneven, pieceLengthFt: 19})), {path: "pieceLengthFt", allowed: "20 to 120 ft"});
  });

  test("refuses a piece shorter than its story, negative loads, no bars, and bars that fit no size", () => {
    refused(() => firstColumn(input({pieceLengthFt: 11})), {path: "pieceLengthFt", message: "longest piece of column: 11 ft is not possible (12 to 120 ft)"});
    refused(() => firstColumn(input({levels: [floorLevel({livePsf: -1})]})), {path: "levels.0.livePsf"});
    refused(() => firstColumn(input({levels: []})), {path: "levels"});
    refused(() => firstColumn(input({bars: []})), {path: "bars"});
    refused(() => firstColumn(input({steelRatio: 0.08, bars: [bar("#3")]})), {path: "bars", value: "#3"});
    refused(() => firstColumn(input({sustainedLiveShare: -0.1})), {path: "sustainedLiveShare"});
  });
});

describe("a size near its buckling load", () => {
  test("asks for as many times its strength in bending as its moment has grown", () => {
    const section = columnSection({widthIn: 14, depthIn: 14, count: 4, bar: bar("#9"), faces: "all", coverIn: 1.5, strengthPsi: 5000});
    const bending = useOf(section, {axialKip: 0, momentKipIn: 1000});
    for (const momentKipIn of [1e7, 1.2e7, 1e15]) {
      expect(useOf(section, {axialKip: 600, momentKipIn}) / (bending * momentKipIn / 1000)).toBeCloseTo(1, 2);
    }
  });
});

test("buckling is reported for the story that is nearest to it, whichever asks most of the strength", () => {
  // The roof's whole moment bends the top story under little load; the floors' load presses the lowest.
  const levels = [roofLevel({deckPsf: 200}), floorLevel({name: "floor 3"}), floorLevel()];
  const column = firstColumn(input({position: "corner column", levels, bending: onCorbels(levels, 16, "one")}));
  expect(column.worst.load.level.name).toBe("roof");
  const uses = column.stories.map(({axialKip, along: {slenderness: {criticalKip}}}) => axialKip / (0.75 * criticalKip));
  const told = column.checks.find((check) => check.id === "column buckling");
  expect(told?.utilization).toBeGreaterThanOrEqual(Math.max(...uses));
  expect(told?.utilization).toBeGreaterThan(2 * (uses[0] ?? NaN));
  expect(told?.message).toContain("under floor 2");
});

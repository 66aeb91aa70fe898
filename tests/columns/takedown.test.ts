import {describe, expect, it, test} from "vitest";
import {columnFactor, levelWords, liveClass, typicalLevels, type ColumnLevel} from "../../lib/columns/levels.js";
import {takedown, type TakedownInput} from "../../lib/columns/takedown.js";
import {loadAreas} from "../../lib/loads/tributary.js";
import {published} from "../published/support.js";
import {refused} from "../support/errors.js";
import {floorLevel, roofLevel} from "./levels.js";

const down = (levels: readonly ColumnLevel[], different: Partial<TakedownInput> = {}) =>
  takedown({position: "interior column", levels, columnPlf: 0, ...different});

describe("the worked example of a basement column (Quimby, A Beginner's Guide to ASCE 7-10, ch. 5, example 5.1; seen in text)", () => {
  // Three floors of 50 psf with 1,260 ft2 of tributary and 4,680 ft2 of influence area together.
  const floor = () => floorLevel({tributaryFt2: 420, influenceFt2: 1560, deckPsf: 0, toppingPsf: 0, superimposedPsf: 0, beamPlf: 0});
  const printed = (key: string) => published.values.find((row) => row.kind === "column example" && row.key === key)?.value ?? NaN;

  it("comes out by factor, load and force", () => {
    const foot = down([floor(), floor(), floor()]).stories[2];
    const reduction = foot?.reductions[0]?.reduction;
    expect(foot).toMatchObject({floors: 3, tributaryFt2: 1260, influenceFt2: 4680});
    expect(Math.abs((reduction?.factor ?? 0) / printed("factor") - 1)).toBeLessThan(0.002);
    expect(Math.abs((reduction?.reducedPsf ?? 0) / printed("load") - 1)).toBeLessThan(0.002);
    expect(Math.abs((foot?.liveKip ?? 0) / printed("force") - 1)).toBeLessThan(0.002);
    expect([printed("factor"), printed("load"), printed("force")]).toEqual([0.469, 23.5, 29.6]);
  });
});

describe("takedown", () => {
  const three = () => down([roofLevel(), floorLevel({name: "floor 3"}), floorLevel()], {columnPlf: 400});

  test("adds up dead load level by level, with the column's own weight", () => {
    const {stories} = three();
    // Roof 80 psf x 1,000 + 500 x 30 = 95 kip; a floor 100 x 1,000 + 15,000 = 115 kip; column 0.4 x 12 = 4.8 kip a story.
    expect(stories[0]?.adds).toMatchObject({deckKip: 60, toppingKip: 0, superimposedKip: 20, beamsKip: 15, deadKip: 95, roofKip: 20, liveKip: 0});
    expect(stories[1]?.adds).toMatchObject({toppingKip: 25, deadKip: 115, liveKip: 50, roofKip: 0});
    expect(stories.map((story) => story.columnKip)).toEqual([4.8, 4.8, 4.8].map((kip) => expect.closeTo(kip, 12)));
    expect(stories.map((story) => story.deadKip)).toEqual([99.8, 219.6, 339.4].map((kip) => expect.closeTo(kip, 9)));
  });

  test("reduces live load by the area of all floors above, roofs not counted", () => {
    const {stories, elementFactor} = three();
    // KLL 4: one floor 4,000 ft2: 0.25 + 15/63.246 = 0.48717, not below 0.5; two floors 8,000 ft2: 0.25 + 15/89.443 = 0.41771.
    expect(elementFactor).toBe(4);
    expect(stories.map((story) => story.influenceFt2)).toEqual([0, 4000, 8000]);
    expect(stories[0]).toMatchObject({liveKip: 0, roofKip: 20, floors: 0, reductions: []});
    expect(stories[1]?.liveKip).toBeCloseTo(25, 9);
    expect(stories[2]?.liveKip).toBeCloseTo(100 * (0.25 + 15 / Math.sqrt(8000)), 9);
    expect(stories[2]?.unreducedLiveKip).toBe(100);
  });

  test("combines: 1.4D, 1.2D + 1.6L + 0.5Lr and without the roof's, 1.2D + L + 1.6Lr, and service loads", () => {
    const {stories} = three();
    const foot = stories[2];
    const live = 100 * (0.25 + 15 / Math.sqrt(8000));
    expect(foot?.factored.map((load) => load.kip)).toEqual([
      1.4 * 339.4, 1.2 * 339.4 + 1.6 * live + 10, 1.2 * 339.4 + live + 32, 1.2 * 339.4 + 1.6 * live,
    ].map((kip) => expect.closeTo(kip, 9)));
    expect(foot?.service.map((load) => load.kip)).toEqual([
      339.4 + live, 359.4, 339.4 + 0.75 * (live + 20),
    ].map((kip) => expect.closeTo(kip, 9)));
    expect(foot?.governing.combination.name).toBe("1.2D + 1.6L + 0.5Lr");
    expect(foot?.governingService.combination.name).toBe("D + 0.75L + 0.75Lr");
    // Under the roof alone its own load leads; without any live load 1.4D does.
    expect(stories[0]?.governing.combination.name).toBe("1.2D + L + 1.6Lr");
    expect(down([floorLevel({livePsf: 0})]).stories[0]?.governing.combination.name).toBe("1.4D");
  });

  test("takes partitions whole, and counts each class of live load by its own floors", () => {
    const office = floorLevel({partitionPsf: 15});
    const storage = floorLevel({livePsf: 125, rule: "heavy"});
    const lobby = floorLevel({livePsf: 100, rule: "no"});
    const foot = down([office, storage, lobby, office, storage]).stories.at(-1);
    expect(foot?.reductions.map((part) => [part.liveClass, part.floors, part.influenceFt2])).toEqual([
      ["ordinary", 2, 8000], ["heavy", 2, 8000], ["whole", 1, 4000],
    ]);
    // Offices 100 x 0.41771 + 30 of partitions; storage 250 x 0.8; lobby 100.
    expect(foot?.liveKip).toBeCloseTo(100 * (0.25 + 15 / Math.sqrt(8000)) + 30 + 200 + 100, 9);
    expect(liveClass({rule: "yes", livePsf: 101})).toBe("heavy");
    expect(liveClass({rule: "garage", livePsf: 40})).toBe("garage");
    // Above 100 psf the rule of cars and of what is never reduced stays.
    expect((["yes", "garage", "no", "in full", "heavy"] as const).map((rule) => liveClass({rule, livePsf: 150}))).toEqual(["heavy", "garage", "whole", "whole", "heavy"]);
    expect(liveClass({rule: "yes", livePsf: 100})).toBe("ordinary");
    expect(down([floorLevel({partitionPsf: 15})]).stories[0]?.adds.liveKip).toBeCloseTo(65, 9);
  });

  test("takes a load of the reader's own that is not reduced in full, as what the code never reduces", () => {
    const foot = down([floorLevel({livePsf: 80, rule: "in full"}), floorLevel({livePsf: 80, rule: "in full"})]).stories[1];
    expect(foot?.liveKip).toBeCloseTo(160, 9);
    expect(foot?.reductions.map(({liveClass: name, reduction}) => [name, reduction.factor])).toEqual([["whole", 1]]);
  });

  test("gives each story the room that loads it most there, on every floor above it", () => {
    // 100 psf reducible: 50 kip under one floor (0.487, 0.5 at least), 83.5 under two, 120 under three (0.387, 0.4 at least).
    // 45 psf that is not: 45, 90, 135. Partitions of a third room count in full: 38 + 15.
    const [reducible, whole] = [{livePsf: 100, rule: "yes", partitionPsf: 0}, {livePsf: 45, rule: "no", partitionPsf: 0}] as const;
    const levels = [roofLevel(), floorLevel({name: "floor 4"}), floorLevel({name: "floor 3"}), floorLevel()];
    for (const rooms of [[reducible, whole], [whole, reducible]]) {
      const {stories} = down(levels, {rooms, columnPlf: 400});
      expect(stories.map(({liveKip}) => liveKip)).toEqual([0, 50, 90, 135].map((kip) => expect.closeTo(kip, 9)));
      expect(stories.map(({level}) => level.livePsf)).toEqual([20, 100, 45, 45]);
      expect(stories[1]?.reductions[0]).toMatchObject({liveClass: "ordinary", reduction: {factor: 0.5}});
      expect(stories.map(({deadKip}) => deadKip)).toEqual(down(levels, {columnPlf: 400}).stories.map(({deadKip}) => deadKip));
    }
    expect(down(levels, {rooms: [whole, {livePsf: 38, rule: "no", partitionPsf: 15}]}).stories.map(({liveKip}) => liveKip)).toEqual([0, 53, 106, 159].map((kip) => expect.closeTo(kip, 9)));
    refused(() => down(levels, {rooms: [{...whole, livePsf: -1}]}), {path: "levels.1.livePsf"});
  });

  test("tells the reduction of a class by its heaviest floor, and takes it off all of them", () => {
    for (const psf of [[50, 80, 60], [80, 50, 60], [50, 60, 80]]) {
      const [part] = down(psf.map((livePsf) => floorLevel({livePsf}))).stories[2]?.reductions ?? [];
      expect(part?.reduction.reducedPsf).toBeCloseTo(0.4 * 80, 9);
      expect(part?.liveKip).toBeCloseTo(0.4 * 190, 9);
    }
  });

  test("lets two storage floors of different weight lose a fifth each, one none", () => {
    const [one, two] = down([floorLevel({livePsf: 125, rule: "heavy"}), floorLevel({livePsf: 250, rule: "heavy"})]).stories;
    expect(one?.liveKip).toBeCloseTo(125, 9);
    expect(two?.liveKip).toBeCloseTo(0.8 * 375, 9);
  });

  test("never carries less further down, and never more live load than unreduced", () => {
    const levels = [roofLevel(), ...Array.from({length: 12}, (_, i) => floorLevel({name: `floor ${13 - i}`, partitionPsf: i % 2 ? 15 : 0}))];
    const tall = down(levels, {columnPlf: 300}).stories;
    tall.forEach((story, i) => {
      expect(story.liveKip).toBeLessThanOrEqual(story.unreducedLiveKip + 1e-9);
      if (i > 0) expect(story.governing.kip).toBeGreaterThan(tall[i - 1]?.governing.kip ?? Infinity);
    });
    expect(tall.at(-1)?.reductions[0]?.reduction.factor).toBe(0.4);
  });

  test("takes a lower element factor where the slab cantilevers", () => {
    expect(columnFactor("edge column")).toBe(4);
    expect([columnFactor("interior column", true), columnFactor("edge column", true), columnFactor("corner column", true)]).toEqual([4, 3, 2]);
    expect(down([floorLevel()], {position: "corner column", cantilever: true}).stories[0]?.influenceFt2).toBe(2000);
  });
});

describe("typicalLevels", () => {
  const levelsOf = (element: string) => {
    const areas = loadAreas({spanFt: 40, beamSpanFt: 30, baysAlong: 3, baysAcross: 2}, 10);
    const area = areas.find((entry) => entry.element === element);
    if (!area) throw new Error(element);
    return typicalLevels({area, floors: 3, storyHeightFt: 13, floor: floorLevel(), roof: roofLevel()});
  };

  test("gives each position its area and its length of beam", () => {
    expect(levelsOf("interior column")[1]).toMatchObject({tributaryFt2: 1200, beamLengthFt: 30});
    expect(levelsOf("edge column")[1]).toMatchObject({tributaryFt2: 600, beamLengthFt: 30});
    expect(levelsOf("corner column")[1]).toMatchObject({tributaryFt2: 300, beamLengthFt: 15});
  });

  test("puts the roof on top and names the floors from above", () => {
    expect(levelsOf("edge column").map((level) => [level.name, level.kind])).toEqual([
      ["roof", "roof"], ["floor 4", "floor"], ["floor 3", "floor"], ["floor 2", "floor"],
    ]);
    refused(() => typicalLevels({area: {tributary: {xFt: 0, yFt: 0, widthFt: 1, heightFt: 1}}, floors: 0, storyHeightFt: 12, floor: floorLevel()}), {path: "floors"});
    refused(() => typicalLevels({area: {tributary: {xFt: 0, yFt: 0, widthFt: 1, heightFt: 1}}, floors: 1.5, storyHeightFt: 12, floor: floorLevel()}), {path: "floors"});
    expect([roofLevel(), floorLevel()].map(levelWords)).toEqual(["the roof", "floor 2"]);
  });
});

test("levels that cannot be are refused, with level and field", () => {
  refused(() => down([]), {path: "levels"});
  refused(() => down(Array.from({length: 101}, () => floorLevel())), {path: "levels", allowed: "1 to 100 levels"});
  expect(down(Array.from({length: 100}, () => floorLevel())).stories).toHaveLength(100);
  refused(() => down([floorLevel({influenceFt2: 0})]), {path: "levels.0.influenceFt2"});
  refused(() => down([floorLevel({rule: "some" as "yes"})]), {path: "levels.0.rule", allowed: "yes, heavy, garage, no, in full"});
  refused(() => down([floorLevel(), floorLevel({livePsf: -50})]), {path: "levels.1.livePsf", message: /floor 2, live load: -50 psf/});
  refused(() => down([floorLevel({deckPsf: -1})]), {path: "levels.0.deckPsf"});
  refused(() => down([floorLevel({tributaryFt2: 0})]), {path: "levels.0.tributaryFt2"});
  refused(() => down([floorLevel({storyHeightFt: 5})]), {path: "levels.0.storyHeightFt", allowed: "7 to 60 ft"});
  refused(() => down([floorLevel({clearHeightFt: 14})]), {path: "levels.0.clearHeightFt", allowed: "1 to 12 ft"});
  refused(() => down([floorLevel()], {columnPlf: -1}), {path: "columnPlf"});
  refused(() => down([floorLevel()], {position: "middle" as "edge column"}), {path: "position"});
});

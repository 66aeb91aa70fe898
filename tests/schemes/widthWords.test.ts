import {describe, expect, test} from "vitest";
import {evaluate} from "../../lib/evaluate.js";
import {withValues} from "../../lib/design/edit.js";
import {briefOf} from "../../lib/schemes/brief.js";
import {measureNamed, type SchemeRow} from "../../lib/schemes/schemeRow.js";
import {schemeRows} from "../../lib/schemes/rows.js";
import {leadOf, leadsOf} from "../../lib/schemes/lead.js";
import {caseFor, goodReachFt, litReachFt, runsOf, savedAt, widthFindings, type WidthFacts} from "../../lib/schemes/widthWords.js";
import type {MeasureKey} from "../../lib/schemes/measures/schemeMeasures.js";
import {catalog, seed} from "../support/designs.js";
import {once} from "../support/once.js";

const FACTS: WidthFacts = {sides: "two", lightWanted: true, stallLengthIn: 216, aisleIn: 288};

/** A row as a scheme would have it, with some measures of its own. */
function row(span_ft: number, over: Partial<SchemeRow> = {}, measures: Partial<Record<MeasureKey, number>> = {}): SchemeRow {
  const head = {index: span_ft, span_ft, beam_span_ft: 30, bays_across: 1, bays_along: 6, kind: "field-topped tees", deck: "12DT32+2 108-S", edge: "ledge", girder: "", roof: "loads", deck_governs: "strength", governs_part: "deck", governs: "strength", fails: ""};
  const counted = {deckDepthIn: 34, floorToFloorFt: 14, goodDaylightPercent: 30, daylitPercent: 50, wallFt2PerFt2: 0.5, carbonKgPerFt2: 20, pieces: 50, parkingModules: 0, parkingStalls: 0, ...measures};
  return {...head, ...Object.fromEntries(Object.entries(counted).map(([key, value]) => [measureNamed(key as MeasureKey).column, value])), ...over};
}

const said = (rows: readonly SchemeRow[], topic: string, facts = FACTS) => widthFindings(rows, facts).find((one) => one.topic === topic)?.words ?? "";

describe("the scheme that leads at a span", () => {
  test("has the fewest failed checks, then the least carbon, then the lower number", () => {
    const failing = row(40, {index: 1, fails: "deck edge"}, {carbonKgPerFt2: 5});
    const heavy = row(40, {index: 2}, {carbonKgPerFt2: 21});
    const light = row(40, {index: 4}, {carbonKgPerFt2: 20});
    expect(leadOf([failing, heavy, light])).toBe(light);
    expect(leadOf([failing, row(40, {index: 9, fails: "a; b"})])).toBe(failing);
    expect(leadOf([light, row(40, {index: 3}, {carbonKgPerFt2: 20})])?.index).toBe(3);
    expect(leadOf([row(40, {deck: "", fails: "too weak"})])).toBeUndefined();
    expect(leadsOf([row(50), row(40), row(45, {deck: ""})]).map(({span_ft}) => span_ft)).toEqual([40, 50]);
  });
});

describe("the sentences", () => {
  test("say where a kind ends and why, and where it reaches everything", () => {
    const rows = [row(40), row(41, {deck: "", fails: "8DT32+2 88-S, the strongest: Carries 146 of the 160 psf required."}), row(40, {kind: "planks"}), row(41, {kind: "planks"})];
    expect(said(rows, "Reach")).toBe("Field-topped tees end at 40 ft (at 41 ft: 8DT32+2 88-S, the strongest: Carries 146 of the 160 psf required). Planks reach all of them.");
    expect(said([row(40), row(40, {kind: "planks", deck: "", fails: "Nothing does."})], "Reach")).toContain("Planks carry this floor over none of these spans (at 40 ft: nothing does).");
    expect(widthFindings([row(40, {deck: "", fails: "Nothing does."})], FACTS)[0]?.words).toMatch(/^No deck of these kinds .* Nothing does\.$/);
    expect(widthFindings([], FACTS)).toEqual([]);
  });

  test("name the check that fails most, and the spans at which all hold", () => {
    expect(said([row(40), row(41), row(42, {fails: "deck edge"}), row(43, {fails: "deck edge; room depth"}), row(44)], "Checks"))
      .toBe("All checks hold at 40 to 41 and 44 ft; elsewhere what fails most is \u201cdeck edge\u201d, at 2 of 5 spans.");
    expect(said([row(40, {fails: "room depth"})], "Checks")).toMatch(/^At no span do all checks hold: .*room depth/);
    expect(said([row(40)], "Checks")).toBe("All checks hold wherever a deck reaches.");
    expect(runsOf([20, 22, 23])).toBe("20 and 22 to 23 ft");
  });

  test("say where straight strand ends, also where it comes back", () => {
    const depressed = {deck: "12DT32+2 148-D1"};
    expect(said([row(40), row(60), row(61, depressed)], "Strands")).toMatch(/^Straight strand ends at 60 ft: from 61 ft on/);
    expect(said([row(40), row(60)], "Strands")).toBe("Straight strand does for all of them, up to 60 ft.");
    expect(said([row(40, depressed), row(60)], "Strands")).toMatch(/From 40 ft on some .* the last with straight strand spans 60 ft/);
    expect(said([row(40, depressed)], "Strands")).toMatch(/^From 40 ft on the strands are depressed/);
  });

  test("give the reach of light from each wall: a quarter of a 60 ft floor is 15 ft from one side, and half of it 15 ft from either", () => {
    const rows = [row(30, {}, {goodDaylightPercent: 100, daylitPercent: 100}), row(60, {}, {goodDaylightPercent: 25, daylitPercent: 50}), row(61, {}, {goodDaylightPercent: 24, daylitPercent: 49})];
    expect(goodReachFt(rows[1] as SchemeRow, {sides: "one"})).toBe(15);
    expect(goodReachFt(rows[1] as SchemeRow, FACTS)).toBe(7.5);
    expect(litReachFt(rows[1] as SchemeRow, FACTS)).toBe(15);
    expect(said(rows, "Light")).toBe("60 ft wide, good daylight reaches 8 ft in from each window wall, 25\u00a0% of the floor, and light to work by 15 ft, 50\u00a0%. Light to work by covers less than half of the floor from 61 ft of width on; at 61 ft it is 49\u00a0%.");
    expect(said([row(40, {}, {daylitPercent: 0})], "Light")).toMatch(/^No desk has daylight/);
    expect(said([row(40)], "Light")).toContain("Even at 40 ft light to work by covers 50\u00a0%.");
  });

  test("find where three quarters of the saving in walls are had", () => {
    // From 1.0 down to 0.2: three quarters of 0.8 are had at 0.4 and not at 0.41.
    const rows = [row(20, {}, {wallFt2PerFt2: 1}), row(50, {}, {wallFt2PerFt2: 0.41}), row(51, {}, {wallFt2PerFt2: 0.4}), row(100, {}, {wallFt2PerFt2: 0.2})];
    expect(savedAt(rows).row?.span_ft).toBe(51);
    expect(savedAt(rows).saved(rows[1] as SchemeRow)).toBeCloseTo(0.7375, 9);
    expect(said(rows, "Walls")).toContain("three quarters of that saving are had at 51 ft");
    expect(said([row(20), row(30)], "Walls")).toContain("width saves no walls here");
  });

  test("say from which span cars fit, and where they take the least floor", () => {
    const rows = [row(40, {}, {parkingStalls: 8}), row(60, {}, {parkingModules: 1, parkingStalls: 20, parkingFt2PerStall: 300}), row(66, {}, {parkingModules: 1, parkingStalls: 20, parkingFt2PerStall: 330})];
    expect(said(rows, "Cars")).toBe("Cars park below with two rows of 18'-0\" stalls and a 24'-0\" aisle from 60 ft of span on (one row alone from 40 ft); the least floor per stall, 300 ft\u00b2, is at 60 ft.");
    expect(said([row(40)], "Cars")).toMatch(/^Nowhere among these do two rows/);
  });
});

describe("the case for 60 ft", () => {
  const rows = () => [
    row(40, {}, {daylitPercent: 75, wallFt2PerFt2: 1, carbonKgPerFt2: 18}),
    row(60, {}, {daylitPercent: 50, wallFt2PerFt2: 0.4, carbonKgPerFt2: 19.8, parkingModules: 1}),
    row(80, {}, {daylitPercent: 37, wallFt2PerFt2: 0.2, carbonKgPerFt2: 25, parkingModules: 1}),
  ];

  test("is made of the rows: each point on the side where its limit puts it, both sides of every limit", () => {
    const all = caseFor(rows(), FACTS);
    expect(all.speaksAgainst).toEqual([]);
    expect(all.speaksFor).toHaveLength(6);
    expect(all.speaksFor[1]).toContain("no narrower building has room for one");
    const with60 = (measures: Partial<Record<MeasureKey, number>>, over: Partial<SchemeRow> = {}) => {
      const list = rows();
      list[1] = {...(list[1] as SchemeRow), ...Object.fromEntries(Object.entries(measures).map(([key, value]) => [measureNamed(key as MeasureKey).column, value])), ...over};
      return caseFor(list, FACTS).speaksAgainst.join();
    };
    expect(with60({daylitPercent: 49.9})).toContain("only 50");
    expect(with60({parkingModules: 0})).toContain("no module of parking fits below (the first at 80 ft)");
    expect(with60({wallFt2PerFt2: 0.41})).toContain("of what width saves in walls is saved yet");
    expect(with60({carbonKgPerFt2: 19.81})).toContain("above the least, at 40 ft");
    expect(with60({}, {deck: "12DT28+2 148-D1"})).toBe("12DT28+2 148-D1 needs depressed strand");
    expect(with60({}, {fails: "deck edge"})).toBe("a check fails: deck edge");
  });

  test("says from which walls light comes, and where the least carbon is", () => {
    expect(caseFor(rows(), FACTS).speaksFor[0]).toContain("in from each long side");
    expect(caseFor(rows(), {...FACTS, sides: "one"}).speaksFor[0]).toContain("in from the one side with windows");
    expect(said(rows(), "Carbon")).toBe("The least embodied carbon, 18.0 kg per square foot, is at 40 ft of span; at 80 ft it is 25.0 kg.");
    expect(said(rows().slice(0, 1), "Carbon")).toBe("The least embodied carbon, 18.0 kg per square foot, is at 40 ft of span, the longest.");
  });

  test("leaves light out where nobody works", () => {
    const cars = {...FACTS, lightWanted: false};
    expect(caseFor(rows(), cars).speaksFor).toHaveLength(5);
    expect(said(rows(), "Light", cars)).toMatch(/^Nobody works here/);
  });

  test("is of the building's width: two spans of 30 ft are 60 ft wide", () => {
    expect(caseFor([row(30, {bays_across: 2})], FACTS).row?.span_ft).toBe(30);
    expect(caseFor([row(60, {bays_across: 2})], FACTS)).toMatchObject({row: undefined, speaksFor: [], speaksAgainst: []});
    expect(caseFor([row(60, {deck: "", fails: "8DT32+2: too weak."})], FACTS).speaksAgainst).toEqual(["no deck of these kinds spans 60 ft (8DT32+2: too weak)"]);
  });
});

describe("facts of common practice, from whole buildings", () => {
  /** A classroom wing with one clear span, windows on both long sides. */
  const design = once(() => withValues(seed("classroom-wing"), {"bay.baysAcross": 1, "daylight.sides": "two"}));
  const rows = once(() => {
    const ceilingFt = evaluate(design(), catalog).story.ceilingHeightIn / 12;
    const brief = briefOf(design(), ceilingFt, {spansFt: [59, 60], kinds: ["fieldToppedTees"]});
    return [...schemeRows(catalog, {brief, order: [0, 1], columns: false, ownFactors: {}, prices: {}})] as [SchemeRow, SchemeRow];
  });

  // The rule of practice is a depth of one and a half times the head of the glass, 10 ft up: 15 ft. It lies between the
  // light that one may call good, 5 % of that outdoors, and the light to work by, 2 %.
  test("a building 60 ft wide has about 15 ft of daylight at each long side", () => {
    const [, wide] = rows();
    expect(evaluate(design(), catalog).daylight?.result.headHeightFt.leastFt).toBeCloseTo(15, -0.5);
    expect(goodReachFt(wide, FACTS)).toBeLessThan(15);
    expect(goodReachFt(wide, FACTS)).toBeGreaterThan(8);
    expect(litReachFt(wide, FACTS)).toBeGreaterThan(15);
    expect(litReachFt(wide, FACTS)).toBeLessThan(20);
  });

  test("two rows of stalls and an aisle fit 60 ft and not 59", () => {
    const [narrow, wide] = rows();
    expect(narrow["parking_modules"]).toBe(0);
    expect(wide["parking_modules"]).toBe(1);
    expect(caseFor(rows(), FACTS).speaksFor).toContain("a module of parking fits below, and no narrower building has room for one");
  });
});

import {describe, expect, test} from "vitest";
import {compareDesign, compareDesigns, type ComparedDesign} from "../../lib/compare/column.js";
import {COMPARED_MEASURES} from "../../lib/compare/measures.js";
import {difference} from "../../lib/compare/difference.js";
import {measureRows, isAlike, standingsOf} from "../../lib/compare/standings.js";
import {safeLoad} from "../../lib/deck/safeLoad.js";
import {withValue, withValues} from "../../lib/design/edit.js";
import {columnsOf, evaluate} from "../../lib/evaluate.js";
import {catalog, seeds} from "../support/designs.js";

const library = (seeds.find(({id}) => id === "branch-library") as (typeof seeds)[number]).design;
const by = {factors: catalog.carbonFactors, prices: {}};

describe("a design that is compared", () => {
  test.each(seeds.map(({id, design}) => [id, design] as const))("%s has its checks, columns' included, its curves, and numbers for its measures", (_, design) => {
    const found = compareDesign(design, catalog, by);
    const evaluation = evaluate(design, catalog);
    const checks = [...evaluation.checks, ...columnsOf(evaluation, catalog).checks];
    expect(found.fails).toEqual(checks.filter(({verdict}) => verdict === "fails").map(({label}) => label));
    expect(found.uncovered).toEqual(checks.filter(({verdict}) => verdict === "out of range").map(({label}) => label));
    for (const measure of COMPARED_MEASURES) {
      const value = measure.read(found.measures);
      if (value !== undefined) expect(Number.isFinite(value), measure.key).toBe(true);
    }
    expect(COMPARED_MEASURES.filter((measure) => measure.read(found.measures) !== undefined).length).toBeGreaterThan(8);
    const {safeLoad: curve, spanFt, demandPsf} = found.curves;
    expect([spanFt, demandPsf]).toEqual([design.bay.spanFt, evaluation.deck.demandPsf]);
    for (const {spanFt: at, psf} of curve.slice(0, 5)) expect(psf).toBe(safeLoad(evaluation.member, at, evaluation.deck.criteria).safeLoadPsf);
    // Plain data, as it goes from the worker to the page.
    expect(structuredClone(found)).toEqual(found);
  });

  test("that fails says of what, and one without glass has no curve of daylight", () => {
    const long = compareDesign(withValue(library, "bay.spanFt", 60), catalog, by);
    expect(long.fails.length).toBeGreaterThan(0);
    const dark = withValues(library, {"story.floorToFloorFt": 8, "edgeBeam.upstandIn": 60});
    expect(evaluate(dark, catalog).daylight).toBeUndefined();
    expect(compareDesign(dark, catalog, by).curves.daylight).toEqual([]);
    // One with glass has its daylight at every place that was computed.
    const points = evaluate(library, catalog).daylight?.result.points ?? [];
    expect(points.length).toBeGreaterThan(10);
    expect(compareDesign(library, catalog, by).curves.daylight).toEqual(points.map(({distanceFt, factorPercent}) => ({distanceFt, percent: factorPercent})));
  });
});

describe("several designs", () => {
  test("are handed over one after the other, and one that cannot be computed says why and stops none", () => {
    const broken = {...library, deck: {...library.deck, member: "99XX99"}};
    const steps = [...compareDesigns(catalog, {designs: [library, broken, withValue(library, "bay.spanFt", 36)], by})];
    expect(steps.map(({index}) => index)).toEqual([0, 1, 2]);
    expect(steps[0]?.found).toEqual(compareDesign(library, catalog, by));
    expect(steps[1]?.found).toMatchObject({problem: expect.stringContaining("99XX99") as string});
    expect((steps[2]?.found as ComparedDesign).curves.spanFt).toBe(36);
  });
});

test("what is no fault of a design is not said to be one", () => {
  const lost = {...catalog, get strands(): never { throw new RangeError("a table is lost"); }};
  expect(() => [...compareDesigns(lost, {designs: [withValue(library, "bay.spanFt", 39)], by})]).toThrow(RangeError);
});

describe("rows of measures", () => {
  const own = compareDesign(library, catalog, by).measures;
  const longer = compareDesign(withValue(library, "bay.spanFt", 44), catalog, by).measures;

  test("beside itself are all alike", () => {
    expect(measureRows(own, [own]).every(isAlike)).toBe(true);
    expect(new Set(standingsOf(own, own))).toEqual(new Set(["alike"]));
  });

  test("turn round when the two designs change places", () => {
    const opposite = {better: "worse", worse: "better", more: "less", less: "more", alike: "alike", "not comparable": "not comparable"} as const;
    expect(standingsOf(longer, own)).toEqual(standingsOf(own, longer).map((standing) => opposite[standing]));
    expect(standingsOf(own, longer)).toContain("worse");
  });

  test("are of totals with columns, and none of these is a total without them", () => {
    const names = COMPARED_MEASURES.map(({name}) => name);
    expect(names.filter((name) => /without columns|columns not counted/.test(name))).toEqual([]);
    for (const {withoutColumns} of COMPARED_MEASURES) expect(COMPARED_MEASURES.map(({key}) => key)).not.toContain(withoutColumns ?? "none");
    expect(names).toEqual(expect.arrayContaining(["cost", "embodied carbon", "dead load on the ground"]));
  });

  test("have cost only where all that are computed have it: beside one without it would read as if the other cost nothing", () => {
    const cost = (open: number | undefined, ...others: readonly (number | undefined | "not computed")[]) =>
      measureRows({...own, costPerFt2: open}, others.map((value) => (value === "not computed" ? undefined : {...own, costPerFt2: value}))).some(({measure}) => measure.key === "costPerFt2");
    expect([cost(50, 60), cost(50, 60, 70), cost(50, "not computed"), cost(50, 60, "not computed")]).toEqual([true, true, true, true]);
    expect([cost(50, undefined), cost(50, 60, undefined), cost(undefined, 60), cost(undefined, "not computed")]).toEqual([false, false, false, false]);
    // What is no cost stays, though only one has it.
    expect(measureRows({...own, parkingFt2PerStall: undefined}, [{...own, parkingFt2PerStall: 300}]).some(({measure}) => measure.key === "parkingFt2PerStall")).toBe(true);
  });

  test("are alike only where every other design is, and count no part beside its total", () => {
    const row = (...values: readonly (number | undefined)[]) => ({measure: COMPARED_MEASURES[0] as (typeof COMPARED_MEASURES)[number], open: 4, others: values.map((value) => ({value, difference: difference({better: "less", decimals: 1}, 4, value)}))});
    expect([row(4, 4), row(4, 3), row(3, 4), row(3, 3), row(undefined), row()].map(isAlike)).toEqual([true, false, false, false, false, true]);
    const whole = measureRows(own, [longer]).filter(({measure: {partOf}}) => partOf === undefined);
    expect(whole.length).toBeLessThan(measureRows(own, [longer]).length);
    expect(standingsOf(own, longer)).toEqual(whole.map(({others}) => others[0]?.difference.standing));
  });

  test("leave out what no design has, and say of one that is missing only that", () => {
    const [first] = COMPARED_MEASURES;
    const without = {...own, [first?.key ?? ""]: undefined} as typeof own;
    expect(measureRows(without, [without]).some(({measure}) => measure === first)).toBe(false);
    expect(measureRows(without, [own])[0]).toMatchObject({measure: first, open: undefined, others: [{difference: {standing: "not comparable"}}]});
    // What only one of the others has is still a row.
    expect(measureRows(without, [own, undefined])[0]).toMatchObject({measure: first, open: undefined});
    expect(measureRows(own, [undefined])[0]?.others).toEqual([{value: undefined, difference: {standing: "not comparable", by: 0, share: undefined}}]);
  });
});

import {describe, expect, test} from "vitest";
import {validateDesign} from "../../lib/design/validate.js";
import {InputError} from "../../lib/errors.js";
import {columnsOf, evaluate} from "../../lib/evaluate.js";
import {checkAsked, type FirstAsked} from "../../lib/schemes/firstAsked.js";
import {firstBrief} from "../../lib/schemes/firstBrief.js";
import {comesBefore, firstDesign, type FirstDesign, type FirstProgress} from "../../lib/schemes/firstDesign.js";
import {gridOf} from "../../lib/schemes/grid.js";
import {measuresOf} from "../../lib/schemes/measures.js";
import {schemesOf} from "../../lib/schemes/scheme.js";
import {measureNamed, type SchemeRow} from "../../lib/schemes/schemeRow.js";
import {nothingHolds, stopsOf} from "../../lib/schemes/stops.js";
import {catalog} from "../support/designs.js";
import {once} from "../support/once.js";

const SMALL: FirstAsked = {occupancy: "classroom", lengthFt: 60, across: {widthFt: 30}, stories: 3, ceilingFt: 9};

function made(asked: FirstAsked, ownFactors: Record<string, number> = {}): {found: FirstDesign; told: FirstProgress[]} {
  const work = firstDesign(catalog, {asked, ownFactors});
  const told: FirstProgress[] = [];
  let step = work.next();
  for (; !step.done; step = work.next()) told.push(step.value);
  return {found: step.value, told};
}

function refused(changes: Partial<FirstAsked>): InputError {
  try {
    checkAsked({...SMALL, ...changes});
  } catch (problem) {
    if (problem instanceof InputError) return problem;
    throw problem;
  }
  throw new Error("it was accepted");
}

describe("the brief of one who begins from nothing", () => {
  test("divides the length evenly into beams of 20 to 40 ft, six spans at most", () => {
    const spans = (lengthFt: number) => firstBrief({...SMALL, lengthFt}, catalog).vary.beamSpansFt;
    // 180/5, 180/6, 180/7, 180/8, 180/9.
    expect(spans(180).map((span) => Number(span.toFixed(4)))).toEqual([36, 30, 25.7143, 22.5, 20]);
    expect(spans(20)).toEqual([20]);
    expect(spans(40)).toEqual([40, 20]);
    expect(spans(39.9)).toEqual([39.9]);
    // 15 to 30 bays, of which six: each three more.
    expect(spans(600).map((span) => 600 / span)).toEqual([15, 18, 21, 24, 27, 30]);
    for (const lengthFt of [20, 37, 61, 99.5, 241, 599]) {
      for (const span of spans(lengthFt)) {
        expect(span).toBeGreaterThanOrEqual(20);
        expect(span).toBeLessThanOrEqual(40);
        expect(Math.abs(lengthFt / span - Math.round(lengthFt / span))).toBeLessThan(1e-9);
      }
    }
  });

  test("spans the width in one bay and in two, and in more where two are long", () => {
    const bays = (widthFt: number) => firstBrief({...SMALL, across: {widthFt}}, catalog).vary.baysAcross;
    expect(bays(16)).toEqual([1]);
    expect(bays(60)).toEqual([1, 2]);
    expect(bays(80)).toEqual([1, 2]);
    expect(bays(81)).toEqual([1, 2, 3]);
    expect(bays(120)).toEqual([2, 3]);
    expect(bays(240)).toEqual([3, 4, 5, 6]);
  });

  test("takes the width from the area of a floor", () => {
    const grid = gridOf(firstBrief({...SMALL, lengthFt: 180, across: {floorFt2: 10_800}}, catalog), catalog);
    expect(new Set(Array.from({length: grid.count}, (_, i) => grid.at(i).spanFt))).toEqual(new Set([60, 30]));
    // Four decks (planks bare and topped, tees topped and pretopped), five beam spans, one bay and two.
    expect(grid.count).toBe(4 * 5 * 2);
  });

  test.each(catalog.occupancies)("is one that can be read for $id", ({id, partitions, sustainedShare}) => {
    const {base} = firstBrief({...SMALL, occupancy: id}, catalog);
    expect(base.loads.rooms).toMatchObject([{occupancy: id}]);
    expect(base.loads.partitions).toBe(partitions);
    expect(base.criteria.sustainedLiveShare).toBe(sustainedShare);
    expect(base.bay.floors).toBe(2);
    expect([base.story.ceiling, base.parking.place]).toEqual(id === "garage" ? ["none", "on"] : ["flush", "none"]);
  });

  test.each([
    [{lengthFt: 19}, "lengthFt", "20 to 600 ft"], [{lengthFt: 601}, "lengthFt", "20 to 600 ft"], [{lengthFt: NaN}, "lengthFt", "20 to 600 ft"],
    [{across: {widthFt: 15}}, "widthFt", "16 to 240 ft"], [{across: {floorFt2: 399}}, "floorFt2", "400 to 100000 ft2"],
    // 6000 ft2 over 60 ft are 100 ft; 600 are 10, and 15,000 are 250.
    [{across: {floorFt2: 600}}, "floorFt2", "16 to 240 ft"], [{across: {floorFt2: 15_000}}, "floorFt2", "16 to 240 ft"],
    [{stories: 1}, "stories", "2 to 13"], [{stories: 2.5}, "stories", "whole number"], [{ceilingFt: 6.9}, "ceilingFt", "7 to 30 ft"],
  ] as const)("%j is refused with what is allowed", (changes, path, allowed) => {
    const problem = refused(changes);
    expect(problem.path).toBe(path);
    expect(problem.message).toContain(allowed);
  });

  test("what just meets its limits is accepted, and an unknown use is named", () => {
    for (const changes of [{lengthFt: 20}, {lengthFt: 600}, {across: {widthFt: 16}}, {across: {floorFt2: 6000}}, {stories: 13}, {ceilingFt: 7}] as const) {
      expect(checkAsked({...SMALL, ...changes})).toMatchObject(changes);
      expect(firstBrief({...SMALL, ...changes}, catalog).name).toContain("Classroom");
    }
    expect(() => firstBrief({...SMALL, occupancy: "ballroom"}, catalog)).toThrow(/ballroom/);
  });
});

describe("the first design", () => {
  const small = once(() => made(SMALL));

  test("is, of all schemes of which every check holds, the one with the least carbon", () => {
    const {found, told} = small();
    const schemes = schemesOf(firstBrief(SMALL, catalog), catalog, {columns: true});
    const all = Array.from({length: schemes.count}, (_, i) => schemes.at(i)).flatMap((scheme) => ("none" in scheme ? [] : [scheme]));
    const good = all.filter(({fails}) => fails.length === 0);
    const carbon = good.map(({floor, columns}) => measuresOf(floor, columns, {factors: catalog.carbonFactors, prices: {}}).carbonKgPerFt2 ?? Infinity);
    const best = good[carbon.indexOf(Math.min(...carbon))];
    expect(good.length).toBeGreaterThan(1);
    expect(found).toMatchObject({tried: schemes.count, holding: good.length, fails: []});
    expect(found.design?.bay).toEqual(best?.design.bay);
    expect(found.design?.deck).toEqual(best?.design.deck);
    expect(found.finding).toContain(`${Math.min(...carbon).toFixed(1)} kg`);
    expect(found.finding).toMatch(/^Of \d+ whole buildings, all sized by the same rules, \d+ pass all checks; the one with the least embodied carbon, columns and footings counted, is chosen: \S+ \S+ spans [^.]+ onto beams of [^.]+, (one bay|2 bays) across and \d along, at [\d.]+ kg of CO\u2082e per square foot\.$/);
    expect(told.map(({made: count}) => count)).toEqual(Array.from({length: schemes.count}, (_, i) => i + 1));
  });

  test("can be opened, and then passes the checks that it is said to pass", () => {
    const {found} = small();
    const read = validateDesign(structuredClone(found.design));
    const floor = evaluate(read, catalog);
    expect([...floor.checks, ...columnsOf(floor, catalog).checks].filter(({verdict}) => verdict === "fails")).toEqual([]);
    expect(read.name).toBe("Classroom, 30 by 60 ft");
    expect(read.brief).toContain("3 stories of 30 ft by 60 ft");
    expect(floor.story.ceilingHeightIn).toBeGreaterThanOrEqual(9 * 12 - 1e-9);
    expect(read.bay.beamSpanFt * read.bay.baysAlong).toBeCloseTo(60, 9);
    expect(read.bay.spanFt * read.bay.baysAcross).toBeCloseTo(30, 9);
  });

  test("says what each rule chose", () => {
    const {found} = small();
    expect(found.rules.map(({decision}) => decision)).toEqual(["deck", "edge beam", "girders and columns", "story"]);
    for (const {words} of found.rules) expect(words).toMatch(/^[A-Z\d][^]*\.$/);
    expect(found.rules[0]?.words).toContain(found.design?.deck.member);
    expect(structuredClone(found)).toEqual(found);
  });

  test("counts the reader's own factors", () => {
    const ids = Object.fromEntries(catalog.carbonFactors.map(({id, kgPerUnit}) => [id, 2 * kgPerUnit]));
    const kg = (words: string) => Number(/at ([\d.]+) kg/.exec(words)?.[1]);
    expect(kg(made(SMALL, ids).found.finding) / kg(small().found.finding)).toBeCloseTo(2, 1);
  });
});

describe("where no scheme holds", () => {
  test("it says what stops the most, and which checks fail in the nearest", () => {
    // Cars whose owners may be in vans: 7 ft are clear, 8'-2" are required.
    const {found} = made({...SMALL, occupancy: "garage", lengthFt: 120, across: {widthFt: 60}, ceilingFt: 7});
    expect(found.holding).toBe(0);
    expect(found.finding).toMatch(/^None of the \d+ schemes holds/);
    expect(found.finding).not.toContain("would hold but for that no deck");
    expect(found.fails.map(({label}) => label).join()).toContain("accessible vans");
    expect(found.design?.parking.place).toBe("on");
  });

  test("a scheme without a deck is not said to hold but for its deck, for nothing else of it is known", () => {
    const row = (deck: string, fails: string): SchemeRow => ({index: 0, span_ft: 60, beam_span_ft: 30, bays_across: 1, bays_along: 2, kind: "planks", deck, edge: "ledge", girder: "", roof: "loads", deck_governs: "", governs_part: "", governs: "", fails});
    const rows = [row("", "too far"), row("", "too far"), row("12DT32+2 188-S", "shear")];
    expect(stopsOf(rows)).toEqual([{id: "no deck", schemes: 2, alone: 0}, {id: "shear", schemes: 1, alone: 1}]);
    expect(nothingHolds(rows)).toBe("None of the 3 schemes holds: in 2 of them no deck of the kind carries the span; what would have to give: shorter deck spans, a lighter load or another kind of deck. 1 would hold but for that \"shear\" fails.");
  });

  test("what would have to give is named for a garage too narrow for cars, by the check that stops the most", () => {
    const {found} = made({...SMALL, occupancy: "garage", lengthFt: 120, across: {widthFt: 40}, ceilingFt: 9});
    expect(found.holding).toBe(0);
    expect(found.finding).toMatch(/"parking module" fails; what would have to give: deck spans of about 60 ft/);
  });

  test("fewer failing checks come before less carbon, and less carbon decides between equals", () => {
    const row = (fails: string, carbon: number | undefined): SchemeRow => ({index: 0, span_ft: 60, beam_span_ft: 30, bays_across: 1, bays_along: 2, kind: "planks", deck: "x", edge: "ledge", girder: "", roof: "loads", deck_governs: "", governs_part: "", governs: "", fails, [measureNamed("carbonKgPerFt2").column]: carbon});
    expect(comesBefore(row("", 20), row("shear", 10))).toBe(true);
    expect(comesBefore(row("shear; sag", 5), row("shear", 10))).toBe(false);
    expect(comesBefore(row("", 9), row("", 10))).toBe(true);
    expect(comesBefore(row("", 10), row("", 10))).toBe(false);
    expect(comesBefore(row("", undefined), row("", 10))).toBe(false);
    // Where a column has no size, what the rest takes decides.
    const without = (carbon: number) => ({...row("", undefined), [measureNamed("carbonWithoutColumnsKgPerFt2").column]: carbon});
    expect([comesBefore(without(9), without(10)), comesBefore(without(10), without(9)), comesBefore(row("", 30), without(9))]).toEqual([true, false, true]);
  });
});

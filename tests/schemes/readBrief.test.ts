import {readFileSync} from "node:fs";
import {join} from "node:path";
import {describe, expect, test} from "vitest";
import {InputError} from "../../lib/errors.js";
import {gridOf} from "../../lib/schemes/grid.js";
import {briefFrom, readBrief} from "../../lib/schemes/readBrief.js";
import {schemesOf} from "../../lib/schemes/scheme.js";
import {catalog} from "../support/designs.js";

const TEXT = readFileSync(join(import.meta.dirname, "../../seeds/briefs/teaching-building.json"), "utf8");
const content = (): Record<string, unknown> => JSON.parse(TEXT) as Record<string, unknown>;

function refused(changes: Record<string, unknown>): InputError {
  try {
    briefFrom({...content(), ...changes}, catalog);
  } catch (problem) {
    if (problem instanceof InputError) return problem;
    throw problem;
  }
  throw new Error("the brief was accepted");
}

describe("the starter brief", () => {
  test("asks for a teaching building of 60 by 180 ft with three stories", () => {
    const brief = readBrief(TEXT, catalog);
    expect(brief.outline).toEqual({lengthFt: 180, widthFt: 60});
    // Three stories: two floors are carried, and the roof.
    expect(brief.base.bay.floors).toBe(2);
    const grid = gridOf(brief, catalog);
    const spans = new Set(Array.from({length: grid.count}, (_, i) => grid.at(i).spanFt));
    expect([...spans].sort((a, b) => a - b)).toEqual([30, 60]);
  });
});

describe("a brief that cannot be used says which field and what is allowed", () => {
  test.each([
    [{version: 2}, "version", "1"],
    [{building: {lengthFt: 180}}, "stories", "2 to 13"],
    [{building: {lengthFt: 180, widthFt: 60, floorFt2: 10800, stories: 3}}, "building.lengthFt", "two of lengthFt, widthFt and floorFt2"],
    [{building: {widthFt: 60, stories: 3}}, "building.lengthFt", "two of"],
    [{ceilingFt: 6}, "ceilingFt", "7 to 30 ft"],
    [{floorToFloorFt: 14}, "ceilingFt", "not both"],
    [{rooms: []}, "rooms", "a list of 1 to 12 entries"],
    [{rooms: undefined}, "rooms", "a list of 1 to 12 entries"],
    [{rooms: [{name: "Hall", occupancy: "ballroom"}]}, "rooms.0.occupancy", "classroom"],
    [{fixed: {"bay.spanFt": 60}}, "fixed.bay.spanFt", "neither choices nor rules"],
    [{fixed: {"edgeBeam.ledgeDepthIn": 9}}, "fixed.edgeBeam.ledgeDepthIn", "neither choices nor rules"],
    [{fixed: {"criteria.firehours": "1"}}, "fixed.criteria.firehours", "path of a field"],
    [{fixed: {"criteria.fireHours": "5"}}, "fixed.criteria.fireHours", "0, 1, 2"],
    [{vary: {spanFt: [60]}}, "vary.spanFt", "none where the building's width is fixed"],
    [{vary: {beamSpanFt: [300]}}, "vary.beamSpanFt.0", "8 to 80 ft"],
    [{vary: {beamSpanFt: {from: 20, to: 60, by: 0.001}}}, "vary.beamSpanFt.by", "ft"],
    [{vary: {edge: ["shelf"]}}, "vary.edge.0", "ledge, pockets, below"],
    [{vary: {deck: ["12DT99"]}}, "vary.deck.0", "12DT32"],
    [{vary: {spans: [60]}}, "vary.spans", "no field of this name"],
    [{vary: {baysAcross: [10]}}, "vary", "a width of 60 ft gives no deck span of 10 to 150 ft"],
    [{prices: {deckPerYd: 1}}, "prices.deckPerYd", "deckPerYd3"],
    [{cost: 1}, "cost", "no field of this name"],
  ])("%j", (changes, path, allowed) => {
    const problem = refused(changes);
    expect(problem.path).toContain(path);
    expect(problem.message).toContain(allowed);
  });
});

describe("common practice", () => {
  test("12 ft tees span 60 ft under 80 to 85 psf as 12DT28+2 with depressed strand or 12DT32+2 with straight; who avoids depressed strand takes the deeper", () => {
    const brief = (vary: Record<string, unknown>) => briefFrom({
      ...content(), rooms: [{name: "Studios", occupancy: "classroom"}], layers: [{name: "Finish, ceiling and services", loadPsf: 35}],
      vary: {baysAcross: 1, beamSpanFt: 36, toppingIn: 2, edge: "ledge", strengthPsi: [5000, 6000], ...vary},
    }, catalog);
    const decks = (vary: Record<string, unknown>) => {
      const schemes = schemesOf(brief(vary), catalog);
      return Array.from({length: schemes.count}, (_, i) => schemes.at(i)).flatMap((scheme) => ("none" in scheme ? [] : [scheme]));
    };
    const each = decks({deck: ["12DT28", "12DT32"], strand: ["straight", "depressed"]});
    const [required] = each.map(({floor}) => floor.deck.demandPsf);
    expect(required).toBeGreaterThanOrEqual(80);
    expect(required).toBeLessThanOrEqual(85);
    const working = each.filter(({fails}) => !fails.some(({id}) => id.startsWith("deck"))).map(({design: {deck}}) => `${deck.member} ${deck.pattern.endsWith("-S") ? "straight" : "depressed"}`);
    expect(working).toContain("12DT28 depressed");
    expect(working).toContain("12DT32 straight");
    expect(working).not.toContain("12DT28 straight");
    // The preferences of the brief count a depressed strand against a deck.
    const [chosen] = decks({deck: ["field-topped tees"], strengthPsi: 5000});
    expect(chosen?.design.deck).toMatchObject({pattern: expect.stringMatching(/-S$/)});
    expect(chosen?.floor.member.compression.depthIn).toBeGreaterThanOrEqual(34);
    // Every deck check holds with it, stripping and the topping's true weight included.
    expect(chosen?.fails).toEqual([]);
  });

  test("34 in of deck, an 8 in ledge and a 30 in upstand make a 72 in beam, and 14'-8\" leaves an 11'-2\" ceiling", () => {
    const schemes = schemesOf(briefFrom({...content(), ceilingFt: 11, vary: {baysAcross: 1, beamSpanFt: [20, 24, 30], deck: ["12DT32", "10DT32"], toppingIn: 2, edge: "ledge"}}, catalog), catalog);
    const all = Array.from({length: schemes.count}, (_, i) => schemes.at(i)).flatMap((scheme) => ("none" in scheme ? [] : [scheme]));
    expect(all.length).toBeGreaterThan(0);
    for (const {design, floor} of all) {
      expect(floor.edgeBeam.depthIn).toBe(34 + design.edgeBeam.ledgeDepthIn + 30);
      const {floorToFloorIn, finishIn, plenumIn, ceilingHeightIn} = floor.story;
      expect(floorToFloorIn - finishIn - 34 - plenumIn).toBeCloseTo(ceilingHeightIn, 9);
      // The wanted ceiling, and less than a step of 3 in more.
      expect(ceilingHeightIn).toBeGreaterThanOrEqual(132);
      expect(ceilingHeightIn).toBeLessThan(135);
    }
  });
});

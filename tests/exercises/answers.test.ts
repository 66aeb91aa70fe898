import {describe, expect, test} from "vitest";
import {withValues} from "../../lib/design/edit.js";
import {evaluate, type Evaluation} from "../../lib/evaluate.js";
import {GUESSES, overHalfSpan, type GuessName} from "../../lib/exercises/guesses.js";
import {catalog, seed} from "../support/designs.js";

const evaluated = (id: string, changes: Readonly<Record<string, unknown>> = {}) => evaluate(withValues(seed(id), changes), catalog);
const library = (changes: Readonly<Record<string, unknown>> = {}) => evaluated("branch-library", changes);
/** The values of a guess's slips by a word of what is said to each. */
function slip(name: GuessName, evaluation: Evaluation, words: string): number | undefined {
  return GUESSES[name].mistakes(evaluation).find(({message}) => message.includes(words))?.value;
}

describe("the answer to a guess", () => {
  test("on the floor's demand is its live and superimposed dead load together", () => {
    // Stacks 150 psf, and layers of 1 + 2 + 5 + 2 psf.
    expect(GUESSES.demand.answer(library())).toBeCloseTo(160, 9);
    expect(slip("demand", library(), "live load alone")).toBeCloseTo(150, 9);
    // By 1.2 dead and 1.6 live load, what the tee and its topping weigh with them.
    const {deck, member} = library();
    const ownPsf = (member.selfWeightPlf + member.toppingWeightPlf) / 10;
    expect(slip("demand", library(), "factored load")).toBeCloseTo(1.2 * (10 + ownPsf) + 1.6 * 150, 9);
    expect(deck.demandPsf).toBe(GUESSES.demand.answer(library()));
  });

  test("on the column's live load is 25 % and 15 over the root of its influence area, whatever column is the largest", () => {
    const share = (influenceFt2: number) => 100 * (0.25 + 15 / Math.sqrt(influenceFt2));
    const bay = 28 * 24;
    const answer = (changes: Readonly<Record<string, unknown>>) => GUESSES.columnReduction.answer(evaluated("classroom-wing", changes));
    // Two floors; an influence area of four bays, two or one on each.
    expect(answer({})).toBeCloseTo(share(2 * 4 * bay), 6);
    expect(answer({"bay.baysAcross": 1})).toBeCloseTo(share(2 * 2 * bay), 6);
    expect(answer({"bay.baysAlong": 1})).toBeCloseTo(share(2 * 2 * bay), 6);
    expect(answer({"bay.baysAlong": 1, "bay.baysAcross": 1})).toBeCloseTo(share(2 * bay), 6);
  });

  test("on the column's live load is no less than all of it under one heavy floor, whose rule lets nothing go", () => {
    const [all] = GUESSES.columnReduction.mistakes(library());
    expect(GUESSES.columnReduction.answer(library())).toBe(100);
    expect(all).toEqual({value: 100, message: "All of it: but check the rule for this kind of room."});
    expect(slip("columnReduction", evaluated("classroom-wing"), "full on the same day")).toBe(100);
  });

  test("on the concrete as a flat slab is the section's area over its width, and the topping", () => {
    const {member} = library();
    expect(GUESSES.flatSlabThickness.answer(library())).toBeCloseTo(member.section.areaIn2 / 120 + 2, 9);
    expect(slip("flatSlabThickness", library(), "precast piece alone")).toBeCloseTo(member.section.areaIn2 / 120, 9);
    expect(slip("flatSlabThickness", library(), "much of it is air")).toBe(34);
    expect(GUESSES.deckDepth.answer(library())).toBe(34);
    expect(slip("deckDepth", library(), "member alone")).toBe(32);
  });

  test("on the losses is their share of three quarters of 270 ksi, with which the strands are pulled", () => {
    const lostKsi = slip("lossShare", library(), "in ksi") ?? NaN;
    expect(GUESSES.lossShare.answer(library())).toBeCloseTo((100 * lostKsi) / (0.75 * 270), 9);
  });

  test("on half the span is the safe load there, and no span below 10 ft is asked for", () => {
    expect(overHalfSpan(library()).spanFt).toBe(20);
    const short = library({"bay.spanFt": 16});
    expect(overHalfSpan(short).spanFt).toBe(10);
    expect(GUESSES.halfSpan.answer(library())).toBe(overHalfSpan(library()).safeLoadPsf);
    // A moment that the span's square makes grants (16/10)^2 times all load there, its own weight among it.
    const {member, deck} = short;
    const ownPsf = (member.selfWeightPlf + member.toppingWeightPlf) / member.widthFt;
    expect(slip("halfSpan", short, "same limit")).toBeCloseTo(2.56 * (ownPsf + deck.safe.safeLoadPsf) - ownPsf, 6);
    expect(slip("halfSpan", short, "Twice as much")).toBeCloseTo(2 * deck.safe.safeLoadPsf, 9);
  });

  test("on camber and on neighbors at midspan is what stands there when the crane has set them", () => {
    const {deck, joint} = evaluated("parking-structure");
    expect(GUESSES.erectionCamber.answer(evaluated("parking-structure"))).toBe(deck.camber.erectionIn);
    expect(slip("erectionCamber", evaluated("parking-structure"), "strands are cut")).toBe(deck.camber.releaseIn);
    expect(GUESSES.neighborStep.answer(evaluated("parking-structure"))).toBe(joint?.meanIn);
    expect(slip("neighborStep", evaluated("parking-structure"), "each of them cambers")).toBe(deck.camber.erectionIn);
    // A quarter inch for each 10 ft, three quarters at the most.
    expect(slip("neighborStep", evaluated("parking-structure"), "trade lets")).toBe(0.75);
    expect(slip("neighborStep", evaluated("classroom-wing"), "trade lets")).toBeCloseTo(0.7, 9);
  });

  test("on the topping is none where none is cast, and has no slips", () => {
    expect(GUESSES.toppingVolume.answer(library())).toBe(library().topping?.bayYd3);
    expect(GUESSES.toppingVolume.answer(evaluated("parking-structure"))).toBe(0);
    expect(GUESSES.toppingVolume.mistakes(evaluated("parking-structure"))).toEqual([]);
  });

  test("on the edge beam's depth is ledge, deck and upstand in one; a beam below the deck has no such parts to leave out", () => {
    // 13 in of ledge, 34 of deck and topping, 30 of upstand.
    expect(GUESSES.beamDepth.answer(library())).toBe(77);
    expect(GUESSES.beamDepth.mistakes(library({"edgeBeam.kind": "below"}))).toEqual([]);
    expect(GUESSES.beamDepth.mistakes(library())).toHaveLength(2);
  });

  test("for each car is all floor over all stalls: the stall alone is a fourth of it, and with its half of the aisle still too little", () => {
    const cars = evaluate(seed("parking-structure"), catalog);
    const ft2 = GUESSES.floorPerStall.answer(cars);
    expect(ft2).toBeCloseTo((3 * 180 * 120) / (cars.parking?.stalls ?? 0), 9);
    expect(slip("floorPerStall", cars, "stall alone") ?? NaN).toBeCloseTo(8.5 * 18, 9);
    expect(slip("floorPerStall", cars, "half of the aisle:") ?? NaN).toBeCloseTo(8.5 * 30, 9);
    expect(ft2).toBeGreaterThan(8.5 * 30 * 1.12);
    expect(GUESSES.floorPerStall.answer(library())).toBe(0);
    expect(GUESSES.floorPerStall.mistakes(library())).toEqual([]);
  });

  test("on the girder is both bays' halves: half is one bay's, twice forgets the members' other ends", () => {
    const plf = GUESSES.girderLoad.answer(library());
    const {girder, deck} = library();
    expect(plf).toBe(girder?.loads.superimposedPlf);
    expect(slip("girderLoad", library(), "half of one bay") ?? NaN).toBeCloseTo(plf / 2, 9);
    expect(slip("girderLoad", library(), "two ends") ?? NaN).toBeCloseTo(2 * plf, 9);
    expect(slip("girderLoad", library(), "have weight") ?? NaN).toBeCloseTo(40 * deck.demandPsf, 9);
    const one = library({"bay.baysAcross": 1});
    expect(GUESSES.girderLoad.answer(one)).toBe(0);
    expect(GUESSES.girderLoad.mistakes(one)).toEqual([]);
  });

  test("on the ceiling is the height above the finish, which a slip leaves out", () => {
    const {story} = library();
    expect(GUESSES.ceilingHeight.answer(library())).toBe(story.ceilingHeightIn);
    expect(slip("ceilingHeight", library(), "finish")).toBeCloseTo(story.ceilingHeightIn + 0.25, 9);
    expect(slip("ceilingHeight", library(), "under the deck")).toBe(story.clearUnderDeckIn);
  });
});

describe("the load at the most loaded column's foot", () => {
  /** The library with a roof of two loads. */
  const ofTwoLoads = (changes: Readonly<Record<string, unknown>> = {}) => library({"roof.given": "loads", ...changes});

  test("is roof and floors together, live load reduced, without the column", () => {
    // Two bays meet over the girder: 40 by 30 ft of each level. The roof brings 80 + 20 psf, the classrooms' floors their own.
    const roofOnly = {"bay.floors": 1};
    const heavy = GUESSES.columnLoad.answer(ofTwoLoads({...roofOnly, "column.roofDeadPsf": 100}));
    const light = GUESSES.columnLoad.answer(ofTwoLoads({...roofOnly, "column.roofDeadPsf": 80}));
    expect(heavy - light).toBeCloseTo((20 * 40 * 30) / 1000, 6);
  });

  test("is not what one floor brings, unless that is nearly all there is", () => {
    const oneFloor = (changes: Readonly<Record<string, unknown>>) => slip("columnLoad", ofTwoLoads(changes), "one floor only");
    const floorKip = oneFloor({}) ?? NaN;
    expect(GUESSES.columnLoad.answer(ofTwoLoads()) - floorKip).toBeGreaterThan((80 * 40 * 30) / 1000);
    expect(oneFloor({"column.roofDeadPsf": 0, "column.roofLivePsf": 0})).toBeUndefined();
    expect(GUESSES.columnLoad.answer(ofTwoLoads({"column.roofDeadPsf": 0, "column.roofLivePsf": 0}))).toBeCloseTo(floorKip, 6);
    expect(GUESSES.columnLoad.mistakes(ofTwoLoads())).toHaveLength(3);
    expect(GUESSES.columnLoad.mistakes(ofTwoLoads({"column.roofDeadPsf": 0, "column.roofLivePsf": 0}))).toHaveLength(2);
  });

  test("with all live load in full is more by what the code lets go", () => {
    const wing = evaluated("classroom-wing");
    const fullKip = slip("columnLoad", wing, "full live load") ?? NaN;
    // Two floors of 80 psf for the corridors and the greatest rooms, of which 0.25 + 15 / root of 5376 ft2 stays.
    const {livePsf} = wing.deck;
    const goneShare = 1 - (0.25 + 15 / Math.sqrt(2 * 4 * 28 * 24));
    expect(livePsf).toBe(80);
    expect(fullKip - GUESSES.columnLoad.answer(wing)).toBeCloseTo((goneShare * 2 * 80 * 28 * 24) / 1000, 6);
    expect(slip("columnLoad", wing, "factored load") ?? NaN).toBeGreaterThan(1.2 * GUESSES.columnLoad.answer(wing));
  });
});

describe("the share of the floor in daylight", () => {
  test("is what is good or partial, and the rule of thumb twice the window's head from each glazed side", () => {
    const both = library();
    const {shares, skySeenShare, headHeightFt} = both.daylight?.result ?? {shares: {good: NaN, partial: NaN}, skySeenShare: NaN, headHeightFt: {usualFt: NaN}};
    expect(GUESSES.daylitShare.answer(both)).toBeCloseTo(100 * (shares.good + shares.partial), 9);
    const depthFt = both.daylight?.input.depthFt ?? NaN;
    expect(slip("daylitShare", both, "window head")).toBeCloseTo((100 * 2 * headHeightFt.usualFt) / depthFt, 9);
    expect(slip("daylitShare", both, "sees some sky")).toBeCloseTo(100 * skySeenShare, 9);
    // With windows on one side alone a wall stands at the middle of the building.
    const one = library({"daylight.sides": "one"});
    expect(one.daylight?.input.depthFt).toBe(depthFt / 2);
    expect(slip("daylitShare", one, "window head")).toBeCloseTo((100 * headHeightFt.usualFt) / (depthFt / 2), 9);
  });

  test("is all of a narrow floor by the rule of thumb, never more", () => {
    expect(slip("daylitShare", library({"bay.spanFt": 20, "bay.baysAcross": 1}), "window head")).toBe(100);
  });

  test("is nothing without glass", () => {
    const dark = library({"edgeBeam.upstandIn": 60, "story.floorToFloorFt": 8});
    expect(dark.daylight).toBeUndefined();
    expect(GUESSES.daylitShare.answer(dark)).toBe(0);
    expect(GUESSES.daylitShare.mistakes(dark)).toEqual([]);
  });
});

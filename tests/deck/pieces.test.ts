import {describe, expect, it} from "vitest";
import {deckMember} from "../../lib/deck/deckMember.js";
import {deckPieces, jointsFt, piecesSentence} from "../../lib/deck/pieces.js";
import {withValues} from "../../lib/design/edit.js";
import {evaluate} from "../../lib/evaluate.js";
import {SCATTER} from "../../lib/topping/scatter.js";
import {floorSpread, designOrderYd3} from "../../lib/topping/floorSpread.js";
import {catalog, seed} from "../support/designs.js";

const LIBRARY = seed("branch-library");
const TWELVE = {"deck.member": "12DT32", "deck.pattern": "128-S"};
const of = (changes: Record<string, unknown>) => {
  const design = withValues(LIBRARY, changes);
  const member = deckMember(design, catalog);
  return {pieces: deckPieces(design, member), words: piecesSentence(design, member), design};
};

describe("pieces of a floor", () => {
  it("counts the pieces of a floor and weighs one", () => {
    const member = deckMember(LIBRARY, catalog);
    const pieces = deckPieces(LIBRARY, member);
    // 120 ft of 10 ft tees are 12, on each of two spans.
    expect(pieces).toMatchObject({perRow: 12, perFloor: 24, lastWidthFt: 10, lastKeepsStems: true, fitsBay: true, fittingBaysFt: [30]});
    expect(pieces.weightKip).toBeCloseTo((member.selfWeightPlf * 40) / 1000, 9);
    expect(pieces.weightTon * 2000).toBeCloseTo(pieces.weightKip * 1000, 9);
  });

  it("lays tees on past the columns: 180 ft of 12 ft tees are 15, whatever the bays", () => {
    for (const [beamSpanFt, baysAlong] of [[30, 6], [20, 9], [36, 5], [45, 4]] as const) {
      expect(of({...TWELVE, "bay.beamSpanFt": beamSpanFt, "bay.baysAlong": baysAlong, "bay.baysAcross": 1}).pieces).toMatchObject({perRow: 15, perFloor: 15, lastWidthFt: 12});
    }
  });

  it("names the bays on whose column lines a joint would fall", () => {
    const {pieces, words} = of({...TWELVE, "bay.beamSpanFt": 30, "bay.baysAlong": 6});
    expect(pieces).toMatchObject({fitsBay: false, fittingBaysFt: [24, 36]});
    expect(words).toContain("15 tees 12'-0\" wide");
    expect(words).toContain("24'-0\" or 36'-0\" would put a joint on every line");
    // A bay of 8 ft is less than one tee, and no shorter bay is left.
    expect(of({...TWELVE, "bay.beamSpanFt": 8}).pieces.fittingBaysFt).toEqual([12]);
    expect(of({...TWELVE, "bay.beamSpanFt": 36}).words).toContain("a joint falls on every column line");
  });

  it("tells how wide the last piece is cut, and whether it keeps both stems", () => {
    // 4 x 31 = 124 ft: twelve tees of 10 ft and 4 ft, less than stems 5 ft apart need.
    const short = of({"bay.beamSpanFt": 31});
    expect(short.pieces).toMatchObject({perRow: 13, perFloor: 26, lastWidthFt: 4, lastKeepsStems: false});
    expect(short.words).toContain("12 tees 10'-0\" wide and one cut to 4'-0\"");
    expect(short.words).toContain("too narrow for both stems");
    const wide = of({"bay.beamSpanFt": 32});
    expect(wide.pieces).toMatchObject({perRow: 13, lastWidthFt: 8, lastKeepsStems: true});
    expect(wide.words).not.toContain("too narrow");
    expect(of({"bay.beamSpanFt": 8, "bay.baysAlong": 1}).words).toContain("One tee cut to 8'-0\" covers");
  });

  it("closes what whole pieces leave by a strip cast in place, where the short sides are closed and ask for one", () => {
    const closed = (changes: Record<string, unknown>) => of({"walls.shortSide": "solid panel", "walls.endFill": "strip", ...changes});
    // 4 x 31 = 124 ft: twelve tees of 10 ft, and 4 ft are left.
    const strip = closed({"bay.beamSpanFt": 31});
    expect(strip.pieces).toMatchObject({perRow: 12, perFloor: 24, lastWidthFt: 10, stripFt: 4, lastKeepsStems: true});
    expect(strip.words).toContain("A row of 12 tees 10'-0\" wide and a strip of 4'-0\" cast in place covers the building's 124'-0\".");
    // A piece cut narrower instead, or nobody has said how the side is closed.
    expect(closed({"bay.beamSpanFt": 31, "walls.endFill": "piece"}).pieces).toMatchObject({perRow: 13, lastWidthFt: 4, stripFt: 0});
    expect(closed({"bay.beamSpanFt": 31, "walls.shortSide": "not counted"}).pieces).toMatchObject({perRow: 13, lastWidthFt: 4, stripFt: 0});
    // Whole pieces leave nothing; a building narrower than one piece cuts it.
    expect(closed({"bay.beamSpanFt": 30}).pieces).toMatchObject({perRow: 12, lastWidthFt: 10, stripFt: 0});
    expect(closed({"bay.beamSpanFt": 30}).words).toContain("A row of 12 tees 10'-0\" wide covers the building's 120'-0\"");
    expect(closed({"bay.beamSpanFt": 8, "bay.baysAlong": 1}).pieces).toMatchObject({perRow: 1, lastWidthFt: 8, stripFt: 0});
  });

  it("keeps both stems in a piece just as wide as over its stems, and not in one an eighth of an inch narrower", () => {
    const {dimensions} = deckMember(LIBRARY, catalog).shape;
    const overStemsFt = ((dimensions["stemSpacingIn"] as number) + (dimensions["stemTopIn"] as number)) / 12;
    const cut = (widthFt: number) => of({"bay.beamSpanFt": (120 + widthFt) / 4}).pieces;
    expect(cut(overStemsFt)).toMatchObject({perRow: 13, lastKeepsStems: true});
    expect(cut(overStemsFt - 0.125 / 12)).toMatchObject({perRow: 13, lastKeepsStems: false});
    // A plank has no stems to lose.
    expect(of({"deck.member": "4HC8", "deck.pattern": "76-S", "bay.beamSpanFt": 30.25}).pieces).toMatchObject({lastWidthFt: 1, lastKeepsStems: true});
  });

  it("names no bay shorter or longer than can be chosen: 8 to 80 ft, both included", () => {
    const bays = (member: string, beamSpanFt: number) => of({"deck.member": member, "deck.pattern": "108-S", "bay.beamSpanFt": beamSpanFt}).pieces.fittingBaysFt;
    expect(bays("8DT24", 9)).toEqual([8, 16]);
    expect(bays("10DT32", 79)).toEqual([70, 80]);
    expect(bays("12DT32", 79)).toEqual([72]);
  });

  it("says how long a row is, what is whole in it and what the beams make of it", () => {
    expect(of({"bay.beamSpanFt": 31}).words).toBe("A row of 12 tees 10'-0\" wide and one cut to 4'-0\" covers the building's 124'-0\"."
      + " That is too narrow for both stems: make the last two equal, or close the end with a plank or concrete cast in place."
      + " A bay of 31'-0\" is not a whole number of tees: 30'-0\" or 40'-0\" would put a joint on every line."
      + " So the stems land differently in each bay, and beams are checked for the worst.");
    const single = of({"bay.beamSpanFt": 18, "bay.baysAlong": 1}).words;
    expect(single).toContain("A row of one tee 10'-0\" wide and one cut to 8'-0\"");
    expect(single).not.toContain("the stems land differently");
    const planks = of({"deck.member": "4HC8", "deck.pattern": "76-S", "bay.beamSpanFt": 30.25}).words;
    expect(planks).toContain("not a whole number of planks");
    expect(planks).not.toContain("the stems land differently");
  });

  it("has a joint after each whole width, and none at the far end", () => {
    expect(jointsFt(36, 12)).toEqual([12, 24]);
    expect(jointsFt(31, 10)).toEqual([10, 20, 30]);
    expect(jointsFt(30 * 1.1, 1.1)).toHaveLength(29);
    expect(jointsFt(8, 15)).toEqual([]);
  });
});

it("orders one bay's topping as the same volume wherever it is reported, also where tees run past the columns", () => {
  for (const beamSpanFt of [30, 25, 20]) {
    const result = evaluate(withValues(LIBRARY, {...TWELVE, "bay.beamSpanFt": beamSpanFt}), catalog);
    const input = floorSpread(result, {scatter: SCATTER, seed: 1, count: 200, raisedIn: 0});
    expect(input.piecesPerOrder).toBeCloseTo(beamSpanFt / 12, 12);
    expect(designOrderYd3(result, input)).toBeCloseTo(result.topping?.bayYd3 as number, 9);
  }
});

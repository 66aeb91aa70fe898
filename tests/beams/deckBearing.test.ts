import {describe, expect, test} from "vitest";
import {deckBearing, type BearingPlace} from "../../lib/beams/deckBearing.js";
import {deckMember} from "../../lib/deck/deckMember.js";
import {catalog, seed} from "../support/designs.js";

/** A stem of 4.75 in on a pad 5 by 4 in, in the middle of a seat of 7 in, far from the beam's ends. */
const PLACE: BearingPlace = {
  stemmed: true, padWidthIn: 5, lengthIn: 4, roomIn: 7, depthIn: 12, spacingIn: 60, endDistanceIn: 100, strengthPsi: 6000, deckStrengthPsi: 5000,
};
const tee = () => deckMember(seed("branch-library"), catalog);
const on = (changes: Partial<BearingPlace> = {}) => deckBearing(tee(), {...PLACE, ...changes});

describe("the deck's bearing on a beam", () => {
  test("is that of a stem on its pad: as wide as the narrower of both, in the concrete of the weaker", () => {
    expect(on()).toMatchObject({loadedWidthIn: 4.75, loadedLengthIn: 4, strengthPsi: 5000});
    expect(on({padWidthIn: 3}).loadedWidthIn).toBe(3);
    expect(on({deckStrengthPsi: 7000}).strengthPsi).toBe(6000);
  });

  test("spreads to the seat's edges, and along the beam halfway to the next stem or to the beam's end", () => {
    // (7 - 4) / 2 = 1.5 in to each side of the seat; along the beam 60 / 2 - 4.75 / 2 = 27.625 in.
    expect(on().around).toEqual({alongBeamIn: 27.625, acrossBeamIn: 1.5, depthIn: 12});
    // A support of 7 by 4.75 x 7 / 4 in: of the bearing's own proportions.
    expect(on().supportIn2).toBeCloseTo(7 * 4.75 * (7 / 4), 9);
    // 8 in from the beam's end: 8 - 2.375.
    expect(on({endDistanceIn: 8}).around.alongBeamIn).toBe(5.625);
    expect(on({spacingIn: 12, endDistanceIn: 8}).around.alongBeamIn).toBe(3.625);
  });

  test("spreads nowhere at the very end of a beam, nor on a seat that the pad fills", () => {
    for (const endDistanceIn of [1, -4, undefined]) expect(on({endDistanceIn})).toMatchObject({around: {alongBeamIn: 0}, supportIn2: 19});
    expect(on({roomIn: 4}).around.acrossBeamIn).toBe(0);
    expect(on({roomIn: 3}).around.acrossBeamIn).toBe(0);
  });

  test("of planks is that of a foot of them, which has its like on both sides", () => {
    const planks = deckMember(seed("classroom-wing"), catalog);
    const {loadedWidthIn, around, supportIn2} = deckBearing(planks, {...PLACE, stemmed: false, endDistanceIn: undefined});
    expect([loadedWidthIn, around.alongBeamIn, supportIn2]).toEqual([12, 0, 48]);
  });
});

import {describe, expect, test} from "vitest";
import {deckLoadOutIn, edgeBeamLeverIn} from "../../lib/beams/deckLoad.js";
import {evaluate} from "../../lib/evaluate.js";
import {withValues} from "../../lib/design/edit.js";
import {catalog, seed} from "../support/designs.js";

describe("the place of the deck's load on its support", () => {
  test("is the outer quarter, or the seat's middle where a wide joint puts that further out", () => {
    // 8 in of ledge: 6 in out; with a joint of 5 in the seat reaches from 5 to 8 in.
    expect(deckLoadOutIn(8, 1)).toBe(6);
    expect(deckLoadOutIn(8, 4)).toBe(6);
    expect(deckLoadOutIn(8, 5)).toBe(6.5);
  });

  test("lies beyond the web's face on a ledge, inside it in a pocket, over the middle of a beam below the deck", () => {
    const beam = {webWidthIn: 14, ledgeProjectionIn: 8, jointGapIn: 1} as const;
    expect(edgeBeamLeverIn({...beam, kind: "ledge"})).toBe(13);
    expect(edgeBeamLeverIn({...beam, kind: "pockets"})).toBe(5);
    expect(edgeBeamLeverIn({...beam, kind: "below"})).toBe(0);
  });

  test("is one place for twist, ledge bars and hangers, of the edge beam and of the girder", () => {
    const {edgeBeam, girder} = evaluate(withValues(seed("branch-library"), {"edgeBeam.jointGapIn": 2}), catalog);
    for (const {ledge} of edgeBeam.ledge?.places ?? []) expect(ledge.shearSpanIn).toBe(edgeBeam.eccentricityIn - 7);
    expect(edgeBeam.ledge?.places).toHaveLength(2);
    expect(girder?.seat.ledge?.ledge.shearSpanIn).toBe((girder?.seat.eccentricityIn ?? 0) - 8);
  });
});

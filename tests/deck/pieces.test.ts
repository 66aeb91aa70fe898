import {expect, it} from "vitest";
import {deckMember} from "../../lib/deck/deckMember.js";
import {deckPieces} from "../../lib/deck/pieces.js";
import {withValues} from "../../lib/design/edit.js";
import {catalogue, seed} from "../support/designs.js";

it("counts the pieces of a floor and weighs one", () => {
  const design = seed("branch-library");
  const member = deckMember(design, catalogue);
  const pieces = deckPieces(design, member);
  expect(pieces).toMatchObject({perBay: 3, perFloor: 24});
  expect(pieces.weightKip).toBeCloseTo((member.selfWeightPlf * 40) / 1000, 9);
  expect(pieces.weightTon * 2000).toBeCloseTo(pieces.weightKip * 1000, 9);
  expect(deckPieces(withValues(design, {"bay.beamSpanFt": 31}), member).perBay).toBe(4);
});

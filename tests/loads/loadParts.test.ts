import {describe, expect, it} from "vitest";
import {evaluate} from "../../lib/evaluate.js";
import {deckCombinations, loadParts} from "../../lib/loads/loadParts.js";
import {catalogue, seeds} from "../support/designs.js";

describe.each(seeds)("the load on a square foot of $id", ({design}) => {
  const result = evaluate(design, catalogue);
  const parts = loadParts(result);

  it("adds up to what the deck must carry", () => {
    expect(parts.carriedPsf).toBeCloseTo(result.deck.demandPsf, 9);
    expect(parts.carried.reduce((sum, part) => sum + part.loadPsf, 0)).toBeCloseTo(parts.carriedPsf, 9);
  });

  it("gives the factored load that the deck is checked for", () => {
    const both = deckCombinations(result);
    expect(Math.max(both.deadOnlyPsf, both.deadAndLivePsf)).toBeCloseTo(result.deck.factoredPsf, 9);
    expect(both.governs).toBe("1.2D + 1.6L");
  });
});

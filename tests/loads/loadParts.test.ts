import {describe, expect, it} from "vitest";
import {withValues} from "../../lib/design/edit.js";
import {evaluate} from "../../lib/evaluate.js";
import {deckCombinations, loadParts} from "../../lib/loads/loadParts.js";
import {catalog, seed, seeds} from "../support/designs.js";

describe.each(seeds)("the load on a square foot of $id", ({design}) => {
  it("adds up to what the deck must carry", () => {
    const result = evaluate(design, catalog);
    const parts = loadParts(result);
    expect(parts.carriedPsf).toBeCloseTo(result.deck.demandPsf, 9);
    expect(parts.carried.reduce((sum, part) => sum + part.loadPsf, 0)).toBeCloseTo(parts.carriedPsf, 9);
  });

  it("gives the factored load that the deck is checked for", () => {
    const result = evaluate(design, catalog);
    const both = deckCombinations(result);
    expect(Math.max(both.deadOnlyPsf, both.deadAndLivePsf)).toBeCloseTo(result.deck.factoredPsf, 9);
    expect(both.governs).toBe("1.2D + 1.6L");
  });
});

describe("the parts of a floor", () => {
  it("are the deck member, its topping, each layer by name, and the live load of the governing room", () => {
    const parts = loadParts(evaluate(seed("branch-library"), catalog));
    expect(parts.own.map(({kind}) => kind)).toEqual(["member", "topping"]);
    expect(parts.carried.map(({name, kind, loadPsf}) => [name, kind, loadPsf])).toEqual([
      ["Carpet tile", "layer", 1], ["Suspended ceiling", "layer", 2], ["Ducts, pipes and lights", "layer", 5], ["Sprinklers", "layer", 2],
      ["live load, Stacks", "live", 150],
    ]);
  });

  it("leave out what weighs nothing: the topping of a pretopped tee, and partitions where none move", () => {
    const parking = loadParts(evaluate(seed("parking-structure"), catalog));
    expect(parking.own.map(({kind}) => kind)).toEqual(["member"]);
    expect(parking.carried.map(({kind}) => kind)).not.toContain("partitions");
  });
});

describe("the two combinations", () => {
  it("count 1.4 of the dead load alone, which governs once it is more than eight times the live load", () => {
    // 1.4 D = 1.2 D + 1.6 L where D = 8 L: with 150 psf of live load at 1,200 psf, of which 10 psf lie on the structure.
    const library = evaluate(seed("branch-library"), catalog);
    expect(deckCombinations(library, 1190)).toMatchObject({deadPsf: 1200, livePsf: 150, deadOnlyPsf: 1680, deadAndLivePsf: 1680, governs: "1.2D + 1.6L"});
    expect(deckCombinations(library, 1191).governs).toBe("1.4D");
    expect(deckCombinations(library, 1189).governs).toBe("1.2D + 1.6L");
  });

  it("count the structure alone as dead load where no layer lies on it", () => {
    const bare = evaluate(withValues(seed("branch-library"), {"loads.layers": []}), catalog);
    expect(deckCombinations(bare, 100)).toMatchObject({deadPsf: 100, deadOnlyPsf: 140});
  });
});

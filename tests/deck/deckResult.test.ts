import {describe, expect, test} from "vitest";
import {designCriteria} from "../../lib/deck/criteria.js";
import {deckResult} from "../../lib/deck/deckResult.js";
import {deckMember} from "../../lib/deck/deckMember.js";
import {withValues} from "../../lib/design/edit.js";
import type {Design} from "../../lib/design/design.js";
import {floorLoads} from "../../lib/loads/floorLoads.js";
import {catalogue, seed, seeds} from "../support/designs.js";
import {once} from "../support/once.js";

const LIBRARY = seed("branch-library");

function resultOf(design: Design) {
  const member = deckMember(design, catalogue);
  return {member, deck: deckResult(design, catalogue, member, floorLoads(design, catalogue, member.widthFt))};
}

describe("deckResult", () => {
  const library = once(() => resultOf(LIBRARY));
  const check = (id: string) => library().deck.checks.find((entry) => entry.id === id);

  test("asks for the layers and the reduced live load", () => {
    // Layers 1 + 2 + 5 + 2 = 10 psf; stacks 150 psf, not reduced.
    expect(library().deck).toMatchObject({superimposedDeadPsf: 10, livePsf: 150, demandPsf: 160});
  });

  test("factors what stands on the floor by 1.2D + 1.6L", () => {
    const {member, deck} = library();
    const ownPsf = (member.selfWeightPlf + member.toppingWeightPlf) / 10;
    expect(deck.factoredPsf).toBeCloseTo(1.2 * (ownPsf + 10) + 1.6 * 150, 9);
    expect(deck.factoredMomentKipIn).toBeCloseTo((deck.factoredPsf * 10 * 40 ** 2 * 12) / 8000, 6);
  });

  test("takes its criteria from the design", () => {
    const {deck} = library();
    expect(deck.criteria).toEqual(designCriteria(LIBRARY, catalogue, 10));
    expect(deck.criteria).toMatchObject({superimposedDeadPsf: 10, sustainedLiveShare: 0.5, tensionClass: "T"});
  });

  test("gives each check a name of its own", () => {
    for (const {design} of seeds) {
      const ids = resultOf(design).deck.checks.map((entry) => entry.id);
      expect(new Set(ids).size).toBe(ids.length);
    }
  });

  test("checks the topping only where there is one", () => {
    expect(check("topping compression")).toBeDefined();
    const bare = resultOf(withValues(LIBRARY, {"deck.toppingIn": 0})).deck;
    expect(bare.checks.some((entry) => entry.id === "topping compression")).toBe(false);
    expect(bare.totalStresses.toppingTopKsi).toBeUndefined();
  });

  test("orders its stresses: the more live load, the less compression in the soffit", () => {
    const {deck} = library();
    expect(deck.deadStresses.bottomKsi).toBeGreaterThan(deck.sustainedStresses.bottomKsi);
    expect(deck.sustainedStresses.bottomKsi).toBeGreaterThan(deck.totalStresses.bottomKsi);
  });

  test("fails the load where the span is too long, and the strength with it", () => {
    const {deck: long} = resultOf(withValues(LIBRARY, {"bay.spanFt": 80}));
    const verdicts = Object.fromEntries(long.checks.map((entry) => [entry.id, entry.verdict]));
    expect(verdicts).toMatchObject({"deck load": "fails", "deck strength": "fails"});
  });

  test("agrees between load and strength: both are used up at once where strength governs", () => {
    // The live load is the demand less the dead; at the safe load the factored moment is the strength.
    for (const {design} of seeds) {
      const {deck: result} = resultOf(design);
      if (result.safe.governs !== "strength") continue;
      const strength = result.checks.find((entry) => entry.id === "deck strength");
      expect((strength?.utilisation ?? 0) <= 1).toBe(result.demandPsf <= result.safe.safeLoadPsf);
    }
  });

  test("asks the least strength to exceed cracking by a fifth, or to be twice what the loads ask", () => {
    const {deck} = library();
    const least = check("minimum strength");
    expect(least?.demand).toBeCloseTo(Math.min(1.2 * deck.crackingMomentKipIn, 2 * deck.factoredMomentKipIn), 9);
    expect(least?.capacity).toBe(deck.strength.designMomentKipIn);
  });

  test("finds the weakest place of depressed strands away from midspan", () => {
    const {deck: depressed} = resultOf(withValues(LIBRARY, {"deck.member": "12DT32", "deck.pattern": "188-D1", "bay.spanFt": 60}));
    expect(depressed.critical.share).toBeLessThan(0.5);
  });
});

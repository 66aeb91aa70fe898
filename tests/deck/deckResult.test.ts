import {describe, expect, test} from "vitest";
import {cellOf} from "../../lib/deck/cell.js";
import {mostPressed} from "../../lib/deck/compression.js";
import {designCriteria, handbookCriteria} from "../../lib/deck/criteria.js";
import {deckResult, deckState} from "../../lib/deck/deckResult.js";
import {deckMember} from "../../lib/deck/deckMember.js";
import {strengthShares} from "../../lib/deck/shares.js";
import {withValues} from "../../lib/design/edit.js";
import type {Design} from "../../lib/design/design.js";
import {camber} from "../../lib/member/camber.js";
import {crackingMomentKipIn} from "../../lib/member/minimumStrength.js";
import {uniformMomentKipIn} from "../../lib/member/moments.js";
import {prestressState} from "../../lib/member/prestressState.js";
import {memberStrength} from "../../lib/member/strength.js";
import {floorLoads} from "../../lib/loads/floorLoads.js";
import {catalog, seed, seeds} from "../support/designs.js";
import {memberWith} from "../support/members.js";

const LIBRARY = seed("branch-library");

function resultOf(design: Design) {
  const member = deckMember(design, catalog);
  return {member, deck: deckResult(design, catalog, member, floorLoads(design, catalog, member.widthFt))};
}

describe("deckResult", () => {
  const library = () => resultOf(LIBRARY);
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
    expect(deck.criteria).toEqual(designCriteria(LIBRARY, catalog, 10));
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

  test("sums its stresses at midspan: the bare tee bears itself and its topping, both together what comes later, half of the live load for years", () => {
    const {member, deck} = library();
    const {section, full} = member;
    const kipIn = (psf: number) => (psf * 10 * 40 ** 2 * 12) / 8000;
    const {effectiveForceKip: P, eccentricityIn: e} = deck.midspan;
    const ownPsf = (member.selfWeightPlf + member.toppingWeightPlf) / 10;
    const soffit = (laterPsf: number) => P / section.areaIn2 + (P * e - kipIn(ownPsf)) / section.sbIn3 - kipIn(laterPsf) / full.sbIn3;
    expect(deck.deadStresses.bottomKsi).toBeCloseTo(soffit(10), 9);
    expect(deck.sustainedStresses.bottomKsi).toBeCloseTo(soffit(10 + 75), 9);
    expect(deck.totalStresses.bottomKsi).toBeCloseTo(soffit(160), 9);
    // Straight strands: nowhere is the soffit pulled more than at midspan.
    expect(deck.soffit).toEqual({share: 0.5, bottomKsi: expect.closeTo(soffit(160), 9)});
    const cell = cellOf(member, 40, deck.criteria);
    expect(deck.heldCompression).toEqual(mostPressed(cell, 75));
    expect(deck.totalCompression).toEqual(mostPressed(cell, 150));
    expect(deck.camber).toEqual(camber(member, 40, 100, LIBRARY.topping.ageDays));
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
      expect((strength?.utilization ?? 0) <= 1).toBe(result.demandPsf <= result.safe.safeLoadPsf);
    }
  });

  test("asks the strength to hold a fifth more than cracks the member, or twice what is asked", () => {
    const {deck, member} = library();
    const least = check("minimum strength");
    const unitKipIn = uniformMomentKipIn(member.widthFt, LIBRARY.bay.spanFt, 0.5);
    expect(least?.demand).toBeCloseTo(Math.min((1.2 * deck.crackingMomentKipIn) / unitKipIn, 2 * deck.factoredPsf), 9);
    expect(least?.capacity).toBeCloseTo(deck.strength.designMomentKipIn / unitKipIn, 9);
  });

  test("finds the weakest place of depressed strands away from midspan", () => {
    const {deck: depressed} = resultOf(withValues(LIBRARY, {"deck.member": "12DT32", "deck.pattern": "188-D1", "bay.spanFt": 60}));
    expect(depressed.critical.share).toBeLessThan(0.5);
  });
});

describe("a deck's places", () => {
  test("of least strength are the weaker of two where strands run level between hold-downs", () => {
    const shares = new Set<number>();
    for (const [endIn, centerIn] of [[22, 4], [6, 4]] as const) {
      const member = memberWith("12DT32", "148-D2", {endIn, centerIn});
      const {critical, strength, factoredMomentKipIn, factoredPsf} = deckState(member, 60, handbookCriteria(false), 60);
      for (const share of [...strengthShares(member), 0.5]) {
        const {losses} = prestressState(member, 60, share, 120);
        const used = uniformMomentKipIn(factoredPsf * 12, 60, share) / memberStrength(member, share, losses.effectiveStressKsi).designMomentKipIn;
        expect(factoredMomentKipIn / strength.designMomentKipIn).toBeGreaterThanOrEqual(used - 1e-12);
      }
      shares.add(critical.share);
    }
    expect(shares.has(0.5)).toBe(true);
    expect(shares.size).toBe(2);
  });

  test("ask for 1.2 times the load that cracks, or for twice the factored one where the load is little", () => {
    const member = memberWith("10DT24", "88-S");
    const state = prestressState(member, 40, 0.5, 100);
    const crackingPsf = crackingMomentKipIn(member, 40, state) / uniformMomentKipIn(10, 40, 0.5);
    const asked = (livePsf: number) => deckState(member, 40, handbookCriteria(false), livePsf);
    expect(asked(0).minimum.neededPsf).toBeCloseTo(2 * asked(0).factoredPsf, 9);
    expect(asked(0).minimum.neededPsf).toBeLessThan(1.2 * crackingPsf);
    expect(asked(200).minimum.neededPsf / crackingPsf).toBeCloseTo(1.2, 2);
  });
});

import {describe, expect, test} from "vitest";
import {cellOf} from "../../lib/deck/cell.js";
import {mostPressed, soffitMostPressed} from "../../lib/deck/compression.js";
import {handbookCriteria, type Criteria} from "../../lib/deck/criteria.js";
import {deckState} from "../../lib/deck/deckResult.js";
import {passesGates} from "../../lib/deck/frontier.js";
import {gateUse} from "../../lib/deck/gates.js";
import {LOAD_LIMITS} from "../../lib/deck/limits.js";
import {safeLoad} from "../../lib/deck/safeLoad.js";
import {uniformMomentKipIn} from "../../lib/member/moments.js";
import {prestressState} from "../../lib/member/prestressState.js";
import {memberWith} from "../support/members.js";

const CRITERIA: Criteria = {...handbookCriteria(true), superimposedDeadPsf: 0, sustainedLiveShare: 0.5, limits: LOAD_LIMITS};

describe("compression that stays", () => {
  const tee = memberWith("12DT32", "228-S", {toppingIn: 2, releaseStrengthPsi: 5000});

  test("is greatest in the soffit of a short, heavily strung tee, where the strands have handed over their force", () => {
    const {share, stressKsi} = soffitMostPressed(cellOf(tee, 30, CRITERIA));
    const state = prestressState(tee, 30, share, 0);
    expect(share * 360).toBeCloseTo((prestressState(tee, 30, 0.5, 0).losses.effectiveStressKsi / 3) * 0.5, 9);
    const {areaIn2, sbIn3} = tee.section;
    const momentKipIn = (((tee.selfWeightPlf + tee.toppingWeightPlf) / 12000) * 360 ** 2 * share * (1 - share)) / 2;
    expect(stressKsi).toBeCloseTo(state.effectiveForceKip / areaIn2 + (state.effectiveForceKip * state.eccentricityIn - momentKipIn) / sbIn3, 9);
    expect(stressKsi).toBeCloseTo(2.58, 2);
  });

  test("fails that tee's check and a gate of the search, and names face and place", () => {
    const {checks} = deckState(tee, 30, CRITERIA, 50);
    const check = checks.find(({id}) => id === "deck sustained compression")!;
    expect(check.verdict).toBe("fails");
    expect(check.message).toContain("The soffit, 2.2 ft from the ends, stays compressed");
    expect(check.demand).toBeGreaterThan(0.45 * 5);
    expect(gateUse("soffit compression", tee, 30, CRITERIA)).toBeCloseTo(2.58 / 2.25, 2);
    expect(passesGates(tee, 30, CRITERIA)).toBe(false);
  });

  test("is passed over by the handbook's load tables, which leave the ends to the reader", () => {
    const printed = memberWith("10DT24", "108-S");
    expect(gateUse("soffit compression", printed, 40, handbookCriteria(false))).toBeGreaterThan(1);
    expect(safeLoad(printed, 40, handbookCriteria(false)).safeLoadPsf).toBeGreaterThan(50);
  });

  test("is no greater at any place of the span than is reported, of tees with straight and depressed strands", () => {
    for (const [name, text] of [["12DT32", "228-S"], ["12DT32", "188-D1"], ["10DT24", "128-D2"], ["4HC8", "76-S"]] as const) for (const spanFt of [24, 50]) {
      const member = memberWith(name, text);
      const told = mostPressed(cellOf(member, spanFt, CRITERIA), 40);
      for (let share = 0.1; share <= 0.5; share += 0.01) {
        const state = prestressState(member, spanFt, share, 0);
        const unit = uniformMomentKipIn(1, spanFt, share);
        const own = member.selfWeightPlf * unit;
        const {areaIn2, sbIn3, stIn3} = member.section;
        const bottomKsi = state.effectiveForceKip / areaIn2 + (state.effectiveForceKip * state.eccentricityIn - own) / sbIn3;
        const topKsi = state.effectiveForceKip / areaIn2 - (state.effectiveForceKip * state.eccentricityIn - own - 40 * member.widthFt * unit) / stIn3;
        expect(told.stressKsi, `${name} ${text} ${spanFt} ft at ${share}`).toBeGreaterThan(Math.max(bottomKsi, topKsi) - 0.005);
      }
    }
  });
});

describe("the soffit of an empty floor", () => {
  test.each([["12DT32", "188-D1", 2, 30], ["12DT32", "188-D1", 0, 90], ["12DT32", "148-D2", 2, 50], ["10DT24", "128-D1", 0, 24], ["12DT32", "228-S", 2, 30]] as const)(
    "of a %s %s with %d in over %d ft is pressed most, within 0.05 ksi, where the strands' force is there, or where they lie lowest", (name, text, toppingIn, spanFt) => {
      const cell = cellOf(memberWith(name, text, {toppingIn}), spanFt, CRITERIA);
      const told = soffitMostPressed(cell);
      const found = mostPressed(cell, 0);
      expect(found.face).toBe("soffit");
      expect(told.stressKsi).toBeGreaterThan(found.stressKsi - 0.05);
      expect(told.stressKsi).toBeLessThanOrEqual(found.stressKsi);
    });

  test("of a tee with depressed strands is pressed most at the hold-down on a short span, and at the ends on a long one", () => {
    const share = (spanFt: number) => soffitMostPressed(cellOf(memberWith("12DT32", "188-D1"), spanFt, CRITERIA)).share;
    expect(share(30)).toBe(0.5);
    expect(share(110)).toBeLessThan(0.05);
  });

  test("hands over to the top at midspan once the floor is full, also where two hold-downs let the strands run level", () => {
    expect(mostPressed(cellOf(memberWith("12DT32", "148-D2"), 80, CRITERIA), 150)).toMatchObject({face: "top", share: 0.5});
  });
});

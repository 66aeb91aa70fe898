import {describe, expect, it} from "vitest";
import {handbookCriteria} from "../../lib/deck/criteria.js";
import {safeLoad} from "../../lib/deck/safeLoad.js";
import {safeLoadAtStress, timeEffect} from "../../lib/deck/timeEffect.js";
import {uniformMomentKipIn} from "../../lib/member/moments.js";
import {prestressState} from "../../lib/member/prestressState.js";
import {memberWith} from "../support/members.js";

const tee = memberWith("10DT24", "88-S", {toppingIn: 2});
const criteria = handbookCriteria(true);
const deadPlf = criteria.superimposedDeadPsf * tee.widthFt;

describe("the safe load at another stress of the strands", () => {
  const {losses, eccentricityIn} = prestressState(tee, 50, 0.5, deadPlf);

  it("is the same at the same stress", () => {
    expect(safeLoadAtStress(tee, 50, criteria, losses.effectiveStressKsi).safeLoadPsf).toBeCloseTo(safeLoad(tee, 50, criteria).safeLoadPsf, 9);
  });

  it("loses in the soffit what the strands press less, and little in strength", () => {
    const usual = safeLoad(tee, 50, criteria);
    const less = safeLoadAtStress(tee, 50, criteria, losses.effectiveStressKsi - 9);
    const {section, full, layout} = tee;
    const pressKsi = 9 * layout.areaIn2 * (1 / section.areaIn2 + eccentricityIn / section.sbIn3);
    const psf = (pressKsi * full.sbIn3) / (uniformMomentKipIn(1, 50, 0.5) * tee.widthFt);
    expect((usual.limitsPsf["service tension"] ?? NaN) - (less.limitsPsf["service tension"] ?? NaN)).toBeCloseTo(psf, 6);
    const lost = (usual.limitsPsf.strength ?? NaN) - (less.limitsPsf.strength ?? NaN);
    expect(lost).toBeGreaterThanOrEqual(0);
    expect(lost).toBeLessThan(2);
  });
});

describe("what the choice of the loss method does", () => {
  it("is reported for stress and load at once", () => {
    const effect = timeEffect(tee, 50, criteria);
    expect(effect.ownShrinkage).toBeGreaterThan(effect.componentShrinkage);
    expect(effect.ownKsi).toBeLessThan(effect.alikeKsi);
    expect(effect.alikeKsi).toBeLessThan(effect.componentKsi);
    expect(effect.ownSafe.safeLoadPsf).toBeLessThanOrEqual(effect.safe.safeLoadPsf);
    expect(effect.safe.safeLoadPsf).toBe(safeLoad(tee, 50, criteria).safeLoadPsf);
  });
});

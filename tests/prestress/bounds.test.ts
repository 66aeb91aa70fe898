import {describe, expect, test} from "vitest";
import {handbookCriteria} from "../../lib/deck/criteria.js";
import {failedGates} from "../../lib/deck/gates.js";
import {LOAD_LIMITS} from "../../lib/deck/limits.js";
import {safeLoad} from "../../lib/deck/safeLoad.js";
import {prestressState} from "../../lib/member/prestressState.js";
import {memberWith} from "../support/members.js";

const CRITERIA = {...handbookCriteria(false), sustainedLiveShare: 1, limits: LOAD_LIMITS};

describe("losses of a piece with far more strand than its concrete bears", () => {
  const crush = () => memberWith("10DT24", "2010-D1", {concreteKind: "sand-lightweight", strengthPsi: 3000, releaseStrengthPsi: 2500, humidityPercent: 30});

  test("take the whole pull and no more, a third of it at the cut", () => {
    const crushed = crush();
    const {losses, effectiveForceKip, initialForceKip} = prestressState(crushed, 30, 0.5, 0);
    expect(losses.elasticKsi).toBeCloseTo(202.5 / 3, 9);
    expect(losses.effectiveStressKsi).toBe(0);
    expect(losses.totalKsi).toBe(202.5);
    expect(effectiveForceKip).toBe(0);
    // Two thirds of the pull, less the first night's relaxation, still squeeze the young concrete.
    expect(initialForceKip).toBeGreaterThan(0.6 * 202.5 * crushed.layout.areaIn2);
  });

  test("leave a piece that fails as the strands are cut, and loads that are finite", () => {
    const crushed = crush();
    expect(failedGates(crushed, 30, {...CRITERIA, limits: ["transfer"]})).toEqual(["transfer"]);
    for (const psf of Object.values(safeLoad(crushed, 30, CRITERIA).limitsPsf)) expect(Number.isFinite(psf)).toBe(true);
  });
});

test("strands gain nothing from a weight that cracks the concrete beside them, so their stress stays below the pull", () => {
  const thin = memberWith("4HC6", "910-S", {concreteKind: "sand-lightweight", strengthPsi: 3000, releaseStrengthPsi: 2500, humidityPercent: 30});
  const {losses} = prestressState(thin, 150, 0.5, 0);
  expect(losses.concreteStressKsi).toBeLessThan(0);
  expect(losses.effectiveStressKsi).toBeLessThanOrEqual(202.5);
  expect(safeLoad(thin, 150, CRITERIA).safeLoadPsf).toBe(0);
});

import {describe, expect, test} from "vitest";
import {handbookCriteria} from "../../lib/deck/criteria.js";
import {LIMITS} from "../../lib/deck/limits.js";
import {safeLoad} from "../../lib/deck/safeLoad.js";
import {uniformMomentKipIn} from "../../lib/member/moments.js";
import {limitUses} from "../../lib/report/limitUse.js";
import {memberReport} from "../../lib/report/memberReport.js";
import {memberWith} from "../support/members.js";

const CRITERIA = {...handbookCriteria(true), sustainedLiveShare: 0.3};
const MEMBER = memberWith("12DT28", "128-D1", {toppingIn: 2});
const REPORT = memberReport({name: "", member: MEMBER, spanFt: 50, livePsf: 40, criteria: CRITERIA});

/** Paths of numbers whose key does not end in a unit, a share or a count. */
function unitless(value: unknown, path: string): string[] {
  if (typeof value === "number") {
    return /(In|In2|In3|In4|Ft|Ksi|Psi|Kip|KipIn|Psf|Plf|Pcf|Percent|Hours|Hz|Days|Degrees|In2PerFt|OfGravity|[sS]hare|strain|[sS]train|phi|count|[rR]atio|utilisation|Factor|demand|capacity|perTruck|PerTruck)$/.test(path) ? [] : [path];
  }
  if (Array.isArray(value)) return value.flatMap((entry) => unitless(entry, path));
  if (typeof value === "object" && value !== null) return Object.entries(value).flatMap(([key, entry]) => unitless(entry, `${path}.${key}`));
  return [];
}

describe("a member's report", () => {
  test("names the unit at the end of every key", () => {
    expect(unitless(REPORT, "")).toEqual([]);
  });

  test("holds finite numbers only", () => {
    expect(JSON.stringify(REPORT, (_, value: unknown) => (typeof value === "number" && !Number.isFinite(value) ? "NOT FINITE" : value))).not.toContain("NOT FINITE");
  });

  test("follows the span from end to end, symmetric, with no force at the ends and the whole of it beyond the transfer length", () => {
    const {stressesAlong, strands, losses} = REPORT;
    expect(stressesAlong[0]).toMatchObject({xFt: 0, forceAtTransferKip: 0, effectiveForceKip: 0});
    expect(stressesAlong.at(-1)?.xFt).toBe(50);
    const n = stressesAlong.length;
    for (let i = 0; i < n; i++) expect(stressesAlong[i]?.bottomServiceKsi).toBeCloseTo(stressesAlong[n - 1 - i]?.bottomServiceKsi as number, 9);
    const middle = stressesAlong.find(({xFt}) => xFt === 25);
    expect(middle?.effectiveForceKip).toBeCloseTo(losses.midspan.effectiveForceKip, 9);
    expect(middle?.strandHeightIn).toBe(strands.centroidMidspanIn);
  });

  test("has the strength of the whole section at midspan, and less where strands take hold", () => {
    const {strengthAlong} = REPORT;
    const middle = strengthAlong.find(({xFt}) => xFt === 25);
    expect(middle?.factoredMomentKipIn).toBeCloseTo(uniformMomentKipIn(REPORT.loads.factoredPsf * 12, 50, 0.5), 6);
    expect(middle?.phi).toBe(0.9);
    expect(strengthAlong[0]?.phi).toBe(0.75);
    expect(strengthAlong[0]?.designMomentKipIn).toBeLessThan(middle?.designMomentKipIn as number);
    expect(middle?.factoredShearKip).toBeCloseTo(0, 9);
  });

  test("tells both ways of losses and camber", () => {
    const {losses, camber} = REPORT;
    expect(losses.midspan.totalKsi + losses.midspan.effectiveStressKsi).toBeCloseTo(202.5, 9);
    const steps = losses.byTimeSteps;
    expect(steps.elasticShorteningKsi + steps.creepKsi + steps.shrinkageKsi + steps.relaxationKsi).toBeCloseTo(steps.totalKsi, 6);
    expect(camber.byMultipliers.releaseIn).toBeGreaterThan(0);
    expect(camber.byTimeSteps.releaseIn / camber.byMultipliers.releaseIn).toBeGreaterThan(0.8);
    expect(camber.byTimeSteps.releaseIn / camber.byMultipliers.releaseIn).toBeLessThan(1.25);
  });
});

describe("the use of limits", () => {
  const uses = limitUses(MEMBER, 50, CRITERIA, 55);
  test("lists each limit once, with the load of the safe load's own and the share of it that is asked", () => {
    expect(uses.map(({name}) => name)).toEqual(LIMITS);
    const {limitsPsf} = safeLoad(MEMBER, 50, CRITERIA);
    for (const {name, allowedPsf, utilisation, counts} of uses) {
      expect(counts).toBe(CRITERIA.limits.includes(name));
      if (limitsPsf[name] === undefined) continue;
      expect(allowedPsf).toBeCloseTo(limitsPsf[name], 9);
      expect(utilisation).toBeCloseTo(55 / limitsPsf[name], 9);
    }
  });
  test("says of each whether it holds", () => {
    const at = (psf: number) => limitUses(MEMBER, 50, CRITERIA, psf).find(({name}) => name === "strength")?.verdict;
    const allowed = uses.find(({name}) => name === "strength")?.allowedPsf as number;
    expect([at(allowed * 0.5), at(allowed * 0.97), at(allowed * 1.01)]).toEqual(["ok", "near", "fails"]);
    expect(uses.find(({name}) => name === "fire")).toMatchObject({verdict: "does not apply", utilisation: null});
    expect(uses.find(({name}) => name === "crack control")?.verdict).toBe("does not apply");
  });
});

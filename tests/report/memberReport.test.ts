import {describe, expect, test} from "vitest";
import {handbookCriteria} from "../../lib/deck/criteria.js";
import {LIMITS} from "../../lib/deck/limits.js";
import {safeLoad} from "../../lib/deck/safeLoad.js";
import {uniformMomentKipIn} from "../../lib/member/moments.js";
import {limitUses} from "../../lib/report/limitUse.js";
import {memberReport} from "../../lib/report/memberReport.js";
import {catalog} from "../support/designs.js";
import {memberWith} from "../support/members.js";
import {once} from "../support/once.js";

const CRITERIA = {...handbookCriteria(true), sustainedLiveShare: 0.3};
const tee = once(() => memberWith("12DT28", "128-D1", {toppingIn: 2}));
const report = () => memberReport({name: "", member: tee(), spanFt: 50, livePsf: 40, criteria: CRITERIA});

/** Paths of numbers whose key does not end in a unit, a share or a count. */
function unitless(value: unknown, path: string): string[] {
  if (typeof value === "number") {
    return /(In|In2|In3|In4|Ft|Ksi|Psi|Kip|KipIn|Psf|Plf|Pcf|Percent|Hours|Hz|Days|Degrees|In2PerFt|OfGravity|[sS]hare|strain|[sS]train|phi|count|[rR]atio|utilization|Factor|demand|capacity|perTruck|PerTruck)$/.test(path) ? [] : [path];
  }
  if (Array.isArray(value)) return value.flatMap((entry) => unitless(entry, path));
  if (typeof value === "object" && value !== null) return Object.entries(value).flatMap(([key, entry]) => unitless(entry, `${path}.${key}`));
  return [];
}

describe("a member's report", () => {
  test("names the unit at the end of every key", () => {
    expect(unitless(report(), "")).toEqual([]);
  });

  test("holds finite numbers only", () => {
    expect(JSON.stringify(report(), (_, value: unknown) => (typeof value === "number" && !Number.isFinite(value) ? "NOT FINITE" : value))).not.toContain("NOT FINITE");
  });

  test("follows the span from end to end, symmetric, with no force at the ends and the whole of it beyond the transfer length", () => {
    const {stressesAlong, strands, losses} = report();
    expect(stressesAlong[0]).toMatchObject({xFt: 0, forceAtTransferKip: 0, effectiveForceKip: 0});
    expect(stressesAlong.at(-1)?.xFt).toBe(50);
    const n = stressesAlong.length;
    for (let i = 0; i < n; i++) expect(stressesAlong[i]?.bottomServiceKsi).toBeCloseTo(stressesAlong[n - 1 - i]?.bottomServiceKsi as number, 9);
    const middle = stressesAlong.find(({xFt}) => xFt === 25);
    expect(middle?.effectiveForceKip).toBeCloseTo(losses.midspan.effectiveForceKip, 9);
    expect(middle?.strandHeightIn).toBe(strands.centroidMidspanIn);
  });

  test("has the strength of the whole section at midspan, and less where strands take hold", () => {
    const {strengthAlong} = report();
    const middle = strengthAlong.find(({xFt}) => xFt === 25);
    expect(middle?.factoredMomentKipIn).toBeCloseTo(uniformMomentKipIn(report().loads.factoredPsf * 12, 50, 0.5), 6);
    expect(middle?.phi).toBe(0.9);
    expect(strengthAlong[0]?.phi).toBe(0.75);
    expect(strengthAlong[0]?.designMomentKipIn).toBeLessThan(middle?.designMomentKipIn as number);
    expect(middle?.factoredShearKip).toBeCloseTo(0, 9);
  });

  test("tells both ways of losses and camber", () => {
    const {losses, camber} = report();
    expect(losses.midspan.totalKsi + losses.midspan.effectiveStressKsi).toBeCloseTo(202.5, 9);
    const steps = losses.byTimeSteps;
    expect(steps.elasticShorteningKsi + steps.creepKsi + steps.shrinkageKsi + steps.relaxationKsi).toBeCloseTo(steps.totalKsi, 6);
    expect(camber.byMultipliers.releaseIn).toBeGreaterThan(0);
    expect(camber.byTimeSteps.releaseIn / camber.byMultipliers.releaseIn).toBeGreaterThan(0.8);
    expect(camber.byTimeSteps.releaseIn / camber.byMultipliers.releaseIn).toBeLessThan(1.25);
  });
});

describe("the use of limits", () => {
  const uses = () => limitUses(tee(), 50, CRITERIA, 55);
  test("lists each limit once, with the load of the safe load's own and the share of it that is asked", () => {
    expect(uses().map(({name}) => name)).toEqual(LIMITS);
    const {limitsPsf} = safeLoad(tee(), 50, CRITERIA);
    for (const {name, allowedPsf, utilization, counts} of uses()) {
      expect(counts).toBe(CRITERIA.limits.includes(name));
      if (limitsPsf[name] === undefined) continue;
      expect(allowedPsf).toBeCloseTo(limitsPsf[name], 9);
      expect(utilization).toBeCloseTo(55 / limitsPsf[name], 9);
    }
  });
  test("says of each whether it holds", () => {
    const at = (psf: number) => limitUses(tee(), 50, CRITERIA, psf).find(({name}) => name === "strength")?.verdict;
    const allowed = uses().find(({name}) => name === "strength")?.allowedPsf as number;
    expect([at(allowed * 0.5), at(allowed * 0.97), at(allowed * 1.01)]).toEqual(["ok", "near", "fails"]);
    expect(uses().find(({name}) => name === "fire")).toMatchObject({verdict: "does not apply", utilization: null});
    expect(uses().find(({name}) => name === "crack control")?.verdict).toBe("does not apply");
  });
});

describe("what a member's report tells of", () => {
  test("a bare tee is no composite section and no contact; of a topped one both are there", () => {
    const bare = memberReport({name: "Bare", member: memberWith("10DT24", "88-S"), spanFt: 40, livePsf: 40, criteria: handbookCriteria(false)});
    expect([bare.compositeSection, bare.service.contactShearKip, bare.service.contactStrengthKip]).toEqual([null, null, null]);
    expect(bare.materials).not.toHaveProperty("toppingStrengthPsi");
    const {compositeSection, service, materials, section} = report();
    // 2 in of topping on 12 ft at 150 pcf.
    expect(compositeSection).toMatchObject({toppingIn: 2, toppingWeightPlf: 300, toppingWeightPsf: 25});
    expect(compositeSection?.inertiaIn4).toBeGreaterThan(section.inertiaIn4);
    expect(service.contactStrengthKip).toBeGreaterThan(service.contactShearKip ?? Infinity);
    // 33 w^1.5 root f'c.
    expect(materials.toppingModulusKsi).toBeCloseTo((33 * 150 ** 1.5 * Math.sqrt(3000)) / 1000, 6);
    expect(section.selfWeightPsf).toBeCloseTo(section.selfWeightPlf / 12, 9);
  });

  test("strands are their number, rows and stresses: what they carry over their area, and the losses of the first pull", () => {
    const {strands, strength, losses} = report();
    expect(strands).toMatchObject({count: 12, diameterIn: 0.5, profile: "one-point", jackingStressKsi: 202.5});
    expect(strands.rows.reduce((sum, {count}) => sum + count, 0)).toBe(12);
    expect(strength.strandStressKsi).toBeCloseTo(strength.compressionKip / strands.areaIn2, 9);
    expect(losses.midspan.totalPercent).toBeCloseTo((100 * losses.midspan.totalKsi) / 202.5, 9);
    // The transfer length f_se d_b/3, and (f_ps - f_se) d_b beyond it.
    expect(strands.transferLengthIn).toBeCloseTo((losses.midspan.effectiveStressKsi * 0.5) / 3, 6);
    expect(strands.developmentLengthIn - strands.transferLengthIn).toBeCloseTo((strength.strandStressKsi - losses.midspan.effectiveStressKsi) * 0.5, 6);
    expect(strands.holdDownForcePerStemKip).toBeGreaterThan(0);
  });

  test("the place that governs a depressed tee lies off midspan, by its share of the span", () => {
    const {losses, strength} = report();
    expect(losses.governingPlace.xFt).toBe(strength.xFt);
    expect(strength.xFt).toBeGreaterThan(0.3 * 50);
    expect(strength.xFt).toBeLessThanOrEqual(25);
  });

  test("walking, fire and tilt are named where they are asked for, and nothing where not", () => {
    const {service, criteria} = report();
    expect([service.frequencyHz, service.walkingAccelerationOfGravity, service.fireThicknessIn, service.fireByThicknessHours]).toEqual([null, null, null, null]);
    expect(criteria).toMatchObject({walking: "none", fireHours: 0, fireRestrained: false, aggregate: null});
    const fire = {hours: 2, tables: catalog.fire, aggregate: "carbonate", restrained: true} as const;
    const asked = memberReport({name: "", member: tee(), spanFt: 50, livePsf: 40, criteria: {...CRITERIA, walking: "quiet", fire}});
    expect(asked.criteria).toMatchObject({walking: "quiet", fireHours: 2, fireRestrained: true, aggregate: "carbonate"});
    expect(asked.criteria).not.toHaveProperty("fire");
    expect(asked.service.frequencyHz).toBeGreaterThan(2);
    expect(asked.service.walkingAccelerationOfGravity).toBeGreaterThan(0);
    // Flange of 2 in and topping of 2.
    expect(asked.service.fireThicknessIn).toBeCloseTo(4, 9);
  });

  test("a member that carries nothing safely is used far beyond its limit", () => {
    const long = memberReport({name: "", member: memberWith("10DT24", "48-S"), spanFt: 100, livePsf: 40, criteria: handbookCriteria(false)});
    expect(long.safeLoad).toMatchObject({safeLoadPsf: 0, utilization: 99});
    const {safeLoad: safe, loads} = report();
    expect(loads.demandPsf).toBe(loads.superimposedDeadPsf + 40);
    expect(safe.utilization).toBeCloseTo(loads.demandPsf / safe.safeLoadPsf, 9);
  });
});

describe("the use of a limit", () => {
  const strength = (member: ReturnType<typeof memberWith>, spanFt: number, psf: number) => limitUses(member, spanFt, CRITERIA, psf).find(({name}) => name === "strength");

  test("is near from 95 % on, and still near where it is just met", () => {
    const allowed = strength(tee(), 50, 55)?.allowedPsf ?? NaN;
    expect([0.9499, 0.9501, 1, 1.0001].map((share) => strength(tee(), 50, share * allowed)?.verdict)).toEqual(["ok", "near", "near", "fails"]);
  });

  test("is reported as 99 at most, also where nothing can be carried and anything is asked", () => {
    const weak = memberWith("10DT24", "48-S");
    expect(strength(weak, 100, 1)?.allowedPsf).toBeLessThan(0);
    expect(strength(weak, 100, 1)).toMatchObject({utilization: 99, verdict: "fails"});
    expect(strength(tee(), 50, 1e6)?.utilization).toBe(99);
  });

  test("of a gate is what is asked over what there is, without a load", () => {
    const fire = {hours: 1, tables: catalog.fire, aggregate: "siliceous", restrained: false} as const;
    const uses = limitUses(tee(), 50, {...CRITERIA, fire}, 55);
    const gate = uses.find(({name}) => name === "fire");
    expect(gate).toMatchObject({allowedPsf: null});
    expect(gate?.utilization).toBeGreaterThan(0);
    expect(gate?.verdict).not.toBe("does not apply");
  });
});

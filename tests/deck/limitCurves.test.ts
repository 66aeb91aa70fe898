import {describe, expect, test} from "vitest";
import {handbookCriteria, type Criteria} from "../../lib/deck/criteria.js";
import {failedGates} from "../../lib/deck/gates.js";
import {envelope, governingStretches, limitCurves, rankedLimits, type EnvelopePoint} from "../../lib/deck/limitCurves.js";
import {GATES, LOAD_LIMITS, type LimitName} from "../../lib/deck/limits.js";
import {safeLoad} from "../../lib/deck/safeLoad.js";
import {catalog} from "../support/designs.js";
import {memberWith} from "../support/members.js";
import {once} from "../support/once.js";

const floor: Criteria = {
  ...handbookCriteria(true), superimposedDeadPsf: 20, sustainedLiveShare: 0.3, walking: "quiet",
  fire: {hours: 3, tables: catalog.fire, aggregate: "siliceous", restrained: false},
};
const member = once(() => memberWith("10DT24", "108-S", {toppingIn: 2}));
const spansFt = Array.from({length: 36}, (_, i) => 10 + 2 * i);
const curves = () => limitCurves(member(), floor, spansFt);

describe("limit curves", () => {
  test("tell what each limit alone would allow, whatever the criteria count", () => {
    for (const {spanFt, limitsPsf} of curves().cells.filter((_, i) => i % 5 === 0)) {
      for (const name of LOAD_LIMITS) expect(limitsPsf[name], `${name} at ${spanFt} ft`).toBe(safeLoad(member(), spanFt, {...floor, limits: [name]}).limitsPsf[name]);
    }
  });

  test("an envelope is the safe load by the chosen limits, and needs one that bounds", () => {
    const chosen: LimitName[] = ["strength", "service tension", "shear"];
    for (const {spanFt, safeLoadPsf, governs} of envelope(curves().cells, chosen)) {
      const safe = safeLoad(member(), spanFt, {...floor, limits: chosen});
      expect(safeLoadPsf).toBe(safe.safeLoadPsf);
      expect(governs).toBe(safe.governs);
    }
    expect(envelope(curves().cells, chosen)).toHaveLength(spansFt.length);
    expect(envelope(curves().cells, [])).toEqual([]);
    expect(envelope(curves().cells, ["crack control"])).toEqual([]);
  });

  test("limits are ranked from the lowest", () => {
    expect(rankedLimits({strength: 90, shear: 40, camber: -3})).toEqual([{name: "camber", psf: -3}, {name: "shear", psf: 40}, {name: "strength", psf: 90}]);
  });

  test("gates are reported over the spans at which they fail", () => {
    expect(curves().gates.map(({name}) => name)).toContain("fire");
    for (const {name, fromFt, toFt} of curves().gates) {
      expect(GATES).toContain(name);
      expect(toFt).toBeGreaterThan(fromFt);
    }
    for (const name of GATES) {
      for (const spanFt of spansFt) {
        const inside = curves().gates.some((gate) => gate.name === name && spanFt >= gate.fromFt && spanFt <= gate.toFt);
        expect(inside, `${name} at ${spanFt} ft`).toBe(failedGates(member(), spanFt, {...floor, limits: [name]}).length > 0);
      }
    }
    expect(curves().gates.find(({name}) => name === "fire")).toEqual({name: "fire", fromFt: 10, toFt: 80});
    expect(limitCurves(member(), {...floor, fire: undefined, walking: undefined}, [40]).gates.filter(({name}) => name === "fire" || name === "vibration")).toEqual([]);
  });
});

describe("governing stretches", () => {
  test("follow one another without gaps and end where two curves cross", () => {
    const found = governingStretches(envelope(curves().cells, ["strength", "service tension"]));
    expect(found.length).toBeGreaterThan(1);
    expect(found[0]?.fromFt).toBe(10);
    expect(found.at(-1)?.toFt).toBe(80);
    found.slice(1).forEach((stretch, i) => expect(stretch.fromFt).toBe(found[i]?.toFt));
    const turnFt = found[1]?.fromFt as number;
    const {limitsPsf} = safeLoad(member(), turnFt, {...floor, limits: ["strength", "service tension"]});
    expect((limitsPsf.strength as number) / (limitsPsf["service tension"] as number)).toBeCloseTo(1, 2);
  });

  test("two curves cross where straight lines between the spans do, by hand", () => {
    const point = (spanFt: number, strength: number, tension: number): EnvelopePoint =>
      ({spanFt, limitsPsf: {strength, "service tension": tension}, governs: strength < tension ? "strength" : "service tension", safeLoadPsf: Math.min(strength, tension)});
    // 10 psf apart at 10 ft, 20 psf the other way at 16 ft: a third of the way.
    expect(governingStretches([point(8, 55, 75), point(10, 50, 60), point(16, 40, 20), point(18, 35, 10)])).toEqual([
      {governs: "strength", fromFt: 8, toFt: 12}, {governs: "service tension", fromFt: 12, toFt: 18},
    ]);
  });

  test("a limit that sets in with a jump is taken to do so half-way", () => {
    const points: EnvelopePoint[] = [
      {spanFt: 20, limitsPsf: {strength: 50}, governs: "strength", safeLoadPsf: 50},
      {spanFt: 22, limitsPsf: {"strength": 45, "minimum strength": 20}, governs: "minimum strength", safeLoadPsf: 20},
    ];
    expect(governingStretches(points)).toEqual([
      {governs: "strength", fromFt: 20, toFt: 21}, {governs: "minimum strength", fromFt: 21, toFt: 22},
    ]);
    // So it is where one sets out, and where either has no load of its own beside the other's.
    const [out, back] = [points[1]!, points[0]!];
    expect(governingStretches([{...out, spanFt: 20}, {...back, spanFt: 22}])).toEqual([
      {governs: "minimum strength", fromFt: 20, toFt: 21}, {governs: "strength", fromFt: 21, toFt: 22},
    ]);
    // And where two limits that allow the same change places.
    const alike = (spanFt: number, psf: number, governs: LimitName): EnvelopePoint => ({spanFt, limitsPsf: {strength: psf, shear: psf}, governs, safeLoadPsf: psf});
    expect(governingStretches([alike(20, 50, "strength"), alike(24, 40, "shear")]).map(({toFt}) => toFt)).toEqual([22, 24]);
    expect(governingStretches([])).toEqual([]);
  });
});

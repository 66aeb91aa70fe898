import fc from "fast-check";
import {describe, expect, test} from "vitest";
import {handbookCriteria, type Criteria} from "../../lib/deck/criteria.js";
import {LIMITS, type LimitName} from "../../lib/deck/limits.js";
import {safeLoad} from "../../lib/deck/safeLoad.js";
import {strengthShares} from "../../lib/deck/shares.js";
import {concrete, stressBlockFactor} from "../../lib/materials/concrete.js";
import {barStressKsi} from "../../lib/materials/reinforcement.js";
import {strandStressKsi} from "../../lib/materials/strand.js";
import {compressionKip, compressionMomentKipIn, compressionZone} from "../../lib/member/compressionZone.js";
import {flexuralStrength, strainAt, type SteelLayer} from "../../lib/member/flexure.js";
import type {Member} from "../../lib/member/member.js";
import {uniformMomentKipIn} from "../../lib/member/moments.js";
import {prestressState} from "../../lib/member/prestressState.js";
import {memberStrength, strandLayers} from "../../lib/member/strength.js";
import {widthAt} from "../../lib/sections/polygon.js";
import {invertedTee} from "../../lib/sections/prismatic.js";
import {catalog} from "../support/designs.js";
import {memberWith} from "../support/members.js";
import {anyConcrete, anyPattern, hold, within} from "./arbitrary.js";
import {concreteOf, referenceStrength} from "./reference.js";

const anyMember: fc.Arbitrary<Member> = fc.record({pattern: anyPattern, concretes: anyConcrete})
  .map(({pattern: [designation, text], concretes}) => memberWith(designation, text, concretes));
const anyShare = within(0.1, 0.5);
const anyStress = within(100, 190);
const relative = (value: number, expected: number) => Math.abs(value - expected) / Math.abs(expected);
const tensionOf = (layers: readonly SteelLayer[], c: number) => layers.reduce((sum, layer) => sum + layer.areaIn2 * layer.stressKsi(strainAt(layer, c)), 0);

describe("a member at its strength", () => {
  test("has its compression and tension in balance to a billionth", () => {
    hold(1500, fc.property(anyMember, anyShare, anyStress, (member, share, stressKsi) => {
      const {neutralAxisIn, compressionKip: force, tensileStrain, phi} = memberStrength(member, share, stressKsi);
      const layers = strandLayers(member, share, stressKsi);
      expect(relative(tensionOf(layers, neutralAxisIn), force)).toBeLessThan(1e-9);
      expect(relative(concreteOf(member, neutralAxisIn).forceKip, force)).toBeLessThan(1e-9);
      const deepest = Math.max(...layers.map((layer) => layer.depthIn));
      expect(tensileStrain).toBeCloseTo((0.003 * (deepest - neutralAxisIn)) / neutralAxisIn, 12);
      expect(phi).toBeGreaterThanOrEqual(0.65);
      expect(phi).toBeLessThanOrEqual(0.9);
    }));
  });

  test("has the moment that a cut polygon and plain halving give, to a billionth", () => {
    hold(400, fc.property(anyMember, anyShare, anyStress, (member, share, stressKsi) => {
      const strength = memberStrength(member, share, stressKsi);
      const reference = referenceStrength(member, strandLayers(member, share, stressKsi));
      expect(relative(strength.neutralAxisIn, reference.neutralAxisIn)).toBeLessThan(1e-9);
      expect(relative(strength.nominalMomentKipIn, reference.nominalMomentKipIn)).toBeLessThan(1e-9);
    }));
  });
});

describe("a section with any steel", () => {
  const anyLayers = fc.array(fc.record({areaIn2: within(0.05, 4), share: within(0.1, 0.95), strainBefore: fc.constantFrom(0, 0.0055), strand: fc.boolean()}), {minLength: 1, maxLength: 6});
  const anyZone = fc.record({webWidthIn: within(8, 30), depthIn: within(18, 60), ledgeProjectionIn: within(2, 20), ledgeDepthIn: within(4, 14), strengthPsi: within(3000, 12000)})
    .map(({strengthPsi, ...dimensions}) => compressionZone(invertedTee("any", dimensions), concrete("normalweight", strengthPsi)));
  const layersIn = (zone: {depthIn: number}, given: {areaIn2: number; share: number; strainBefore: number; strand: boolean}[]): SteelLayer[] =>
    given.map(({areaIn2, share, strainBefore, strand}) => ({areaIn2, depthIn: share * zone.depthIn, strainBefore: strand ? strainBefore : 0, stressKsi: strand ? strandStressKsi : barStressKsi}));

  test("is in balance to a billionth", () => {
    hold(1500, fc.property(anyZone, anyLayers, (zone, given) => {
      const layers = layersIn(zone, given);
      const {neutralAxisIn, compressionKip: force} = flexuralStrength(zone, layers);
      expect(relative(tensionOf(layers, neutralAxisIn), force)).toBeLessThan(1e-9);
    }));
  });

  test("does not care in which order, or in how many pieces, its layers come", () => {
    hold(500, fc.property(anyZone, anyLayers, (zone, given) => {
      const layers = layersIn(zone, given);
      const whole = flexuralStrength(zone, layers).nominalMomentKipIn;
      const pieces = layers.flatMap((layer) => [{...layer, areaIn2: 0.3 * layer.areaIn2}, {...layer, areaIn2: 0.7 * layer.areaIn2}]).reverse();
      expect(relative(flexuralStrength(zone, pieces).nominalMomentKipIn, whole)).toBeLessThan(1e-9);
    }));
  });

  test("gains nominal moment with every bit of steel at one depth, as long as the stress block ends above it", () => {
    hold(1000, fc.property(anyZone, within(0.01, 0.4), within(1.01, 2), within(0.6, 0.95), fc.boolean(), (zone, amount, times, share, strand) => {
      // Steel that could pull with a part of what the whole concrete could bear.
      const areaIn2 = (amount * compressionKip(zone, 10 * zone.depthIn)) / (strand ? 270 : 60);
      const moment = (area: number) => flexuralStrength(zone, layersIn(zone, [{areaIn2: area, share, strainBefore: 0.0055, strand}]));
      const [less, more] = [moment(areaIn2), moment(areaIn2 * times)];
      if ((zone.blockFactor[0] as number) * more.neutralAxisIn >= share * zone.depthIn) return;
      expect(more.neutralAxisIn).toBeGreaterThanOrEqual(less.neutralAxisIn);
      expect(more.nominalMomentKipIn).toBeGreaterThanOrEqual(less.nominalMomentKipIn * (1 - 1e-9));
    }));
  });
});

describe("the concrete's compression", () => {
  test("is what its fibers add up to", () => {
    const FIBERS = 4000;
    hold(200, fc.property(anyMember, within(0.02, 1.2), (member, share) => {
      const zone = member.compression;
      const c = share * zone.depthIn;
      let forceKip = 0;
      let momentKipIn = 0;
      for (let i = 0; i < FIBERS; i++) {
        const depthIn = ((i + 0.5) * zone.depthIn) / FIBERS;
        const heightIn = zone.depthIn - depthIn;
        const topping = heightIn > member.shape.depthIn ? member.topping : undefined;
        const {strengthPsi} = topping?.concrete ?? member.concrete;
        if (depthIn > stressBlockFactor(strengthPsi) * c) continue;
        const fiberKip = (((0.85 * strengthPsi) / 1000) * (topping?.widthIn ?? widthAt(member.shape.rings, heightIn)) * zone.depthIn) / FIBERS;
        forceKip += fiberKip;
        momentKipIn += fiberKip * depthIn;
      }
      // A fiber at each edge of the block and of the flange may stand on the wrong side.
      const fiberKip = (0.85 * 10 * member.shape.widthIn * zone.depthIn) / FIBERS;
      expect(Math.abs(compressionKip(zone, c) - forceKip)).toBeLessThan(3 * fiberKip);
      expect(Math.abs(compressionMomentKipIn(zone, c) - momentKipIn)).toBeLessThan(3 * fiberKip * zone.depthIn);
    }));
  });

  test("never falls as the neutral axis goes deeper", () => {
    hold(500, fc.property(anyMember, within(0.01, 2), within(1, 1.5), (member, share, times) => {
      const c = share * member.compression.depthIn;
      expect(compressionKip(member.compression, c * times)).toBeGreaterThanOrEqual(compressionKip(member.compression, c));
    }));
  });
});

describe("the safe load", () => {
  const FIRE = {hours: 1, tables: catalog.fire, aggregate: "siliceous", restrained: false} as const;

  const anyCriteria: fc.Arbitrary<Criteria> = fc.record({superimposedDeadPsf: within(0, 60), sustainedLiveShare: within(0, 1), tensionClass: fc.constantFrom("U" as const, "T" as const)})
    .map((given) => ({...handbookCriteria(false), ...given}));
  const anySpan = within(15, 110);

  test("never rises with the span, and neither does the load that strength allows", () => {
    hold(1000, fc.property(anyMember, anyCriteria, anySpan, within(1.001, 1.3), (member, criteria, spanFt, times) => {
      const [short, long] = [safeLoad(member, spanFt, criteria), safeLoad(member, spanFt * times, criteria)];
      expect(long.limitsPsf.strength).toBeLessThanOrEqual(short.limitsPsf.strength as number);
      expect(long.safeLoadPsf).toBeLessThanOrEqual(short.safeLoadPsf);
    }));
  });

  test("that strength allows rises with the number of strands at one height, as long as the section stays tension-controlled", () => {
    let compared = 0;
    hold(500, fc.property(anyConcrete, fc.integer({min: 2, max: 12}), within(4, 8), anySpan, (concretes, pairs, heightIn, spanFt) => {
      const criteria = handbookCriteria(false);
      const withPairs = (n: number) => memberWith("12DT32", `${2 * n}8-S`, {...concretes, endIn: heightIn, centerIn: heightIn});
      const [less, more] = [withPairs(pairs), withPairs(pairs + 1)];
      const phi = (member: Member) => memberStrength(member, 0.5, prestressState(member, spanFt, 0.5, 120).losses.effectiveStressKsi).phi;
      if (phi(more) < 0.9) return;
      compared += 1;
      expect(safeLoad(more, spanFt, criteria).limitsPsf.strength).toBeGreaterThan(safeLoad(less, spanFt, criteria).limitsPsf.strength as number);
    }));
    expect(compared).toBeGreaterThan(400);
  });

  test("is the least over its places of what each limit allows by itself, to a billionth", () => {
    hold(300, fc.property(anyMember, anyCriteria, anySpan, (member, criteria, spanFt) => {
      const {limitsPsf} = safeLoad(member, spanFt, criteria);
      const ownPsf = (member.selfWeightPlf + member.toppingWeightPlf) / member.widthFt;
      const {superimposedDeadPsf: deadPsf} = criteria;
      const strength = Math.min(...strengthShares(member).map((share) => {
        const {losses} = prestressState(member, spanFt, share, deadPsf * member.widthFt);
        const reference = referenceStrength(member, strandLayers(member, share, losses.effectiveStressKsi));
        const {phi} = memberStrength(member, share, losses.effectiveStressKsi);
        const factoredPsf = (phi * reference.nominalMomentKipIn) / (uniformMomentKipIn(1, spanFt, share) * member.widthFt);
        const deadOnlyPsf = factoredPsf / criteria.deadOnlyFactor - ownPsf;
        return deadOnlyPsf < deadPsf ? deadOnlyPsf : deadPsf + (factoredPsf - 1.2 * (ownPsf + deadPsf)) / 1.6;
      }));
      expect(Math.abs((limitsPsf.strength as number) - strength)).toBeLessThan(1e-9 * Math.max(100, Math.abs(strength)));
    }));
  });

  test("is never negative and always finite, whichever limits count", () => {
    hold(1000, fc.property(anyMember, anyCriteria, within(10, 150), fc.subarray([...LIMITS], {minLength: 1}), (member, given, spanFt, limits) => {
      const {safeLoadPsf, limitsPsf} = safeLoad(member, spanFt, {...given, limits, walking: "quiet", fire: FIRE});
      expect(safeLoadPsf).toBeGreaterThanOrEqual(0);
      for (const value of [safeLoadPsf, ...Object.values(limitsPsf)]) expect(Number.isFinite(value)).toBe(true);
    }));
  });

  test("is not raised by a limit that is added, and is the least of what the limits allow one by one", () => {
    hold(300, fc.property(anyMember, anyCriteria, within(10, 120), fc.subarray([...LIMITS], {minLength: 1}), (member, given, spanFt, limits) => {
      const of = (names: readonly LimitName[]) => safeLoad(member, spanFt, {...given, limits: names, walking: "quiet", fire: FIRE}).safeLoadPsf;
      expect(of(limits)).toBe(Math.min(...limits.map((name) => of([name]))));
    }));
  });
});

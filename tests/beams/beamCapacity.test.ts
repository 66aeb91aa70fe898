import {describe, expect, test} from "vitest";
import {BEAM_LIMITS, beamCapacity} from "../../lib/beams/beamCapacity.js";
import {handbookBeamCriteria, ownBeamCriteria, type BeamCriteria} from "../../lib/beams/beamCriteria.js";
import {prestressedBeam} from "../../lib/beams/prestressedBeam.js";
import {allowables} from "../../lib/member/allowables.js";
import type {Member} from "../../lib/member/member.js";
import {prestressState} from "../../lib/member/prestressState.js";
import {memberStrength} from "../../lib/member/strength.js";
import {catalog} from "../support/designs.js";
import {refused} from "../support/errors.js";

const beam = (designation: string, strands: number) => prestressedBeam(catalog, {designation, strands});
const BEAMS = [["28IT20", 9], ["28IT28", 13], ["28IT60", 28], ["20LB20", 6], ["20LB36", 14], ["12RB24", 6], ["16RB40", 16]] as const;
const HANDBOOK = handbookBeamCriteria();

/** Moment of a uniform load at midspan, kip-in. */
const moment = (plf: number, spanFt: number) => (plf * spanFt ** 2 * 12) / 8000;

/** Stresses at midspan under own weight and a load, by P/A, P e y/I and M y/I written out. */
function stresses(member: Member, spanFt: number, forceKip: number, loadPlf: number) {
  const {areaIn2, inertiaIn4, ybIn, ytIn} = member.section;
  const bendingKipIn = forceKip * (ybIn - member.layout.centroidCenterIn) - moment(member.selfWeightPlf + loadPlf, spanFt);
  return {bottomKsi: forceKip / areaIn2 + (bendingKipIn * ybIn) / inertiaIn4, topKsi: forceKip / areaIn2 - (bendingKipIn * ytIn) / inertiaIn4};
}

/** The prestress that goes with a load. */
function effectiveKsi(member: Member, spanFt: number, loadPlf: number, criteria: BeamCriteria): number {
  return criteria.assumedEffectiveStressKsi
    ?? prestressState(member, spanFt, 0.5, criteria.deadShare * loadPlf).losses.effectiveStressKsi;
}

describe.each([
  ["the handbook's criteria", HANDBOOK], ["computed losses", ownBeamCriteria(0.5, 0.3)], ["mostly dead load", ownBeamCriteria(0.9, 0.5)],
  ["live load alone", ownBeamCriteria(0, 0)],
] as const)("beamCapacity by %s", (_, criteria) => {
  test.each(BEAMS)("%s with %d strands: each limit is met by its own load and prestress", (designation, strands) => {
    const member = beam(designation, strands);
    const allowed = allowables(member, "T");
    for (const spanFt of [16, 24, 36]) {
      const {limitsPlf} = beamCapacity(member, spanFt, criteria);
      const at = (loadPlf: number, share = 1) =>
        stresses(member, spanFt, member.layout.areaIn2 * effectiveKsi(member, spanFt, loadPlf, criteria), share * loadPlf);
      const strengthPlf = limitsPlf.strength as number;
      expect(strengthPlf).toBeGreaterThan(0);
      const dead = criteria.deadShare * strengthPlf;
      const factoredPlf = Math.max(
        criteria.deadFactor * (member.selfWeightPlf + dead) + criteria.liveFactor * (strengthPlf - dead),
        criteria.deadOnlyFactor * (member.selfWeightPlf + dead),
      );
      const {designMomentKipIn} = memberStrength(member, 0.5, effectiveKsi(member, spanFt, strengthPlf, criteria));
      expect(moment(factoredPlf, spanFt) / designMomentKipIn).toBeCloseTo(1, 9);
      expect(at(limitsPlf["service tension"] as number).bottomKsi).toBeCloseTo(-allowed.serviceTensionKsi, 8);
      expect(at(limitsPlf["total compression"] as number).topKsi).toBeCloseTo(allowed.totalCompressionKsi, 8);
      const staying = criteria.deadShare + criteria.sustainedLiveShare * (1 - criteria.deadShare);
      const sustainedPlf = limitsPlf["sustained compression"];
      if (staying === 0) expect(sustainedPlf).toBeUndefined();
      else expect(at(sustainedPlf as number, staying).topKsi).toBeCloseTo(allowed.sustainedCompressionKsi, 8);
    }
  });
});

describe("beamCapacity", () => {
  test("takes the least of its limits and names it", () => {
    for (const [designation, strands] of BEAMS) for (const spanFt of [10, 20, 40, 80, 150]) {
      const {safeLoadPlf, tabulatedPlf, governs, limitsPlf} = beamCapacity(beam(designation, strands), spanFt, ownBeamCriteria(0.5, 0.5));
      const values = BEAM_LIMITS.flatMap((name) => limitsPlf[name] ?? []);
      for (const value of values) expect(Number.isFinite(value)).toBe(true);
      expect(limitsPlf[governs]).toBe(Math.min(...values));
      expect(safeLoadPlf).toBe(Math.max(0, Math.min(...values)));
      expect(tabulatedPlf % 10).toBe(0);
      expect(safeLoadPlf - tabulatedPlf).toBeGreaterThanOrEqual(0);
      expect(safeLoadPlf - tabulatedPlf).toBeLessThan(10);
    }
  });

  test("falls as the span grows", () => {
    for (const [designation, strands] of BEAMS) {
      const loads = Array.from({length: 50}, (_, i) => beamCapacity(beam(designation, strands), 10 + i, HANDBOOK).safeLoadPlf);
      for (let i = 1; i < loads.length; i++) expect(loads[i] as number).toBeLessThanOrEqual(loads[i - 1] as number);
    }
  });

  test("has the prestress assumed, or the one that the load's dead part leaves", () => {
    const member = beam("28IT28", 13);
    expect(beamCapacity(member, 30, HANDBOOK).state.losses.effectiveStressKsi).toBe(150);
    const own = beamCapacity(member, 30, ownBeamCriteria(0.5, 0));
    expect(own.state).toEqual(prestressState(member, 30, 0.5, 0.5 * own.safeLoadPlf));
    expect(own.state.losses.effectiveStressKsi).toBeGreaterThan(160);
    const live = beamCapacity(member, 30, ownBeamCriteria(0, 0));
    expect(live.state.losses.effectiveStressKsi).toBeLessThan(own.state.losses.effectiveStressKsi);
  });

  test("carries more of dead load than of live, by their factors", () => {
    const member = beam("28IT28", 13);
    const load = (deadShare: number) => beamCapacity(member, 30, {...HANDBOOK, deadShare}).limitsPlf.strength as number;
    expect(load(0.5) / load(0)).toBeCloseTo(1.6 / 1.4, 9);
    expect(load(1) / load(0)).toBeCloseTo(1.6 / 1.2, 9);
  });

  test("counts 1.4 times dead load where hardly any is live", () => {
    const member = beam("28IT28", 13);
    const factored = moment(1.4 * (550 + (beamCapacity(member, 30, {...HANDBOOK, deadShare: 1, deadOnlyFactor: 1.4}).limitsPlf.strength as number)), 30);
    expect(factored).toBeCloseTo(memberStrength(member, 0.5, 150).designMomentKipIn, 6);
  });

  test("lies in the transition of phi for the handbook's beams", () => {
    for (const [designation, strands] of [["28IT20", 9], ["28IT60", 28]] as const) {
      const {phi} = beamCapacity(beam(designation, strands), 24, HANDBOOK).strength;
      expect(phi).toBeGreaterThan(0.65);
      expect(phi).toBeLessThan(0.9);
    }
  });

  test("is limited in shear by a web that stirrups cannot help, and sooner where the load hangs on ledges", () => {
    const short = beamCapacity(beam("28IT60", 28), 12, HANDBOOK);
    expect(short.governs).toBe("shear");
    // At the support no prestress has built up: 3.5 and 8 sqrt(f'c) of the web, at 0.75.
    const {compression, layout} = beam("28IT60", 28);
    const depthIn = Math.max(0.8 * 60, compression.depthIn - layout.centroidCenterIn);
    const mostKip = (0.75 * 11.5 * Math.sqrt(5000) * 12 * depthIn) / 1000;
    expect(((1.2 * beam("28IT60", 28).selfWeightPlf + 1.4 * short.safeLoadPlf) * 12) / 2000).toBeCloseTo(mostKip, 6);
    const rectangle = prestressedBeam(catalog, {designation: "12RB60", strands: 20});
    const perKip = (limit: number, own: number) => (1.2 * own + 1.4 * limit) * 6;
    expect(perKip(beamCapacity(rectangle, 12, HANDBOOK).limitsPlf.shear as number, rectangle.selfWeightPlf)).toBeGreaterThan(1000 * mostKip);
  });

  test("is nothing where the beam cannot carry itself, and the limits say by how much it falls short", () => {
    const {safeLoadPlf, tabulatedPlf, limitsPlf, governs} = beamCapacity(beam("28IT20", 1), 60, HANDBOOK);
    expect([safeLoadPlf, tabulatedPlf]).toEqual([0, 0]);
    expect(governs).toBe("strength");
    expect(limitsPlf.strength).toBeCloseTo(memberStrength(beam("28IT20", 1), 0.5, 150).designMomentKipIn / (1.2 * moment(1, 60)) - beam("28IT20", 1).selfWeightPlf, 9);
  });

  test("falls short by the heavier combination of its own weight, and by all of what is too much of it to stay", () => {
    const weak = beamCapacity(beam("28IT20", 1), 60, {...HANDBOOK, deadOnlyFactor: 1.4});
    expect(weak.limitsPlf.strength).toBeCloseTo(memberStrength(beam("28IT20", 1), 0.5, 150).designMomentKipIn / (1.4 * moment(1, 60)) - beam("28IT20", 1).selfWeightPlf, 9);
    // Over 150 ft the top of so slender a beam is squeezed beyond 0.45 f'c by the beam alone, whatever part of a load would stay.
    const [half, all] = [0.5, 1].map((deadShare) => beamCapacity(beam("28IT20", 9), 150, {...HANDBOOK, deadShare}).limitsPlf["sustained compression"] as number);
    expect(half).toBeLessThan(0);
    expect(all).toBe(half);
  });

  test("is limited in shear at the support itself by one ledge as by two", () => {
    const member = beam("20LB36", 14);
    const depthIn = Math.max(0.8 * 36, 36 - member.layout.centroidCenterIn);
    const mostKip = (0.75 * 11.5 * Math.sqrt(5000) * 12 * depthIn) / 1000;
    const limitPlf = beamCapacity(member, 12, HANDBOOK).limitsPlf.shear as number;
    expect((1.2 * member.selfWeightPlf + 1.4 * limitPlf) * 6).toBeCloseTo(1000 * mostKip, 3);
  });

  test("tells all losses together where the prestress is taken for granted: 202.5 ksi jacked, 150 left", () => {
    expect(beamCapacity(beam("28IT28", 13), 30, HANDBOOK).state.losses.totalKsi).toBeCloseTo(52.5, 9);
  });

  test("reports transfer beside the load: the top of an inverted tee asks for steel", () => {
    const {transfer} = beamCapacity(beam("28IT28", 13), 24, HANDBOOK);
    expect(transfer.end.stresses.topKsi).toBeLessThan((-6 * Math.sqrt(3500)) / 1000);
    expect(transfer.end.stresses.bottomKsi).toBeGreaterThan(1);
  });

  test("refuses spans and criteria out of range", () => {
    const member = beam("28IT28", 13);
    for (const spanFt of [9.99, 150.01, NaN]) refused(() => beamCapacity(member, spanFt, HANDBOOK), {path: "spanFt", allowed: "10 to 150 ft"});
    for (const deadShare of [-0.1, 1.1, NaN]) refused(() => beamCapacity(member, 30, {...HANDBOOK, deadShare}), {path: "deadShare"});
    refused(() => beamCapacity(member, 30, {...HANDBOOK, sustainedLiveShare: 2}), {path: "sustainedLiveShare"});
    refused(() => beamCapacity(member, 30, {...HANDBOOK, tableStepPlf: 0}), {path: "tableStepPlf"});
    refused(() => beamCapacity(member, 30, {...HANDBOOK, assumedEffectiveStressKsi: 20}), {path: "assumedEffectiveStressKsi"});
  });
});

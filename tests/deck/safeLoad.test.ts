import {describe, expect, test} from "vitest";
import {handbookCriteria, type Criteria} from "../../lib/deck/criteria.js";
import {LIMITS} from "../../lib/deck/limits.js";
import {safeLoad} from "../../lib/deck/safeLoad.js";
import {strengthShares} from "../../lib/deck/shares.js";
import {allowables} from "../../lib/member/allowables.js";
import type {Member} from "../../lib/member/member.js";
import {uniformMomentKipIn} from "../../lib/member/moments.js";
import {prestressState} from "../../lib/member/prestressState.js";
import {memberStrength} from "../../lib/member/strength.js";
import {memberWith} from "../support/members.js";
import {refused} from "../support/errors.js";
import {stressesUnder} from "./wholeSpan.js";

const BARE = handbookCriteria(false);
const LASTING: Criteria = {...BARE, sustainedLiveShare: 0.5};
const own = (member: Member) => (member.selfWeightPlf + member.toppingWeightPlf) / member.widthFt;

describe("safeLoad", () => {
  test("is the load at which the factored moment meets the design strength, 10 psf of it dead", () => {
    const member = memberWith("10DT24", "68-S");
    const {limitsPsf, governs, safeLoadPsf} = safeLoad(member, 40, BARE);
    const state = prestressState(member, 40, 0.5, 100);
    const factoredPsf = 1.2 * (own(member) + 10) + 1.6 * ((limitsPsf.strength as number) - 10);
    expect(uniformMomentKipIn(factoredPsf * 10, 40, 0.5)).toBeCloseTo(memberStrength(member, 0.5, state.losses.effectiveStressKsi).designMomentKipIn, 6);
    expect(governs).toBe("strength");
    expect(safeLoadPsf).toBe(limitsPsf.strength);
  });

  test.each([["10DT24", "68-S", 0], ["10DT24", "68-S", 2], ["4HC8", "76-S", 0], ["4HC8", "76-S", 2]] as const)(
    "is the load at which a face of %s %s with %d in meets its allowed stress", (designation, pattern, toppingIn) => {
      const member = memberWith(designation, pattern, {toppingIn});
      const spanFt = 34;
      const {limitsPsf} = safeLoad(member, spanFt, LASTING);
      const allowed = allowables(member, "T");
      const at = (loadPsf: number) => stressesUnder(member, spanFt, 0.5, loadPsf, LASTING);
      expect(at(limitsPsf["service tension"] as number).bottomKsi).toBeCloseTo(-allowed.serviceTensionKsi, 9);
      const total = at(limitsPsf["total compression"] as number);
      const used = [total.topKsi / allowed.totalCompressionKsi, (total.toppingTopKsi ?? 0) / (allowed.toppingTotalKsi ?? 1)];
      expect(Math.max(...used)).toBeCloseTo(1, 9);
      // Of the whole load, the dead part and half of the rest stay.
      const lastingPsf = 10 + ((limitsPsf["sustained compression"] as number) - 10) / 2;
      const sustained = at(lastingPsf);
      const lasting = [sustained.topKsi / allowed.sustainedCompressionKsi, (sustained.toppingTopKsi ?? 0) / (allowed.toppingSustainedKsi ?? 1)];
      expect(Math.max(...lasting)).toBeCloseTo(1, 9);
    });

  test("takes the least of its limits and names it", () => {
    for (const spanFt of [20, 30, 40, 50, 60]) for (const pattern of ["68-S", "148-S", "128-D1"]) {
      const {safeLoadPsf, governs, limitsPsf} = safeLoad(memberWith("10DT24", pattern), spanFt, LASTING);
      const values = LIMITS.flatMap((name) => limitsPsf[name] ?? []);
      expect(safeLoadPsf).toBe(Math.max(0, Math.min(...values)));
      expect(limitsPsf[governs]).toBe(Math.min(...values));
    }
  });

  test("has no sustained limit where none of the live load stays", () => {
    expect(safeLoad(memberWith("10DT24", "68-S"), 40, BARE).limitsPsf["sustained compression"]).toBeUndefined();
    // Nor where next to none does: the load whose millionth part would press too long is beyond all floors.
    const limitOf = (sustainedLiveShare: number) => safeLoad(memberWith("10DT24", "68-S"), 40, {...LASTING, sustainedLiveShare}).limitsPsf["sustained compression"];
    expect(limitOf(1e-63)).toBeUndefined();
    expect(limitOf(1e-6)).toBeUndefined();
    expect(limitOf(0.05)).toBeGreaterThan(limitOf(0.1) as number);
    expect(safeLoad(memberWith("10DT24", "68-S"), 40, LASTING).limitsPsf["sustained compression"]).toBeGreaterThan(0);
  });

  test("is nothing where the member cannot carry itself, and the limit says by how much it falls short", () => {
    const {safeLoadPsf, limitsPsf} = safeLoad(memberWith("10DT24", "48-S"), 100, BARE);
    expect(safeLoadPsf).toBe(0);
    expect(limitsPsf.strength).toBeLessThan(0);
  });

  test("counts 1.4 times dead load where that alone exceeds the strength", () => {
    const member = memberWith("10DT24", "48-S");
    const {limitsPsf} = safeLoad(member, 100, {...BARE, deadOnlyFactor: 1.4});
    const {losses} = prestressState(member, 100, 0.5, 100);
    const strengthPsf = memberStrength(member, 0.5, losses.effectiveStressKsi).designMomentKipIn / (uniformMomentKipIn(1, 100, 0.5) * 10);
    expect(limitsPsf.strength).toBeCloseTo(strengthPsf / 1.4 - own(member), 9);
  });

  test("allows more tension in class T than in class U", () => {
    const member = memberWith("10DT24", "68-S");
    const limit = (tensionClass: "U" | "T") => safeLoad(member, 40, {...BARE, tensionClass}).limitsPsf["service tension"] as number;
    expect(limit("T")).toBeGreaterThan(limit("U"));
  });

  test("refuses a span out of range", () => {
    const member = memberWith("10DT24", "68-S");
    expect(() => safeLoad(member, 10, BARE)).not.toThrow();
    expect(() => safeLoad(member, 150, BARE)).not.toThrow();
    for (const spanFt of [9.99, 150.01, NaN, Infinity]) refused(() => safeLoad(member, spanFt, BARE), {path: "spanFt", allowed: "10 to 150 ft"});
  });
});

describe("strengthShares", () => {
  test("is midspan alone for straight strands", () => {
    expect(strengthShares(memberWith("10DT24", "68-S"))).toEqual([0.5]);
  });

  test("lies between the ends and the hold-down for depressed strands, with midspan beside it where they run level", () => {
    for (const pattern of ["128-D1", "188-D1"]) {
      const [share, ...others] = strengthShares(memberWith("12DT32", pattern));
      expect(share).toBeGreaterThan(0.2);
      expect(share).toBeLessThan(0.5);
      expect(others).toEqual([]);
    }
    const [share, middle] = strengthShares(memberWith("12DT32", "148-D2"));
    expect(share).toBeLessThan(0.4);
    expect(middle).toBe(0.5);
  });
});

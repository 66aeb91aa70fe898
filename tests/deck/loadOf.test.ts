import {describe, expect, test} from "vitest";
import {handbookCriteria, type Criteria} from "../../lib/deck/criteria.js";
import {lastingPsf, unfactoredPsf} from "../../lib/deck/loadOf.js";
import {leastShare} from "../../lib/deck/shares.js";
import type {Member} from "../../lib/member/member.js";

/** 50 psf of its own. */
const SLAB = {selfWeightPlf: 400, toppingWeightPlf: 100, widthFt: 10} as Member;
const RULES: Criteria = {...handbookCriteria(false), superimposedDeadPsf: 14, deadOnlyFactor: 1.5};

describe("the load behind a factored one", () => {
  test("by hand: of 172.8 psf, 76.8 go to 64 psf of dead load, and 96 leave 60 psf of live load", () => {
    expect(unfactoredPsf(SLAB, 172.8, RULES)).toBeCloseTo(14 + 60, 9);
  });

  test("is dead alone where the combination without live load is used up first", () => {
    // 1.5 (50 + 10) = 90; at 1.5 (50 + 14) = 96 all dead load fits, and 0.3 x 64 / 1.6 of live load beside it.
    expect(unfactoredPsf(SLAB, 90, RULES)).toBe(10);
    expect(unfactoredPsf(SLAB, 96, RULES)).toBeCloseTo(14 + 12, 9);
    expect(unfactoredPsf(SLAB, 60, RULES)).toBe(-10);
  });

  test("whose lasting part is given: half of the live load stays, so what it may exceed the dead load by counts twice", () => {
    const rules: Criteria = {...RULES, sustainedLiveShare: 0.5};
    expect(lastingPsf(44, rules)).toBe(14 + 60);
    expect(lastingPsf(5, rules)).toBe(5);
    expect(lastingPsf(14, {...rules, sustainedLiveShare: 0})).toBe(14);
    expect(lastingPsf(15, {...rules, sustainedLiveShare: 0})).toBeUndefined();
  });
});

describe("the place where a resistance is least beside the moment", () => {
  test.each([[0, 12, 0.5, 26], [0, 20, 0.4, 26], [0.3, 1, 0.5, 1.4], [0, 25, 0.5, 26]])("is where a search finds it: from %d to %d, from %d to %d", (start, atStart, end, atEnd) => {
    const beside = (x: number) => (atStart + ((atEnd - atStart) * (x - start)) / (end - start)) / (x * (1 - x));
    let best = end;
    for (let x = 0.02; x <= end; x += 0.0005) if (beside(x) < beside(best)) best = x;
    expect(Math.abs(leastShare(start, atStart, end, atEnd) - best)).toBeLessThan(0.001);
  });

  test("is the far end where the resistance does not grow", () => {
    expect(leastShare(0, 20, 0.4, 20)).toBe(0.4);
    expect(leastShare(0, 20, 0.4, 18)).toBe(0.4);
  });

  test("stays out of the stretch where the strands take hold, though they lie at mid-depth of the end and leave nothing there", () => {
    expect(leastShare(0, 0, 0.5, 20)).toBeCloseTo(0.05 * (Math.sqrt(21) - 1), 12);
  });
});

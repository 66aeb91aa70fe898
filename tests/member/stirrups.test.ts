import {describe, expect, test} from "vitest";
import {leastStirrupsIn2PerFt, mostStirrups, stirrups} from "../../lib/member/stirrups.js";
import type {ShearAt} from "../../lib/member/shear.js";
import {memberWith} from "../support/members.js";

/** A place where the concrete carries 30 kip over 20 in of depth. */
const PLACE: ShearAt = {share: 0.1, depthIn: 20, highlyPrestressed: true, flexureShearKip: 30, webShearKip: 40, concreteKip: 30};

describe("stirrups", () => {
  test("of Grade 60 take what the concrete leaves, over the depth", () => {
    // 45/0.75 - 30 = 30 kip; over 60 ksi and 20 in: 0.025 in2/in, 0.3 in2/ft.
    expect(stirrups(memberWith("10DT24", "68-S"), PLACE, 45).forShearIn2PerFt).toBeCloseTo(0.3, 12);
    // What the concrete carries asks for none.
    expect(stirrups(memberWith("10DT24", "68-S"), PLACE, 22.5).forShearIn2PerFt).toBe(0);
    expect(stirrups(memberWith("10DT24", "68-S"), PLACE, 15).forShearIn2PerFt).toBe(0);
  });

  test("are asked at the least from half of what the concrete may carry on", () => {
    // Half of 0.75 x 30 is 11.25 kip.
    expect(stirrups(memberWith("10DT24", "68-S"), PLACE, 11.25).leastIn2PerFt).toBe(0);
    expect(stirrups(memberWith("10DT24", "68-S"), PLACE, 11.26).leastIn2PerFt).toBeGreaterThan(0.04);
  });

  test("at the least are Aps fpu/(80 fyt d) sqrt(d/bw) in a well prestressed web, and 0.75 sqrt(f'c) bw/fyt in any other", () => {
    // Six half-inch strands: 0.918 x 270/(80 x 60 x 20) sqrt(20/9.5) = 0.00374618 in2/in; 12 in to the foot.
    expect(stirrups(memberWith("10DT24", "68-S"), PLACE, 30).leastIn2PerFt).toBeCloseTo(12 * 0.00374618, 6);
    // 0.75 sqrt(5,000) = 53.03 psi on 9.5 in.
    expect(stirrups(memberWith("10DT24", "68-S"), {...PLACE, highlyPrestressed: false}, 30).leastIn2PerFt).toBeCloseTo((12 * 53.033 * 9.5) / 60000, 6);
  });

  test("at the least are 50 psi of web where 0.75 sqrt(f'c) is less, and never more than any beam's", () => {
    const web = {strengthPsi: 4000, webWidthIn: 10, depthIn: 20, strandAreaIn2: 1, strandStrengthKsi: 270, yieldKsi: 60, highlyPrestressed: false};
    // 0.75 sqrt(4,000) = 47.4 psi.
    expect(leastStirrupsIn2PerFt(web)).toBeCloseTo((12 * 50 * 10) / 60000, 12);
    // Eight square inches of strand would ask for 0.38 in2/ft.
    expect(leastStirrupsIn2PerFt({...web, strandAreaIn2: 8, highlyPrestressed: true})).toBeCloseTo(0.1, 12);
  });

  test("cannot be put into planks and slabs", () => {
    for (const slab of [memberWith("4HC8", "66-S"), memberWith("4FS8", "88-S")]) expect(stirrups(slab, PLACE, 45)).toEqual({forShearIn2PerFt: 0, leastIn2PerFt: 0});
  });

  test("of a span are the most that a place asks by its shear, with the greatest least of any", () => {
    const places = [
      {share: 0.05, forShearIn2PerFt: 0.1, leastIn2PerFt: 0.04},
      {share: 0.2, forShearIn2PerFt: 0.15, leastIn2PerFt: 0.05},
      {share: 0.3, forShearIn2PerFt: 0.02, leastIn2PerFt: 0.07},
      {share: 0.4, forShearIn2PerFt: 0.15, leastIn2PerFt: 0.01},
    ];
    expect(mostStirrups(places)).toEqual({share: 0.2, forShearIn2PerFt: 0.15, leastIn2PerFt: 0.07});
  });
});

import {describe, expect, test} from "vitest";
import {camber} from "../../lib/member/camber.js";
import {meanDifferenceIn, neighbors} from "../../lib/topping/neighbors.js";
import {SCATTER} from "../../lib/topping/scatter.js";
import {spreadBasis} from "../../lib/topping/spreadBasis.js";
import {memberWith} from "../support/members.js";
import {NO_SCATTER, spreadNow} from "../support/spread.js";

const MEMBER = memberWith("10DT34", "128-S");
const CAMBER = camber(MEMBER, 60, 100);

describe("neighbors", () => {
  test("differ at midspan by the mean of two normal deviates", () => {
    const joint = neighbors(MEMBER, CAMBER, 60);
    expect(joint.meanIn).toBeCloseTo((2 / Math.sqrt(Math.PI)) * joint.deviationIn, 12);
    expect(joint.greatestIn).toBeCloseTo(joint.meanIn, 9);
    expect((joint.higherIn[20] as number) - (joint.lowerIn[20] as number)).toBeCloseTo(joint.meanIn, 9);
    expect(joint.lowerIn[20]).toBeCloseTo(CAMBER.erectionIn, 12);
    expect(joint.checks.map(({id, verdict}) => [id, verdict])).toEqual([["joint step", "ok"]]);
  });

  test("differ on average as pieces tried by chance do", () => {
    const {difference} = spreadNow({basis: spreadBasis(MEMBER, CAMBER, 60), scatter: SCATTER, seed: 5, count: 20_000});
    // First order against lognormal causes: within a twentieth.
    expect(Math.abs(neighbors(MEMBER, CAMBER, 60).meanIn / difference.mean - 1)).toBeLessThan(0.05);
  });

  test("of one bed differ less, and of no scatter not at all", () => {
    expect(meanDifferenceIn(1, {likeness: 0.75})).toBeCloseTo(meanDifferenceIn(1, {likeness: 0}) / 2, 12);
    expect(neighbors(MEMBER, CAMBER, 60, NO_SCATTER).greatestIn).toBe(0);
  });

  test("of strands that lift nothing do not differ by lift", () => {
    // Nothing else to be seen of it here: the lower is the design's own, and so is the higher.
    const level = neighbors(MEMBER, {...CAMBER, prestressIn: 0}, 60);
    expect(level.higherIn).toEqual(level.lowerIn);
    expect(level.greatestIn).toBe(0);
  });

  test("fail where they stray further than the trade allows", () => {
    const wild = neighbors(MEMBER, CAMBER, 60, {...SCATTER, stiffness: 0.25, releaseStrength: 0.3, force: 0.2, age: 1, weight: 0.2, lengthIn: 3});
    expect(wild.meanIn).toBeGreaterThan(0.75);
    expect(wild.checks[0]?.verdict).toBe("fails");
  });
});

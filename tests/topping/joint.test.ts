import {describe, expect, test} from "vitest";
import {camber, camberCurve} from "../../lib/member/camber.js";
import {camberToleranceIn, jointStep} from "../../lib/topping/joint.js";
import {memberWith} from "../support/members.js";

describe("camberToleranceIn", () => {
  test("is a quarter inch in ten feet, and three quarters at most", () => {
    expect([10, 20, 30, 60, 90].map(camberToleranceIn)).toEqual([0.25, 0.5, 0.75, 0.75, 0.75]);
  });
});

describe("jointStep", () => {
  const member = memberWith("10DT34", "128-S");
  const own = camber(member, 60, 100);
  const design = camberCurve(member, own);
  /** A neighbor whose strands lift so many times as much. */
  const other = (times: number) => camberCurve(member, {...own, prestressIn: times * own.prestressIn});

  test("is nothing between equals", () => {
    const {greatestIn, checks} = jointStep(design, design, 60);
    expect(greatestIn).toBe(0);
    expect(checks[0]?.verdict).toBe("ok");
  });

  test("is greatest at midspan, nothing at the ends, and as high as the cambers differ", () => {
    const {points, greatestIn} = jointStep(design, other(1.1), 60);
    expect(greatestIn).toBeCloseTo(0.1 * 1.8 * own.prestressIn, 9);
    expect(points[20]?.stepIn).toBeCloseTo(greatestIn, 9);
    expect(points[0]?.stepIn).toBeCloseTo(0, 12);
    expect(jointStep(other(1.1), design, 60).points[20]?.stepIn).toBeCloseTo(-greatestIn, 9);
  });

  test("fails where neighbors differ by more than the trade allows", () => {
    // 0.75 in is the most at 60 ft.
    const times = 0.75 / (1.8 * own.prestressIn);
    expect(jointStep(design, other(1 + 1.01 * times), 60).checks[0]?.verdict).toBe("fails");
    expect(jointStep(design, other(1 - 1.01 * times), 60).checks[0]?.verdict).toBe("fails");
    expect(jointStep(design, other(1 + 0.9 * times), 60).checks[0]?.verdict).toBe("ok");
  });
});

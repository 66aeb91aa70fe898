import {describe, expect, test} from "vitest";
import {camber} from "../../lib/member/camber.js";
import {allowedSagIn, countedMovementIn, creepSagIn} from "../../lib/member/sagLimit.js";
import {memberWith} from "../support/members.js";

describe("sag limits", () => {
  test("are parts of the span", () => {
    expect(allowedSagIn("L/360", 60)).toBe(2);
    expect(allowedSagIn("L/480", 60)).toBe(1.5);
    expect(allowedSagIn("L/240", 60)).toBe(3);
  });
  test("count the creep that comes after the floor is in place, and none where the member goes on rising", () => {
    const long = camber(memberWith("10DT24", "68-S", {toppingIn: 2}), 54, 200);
    expect(creepSagIn(long)).toBeCloseTo(long.toppedIn + long.superimposedIn - long.longTermIn, 12);
    expect(creepSagIn(long)).toBeGreaterThan(0);
    expect(creepSagIn(camber(memberWith("10DT24", "128-D1"), 40, 0))).toBe(0);
  });
  test("count the live load's own sag alone against L/360", () => {
    expect(countedMovementIn("L/360", {toppedIn: 1, superimposedIn: -0.1, longTermIn: 0}, 0.5, 1)).toBe(0.5);
  });
  test("count what creeps on under dead load, and the lasting part of the live load three times, where partitions are attached", () => {
    // 1 in up, 0.1 down by dead load, and 0.3 left after years: 0.6 of creep. Live 0.5, and a quarter of it twice more.
    for (const limit of ["L/480", "L/240"] as const) expect(countedMovementIn(limit, {toppedIn: 1, superimposedIn: -0.1, longTermIn: 0.3}, 0.5, 0.25)).toBeCloseTo(0.6 + 0.5 + 0.25, 12);
  });
});

import fc from "fast-check";
import {expect, test} from "vitest";
import {endRotation, type EndRotationInput} from "../../lib/edgeBeam/rotation.js";
import {hold, within} from "../properties/arbitrary.js";
import {refused} from "../support/errors.js";

const of = (changes: Partial<EndRotationInput> = {}) =>
  endRotation({torsionKipIn: 1200, reactionKip: 130, bearingOffsetIn: 0, leverIn: 48, ...changes});

test("the couple is the torsion over the height between the connections", () => {
  // 1,200 / 48 = 25 kip: the top is held away from the floor, the bottom toward it.
  expect(of()).toEqual({overturningKipIn: 1200, topKip: 25, bottomKip: -25, checks: []});
});

test("a bearing nearer to the load takes some of it, one beyond the load turns it round", () => {
  // 1,200 - 130 * 3 = 810; 810 / 48 = 16.875. 1,200 - 130 * 12 = -360: -7.5 kip.
  expect(of({bearingOffsetIn: 3})).toMatchObject({overturningKipIn: 810, topKip: 16.875, bottomKip: -16.875});
  expect(of({bearingOffsetIn: 12})).toMatchObject({overturningKipIn: -360, topKip: -7.5, bottomKip: 7.5});
  expect(of({torsionKipIn: 0})).toMatchObject({topKip: 0, bottomKip: 0});
});

test("checks the connections from both sides, whichever way they are pulled", () => {
  expect(of({connectionKip: 30}).checks).toMatchObject([{id: "end rotation", verdict: "ok", demand: 25}]);
  expect(of({connectionKip: 24.9}).checks[0]?.verdict).toBe("fails");
  expect(of({connectionKip: 7.4, bearingOffsetIn: 12}).checks[0]).toMatchObject({verdict: "fails", demand: 7.5});
});

test("the end is in balance", () => {
  hold(400, fc.property(within(-3000, 3000), within(0, 300), within(-10, 10), within(6, 90), (torsionKipIn, reactionKip, bearingOffsetIn, leverIn) => {
    const {topKip, bottomKip} = of({torsionKipIn, reactionKip, bearingOffsetIn, leverIn});
    expect(topKip + bottomKip).toBe(0);
    // Moments about the web's center line at the lower connection.
    expect(topKip * leverIn + reactionKip * bearingOffsetIn).toBeCloseTo(torsionKipIn, 6);
  }));
});

test("refuses what cannot be", () => {
  refused(() => of({leverIn: 0}), {path: "leverIn", allowed: "6 to 144 in"});
  refused(() => of({reactionKip: -1}), {path: "reactionKip"});
  refused(() => of({connectionKip: NaN}), {path: "connectionKip"});
});

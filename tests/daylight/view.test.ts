import {describe, expect, test} from "vitest";
import {nearestGroundFt, view} from "../../lib/daylight/view.js";
import {refused} from "../support/errors.js";

const deg = (rise: number, run: number) => (Math.atan2(rise, run) * 180) / Math.PI;
const OPENING = {sillIn: 30, headIn: 108, revealIn: 12};
const SEAT = {distanceIn: 60, eyeIn: 48};

describe("view", () => {
  test("runs from the sill to the head at the glass: a thick upstand hides more ground than a thin one", () => {
    const seen = view(OPENING, SEAT);
    expect(seen.lowDeg).toBeCloseTo(deg(-18, 72), 9);
    expect(seen.highDeg).toBeCloseTo(deg(60, 72), 9);
    expect(seen.viewDeg).toBeCloseTo(deg(60, 72) + deg(18, 72), 9);
    expect(seen.skyDeg).toBeCloseTo(deg(60, 72), 9);
    expect(seen.groundDeg).toBeCloseTo(deg(18, 72), 9);
  });

  test("counts as sky only what is above the skyline", () => {
    expect(view({...OPENING, obstruction: {angleDeg: 20}}, SEAT).skyDeg).toBeCloseTo(deg(60, 72) - 20, 9);
    // 54 ft above the floor is 50 ft above the eye; 44 ft out from the glass, 6 ft from the eye.
    expect(view({...OPENING, obstruction: {heightFt: 54, distanceFt: 44}}, SEAT).skyDeg).toBe(0);
    expect(view({...OPENING, obstruction: {heightFt: 24, distanceFt: 44}}, SEAT).skyDeg).toBeCloseTo(deg(60, 72) - deg(20, 50), 9);
  });

  test("sees only sky over an upstand higher than the eye, from its inner edge up", () => {
    const seen = view({...OPENING, sillIn: 60}, SEAT);
    expect(seen.lowDeg).toBeCloseTo(deg(12, 60), 9);
    expect(seen.groundDeg).toBe(0);
    expect(seen.skyDeg).toBeCloseTo(seen.viewDeg, 12);
  });

  test("is nothing under a head at or below the sill, or below the eye's ray over it", () => {
    for (const headIn of [30, 20, -10]) expect(view({...OPENING, headIn}, SEAT)).toMatchObject({viewDeg: 0, skyDeg: 0, groundDeg: 0});
  });

  test("looks down only, through a head lower than the eye", () => {
    const seen = view({...OPENING, headIn: 42}, SEAT);
    // The head's inner edge cuts first for an eye above it.
    expect(seen.highDeg).toBeCloseTo(deg(-6, 60), 9);
    expect(seen.skyDeg).toBe(0);
    expect(seen.groundDeg).toBeCloseTo(seen.viewDeg, 12);
  });

  test("refuses a place on the far side of the glass", () => {
    refused(() => view(OPENING, {distanceIn: 0, eyeIn: 48}), {path: "distanceIn"});
    refused(() => view(OPENING, {distanceIn: 60, eyeIn: Number.NaN}), {path: "eyeIn"});
  });
});

describe("nearestGroundFt", () => {
  test("is where the line over the sill comes down", () => {
    // 18 in down in 72 in: from 48 in above a floor that is 15 ft up, 228 in down, 912 in out, less 72 in to the glass.
    expect(nearestGroundFt(OPENING, SEAT, 15)).toBeCloseTo((912 - 72) / 12, 9);
    expect(nearestGroundFt({...OPENING, sillIn: 36}, SEAT, 15)).toBeCloseTo((1368 - 72) / 12, 9);
  });

  test("is nowhere behind an upstand as high as the eye", () => {
    expect(nearestGroundFt({...OPENING, sillIn: 48}, SEAT, 15)).toBeUndefined();
    expect(nearestGroundFt({...OPENING, headIn: 20}, SEAT, 15)).toBeUndefined();
  });
});

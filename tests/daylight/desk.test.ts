import {describe, expect, test} from "vitest";
import {deskAtWindow, upstandShadowIn} from "../../lib/daylight/desk.js";
import {refused} from "../support/errors.js";
import {ROOM, WINDOW} from "./room.js";

describe("upstandShadowIn", () => {
  test("is as long as the upstand is high above the desk at 45 degrees, and longer for lower light", () => {
    expect(upstandShadowIn(42, 45)).toBeCloseTo(12, 9);
    expect(upstandShadowIn(42, 30)).toBeCloseTo(12 * Math.sqrt(3), 9);
    expect(upstandShadowIn(30, 20)).toBe(0);
    expect(upstandShadowIn(24, 20)).toBe(0);
    refused(() => upstandShadowIn(42, 0), {path: "altitudeDeg"});
  });
});

describe("deskAtWindow", () => {
  const withSill = (sillIn: number) => deskAtWindow({...ROOM, window: {...WINDOW, sillIn}});

  test("loses nothing to an upstand no higher than the desk, and ever more to a higher one", () => {
    expect(withSill(24).lostShare).toBe(0);
    expect(withSill(30).lostShare).toBe(0);
    expect(withSill(30).hiddenDeg).toBe(0);
    expect(withSill(45).hiddenDeg).toBeCloseTo(45, 9);
    const losses = [33, 36, 39, 42].map((sillIn) => withSill(sillIn).lostShare);
    for (let i = 1; i < losses.length; i++) expect(losses[i]).toBeGreaterThan(1.5 * (losses[i - 1] as number));
  });

  test("compares with the same window from the desk's height up", () => {
    expect(withSill(42).openPercent).toBeCloseTo(withSill(30).directPercent, 9);
    expect(withSill(42).directPercent).toBeCloseTo((1 - withSill(42).lostShare) * withSill(42).openPercent, 9);
  });
});

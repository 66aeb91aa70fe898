import {describe, expect, test} from "vitest";
import {deskAtWindow, skylessStripIn, upstandShadowIn} from "../../lib/daylight/desk.js";
import {sight} from "../../lib/daylight/sight.js";
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

describe("skylessStripIn", () => {
  test("parts the desks that see no sky from those that do", () => {
    const window = {...WINDOW, sillIn: 60, headIn: 100};
    // 12 x 30/40.
    const strip = skylessStripIn(window) as number;
    expect(strip).toBeCloseTo(9, 12);
    const sees = (distanceIn: number) => sight(window, {distanceIn, heightIn: 30, offsetIn: 0}).sky !== undefined;
    expect(sees(8.99)).toBe(false);
    expect(sees(9.01)).toBe(true);
  });

  test("is nothing behind a low upstand, and everywhere under a head below the desk", () => {
    expect(skylessStripIn({...WINDOW, sillIn: 30})).toBe(0);
    expect(skylessStripIn({...WINDOW, sillIn: 10, headIn: 30})).toBeUndefined();
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

import fc from "fast-check";
import {describe, expect, test} from "vitest";
import {gaussLegendre} from "../../lib/daylight/gauss.js";
import type {WindowBand} from "../../lib/daylight/input.js";
import type {Place, SkyPatch} from "../../lib/daylight/sight.js";
import {GRID, endlessWindowShare, patchShare, skyComponent, type SkyGrid} from "../../lib/daylight/skyComponent.js";
import {relativeTransmittance} from "../../lib/daylight/glass.js";
import {overcastLuminance} from "../../lib/daylight/sky.js";
import {hold, within} from "../properties/arbitrary.js";
import {BARE, WINDOW} from "./room.js";

const HALF = {fromRad: -Math.PI / 2, toRad: Math.PI / 2};
const at = (distanceIn: number, offsetIn = 0): Place => ({distanceIn, heightIn: 30, offsetIn});
const finer = (times: number) => ({azimuths: gaussLegendre(24 * times), altitudes: gaussLegendre(8 * times)});

/** The sky component by throwing a net of equal steps over the hemisphere and asking of each ray whether it passes. */
function byRays(window: WindowBand, place: Place): number {
  const [altitudes, azimuths] = [600, 600];
  const halfIn = window.widthFt === "endless" ? Infinity : window.widthFt * 6;
  const passes = (distance: number, across: number, up: number) => {
    const y = place.offsetIn + across * distance;
    const z = place.heightIn + up * distance;
    return Math.abs(y) < halfIn && z > window.sillIn && z < window.headIn;
  };
  const skyline = window.obstruction && "angleDeg" in window.obstruction ? Math.tan((window.obstruction.angleDeg * Math.PI) / 180) : 0;
  let sum = 0;
  for (let i = 0; i < altitudes; i++) {
    const a = ((i + 0.5) * Math.PI) / 2 / altitudes;
    for (let j = 0; j < azimuths; j++) {
      const phi = -Math.PI / 2 + ((j + 0.5) * Math.PI) / azimuths;
      const [across, up] = [Math.tan(phi), Math.tan(a) / Math.cos(phi)];
      if (up <= skyline || !passes(place.distanceIn, across, up) || !passes(place.distanceIn + window.revealIn, across, up)) continue;
      sum += overcastLuminance((a * 180) / Math.PI) * Math.sin(a) * Math.cos(a) * relativeTransmittance(Math.cos(a) * Math.cos(phi));
    }
  }
  const share = (sum * (Math.PI / 2 / altitudes) * (Math.PI / azimuths)) / ((7 * Math.PI) / 9);
  return share * window.transmittanceShare * window.maintenanceShare * (1 - window.frameShare);
}

describe("patchShare", () => {
  test.each(["overcast", "uniform"] as const)("gives the whole of an %s sky to open ground", (sky) => {
    const half = patchShare({...HALF, lowSlope: 0, highSlope: Infinity}, {sky});
    expect(Math.abs(2 * half - 1)).toBeLessThan(1e-6);
  });

  test.each([0.05, 0.3, 1, 2, 5])("meets the closed forms of an endless window up to the slope %d", (slope) => {
    const patch = {...HALF, lowSlope: 0, highSlope: slope};
    const angle = Math.atan(slope);
    expect(patchShare(patch) / endlessWindowShare(angle)).toBeCloseTo(1, 6);
    expect(patchShare(patch, {sky: "uniform"})).toBeCloseTo((1 - Math.cos(angle)) / 2, 6);
  });

  test("adds up over parts of a patch", () => {
    const [low, middle, high] = [0.1, 0.7, 1.9];
    const part = (lowSlope: number, highSlope: number) => patchShare({fromRad: -0.4, toRad: 1, lowSlope, highSlope}, {glazed: true});
    expect(part(low, middle) + part(middle, high)).toBeCloseTo(part(low, high), 7);
  });
});

/** The share of a patch with every azimuth looked at by itself, in the same order. */
function byAllAzimuths({fromRad, toRad, lowSlope, highSlope}: SkyPatch, {azimuths, altitudes}: SkyGrid): number {
  const sine = (tangent: number) => tangent / Math.sqrt(1 + tangent * tangent);
  let total = 0;
  azimuths.nodes.forEach((x, i) => {
    const cosine = Math.cos((fromRad + toRad) / 2 + ((toRad - fromRad) / 2) * x);
    const [low, high] = [sine(lowSlope * cosine), sine(highSlope * cosine)];
    const reach = (high - low) / 2;
    let ring = 0;
    altitudes.nodes.forEach((y, j) => {
      const s = (low + high) / 2 + reach * y;
      ring += ((s * (1 + 2 * s)) / 3) * (altitudes.weights[j] as number) * relativeTransmittance(cosine * Math.sqrt(1 - s * s));
    });
    total += (azimuths.weights[i] as number) * reach * ring;
  });
  return (((toRad - fromRad) / 2) * total) / ((7 * Math.PI) / 9);
}

test("the side of a patch that mirrors the other has its light, to the last digit", () => {
  // Of an odd number of azimuths one lies in the middle, and of some numbers not all are mirrored to the last digit.
  const grids = [GRID, ...[1, 5, 12, 17].map((order) => ({azimuths: gaussLegendre(order), altitudes: gaussLegendre(6)}))];
  hold(100, fc.property(within(0, 1.5), fc.option(within(0, 1)), within(0, 2), within(0, 3), (toRad, beside, lowSlope, rise) => {
    const patch = {fromRad: beside === null ? -toRad : toRad * (2 * beside - 1), toRad, lowSlope, highSlope: lowSlope + rise};
    for (const grid of grids) expect(patchShare(patch, {glazed: true, grid})).toBe(byAllAzimuths(patch, grid));
  }));
});

describe("endlessWindowShare", () => {
  test("is half the sky at a right angle, and grows with the square of its angle near the horizon", () => {
    expect(endlessWindowShare(Math.PI / 2)).toBeCloseTo(0.5, 12);
    // Near the horizon the sky is a third as bright as the zenith: (3/(7 pi)) (pi/4) b^2.
    expect(endlessWindowShare(1e-3) / ((3 / 28) * 1e-6)).toBeCloseTo(1, 2);
  });
});

describe("skyComponent", () => {
  const cases: [string, WindowBand, Place][] = [
    ["a window before the desk", WINDOW, at(72)],
    ["a window with a deep reveal, close by", {...WINDOW, revealIn: 30}, at(20)],
    ["a desk beside the window", {...WINDOW, widthFt: 8}, at(96, 90)],
    ["a low sill", {...WINDOW, sillIn: 10}, at(120)],
    ["a skyline", {...WINDOW, obstruction: {angleDeg: 20}}, at(100, -40)],
  ];
  test.each(cases)("agrees with a net of rays for %s", (_, window, place) => {
    const rays = byRays(window, place);
    expect(rays).toBeGreaterThan(0.001);
    expect(Math.abs(skyComponent(window, place) / rays - 1)).toBeLessThan(0.01);
  });

  test.each([6, 24, 120, 360, 600])("changes by less than 0.5 %% with half the grid, %d in from the wall", (distanceIn) => {
    for (const widthFt of [4, 20, "endless"] as const) {
      for (const offsetIn of [0, 20]) {
        const window = {...WINDOW, widthFt};
        const usual = skyComponent(window, at(distanceIn, offsetIn), GRID);
        expect(Math.abs(skyComponent(window, at(distanceIn, offsetIn), finer(0.5)) / usual - 1)).toBeLessThan(0.005);
        expect(Math.abs(skyComponent(window, at(distanceIn, offsetIn), finer(2)) / usual - 1)).toBeLessThan(0.0005);
      }
    }
  });

  test("of a very long window is that of an endless one", () => {
    const long = skyComponent({...WINDOW, widthFt: 2000}, at(200));
    expect(long / skyComponent({...WINDOW, widthFt: "endless"}, at(200))).toBeCloseTo(1, 4);
  });

  test("grows with the head and shrinks with sill, reveal, frames, dirt, skyline and distance", () => {
    const value = (changes: Partial<WindowBand>, distanceIn = 60) => skyComponent({...WINDOW, ...changes}, at(distanceIn));
    const usual = value({});
    expect(value({headIn: 126})).toBeGreaterThan(usual);
    for (const changes of [{sillIn: 42}, {revealIn: 24}, {frameShare: 0.3}, {maintenanceShare: 0.6}, {obstruction: {angleDeg: 40}}]) {
      expect(value(changes)).toBeLessThan(usual);
    }
    expect(value({}, 90)).toBeLessThan(usual);
    expect(value({frameShare: 0.32})).toBeCloseTo((usual * 0.68) / 0.85, 12);
  });

  test("is nothing where the skyline hides all, or where the head is below the desk", () => {
    expect(skyComponent({...WINDOW, obstruction: {heightFt: 200, distanceFt: 10}}, at(200))).toBe(0);
    expect(skyComponent({...WINDOW, ...BARE, sillIn: 10, headIn: 28}, at(60))).toBe(0);
  });
});

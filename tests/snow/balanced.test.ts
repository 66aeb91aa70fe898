import {describe, expect, test} from "vitest";
import {balancedSnow, slopeDeg, snowDensityPcf, type SnowSite} from "../../lib/snow/balanced.js";
import {EXPOSURE_FACTOR, exposureFactor, SNOW_IMPORTANCE, THERMAL_FACTOR} from "../../lib/snow/factors.js";
import {refused} from "../support/errors.js";

const site = (groundPsf: number, others: Partial<SnowSite> = {}): SnowSite => ({groundPsf, exposureFactor: 1, thermalFactor: 1, importance: 1, ...others});

describe("balanced snow", () => {
  test("of 40 psf on the ground, sheltered: 33.6 psf, 19.2 pcf, 1.75 ft (Metal Building Systems Manual 2006, 1.3.5.14 example c, seen in text)", () => {
    const snow = balancedSnow(site(40, {exposureFactor: 1.2}), 0.25, 50);
    expect(snow.flatPsf).toBeCloseTo(33.6, 9);
    expect(snow.densityPcf).toBeCloseTo(19.2, 9);
    expect(snow.depthFt).toBeCloseTo(1.75, 9);
    expect(snow.minimumPsf).toBe(20);
    expect(snow.rainOnSnowPsf).toBe(0);
  });

  test("of 25 psf: 17.5 psf of 17.25 pcf (worked comparison of editions by a practicing engineer, about 2025, seen in text)", () => {
    const snow = balancedSnow(site(25), 0.25, 50);
    expect([snow.flatPsf, snow.densityPcf]).toEqual([17.5, 17.25]);
  });

  test("grows with each factor alone, in proportion", () => {
    const plain = balancedSnow(site(30), 0, 50).flatPsf;
    expect(plain).toBeCloseTo(21, 12);
    for (const [name, factor] of [["exposureFactor", 0.9], ["thermalFactor", 1.2], ["importance", 1.1]] as const) {
      expect(balancedSnow(site(30, {[name]: factor}), 0, 50).flatPsf).toBeCloseTo(factor * plain, 12);
    }
  });

  test("weighs 14 pcf and more, never more than 30, which 123 psf reaches", () => {
    expect([0, 20, 50, 123, 124, 300].map(snowDensityPcf).map((pcf) => Number(pcf.toFixed(3)))).toEqual([14, 16.6, 20.5, 29.99, 30, 30]);
  });
});

describe("the minimum for low slopes", () => {
  test("follows the ground snow up to 20 psf and stays there, times the importance", () => {
    const least = (groundPsf: number, importance: number) => balancedSnow(site(groundPsf, {importance}), 0, 50).minimumPsf;
    expect([0, 5, 19, 20, 21, 100].map((psf) => least(psf, 1))).toEqual([0, 5, 19, 20, 20, 20]);
    expect([15, 20, 60].map((psf) => Number(least(psf, 1.2).toFixed(9)))).toEqual([18, 24, 24]);
  });

  test("is above the balanced load where little snow falls on a well-swept roof, below it where much does", () => {
    const swept = balancedSnow(site(25, {exposureFactor: 0.8}), 0, 50);
    // 0.7 x 0.8 x 25 = 14 psf.
    expect([swept.flatPsf, swept.minimumPsf]).toEqual([expect.closeTo(14, 9), 20]);
    expect(balancedSnow(site(30), 0, 50).flatPsf).toBeGreaterThan(20);
  });
});

describe("rain on snow", () => {
  const rain = (groundPsf: number, rise: number, lengthFt: number) => balancedSnow(site(groundPsf), rise, lengthFt).rainOnSnowPsf;

  test("adds 5 psf up to 20 psf on the ground, nothing above, and nothing where no snow falls", () => {
    expect([0, 0.5, 15, 20, 20.01, 40].map((psf) => rain(psf, 0, 50))).toEqual([0, 5, 5, 5, 0, 0]);
  });

  test("stays where the slope in degrees is below W/50: 1/4 in per ft is 1.1935 deg, and drains 59.67 ft", () => {
    // tan 1.1935 deg = 0.25/12 = 0.020833; 50 x 1.1935 = 59.67.
    expect(slopeDeg(0.25)).toBeCloseTo(1.19349, 5);
    expect([59, 59.6, 59.7, 60].map((lengthFt) => rain(15, 0.25, lengthFt))).toEqual([0, 0, 5, 5]);
    expect(rain(15, 12 * Math.tan((1 * Math.PI) / 180), 50)).toBe(0);
    expect(rain(15, 12 * Math.tan((0.999 * Math.PI) / 180), 50)).toBe(5);
  });
});

describe("factors for snow", () => {
  test("are those of the tables (ASCE 7-16 Tables 7.3-1, 7.3-2 and 1.5-2, from memory)", () => {
    expect(Object.values(EXPOSURE_FACTOR).map(({fully, partly, sheltered}) => [fully, partly, sheltered])).toEqual([[0.9, 1, 1.2], [0.9, 1, 1.1], [0.8, 0.9, 1], [0.7, 0.8, null], [0.7, 0.8, null]]);
    expect(THERMAL_FACTOR).toEqual({heated: 1, cool: 1.1, unheated: 1.2, frozen: 1.3});
    expect(SNOW_IMPORTANCE).toEqual({I: 0.8, II: 1, III: 1.1, IV: 1.2});
  });

  test("of a sheltered roof above the tree line is the greatest of all, and said to be none of the table's", () => {
    expect(exposureFactor({terrain: "mountain", exposure: "sheltered"})).toEqual({factor: 1.2, inTable: false});
    expect(exposureFactor({terrain: "C", exposure: "sheltered"})).toEqual({factor: 1.1, inTable: true});
  });
});

test("what cannot be is refused by name", () => {
  refused(() => balancedSnow(site(-1), 0, 50), {path: "groundPsf"});
  refused(() => balancedSnow(site(30), 4, 50), {path: "riseInPerFt"});
  refused(() => balancedSnow(site(30), 0, 0), {path: "eaveToRidgeFt"});
});

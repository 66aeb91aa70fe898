import {describe, expect, test} from "vitest";
import {balancedSnow, type SnowSite} from "../../lib/snow/balanced.js";
import {drift, figureHeight, type DriftInput} from "../../lib/snow/drift.js";

const snow = (groundPsf: number, others: Partial<SnowSite> = {}) => balancedSnow({groundPsf, exposureFactor: 1, thermalFactor: 1, importance: 1, ...others}, 0, 50);
/** Much height and no gap, so that only the fetch counts. */
const free = (kind: DriftInput["kind"], fetchFt: number, others: Partial<DriftInput> = {}): DriftInput => ({kind, fetchFt, wallFt: 30, roofFt: 200, ...others});

describe("the height of the figure", () => {
  test("for 30 psf and 30 ft is 1.86 ft (ASCE 7-16 C7.6, example 1; seen quoted)", () => {
    // 0.43 x 3.1072 x 2.5149 - 1.5 = 3.3602 - 1.5.
    expect(figureHeight(snow(30), 30).heightFt).toBeCloseTo(1.86, 2);
  });

  test("for 40 psf is 3.81 ft from 100 ft, and three quarters of it from 170 ft 3.63 ft (ASCE 7-10 C7, example 3; from memory)", () => {
    expect(figureHeight(snow(40), 100).heightFt).toBeCloseTo(3.81, 2);
    expect(0.75 * figureHeight(snow(40), 170).heightFt).toBeCloseTo(3.63, 2);
  });

  test("grows with the root of the importance", () => {
    expect(figureHeight(snow(40, {importance: 1.2}), 100).heightFt / figureHeight(snow(40), 100).heightFt).toBeCloseTo(Math.sqrt(1.2), 12);
  });

  test("of a fetch below 20 ft is the one of 20 ft, or what half of its snow fills, if that is less", () => {
    // At 70 psf, Is 1.2, 4 ft: sqrt(1.2 x 70 x 4 / (4 x 23.1)) = 1.907 ft; the curve gives 2.34 ft.
    const short = figureHeight(snow(70, {importance: 1.2}), 4);
    expect(short.heightFt).toBeCloseTo(1.9069, 4);
    expect(short.sourceFt).toBe(short.heightFt);
    // A triangle that high and four times as wide has half of the fetch's snow: 2 h^2 gamma = pg lu / 2.
    expect(2 * short.heightFt ** 2 * 23.1).toBeCloseTo((1.2 * 70 * 4) / 2, 9);
    // At 19 ft the snow is more than the curve asks for, and the curve does not go on falling.
    const [below, at, above] = [19, 20, 21].map((fetchFt) => figureHeight(snow(30), fetchFt));
    expect(below?.heightFt).toBe(at?.heightFt);
    expect(below?.sourceFt).toBeCloseTo(Math.sqrt((30 * 19) / (4 * 17.9)), 12);
    expect(at?.sourceFt).toBeUndefined();
    expect(above?.heightFt).toBeGreaterThan(at?.heightFt ?? Infinity);
  });

  test("is nothing where no snow falls", () => expect(figureHeight(snow(0), 100).heightFt).toBe(0));
});

describe("a drift against a higher part", () => {
  test("of 40 ft at 25 psf: 2.08 ft, 35.8 psf, and 53.3 psf with the balanced snow (worked comparison of editions, about 2025, seen in text)", () => {
    const found = drift(snow(25), free("leeward", 40, {wallFt: 4, roofFt: 30}));
    expect(found.heightFt).toBeCloseTo(2.08, 2);
    expect(found.peakPsf).toBeCloseTo(35.8, 1);
    expect(found.peakPsf + snow(25).flatPsf).toBeCloseTo(53.3, 1);
    expect(found.clearFt).toBeCloseTo(4 - 17.5 / 17.25, 12);
    expect(found.widthFt).toBeCloseTo(8.31, 2);
  });

  test("of 100 ft at 40 psf is 15.2 ft wide and weighs 73 psf (ASCE 7-10 C7, example 3; from memory)", () => {
    const found = drift(snow(40), free("leeward", 100, {wallFt: 10, roofFt: 170}));
    expect(found.widthFt).toBeCloseTo(15.2, 1);
    expect(found.peakPsf).toBeCloseTo(73.1, 1);
  });

  test("is higher in the lee than against the wind for one length, and the wind's for a far longer one", () => {
    const [lee, wind, long] = [drift(snow(30), free("leeward", 60)), drift(snow(30), free("windward", 60)), drift(snow(30), free("windward", 300))];
    expect(wind.heightFt).toBeCloseTo(0.75 * lee.heightFt, 12);
    expect(long.heightFt).toBeGreaterThan(lee.heightFt);
    for (const {heightFt, widthFt} of [lee, wind, long]) expect(widthFt).toBeCloseTo(4 * heightFt, 12);
  });

  test("no higher than the clear height: then 4 h^2/hc wide, of the same section, until 8 hc", () => {
    const wants = drift(snow(30), free("leeward", 100)).heightFt;
    const hb = snow(30).depthFt;
    const at = (clearFt: number) => drift(snow(30), free("leeward", 100, {wallFt: hb + clearFt}));
    const [just, less] = [at(wants), at(0.8 * wants)];
    expect([just.heightFt, just.widthFt]).toEqual([expect.closeTo(wants, 9), expect.closeTo(4 * wants, 9)]);
    expect(less.heightFt).toBeCloseTo(0.8 * wants, 9);
    // The triangle keeps its area: h w / 2 = 2 wants^2.
    expect((less.heightFt * less.widthFt) / 2).toBeCloseTo(2 * wants ** 2, 9);
    // From hc = wants / sqrt(2) on, 4 wants^2/hc would be more than 8 hc.
    const [before, after] = [at(wants / 1.41), at(wants / 1.42)];
    expect(before.widthFt).toBeCloseTo(4 * wants * 1.41, 9);
    expect(after.widthFt).toBeCloseTo((8 * wants) / 1.42, 9);
  });

  test("in the lee is no higher than 60 % of a short roof's length", () => {
    // 300 psf: hd of 100 ft is 0.43 x 4.642 x 4.196 - 1.5 = 6.876 ft.
    expect(drift(snow(300), free("leeward", 100, {roofFt: 10})).heightFt).toBeCloseTo(6, 12);
    expect(drift(snow(300), free("leeward", 100, {roofFt: 12})).heightFt).toBeCloseTo(6.876, 2);
    expect(drift(snow(300), free("windward", 100, {roofFt: 5})).heightFt).toBeCloseTo(0.75 * 6.876, 2);
  });

  test("is left out where the snow reaches the top, or leaves less than a fifth of its height", () => {
    const hb = snow(30).depthFt;
    const state = (wallFt: number) => drift(snow(30), free("leeward", 100, {wallFt})).state;
    expect([state(hb - 0.01), state(hb), state(1.19 * hb), state(1.201 * hb)]).toEqual(["snow to the top", "snow to the top", "too little height", "counts"]);
    // Just a fifth counts: at 20 psf 14/16.6 = 0.8434 ft of snow, and 0.1687 ft above it.
    const fifth = drift(snow(20), free("leeward", 100, {wallFt: 1.2 * snow(20).depthFt}));
    expect([fifth.clearFt / snow(20).depthFt, fifth.state]).toEqual([0.2, "counts"]);
    const none = drift(snow(30), free("leeward", 100, {wallFt: 1.1 * hb}));
    expect([none.peakPsf, none.widthFt, none.heightFt]).toEqual([0, 0, 0]);
    expect(drift(snow(0), free("leeward", 100)).state).toBe("no snow");
  });
});

describe("a drift across a gap", () => {
  const across = (gapFt: number, wallFt = 10, kind: DriftInput["kind"] = "leeward") => drift(snow(30), free(kind, 100, {wallFt, gapFt}));

  test("in the lee spreads to 6 hd and stays below the line that falls 1 in 6 from the higher roof", () => {
    const hd = drift(snow(30), free("leeward", 100)).heightFt;
    const near = across(1);
    expect([near.heightFt, near.widthFt]).toEqual([expect.closeTo(hd, 9), expect.closeTo(6 * hd, 9)]);
    // 4 ft high, 15 ft away: (24 - 15)/6 = 1.5 ft and 9 ft.
    const low = across(15, 4);
    expect([low.heightFt, low.widthFt]).toEqual([expect.closeTo(1.5, 12), expect.closeTo(9, 12)]);
  });

  test("ends at 20 ft, and at six times the height", () => {
    expect([across(19.9).state, across(20).state, across(30).state]).toEqual(["counts", "too far", "too far"]);
    expect([across(17.9, 3).state, across(18, 3).state]).toEqual(["counts", "too far"]);
  });

  test("against the wind begins in the gap: what is left of the triangle lies on the roof", () => {
    const whole = drift(snow(30), free("windward", 100));
    const cut = across(4, 30, "windward");
    expect(cut.widthFt).toBeCloseTo(whole.widthFt - 4, 12);
    expect(cut.peakPsf).toBeCloseTo(whole.peakPsf - 4 * (whole.peakPsf / whole.widthFt), 9);
    expect(across(19, 30, "windward").state).toBe("too far");
    // Against a wall of 2.5 ft little snow drifts 8 hc = 18.1 ft out from it, but the wall shelters no more than 6 x 2.5 = 15 ft.
    const wide = (gapFt: number) => drift(snow(5), free("windward", 3000, {wallFt: 2.5, gapFt}));
    expect(wide(0).wholeWidthFt).toBeCloseTo(8 * (2.5 - 3.5 / 14.65), 9);
    expect([wide(14.9).state, wide(15.1).state]).toEqual(["counts", "too far"]);
  });
});

test("a drift at a parapet is three quarters of the figure's for the roof upwind of it", () => {
  const found = drift(snow(30), free("parapet", 80));
  expect(found.heightFt).toBeCloseTo(0.75 * (0.43 * Math.cbrt(80) * 40 ** 0.25 - 1.5), 12);
  // 3 ft of parapet leave 3 - 1.173 = 1.827 ft, which cut it off.
  const low = drift(snow(30), free("parapet", 80, {wallFt: 3}));
  expect(low.heightFt).toBeCloseTo(1.827, 3);
  expect(low.peakPsf).toBeCloseTo(17.9 * 1.8268, 2);
});

import {describe, expect, test} from "vitest";
import {fillRatio} from "../../lib/member/fillRatio.js";
import type {Member} from "../../lib/member/member.js";
import {standingWater} from "../../lib/roof/standingWater.js";
import {ROOF_INTERVALS, type SurfacePoint} from "../../lib/roof/surface.js";
import {memberWith} from "../support/members.js";

const SPAN_FT = 40;
/** A tee as flexible as is wanted: water on its span grows by 1/(1 - C). */
function withRatio(ratio: number): Member {
  const tee = memberWith("10DT24", "108-S");
  const of = (inertiaIn4: number) => fillRatio(62.4, tee.shape.widthIn, SPAN_FT, tee.modulusKsi, inertiaIn4);
  return {...tee, full: {...tee.full, inertiaIn4: of(1) / ratio}};
}
const STIFF = withRatio(1e-9);

/** Bays of a roof by the height of each at its share of the span, in; drains where the heights of `drains` say so. */
function roof(bays: readonly ((share: number) => number)[], drainsFt: readonly number[]): SurfacePoint[][] {
  return bays.map((height, bay) => Array.from({length: ROOF_INTERVALS + 1}, (_, i) => {
    const share = i / ROOF_INTERVALS;
    const atFt = (bay + share) * SPAN_FT;
    return {atFt, heightIn: height(share), drains: drainsFt.some((at) => Math.abs(at - atFt) < 1e-9)};
  }));
}
const sine = (share: number) => Math.sin(Math.PI * share);

describe("water on a stiff roof", () => {
  test("runs off a plane that falls to its drain, and stands as a wedge above a blocked one", () => {
    // Fall of 10 in over 40 ft; 3 in above the drain reach 12 ft up the slope.
    const plane = roof([(share) => 10 * share], [0]);
    expect(standingWater(plane, STIFF, SPAN_FT, 0)).toMatchObject({greatestIn: 0, momentPsf: 0, settled: true});
    const {bays: [bay], greatestIn, momentPsf} = standingWater(plane, STIFF, SPAN_FT, 3);
    expect(greatestIn).toBeCloseTo(3, 9);
    expect(bay?.depthIn[6]).toBeCloseTo(1.5, 9);
    expect(bay?.depthIn[12]).toBeCloseTo(0, 9);
    // Wedge of 3 x 0.3 L/2 = 0.45 in on the mean.
    expect(bay?.meanIn).toBeCloseTo(0.45, 2);
    // At midspan it bends as half of each strip times its distance from the bearing: 1/2 x int (3 - 10 x) x dx from 0 to
    // 0.3 = 0.0225, of an even load w/8: 8 x 0.0225 = 0.18 in of water, and 5.2 psf an inch.
    expect(momentPsf).toBeCloseTo(0.18 * 5.2, 1);
  });

  test("stays behind the arch of a member that rises from its high bearing", () => {
    // Height 5 (1 - x) + 4 c (x - x^2) with c = 3 in: it rises from the parapet at x = 0 until x = (12 - 5)/24, and the
    // water behind that crest is 12 x^2 deep there.
    const crest = 7 / 24;
    const {greatestIn, bays: [bay]} = standingWater(roof([(share) => 5 * (1 - share) + 12 * (share - share ** 2)], [SPAN_FT]), STIFF, SPAN_FT, 0);
    expect(greatestIn).toBeCloseTo(12 * crest ** 2, 2);
    expect(bay?.depthIn[0]).toBe(greatestIn);
    expect(bay?.depthIn[ROOF_INTERVALS]).toBe(0);
    // With less camber than the fall the arch holds nothing back: 3.2 or 4 c/L against the fall.
    expect(standingWater(roof([(share) => 5 * (1 - share) + 4 * 1.2 * (share - share ** 2)], [SPAN_FT]), STIFF, SPAN_FT, 0).greatestIn).toBe(0);
  });

  test("stands between two arches over their common bearing, unless a drain is there", () => {
    const arch = (share: number) => 2 * sine(share);
    const two = [arch, arch];
    expect(standingWater(roof(two, [0, 80]), STIFF, SPAN_FT, 0).greatestIn).toBeCloseTo(2, 9);
    expect(standingWater(roof(two, [0, 40, 80]), STIFF, SPAN_FT, 0).greatestIn).toBe(0);
    // Behind the last arch it is held by the parapet.
    expect(standingWater(roof(two, [40]), STIFF, SPAN_FT, 0).greatestIn).toBeCloseTo(2, 9);
  });

  test("spills over the lower of two crests", () => {
    const heights = [(share: number) => 3 * sine(share), (share: number) => 1 * sine(share)];
    // The hollow at 40 ft fills to the second bay's crest, 1 in, and no higher.
    expect(standingWater(roof(heights, [0, 80]), STIFF, SPAN_FT, 0).greatestIn).toBeCloseTo(1, 9);
  });

  test("comes to the level of the blocked drain wherever it is deeper than the way out", () => {
    const {bays: [bay]} = standingWater(roof([(share) => -1 * sine(share)], [0, SPAN_FT]), STIFF, SPAN_FT, 2);
    expect(bay?.depthIn[0]).toBeCloseTo(2, 9);
    expect(bay?.depthIn[ROOF_INTERVALS / 2]).toBeCloseTo(3, 6);
  });
});

describe("water on a flexible roof", () => {
  test.each([0.1, 0.25, 0.5])("deepens a half wave by 1/(1 - C), C = %s", (ratio) => {
    const hollow = roof([(share) => -2 * sine(share)], [0, SPAN_FT]);
    const {greatestIn, settled} = standingWater(hollow, withRatio(ratio), SPAN_FT, 0);
    expect(settled).toBe(true);
    expect(greatestIn / (2 / (1 - ratio))).toBeCloseTo(1, 2);
  });

  test.each([0.1, 0.3])("stands on a level roof as the differential equation says, C = %s", (ratio) => {
    // E I y'''' = g s (h + y): with u = h + y and a = (pi/2) C^(1/4), u = h/2 (cosh(2 a x/L)/cosh a + cos(2 a x/L)/cos a)
    // from midspan, so that u'' = 0 and u = h at the bearings.
    const a = (Math.PI / 2) * ratio ** 0.25;
    const {bays: [bay], rounds} = standingWater(roof([() => 0], [0, SPAN_FT]), withRatio(ratio), SPAN_FT, 3);
    expect((bay?.depthIn[ROOF_INTERVALS / 2] as number) / ((3 / 2) * (1 / Math.cosh(a) + 1 / Math.cos(a)))).toBeCloseTo(1, 2);
    expect(bay?.depthIn[0]).toBeCloseTo(3, 9);
    expect(bay?.sagIn).toBeCloseTo((bay?.depthIn[ROOF_INTERVALS / 2] as number) - 3, 2);
    expect(rounds).toBeGreaterThan(2);
  });

  test("gathers without end from C = 1 on, and then says what stands there before the roof sags", () => {
    const hollow = roof([(share) => -2 * sine(share)], [0, SPAN_FT]);
    for (const ratio of [1.05, 3, 100]) {
      const {settled, greatestIn, momentPsf} = standingWater(hollow, withRatio(ratio), SPAN_FT, 0);
      expect(settled).toBe(false);
      expect(greatestIn).toBeCloseTo(2, 9);
      expect(momentPsf).toBeGreaterThan(0);
    }
    expect(standingWater(hollow, withRatio(0.8), SPAN_FT, 0).settled).toBe(true);
    // A dry roof stays dry however flexible it is.
    expect(standingWater(roof([(share) => 10 * share], [0]), withRatio(3), SPAN_FT, 0)).toMatchObject({settled: true, greatestIn: 0});
  });

  test("bends each member on its own", () => {
    const {bays, greatestIn, momentPsf} = standingWater(roof([(share) => -2 * sine(share), () => 0], [0, 40, 80]), withRatio(0.25), SPAN_FT, 0);
    // The bay with the water is the one that is told of.
    expect([greatestIn, momentPsf]).toEqual([bays[0]?.greatestIn, bays[0]?.momentPsf]);
    expect([bays[1]?.greatestIn, bays[1]?.momentPsf]).toEqual([0, 0]);
    expect(bays.map(({sagIn}) => sagIn > 0.1)).toEqual([true, false]);
  });

  test("finds its drain sunk with the deck that it stands in", () => {
    // A level roof with a drain at midspan holds no more than the head, however far it sags.
    const {greatestIn, bays: [bay]} = standingWater(roof([() => 0], [20]), withRatio(0.25), SPAN_FT, 2);
    expect(greatestIn).toBeCloseTo(2, 9);
    expect(bay?.depthIn[0]).toBeLessThan(2);
  });
});

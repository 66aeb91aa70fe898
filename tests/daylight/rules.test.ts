import {describe, expect, test} from "vitest";
import {averageDaylight, depthLimit, headHeightDepthFt, noSkyLineFt} from "../../lib/daylight/rules.js";
import {sight} from "../../lib/daylight/sight.js";
import {ROOM, WINDOW} from "./room.js";

describe("averageDaylight", () => {
  test("comes out as by hand", () => {
    // T = 0.75 x 0.9 x 0.85 x 0.87848 = 0.50403; W = 140 ft2; theta = 90 degrees: 6,350.8.
    // A (1 - R^2) = 2,574 (1 - 0.45027^2) = 2,052.14; 3.0947 %.
    const {averagePercent, admittedFt2Deg} = averageDaylight(ROOM);
    expect(admittedFt2Deg).toBeCloseTo(6350.8, 0);
    expect(averagePercent).toBeCloseTo(3.0947, 3);
  });

  test("loses with a skyline what the middle of the glass loses of its 90 degrees", () => {
    const {averagePercent} = averageDaylight(ROOM);
    expect(averageDaylight({...ROOM, window: {...WINDOW, obstruction: {angleDeg: 30}}}).averagePercent).toBeCloseTo((averagePercent * 2) / 3, 9);
    // 26.5 ft of building at 20 ft: 20 ft above the middle of the glass at 6.5 ft, so 45 degrees.
    expect(averageDaylight({...ROOM, window: {...WINDOW, obstruction: {heightFt: 26.5, distanceFt: 20}}}).averagePercent).toBeCloseTo(averagePercent / 2, 9);
  });
});

describe("noSkyLineFt", () => {
  test("is there by similar triangles", () => {
    // Head 90 in above the desk; 40 ft away something stands 10 ft above the head: 90 x 40/10 = 360 in from the glass.
    expect(noSkyLineFt({...WINDOW, obstruction: {heightFt: 20, distanceFt: 40}})).toBeCloseTo(30 - 1, 9);
    // 90 in at 45 degrees.
    expect(noSkyLineFt({...WINDOW, obstruction: {angleDeg: 45}})).toBeCloseTo(7.5 - 1, 9);
  });

  test("is nowhere without anything higher than the head, and at the window where the desk is higher", () => {
    expect(noSkyLineFt(WINDOW)).toBeUndefined();
    expect(noSkyLineFt({...WINDOW, obstruction: {heightFt: 10, distanceFt: 40}})).toBeUndefined();
    expect(noSkyLineFt({...WINDOW, obstruction: {angleDeg: 0}})).toBeUndefined();
    expect(noSkyLineFt({...WINDOW, sillIn: 10, headIn: 28})).toBe(0);
  });

  test("comes nearer behind a beam that hangs in the room", () => {
    // A foot 50 in above the desk, 10 ft from the window; 30 degrees: 120 + 50 / tan 30 = 206.6 in. Higher than the head it hides nothing.
    const behind = (footIn: number) => noSkyLineFt({...WINDOW, obstruction: {angleDeg: 30}, beams: [{awayIn: 120, footIn}]});
    const bare = noSkyLineFt({...WINDOW, obstruction: {angleDeg: 15}}) as number;
    expect(noSkyLineFt({...WINDOW, obstruction: {angleDeg: 15}, beams: [{awayIn: 120, footIn: 80}]})).toBeCloseTo((120 + 50 / Math.tan(Math.PI / 12)) / 12, 9);
    expect(noSkyLineFt({...WINDOW, obstruction: {angleDeg: 15}, beams: [{awayIn: 120, footIn: 120}]})).toBe(bare);
    // No foot as low as the desk is seen under; before the beam all is as it was.
    expect(behind(30)).toBe(10);
    expect(behind(20)).toBe(10);
    // Without a skyline the sill, 6 in above the desk, and a foot at 33 in: 120 + 3 x 120/3 = 240 in.
    expect(noSkyLineFt({...WINDOW, beams: [{awayIn: 120, footIn: 33}]})).toBeCloseTo(20, 9);
    expect(noSkyLineFt({...WINDOW, beams: [{awayIn: 120, footIn: 80}]})).toBeUndefined();
  });

  test("parts the places that see sky from those that do not", () => {
    for (const changes of [
      {obstruction: {angleDeg: 30}}, {obstruction: {heightFt: 25, distanceFt: 30}}, {beams: [{awayIn: 120, footIn: 33}]},
      {obstruction: {angleDeg: 15}, beams: [{awayIn: 120, footIn: 60}]}, {obstruction: {heightFt: 25, distanceFt: 30}, beams: [{awayIn: 100, footIn: 70}, {awayIn: 220, footIn: 70}]},
    ]) {
      const window = {...WINDOW, ...changes};
      const lineIn = 12 * (noSkyLineFt(window) as number);
      const sees = (distanceIn: number) => sight(window, {distanceIn, heightIn: 30, offsetIn: 0}).sky !== undefined;
      expect(sees(lineIn - 0.01)).toBe(true);
      expect(sees(lineIn + 0.01)).toBe(false);
    }
  });
});

describe("headHeightDepthFt", () => {
  test("is 15, 20 and 25 ft for a head at 10 ft", () => {
    expect(headHeightDepthFt(120)).toEqual({leastFt: 15, usualFt: 20, mostFt: 25});
  });
});

describe("depthLimit", () => {
  test("comes out as by hand", () => {
    // L/W + L/H = 30/24 + 30/10 = 4.25. Back half: floor 360 x 0.2, ceiling 360 x 0.7, walls (30 + 24) x 10.5 = 567 x 0.5.
    // Rb = 607.5/1,287 = 0.47203; 2/(1 - Rb) = 3.78808.
    const limit = depthLimit(ROOM);
    expect(limit.asked).toBeCloseTo(4.25, 12);
    expect(limit.backReflectanceShare).toBeCloseTo(607.5 / 1287, 12);
    expect(limit.limit).toBeCloseTo(3.78808, 4);
    expect(limit.greatestFt).toBeCloseTo((30 * 3.78808) / 4.25, 3);
  });

  test("lets each of two windows serve half of the depth", () => {
    const two = depthLimit({...ROOM, opposite: WINDOW});
    expect(two.depthFt).toBe(15);
    expect(two.asked).toBeCloseTo(4.25 / 2, 12);
    expect(two.asked).toBeLessThan(two.limit);
  });
});

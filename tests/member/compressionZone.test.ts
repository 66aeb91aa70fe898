import {describe, expect, test} from "vitest";
import {concrete} from "../../lib/materials/concrete.js";
import {compressionKip, compressionMomentKipIn, compressionZone} from "../../lib/member/compressionZone.js";
import {rectangularBeam} from "../../lib/sections/prismatic.js";
import {shapeOf} from "../../lib/sections/designation.js";
import {catalog} from "../support/designs.js";

const beam = () => compressionZone(rectangularBeam("12RB24", {widthIn: 12, depthIn: 24}), concrete("normalweight", 4000));

describe("compressionZone of a rectangle", () => {
  test("is 0.85 f'c on beta1 c", () => {
    // c = 5: a = 4.25; 0.85 * 4 * 12 * 4.25 = 173.4 kip at 2.125 in.
    expect(compressionKip(beam(), 5)).toBeCloseTo(173.4, 10);
    expect(compressionMomentKipIn(beam(), 5)).toBeCloseTo(173.4 * 2.125, 10);
  });

  test("is nothing without a neutral axis and never more than the whole section", () => {
    expect(compressionKip(beam(), 0)).toBe(0);
    expect(compressionMomentKipIn(beam(), 0)).toBe(0);
    expect(compressionKip(beam(), 100)).toBeCloseTo(0.85 * 4 * 288, 10);
    expect(compressionMomentKipIn(beam(), 100)).toBeCloseTo(0.85 * 4 * 288 * 12, 9);
  });
});

describe("compressionZone of a chamfered tee", () => {
  test("follows the chamfer between flange and stem", () => {
    // 12DT30: a flange of 144 x 4 in; below it chamfers of 3 in, two stems of 7.75 + 6 in there, narrowing by 2 in for each inch.
    const zone = compressionZone(shapeOf(catalog, "12DT30"), concrete("normalweight", 5000));
    // c = 7.5: the block reaches 6, 2 in into the chamfers: 27.5 in wide above, 19.5 in below.
    const chamfersKip = 4.25 * 2 * ((27.5 + 19.5) / 2);
    expect(compressionKip(zone, 7.5)).toBeCloseTo(4.25 * 144 * 4 + chamfersKip, 8);
    expect(compressionMomentKipIn(zone, 7.5)).toBeCloseTo(4.25 * 144 * 4 * 2 + chamfersKip * (4 + (2 / 3) * ((27.5 + 2 * 19.5) / 47)), 7);
  });
});

describe("compressionZone of a topped tee", () => {
  const topped = () =>
    compressionZone(shapeOf(catalog, "10DT24"), concrete("normalweight", 5000), {thicknessIn: 2, widthIn: 120, concrete: concrete("normalweight", 3000)});

  test("begins with the topping, in its own concrete", () => {
    const zone = topped();
    expect(zone.depthIn).toBe(26);
    expect(zone.startIn.slice(0, 2)).toEqual([0, 2]);
    expect(zone.stressKsi[0]).toBeCloseTo(2.55, 12);
    expect(zone.blockFactor[0]).toBeCloseTo(0.85, 12);
    expect(zone.blockFactor[1]).toBeCloseTo(0.8, 12);
    // c = 2: a = 1.7 in the topping alone.
    expect(compressionKip(zone, 2)).toBeCloseTo(2.55 * 120 * 1.7, 9);
  });

  test("gives each concrete its own block depth", () => {
    const zone = topped();
    // c = 4: the topping is full (3.4 > 2), the flange is filled from 2 to 0.8 * 4 = 3.2.
    expect(compressionKip(zone, 4)).toBeCloseTo(2.55 * 120 * 2 + 4.25 * 120 * 1.2, 9);
    expect(compressionMomentKipIn(zone, 4)).toBeCloseTo(2.55 * 240 * 1 + 4.25 * 144 * 2.6, 9);
  });

  test("follows the taper of the stems", () => {
    // c = 10: the block reaches 8; topping and flange are full, the stems narrow from 11.5 by 4 in 22 over 4 in.
    const stems = 4.25 * 4 * (11.5 - ((4 / 22) * 4) / 2);
    expect(compressionKip(topped(), 10)).toBeCloseTo(2.55 * 240 + 4.25 * 240 + stems, 9);
    // A trapezoid from 11.5 to 10.773 in of width: its middle lies h/3 (a + 2 b)/(a + b) below its top, which is 4 in down.
    const endIn = 11.5 - 16 / 22;
    const stemsIn = 4 + (4 / 3) * ((11.5 + 2 * endIn) / (11.5 + endIn));
    expect(compressionMomentKipIn(topped(), 10)).toBeCloseTo(2.55 * 240 + 4.25 * 240 * 3 + stems * stemsIn, 8);
  });
});

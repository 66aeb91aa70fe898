import {describe, expect, test} from "vitest";
import {HORIZONTAL_ILLUMINANCE, overcastLuminance} from "../../lib/daylight/sky.js";
import {overcastOnWall} from "../support/overcastOnWall.js";

describe("the overcast sky", () => {
  test("is a third as bright at the horizon as at the zenith, and two thirds at 30 degrees", () => {
    expect(overcastLuminance(0)).toBeCloseTo(1 / 3, 12);
    expect(overcastLuminance(30)).toBeCloseTo(2 / 3, 12);
    expect(overcastLuminance(90)).toBeCloseTo(1, 12);
  });

  test("lights level ground with 7 pi/9 of its zenith", () => {
    // Plain sums over 4,000 rings of altitude.
    const step = Math.PI / 2 / 4000;
    let sum = 0;
    for (let i = 0; i < 4000; i++) {
      const a = (i + 0.5) * step;
      sum += overcastLuminance((a * 180) / Math.PI) * Math.sin(a) * Math.cos(a) * step * 2 * Math.PI;
    }
    expect(sum).toBeCloseTo(HORIZONTAL_ILLUMINANCE.overcast, 6);
    expect(HORIZONTAL_ILLUMINANCE.overcast).toBeCloseTo(2.4435, 4);
  });

  test.each([0, 15, 40, 75])("lights a wall above a skyline of %d degrees as sums over the sky give", (skylineDeg) => {
    // In altitude and azimuth, unlike the closed form: a ray counts where its slope across the wall clears the skyline.
    const [altitudes, azimuths] = [1200, 1200];
    const slope = Math.tan((skylineDeg * Math.PI) / 180);
    let sum = 0;
    for (let i = 0; i < altitudes; i++) {
      const a = ((i + 0.5) * Math.PI) / 2 / altitudes;
      const light = overcastLuminance((a * 180) / Math.PI) * Math.cos(a) ** 2 * (Math.PI / 2 / altitudes);
      for (let j = 0; j < azimuths; j++) {
        const cosine = Math.cos(-Math.PI / 2 + ((j + 0.5) * Math.PI) / azimuths);
        if (Math.tan(a) > slope * cosine) sum += light * cosine * (Math.PI / azimuths);
      }
    }
    expect(overcastOnWall(skylineDeg)).toBeCloseTo(sum / HORIZONTAL_ILLUMINANCE.overcast, 3);
  });

  test("gives an open wall 0.396 of what it gives open ground", () => {
    expect(overcastOnWall(0)).toBeCloseTo(0.396, 3);
    expect(overcastOnWall(90)).toBeCloseTo(0, 12);
  });
});

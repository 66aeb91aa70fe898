import {describe, expect, it} from "vitest";
import {pulledBands, topSteelIn2} from "../../lib/member/topSteel.js";
import {memberWith} from "../support/members.js";

const tee = () => memberWith("10DT24", "88-S");

describe("top steel at transfer", () => {
  it("takes the tension of a rectangle's triangle of stress at 30 ksi", () => {
    // 48 x 8 in slab, top -0.3 ksi, bottom 0.9 ksi: tension over the upper 2 in; 0.3 x 2 / 2 x 48 = 14.4 kip.
    const slab = memberWith("4FS8", "88-S");
    expect(topSteelIn2(slab, {topKsi: -0.3, bottomKsi: 0.9})).toBeCloseTo(14.4 / 30, 9);
  });
  it("is found band by band, up to the top and without gaps", () => {
    const stresses = {topKsi: -0.3, bottomKsi: 0.9};
    const bands = pulledBands(tee(), stresses);
    expect(bands[0]?.fromIn).toBeCloseTo(18, 9);
    expect(bands.at(-1)?.toIn).toBe(24);
    expect(bands.at(-1)?.tensionToKsi).toBeCloseTo(0.3, 9);
    bands.slice(1).forEach((band, i) => expect(band.fromIn).toBe(bands[i]?.toIn));
    expect(bands.reduce((sum, {pullKip}) => sum + pullKip, 0) / 30).toBeCloseTo(topSteelIn2(tee(), stresses), 12);
    // A section that is pulled all over is pulled from its soffit up.
    expect(pulledBands(tee(), {topKsi: -0.3, bottomKsi: -0.1})[0]).toMatchObject({fromIn: 0, tensionFromKsi: 0.1});
  });
  it("is none where the top is pressed", () => expect(topSteelIn2(tee(), {topKsi: 0.1, bottomKsi: 1})).toBe(0));
});

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
  it("takes a tee's tension over flange and tapering stems, by hand", () => {
    // Zero 18 in up. Stems from 10.7727 in of width there, 2/11 in wider with each inch, under a tension of 0.05 ksi for each:
    // 0.05 (10.7727 x 8 + 2/11 x 64/3) = 4.503 kip. Flange of 120 x 2 in under 0.25 ksi on average: 60 kip.
    expect(topSteelIn2(tee(), {topKsi: -0.3, bottomKsi: 0.9})).toBeCloseTo(64.503 / 30, 4);
    // With zero 23 in up the flange alone is pulled.
    expect(pulledBands(tee(), {topKsi: -0.05, bottomKsi: 1.15})).toHaveLength(1);
  });
  it("takes the whole section's tension where all of it is pulled", () => {
    expect(topSteelIn2(tee(), {topKsi: -0.1, bottomKsi: -0.1})).toBeCloseTo((0.1 * 449) / 30, 9);
    // P/A is half of the faces' sum in a slab: 0.2 ksi on 384 in2, though the soffit is pulled more than the top.
    expect(topSteelIn2(memberWith("4FS8", "88-S"), {topKsi: -0.1, bottomKsi: -0.3})).toBeCloseTo((0.2 * 384) / 30, 9);
  });
  it("is none where the top is pressed, whatever pulls the soffit", () => {
    expect(topSteelIn2(tee(), {topKsi: 0.1, bottomKsi: 1})).toBe(0);
    expect(pulledBands(tee(), {topKsi: 0.5, bottomKsi: -0.3})).toEqual([]);
  });
});

import {describe, expect, test} from "vitest";
import {fiberStresses} from "../../lib/member/stress.js";
import {memberWith} from "../support/members.js";

describe("fiberStresses", () => {
  test("adds axial, prestress bending and load bending", () => {
    // 10DT24: A 449, Sb 1,264.2, St 3,608.6. 200 kip at 13.77 in below the centroid, 1,500 kip-in:
    // bottom 0.44543 + (2,754 - 1,500) / 1,264.2 = 1.4374; top 0.44543 - 1,254 / 3,608.6 = 0.0979.
    const member = memberWith("10DT24", "68-S");
    const stresses = fiberStresses(member, {eccentricityIn: 13.77}, 200, {precastKipIn: 1500, fullKipIn: 0});
    expect(stresses.bottomKsi).toBeCloseTo(1.4374, 3);
    expect(stresses.topKsi).toBeCloseTo(0.0979, 3);
    expect(stresses.toppingTopKsi).toBeUndefined();
  });

  test("takes later moments on the same section where there is no topping", () => {
    const member = memberWith("10DT24", "68-S");
    const together = fiberStresses(member, {eccentricityIn: 13}, 200, {precastKipIn: 2000, fullKipIn: 0});
    const apart = fiberStresses(member, {eccentricityIn: 13}, 200, {precastKipIn: 1200, fullKipIn: 800});
    expect(apart.bottomKsi).toBeCloseTo(together.bottomKsi, 12);
    expect(apart.topKsi).toBeCloseTo(together.topKsi, 12);
  });

  test("takes them on the composite section under a topping, whose own stress follows the modular ratio", () => {
    const member = memberWith("10DT24", "68-S", {toppingIn: 2});
    const {composite} = member;
    const stresses = fiberStresses(member, {eccentricityIn: 13}, 0, {precastKipIn: 0, fullKipIn: 1000});
    // Plane sections: strain is linear over the whole depth, so the topping's stress over its modular ratio is in line.
    const atTop = (stresses.toppingTopKsi as number) / (composite?.modularRatio as number);
    const slope = (stresses.topKsi - stresses.bottomKsi) / 24;
    expect(atTop).toBeCloseTo(stresses.bottomKsi + slope * 26, 12);
    expect(stresses.bottomKsi).toBeLessThan(0);
    // Bonded, the topping's underside is strained as the top of the member is.
    expect((stresses.toppingBottomKsi as number) / (composite?.modularRatio as number)).toBeCloseTo(stresses.topKsi, 12);
    expect(fiberStresses(memberWith("10DT24", "68-S"), {eccentricityIn: 13}, 0, {precastKipIn: 0, fullKipIn: 1000}).toppingBottomKsi).toBeUndefined();
  });
});

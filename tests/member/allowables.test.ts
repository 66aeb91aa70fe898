import {describe, expect, test} from "vitest";
import {allowables} from "../../lib/member/allowables.js";
import {memberWith} from "../support/members.js";

// f'c 10,000 psi and f'ci 6,400 psi have round roots: 100 and 80.
const member = () => memberWith("10DT24", "68-S", {strengthPsi: 10000, releaseStrengthPsi: 6400, toppingIn: 2, toppingStrengthPsi: 4000});

describe("allowables", () => {
  test("at transfer are 0.70 and 0.60 f'ci, 6 and 3 sqrt(f'ci)", () => {
    const allowed = allowables(member(), "U");
    expect(allowed.transferCompressionEndKsi).toBeCloseTo(4.48, 12);
    expect(allowed.transferCompressionKsi).toBeCloseTo(3.84, 12);
    expect(allowed.transferTensionEndKsi).toBeCloseTo(0.48, 12);
    expect(allowed.transferTensionKsi).toBeCloseTo(0.24, 12);
  });

  test("in service are 0.45 and 0.60 f'c, and 7.5 or 12 sqrt(f'c) by class", () => {
    expect(allowables(member(), "U").serviceTensionKsi).toBeCloseTo(0.75, 12);
    expect(allowables(member(), "T").serviceTensionKsi).toBeCloseTo(1.2, 12);
    expect(allowables(member(), "T")).toMatchObject({sustainedCompressionKsi: 4.5, totalCompressionKsi: 6});
  });

  test("limit the topping by its own strength, where there is one", () => {
    expect(allowables(member(), "T").toppingSustainedKsi).toBeCloseTo(1.8, 12);
    expect(allowables(member(), "T").toppingTotalKsi).toBeCloseTo(2.4, 12);
    expect(allowables(memberWith("10DT24", "68-S"), "T").toppingTotalKsi).toBeUndefined();
  });
});

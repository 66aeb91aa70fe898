import {describe, expect, test} from "vitest";
import {shearShares, weakestShear} from "../../lib/member/shearPlace.js";
import {memberWith} from "../support/members.js";
import {stateAt} from "./shearRatio.js";

describe("the place where shear comes nearest to what the webs may carry", () => {
  test("lies at the support itself where the load hangs low and the prestress has not built up", () => {
    const tee = memberWith("10DT24", "68-S");
    const {state} = weakestShear(tee, 40, 0, {member: tee, spanFt: 40}, stateAt);
    expect(state.share).toBe(0);
  });

  test("is looked for at every hundredth of the span where every place counts", () => {
    const shares = shearShares(memberWith("10DT24", "68-S"), 40);
    expect(shares[0]).toBeCloseTo(12 / 480, 12);
    expect(shares).toContain(25 / 480);
    const regular = shares.slice(2).map((share) => Math.round(1000 * share) / 10);
    expect(regular).toEqual(Array.from({length: 47}, (_, i) => i + 3));
  });
});

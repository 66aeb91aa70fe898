import {describe, expect, test} from "vitest";
import {ruptureModulusKsi} from "../../lib/materials/concrete.js";
import {crackingMomentKipIn} from "../../lib/member/minimumStrength.js";
import {uniformMomentKipIn} from "../../lib/member/moments.js";
import {prestressState} from "../../lib/member/prestressState.js";
import {fiberStresses} from "../../lib/member/stress.js";
import {memberWith} from "../support/members.js";

describe("crackingMomentKipIn", () => {
  test.each([0, 2])("brings the soffit to its rupture stress, with a topping of %d in", (toppingIn) => {
    const member = memberWith("10DT24", "68-S", {toppingIn});
    const state = prestressState(member, 40, 0.5, 100);
    const precastKipIn = uniformMomentKipIn(member.selfWeightPlf + member.toppingWeightPlf, 40, 0.5);
    const fullKipIn = crackingMomentKipIn(member, 40, state) - precastKipIn;
    const {bottomKsi} = fiberStresses(member, state, state.effectiveForceKip, {precastKipIn, fullKipIn});
    expect(bottomKsi).toBeCloseTo(-ruptureModulusKsi(member.concrete), 12);
  });

  test("does not depend on the span where there is no topping and the prestress stays", () => {
    const member = memberWith("10DT24", "68-S");
    const state = prestressState(member, 40, 0.5, 100);
    expect(crackingMomentKipIn(member, 30, state)).toBeCloseTo(crackingMomentKipIn(member, 50, state), 8);
  });
});

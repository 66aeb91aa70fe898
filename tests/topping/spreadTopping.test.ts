import {describe, expect, test} from "vitest";
import {camber} from "../../lib/member/camber.js";
import {spreadBasis} from "../../lib/topping/spreadBasis.js";
import {memberTopping, type ToppingBasis} from "../../lib/topping/spreadTopping.js";
import {memberWith} from "../support/members.js";

/** What an 8 in plank of 32 ft holds, as flexible as is wanted. */
function plank(ratio: number): ToppingBasis {
  const member = memberWith("4HC8", "76-S", {toppingIn: 2});
  return {...(spreadBasis(member, camber(member, 32, 100), 32).topping as ToppingBasis), ratio, levelIn: 3};
}

describe("topping over a piece without camber", () => {
  test("is thickest at midspan by what it sags, on the mean by 16/25 of that, and sags a piece twice as soft twice as much", () => {
    // 3 in on a piece of C = 0.001: 5 pi^4/384 C 3 in of sag at midspan.
    const sagIn = ((5 * Math.PI ** 4) / 384) * 0.001 * 3;
    const extra = (softness: number) => memberTopping(plank(0.001), 0, 0, softness, 0).meanIn - 3;
    expect(extra(1) / (sagIn * (16 / 25))).toBeCloseTo(1, 2);
    expect(extra(2) / extra(1)).toBeCloseTo(2, 2);
    // Its ends have the least.
    expect(memberTopping(plank(0.001), 0, 0, 1, 0).thinnestIn).toBeCloseTo(3, 12);
  });

  test("has an end however soft the piece is: beyond C = 0.9 all sag as much", () => {
    const of = (softness: number) => memberTopping(plank(0.3), 0, 0, softness, 0).meanIn;
    expect(of(3.1)).toBe(of(30));
    expect(of(2.9)).toBeLessThan(of(3));
    expect(Number.isFinite(of(1e6))).toBe(true);
  });
});

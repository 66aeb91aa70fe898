import {describe, expect, it} from "vitest";
import {pullOverWeight} from "../../lib/member/transfer.js";
import {memberStrength} from "../../lib/member/strength.js";
import {ultimateState} from "../../lib/member/ultimate.js";
import {memberWith} from "../support/members.js";

describe("ultimateState", () => {
  const broken = () => {
    const member = memberWith("10DT24", "68-S");
    const strength = memberStrength(member, 0.5, 165);
    return {strength, state: ultimateState(member, 0.5, 165, strength)};
  };

  it("puts the pulled and the relaxed strand on the straight part of the curve", () => {
    const {state} = broken();
    expect(state.jacked).toEqual({strain: 202.5 / 28800, stressKsi: 202.5});
    expect(state.effective).toEqual({strain: 165 / 28800, stressKsi: 165});
  });

  it("lists the rows deepest first; their pull balances the concrete's push", () => {
    const {strength, state} = broken();
    expect(state.rows.map((row) => row.depthIn)).toEqual([22, 20, 18]);
    const pullKip = state.rows.reduce((sum, row) => sum + 2 * 0.153 * row.stressKsi, 0);
    expect(pullKip).toBeCloseTo(strength.compressionKip, 6);
  });

  // 5,000 psi: beta1 = 0.80; all compression in a 120 in flange: a = C / (0.85 x 5 x 120).
  it("gives the depth of the block", () => {
    const {strength, state} = broken();
    expect(state.blockIn).toBeCloseTo(strength.compressionKip / 510, 6);
  });
});

describe("pullOverWeight", () => {
  // 449 in2 x 150 / 144 = 467.7 plf; on 50 ft 23.4 kip; 234 kip of pull is ten times that.
  it("compares the strands' pull with the piece's weight", () => {
    expect(pullOverWeight(234, memberWith("10DT24", "68-S"), 50)).toBeCloseTo(234 / 23.385, 2);
  });
});

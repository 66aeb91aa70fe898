import {describe, expect, test} from "vitest";
import {prestressState} from "../../lib/member/prestressState.js";
import {memberWith} from "../support/members.js";

describe("prestressState", () => {
  const depressed = () => memberWith("12DT32", "128-D1");

  test("follows the strands along the span", () => {
    const member = depressed();
    expect(prestressState(member, 60, 0, 0).eccentricityIn).toBeCloseTo(member.section.ybIn - 15.5, 10);
    expect(prestressState(member, 60, 0.5, 0).eccentricityIn).toBeCloseTo(member.section.ybIn - 3.25, 10);
    expect(prestressState(member, 60, 0.25, 0).eccentricityIn).toBeCloseTo(member.section.ybIn - 9.375, 10);
  });

  test("is the same at places as far from either end", () => {
    const member = depressed();
    expect(prestressState(member, 60, 0.7, 100).losses.totalKsi).toBeCloseTo(prestressState(member, 60, 0.3, 100).losses.totalKsi, 12);
  });

  test("gives forces as area times stress", () => {
    const {losses, initialForceKip, effectiveForceKip} = prestressState(depressed(), 60, 0.5, 100);
    expect(initialForceKip).toBeCloseTo(12 * 0.153 * losses.initialStressKsi, 10);
    expect(effectiveForceKip).toBeCloseTo(12 * 0.153 * losses.effectiveStressKsi, 10);
  });

  test("loses less under more dead load, because the concrete at the strands is squeezed less", () => {
    const member = depressed();
    expect(prestressState(member, 60, 0.5, 500).losses.creepKsi).toBeLessThan(prestressState(member, 60, 0.5, 0).losses.creepKsi);
  });
});

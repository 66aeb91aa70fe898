import {describe, expect, it} from "vitest";
import {deckRow} from "../../lib/deck/deckMember.js";
import {patternMember} from "../../lib/deck/table.js";
import {prestressState} from "../../lib/member/prestressState.js";
import {builtUp, concreteShear, shearAt} from "../../lib/member/shear.js";
import {catalogue} from "../support/designs.js";

const conditions = {
  concreteKind: "normalweight", strengthPsi: 5000, releaseStrengthPsi: 3500, toppingIn: 0, toppingStrengthPsi: 3000, humidityPercent: 70,
} as const;
const tee = patternMember(catalogue, deckRow(catalogue, "10DT24"), "88-S", conditions);
const draped = patternMember(catalogue, deckRow(catalogue, "10DT24"), "128-D1", conditions);

describe("concrete shear", () => {
  it("does not let flexure-shear fall below 1.7 lambda sqrt(f'c) bw d", () => {
    const shear = concreteShear({
      rootPsi: 70, webWidthIn: 10, depthIn: 20, deadShearKip: 0, addedShearKip: 1, addedMomentKipIn: 1e6,
      crackingMomentKipIn: 0, centroidStressKsi: 0.5, verticalPrestressKip: 0,
    });
    expect(shear.flexureShearKip).toBeCloseTo((1.7 * 70 * 10 * 20) / 1000, 9);
  });

  it("builds up the prestress over fifty strand diameters from the end", () => {
    expect(builtUp(tee, 0)).toBe(0);
    expect(builtUp(tee, 12.5)).toBe(0.5);
    expect(builtUp(tee, 100)).toBe(1);
  });

  it("is governed by the web near the end and by bending towards the third of the span", () => {
    const near = shearAt(tee, 60, prestressState(tee, 60, 0.02, 100));
    const far = shearAt(tee, 60, prestressState(tee, 60, 0.3, 100));
    expect(near.webShearKip).toBeLessThan(near.flexureShearKip);
    expect(far.flexureShearKip).toBeLessThan(far.webShearKip);
  });

  it("is the same from either end", () => {
    const left = shearAt(draped, 60, prestressState(draped, 60, 0.2, 100));
    const right = shearAt(draped, 60, prestressState(draped, 60, 0.8, 100));
    expect(right.concreteKip).toBeCloseTo(left.concreteKip, 9);
  });

  it("counts the upward pull of depressed strands in the web", () => {
    const share = 0.1;
    const state = prestressState(draped, 60, share, 100);
    const slope = (draped.layout.centroidEndIn - draped.layout.centroidCentreIn) / (0.5 * 720);
    const level = shearAt({...draped, layout: {...draped.layout, profile: "straight"}}, 60, state);
    expect(shearAt(draped, 60, state).webShearKip - level.webShearKip).toBeCloseTo(state.effectiveForceKip * slope, 9);
  });
});

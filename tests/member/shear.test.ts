import {describe, expect, it} from "vitest";
import {deckRow} from "../../lib/deck/deckMember.js";
import {patternMember} from "../../lib/deck/table.js";
import {prestressState} from "../../lib/member/prestressState.js";
import {builtUp, concreteShear, designShearKip, flexureShearFloor, isDeepPlank, shearAt, shearSection} from "../../lib/member/shear.js";
import {nearestShearShare} from "../../lib/member/shearPlace.js";
import {hollowCore} from "../../lib/sections/hollowCore.js";
import {catalog} from "../support/designs.js";
import {memberWith} from "../support/members.js";

const conditions = {
  concreteKind: "normalweight", strengthPsi: 5000, releaseStrengthPsi: 3500, toppingIn: 0, toppingStrengthPsi: 3000, humidityPercent: 70,
} as const;
const tee = () => patternMember(catalog, deckRow(catalog, "10DT24"), "88-S", conditions);
const draped = () => patternMember(catalog, deckRow(catalog, "10DT24"), "128-D1", conditions);

describe("concrete shear", () => {
  it("does not let flexure-shear fall below the floor that the prestress sets", () => {
    const web = {
      rootPsi: 70, webWidthIn: 10, depthIn: 20, deadShearKip: 0, addedShearKip: 1, addedMomentKipIn: 1e6,
      crackingMomentKipIn: 0, centroidStressKsi: 0.5, verticalPrestressKip: 0,
    };
    expect(concreteShear({...web, floor: 1.7}).flexureShearKip).toBeCloseTo(23.8, 9);
    expect(concreteShear({...web, floor: 2}).flexureShearKip).toBeCloseTo(28, 9);
  });

  it("has its floor at 2.0 from an effective prestress of 40 % of 270 ksi on, and at 1.7 below", () => {
    expect([107.9, 0.4 * 270, 108.1].map(flexureShearFloor)).toEqual([1.7, 2, 2]);
    expect(shearSection(tee(), 60, prestressState(tee(), 60, 0.3, 100)).floor).toBe(2);
  });

  it("counts sqrt(f'c) as 100 psi at the most, so that 12,000 psi tears as 10,000 psi does", () => {
    const plank = (strengthPsi: number) => memberWith("4HC12", "78-S", {strengthPsi});
    const share = nearestShearShare(plank(12000), 12);
    // The same prestress in both, as if the modulus had not changed.
    const webOf = (strengthPsi: number) => shearAt(plank(strengthPsi), 12, prestressState(plank(10000), 12, share, 40)).webShearKip;
    expect(webOf(12000)).toBeCloseTo(webOf(10000), 9);
    expect(webOf(9000)).toBeLessThan(webOf(10000));
  });

  it("is added to by stirrups up to 8 sqrt(f'c) bw d, without a factor for lightweight concrete", () => {
    const light = memberWith("10DT24", "88-S", {concreteKind: "sand-lightweight"});
    const at = shearAt(light, 60, prestressState(light, 60, 0.05, 100));
    // 8 sqrt(5000) times 9.5 in of stems times 0.8 x 24 in.
    expect(designShearKip(light, at)).toBeCloseTo(0.75 * (at.concreteKip + (8 * Math.sqrt(5000) * 9.5 * 19.2) / 1000), 9);
  });

  it("counts half of the web-shear strength of a plank deeper than 12.5 in, and all of it in one of 12 in", () => {
    const deep = memberWith("4HC12", "88-S", {shape: hollowCore("16 in plank", {widthIn: 48, depthIn: 16, voidCount: 4, voidDiameterIn: 10})});
    const near = shearAt(deep, 40, prestressState(deep, 40, 0.02, 40));
    expect(near.webShearKip).toBeLessThan(near.flexureShearKip);
    expect(designShearKip(deep, near)).toBeCloseTo(0.375 * near.webShearKip, 9);
    // At 12.5 in itself the rule does not hold yet.
    const just = (depthIn: number) => isDeepPlank({shape: hollowCore("plank", {widthIn: 48, depthIn, voidCount: 4, voidDiameterIn: 8})});
    expect([12.5, 12.51].map(just)).toEqual([false, true]);
    const usual = memberWith("4HC12", "88-S");
    const there = shearAt(usual, 40, prestressState(usual, 40, 0.02, 40));
    expect(designShearKip(usual, there)).toBeCloseTo(0.75 * there.concreteKip, 9);
  });

  it("builds up the prestress over fifty strand diameters from the end", () => {
    expect(builtUp(tee(), 0)).toBe(0);
    expect(builtUp(tee(), 12.5)).toBe(0.5);
    expect(builtUp(tee(), 100)).toBe(1);
  });

  it("is governed by the web near the end and by bending toward the third of the span", () => {
    const near = shearAt(tee(), 60, prestressState(tee(), 60, 0.02, 100));
    const far = shearAt(tee(), 60, prestressState(tee(), 60, 0.3, 100));
    expect(near.webShearKip).toBeLessThan(near.flexureShearKip);
    expect(far.flexureShearKip).toBeLessThan(far.webShearKip);
  });

  it("is the same from either end", () => {
    for (const share of [0.01, 0.2]) {
      const left = shearAt(draped(), 60, prestressState(draped(), 60, share, 100));
      const right = shearAt(draped(), 60, prestressState(draped(), 60, 1 - share, 100));
      expect(right.concreteKip).toBeCloseTo(left.concreteKip, 9);
      expect(right.webShearKip).toBeCloseTo(left.webShearKip, 9);
    }
  });

  it("counts the upward pull of depressed strands in the web", () => {
    const member = draped();
    const share = 0.1;
    const state = prestressState(member, 60, share, 100);
    const slope = (member.layout.centroidEndIn - member.layout.centroidCenterIn) / (0.5 * 720);
    const level = shearAt({...member, layout: {...member.layout, profile: "straight"}}, 60, state);
    expect(shearAt(member, 60, state).webShearKip - level.webShearKip).toBeCloseTo(state.effectiveForceKip * slope, 9);
  });
});

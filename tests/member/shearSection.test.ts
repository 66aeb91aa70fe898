import {describe, expect, test} from "vitest";
import type {Member} from "../../lib/member/member.js";
import {uniformMomentKipIn} from "../../lib/member/moments.js";
import {prestressState} from "../../lib/member/prestressState.js";
import {builtUp, concreteShear, designShearKip, shearAt, shearSection} from "../../lib/member/shear.js";
import {fiberStresses} from "../../lib/member/stress.js";
import {memberWith} from "../support/members.js";

const SPAN_FT = 50;

/** A place of a span with its stresses under prestress and what the precast section carries: own weight and wet topping. */
function place(member: Member, share: number) {
  const state = prestressState(member, SPAN_FT, share, 100);
  const forceKip = state.effectiveForceKip * builtUp(member, Math.min(share, 1 - share) * SPAN_FT * 12);
  const precastKipIn = uniformMomentKipIn(member.selfWeightPlf + member.toppingWeightPlf, SPAN_FT, share);
  return {state, forceKip, precastKipIn, section: shearSection(member, SPAN_FT, state), stresses: fiberStresses(member, state, forceKip, {precastKipIn, fullKipIn: 0})};
}

/** Stress of the precast section at a height above its soffit: it runs straight from face to face. */
const stressAt = (member: Member, {stresses}: ReturnType<typeof place>, heightIn: number) =>
  stresses.bottomKsi + ((stresses.topKsi - stresses.bottomKsi) * heightIn) / member.section.depthIn;

describe("the section that resists shear", () => {
  test.each([
    ["bare, at its own centroid", 0, 17.774],
    // 449 in2 at 17.774 in and 0.7746 x 360 in2 at 25.5 in.
    ["under 3 in of topping, at the centroid of both", 3, 20.734],
    // That of both would lie 22.88 in up, in the flange: its underside counts (22.5.6.3.2).
    ["under 6 in of topping, at the underside of the flange", 6, 22],
  ])("is pressed by fpc %s", (_, toppingIn, heightIn) => {
    const member = memberWith("10DT24", "68-S", {toppingIn});
    for (const share of [0.02, 0.2]) {
      const at = place(member, share);
      expect(at.section.centroidStressKsi).toBeCloseTo(stressAt(member, at, heightIn), 4);
    }
  });

  test.each([0, 3])("cracks at its soffit at 6 sqrt(f'c) by what is added, under %d in of topping", (toppingIn) => {
    const member = memberWith("10DT24", "68-S", {toppingIn});
    const {state, forceKip, precastKipIn, section} = place(member, 0.3);
    const {bottomKsi} = fiberStresses(member, state, forceKip, {precastKipIn, fullKipIn: section.crackingMomentKipIn});
    expect(bottomKsi).toBeCloseTo((-6 * Math.sqrt(5000)) / 1000, 9);
  });

  test("has the shear and moment of a uniform load, and the shear of its own dead load", () => {
    const member = memberWith("10DT24", "68-S", {toppingIn: 2});
    for (const share of [0.2, 0.8]) {
      const {section} = place(member, share);
      // 600 in: 0.3 w l, and w x (l - x)/2 with x = 120 in.
      expect(section.addedShearKip).toBeCloseTo(180, 9);
      expect(section.addedMomentKipIn).toBeCloseTo((120 * 480) / 2, 9);
      // 467.7 + 250 plf on 15 ft.
      expect(section.deadShearKip).toBeCloseTo(0.717708 * 15, 5);
    }
  });

  test("is as deep as its strands lie, and never less than 0.8 of the whole", () => {
    // Centroid of 68-S 4 in up: 22 of 26 in under the topping; of 128-S 7 in up, 17 of 24, so 19.2.
    expect(place(memberWith("10DT24", "68-S", {toppingIn: 2}), 0.2).section.depthIn).toBeCloseTo(22, 9);
    expect(place(memberWith("10DT24", "128-S", {}), 0.2).section.depthIn).toBeCloseTo(19.2, 9);
  });

  test("is relieved by strands that slope, from either end to the hold-down and not between", () => {
    const member = memberWith("12DT32", "148-D2", {endIn: 20, centerIn: 5});
    // 15 in down on 0.4 x 600 in.
    for (const share of [0.1, 0.39, 0.61, 0.9]) {
      const {section, state} = place(member, share);
      expect(section.verticalPrestressKip, String(share)).toBeCloseTo(state.effectiveForceKip * (15 / 240), 9);
    }
    for (const share of [0.4, 0.5, 0.6]) expect(place(member, share).section.verticalPrestressKip, String(share)).toBe(0);
  });
});

describe("what the web carries", () => {
  const web = {
    rootPsi: 70, floor: 2, webWidthIn: 10, depthIn: 20, deadShearKip: 5, addedShearKip: 1, addedMomentKipIn: 100,
    crackingMomentKipIn: 1600, centroidStressKsi: 0.5, verticalPrestressKip: 3,
  };
  // R bw d = 70 x 200 = 14 kip.
  test("is 3.5 R bw d + 0.3 fpc bw d + Vp, or 0.6 R bw d + Vd + V Mcre/M", () => {
    const {webShearKip, flexureShearKip, concreteKip} = concreteShear(web);
    expect(webShearKip).toBeCloseTo(49 + 30 + 3, 9);
    expect(flexureShearKip).toBeCloseTo(8.4 + 5 + 16, 9);
    expect(concreteKip).toBe(flexureShearKip);
  });

  test("is not lessened below its dead load's share by a soffit that the dead load alone cracks", () => {
    expect(concreteShear({...web, floor: 0.5, crackingMomentKipIn: -500}).flexureShearKip).toBeCloseTo(8.4 + 5, 9);
  });

  test("is web-shear alone over a simple support, where nothing bends", () => {
    const {webShearKip, flexureShearKip} = concreteShear({...web, addedMomentKipIn: 0});
    expect(flexureShearKip).toBe(webShearKip);
    const {state} = place(memberWith("10DT24", "68-S"), 0);
    const end = shearAt(memberWith("10DT24", "68-S"), SPAN_FT, state);
    // No prestress has built up at the very end, and the strands are straight: 3.5 sqrt(5,000) x 9.5 x 20.
    expect(end.concreteKip).toBeCloseTo((3.5 * Math.sqrt(5000) * 190) / 1000, 6);
  });
});

describe("stirrups", () => {
  test("cannot be put into planks and slabs, whose concrete carries alone", () => {
    for (const [designation, pattern] of [["4HC8", "66-S"], ["4FS8", "88-S"]] as const) {
      const slab = memberWith(designation, pattern);
      const at = shearAt(slab, 24, prestressState(slab, 24, 0.1, 40));
      expect(designShearKip(slab, at)).toBeCloseTo(0.75 * at.concreteKip, 12);
    }
  });
});

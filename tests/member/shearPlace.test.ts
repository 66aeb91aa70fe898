import {describe, expect, test} from "vitest";
import type {MemberInput} from "../../lib/member/member.js";
import {nearestShearShare, shearShares, weakestShear} from "../../lib/member/shearPlace.js";
import {doubleTee} from "../../lib/sections/doubleTee.js";
import {memberWith} from "../support/members.js";
import {found, searched, searchedShare, stateAt} from "./shearRatio.js";

const LIGHT: Partial<MemberInput> = {concreteKind: "sand-lightweight", strengthPsi: 4000, releaseStrengthPsi: 3000};
const STRONG: Partial<MemberInput> = {strengthPsi: 12000, releaseStrengthPsi: 7000};
/** Members in which bending cracks turn first, each with its span and with the place as a share of it. */
const CRACKED: readonly [string, string, string, Parameters<typeof memberWith>[2], number, number][] = [
  ["slender tee of straight strands, shallower than 0.8 of its depth", "8DT32", "226-S", {}, 90, 0.0924],
  ["slender tee of straight strands below that", "8DT24", "46-S", {...STRONG, toppingIn: 3}, 90, 0.0516],
  ["slender tee held down at midspan", "8DT32", "226-D1", {}, 90, 0.0845],
  ["slender topped tee held down at two points", "8DT32", "226-D2", {toppingIn: 3}, 90, 0.0883],
  ["slender tee held down at midspan, its strands low all along", "8DT32", "106-D1", {endIn: 6, centerIn: 2.2}, 90, 0.0763],
  ["plank", "4HC8", "76-S", {}, 24, 0.212],
  ["plank of strong concrete", "4HC6", "76-S", STRONG, 20, 0.1475],
  ["light topped plank", "4HC6", "46-S", {...LIGHT, toppingIn: 3}, 34, 0.0889],
  ["light topped slab", "4FS8", "88-S", {...LIGHT, toppingIn: 3}, 34, 0.1009],
  ["slab so short that it is within the build-up of its strands", "4FS4", "610-S", {}, 8, 0.0687],
  ["short slab of deep strands", "4FS8", "410-S", STRONG, 12, 0.0771],
];

describe("the place where shear comes nearest to what the webs may carry", () => {
  test.each(CRACKED)("lies, in a %s, where a search along the span has it to half a percent", (_, designation, pattern, different, spanFt, share) => {
    const member = memberWith(designation, pattern, different);
    const {state} = weakestShear(member, spanFt, nearestShearShare(member, spanFt), {member, spanFt}, stateAt);
    expect(searchedShare(member, spanFt)).toBeCloseTo(share, 3);
    expect(Math.abs(state.share / searchedShare(member, spanFt) - 1)).toBeLessThan(0.005);
    expect(found(member, spanFt) / searched(member, spanFt) - 1).toBeLessThan(0.0005);
  });

  test("lies at the nearest place, half the depth off the support, where the webs crack before bending turns a crack", () => {
    for (const [designation, pattern, spanFt] of [["10DT24", "68-S", 40], ["12DT32", "148-D2", 60], ["4HC12", "78-S", 12]] as const) {
      const member = memberWith(designation, pattern);
      const {state, strength} = weakestShear(member, spanFt, nearestShearShare(member, spanFt), {member, spanFt}, stateAt);
      expect(state.share).toBe(member.shape.depthIn / 2 / (spanFt * 12));
      expect(strength.concreteKip).toBe(strength.webShearKip);
      expect(found(member, spanFt)).toBeCloseTo(searched(member, spanFt), 9);
    }
  });

  test("lies no nearer to the support than that, though the prestress has built up before", () => {
    // 36 in under 6 in of topping: 21 in; fifty diameters of 3/8 in are 18.75 in.
    const deep = memberWith("12DT36", "86-S", {toppingIn: 6});
    const {state} = weakestShear(deep, 40, nearestShearShare(deep, 40), {member: deep, spanFt: 40}, stateAt);
    expect(state.share).toBeCloseTo(21 / 480, 12);
  });

  test("lies before midspan, though the prestress of a very short slab has not built up by then", () => {
    // Fifty diameters of 0.6 in are 30 in of 48.
    const slab = memberWith("4FS8", "610-S");
    const {state} = weakestShear(slab, 4, nearestShearShare(slab, 4), {member: slab, spanFt: 4}, stateAt);
    expect(state.share).toBeLessThan(0.48);
    expect(found(slab, 4) / searched(slab, 4) - 1).toBeLessThan(0.0015);
  });

  test("lies where the prestress has built up, if a slab's web is thick and bending turns a crack no sooner", () => {
    const slab = memberWith("4FS8", "86-S");
    const {state} = weakestShear(slab, 12, nearestShearShare(slab, 12), {member: slab, spanFt: 12}, stateAt);
    // Fifty diameters of 3/8 in on 144 in.
    expect(state.share).toBeCloseTo(18.75 / 144, 9);
    expect(found(slab, 12) / searched(slab, 12) - 1).toBeLessThan(0.0015);
  });

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

  test("has no place of the build-up where that is over before the nearest one, or not over by midspan", () => {
    // Half the depth of 60 in is beyond fifty diameters of 3/8 in; fifty of 0.6 in are more than half of 4 ft.
    const deep = memberWith("10DT24", "66-S", {shape: doubleTee("deep", {widthIn: 120, depthIn: 60, flangeIn: 2, stemBottomIn: 4, stemTopIn: 6, stemSpacingIn: 60, chamferIn: 0})});
    expect(shearShares(deep, 60)[0]).toBeCloseTo(30 / 720, 12);
    expect(shearShares(deep, 60)[1]).toBeCloseTo(0.05, 12);
    expect(shearShares(memberWith("4FS8", "410-S"), 4).slice(1).every((share) => Number.isInteger(Math.round(share * 1e6) / 1e4))).toBe(true);
  });

  test("is never looked for further in than 0.4 of the span", () => {
    expect(nearestShearShare(memberWith("10DT24", "68-S"), 2)).toBe(0.4);
    expect(nearestShearShare(memberWith("10DT24", "68-S"), 3)).toBeCloseTo(1 / 3, 12);
  });
});

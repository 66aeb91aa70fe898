import {describe, expect, test} from "vitest";
import {handbookCriteria, type Criteria} from "../../lib/deck/criteria.js";
import {deckState} from "../../lib/deck/deckResult.js";
import {shearWords} from "../../lib/deck/deckShear.js";
import type {Member} from "../../lib/member/member.js";
import {prestressState} from "../../lib/member/prestressState.js";
import {shearAt} from "../../lib/member/shear.js";
import {hollowCore} from "../../lib/sections/hollowCore.js";
import {memberWith} from "../support/members.js";

const criteria: Criteria = handbookCriteria(true);

/** Factored shear and what the concrete may carry at a place of a deck under a live load, kip, and the depth used for shear, in. */
function at(member: Member, spanFt: number, livePsf: number, share: number) {
  const {factoredPsf} = deckState(member, spanFt, criteria, livePsf);
  const {concreteKip, depthIn} = shearAt(member, spanFt, prestressState(member, spanFt, share, criteria.superimposedDeadPsf * member.widthFt));
  return {factoredKip: (factoredPsf * member.widthFt * spanFt * (0.5 - share)) / 1000, concreteKip: 0.75 * concreteKip, depthIn};
}

describe("the shear of a deck", () => {
  test("asks stirrups of a draped tee a fifth along its span, though near the ends the concrete carries it alone", () => {
    const tee = memberWith("8DT24", "128-D1", {toppingIn: 2});
    const {shear, checks} = deckState(tee, 60, criteria, 53);
    const near = at(tee, 60, 53, shear.state.share);
    expect(near.factoredKip).toBeLessThan(near.concreteKip);
    const within = at(tee, 60, 53, 0.2);
    expect(within.factoredKip).toBeGreaterThan(1.1 * within.concreteKip);
    expect(shear.stirrups.share).toBeGreaterThan(0.15);
    expect(shear.stirrups.forShearIn2PerFt).toBeGreaterThan(0.04);
    const {message} = checks.find(({id}) => id === "deck shear")!;
    expect(message).toMatch(/^The webs carry the shear with minimum stirrups, .* the shear needs the most, 0\.05 in², 1[0-9]\.\d ft from the ends\.$/);
  });

  test("says of a plank deeper than 12.5 in that it has half of its web strength only", () => {
    const usual = memberWith("4HC12", "88-S");
    const shape = hollowCore("16 in plank", {widthIn: 48, depthIn: 16, voidCount: 4, voidDiameterIn: 10});
    const words = (member: Member) => deckState(member, 30, handbookCriteria(false), 10).checks.find(({id}) => id === "deck shear")!.message;
    expect(words(usual)).toBe("The concrete of the webs alone carries the shear.");
    expect(words(memberWith("4HC12", "88-S", {shape}))).toContain("half of its web strength");
  });

  test("says whether stirrups are asked by the shear, by the least of them, or not at all", () => {
    const tee = memberWith("10DT24", "88-S");
    const words = (forShearIn2PerFt: number, leastIn2PerFt: number, member = tee) => {
      const {shear} = deckState(member, 40, criteria, 50);
      return shearWords(member, 40, {...shear, stirrups: {...shear.stirrups, share: 0.1, forShearIn2PerFt, leastIn2PerFt}});
    };
    expect(words(0.12, 0.05)).toBe("The webs carry the shear with stirrups: 0.12 in² per foot where the most is needed, 4.0 ft from the ends.");
    expect(words(0.05, 0.05)).toContain("with minimum stirrups, 0.05 in² per foot; the shear needs the most, 0.05 in²");
    expect(words(0, 0.05)).toBe("The concrete carries the shear; the stems get minimum stirrups.");
    expect(words(0, 0, memberWith("4HC8", "66-S"))).toBe("The concrete of the webs alone carries the shear.");
  });
});

import {describe, expect, test} from "vitest";
import {usualPatterns} from "../../lib/deck/table.js";
import type {Member} from "../../lib/member/member.js";
import {prestressState} from "../../lib/member/prestressState.js";
import {designShearKip, shearAt} from "../../lib/member/shear.js";
import {nearestShearShare, shearShares, weakestShear} from "../../lib/member/shearPlace.js";
import {transfer} from "../../lib/member/transfer.js";
import {catalogue} from "../support/designs.js";
import {memberWith} from "../support/members.js";

/** Dead load, psf. */
const DEAD_PSF = 10;
const stateAt = ({member, spanFt}: {member: Member; spanFt: number}, share: number) => prestressState(member, spanFt, share, DEAD_PSF * member.widthFt);

/** What the section may carry beside the shear of a uniform load, at a place. */
const ratioAt = (member: Member, spanFt: number, share: number) =>
  designShearKip(member, shearAt(member, spanFt, stateAt({member, spanFt}, share))) / (0.5 - share);

/** The same where it is least, as found. */
function found(member: Member, spanFt: number): number {
  const {designKip, state} = weakestShear(member, spanFt, nearestShearShare(member, spanFt), {member, spanFt}, stateAt);
  return designKip / (0.5 - state.share);
}

/** The same by a search of four hundred places. */
function searched(member: Member, spanFt: number): number {
  const from = nearestShearShare(member, spanFt);
  return Math.min(...Array.from({length: 400}, (_, i) => ratioAt(member, spanFt, from + ((0.49 - from) * i) / 400)));
}

const CONCRETES = [["normalweight", 5000, 3500], ["sand-lightweight", 4000, 3000], ["normalweight", 12000, 7000]] as const;

describe("the place where shear comes nearest to what the webs may carry", () => {
  test.each(catalogue.deckMembers.map((row) => [row.designation, row] as const))("is found in a %s to 1 %% of a search along the span", (designation, row) => {
    const patterns = [6, 8, 10].flatMap((size) => {
      const all = usualPatterns(row, size);
      return [all.at(0), all.at(-1), all.at(-1)?.replace("D1", "D2")].filter((text) => text !== undefined);
    });
    let tried = 0;
    for (const text of new Set(patterns)) for (const [concreteKind, strengthPsi, releaseStrengthPsi] of CONCRETES) for (const toppingIn of row.use === "pretopped" ? [0] : [0, 3]) {
      const member = memberWith(designation, text, {toppingIn, concreteKind, strengthPsi, releaseStrengthPsi});
      for (const spanFt of [12, 20, 34, 60, 90]) {
        // Pieces that the strands crush, and spans beyond any use, are no matter.
        if (spanFt > 4 * member.compression.depthIn || transfer(member, spanFt).releaseStrengthNeededPsi > 1.3 * releaseStrengthPsi) continue;
        tried++;
        const over = found(member, spanFt) / searched(member, spanFt) - 1;
        expect(over, `${text} ${concreteKind} ${strengthPsi} +${toppingIn} at ${spanFt} ft`).toBeLessThan(0.01);
        // Nor is it below: the places searched lie a thousandth of the span apart.
        expect(over, `${text} ${concreteKind} ${strengthPsi} +${toppingIn} at ${spanFt} ft`).toBeGreaterThan(-0.003);
      }
    }
    expect(tried).toBeGreaterThan(5);
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
});

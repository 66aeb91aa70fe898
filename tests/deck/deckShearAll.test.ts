import {expect, test} from "vitest";
import {handbookCriteria, type Criteria} from "../../lib/deck/criteria.js";
import {deckState} from "../../lib/deck/deckResult.js";
import {usualPatterns} from "../../lib/deck/table.js";
import type {Member} from "../../lib/member/member.js";
import {prestressState} from "../../lib/member/prestressState.js";
import {shearAt} from "../../lib/member/shear.js";
import {catalog} from "../support/designs.js";
import {memberWith} from "../support/members.js";

const criteria: Criteria = handbookCriteria(true);

/** Factored shear and what the concrete may carry at a place of a deck under a live load, kip, and the depth used for shear, in. */
function at(member: Member, spanFt: number, livePsf: number, share: number) {
  const {factoredPsf} = deckState(member, spanFt, criteria, livePsf);
  const {concreteKip, depthIn} = shearAt(member, spanFt, prestressState(member, spanFt, share, criteria.superimposedDeadPsf * member.widthFt));
  return {factoredKip: (factoredPsf * member.widthFt * spanFt * (0.5 - share)) / 1000, concreteKip: 0.75 * concreteKip, depthIn};
}

test.each(catalog.deckMembers.filter(({family}) => family === "double tee").map((row) => [row.designation, row] as const))(
  "a %s asks nowhere more stirrups than are told", (designation, row) => {
    for (const text of [usualPatterns(row).at(0), usualPatterns(row).at(-1)]) for (const spanFt of [30, 60]) {
      const tee = memberWith(designation, text as string);
      const {shear} = deckState(tee, spanFt, criteria, 80);
      for (let share = 0.03; share < 0.5; share += 0.003) {
        const {factoredKip, concreteKip, depthIn} = at(tee, spanFt, 80, share);
        // Grade 60.
        const neededIn2 = (12 * (factoredKip - concreteKip)) / 0.75 / (60 * depthIn);
        if (share * spanFt * 12 < tee.compression.depthIn / 2) continue;
        expect(shear.stirrups.forShearIn2PerFt, `${text} at ${spanFt} ft, ${share}`).toBeGreaterThan(0.98 * neededIn2 - 0.004);
      }
    }
  });

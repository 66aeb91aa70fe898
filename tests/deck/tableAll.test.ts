import {expect, test} from "vitest";
import {patternMember, usualPatterns} from "../../lib/deck/table.js";
import {catalog} from "../support/designs.js";

test("the patterns that are offered all fit their member, in every strand from 3/8 to 0.6 in", () => {
  const conditions = {concreteKind: "normalweight", strengthPsi: 5000, releaseStrengthPsi: 3500, toppingIn: 0, toppingStrengthPsi: 3000, humidityPercent: 70} as const;
  for (const member of catalog.deckMembers) for (const size of [6, 8, 10]) for (const pattern of usualPatterns(member, size)) {
    expect(() => patternMember(catalog, member, pattern, conditions), `${member.designation} ${pattern}`).not.toThrow();
  }
});

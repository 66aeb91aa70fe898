import {expect, test} from "vitest";
import {cellOf, prestressAt} from "../../lib/deck/cell.js";
import {handbookCriteria} from "../../lib/deck/criteria.js";
import {leastPressed} from "../../lib/deck/servicePlaces.js";
import {uniformMomentKipIn} from "../../lib/member/moments.js";
import {memberWith} from "../support/members.js";

test.each([
  ["10DT32", "128-D1", 0, 70], ["12DT32", "188-D1", 2, 72], ["12DT32", "148-D2", 2, 64], ["10DT24", "128-D1", 0, 40], ["8DT24", "108-D1", 2, 56], ["10DT24", "108-S", 0, 50],
] as const)("the soffit of a %s %s with %i in over %i ft is told within 0.01 ksi of the least along its span, on both sides", (name, text, toppingIn, spanFt) => {
  const member = memberWith(name, text, {toppingIn});
  const {section, full} = member;
  const cell = cellOf(member, spanFt, handbookCriteria(toppingIn > 0));
  for (const laterPlf of [0, 400, 900, 1600]) {
    const along = Array.from({length: 201}, (_, i) => {
      const share = 0.1 + i * 0.002;
      const {effectiveForceKip: force, eccentricityIn} = prestressAt(cell, share);
      const own = uniformMomentKipIn(member.selfWeightPlf + member.toppingWeightPlf, spanFt, share);
      return force / section.areaIn2 + (force * eccentricityIn - own) / section.sbIn3 - uniformMomentKipIn(laterPlf, spanFt, share) / full.sbIn3;
    });
    const told = leastPressed(cell, laterPlf);
    // With little load on depressed strands the ends may be pressed less than any place that is looked at.
    if (laterPlf > 0) expect(told.bottomKsi - Math.min(...along), `${laterPlf} plf`).toBeLessThan(0.01);
    const at = 0.1 + Math.round((told.share - 0.1) / 0.002) * 0.002;
    expect(told.bottomKsi).toBeGreaterThan(Math.min(...along) - 0.001);
    expect(Math.abs(at - told.share)).toBeLessThan(0.0011);
  }
});

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

test("under little load the soffit is compressed least before the two hold-downs, where the strands have yet to come down", () => {
  const member = memberWith("12DT32", "148-D2");
  const cell = cellOf(member, 50, handbookCriteria(false));
  const found = leastPressed(cell, 200);
  expect(found.share).toBeGreaterThan(0.2);
  expect(found.share).toBeLessThan(0.35);
  const {section, full} = member;
  const at = (share: number) => {
    const {effectiveForceKip: force, eccentricityIn} = prestressAt(cell, share);
    return force / section.areaIn2 + (force * eccentricityIn - uniformMomentKipIn(member.selfWeightPlf, 50, share)) / section.sbIn3 - uniformMomentKipIn(200, 50, share) / full.sbIn3;
  };
  // Lower there than at a hold-down, 0.4 of the span, and at midspan.
  expect(found.bottomKsi).toBeCloseTo(at(found.share), 9);
  expect(found.bottomKsi).toBeLessThan(at(0.4) - 0.005);
  expect(found.bottomKsi).toBeLessThan(at(0.5) - 0.005);
});

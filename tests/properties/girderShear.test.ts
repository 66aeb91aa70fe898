import fc from "fast-check";
import {describe, expect, test} from "vitest";
import {factoredShearKip} from "../../lib/girder/loads.js";
import {prestressState} from "../../lib/member/prestressState.js";
import {designShearKip, shearAt} from "../../lib/member/shear.js";
import {shearShares} from "../../lib/member/shearPlace.js";
import {mostStirrups, stirrups} from "../../lib/member/stirrups.js";
import {ifMade} from "../../lib/schemes/least.js";
import {seed} from "../support/designs.js";
import {girderOf} from "../support/madeBeams.js";
import {hold} from "./arbitrary.js";

const whole = (min: number, max: number) => fc.integer({min, max});

const girders = fc.record({
  name: fc.constantFrom("branch-library", "classroom-wing"),
  kind: fc.constantFrom("inverted tee", "rectangle"), spanFt: whole(20, 60), beamSpanFt: whole(16, 60),
  webWidthIn: whole(12, 36), ledgeDepthIn: whole(8, 36), depthIn: whole(16, 60), strands: whole(4, 40), strengthPsi: fc.constantFrom(5000, 6000, 8000),
});

describe("shear along a girder", () => {
  test("is found as if every place were looked at", () => {
    const seen = {further: 0, stirrups: 0, girders: 0};
    hold(300, fc.property(girders, ({name, spanFt, beamSpanFt, ...fields}) => {
      const changes = Object.fromEntries(Object.entries(fields).map(([field, value]) => [`girder.${field}`, value]));
      const made = ifMade(() => girderOf(seed(name), {"bay.baysAcross": 2, "bay.spanFt": spanFt, "bay.beamSpanFt": beamSpanFt, ...changes}));
      if (!made) return;
      const {member, loads, shear} = made;
      const shares = [...(member.shape.family === "inverted tee" ? [0] : []), ...shearShares(member, beamSpanFt)];
      const places = shares.map((share) => {
        const strength = shearAt(member, beamSpanFt, prestressState(member, beamSpanFt, share, loads.stems.momentFactor * loads.deckDeadPlf));
        const factoredKip = factoredShearKip(loads, beamSpanFt, share);
        return {share, strength, factoredKip, designKip: designShearKip(member, strength), ...stirrups(member, strength, factoredKip)};
      });
      const [nearest] = [...places].sort((a, b) => b.factoredKip / b.designKip - a.factoredKip / a.designKip);
      const most = mostStirrups(places);
      // To the last digit, so that no search comes out otherwise.
      expect(shear).toMatchObject({share: nearest?.share, factoredKip: nearest?.factoredKip, designKip: nearest?.designKip, strength: nearest?.strength});
      expect(shear.stirrups).toEqual({share: most.share, strength: most.strength, factoredKip: most.factoredKip, forShearIn2PerFt: most.forShearIn2PerFt, leastIn2PerFt: most.leastIn2PerFt});
      seen.girders++;
      if (shear.share > shares[0]!) seen.further++;
      if (shear.stirrups.forShearIn2PerFt > 0 && shear.stirrups.share !== shear.share) seen.stirrups++;
    }));
    expect(seen.girders).toBeGreaterThan(150);
    expect(Math.min(seen.further, seen.stirrups)).toBeGreaterThan(10);
  });
});

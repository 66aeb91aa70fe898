import fc from "fast-check";
import {describe, expect, test} from "vitest";
import {uniformMomentKipIn} from "../../lib/member/moments.js";
import {prestressState} from "../../lib/member/prestressState.js";
import {fiberStresses} from "../../lib/member/stress.js";
import {JOLT, LIFT_SHARE, forceOnRoadKip, handled} from "../../lib/member/stripping.js";
import {anyCatalogMember, anyOtherMember} from "./anyMember.js";
import {hold, within} from "./arbitrary.js";

const level = fc.oneof(anyCatalogMember, anyOtherMember).filter(({layout}) => layout.profile === "straight");
const MOMENTS = ["stripping", "hauling"] as const;
const PLACES = [LIFT_SHARE, 0.1, 0.15, 0.2, 0.25, 0.3, 0.35, 0.45, 0.5];

describe("a piece with level strands that hangs or rides", () => {
  test("is stressed nowhere more than over its lifting points and at midspan", () => {
    const seen = {lift: 0, midspan: 0};
    hold(300, fc.property(level, within(12, 100), fc.constantFrom(...MOMENTS), (member, spanFt, moment) => {
      const found = handled(member, spanFt, moment);
      const weightPlf = JOLT[moment] * member.selfWeightPlf;
      const stresses = PLACES.map((share) => {
        const state = prestressState(member, spanFt, share, 0);
        const moments = {precastKipIn: uniformMomentKipIn(weightPlf, spanFt, share) - 4 * LIFT_SHARE * uniformMomentKipIn(weightPlf, spanFt, 0.5), fullKipIn: 0};
        const most = fiberStresses(member, state, moment === "stripping" ? state.initialForceKip : forceOnRoadKip(state), moments);
        return {most, least: moment === "stripping" ? most : fiberStresses(member, state, state.effectiveForceKip, moments)};
      });
      // To the last digit, so that no search comes out otherwise than with all places looked at.
      expect(found.topTensionKsi).toBe(Math.max(0, ...stresses.map(({most}) => -most.topKsi)));
      expect(found.soffitTensionKsi).toBe(Math.max(0, ...stresses.map(({least}) => -least.bottomKsi)));
      expect(found.compressionKsi).toBe(Math.max(...stresses.flatMap(({most, least}) => [most.bottomKsi, least.topKsi])));
      if (found.topTensionKsi > 0) seen.lift++;
      if (found.soffitTensionKsi > 0) seen.midspan++;
    }));
    expect(Math.min(seen.lift, seen.midspan)).toBeGreaterThan(30);
  });
});

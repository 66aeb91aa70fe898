import {describe, expect, test} from "vitest";
import {pressedFace, soffitNearEndKsi} from "../../lib/beams/pressedFace.js";
import {withValues} from "../../lib/design/edit.js";
import {prestressState} from "../../lib/member/prestressState.js";
import {seed} from "../support/designs.js";
import {girderOf} from "../support/madeBeams.js";

const PLAIN = {"girder.kind": "rectangle", "girder.webWidthIn": 16, "girder.depthIn": 30, "girder.strands": 20};
const girder = (changes: Readonly<Record<string, unknown>> = {}) => girderOf(withValues(seed("records-store"), {...PLAIN, ...changes}));

describe("the face of a beam that is compressed most", () => {
  test("is the top under load, the soffit under strands that little load relieves, and the top where neither is compressed", () => {
    expect(pressedFace({topKsi: 1.2, bottomKsi: 0.4})).toEqual({face: "top", where: "at midspan", stressKsi: 1.2});
    expect(pressedFace({topKsi: 0.4, bottomKsi: 1.2})).toEqual({face: "soffit", where: "at midspan", stressKsi: 1.2});
    expect(pressedFace({topKsi: -0.4, bottomKsi: -1.2})).toEqual({face: "top", where: "at midspan", stressKsi: 0});
    expect(pressedFace({topKsi: -0.4, bottomKsi: 0.1}).face).toBe("soffit");
    // The load that stays relieves the soffit less near the ends than at midspan.
    expect(pressedFace({topKsi: 1.2, bottomKsi: 0.4}, 1.3)).toEqual({face: "soffit", where: "near the ends", stressKsi: 1.3});
    expect(pressedFace({topKsi: 1.2, bottomKsi: 0.4}, 1.1).face).toBe("top");
    // Planks that are hung up: nothing relieves midspan either.
    expect(pressedFace({topKsi: 0.1, bottomKsi: 1.4}, 1.3)).toEqual({face: "soffit", where: "at midspan", stressKsi: 1.4});
  });

  test("is pressed near the ends as a hand calculation has it", () => {
    const {member, spanFt, loads, transfer, soffitNearEndKsi: found} = girder();
    // 16 x 30 in: A = 480 in2, S = 16 x 30^2 / 6 = 2,400 in3, 500 plf; twenty strands at 3.9 in on average, 11.1 in below the middle.
    expect(member.selfWeightPlf).toBeCloseTo(500, 9);
    expect(spanFt).toBe(20);
    // The force is there 22.455 in from the end, at 0.09356 of 20 ft: x (L - x) / 2 = 1.87121 x 18.12879 / 2 = 16.9615 ft2.
    expect(transfer.transferLengthIn).toBeCloseTo(22.455, 3);
    const {effectiveForceKip} = prestressState(member, spanFt, transfer.transferLengthIn / 240, loads.deckDeadPlf);
    const momentKipIn = ((500 + loads.deckDeadPlf) * 16.9615 * 12) / 1000;
    expect(found).toBeCloseTo(effectiveForceKip / 480 + (effectiveForceKip * 11.1 - momentKipIn) / 2400, 4);
  });

  test("is relieved by dead load, and looked at no farther in than midspan", () => {
    const {member, spanFt} = girder();
    expect(soffitNearEndKsi(member, spanFt, 3000, 24)).toBeLessThan(soffitNearEndKsi(member, spanFt, 0, 24));
    expect(soffitNearEndKsi(member, 12, 1000, 90)).toBe(soffitNearEndKsi(member, 12, 1000, 72));
  });

  test("is the soffit near the ends of a girder with many strands, whose midspan alone would pass", () => {
    const crowded = girder({"girder.strands": 40, "girder.webWidthIn": 12, "girder.kind": "inverted tee", "girder.strengthPsi": 5000, "girder.releaseStrengthPsi": 4500, "bay.spanFt": 20});
    const check = crowded.checks.find(({id}) => id === "girder sustained compression");
    // 0.45 x 5,000 psi.
    expect(Math.max(crowded.sustainedStresses.bottomKsi, crowded.sustainedStresses.topKsi)).toBeLessThan(2.25);
    expect(check).toMatchObject({
      verdict: "fails", capacity: 2.25, demand: crowded.soffitNearEndKsi, label: "Girder: compression in the soffit under sustained load",
      message: "The soffit stays compressed so hard that creep would run away, by the strands near the ends: fewer strands, or stronger concrete.",
    });
  });
});

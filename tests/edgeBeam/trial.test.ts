import {expect, test} from "vitest";
import {deckMember} from "../../lib/deck/deckMember.js";
import {withValues} from "../../lib/design/edit.js";
import {edgeBeamUnder, sectionUnderDeck} from "../../lib/edgeBeam/edgeBeam.js";
import {surelyCracks, uncrackedBeam} from "../../lib/edgeBeam/trial.js";
import {floorLoads} from "../../lib/loads/floorLoads.js";
import {catalog, seed} from "../support/designs.js";

test("a beam with strands of which it is said at once that its soffit cracks does crack, and one that is made does not", () => {
  const counts = {sure: 0, cracked: 0, whole: 0};
  for (const kind of ["ledge", "pockets", "below"] as const) {
    for (const beamSpanFt of [24, 32, 40, 48, 56]) {
      for (const strands of [4, 6, 8, 10, 12, 14, 16, 20, 24]) {
        const design = withValues(seed("records-store"), {"edgeBeam.kind": kind, "edgeBeam.steel": "strands", "edgeBeam.strands": strands, "edgeBeam.webWidthIn": 20, "edgeBeam.upstandIn": 0, "bay.beamSpanFt": beamSpanFt});
        const member = deckMember(design, catalog);
        const under = sectionUnderDeck(design, member, floorLoads(design, catalog, member.widthFt), 36);
        const {checks} = edgeBeamUnder(design, catalog, member, under);
        const cracks = checks.some(({id, verdict}) => id === "beam tension" && verdict === "out of range");
        const made = uncrackedBeam(design, catalog, member, under);
        expect(made === undefined).toBe(cracks);
        if (made) expect(JSON.stringify(made.checks)).toBe(JSON.stringify(checks));
        const sure = surelyCracks(design, catalog, under);
        if (sure) expect(cracks).toBe(true);
        counts[sure ? "sure" : cracks ? "cracked" : "whole"] += 1;
      }
    }
  }
  // All three happen: what is said at once, what its losses decide, and what holds.
  expect(Math.min(...Object.values(counts)), JSON.stringify(counts)).toBeGreaterThan(0);
});

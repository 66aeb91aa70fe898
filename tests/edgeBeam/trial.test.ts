import {expect, test} from "vitest";
import {deckMember} from "../../lib/deck/deckMember.js";
import {withValues} from "../../lib/design/edit.js";
import {edgeBeamUnder, sectionUnderDeck} from "../../lib/edgeBeam/edgeBeam.js";
import {BeamOnTrial, cracksUnder, lacksSteel, rectangle, soffitCracks, surelyCracks} from "../../lib/edgeBeam/trial.js";
import {failsAny} from "../../lib/edgeBeam/edgeBeamChecks.js";
import {floorLoads} from "../../lib/loads/floorLoads.js";
import {catalog, seed} from "../support/designs.js";

test("what is known of a beam with strands before all of it is what its checks say", () => {
  const counts = {sure: 0, cracked: 0, whole: 0};
  for (const kind of ["ledge", "pockets", "below"] as const) {
    for (const beamSpanFt of [24, 32, 40, 48, 56]) {
      for (const strands of [4, 6, 8, 10, 12, 14, 16, 20, 24]) {
        const design = withValues(seed("records-store"), {"edgeBeam.kind": kind, "edgeBeam.steel": "strands", "edgeBeam.strands": strands, "edgeBeam.webWidthIn": 20, "edgeBeam.upstandIn": 0, "bay.beamSpanFt": beamSpanFt});
        const member = deckMember(design, catalog);
        const under = sectionUnderDeck(design, member, floorLoads(design, catalog, member.widthFt), 36);
        const {checks} = edgeBeamUnder(design, catalog, member, under);
        const cracks = checks.some(({id, verdict}) => id === "beam tension" && verdict === "out of range");
        const tried = new BeamOnTrial(design, catalog, member, under);
        expect(soffitCracks(tried)).toBe(cracks);
        const failed = (id: string) => checks.some((check) => check.id === id && check.verdict === "fails");
        expect(lacksSteel(tried)).toBe(cracks || ["beam strength", "beam bottom steel", "beam sag"].some(failed));
        for (const counts of [() => true, (id: string) => id.startsWith("ledge"), (id: string) => id === "beam sag"]) {
          expect(failsAny(design, member, new BeamOnTrial(design, catalog, member, under), counts)).toBe(checks.some(({id, verdict}) => verdict === "fails" && counts(id)));
        }
        const sure = surelyCracks(design, catalog, under);
        if (sure) expect(cracks).toBe(true);
        if (kind === "below") expect(cracksUnder(under.demand.serviceKipIn, design, catalog, rectangle(20, 36))).toBe(sure);
        counts[sure ? "sure" : cracks ? "cracked" : "whole"] += 1;
      }
    }
  }
  // All three happen: what is said at once, what its losses decide, and what holds.
  expect(Math.min(...Object.values(counts)), JSON.stringify(counts)).toBeGreaterThan(0);
});

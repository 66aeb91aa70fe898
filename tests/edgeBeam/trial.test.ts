import {expect, test} from "vitest";
import {deckMember} from "../../lib/deck/deckMember.js";
import {withValues} from "../../lib/design/edit.js";
import type {Design} from "../../lib/design/design.js";
import {seatChecks} from "../../lib/edgeBeam/edgeBeamChecks.js";
import {edgeBeamUnder, sectionUnderDeck} from "../../lib/edgeBeam/edgeBeam.js";
import {BeamOnTrial, cracksUnder, lacksSteel, rectangle, soffitCracks, surelyCracks} from "../../lib/edgeBeam/trial.js";
import {OF_SEAT, failsAny, seatMayLack, sizeSurelyFails} from "../../lib/edgeBeam/soonest.js";
import {edgeBeamTwist, twistBottomIn2} from "../../lib/edgeBeam/twist.js";
import {floorLoads} from "../../lib/loads/floorLoads.js";
import {ifMade} from "../../lib/schemes/least.js";
import {edgeEndChecks} from "../../lib/walls/endStrip.js";
import {catalog, seed} from "../support/designs.js";

/** What the strip's checks ask of a beam that is tried. */
function endOf(design: Design, beam: BeamOnTrial) {
  return {checks: seatChecks(design, beam), shearKip: beam.shearKip, greatestShearKip: beam.greatestShearKip};
}

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
        const tried = new BeamOnTrial(design, catalog, under);
        expect(soffitCracks(tried)).toBe(cracks);
        const failed = (id: string) => checks.some((check) => check.id === id && check.verdict === "fails");
        expect(lacksSteel(tried)).toBe(cracks || ["beam strength", "beam bottom steel", "beam sag"].some(failed));
        for (const counts of [() => true, (id: string) => id.startsWith("ledge"), (id: string) => id === "beam sag"]) {
          expect(failsAny(design, member, new BeamOnTrial(design, catalog, under), counts)).toBe(checks.some(({id, verdict}) => verdict === "fails" && counts(id)));
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

test("a ledge that surely holds does whatever bars or strands its beam has, and most that hold are sure", () => {
  const counts = {sure: 0, holds: 0, fails: 0};
  const STRIP_KIP = 4;
  let stripDecides = 0;
  for (const starter of ["records-store", "classroom-wing"] as const) {
    for (const [spanFt, beamSpanFt] of [[24, 24], [32, 48], [44, 30], [56, 36], [60, 56]] as const) {
      for (const ledgeDepthIn of [8, 9, 11, 14, 18, 24]) {
        for (const [webWidthIn, coverIn] of [[8, 1], [8, 3], [16, 1.25], [24, 2]] as const) {
          const sized = withValues(seed(starter), {
            "bay.spanFt": spanFt, "bay.beamSpanFt": beamSpanFt, "edgeBeam.kind": "ledge", "edgeBeam.ledgeDepthIn": ledgeDepthIn, "edgeBeam.webWidthIn": webWidthIn, "edgeBeam.coverIn": coverIn,
          });
          const member = deckMember(sized, catalog);
          const under = sectionUnderDeck(sized, member, floorLoads(sized, catalog, member.widthFt));
          const [sure, sureWithStrip] = [0, STRIP_KIP].map((onEndStemKip) => seatMayLack(sized, catalog, under, onEndStemKip) === 0);
          for (const steel of [{"edgeBeam.steel": "bars"}, {"edgeBeam.steel": "strands", "edgeBeam.strands": 8}, {"edgeBeam.steel": "strands", "edgeBeam.strands": 24}]) {
            const design = withValues(sized, steel);
            const beam = new BeamOnTrial(design, catalog, under);
            const fails = failsAny(design, member, beam, (id) => id.startsWith("ledge") && id !== "ledge projection", OF_SEAT);
            if (sure) expect(fails).toBe(false);
            const withStrip = edgeEndChecks(endOf(design, beam), {onStemKip: STRIP_KIP, endKip: 0});
            if (sureWithStrip) expect([fails, ...withStrip.map(({verdict}) => verdict)]).toEqual([false, ...withStrip.map(() => expect.stringMatching("ok|near") as string)]);
            if (sure && !sureWithStrip) stripDecides += 1;
            counts[sure ? "sure" : fails ? "fails" : "holds"] += 1;
          }
        }
      }
    }
  }
  expect(Math.min(counts.sure, counts.fails), JSON.stringify(counts)).toBeGreaterThan(100);
  expect(counts.sure, JSON.stringify(counts)).toBeGreaterThan(counts.holds);
  expect(stripDecides).toBeGreaterThan(10);
});

test("a size that surely fails does whatever bars or strands its beam has, and most webs that are too narrow are sure", () => {
  const counts = {sure: 0, fails: 0, holds: 0};
  const asked = [["beam shear"], ["beam shear and torsion"], ["ledge bars", "ledge shear", "pocket web"], ["ledge punching interior"], ["ledge punching end"]];
  for (const kind of ["ledge", "pockets"] as const) {
    for (const [spanFt, beamSpanFt] of [[32, 48], [56, 36], [72, 30], [80, 48]] as const) {
      for (const [ledgeDepthIn, upstandIn, webWidthIn] of [[8, 0, 10], [8, 30, 8], [10, 30, 12], [12, 0, 16], [16, 0, 24], [24, 30, 10]] as const) {
        const sized = withValues(seed("records-store"), {
          "bay.spanFt": spanFt, "bay.beamSpanFt": beamSpanFt, "edgeBeam.kind": kind, "edgeBeam.ledgeDepthIn": ledgeDepthIn, "edgeBeam.upstandIn": upstandIn, "edgeBeam.webWidthIn": webWidthIn,
        });
        const member = deckMember(sized, catalog);
        const under = sectionUnderDeck(sized, member, floorLoads(sized, catalog, member.widthFt));
        for (const ids of asked) {
          const strip = {endKip: ids[0] === "beam shear" ? 5 : 0, onStemKip: ids[0] === "ledge punching end" ? 4 : 0};
          for (const steel of [{"edgeBeam.steel": "bars"}, {"edgeBeam.steel": "strands", "edgeBeam.strands": 8}, {"edgeBeam.steel": "strands", "edgeBeam.strands": 24}]) {
            const design = withValues(sized, steel);
            const sure = ifMade(() => sizeSurelyFails(design, catalog, under, (id) => ids.includes(id), strip)) === true;
            const beam = new BeamOnTrial(design, catalog, under);
            // A beam that its sizes do not make fails as well.
            const fails = ifMade(() => failsAny(design, member, beam, (id) => ids.includes(id)) || edgeEndChecks(endOf(design, beam), strip).some(({verdict}) => verdict === "fails")) ?? true;
            if (sure) expect(fails, `${kind} ${ids.join()}`).toBe(true);
            counts[sure ? "sure" : fails ? "fails" : "holds"] += 1;
          }
        }
      }
    }
  }
  expect(Math.min(counts.sure, counts.holds), JSON.stringify(counts)).toBeGreaterThan(50);
  expect(counts.sure, JSON.stringify(counts)).toBeGreaterThan(counts.fails);
});

test("torsion's part of the bottom steel is known before the depth of the bending steel", () => {
  const torsions = new Set<number>();
  for (const kind of ["ledge", "pockets", "below"] as const) {
    for (const [webWidthIn, coverIn, beamSpanFt] of [[10, 1.5, 24], [16, 1, 36], [22, 2, 48], [12, 3.5, 30]] as const) {
      const design = withValues(seed("records-store"), {"edgeBeam.kind": kind, "edgeBeam.webWidthIn": webWidthIn, "edgeBeam.coverIn": coverIn, "bay.beamSpanFt": beamSpanFt});
      const member = deckMember(design, catalog);
      const {section, demand} = sectionUnderDeck(design, member, floorLoads(design, catalog, member.widthFt), 40);
      const bottomIn2 = twistBottomIn2(design, section, demand);
      for (const share of [0.75, 0.9]) expect(bottomIn2).toBe(edgeBeamTwist(design, section, demand, share * section.depthIn)?.bottomIn2 ?? 0);
      torsions.add(bottomIn2);
    }
  }
  expect(torsions.has(0) && torsions.size > 5, [...torsions].join(" ")).toBe(true);
});

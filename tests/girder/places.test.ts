import {describe, expect, test} from "vitest";
import {withValues} from "../../lib/design/edit.js";
import {girderCurves} from "../../lib/girder/curve.js";
import {girderDiagrams} from "../../lib/girder/diagrams.js";
import {factoredShearKip} from "../../lib/girder/loads.js";
import {developmentShares, partlyDevelopedStrength} from "../../lib/member/development.js";
import {prestressState} from "../../lib/member/prestressState.js";
import {designShearKip, shearAt} from "../../lib/member/shear.js";
import {shearShares} from "../../lib/member/shearPlace.js";
import {catalog, seed, seeds} from "../support/designs.js";
import {floorOf, girderOf} from "../support/madeBeams.js";

const library = () => seed("branch-library");

describe("the places at which a girder is reported", () => {
  const cases = () => [...seeds.map(({design}) => design), withValues(library(), {"girder.kind": "rectangle", "girder.depthIn": 44}), withValues(library(), {"girder.strands": 8}),
    // Cracks turn a ninth along this one, further in than the web is pressed most by the support.
    withValues(library(), {"girder.kind": "rectangle", "girder.depthIn": 44, "girder.strands": 4, "bay.beamSpanFt": 20})];

  test("no place of the girder is nearer to what shear may be there", () => {
    for (const design of cases()) {
      const {member, spanFt, loads, shear} = girderOf(design);
      const deadPlf = loads.stems.momentFactor * loads.deckDeadPlf;
      const use = (share: number) => factoredShearKip(loads, spanFt, share) / designShearKip(member, shearAt(member, spanFt, prestressState(member, spanFt, share, deadPlf)));
      expect(shear.factoredKip / shear.designKip).toBeCloseTo(use(shear.share), 9);
      for (const share of shearShares(member, spanFt)) expect(shear.factoredKip / shear.designKip).toBeGreaterThanOrEqual(use(share) - 1e-12);
      // What hangs on ledges near the bottom presses on the support itself.
      if (design.girder.kind === "inverted tee") expect(shear.factoredKip / shear.designKip).toBeGreaterThanOrEqual(use(0) - 1e-12);
      else expect(shear.share).toBeGreaterThan(0);
    }
  });

  test("no place near the ends asks more of strands that have yet to take hold", () => {
    for (const design of cases()) {
      const {member, spanFt, loads, midspan, strength, development, momentKipIn} = girderOf(design);
      const deadPlf = loads.stems.momentFactor * loads.deckDeadPlf;
      const told = development.factoredMomentKipIn / development.strength.designMomentKipIn;
      const shares = developmentShares(member, spanFt, midspan.losses.effectiveStressKsi, strength);
      expect(shares.length).toBeGreaterThan(1);
      for (const share of shares) {
        const there = partlyDevelopedStrength(member, spanFt, prestressState(member, spanFt, share, deadPlf), strength).designMomentKipIn;
        // A parabola: 4 x (1 - x) of the moment at midspan.
        expect(told).toBeGreaterThanOrEqual((4 * share * (1 - share) * momentKipIn) / there - 1e-9);
      }
    }
  });
});

describe("what the deck asks of the girder", () => {
  test("is by the bay that bends most and the bay whose end is pressed most, which need not be one, nor the first", () => {
    for (const beamSpanFt of [24, 26, 28, 33]) {
      const {stems} = girderOf(library(), {"bay.beamSpanFt": beamSpanFt, "bay.baysAlong": 5}).loads;
      const {bays, bending, end} = stems;
      expect(bending?.unit.greatestMomentKipFt).toBeCloseTo(Math.max(...bays.map(({unit}) => unit.greatestMomentKipFt)), 6);
      expect(Math.max(end?.unit.leftKip ?? 0, end?.unit.rightKip ?? 0)).toBeCloseTo(Math.max(...bays.flatMap(({unit}) => [unit.leftKip, unit.rightKip])), 6);
      expect(stems.momentFactor).toBeCloseTo(Math.max(1, (bending?.unit.greatestMomentKipFt ?? 0) / (beamSpanFt ** 2 / 8)), 9);
    }
    // Of 28 ft bays the second, 99.8 of 98 kip-ft for an even load; of 23 ft the third.
    const bendsMost = (beamSpanFt: number) => girderOf(library(), {"bay.beamSpanFt": beamSpanFt, "bay.baysAlong": 5}).loads.stems.bending?.bay;
    expect([bendsMost(28), bendsMost(23)]).toEqual([2, 3]);
  });

  test("is more than an even load by its stems' bending, or by their press on an end where shear governs", () => {
    const bent = girderOf(library(), {"bay.beamSpanFt": 24});
    expect(bent.capacity.governs).not.toBe("shear");
    expect(bent.demandPlf).toBeCloseTo(bent.loads.superimposedPlf * bent.loads.stems.momentFactor, 9);
    const sheared = girderOf(library(), {"bay.beamSpanFt": 24, "girder.webWidthIn": 8, "girder.strands": 30, "girder.ledgeDepthIn": 12, "girder.strengthPsi": 8000});
    expect(sheared.capacity.governs).toBe("shear");
    expect(sheared.demandPlf).toBeCloseTo(sheared.loads.superimposedPlf * sheared.loads.stems.reactionFactor, 9);
    expect(sheared.loads.stems.reactionFactor).toBeGreaterThan(1.01 * sheared.loads.stems.momentFactor);
  });

  test("twists it at the support by one bay's load, which half of the girder's own weight and both decks' go with", () => {
    const {loads, twist, seat, spanFt} = girderOf(library());
    // Stems that load it as evenly as planks: half a span at each end.
    expect(loads.stems.reactionFactor).toBe(1);
    const half = spanFt / 2 / 1000;
    expect(twist.shearKip).toBeCloseTo(half * (1.2 * (loads.selfPlf + loads.deckDeadPlf) + 1.6 * loads.oneBayLivePlf), 9);
    // Prestress gives most of its bending strength, and turns the struts of its twist to 37.5 degrees (ACI 318-19 22.7.6.1.2).
    expect(twist.design.strutAngleDeg).toBe(37.5);
    expect(twist.torsionKipIn).toBeCloseTo(half * 1.6 * loads.oneBayLivePlf * seat.eccentricityIn, 9);
    // While one bay's deck lies and the other's does not: its own weight alone, over half of its span.
    const {deck} = floorOf(library());
    const deckPlf = (deck.selfWeightPlf / 10) * 20;
    expect(deck.widthFt).toBe(10);
    expect(twist.settingKipIn).toBeCloseTo(half * 1.2 * deckPlf * seat.eccentricityIn, 9);
    expect(loads.deadPlf).toBeCloseTo(loads.selfPlf + loads.deckDeadPlf, 9);
  });

  test("is drawn with what its worst bays press on its end, and their bending", () => {
    const found = girderOf(library(), {"bay.beamSpanFt": 24});
    const {momentKipFt, shearKip} = girderDiagrams(found);
    expect(found.loads.stems.reactionFactor).toBeGreaterThan(1.1);
    expect(Math.max(...shearKip.map(({value}) => Math.abs(value)))).toBeCloseTo(found.reactionKip, 6);
    expect(Math.max(...momentKipFt.map(({value}) => value))).toBeGreaterThan((0.98 * found.momentKipIn) / 12);
  });

  test("is drawn by 1.4 D where there is hardly any live load", () => {
    const light = withValues(library(), {"loads.rooms": [{name: "Plant", occupancy: "office", own: {livePsf: 10, reducible: false, reason: "hardly entered"}}], "loads.partitions": false});
    const found = girderOf(light);
    const {livePlf, deadPlf} = found.loads;
    expect(1.4 * deadPlf).toBeGreaterThan(1.2 * deadPlf + 1.6 * livePlf);
    expect(found.reactionKip).toBeCloseTo((1.4 * deadPlf * found.spanFt) / 2000, 9);
    const {momentKipFt, shearKip} = girderDiagrams(found);
    expect(Math.max(...shearKip.map(({value}) => value))).toBeCloseTo(found.reactionKip, 6);
    expect(Math.max(...momentKipFt.map(({value}) => value))).toBeCloseTo(found.momentKipIn / 12, 6);
  });
});

describe("the curves of a girder", () => {
  const curvesOf = (strands: number, spansFt: readonly number[] = [20, 30], demandPlf?: number) => {
    const design = withValues(library(), {"girder.strands": strands});
    const found = girderOf(design);
    return girderCurves(design, catalog, floorOf(design).deck, {criteria: found.criteria, demandPlf: demandPlf ?? found.demandPlf}, spansFt);
  };

  test("are those of four strands fewer and more, as far as there are two at least, and places for all", () => {
    expect(curvesOf(6).map(({strands}) => strands)).toEqual([6, 2, 10]);
    expect(curvesOf(5).map(({strands}) => strands)).toEqual([5, 9]);
    const most = girderOf(library()).strandsMost;
    const last = Math.min(60, most);
    expect(curvesOf(last - 4).map(({strands}) => strands)).toEqual([last - 4, last - 8, last]);
    expect(curvesOf(last - 3).map(({strands}) => strands)).toEqual([last - 3, last - 7]);
  });

  test("keep to the spans that the method covers, both ends of them included", () => {
    expect(curvesOf(16, [9.9, 10, 150, 150.1])[0]?.cells.map(({spanFt}) => spanFt)).toEqual([10, 150]);
  });

  test("reach the last span where that still carries the load, and none where no span does", () => {
    expect(curvesOf(16, [20, 30], 1)[0]?.reachFt).toBe(30);
    expect(curvesOf(16, [20, 30], 1e6)[0]?.reachFt).toBeUndefined();
    const [own] = curvesOf(16, [20, 30]);
    // A load that a span just carries is reached there.
    expect(curvesOf(16, [20, 30], own?.cells[0]?.safeLoadPlf)[0]?.reachFt).toBeCloseTo(20, 9);
  });
});

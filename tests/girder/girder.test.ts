import {describe, expect, test} from "vitest";
import {girder, type GirderResult} from "../../lib/girder/girder.js";
import {girderCurves} from "../../lib/girder/curve.js";
import {girderDiagrams} from "../../lib/girder/diagrams.js";
import {deckShearKipPerPlf, factored, factoredShearKip} from "../../lib/girder/loads.js";
import {placedBeamStrands} from "../../lib/beams/prestressedBeam.js";
import {deckMember} from "../../lib/deck/deckMember.js";
import {withValues} from "../../lib/design/edit.js";
import {floorLoads} from "../../lib/loads/floorLoads.js";
import {prestressState} from "../../lib/member/prestressState.js";
import {shearAt} from "../../lib/member/shear.js";
import {shearShares} from "../../lib/member/shearPlace.js";
import {stirrups} from "../../lib/member/stirrups.js";
import {clearUnderGirderIn} from "../../lib/story/stack.js";
import {catalog, libraryByHand, seed, seeds} from "../support/designs.js";
import {refused} from "../support/errors.js";
import {girderOf} from "../support/madeBeams.js";

const library = libraryByHand();

const verdicts = (of: GirderResult) => Object.fromEntries(of.checks.map(({id, verdict}) => [id, verdict]));

describe("the girder between two bays", () => {
  test("is reported the most stirrups that shear asks at any place, not where the web comes nearest to crushing", () => {
    for (const {design} of seeds) for (const strands of [10, 16, 24]) {
      const {member, spanFt, loads, shear} = girderOf(design, {"girder.strands": strands});
      const deadPlf = loads.stems.momentFactor * loads.deckDeadPlf;
      const asked = (share: number) => stirrups(member, shearAt(member, spanFt, prestressState(member, spanFt, share, deadPlf)), factoredShearKip(loads, spanFt, share));
      for (const share of shearShares(member, spanFt)) {
        expect(shear.stirrups.forShearIn2PerFt).toBeGreaterThanOrEqual(asked(share).forShearIn2PerFt - 1e-12);
        expect(shear.stirrups.leastIn2PerFt).toBeGreaterThanOrEqual(asked(share).leastIn2PerFt - 1e-12);
      }
      expect(asked(shear.stirrups.share).forShearIn2PerFt).toBeCloseTo(shear.stirrups.forShearIn2PerFt, 12);
    }
    // Beside a lightly loaded rectangle's ends the concrete carries all; a fifth along the span cracks turn.
    const {shear, spanFt, checks} = girderOf(library, {"girder.kind": "rectangle", "girder.strands": 8, "bay.beamSpanFt": 24, "bay.spanFt": 24});
    expect(shear.share).toBeLessThan(0.06);
    expect(shear.stirrups).toMatchObject({share: 0.22, forShearIn2PerFt: expect.closeTo(0.184, 3)});
    expect(checks.find(({id}) => id === "girder shear")?.message).toContain(`0.18 in² per foot where the most is needed, ${(0.22 * spanFt).toFixed(1)} ft from the ends`);
  });

  test("is there only between two bays, and holds in the starter designs", () => {
    for (const {id, design} of seeds) {
      const found = girderOf(design);
      expect(found.checks.filter((check) => check.verdict === "fails").map((check) => check.id), id).toEqual([]);
      expect(new Set(found.checks.map((check) => check.id)).size).toBe(found.checks.length);
      for (const check of found.checks) expect(Number.isFinite(check.demand + check.capacity)).toBe(true);
    }
    const single = withValues(library, {"bay.baysAcross": 1});
    const deck = deckMember(single, catalog);
    expect(girder(single, catalog, deck, floorLoads(single, catalog, deck.widthFt))).toBeUndefined();
  });

  test("stands beside the deck as an inverted tee, below it as a rectangle", () => {
    const tee = girderOf(library);
    expect([tee.depthIn, tee.belowDeckIn]).toEqual([12 + 32 + 2, 12]);
    const rectangle = girderOf(library, {"girder.kind": "rectangle", "girder.depthIn": 40});
    expect([rectangle.depthIn, rectangle.belowDeckIn]).toEqual([40, 40]);
    expect(rectangle.seat.ledge).toBeUndefined();
    expect(clearUnderGirderIn({clearUnderDeckIn: 140}, rectangle)).toBe(100);
  });

  test("by hand: loads of the library's girder from both bays", () => {
    const {loads, momentKipIn, reactionKip, spanFt} = girderOf(library);
    // Stacks of 150 psf, not reduced, over 40 ft.
    expect(loads.livePlf).toBe(6000);
    expect(loads.oneBayLivePlf).toBe(3000);
    // 16 x 46 in of web and 2 x 8 x 12 in of ledges, 150 pcf.
    expect(loads.selfPlf).toBeCloseTo(((16 * 46 + 2 * 8 * 12) / 144) * 150, 9);
    // Three tees of 10 ft with stems 5 ft apart: six stems, which bend it as an even load does.
    expect(loads.stems.bays.map(({placesFt}) => placesFt)).toEqual([[2.5, 7.5, 12.5, 17.5, 22.5, 27.5]]);
    expect([loads.stems.momentFactor, loads.stems.reactionFactor]).toEqual([1, 1]);
    const factoredPlf = 1.2 * (loads.selfPlf + loads.deckDeadPlf) + 1.6 * 6000;
    expect(momentKipIn).toBeCloseTo((factoredPlf * spanFt ** 2 * 12) / 8000, 6);
    expect(reactionKip).toBeCloseTo((factoredPlf * spanFt) / 2000, 9);
  });

  test("takes the greater of its two combinations", () => {
    expect(factored(1000, {deadPlf: 4000, livePlf: 0}, 1)).toBe(7000);
    expect(factored(1000, {deadPlf: 4000, livePlf: 3000}, 1)).toBe(10800);
    expect(factored(1000, {deadPlf: 4000, livePlf: 3000}, 1.1)).toBeCloseTo(1.2 * (1000 + 4400) + 1.6 * 3300, 9);
  });

  test("counts stems where they ask more than an even load", () => {
    const even = girderOf(library);
    const uneven = girderOf(library, {"bay.beamSpanFt": 24});
    expect(uneven.loads.stems.bays.map(({bay, placesFt}) => [bay, placesFt.map((atFt) => Number(atFt.toFixed(6)))])).toEqual([
      [1, [2.5, 7.5, 12.5, 17.5, 22.5]], [2, [3.5, 8.5, 13.5, 18.5, 23.5]], [3, [4.5, 9.5, 14.5, 19.5]], [4, [0.5, 5.5, 10.5, 15.5, 20.5]],
    ]);
    // Bay 1: five stems of 5 plf-ft about its left end, 5 (21.5 + 16.5 + 11.5 + 6.5 + 1.5) / 24 = 11.98, its right 13.02, against
    // 12 of an even load: 1.085. Bay 2 presses its right end with 5 (3.5 + 8.5 + 13.5 + 18.5 + 23.5) / 24 = 14.06: 1.172.
    expect(uneven.loads.stems.end?.bay).toBe(2);
    expect(uneven.loads.stems.reactionFactor).toBeCloseTo((5 * 67.5) / 24 / 12, 9);
    // Tees of 15 ft on 32 ft bays, from 3.75 ft on every 7.5 ft: the second bay begins 2 ft into a tee, and its stems stand 1.75,
    // 9.25, 16.75, 24.25 and 31.75 ft from its left line: 7.5 x 83.75 / 32 = 19.63 at its right end, of 16.
    const wide = girderOf(library, {"bay.beamSpanFt": 32, "deck.member": "15DT34", "deck.toppingIn": 0, "bay.baysAlong": 2});
    expect(wide.loads.stems.reactionFactor).toBeCloseTo((7.5 * 83.75) / 32 / 16, 9);
    expect(even.loads.stems.reactionFactor).toBe(1);
    expect(girderOf(seed("classroom-wing")).loads.stems).toMatchObject({bays: [], bending: undefined, momentFactor: 1, endDistanceIn: undefined});
  });

  test("has the end distance of the worst end of every bay", () => {
    // Bay 1 of 24 ft: 2.5 ft off its left line, 1.5 ft off its right; less 10 in to the girder's end, 20 and 8 in.
    expect(girderOf(library, {"bay.beamSpanFt": 24, "bay.baysAlong": 1, "column.sideIn": 18}).seat.ledge?.ledge.endDistanceIn).toBeCloseTo(8, 6);
    // Bay 3's first stem stands 4.5 ft off, bay 2's last 0.5 ft: 4 in beyond the end, so that its bearing just lies on it.
    const three = girderOf(library, {"bay.beamSpanFt": 24, "bay.baysAlong": 3, "column.sideIn": 18});
    expect(three.loads.stems.endDistanceIn).toBeCloseTo(-4, 6);
    expect(three.seat.ledge?.ledge.endDistanceIn).toBeCloseTo(4.75 / 2, 9);
    // A girder cut for columns of 30 in ends 16 in off the line.
    expect(girderOf(library, {"column.sideIn": 30}).loads.stems.endDistanceIn).toBeCloseTo(30 - 16, 6);
    expect(girderOf(library, {"column.sideIn": 30}).seat.ledge?.punching?.designKip).toBeLessThan(girderOf(library).seat.ledge?.punching?.designKip ?? 0);
  });

  test("has at every place the shear of the bay that asks most there, on the worse side of each stem", () => {
    const {loads, spanFt} = girderOf(library, {"bay.beamSpanFt": 24, "bay.baysAlong": 5});
    for (const {unit} of loads.stems.bays) {
      for (const {fromFt, toFt, shearFromKip, shearToKip} of unit.stretches) {
        expect(1000 * deckShearKipPerPlf(loads, spanFt, fromFt / spanFt)).toBeGreaterThanOrEqual(Math.abs(shearFromKip) - 1e-6);
        expect(1000 * deckShearKipPerPlf(loads, spanFt, toFt / spanFt)).toBeGreaterThanOrEqual(Math.abs(shearToKip) - 1e-6);
      }
    }
    // 12 ft tees on 57 ft bays: a stem stands over the second line.
    const over = (beamSpanFt: number) => girderOf(library, {"deck.member": "12DT28", "deck.pattern": "108-S", "bay.beamSpanFt": beamSpanFt});
    expect(over(57.01).reactionKip / over(57).reactionKip).toBeCloseTo(1, 2);
    expect(deckShearKipPerPlf(over(57).loads, 57, 0)).toBeCloseTo(deckShearKipPerPlf(over(57.01).loads, 57.01, 0), 3);
  });

  test("is drawn with the moment and the reaction that it is designed for, or as its stems make them", () => {
    for (const {design} of seeds) {
      const found = girderOf(design);
      const {momentKipFt, shearKip} = girderDiagrams(found);
      const most = Math.max(...momentKipFt.map(({value}) => value));
      expect(most).toBeLessThanOrEqual(found.momentKipIn / 12 + 1e-6);
      expect(most).toBeGreaterThan((0.9 * found.momentKipIn) / 12);
      expect(Math.max(...shearKip.map(({value}) => Math.abs(value)))).toBeCloseTo(found.reactionKip, 6);
      expect(momentKipFt.at(-1)?.value).toBeCloseTo(0, 6);
    }
  });

  test("is twisted by one bay's live load alone, and more by a wider ledge", () => {
    const {twist, seat} = girderOf(library);
    // Half of the 16 in web and three quarters of the 8 in ledge: 8 + 6.
    expect(seat.eccentricityIn).toBe(14);
    expect(twist.torsionKipIn).toBeCloseTo(1.6 * 3 * 15 * 14, 9);
    expect(girderOf(library, {"girder.ledgeProjectionIn": 12}).twist.torsionKipIn).toBeGreaterThan(twist.torsionKipIn);
    expect(girderOf(library, {"girder.kind": "rectangle", "girder.depthIn": 44}).twist.torsionKipIn).toBeLessThan(twist.torsionKipIn);
  });

  test("bears its stems by the weaker concrete of deck and girder, as the edge beam does", () => {
    const concretes = (girderPsi: number, deckPsi: number) => girderOf(library, {
      "girder.strengthPsi": girderPsi, "girder.releaseStrengthPsi": 3500, "deck.strengthPsi": deckPsi, "deck.releaseStrengthPsi": 3500,
    }).checks.find(({id}) => id === "girder ledge bearing")?.capacity ?? NaN;
    // The pad is 4 in long under a stem of 4.75 in: 0.65 x 0.85 x 5 ksi x 19 in2 = 52.5 kip, times sqrt(A2/A1) = 7 in of seat / 4.
    expect(concretes(8000, 5000)).toBeCloseTo(0.65 * 0.85 * 5 * 4.75 * 4 * (7 / 4), 6);
    expect(concretes(5000, 8000)).toBeCloseTo(concretes(8000, 5000), 9);
    expect(concretes(8000, 8000) / concretes(8000, 5000)).toBeCloseTo(8 / 5, 9);
  });

  test("fails where it should, each check on its own side", () => {
    expect(verdicts(girderOf(library, {"girder.strands": 8}))).toMatchObject({"girder load": "fails", "girder strength": "fails"});
    expect(verdicts(girderOf(library, {"girder.ledgeDepthIn": 7}))).toMatchObject({"girder ledge depth": "fails", "girder ledge punching": "fails"});
    expect(verdicts(girderOf(library, {"girder.ledgeDepthIn": 8}))["girder ledge depth"]).toBe("ok");
    expect(verdicts(girderOf(library, {"girder.ledgeProjectionIn": 5}))).toMatchObject({"girder ledge projection": "fails", "girder seat tolerance": "fails"});
    expect(verdicts(girderOf(library, {"girder.kind": "rectangle", "girder.depthIn": 24}))).toMatchObject({"girder sag": "fails", "girder transfer compression midspan": "fails"});
    expect(verdicts(girderOf(seed("classroom-wing"), {"girder.ledgeDepthIn": 6, "bay.spanFt": 40, "loads.rooms": [{name: "Store", occupancy: "storage-heavy"}]}))["girder ledge line"]).toBe("fails");
    expect(verdicts(girderOf(library, {"criteria.tensionClass": "C"}))).toHaveProperty("girder crack control");
    expect(verdicts(girderOf(library, {"girder.webWidthIn": 8, "girder.ledgeDepthIn": 24, "girder.strands": 10, "bay.beamSpanFt": 40}))["girder shear"]).toBe("fails");
  });

  test("keeps the strands that fit, and says that more were asked", () => {
    const crowded = girderOf(seed("classroom-wing"), {"girder.strands": 60});
    expect(crowded.member.layout.count).toBe(crowded.strandsMost);
    expect(verdicts(crowded)["girder strands"]).toBe("fails");
    expect(verdicts(girderOf(seed("classroom-wing"), {"girder.strands": crowded.strandsMost}))["girder strands"]).toBe("ok");
    refused(() => girderOf(library, {"girder.strengthPsi": 4000, "girder.releaseStrengthPsi": 4500}), {path: "girder.releaseStrengthPsi"});
  });

  test("has every strand within its concrete, clear of its sides", () => {
    for (const kind of ["inverted tee", "rectangle"] as const) {
      const {member: {shape, layout}} = girderOf(library, {"girder.kind": kind, "girder.strands": 20, "girder.depthIn": 44});
      const places = placedBeamStrands(shape, layout);
      expect(places).toHaveLength(20);
      expect(new Set(places.map(({xIn, yIn}) => `${xIn} ${yIn}`)).size).toBe(20);
      for (const {xIn} of places) expect(Math.min(xIn, shape.widthIn - xIn)).toBeGreaterThanOrEqual(2);
      expect(places.reduce((sum, {yIn}) => sum + yIn, 0) / 20).toBeCloseTo(layout.centroidCenterIn, 9);
    }
  });

  test("reaches further with more strands", () => {
    const deck = deckMember(library, catalog);
    const found = girderOf(library);
    const curves = girderCurves(library, catalog, deck, found, [8, 20, 25, 30, 35, 40, 45]);
    expect(curves.map(({strands, own}) => [strands, own])).toEqual([[16, true], [12, false], [20, false]]);
    expect(curves[0]?.cells[0]?.spanFt).toBe(20);
    const [own, fewer, more] = curves.map(({reachFt}) => reachFt ?? 0) as [number, number, number];
    expect(fewer).toBeLessThan(own);
    expect(more).toBeGreaterThan(own);
    expect(own).toBeGreaterThan(30);
  });
});

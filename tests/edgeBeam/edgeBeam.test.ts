import {describe, expect, test} from "vitest";
import {LEAST_STIRRUP_SPACING_IN} from "../../lib/edgeBeam/twist.js";
import {effectiveInertiaIn4} from "../../lib/edgeBeam/service.js";
import type {Design} from "../../lib/design/design.js";
import {withValues} from "../../lib/design/edit.js";
import {evaluate} from "../../lib/evaluate.js";
import {catalog, libraryByHand, seed, seeds} from "../support/designs.js";
import {refused} from "../support/errors.js";
import {edgeBeamOf} from "../support/madeBeams.js";

/** The library, with a topping of one thickness, so that its weight can be told by hand. */
const LIBRARY = withValues(libraryByHand(), {"topping.followShare": 1, "column.sideIn": 18});
/** The library's beam with round numbers of this test's own. */
const PLAIN = {"edgeBeam.ledgeDepthIn": 10, "edgeBeam.padWidthIn": 5, "edgeBeam.padLengthIn": 5};
const beamOf = (changes: Record<string, unknown> = {}, design: Design = LIBRARY) => edgeBeamOf(design, changes);
type Beam = ReturnType<typeof beamOf>;
const checkOf = (beam: Beam, id: string) => beam.checks.find((check) => check.id === id);
const verdict = (changes: Record<string, unknown>, id: string) => checkOf(beamOf({...PLAIN, ...changes}), id)?.verdict;

describe("edgeBeam", () => {
  const plain = () => beamOf(PLAIN);

  test("is as deep as ledge, deck and upstand together", () => {
    // A 34 in deck on an 8 in ledge with a 30 in upstand makes 72 in.
    expect(beamOf({"edgeBeam.ledgeDepthIn": 8, "edgeBeam.upstandIn": 30})).toMatchObject({deckDepthIn: 34, depthIn: 72, belowDeckIn: 8});
    expect(plain().depthIn).toBe(74);
  });

  test("weighs web and ledge", () => {
    // 14 * 74 + 8 * 10 = 1,116 in2; times 150 / 144 = 1,162.5 plf.
    expect(plain().section.areaIn2).toBe(1116);
    expect(plain().loads.selfPlf).toBeCloseTo(1162.5, 9);
    expect(plain().handling.weightKip).toBeCloseTo(34.875, 9);
  });

  test("carries half the span of the deck, its own weight and the cladding", () => {
    // 10DT32 with 2 in: flange 240 + stems 2 * 30 * 6.25 = 615 in2 = 640.6 plf; topping 250: 89.06 psf. Layers 10 psf.
    // Dead (89.0625 + 10) * 20 = 1,981.25; live 150 * 20 = 3,000; all dead 1,981.25 + 1,162.5 + 150 = 3,293.75;
    // factored 1.2 * 3,293.75 + 1.6 * 3,000 = 8,752.5, of which the deck brings 1.2 * 1,981.25 + 4,800 = 7,177.5.
    expect(plain().loads).toMatchObject({
      tributaryWidthFt: 20, livePlf: 3000, deckDeadPlf: expect.closeTo(1981.25, 6), deadPlf: expect.closeTo(3293.75, 6),
      factoredPlf: expect.closeTo(8752.5, 6), factoredLedgePlf: expect.closeTo(7177.5, 6), factoredOwnPlf: expect.closeTo(1575, 6),
    });
    // Six stems of 7.1775 * 5 = 35.8875 kip, 5 ft apart from 2.5 ft on. At midspan, between two of them:
    // 107.6625 * 15 - 35.8875 (12.5 + 7.5 + 2.5) = 807.47; own 1.575 * 900 / 8 = 177.19; together 984.66 kip-ft.
    expect(plain().demand).toMatchObject({stemmed: true, stemKip: expect.closeTo(35.8875, 6), spacingIn: 60, endDistanceIn: expect.closeTo(20, 9)});
    expect(plain().momentKipIn).toBeCloseTo(11815.875, 3);
    expect(plain().demand.bending.stems.momentRatio).toBeCloseTo(1, 9);
  });

  test("takes the fewest bars that carry the moment and the least steel", () => {
    // The ledge is a flange in tension, 22 in wide with the web: max(3 sqrt(5,000) = 212.1, 200) / 60,000 * 22 * d = 5.52 in2. The
    // moment needs 3.152 in2, a third more is 4.203: five bars of 1.00 in2, four in the lowest row (2.564 in up) and one at 4.692 in,
    // so d = 74 - 2.9896 = 71.0104. Four bars would carry it: T = 240, 0.9 * 240 (71.436 - 2.017) = 14,995, above 11,815.9.
    // Strength of 5: T = 300, a = 300 / (4.25 * 14) = 5.042, 0.9 * 300 (71.0104 - 2.521) = 18,492.1 kip-in.
    expect(plain().bars).toMatchObject({count: 5, rows: [4, 1]});
    expect(plain().effectiveDepthIn).toBeCloseTo(71.0104, 9);
    expect(plain().leastSteel).toMatchObject({widthIn: 22, crackingIn2: expect.closeTo(5.5233, 4), neededIn2: expect.closeTo(3.15196, 5), areaIn2: expect.closeTo(4.20261, 5)});
    expect(checkOf(plain(), "beam least steel")).toMatchObject({verdict: "ok", clause: "ACI 318-19 9.6.1.3"});
    expect(plain().strength.designMomentKipIn).toBeCloseTo(18492.1, 0);
    expect(checkOf(plain(), "beam bottom steel")?.clause).toBe("ACI 318-19 9.5.4.3");
    expect(plain().barsSuffice).toBe(true);
  });

  test("finds shear at the support, because the load hangs on the ledge", () => {
    // 8.7525 x 15 = 131.29 kip; 0.75 * 2 sqrt(5,000) * 14 * 71.0104 = 105.45 kip.
    expect(plain().shearKip).toBeCloseTo(131.2875, 3);
    expect(plain().demand.reactionKip).toBeCloseTo(131.2875, 3);
    expect(plain().concreteShearKip).toBeCloseTo(105.445, 2);
    expect(plain().greatestShearKip).toBeCloseTo(5 * 105.445, 1);
  });

  test("twists by what stands on the ledge, and a little by the ledge itself", () => {
    // Seat 8 - 1 = 7 in; the load at the ledge's outer quarter: 14/2 + 6 = 13 in: 7.1775 * 15 * 13 = 1,399.61 kip-in.
    // The ledge's 80 in2 lie 11 in off: 80 * 11 / 1,116 = 0.78853 in of 1,162.5 plf, so 0.69843 of 1,312.5; 1.575 * 15 * 0.69843 = 16.50.
    expect(plain().seat).toMatchObject({nominalIn: 7, afterToleranceIn: 5.125, neededIn: 3});
    expect(plain().eccentricityIn).toBe(13);
    expect(plain().selfEccentricityIn).toBeCloseTo(0.78853, 5);
    expect(plain().torsionKipIn).toBeCloseTo(1399.613 + 16.5, 1);
    // Threshold: of ledge and web 1,116^2 / 192 = 6,486.75 in3; 0.75 sqrt(5,000) of it = 344.0 kip-in.
    expect(plain().torsionThresholdKipIn).toBeCloseTo((0.75 * 70.7107 * 1116 ** 2) / 192 / 1000, 1);
    expect(plain().demand.reactionOffsetIn).toBeCloseTo(plain().torsionKipIn / 131.2875, 6);
    // Two connections 74 - 12 = 62 in apart hold it upright.
    expect(plain().twist?.rotation.topKip).toBeCloseTo(plain().torsionKipIn / 62, 6);
  });

  test("has closed stirrups for shear, twist and the ledge at once", () => {
    // Aoh = 10.5 * 70.5 = 740.25 in2; At/s = 1,416.1 / (0.75 * 2 * 0.85 * 740.25 * 60) = 0.025007;
    // Av/s = (131.2875 / 0.75 - 140.59) / (60 * 71.0104) = 0.0080872; a leg 0.029050.
    const {twist, stirrups} = plain();
    expect(twist?.design.torsionLegIn2PerIn).toBeCloseTo(0.025007, 5);
    expect(stirrups?.outerIn2PerIn).toBeCloseTo(0.02905, 5);
    // The hanger on the ledge's side asks for more, so that it sets the spacing: the spacing is that of its legs, in half inches.
    expect(stirrups?.innerIn2PerIn).toBeGreaterThan(stirrups?.outerIn2PerIn ?? 0);
    expect(stirrups?.spacingIn).toBe(Math.floor((0.2 / (stirrups?.innerIn2PerIn ?? 1)) * 2) / 2);
    expect(verdict({}, "beam stirrups")).toBe("ok");
    expect(LEAST_STIRRUP_SPACING_IN).toBe(3);
    expect(verdict({"bay.spanFt": 80, "edgeBeam.webWidthIn": 10, "edgeBeam.upstandIn": 0}, "beam stirrups")).toBe("fails");
  });

  test("needs a seat of the span over 180, 3 in at least under stems and 2 in under slabs", () => {
    expect(beamOf({"bay.spanFt": 60}).seat.neededIn).toBe(4);
    expect(beamOf({"bay.spanFt": 30}).seat.neededIn).toBe(3);
    expect(edgeBeamOf(seed("classroom-wing")).seat.neededIn).toBe(2);
  });

  test("warns of a ledge less than 8 in out or deep, and of an upstand above 36 in", () => {
    const good = beamOf({"edgeBeam.ledgeDepthIn": 8, "edgeBeam.upstandIn": 36});
    for (const id of ["ledge projection", "ledge depth", "upstand"]) expect(checkOf(good, id)?.verdict, id).toBe("ok");
    expect(checkOf(beamOf({"edgeBeam.ledgeProjectionIn": 7.5}), "ledge projection")?.verdict).toBe("fails");
    expect(checkOf(beamOf({"edgeBeam.ledgeDepthIn": 7.5}), "ledge depth")?.verdict).toBe("fails");
    expect(checkOf(beamOf({"edgeBeam.upstandIn": 37}), "upstand")?.verdict).toBe("fails");
  });

  test("says that a short piece could lose its seat", () => {
    expect(checkOf(beamOf({"edgeBeam.ledgeProjectionIn": 4, "edgeBeam.jointGapIn": 3}), "seat tolerance")).toMatchObject({verdict: "fails", utilization: 99});
  });

  test("says that no practical number of bars suffices for too long a beam", () => {
    const long = beamOf({"bay.beamSpanFt": 80, "edgeBeam.upstandIn": 0, "edgeBeam.barSize": "#5"});
    expect(long.barsSuffice).toBe(false);
    expect(checkOf(long, "beam strength")?.verdict).toBe("fails");
  });

  test("refuses a beam lower than any that is cast", () => {
    const low = {"deck.member": "4FS4", "deck.pattern": "46-S", "deck.toppingIn": 0, "edgeBeam.ledgeDepthIn": 4, "edgeBeam.upstandIn": 0};
    refused(() => evaluate(withValues(LIBRARY, low), catalog), {path: "edgeBeam.ledgeDepthIn", allowed: "more: it makes the depth 8 in, where 10 to 144 in are possible"});
  });

  test("refuses a bar that is not in the table", () => {
    const design: Design = {...LIBRARY, edgeBeam: {...LIBRARY.edgeBeam, barSize: "#12" as string as Design["edgeBeam"]["barSize"]}};
    refused(() => edgeBeamOf(design), {path: "edgeBeam.barSize", value: "#12"});
  });
});

describe("stems on the edge beam", () => {
  test("tend to an even load as they grow many", () => {
    // Tees of 4 ft with stems 20 in apart: gaps of 20 and 28 in. A load spread over a gap moves the moment by the gap's
    // share of the span, squared, at most.
    const narrow = {"deck.member": "8DT24", "deck.pattern": "68-S", "deck.dimensions": {widthIn: 48, stemSpacingIn: 20}, "edgeBeam.upstandIn": 36};
    for (const beamSpanFt of [10, 22, 38, 78]) {
      const {momentRatio, reactionRatio} = beamOf({...narrow, "bay.beamSpanFt": beamSpanFt}).demand.bending.stems;
      expect(Math.abs(momentRatio - 1), String(beamSpanFt)).toBeLessThan((28 / 12 / beamSpanFt) ** 2);
      expect(Math.abs(reactionRatio - 1), String(beamSpanFt)).toBeLessThan(28 / 12 / beamSpanFt);
    }
  });

  test("fall otherwise on each bay whose span is no multiple of the tee's width, and the worst bay counts", () => {
    // 24 ft bays of 10 ft tees: the second begins 4 ft into a tee, so its stems stand 3.5, 8.5, 13.5, 18.5 and 23.5 ft from its support.
    const {demand} = beamOf({"bay.beamSpanFt": 24, "bay.baysAlong": 2});
    expect(demand.end.bay).toBe(2);
    expect(demand.end.stems.beam.points.map(({atFt}) => Number(atFt.toFixed(6)))).toEqual([3.5, 8.5, 13.5, 18.5, 23.5]);
    // The last of them stands 6 in from the column line, and so 4 in beyond a beam that ends 10 in short of it.
    expect(demand.endDistanceIn).toBeCloseTo(-4, 6);
    // 67.5 / 24 of a stem's load at the far end.
    expect(demand.end.stems.torsionRatio).toBeGreaterThan(1.1);
    // One bay alone has its stems from 2.5 ft on.
    expect(beamOf({"bay.beamSpanFt": 24, "bay.baysAlong": 1}).demand.end.bay).toBe(1);
  });

  test("over a column line are no less of a load than a hundredth of a foot beside it", () => {
    // 12 ft tees have stems 3, 9, 15 ... ft from the corner: on 57 ft bays the tenth stands over the first column line.
    const twelves = {"deck.member": "12DT28", "deck.pattern": "108-S", "bay.baysAlong": 3};
    for (const beamSpanFt of [15, 21, 33, 45, 57]) {
      const at = (spanFt: number) => beamOf({...twelves, "bay.beamSpanFt": spanFt});
      const [over, beside] = [at(beamSpanFt), at(beamSpanFt + 0.01)];
      for (const key of ["shearKip", "torsionKipIn"] as const) expect(Math.abs(beside[key] / over[key] - 1), `${key} at ${beamSpanFt} ft`).toBeLessThan(0.005);
      expect(over.shearKip).toBe(over.demand.reactionKip);
    }
  });

  test("count on every bay: no bay of the row asks more of the beam than what is reported", () => {
    for (const [beamSpanFt, member, pattern] of [[24, "10DT24", "88-S"], [32, "15DT34", "208-S"], [27, "12DT28", "108-S"], [38, "8DT24", "68-S"]] as const) {
      const {demand} = beamOf({"bay.beamSpanFt": beamSpanFt, "bay.baysAlong": 6, "deck.member": member, "deck.pattern": pattern, "deck.toppingIn": 0});
      expect(demand.bays.length).toBeGreaterThan(1);
      for (const {stems} of demand.bays) {
        expect(stems.diagrams.greatestMomentKipFt * 12).toBeLessThanOrEqual(demand.momentKipIn + 1e-6);
        expect(Math.max(stems.diagrams.leftKip, stems.diagrams.rightKip)).toBeLessThanOrEqual(demand.reactionKip + 1e-6);
        expect(Math.max(stems.diagrams.leftTorsionKipIn, stems.diagrams.rightTorsionKipIn)).toBeLessThanOrEqual(demand.torsionKipIn + 1e-6);
        for (const {atFt} of stems.beam.points) {
          expect(12 * Math.min(atFt, beamSpanFt - atFt) - 10).toBeGreaterThanOrEqual((demand.endDistanceIn ?? 0) - 1e-6);
        }
      }
    }
  });

  test("are none of planks, which load the beam evenly", () => {
    const {demand, ledge, momentKipIn, loads, spanFt} = edgeBeamOf(seed("classroom-wing"));
    expect(demand).toMatchObject({stemmed: false, endDistanceIn: undefined, spacingIn: 12});
    expect(momentKipIn).toBeCloseTo((loads.factoredPlf * spanFt ** 2 * 12) / 8000, 6);
    expect(ledge?.punching).toEqual([]);
    expect(ledge?.linePlf).toBeGreaterThan(0);
  });

  test("punch where the ledge is too shallow, by the safer view, inside and at the end", () => {
    expect(verdict({"edgeBeam.ledgeDepthIn": 10}, "ledge punching interior")).toBe("fails");
    expect(verdict({"edgeBeam.ledgeDepthIn": 12}, "ledge punching interior")).toBe("fails");
    expect(verdict({"edgeBeam.ledgeDepthIn": 13}, "ledge punching interior")).toBe("ok");
    // On 24 ft bays one of the store's stems stands at the very end of its beam.
    const store = (changes: Record<string, unknown>) => checkOf(beamOf({"edgeBeam.ledgeDepthIn": 16, ...changes}, seed("records-store")), "ledge punching end")?.verdict;
    expect([store({"bay.beamSpanFt": 24}), store({})]).toEqual(["fails", "ok"]);
    for (const place of beamOf(PLAIN).ledge?.punching ?? []) {
      expect(place.punching.designKip).toBe(Math.min(...place.punching.views.map(({designKip}) => designKip)));
    }
  });
});

describe("each part of the edge beam on both sides of its limit", () => {
  const cases: readonly (readonly [string, Record<string, unknown>, Record<string, unknown>])[] = [
    ["pad width", {"edgeBeam.padWidthIn": 5}, {"edgeBeam.padWidthIn": 4.5}],
    ["pad stress", {"edgeBeam.padLengthIn": 5}, {"edgeBeam.padLengthIn": 4}],
    ["pad place", {"edgeBeam.padLengthIn": 6.5}, {"edgeBeam.padLengthIn": 7}],
    ["ledge bearing", {"edgeBeam.padLengthIn": 4}, {"edgeBeam.padLengthIn": 2, "edgeBeam.padWidthIn": 2}],
    ["ledge layers", {"edgeBeam.ledgeDepthIn": 4, "edgeBeam.coverIn": 1.5}, {"edgeBeam.ledgeDepthIn": 4, "edgeBeam.coverIn": 1.75}],
    ["beam cage", {"edgeBeam.webWidthIn": 8, "edgeBeam.coverIn": 2.25}, {"edgeBeam.webWidthIn": 8, "edgeBeam.coverIn": 2.5}],
    ["beam shear and torsion", {"bay.spanFt": 40}, {"bay.spanFt": 120, "edgeBeam.webWidthIn": 16, "edgeBeam.upstandIn": 20}],
    ["beam cracks", {"edgeBeam.coverIn": 1.5}, {"edgeBeam.coverIn": 4, "edgeBeam.webWidthIn": 16, "edgeBeam.barSize": "#11", "bay.beamSpanFt": 44}],
    ["beam ductility", {}, {"edgeBeam.upstandIn": 0, "edgeBeam.webWidthIn": 8, "bay.beamSpanFt": 50, "edgeBeam.barSize": "#11"}],
    ["beam sag", {"edgeBeam.upstandIn": 30}, {"edgeBeam.upstandIn": 0, "bay.beamSpanFt": 60}],
    ["beam stripping tension", {}, {"edgeBeam.upstandIn": 0, "bay.beamSpanFt": 60}],
  ];
  for (const [id, holding, failing] of cases) {
    test(id, () => {
      expect(["ok", "near"], `${id} holds`).toContain(verdict(holding, id));
      expect(verdict(failing, id), `${id} fails`).toBe("fails");
    });
  }

  test("a beam that outweighs a truck needs a permit", () => {
    // 1.1625 kip/ft: 45.3 kip at 39 ft, 48.8 at 42.
    expect(checkOf(beamOf({...PLAIN, "bay.beamSpanFt": 39}), "beam weight")?.verdict).toBe("ok");
    expect(checkOf(beamOf({...PLAIN, "bay.beamSpanFt": 42}), "beam weight")).toMatchObject({verdict: "near", word: "needs a permit"});
  });

  test("a web too thin for closed stirrups may be a slender beam", () => {
    const thin = beamOf({...PLAIN, "edgeBeam.webWidthIn": 11, "edgeBeam.coverIn": 2});
    expect(thin.twist?.design.checks[0]?.verdict).toBe("fails");
    expect(thin.twist?.slender.applies).toBe(true);
    expect(checkOf(thin, "beam shear and torsion")).toMatchObject({verdict: "near", word: "as a slender beam"});
    // Too stocky at 24 in (74 / 24 = 3.1 times as deep as wide); too thin for its twist at 10 in.
    const stops = (webWidthIn: number) => beamOf({...PLAIN, "edgeBeam.webWidthIn": webWidthIn, "edgeBeam.coverIn": 2}).twist?.slender.limits.filter((limit) => limit.verdict === "fails").map((limit) => limit.id);
    expect([stops(24), stops(11), stops(10)]).toEqual([["slender aspect"], [], ["slender twist"]]);
    expect(checkOf(beamOf({...PLAIN, "edgeBeam.webWidthIn": 10, "edgeBeam.coverIn": 2}), "beam shear and torsion")?.verdict).toBe("fails");
  });
});

describe("other kinds of edge beam", () => {
  test("pockets bring the load nearer to the web's middle and leave the rest out of range", () => {
    const beam = beamOf({...PLAIN, "edgeBeam.kind": "pockets"});
    // Three quarters of the pocket's 8 in from its back: 7 - 2 = 5 in; 14 - 8 = 6 in of web are left.
    expect(beam).toMatchObject({eccentricityIn: 5, netWebIn: 6, selfEccentricityIn: 0, depthIn: 74, ledge: undefined});
    expect(beam.torsionKipIn).toBeCloseTo(7.1775 * 15 * 5, 1);
    expect(beam.checks.filter((check) => check.verdict === "out of range").map((check) => check.id)).toEqual(["pocket foot", "pocket twist"]);
    // Two legs with 1.5 in of cover and 1 in between them need 5 in.
    expect(checkOf(beam, "pocket web")?.verdict).toBe("ok");
    expect(verdict({"edgeBeam.kind": "pockets", "edgeBeam.webWidthIn": 12}, "pocket web")).toBe("fails");
    expect(checkOf(beamOf({"edgeBeam.kind": "pockets"}, seed("classroom-wing")), "pocket stems")?.verdict).toBe("fails");
    expect(checkOf(beam, "pocket stems")?.verdict).toBe("ok");
  });

  test("a beam below the deck is as deep as its strength and sag ask, and is not twisted", () => {
    const beam = beamOf({...PLAIN, "edgeBeam.kind": "below"});
    expect(beam).toMatchObject({eccentricityIn: 0, torsionKipIn: 0, belowDeckIn: beam.depthIn});
    expect(beam.checks.filter((check) => check.verdict === "fails")).toEqual([]);
    expect(beam.twist?.design.negligible).toBe(true);
    // The whole beam hangs below the deck, and the story knows.
    expect(evaluate(withValues(LIBRARY, {"edgeBeam.kind": "below"}), catalog).story.ledgeDepthIn).toBe(beam.depthIn);
    // A longer one is deeper.
    expect(beamOf({...PLAIN, "edgeBeam.kind": "below", "bay.beamSpanFt": 40}).depthIn).toBeGreaterThan(beam.depthIn);
  });

  test("a beam below the deck is the shallowest that holds, though one somewhat deeper, with a bar less, sags too far", () => {
    const store = {"edgeBeam.kind": "below", "bay.beamSpanFt": 24, "bay.spanFt": 20, "edgeBeam.webWidthIn": 14};
    // At 30 in four bars bend; at 32 in three suffice for strength, and let the cracked beam sag 1.22 in of 1.2.
    const beam = beamOf(store, seed("records-store"));
    expect(beam).toMatchObject({depthIn: 30, bars: {count: 4}});
    expect(checkOf(beam, "beam sag")?.verdict).toMatch(/ok|near/);
  });

  test("strands carry the bending, with the fewest bars that they need besides", () => {
    const strands = {"edgeBeam.steel": "strands"};
    const few = beamOf({...PLAIN, ...strands, "edgeBeam.strands": 4});
    const many = beamOf({...PLAIN, ...strands, "edgeBeam.strands": 14});
    expect(few.bars.count).toBeGreaterThan(many.bars.count);
    for (const beam of [few, many]) {
      expect(beam.strength.designMomentKipIn).toBeGreaterThanOrEqual(Math.max(beam.momentKipIn, beam.strands?.leastKipIn ?? Infinity));
      expect(beam.service.steel).toBe("strands");
    }
    // A web 8 in wide has 3 places in a row and one more in the ledge; the centroid, (592 * 37 + 80 * 5) / 672 = 33.2 in up,
    // stands over the rows from 2 to 32 in: 16 * 3 + 1 = 49.
    const narrow = (count: number) => verdict({...strands, "edgeBeam.webWidthIn": 8, "edgeBeam.strands": count}, "beam strands");
    expect([narrow(49), narrow(50)]).toEqual(["ok", "fails"]);
    const covered = (coverIn: number) => verdict({...strands, "edgeBeam.coverIn": coverIn}, "beam strand cover");
    expect([covered(1.25), covered(1.5)]).toEqual(["ok", "fails"]);
    // Cracked in service: out of range, not passed.
    expect(verdict({...strands, "edgeBeam.strands": 2, "edgeBeam.upstandIn": 0}, "beam tension")).toBe("out of range");
    expect(verdict({...strands, "edgeBeam.strands": 14}, "beam tension")).toBe("ok");
  });
});

describe("effectiveInertiaIn4", () => {
  test("is the whole section's up to two thirds of the cracking moment, then falls toward the cracked one's", () => {
    expect(effectiveInertiaIn4(200, 300, 1000, 400)).toBe(1000);
    expect(effectiveInertiaIn4(100, 300, 1000, 400)).toBe(1000);
    // Ma = Mcr: 400 / (1 - 4/9 * 0.6) = 545.45.
    expect(effectiveInertiaIn4(300, 300, 1000, 400)).toBeCloseTo(545.4545, 3);
    expect(effectiveInertiaIn4(30000, 300, 1000, 400)).toBeCloseTo(400, 1);
  });
});

describe("the starter designs", () => {
  for (const {id, design} of seeds) {
    test(`${id} has an edge beam that fails nowhere`, () => {
      expect(edgeBeamOf(design).checks.filter((check) => check.verdict === "fails" || check.verdict === "out of range")).toEqual([]);
    });
  }
});

describe("the ledge's own steel", () => {
  test("is checked where a stem has the least length of ledge to share: at the beam's end, not inside", () => {
    const beam = beamOf({"bay.beamSpanFt": 20, "deck.member": "8DT32", "deck.pattern": "108-S", "column.sideIn": 24});
    const most = (place: string) => beam.ledge?.places.find((one) => one.place === place)?.steel.greatestShearKip ?? NaN;
    expect(most("end")).toBeLessThan(most("interior") - 1);
    expect(checkOf(beam, "ledge shear")?.capacity).toBe(most("end"));
  });
});

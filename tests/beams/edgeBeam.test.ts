import {describe, expect, test} from "vitest";
import type {Design} from "../../lib/design/design.js";
import {withValues} from "../../lib/design/edit.js";
import {evaluate} from "../../lib/evaluate.js";
import {catalogue, seed} from "../support/designs.js";
import {refused} from "../support/errors.js";

const LIBRARY = seed("branch-library");
const beamOf = (changes: Record<string, unknown> = {}, design: Design = LIBRARY) => evaluate(withValues(design, changes), catalogue).edgeBeam;
const checkOf = (beam: ReturnType<typeof beamOf>, id: string) => beam.checks.find((check) => check.id === id);

describe("edgeBeam", () => {
  const beam = beamOf();

  test("is as deep as ledge, deck and upstand together", () => {
    // A 34 in deck on an 8 in ledge with a 30 in upstand makes 72 in.
    expect(beamOf({"edgeBeam.ledgeDepthIn": 8, "edgeBeam.upstandIn": 30})).toMatchObject({deckDepthIn: 34, depthIn: 72});
    // The library's own ledge is 10 in.
    expect(beam.depthIn).toBe(74);
  });

  test("weighs web and ledge", () => {
    // 14 * 74 + 8 * 10 = 1,116 in2; times 150 / 144 = 1,162.5 plf.
    expect(beam.section.areaIn2).toBe(1116);
    expect(beam.loads.selfPlf).toBeCloseTo(1162.5, 9);
  });

  test("carries half the span of the deck, its own weight and the cladding", () => {
    // 10DT32 with 2 in: flange 240 + stems 2 * 30 * 6.25 = 615 in2 = 640.6 plf; topping 250: 89.06 psf. Layers 10 psf.
    // Dead (89.0625 + 10) * 20 = 1,981.25; live 150 * 20 = 3,000; all dead 1,981.25 + 1,162.5 + 150 = 3,293.75;
    // factored 1.2 * 3,293.75 + 1.6 * 3,000 = 8,752.5.
    expect(beam.loads).toMatchObject({
      tributaryWidthFt: 20, livePlf: 3000, deckDeadPlf: expect.closeTo(1981.25, 6), deadPlf: expect.closeTo(3293.75, 6), factoredPlf: expect.closeTo(8752.5, 6),
    });
    // 8,752.5 * 900 / 8 = 984,656 lb-ft = 11,815.9 kip-in.
    expect(beam.momentKipIn).toBeCloseTo(11815.875, 3);
  });

  test("takes the fewest bars that carry the moment and the least steel", () => {
    // Least steel: max(3 sqrt(5,000) = 212.1, 200) / 60,000 * 14 * d; d = 74 - (1.5 + 0.5 + 0.564) = 71.436: 3.536 in2: 4 bars of 1.00 in2.
    // Strength of 4: T = 240, a = 240 / (4.25 * 14) = 4.0336, 0.9 * 240 (71.436 - 2.0168) = 14,994.6 kip-in, above 11,815.9.
    expect(beam.bars).toMatchObject({count: 4, rows: [4]});
    expect(beam.effectiveDepthIn).toBeCloseTo(71.436, 9);
    expect(beam.leastSteelIn2).toBeCloseTo((212.132 / 60000) * 14 * 71.436, 4);
    expect(beam.strength.designMomentKipIn).toBeCloseTo(14994.6, 0);
    expect(beam.barsSuffice).toBe(true);
  });

  test("finds shear at the support, because the load hangs on the ledge", () => {
    // 8.7525 x 15 = 131.29 kip; 0.75 * 2 sqrt(5,000) * 14 * 71.436 = 106.08 kip.
    expect(beam.shearKip).toBeCloseTo(131.2875, 3);
    expect(beam.concreteShearKip).toBeCloseTo(106.077, 2);
    expect(beam.greatestShearKip).toBeCloseTo(5 * 106.077, 1);
  });

  test("twists by what stands on the ledge, at its middle", () => {
    // Seat 8 - 1 = 7 in; arm 14/2 + 1 + 3.5 = 11.5 in; ledge load 1.2 * 1,981.25 + 1.6 * 3,000 = 7,177.5 plf:
    // 7.1775 x 15 x 11.5 = 1,238.1 kip-in.
    expect(beam.seat).toEqual({nominalIn: 7, afterToleranceIn: 6, neededIn: 3});
    expect(beam.eccentricityIn).toBe(11.5);
    expect(beam.torsionKipIn).toBeCloseTo(1238.1, 0);
    // Threshold 0.75 sqrt(5,000) 1,116^2 / (2 (74 + 22)) = 344.0 kip-in.
    expect(beam.torsionThresholdKipIn).toBeCloseTo((0.75 * 70.7107 * 1116 ** 2) / 192 / 1000, 1);
    expect(checkOf(beam, "beam torsion")?.verdict).toBe("out of range");
  });

  test("needs a seat of the span over 180, 3 in at least under stems and 2 in under slabs", () => {
    expect(beamOf({"bay.spanFt": 60}).seat.neededIn).toBe(4);
    expect(beamOf({"bay.spanFt": 30}).seat.neededIn).toBe(3);
    expect(evaluate(seed("classroom-wing"), catalogue).edgeBeam.seat.neededIn).toBe(2);
  });

  test("warns of a ledge less than 8 in out or deep, and of an upstand above 36 in", () => {
    const good = beamOf({"edgeBeam.ledgeDepthIn": 8, "edgeBeam.upstandIn": 36});
    for (const id of ["ledge projection", "ledge depth", "upstand"]) expect(checkOf(good, id)?.verdict, id).toBe("ok");
    expect(checkOf(beamOf({"edgeBeam.ledgeProjectionIn": 7.5}), "ledge projection")?.verdict).toBe("fails");
    expect(checkOf(beamOf({"edgeBeam.ledgeDepthIn": 7.5}), "ledge depth")?.verdict).toBe("fails");
    expect(checkOf(beamOf({"edgeBeam.upstandIn": 37}), "upstand")?.verdict).toBe("fails");
  });

  test("says that a short piece could lose its seat", () => {
    expect(checkOf(beamOf({"edgeBeam.ledgeProjectionIn": 4, "edgeBeam.jointGapIn": 3}), "seat")).toMatchObject({verdict: "fails", utilisation: 99});
  });

  test("says that no practical number of bars suffices for too long a beam", () => {
    const long = beamOf({"bay.beamSpanFt": 80, "edgeBeam.upstandIn": 0, "edgeBeam.barSize": "#5"});
    expect(long.barsSuffice).toBe(false);
    expect(checkOf(long, "beam strength")?.verdict).toBe("fails");
  });

  test("refuses a beam lower than any that is cast", () => {
    const low = {"deck.member": "4FS4", "deck.pattern": "46-S", "deck.toppingIn": 0, "edgeBeam.ledgeDepthIn": 4, "edgeBeam.upstandIn": 0};
    refused(() => beamOf(low), {allowed: "10 to 144 in"});
  });

  test("refuses a bar that is not in the table", () => {
    const design: Design = {...LIBRARY, edgeBeam: {...LIBRARY.edgeBeam, barSize: "#12"}};
    refused(() => evaluate(design, catalogue), {path: "edgeBeam.barSize", value: "#12"});
  });
});

import {describe, expect, test} from "vitest";
import {withValues} from "../../lib/design/edit.js";
import {libraryByHand} from "../support/designs.js";
import {edgeBeamOf, girderOf} from "../support/madeBeams.js";

/*
 * An edge beam and a girder worked by hand from the plan on, on two bays of 26 ft, which 10 ft tees do not fit.
 *
 * Floor. Tees 10DT32 with 2 in of topping, spans of 40 ft. A tee: flange 120 x 2 = 240 in2, stems 2 x 30 x (4.75 + 7.75)/2 =
 * 375, together 615 in2, at 150 pcf 640.6 plf; topping 120 x 2 = 240 in2, 250 plf; on 10 ft of width 64.06 + 25 = 89.06 psf.
 * Layers 10 psf. Dead 99.06 psf. Book stacks 150 psf, not reduced (above 100 psf, one floor).
 *
 * Stems, ft from the corner: 2.5, 7.5 ... 47.5. Bay 1 (0 to 26): 2.5, 7.5, 12.5, 17.5, 22.5, together 62.5. Bay 2 (26 to 52) from
 * its own line: 1.5, 6.5, 11.5, 16.5, 21.5, together 57.5; the next tee's stem, 26.5, is beyond the building.
 * Reactions in stems: bay 1 left 5 - 62.5/26 = 2.5962, right 2.4038; bay 2 left 5 - 57.5/26 = 2.7885, right 2.2115.
 */
const DESIGN = withValues(libraryByHand(), {
  "topping.followShare": 1, "bay.beamSpanFt": 26, "bay.baysAlong": 2, "column.sideIn": 18,
  "edgeBeam.ledgeDepthIn": 10, "edgeBeam.padWidthIn": 5, "edgeBeam.padLengthIn": 5,
});

describe("by hand, from plan to demand", () => {
  test("the edge beam", () => {
    const {loads, demand, momentKipIn, shearKip, torsionKipIn} = edgeBeamOf(DESIGN);
    // L-beam 14 x 74 in with a ledge 8 x 10 in: 1,116 in2, 1,162.5 plf; cladding 150: 1,312.5 plf, factored 1,575.
    expect(loads.factoredOwnPlf).toBeCloseTo(1575, 1);
    // A stem: 20 x 5 = 100 ft2. Factored 1.2 x 99.06 + 1.6 x 150 = 358.9 psf: 35.89 kip. Service 249.06 psf: 24.91 kip.
    expect(demand.stemKip).toBeCloseTo(35.89, 2);
    expect(demand.stemServiceKip).toBeCloseTo(24.91, 2);
    // Bay 1, left: 2.5962 x 35.8875 = 93.17, own 1.575 x 13 = 20.475: 113.64 kip. Shear at the stem 12.5 ft off passes from
    // 113.64 - 1.575 x 12.5 - 2 x 35.89 = 22.2 to -13.7: there M = 113.644 x 12.5 - 1.575 x 12.5^2/2 - 35.8875 (10 + 5) = 759.2 kip-ft.
    // Bay 2, left: 100.07 + 20.475 = 120.55 kip; most 11.5 ft off: 120.546 x 11.5 - 1.575 x 11.5^2/2 - 35.8875 x 15 = 743.8 kip-ft.
    expect(demand.bending.bay).toBe(1);
    expect(momentKipIn / 12).toBeCloseTo(759.2, 1);
    expect(demand.bays[1]?.stems.diagrams.greatestMomentKipFt).toBeCloseTo(743.8, 1);
    expect(demand.end.bay).toBe(2);
    expect(shearKip).toBeCloseTo(120.55, 2);
    expect(demand.reactionKip).toBeCloseTo(120.55, 2);
    // Twist of bay 2's left end. Load at three quarters of the ledge: 14/2 + 6 = 13 in: 100.07 x 13 = 1,300.9 kip-in. The ledge's
    // 80 in2 stand 11 in off: 80 x 11 x 150/144 = 916.7 plf-in; of it 1.2 x 916.7 x 13 = 14.3 kip-in. Together 1,315.2.
    expect(torsionKipIn).toBeCloseTo(1315.2, 1);
    // Resting without connections it would have to stand 1,315.2/120.55 = 10.91 in off the web's middle.
    expect(demand.reactionOffsetIn).toBeCloseTo(10.91, 2);
    // Nearest to a line: 1.5 ft in bay 2. The beam ends 9 + 1 = 10 in off the line: 8 in are left.
    expect(demand.endDistanceIn).toBeCloseTo(8, 2);
    // Service on the beam that bends most. A stem 24.906 kip, own 1.3125 klf: R = 2.5962 x 24.906 + 17.0625 = 81.72;
    // M = 81.723 x 12.5 - 1.3125 x 78.125 - 24.906 x 15 = 545.4 kip-ft. Dead: a stem 9.906 kip, R = 42.78, M = 283.6 kip-ft.
    expect(demand.serviceKipIn / 12).toBeCloseTo(545.4, 1);
    expect(demand.deadKipIn / 12).toBeCloseTo(283.6, 1);
  });

  test("the girder", () => {
    const {loads, momentKipIn, reactionKip, twist, seat} = girderOf(DESIGN);
    // 16 x 46 in of web (12 + 34 in) and two ledges 8 x 12 in: 928 in2, 966.7 plf. Deck 99.06 x 40 = 3,962.5 plf; live 6,000 plf.
    expect([loads.selfPlf, loads.deckDeadPlf, loads.livePlf]).toEqual([966.7, 3962.5, 6000].map((plf) => expect.closeTo(plf, 1)));
    // A deck of 1 klf: each stem 5 kip. Bay 1: R 12.981, at 12.5 ft 12.981 x 12.5 - 5 x 15 = 87.26 kip-ft; even 26^2/8 = 84.5: 1.0326.
    // Bay 2: R 13.942 of 13: 1.0725.
    expect(loads.stems.momentFactor).toBeCloseTo(1.0326, 3);
    expect(loads.stems.reactionFactor).toBeCloseTo(1.0725, 4);
    // Mu: 1.2 (966.7 + 1.03266 x 3,962.5) + 1.6 x 1.03266 x 6,000 = 15,983.8 plf; x 26^2/8 = 1,350.6 kip-ft.
    expect(momentKipIn / 12).toBeCloseTo(1350.6, 1);
    // Ru: 1.2 (966.7 + 1.07249 x 3,962.5) + 1.6 x 1.07249 x 6,000 = 16,555.6 plf; x 13 = 215.2 kip.
    expect(reactionKip).toBeCloseTo(215.2, 1);
    // One bay's live load 150 x 20 = 3,000 plf, 8 + 6 = 14 in off: 1.6 x 3 x 13.942 x 14 = 936.9 kip-in.
    expect(twist.torsionKipIn).toBeCloseTo(936.9, 1);
    // Under one stem of one bay 35.89 kip, 8 in from the girder's end.
    expect(seat.factoredKip).toBeCloseTo(35.89, 2);
    expect(seat.ledge?.ledge.endDistanceIn).toBeCloseTo(8, 2);
  });
});

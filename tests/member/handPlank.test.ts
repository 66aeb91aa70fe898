import {describe, expect, test} from "vitest";
import {handbookCriteria} from "../../lib/deck/criteria.js";
import {deckState} from "../../lib/deck/deckResult.js";
import {prestressState} from "../../lib/member/prestressState.js";
import {shearAt} from "../../lib/member/shear.js";
import {memberWith} from "../support/members.js";

/** A 4HC8 (48 x 8 in, six round voids of 6 in) with seven 3/8 in strands 1.5 in up over 24 ft; 5,000 and 3,500 psi; 10 psf dead, 60 psf live. */
describe("a hollow-core plank worked by hand", () => {
  const state = () => {
    const member = memberWith("4HC8", "76-S");
    return {member, deck: deckState(member, 24, handbookCriteria(false), 60)};
  };

  test("has its section by a rectangle less circles", () => {
    // 384 - 6 x 28.274 = 214.35; 2,048 - 6 x 63.617 = 1,666.3; over 2 (48 + 8) of surface 1.914; webs 48 - 36 = 12.
    const {section, volumeToSurfaceIn, shape, selfWeightPlf} = state().member;
    expect(section.areaIn2).toBeCloseTo(214.35, 2);
    expect(section.inertiaIn4).toBeCloseTo(1666.3, 1);
    expect(volumeToSurfaceIn).toBeCloseTo(1.914, 3);
    expect(shape.webWidthIn).toBe(12);
    expect(selfWeightPlf).toBeCloseTo(223.29, 2);
  });

  test("loses 23.19 ksi by its causes", () => {
    // P = 0.595 x 202.5 = 120.49 kip; e = 2.5; Mo = 0.22329 x 864 = 192.9 kip-in, Msd = 34.6. fcir = 0.9 (0.5621 + 0.4519) - 0.2894 = 0.6232.
    // ES = 8.030 x 0.6232; CR = 13.437 (0.6232 - 0.0519); SH = 7.085 (1 - 0.06 x 1.914); RE = 5 - 0.04 (5.00 + 7.68 + 6.27).
    const {losses} = state().deck.midspan;
    expect(losses.elasticKsi).toBeCloseTo(5, 2);
    expect(losses.creepKsi).toBeCloseTo(7.68, 2);
    expect(losses.shrinkageKsi).toBeCloseTo(6.27, 2);
    expect(losses.relaxationKsi).toBeCloseTo(4.24, 2);
    expect(losses.effectiveStressKsi).toBeCloseTo(179.31, 2);
  });

  test("is stressed at transfer and in service as P/A, P e/S and M/S add up", () => {
    // 116.56 kip at first: 0.5438 +- (291.4 - 192.9)/416.57.
    const {transfer, totalStresses} = state().deck;
    expect(transfer.midspan.stresses.bottomKsi).toBeCloseTo(0.78, 3);
    expect(transfer.midspan.stresses.topKsi).toBeCloseTo(0.307, 3);
    // 106.69 kip after all losses, and 223.29 + 280 plf: 434.8 kip-in. 0.4977 -+ (434.8 - 266.7)/416.57.
    expect(totalStresses.bottomKsi).toBeCloseTo(0.094, 3);
    expect(totalStresses.topKsi).toBeCloseTo(0.901, 3);
  });

  test("is strong by strain compatibility, its block within the inch above the voids", () => {
    // By trial c = 0.9755 in: strain 0.00623 + 0.00014 + 0.003 (6.5 - c)/c = 0.0234; 267.56 ksi; 159.2 kip x (6.5 - 0.4 c) = 972.7 kip-in.
    const {strength} = state().deck;
    expect(strength.neutralAxisIn).toBeCloseTo(0.9755, 4);
    expect(strength.nominalMomentKipIn).toBeCloseTo(972.7, 1);
    expect(strength.phi).toBe(0.9);
  });

  test("carries in shear, 4.8 ft from its end, what bending cracks leave", () => {
    // fse 176.92 ksi there, 105.27 kip; d = 6.5; 0.6 R 12 x 6.5 = 3.31; Vd = 0.22329 x 7.2 = 1.61.
    // Mcre = 416.57 (0.424 + 0.491 + 0.632 - 0.296) = 521.0 kip-in, over 0.16 x 288/0.6 = 76.8 in: 6.78. Sum 11.70, above the floor 2 R 78 = 11.03.
    const {member} = state();
    const shear = shearAt(member, 24, prestressState(member, 24, 0.2, 40));
    expect(shear.flexureShearKip).toBeCloseTo(11.7, 2);
    expect(shear.webShearKip).toBeCloseTo(30.8, 2);
  });

  test("arches, and carries 119 psf", () => {
    // Force for camber 0.595 (196.43 - 5.00) = 113.9 kip: 0.494 in; own weight 0.279, dead load 0.0418.
    const {camber, safe} = state().deck;
    expect(camber.erectionIn).toBeCloseTo(1.8 * 0.494 - 1.85 * 0.2789, 3);
    expect(camber.longTermIn).toBeCloseTo(2.45 * 0.494 - 2.7 * 0.2789 - 3 * 0.0418, 3);
    // 0.9 x 972.7/(4 ft x 0.864) = 253.3 psf; (253.3 - 1.2 x 65.82)/1.6 + 10.
    expect(safe.limitsPsf.strength).toBeCloseTo(118.95, 2);
  });
});

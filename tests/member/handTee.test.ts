import {describe, expect, test} from "vitest";
import {handbookCriteria} from "../../lib/deck/criteria.js";
import {deckState} from "../../lib/deck/deckResult.js";
import {prestressState} from "../../lib/member/prestressState.js";
import {shearAt} from "../../lib/member/shear.js";
import {memberWith} from "../support/members.js";

/**
 * A 10DT24 with six half-inch strands (2, 4 and 6 in up) over 40 ft, worked by hand from its dimensions: flange 120 x 2 in,
 * two stems 22 in high, 3.75 in wide below and 5.75 in above; 5,000 and 3,500 psi, 150 pcf; 10 psf dead, 60 psf live.
 */
describe("a double tee worked by hand", () => {
  const state = () => {
    const member = memberWith("10DT24", "68-S");
    return {member, deck: deckState(member, 40, handbookCriteria(false), 60)};
  };

  test("has its section by rectangles and trapezoids", () => {
    // A = 240 + 2 x 22 x 4.75 = 449. Stems' centroid 22/3 (3.75 + 11.5)/9.5 = 11.772 up: yb = (209 x 11.772 + 240 x 23)/449 = 17.774.
    // I = stems 2 x 22^3/36 (3.75^2 + 4 x 3.75 x 5.75 + 5.75^2)/9.5 = 8,305 + 209 x 6.002^2, flange 80 + 240 x 5.226^2: 22,469. Surface 120 + 4 + 108.5 + 4 x 22.023 + 7.5 = 328.1.
    const {section, selfWeightPlf, volumeToSurfaceIn} = state().member;
    expect(section.areaIn2).toBeCloseTo(449, 6);
    expect(section.ybIn).toBeCloseTo(17.774, 3);
    expect(section.inertiaIn4 / 22469).toBeCloseTo(1, 5);
    expect(volumeToSurfaceIn).toBeCloseTo(449 / 328.09, 4);
    // 449/144 x 150.
    expect(selfWeightPlf).toBeCloseTo(467.71, 2);
  });

  test("loses 31.95 ksi by its causes", () => {
    // P = 0.918 x 202.5 = 185.9 kip; e = 13.774 in; Mo = 0.4677 x 40^2/8 x 12 = 1,122.5 kip-in, Msd = 240.
    // fcir = 0.9 (185.9/449 + 185.9 e^2/22,469) - 1,122.5 e/22,469 = 1.0971. ES = 28,800/3,586.6 x 1.0971.
    // CR = 2 x 28,800/4,286.8 x (1.0971 - 240 e/22,469 = 0.1471). SH = 8.2e-6 x 28,800 (1 - 0.06 x 1.3685) x 30.
    // RE = 5 - 0.04 (8.81 + 12.76 + 6.50).
    const {losses} = state().deck.midspan;
    expect(losses.elasticKsi).toBeCloseTo(8.81, 2);
    expect(losses.creepKsi).toBeCloseTo(12.76, 2);
    expect(losses.shrinkageKsi).toBeCloseTo(6.5, 2);
    expect(losses.relaxationKsi).toBeCloseTo(3.88, 2);
    expect(losses.effectiveStressKsi).toBeCloseTo(170.55, 2);
  });

  test("is stressed at transfer and in service as P/A, P e/S and M/S add up", () => {
    // At transfer 202.5 - 8.81 - 1.60 = 192.09 ksi, 176.3 kip: 0.3927 +- (176.3 x 13.774 - 1,122.5)/1,264.2 and /3,608.6.
    const {transfer, totalStresses} = state().deck;
    expect(transfer.midspan.stresses.bottomKsi).toBeCloseTo(1.426, 3);
    expect(transfer.midspan.stresses.topKsi).toBeCloseTo(0.031, 3);
    // In service 156.56 kip, and (46.77 + 70) psf x 10 ft: 2,802.5 kip-in.
    expect(totalStresses.bottomKsi).toBeCloseTo(-0.162, 3);
    expect(totalStresses.topKsi).toBeCloseTo(0.528, 3);
  });

  test("is strong by strain compatibility", () => {
    // By trial c = 0.607 in: push 0.85 x 5 x 120 x 0.8 x 0.607 = 247.5 kip. Strain 170.55/28,800 + 0.0004 + 0.003 (20 - c)/c = 0.102,
    // stress 270 - 0.04/(0.102 - 0.007) = 269.58 ksi; Mn = 247.5 (20 - 0.4 c) = 4,889 kip-in, phi 0.90.
    const {strength} = state().deck;
    expect(strength.neutralAxisIn).toBeCloseTo(0.607, 3);
    expect(strength.nominalMomentKipIn).toBeCloseTo(4889.4, 1);
    expect(strength.phi).toBe(0.9);
  });

  test("carries in shear, 8 ft from its end, what bending cracks leave", () => {
    // fse 164.76 ksi there, 151.25 kip; d = 20; R = sqrt(5,000) = 70.71. 0.6 R 9.5 x 20 = 8.06; Vd = 0.4677 x 12 = 5.61 kip.
    // Mcre = 1,264.2 (0.424 + 0.337 + 1.648 - 0.568) = 2,327 kip-in, over 0.16 x 480/(2 x 0.3) = 128 in: 18.18. Sum 31.85.
    // Vcw = (3.5 x 0.0707 + 0.3 x 0.337) x 190 = 66.22.
    const {member} = state();
    const shear = shearAt(member, 40, prestressState(member, 40, 0.2, 100));
    expect(shear.flexureShearKip).toBeCloseTo(31.85, 2);
    expect(shear.webShearKip).toBeCloseTo(66.22, 2);
  });

  test("arches, and carries 82 psf", () => {
    // Force for camber 0.918 (0.97 x 202.5 - 8.81) = 172.2 kip: P e l^2/8EI = 0.848 in; 5 w l^4/384EI = 0.334, dead load 0.0598.
    // Set: 1.80 x 0.848 - 1.85 x 0.334; after years: 2.45 x 0.848 - 2.70 x 0.334 - 3.0 x 0.0598.
    const {camber, safe} = state().deck;
    expect(camber.erectionIn).toBeCloseTo(0.908, 3);
    expect(camber.longTermIn).toBeCloseTo(0.995, 3);
    // 0.9 x 4,889.4/(10 ft x 2.4 kip-in) = 183.35 psf; (183.35 - 1.2 x 56.77)/1.6 + 10.
    expect(safe.governs).toBe("strength");
    expect(safe.safeLoadPsf).toBeCloseTo(82.02, 2);
  });
});

import {describe, expect, test} from "vitest";
import {JACKING_STRESS_KSI, RELAXATION_TO_RELEASE_KSI, losses, type LossInput} from "../../lib/prestress/losses.js";

// Round numbers close to a 10 ft tee: P0 = 1 * 202.5 kip, P/A = 202.5 / 450, e = 12 in.
const INPUT: LossInput = {
  strandAreaIn2: 1, areaIn2: 450, inertiaIn4: 22500, eccentricityIn: 12, volumeToSurfaceIn: 1.5, concreteKind: "normalweight",
  modulusKsi: 4320, releaseModulusKsi: 3600, selfMomentKipIn: 1500, laterDeadStressKsi: 0.1, humidityPercent: 70,
};

describe("losses", () => {
  const result = () => losses(INPUT);

  test("start from the concrete's stress at the strands, with nine tenths of the first pull", () => {
    // 0.9 (202.5 / 450 + 202.5 * 144 / 22,500) - 1,500 * 12 / 22,500 = 0.9 (0.45 + 1.296) - 0.8 = 0.7714.
    expect(result().concreteStressKsi).toBeCloseTo(0.7714, 10);
  });

  test("count elastic shortening, creep, shrinkage and relaxation", () => {
    // ES = 28,800 / 3,600 * 0.7714 = 6.1712.
    expect(result().elasticKsi).toBeCloseTo(6.1712, 10);
    // CR = 2 * 28,800 / 4,320 * (0.7714 - 0.1) = 8.952.
    expect(result().creepKsi).toBeCloseTo(8.952, 10);
    // SH = 8.2e-6 * 28,800 * (1 - 0.09) * 30 = 6.447168.
    expect(result().shrinkageKsi).toBeCloseTo(6.447168, 10);
    // RE = 5 - 0.04 (6.447168 + 8.952 + 6.1712) = 4.13718528.
    expect(result().relaxationKsi).toBeCloseTo(4.13718528, 10);
    expect(result().totalKsi).toBeCloseTo(6.1712 + 8.952 + 6.447168 + 4.13718528, 10);
  });

  test("leave the stresses at release and at the end", () => {
    expect(JACKING_STRESS_KSI).toBe(202.5);
    // 202.5 * log10(18) / 45 * (202.5 / 243 - 0.55) = 5.64873 * 0.28333 = 1.60047.
    expect(RELAXATION_TO_RELEASE_KSI).toBeCloseTo(1.6005, 4);
    expect(result().initialStressKsi).toBeCloseTo(202.5 - 6.1712 - 1.6005, 4);
    // For camber three percent of the pull are gone besides elastic shortening.
    expect(result().camberStressKsi).toBeCloseTo(202.5 * 0.97 - 6.1712, 10);
    expect(result().effectiveStressKsi).toBeCloseTo(202.5 - result().totalKsi, 10);
  });

  test("count less creep in sand-lightweight concrete", () => {
    expect(losses({...INPUT, concreteKind: "sand-lightweight"}).creepKsi).toBeCloseTo(8.952 * 0.8, 10);
  });

  test("count no creep where later load outweighs the prestress", () => {
    expect(losses({...INPUT, laterDeadStressKsi: 2}).creepKsi).toBe(0);
  });

  test("count no shrinkage in saturated air, and never less relaxation than none", () => {
    expect(losses({...INPUT, humidityPercent: 100}).shrinkageKsi).toBeCloseTo(0, 12);
    expect(losses({...INPUT, strandAreaIn2: 20}).relaxationKsi).toBe(0);
  });

  test("take a strand above the centroid with its sign", () => {
    // e = -2: 0.9 (0.45 + 202.5 * 4 / 22,500) + 1,500 * 2 / 22,500 = 0.4374 + 0.1333.
    expect(losses({...INPUT, eccentricityIn: -2}).concreteStressKsi).toBeCloseTo(0.570733, 5);
  });
});

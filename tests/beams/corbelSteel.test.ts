import {describe, expect, test} from "vitest";
import {corbelPullKip, corbelSteel, type CorbelForces} from "../../lib/beams/corbelSteel.js";

/** A corbel 16 in wide with 100 kip 5 in off the face, and a fifth of it as pull. */
const FORCES: CorbelForces = {
  concrete: {strengthPsi: 5000, lambda: 1}, widthIn: 16, effectiveDepthIn: 16, armIn: 5, shearKip: 100, pullKip: 20, momentKipIn: 540,
};
const of = (different: Partial<CorbelForces> = {}) => corbelSteel({...FORCES, ...different});

describe("steel across a corbel", () => {
  test("takes a fifth of the load as pull, or more where more is given", () => {
    expect([corbelPullKip(100), corbelPullKip(100, 15), corbelPullKip(100, 30)]).toEqual([20, 20, 30]);
  });

  test("is by the rule that asks for most, which it names", () => {
    // 540 = 45 A (16 - 60 A / 136): 0.76635 in2 with 20 / 45 for the pull: 1.21080; friction 100 / 63: 2/3 of 1.58730 and 0.44444: 1.50265.
    expect(of()).toMatchObject({rule: "shear friction and pull", topIn2: expect.closeTo(1.502646, 6), tiesIn2: expect.closeTo(0.529101, 6)});
    expect(of({momentKipIn: 1200})).toMatchObject({rule: "bending and pull"});
    // 0.04 x 5 / 60 x 256.
    expect(of({shearKip: 10, pullKip: 2, momentKipIn: 54})).toMatchObject({rule: "least steel", topIn2: expect.closeTo(0.853333, 6)});
  });

  test("in lightweight concrete asks friction for more steel, and allows less stress the farther out the load stands", () => {
    const light = {concrete: {strengthPsi: 5000, lambda: 0.85}};
    expect(of(light).frictionIn2).toBeCloseTo(of().frictionIn2 / 0.85, 12);
    // 5 / 16: 800 - 280 x 0.3125 = 712.5 psi, below (0.2 - 0.021875) 5,000 = 890.6; 0.75 x 256 in2 of it.
    expect(of(light).greatestShearKip).toBeCloseTo(136.8, 9);
    expect(of({...light, armIn: 20}).greatestShearKip).toBe(of({...light, armIn: 16}).greatestShearKip);
    expect(of({armIn: 16}).greatestShearKip).toBe(of().greatestShearKip);
  });

  test("keeps a number where no steel suffices: half the depth as lever", () => {
    // 0.75 x 0.85 x 5 x 16 x 16^2 / 2 = 6,528 kip-in.
    expect(of().greatestMomentKipIn).toBeCloseTo(6528, 9);
    expect(of({momentKipIn: 6600}).bendingIn2).toBeCloseTo(6600 / (45 * 8), 12);
  });
});

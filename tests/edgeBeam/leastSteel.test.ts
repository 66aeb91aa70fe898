import {describe, expect, test} from "vitest";
import {leastSteel} from "../../lib/edgeBeam/leastSteel.js";

describe("least bars of a simple span", () => {
  // ACI 318-19 9.6.1.2, worked out from the clause: 12 in web, 48 in flange, d 21.5 in, 4,000 psi.
  const section = {webWidthIn: 12, tensionWidthIn: 48, depthIn: 21.5, strengthPsi: 4000, momentKipIn: 1e4};

  test("a wide flange in tension counts as twice the web, a narrow one as it is", () => {
    // 200/60,000 x 24 x 21.5 = 1.72; of a flange 18 in wide 1.29; of the web alone 0.86.
    expect(leastSteel(section)).toMatchObject({widthIn: 24, crackingIn2: expect.closeTo(1.72, 9), areaIn2: expect.closeTo(1.72, 9)});
    expect(leastSteel({...section, tensionWidthIn: 18}).areaIn2).toBeCloseTo(1.29, 9);
    expect(leastSteel({...section, tensionWidthIn: 12}).areaIn2).toBeCloseTo(0.86, 9);
  });

  test("strong concrete cracks at more, so 3 sqrt(f'c) decides above 4,444 psi", () => {
    // 3 sqrt(8,100) = 270 psi.
    expect(leastSteel({...section, strengthPsi: 8100}).crackingIn2).toBeCloseTo((270 / 60_000) * 24 * 21.5, 9);
  });

  test("a third more than the moment needs is enough where that is less", () => {
    // 500 kip-in: As = 0.438 in2: a = 26.29/(0.85 x 4 x 12) = 0.6444, 0.9 x 26.29 (21.5 - 0.3222) = 501.1; by the root 0.43720.
    const small = leastSteel({...section, momentKipIn: 500});
    expect(small.neededIn2).toBeCloseTo(0.4372, 4);
    expect(small.areaIn2).toBeCloseTo(0.58293, 4);
    const steelKip = 60 * (small.neededIn2 as number);
    expect(0.9 * steelKip * (21.5 - steelKip / (2 * 0.85 * 4 * 12))).toBeCloseTo(500, 6);
  });

  test("where no bars would carry the moment, the flange's rule alone is left", () => {
    expect(leastSteel({...section, momentKipIn: 2e4})).toMatchObject({neededIn2: undefined, areaIn2: expect.closeTo(1.72, 9)});
  });
});

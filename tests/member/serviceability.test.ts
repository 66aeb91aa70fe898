import {describe, expect, it} from "vitest";
import {crackedInertiaIn4, liveDeflection, liveLoadForSagPlf} from "../../lib/member/deflection.js";
import {horizontalShearKip} from "../../lib/member/horizontalShear.js";
import {prestressState} from "../../lib/member/prestressState.js";
import {WALKING, vibration} from "../../lib/member/vibration.js";
import {memberWith} from "../support/members.js";

const tee = () => memberWith("10DT24", "88-S");
const topped = () => memberWith("10DT24", "88-S", {toppingIn: 2});

describe("live load sag", () => {
  const state = () => prestressState(tee(), 40, 0.5, 100);
  it("is that of the whole section where the soffit stays uncracked", () => {
    const {deflectionIn, uncrackedShare} = liveDeflection(tee(), 40, state(), 100, 100);
    expect(uncrackedShare).toBe(1);
    // 5 w L^4 / 384 E I = 5 (0.1/12) 480^4 / (384 x 4286.8 x 22468.9).
    expect(deflectionIn).toBeCloseTo((5 * (0.1 / 12) * 480 ** 4) / (384 * tee().modulusKsi * tee().section.inertiaIn4), 9);
  });
  it("grows faster than the load once the soffit cracks", () => {
    const at = (plf: number) => liveDeflection(tee(), 40, state(), 100, plf);
    expect(at(2400).uncrackedShare).toBeLessThan(1);
    expect(at(2400).deflectionIn).toBeGreaterThan(2 * at(1200).deflectionIn);
    expect(at(2400).crackedInertiaIn4).toBeLessThan(tee().section.inertiaIn4);
  });
  it("takes a cracked section of n Aps dp2 (1 - 1.6 sqrt(n rho))", () => {
    // n = 28800/4286.8 = 6.718; Aps = 1.224; dp = 19; rho = 1.224/(120 x 19) = 0.000537; sqrt(n rho) = 0.0601.
    expect(crackedInertiaIn4(tee(), state())).toBeCloseTo(6.718 * 1.224 * 361 * (1 - 1.6 * 0.0601), -1);
  });
  it("is undone by the load for a sag", () => {
    for (const plf of [200, 800, 1200, 1800, 2400]) {
      expect(liveLoadForSagPlf(tee(), 40, state(), 100, liveDeflection(tee(), 40, state(), 100, plf).deflectionIn)).toBeCloseTo(plf, 6);
    }
  });
  it("is nothing without live load", () => expect(liveDeflection(tee(), 40, state(), 100, 0).deflectionIn).toBe(0));
});

describe("contact of topping and member", () => {
  it("passes on phi 80 bv d", () => expect(horizontalShearKip(topped())).toBeCloseTo((0.75 * 80 * 120 * 21) / 1000, 9));
  it("is no question without topping", () => expect(horizontalShearKip(tee())).toBeUndefined());
});

describe("liveliness", () => {
  it("gives the frequency of a simple beam to half a percent", () => {
    const {frequencyHz, massSagIn} = vibration(tee(), 40, 100, "quiet");
    // Exact: (pi/2) sqrt(E I g / (w L^4)); with the sag 5 w L^4 / 384 E I it is 0.1794 sqrt(g / sag).
    const exact = (Math.PI / 2) * Math.sqrt((5 * 386.1) / (384 * massSagIn));
    expect(Math.abs(frequencyHz / exact - 1)).toBeLessThan(0.005);
  });
  it("calms down with weight and span of the strip, and stirs with less damping", () => {
    expect(vibration(topped(), 40, 300, "quiet").movingWeightLb).toBeGreaterThan(vibration(topped(), 40, 100, "quiet").movingWeightLb);
    // Shops count no people who sit, 80 lb a foot here, and damp less.
    const [quiet, busy] = [vibration(topped(), 40, 100, "quiet"), vibration(topped(), 40, 180, "busy")];
    expect(busy.acceleration).toBeCloseTo((WALKING.quiet.damping / WALKING.busy.damping) * quiet.acceleration, 12);
    expect(busy.allowedAcceleration).toBe(3 * quiet.allowedAcceleration);
  });
});

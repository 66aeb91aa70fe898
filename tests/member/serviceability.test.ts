import {describe, expect, it} from "vitest";
import {crackedInertiaIn4, liveDeflection, liveLoadForSagPlf} from "../../lib/member/deflection.js";
import {sag} from "../../lib/member/camber.js";
import {contactDepthIn, horizontalShearKip} from "../../lib/member/horizontalShear.js";
import {uniformMomentKipIn} from "../../lib/member/moments.js";
import {prestressState} from "../../lib/member/prestressState.js";
import {fiberStresses} from "../../lib/member/stress.js";
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
  it("is nothing without live load, also where dead load alone has cracked the soffit", () => {
    const long = prestressState(tee(), 80, 0.5, 400);
    expect(liveDeflection(tee(), 80, long, 400, 100).uncrackedShare).toBe(0);
    expect(liveDeflection(tee(), 80, long, 400, 0)).toMatchObject({deflectionIn: 0, uncrackedShare: 1});
  });
  it("begins to bend the cracked section where dead and live load pull the soffit by 7.5 sqrt(f'c)", () => {
    const {uncrackedShare} = liveDeflection(tee(), 40, state(), 100, 2400);
    const stresses = fiberStresses(tee(), state(), state().effectiveForceKip, {
      precastKipIn: uniformMomentKipIn(tee().selfWeightPlf, 40, 0.5), fullKipIn: uniformMomentKipIn(100 + uncrackedShare * 2400, 40, 0.5),
    });
    expect(stresses.bottomKsi).toBeCloseTo((-7.5 * Math.sqrt(5000)) / 1000, 9);
  });
  it("takes a topped member's own weight and topping on the precast section, and its sag on the composite one", () => {
    const at = prestressState(topped(), 50, 0.5, 100);
    const {uncrackedShare, deflectionIn} = liveDeflection(topped(), 50, at, 100, 200);
    expect(uncrackedShare).toBe(1);
    expect(deflectionIn).toBeCloseTo(sag(200, 600, topped().modulusKsi, topped().full.inertiaIn4), 9);
    const heavy = liveDeflection(topped(), 50, at, 100, 3000);
    const stresses = fiberStresses(topped(), at, at.effectiveForceKip, {
      precastKipIn: uniformMomentKipIn(topped().selfWeightPlf + topped().toppingWeightPlf, 50, 0.5), fullKipIn: uniformMomentKipIn(100 + heavy.uncrackedShare * 3000, 50, 0.5),
    });
    expect(stresses.bottomKsi).toBeCloseTo((-7.5 * Math.sqrt(5000)) / 1000, 9);
    // The rest bends the cracked section: 5 w l^4/384 E I each.
    const part = (plf: number, inertiaIn4: number) => sag(plf, 600, topped().modulusKsi, inertiaIn4);
    expect(heavy.deflectionIn).toBeCloseTo(part(heavy.uncrackedShare * 3000, topped().full.inertiaIn4) + part((1 - heavy.uncrackedShare) * 3000, heavy.crackedInertiaIn4), 9);
  });
  it("takes no cracked section that is stiffer than the whole one", () => {
    // 26 strands low in a shallow slab: the approximation would give more than 4 x 48 x 8^3/48 = 2,048 in4.
    const slab = memberWith("4FS4", "236-S");
    const whole = slab.section.inertiaIn4;
    expect(crackedInertiaIn4({...slab, layout: {...slab.layout, areaIn2: 3}}, {eccentricityIn: 1.9})).toBeLessThanOrEqual(whole);
  });
  it("is nothing without live load", () => expect(liveDeflection(tee(), 40, state(), 100, 0).deflectionIn).toBe(0));
});

describe("contact of topping and member", () => {
  it("passes on phi 80 bv d", () => expect(horizontalShearKip(topped())).toBeCloseTo((0.75 * 80 * 120 * 21) / 1000, 9));
  it("counts the depth to the strands, and never less than 0.8 of the whole", () => {
    expect(contactDepthIn(topped())).toBe(21);
    // Six strands in each stem have their middle 7 in up: 19 of 26 in; 20.8 count.
    expect(contactDepthIn(memberWith("10DT24", "128-S", {toppingIn: 2}))).toBeCloseTo(20.8, 12);
  });
  it("is no question without topping", () => expect(horizontalShearKip(tee())).toBeUndefined());
});

describe("liveliness", () => {
  it("gives the frequency of a simple beam to half a percent", () => {
    const {frequencyHz, massSagIn} = vibration(tee(), 40, 100, "quiet");
    // Exact: (pi/2) sqrt(E I g / (w L^4)); with the sag 5 w L^4 / 384 E I it is 0.1794 sqrt(g / sag).
    const exact = (Math.PI / 2) * Math.sqrt((5 * 386.1) / (384 * massSagIn));
    expect(Math.abs(frequencyHz / exact - 1)).toBeLessThan(0.005);
  });
  it("is 65 exp(-0.35 f)/(0.03 W) in a quiet room, W the weight of a strip 0.6 of the span wide", () => {
    const {frequencyHz, movingWeightLb, acceleration, massSagIn, allowedAcceleration} = vibration(tee(), 40, 100, "quiet");
    // 467.7 + 100 + 8 psf x 10 ft = 647.7 plf, 64.77 psf on 24 x 40 ft.
    expect(movingWeightLb).toBeCloseTo(64.7708 * 960, 0);
    expect(massSagIn).toBeCloseTo(sag(647.708, 480, 1.2 * tee().modulusKsi, tee().section.inertiaIn4), 6);
    expect(acceleration).toBeCloseTo((65 * Math.exp(-0.35 * frequencyHz)) / (0.03 * 62180), 7);
    expect(allowedAcceleration).toBe(0.005);
  });
  it("moves a strip of planks as wide as its span, and a walker of 92 lb on an open deck", () => {
    const {frequencyHz, movingWeightLb, acceleration} = vibration(memberWith("4HC8", "66-S"), 24, 0, "outdoor");
    // 223.3 plf on 4 ft: 55.8 psf on 24 x 24 ft.
    expect(movingWeightLb).toBeCloseTo((223.287 / 4) * 576, 0);
    expect(acceleration).toBeCloseTo((92 * Math.exp(-0.35 * frequencyHz)) / (0.01 * movingWeightLb), 12);
  });
  it("calms down with weight and span of the strip, and stirs with less damping", () => {
    expect(vibration(topped(), 40, 300, "quiet").movingWeightLb).toBeGreaterThan(vibration(topped(), 40, 100, "quiet").movingWeightLb);
    // Shops count no people who sit, 80 lb a foot here, and damp less.
    const [quiet, busy] = [vibration(topped(), 40, 100, "quiet"), vibration(topped(), 40, 180, "busy")];
    expect(busy.acceleration).toBeCloseTo((WALKING.quiet.damping / WALKING.busy.damping) * quiet.acceleration, 12);
    expect(busy.allowedAcceleration).toBe(3 * quiet.allowedAcceleration);
  });
});

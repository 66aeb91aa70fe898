import fc from "fast-check";
import {describe, expect, test} from "vitest";
import {padChecks, padFor, padShapeFactor, padStressPsi, supportAreaIn2} from "../../lib/beams/bearing.js";
import {hold, within} from "../properties/arbitrary.js";
import {refused} from "../support/errors.js";

const MENDS = {stress: "a longer or thinner pad", bearing: "a larger pad, a wider ledge"};
const PAD = {widthIn: 5, lengthIn: 4, thicknessIn: 0.375};

describe("bearing on concrete", () => {
  test("the support's area keeps the pad's proportions and ends at the nearest edge", () => {
    // 5 x 4: 1.5 in to the ledge's edge: scale 1 + 3 / 4 = 1.75 (along the beam 1 + 48 / 5 is more): 20 * 3.0625.
    expect(supportAreaIn2(PAD, {alongBeamIn: 24, acrossBeamIn: 1.5, depthIn: 10})).toBeCloseTo(61.25, 9);
    // A ledge of 1 in lets it spread by 2 in only: min(1 + 4 / 5, 1 + 4 / 4) = 1.8.
    expect(supportAreaIn2(PAD, {alongBeamIn: 24, acrossBeamIn: 10, depthIn: 1})).toBeCloseTo(64.8, 9);
    expect(supportAreaIn2(PAD, {alongBeamIn: 0, acrossBeamIn: 10, depthIn: 10})).toBe(20);
    refused(() => supportAreaIn2(PAD, {alongBeamIn: -1, acrossBeamIn: 1, depthIn: 1}), {path: "alongBeamIn"});
  });
});

describe("pads", () => {
  test("carry more the less they can bulge", () => {
    // 20 / (2 * 0.375 * 9) = 2.96296; 1,000 + 296.3.
    expect(padShapeFactor(PAD)).toBeCloseTo(2.96296, 5);
    expect(padStressPsi(PAD)).toBeCloseTo(1296.296, 3);
    // 10 x 10 by 3/8: 6.67, so 1,500 at most.
    expect(padStressPsi({widthIn: 10, lengthIn: 10, thicknessIn: 0.375})).toBe(1500);
    refused(() => padStressPsi({...PAD, thicknessIn: 0}), {path: "pad.thicknessIn"});
  });

  test("are as wide as the stem and as short as their stress allows", () => {
    const of = (serviceKip: number, roomIn = 8) => padFor({serviceKip, stemWidthIn: 4.75, thicknessIn: 0.375, roomIn});
    // 4 in: S = 19 / (0.75 * 8.75) = 2.89524: 1,289.5 psi * 19 in2 = 24.50 kip.
    expect(of(24)).toEqual({widthIn: 5, lengthIn: 4, thicknessIn: 0.375});
    // 4.5 in: S = 21.375 / (0.75 * 9.25) = 3.08108: 27.96 kip.
    expect(of(25).lengthIn).toBe(4.5);
    // Too much for the room: it fills the room, and its check fails.
    const full = of(60, 6);
    expect(full.lengthIn).toBe(6);
    const checks = padChecks({pad: full, stemWidthIn: 4.75, serviceKip: 60, factoredKip: 80, strengthPsi: 5000, around: {alongBeamIn: 24, acrossBeamIn: 1, depthIn: 10}, mends: MENDS});
    expect(checks.find(({id}) => id === "pad stress")?.verdict).toBe("fails");
    refused(() => of(NaN), {path: "serviceKip"});
    refused(() => of(10, 0), {path: "roomIn"});
  });

  test("are checked under the stem and on the ledge, from both sides", () => {
    const of = (changes: object = {}) => Object.fromEntries(padChecks({
      pad: PAD, stemWidthIn: 5, serviceKip: 20, factoredKip: 28, strengthPsi: 5000, around: {alongBeamIn: 24, acrossBeamIn: 1.5, depthIn: 10}, mends: MENDS, ...changes,
    }).map((check) => [check.id, check]));
    expect(of()).toMatchObject({"pad width": {verdict: "ok"}, "pad stress": {verdict: "ok", demand: 1000}, "ledge bearing": {verdict: "ok"}});
    // The stem is wider than the pad: it bears on 5 in of it.
    expect(of({stemWidthIn: 5.1})["pad width"]).toMatchObject({verdict: "fails"});
    // 1,296.3 psi * 20 in2 = 25.93 kip.
    expect(of({serviceKip: 25.9})["pad stress"]?.verdict).toBe("near");
    expect(of({serviceKip: 26})["pad stress"]?.verdict).toBe("fails");
    // 55.25 * 1.75 = 96.69 kip.
    expect(of({factoredKip: 96})["ledge bearing"]?.verdict).toBe("near");
    expect(of({factoredKip: 97})["ledge bearing"]?.verdict).toBe("fails");
    // A stem narrower than its pad loads 3 x 4 in: 20 / 12 = 1,667 psi.
    expect(of({stemWidthIn: 3})["pad stress"]).toMatchObject({demand: expect.closeTo(1666.667, 3), verdict: "fails"});
  });

  test("are mended by what the beam that they lie on has for them", () => {
    const words = padChecks({
      pad: PAD, stemWidthIn: 5, serviceKip: 90, factoredKip: 900, strengthPsi: 5000, around: {alongBeamIn: 24, acrossBeamIn: 1.5, depthIn: 10}, mends: MENDS,
    }).slice(1).map(({message}) => message);
    expect(words).toEqual([expect.stringMatching(/load: a longer or thinner pad\.$/), expect.stringMatching(/stem: a larger pad, a wider ledge, or stronger concrete/)]);
  });

  test("are cut to whole half inches, and may fill their room exactly", () => {
    const wide = (stemWidthIn: number) => padFor({serviceKip: 10, stemWidthIn, thicknessIn: 0.375, roomIn: 8}).widthIn;
    expect([wide(4.5), wide(4.51), wide(5)]).toEqual([4.5, 5, 5]);
    expect(padFor({serviceKip: 24, stemWidthIn: 4.75, thicknessIn: 0.375, roomIn: 4})).toEqual({widthIn: 5, lengthIn: 4, thicknessIn: 0.375});
  });

  test("suffice whenever the room does", () => {
    hold(300, fc.property(within(1, 60), within(3, 10), fc.constantFrom(0.25, 0.375, 0.5), (serviceKip, stemWidthIn, thicknessIn) => {
      const pad = padFor({serviceKip, stemWidthIn, thicknessIn, roomIn: 24});
      const stress = (1000 * serviceKip) / (stemWidthIn * pad.lengthIn);
      expect(pad.widthIn).toBeGreaterThanOrEqual(stemWidthIn - 1e-6);
      expect(stress).toBeLessThanOrEqual(padStressPsi({...pad, widthIn: stemWidthIn}));
    }));
  });
});

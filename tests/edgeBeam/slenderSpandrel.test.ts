import {describe, expect, test} from "vitest";
import {slenderSpandrel, type SlenderSpandrelInput} from "../../lib/edgeBeam/slenderSpandrel.js";
import {concrete} from "../../lib/materials/concrete.js";
import {refused} from "../support/errors.js";

const INPUT: SlenderSpandrelInput = {
  concrete: concrete("normalweight", 5000), webWidthIn: 8, depthIn: 60,
  torsionKipIn: 500, shearKip: 80, effectiveDepthIn: 55, faceSteelDepthIn: 6.5,
};
const of = (changes: Partial<SlenderSpandrelInput> = {}) => slenderSpandrel({...INPUT, ...changes});
const failing = (changes: Partial<SlenderSpandrelInput>) => of(changes).limits.filter(({verdict}) => verdict === "fails").map(({id}) => id);

describe("slenderSpandrel", () => {
  test("splits the torsion into bending and twist of the web along a line at 45 degrees", () => {
    // 500 / sqrt 2 = 353.553.
    expect(of()).toMatchObject({aspect: 7.5, plateBendingKipIn: expect.closeTo(353.5534, 4), plateTwistKipIn: expect.closeTo(353.5534, 4), endRegionIn: 60});
  });

  test("asks for equal steel upright and lengthwise, which together carry the bending", () => {
    // 500 / (2 * 0.9 * 60 * 6.5) = 0.712251 in2, over 60 in: 0.14245 in2/ft.
    const {uprightIn2, lengthwiseIn2, uprightIn2PerFt, plateBendingKipIn} = of();
    expect(uprightIn2).toBeCloseTo(0.712251, 6);
    expect(uprightIn2PerFt).toBeCloseTo(0.14245, 5);
    expect(lengthwiseIn2).toBe(uprightIn2);
    // Each bar's moment is about the other's direction; both have cos 45 of it along the line.
    expect(0.9 * (uprightIn2 + lengthwiseIn2) * 60 * 6.5 * Math.cos(Math.PI / 4)).toBeCloseTo(plateBendingKipIn, 9);
  });

  test("leaves the twist to the concrete", () => {
    // 1.5 * 500,000 / (60 * 42.25) = 295.858 psi; 0.75 * 7.2 * 70.7107 = 381.838 psi: reached at 645.3 kip-in.
    expect(of()).toMatchObject({applies: true, twistStressPsi: expect.closeTo(295.858, 3), greatestTwistStressPsi: expect.closeTo(381.838, 3)});
    expect(failing({torsionKipIn: 645})).toEqual([]);
    expect(failing({torsionKipIn: 646})).toEqual(["slender twist"]);
  });

  test("keeps to its limits of use, each from both sides", () => {
    // 8 * 4.5 = 36 in.
    const stocky = {effectiveDepthIn: 33, torsionKipIn: 100, shearKip: 40};
    expect(failing({...stocky, depthIn: 36})).toEqual([]);
    expect(failing({...stocky, depthIn: 35.9})).toEqual(["slender aspect"]);
    // A web just slender enough is as good as any; one whose twist is near what the concrete carries is within the method still.
    expect(of({...stocky, depthIn: 36}).limits.map(({verdict}) => verdict)).toEqual(["ok", "ok", "ok"]);
    expect(of({torsionKipIn: 640})).toMatchObject({applies: true, limits: [{verdict: "ok"}, {verdict: "near"}, {verdict: "ok"}]});
    // 0.75 * 10 * 70.7107 = 530.33 psi on 8 * 55 in2: 233.3 kip.
    expect(failing({shearKip: 233})).toEqual([]);
    expect(failing({shearKip: 234})).toEqual(["slender shear"]);
    expect(of({shearKip: 234}).applies).toBe(false);
  });

  test("refuses what cannot be", () => {
    refused(() => of({concrete: concrete("sand-lightweight", 5000)}), {path: "concrete.lambda"});
    refused(() => of({webWidthIn: 7.9}), {path: "webWidthIn", allowed: "8 to 60 in"});
    refused(() => of({faceSteelDepthIn: 8}), {path: "faceSteelDepthIn", allowed: "4 to 7.5 in"});
    refused(() => of({torsionKipIn: Infinity}), {path: "torsionKipIn"});
  });
});

import {describe, expect, test} from "vitest";
import {combinedOfRoof, factoredOfRoof, greatestOfRoof, serviceOfRoof, type RoofLoadsPsf} from "../../lib/snow/roofCombinations.js";
import {rainLoadPsf} from "../../lib/snow/rain.js";
import {roofLive} from "../../lib/snow/roofLive.js";
import {simpleSpan} from "../../lib/snow/simpleSpan.js";
import {refused} from "../support/errors.js";

describe("roof live load", () => {
  test.each([[192, 2, 20], [400, 4, 16], [700, 0, 12], [400, 12, 12]])("on %i ft2 at a rise of %i in per ft is %i psf (ASCE 7-16 4.8.2; worked out)", (areaFt2, rise, psf) => {
    expect(roofLive(areaFt2, rise).psf).toBeCloseTo(psf, 12);
  });

  test("falls by 2 psf for each 100 ft2 between 200 and 600 ft2 and stays at 12 psf", () => {
    expect([0, 199, 200, 201, 300, 500, 599, 600, 601, 5000].map((areaFt2) => Number(roofLive(areaFt2).psf.toFixed(6)))).toEqual([20, 20, 20, 19.98, 18, 14, 12.02, 12, 12, 12]);
  });

  test("falls by 1 psf for each inch of rise between 4 and 12 in per ft, never below 12 psf", () => {
    expect([0, 4, 5, 8, 11, 12, 20].map((rise) => roofLive(100, rise).psf)).toEqual([20, 20, 19, 16, 13, 12, 12].map((psf) => expect.closeTo(psf, 9) as number));
    expect(roofLive(400, 8)).toMatchObject({areaFactor: expect.closeTo(0.8, 12) as number, slopeFactor: expect.closeTo(0.8, 12) as number, psf: expect.closeTo(12.8, 9) as number});
    expect(roofLive(550, 8).psf).toBe(12);
  });

  test("of no area or an impossible rise is refused", () => {
    refused(() => roofLive(-1), {path: "tributaryFt2"});
    refused(() => roofLive(100, 25), {path: "riseInPerFt"});
  });
});

describe("rain", () => {
  test("weighs 5.2 psf an inch, both depths alike (ASCE 7-16 8.3): a cubic foot of water is 62.4 lb", () => {
    expect(rainLoadPsf(2, 1)).toBeCloseTo((3 / 12) * 62.4, 9);
    expect([rainLoadPsf(0, 0), rainLoadPsf(0, 4), rainLoadPsf(4, 0)]).toEqual([0, 20.8, 20.8]);
    refused(() => rainLoadPsf(-1, 0), {path: "staticIn"});
    refused(() => rainLoadPsf(0, 50), {path: "hydraulicIn"});
  });
});

describe("combinations", () => {
  const governs = (loads: Partial<RoofLoadsPsf>) => {
    const all: RoofLoadsPsf = {D: 60, L: 0, Lr: 0, S: 0, R: 0, ...loads};
    const [factored, service] = [factoredOfRoof(all.L > 0), serviceOfRoof(all.L > 0)].map((of) => greatestOfRoof(combinedOfRoof(all, of)));
    return {factored: [factored?.combination.name, factored?.psf], service: [service?.combination.name, service?.psf]};
  };

  test("take whichever of roof live load, snow and rain is greatest", () => {
    expect(governs({Lr: 20, S: 19, R: 15})).toEqual({factored: ["1.2D + 1.6Lr", 104], service: ["D + Lr", 80]});
    expect(governs({Lr: 20, S: 30, R: 15})).toEqual({factored: ["1.2D + 1.6S", 120], service: ["D + S", 90]});
    expect(governs({Lr: 20, S: 19, R: 26})).toEqual({factored: ["1.2D + 1.6R", expect.closeTo(113.6, 9)], service: ["D + R", 86]});
  });

  test("are dead load alone where little else is: 1.4D is above 1.2D + 1.6Lr for Lr below D/8", () => {
    expect(governs({D: 100, Lr: 12.4}).factored[0]).toBe("1.4D");
    expect(governs({D: 100, Lr: 12.6}).factored[0]).toBe("1.2D + 1.6Lr");
  });

  test("of a roof that is used bring its live load beside half of the snow, or all of the snow beside it", () => {
    // 72 + 160 + 15 = 247 and 72 + 48 + 100 = 220; 60 + 100 = 160 and 60 + 75 + 22.5 = 157.5.
    expect(governs({L: 100, S: 30})).toEqual({factored: ["1.2D + 1.6L + 0.5S", 247], service: ["D + L", 160]});
    // 72 + 64 + 50 = 186 and 72 + 160 + 40 = 272; 60 + 100 = 160 and 60 + 30 + 75 = 165.
    expect(governs({L: 40, S: 100})).toEqual({factored: ["1.2D + 1.6S + L", 272], service: ["D + 0.75L + 0.75S", 165]});
  });

  test("of a roof that nobody uses have no L", () => {
    for (const {name, live} of [...factoredOfRoof(false), ...serviceOfRoof(false)]) expect([name.includes("L") && !name.includes("Lr"), live]).toEqual([false, 0]);
  });
});

describe("a simple span", () => {
  test("under an even load has w L/2 and w L^2/8", () => {
    expect(simpleSpan([{xFt: 5, load: 3}, {xFt: 25, load: 3}])).toMatchObject({lengthFt: 20, firstReaction: 30, secondReaction: 30, moment: 150, momentAtFt: 10});
  });

  test("under a triangle that falls from the first support has w L/3, w L/6 and w L^2/(9 sqrt 3)", () => {
    const span = simpleSpan([{xFt: 0, load: 6}, {xFt: 10, load: 0}]);
    expect([span.firstReaction, span.secondReaction, span.moment, span.momentAtFt]).toEqual([20, 10, 600 / (9 * Math.sqrt(3)), 10 * (1 - 1 / Math.sqrt(3))].map((value) => expect.closeTo(value, 9) as number));
  });

  test("under a triangle near a support agrees with statics written out", () => {
    // Peak 30 over 12 ft of 40 ft, on 20 all along: R2 = 400 + 30 x 12^2/(6 x 40) = 418; V = 0 where 418 = 20 x from the right.
    const span = simpleSpan([{xFt: 0, load: 50}, {xFt: 12, load: 20}, {xFt: 40, load: 20}]);
    expect(span.secondReaction).toBeCloseTo(418, 9);
    expect(span.firstReaction).toBeCloseTo(800 + 180 - 418, 9);
    expect(span.momentAtFt).toBeCloseTo(40 - 418 / 20, 9);
    expect(span.moment).toBeCloseTo(418 ** 2 / 40, 9);
  });

  test("is the same from its other end", () => {
    const line = [{xFt: 0, load: 44}, {xFt: 9, load: 21}, {xFt: 30, load: 21}, {xFt: 36, load: 39}];
    const [one, other] = [simpleSpan(line), simpleSpan(line.map(({xFt, load}) => ({xFt: 36 - xFt, load})).reverse())];
    expect([other.firstReaction, other.secondReaction, other.moment, 36 - other.momentAtFt]).toEqual([one.secondReaction, one.firstReaction, one.moment, one.momentAtFt].map((value) => expect.closeTo(value, 9) as number));
  });

  test("without load has nothing", () => {
    expect(simpleSpan([{xFt: 0, load: 0}, {xFt: 10, load: 0}])).toMatchObject({firstReaction: 0, secondReaction: 0, moment: 0});
  });
});

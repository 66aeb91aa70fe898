import {describe, expect, test} from "vitest";
import {axialCapKip, pureTensionKip, squashLoadKip} from "../../lib/columns/axialLimits.js";
import {fullyPressedIn} from "../../lib/columns/inclinedForces.js";
import {refused} from "../support/errors.js";
import {fiberStrength} from "./fibers.js";
import {axisAtStrainIn, balancedState, capacityAlong, capacityAt, stateAt, useOf} from "./oneAxis.js";
import {bar, columnOf, COLUMNS} from "./sections.js";

describe("the ends of the curve", () => {
  test("squash load is 0.85 f'c (Ag - Ast) + fy Ast, and the cap 0.65 x 0.80 of it", () => {
    // 4.25 (256 - 6.32) + 60 x 6.32 = 1,061.14 + 379.2 = 1,440.34 kip; 0.52 of it is 748.98.
    const column = columnOf();
    expect(squashLoadKip(column)).toBeCloseTo(1440.34, 2);
    expect(axialCapKip(column)).toBeCloseTo(748.977, 3);
    const end = stateAt(column, fullyPressedIn(column, 0));
    expect(end.axialKip).toBeCloseTo(1440.34, 2);
    expect(end.depthMomentKipIn).toBeCloseTo(0, 6);
    expect(end.phi).toBe(0.65);
  });

  test("pure tension is fy Ast with phi 0.90", () => {
    const column = columnOf();
    expect(pureTensionKip(column)).toBeCloseTo(379.2, 9);
    const end = stateAt(column, 0);
    expect(end).toMatchObject({axialKip: expect.closeTo(-379.2, 9), depthMomentKipIn: expect.closeTo(0, 9), phi: 0.9, tensileStrain: undefined, block: {areaIn2: 0, xIn: 0, yIn: 0}});
    expect(capacityAlong(column, {axialKip: -5, momentKipIn: 0}).axialKip).toBeCloseTo(-0.9 * 379.2, 9);
    expect(useOf(column, {axialKip: -100, momentKipIn: 0})).toBeCloseTo(100 / (0.9 * 379.2), 9);
  });

  test("the whole section is pressed from where its farthest bars yield; its block covers it long before", () => {
    // 13.625 / (1 - (60 / 29,000) / 0.003) = 43.89 in, beyond 16 / 0.8 = 20 in.
    expect(fullyPressedIn(columnOf(), 0)).toBeCloseTo(13.625 / (1 - 60 / 29000 / 0.003), 9);
    const column = columnOf();
    const far = fullyPressedIn(column, 0);
    expect(stateAt(column, 1.5 * far)).toMatchObject({axialKip: expect.closeTo(stateAt(column, far).axialKip, 9), depthMomentKipIn: expect.closeTo(0, 6)});
    expect(stateAt(column, 0.99 * far).axialKip).toBeLessThan(squashLoadKip(column) - 0.1);
  });

  test("pure bending by hand: two faces, no displaced concrete where the upper bars are in tension", () => {
    // 16 in, 4 ksi, four #6 on two faces, 2.25 in to the centers: the upper bars lie below the block at this little steel.
    const thin = columnOf({widthIn: 16, depthIn: 16, strengthPsi: 4000, count: 4, bar: bar("#6"), faces: "two", coverIn: 1.5});
    const d1 = 1.5 + 0.375 + 0.375;
    const d2 = 16 - d1;
    // 0.85 x 4 x 16 x 0.85 c = 46.24 c; steel 0.88 in2 in each face: 46.24 c = 52.8 - 0.88 x 87 (c - d1) / c.
    const c = (-(0.88 * 87 - 52.8) + Math.sqrt((0.88 * 87 - 52.8) ** 2 + 4 * 46.24 * 0.88 * 87 * d1)) / (2 * 46.24);
    expect(0.85 * c).toBeLessThan(d1 - 0.375);
    const upperKip = (0.88 * 87 * (c - d1)) / c;
    const moment = 46.24 * c * (8 - (0.85 * c) / 2) + upperKip * (8 - d1) + 52.8 * (d2 - 8);
    const ours = capacityAlong(thin, {axialKip: 0, momentKipIn: 1});
    expect(ours.state.neutralAxisIn).toBeCloseTo(c, 8);
    expect(ours.state.depthMomentKipIn).toBeCloseTo(moment, 6);
    expect(ours.depthMomentKipIn).toBeCloseTo(0.9 * moment, 6);
  });

  test("balanced point by hand", () => {
    // d = 13.625: c = 0.003 / (0.003 + 60/29000) d = 8.0641; block 0.8 c = 6.4513.
    const c = (0.003 / (0.003 + 60 / 29000)) * 13.625;
    const upper = Math.min(60, (87 * (c - 2.375)) / c);
    const middle = (87 * (c - 8)) / c;
    const P = 4.25 * 16 * 0.8 * c + 2.37 * (upper - 4.25) + 1.58 * middle - 2.37 * 60;
    const M = 4.25 * 16 * 0.8 * c * (8 - 0.4 * c) + 2.37 * (upper - 4.25) * 5.625 + 2.37 * 60 * 5.625;
    const balanced = balancedState(columnOf());
    expect(balanced.axialKip).toBeCloseTo(P, 8);
    expect(balanced.depthMomentKipIn).toBeCloseTo(M, 7);
    expect(balanced.block).toEqual({areaIn2: expect.closeTo(16 * 0.8 * c, 9), xIn: 8, yIn: expect.closeTo(0.4 * c, 9)});
    // 21.2.2.1 lets 0.002 stand for 60/29,000: at 0.00207 phi has just begun to rise.
    expect(balanced.phi).toBeCloseTo(0.65 + (0.25 * (60 / 29000 - 0.002)) / 0.003, 9);
  });
});

test("agrees with thin strips to 1 % of squash load and of the moment at a sixth of the depth", () => {
  for (const name of ["16 x 28 in, ten #9, 6 ksi", "24 x 14 in, two faces"]) {
    const column = COLUMNS[name]?.() as ReturnType<typeof columnOf>;
    const squashKip = squashLoadKip(column);
    const fibers = {...column, areaIn2: column.bar.areaIn2, barDepthsIn: column.bars.places.map((place) => place.yIn)};
    for (const share of [0.1, 0.2, 0.3, 0.45, 0.7, 0.95]) {
      const c = share * fullyPressedIn(column, 0);
      const ours = stateAt(column, c);
      const theirs = fiberStrength(fibers, c, 1000);
      expect(Math.abs(ours.axialKip - theirs.axialKip) / squashKip, `${name}, c ${c}`).toBeLessThan(0.01);
      expect(Math.abs(ours.depthMomentKipIn - theirs.momentKipIn) / (squashKip * column.depthIn / 6), `${name}, c ${c}`).toBeLessThan(0.01);
      expect(ours.tensileStrain).toBeCloseTo(theirs.strain, 12);
    }
  }
});

describe("strength along a ray", () => {
  test("lies on its ray, however flat or steep", () => {
    for (const of of Object.values(COLUMNS)) {
      const column = of();
      for (let power = -9; power <= 7; power += 2) {
        for (const axialKip of [1, -1]) {
          const {state} = capacityAlong(column, {axialKip, momentKipIn: 10 ** power});
          const size = Math.hypot(state.axialKip, state.depthMomentKipIn) * Math.hypot(1, 10 ** power);
          expect(Math.abs(state.depthMomentKipIn * axialKip - state.axialKip * 10 ** power) / size, `10^${power}`).toBeLessThan(1e-7);
          expect(Math.sign(state.axialKip * axialKip + state.depthMomentKipIn * 10 ** power)).toBe(1);
          expect(state.widthMomentKipIn).toBeCloseTo(0, 6);
        }
      }
    }
  });

  test("a symmetric section is as strong whichever way the moment turns", () => {
    const column = columnOf();
    expect(useOf(column, {axialKip: 200, momentKipIn: -900})).toBe(useOf(column, {axialKip: 200, momentKipIn: 900}));
  });

  test("is capped where the eccentricity is small", () => {
    const column = columnOf();
    expect(capacityAt(column, 0)).toMatchObject({capped: true, axialKip: axialCapKip(column), depthMomentKipIn: 0});
    expect(capacityAt(column, 0.5).depthMomentKipIn).toBeCloseTo(0.5 * axialCapKip(column), 9);
    expect(capacityAt(column, 6).capped).toBe(false);
    // A load of half the cap at that eccentricity uses half.
    expect(useOf(column, {axialKip: axialCapKip(column) / 2, momentKipIn: axialCapKip(column) / 4})).toBeCloseTo(0.5, 9);
  });

  test("uses phi of 0.90 from a net tensile strain of 0.005 on", () => {
    const column = columnOf();
    const {state} = capacityAlong(column, {axialKip: 1, momentKipIn: 1000});
    expect(state.tensileStrain).toBeGreaterThan(0.005);
    expect(state.phi).toBe(0.9);
    expect(stateAt(column, (3 / 8) * 13.625)).toMatchObject({tensileStrain: expect.closeTo(0.005, 12), phi: expect.closeTo(0.9, 9)});
    expect(stateAt(column, axisAtStrainIn(column, 0.002)).phi).toBeCloseTo(0.65, 9);
  });

  test("more steel of the same places never carries less", () => {
    const column = columnOf();
    const more = columnOf({bar: {...column.bar, areaIn2: 1.1 * column.bar.areaIn2}});
    for (let angle = -80; angle < 90; angle += 20) {
      const ray = {axialKip: Math.sin((angle * Math.PI) / 180) * 1000, momentKipIn: Math.cos((angle * Math.PI) / 180) * 8000};
      expect(useOf(more, ray), `angle ${angle}`).toBeLessThan(useOf(column, ray));
    }
  });

  test("refuses a load that has no direction, or is no number", () => {
    refused(() => capacityAlong(columnOf(), {axialKip: 0, momentKipIn: 0}), {path: "depthMomentKipIn"});
    refused(() => capacityAlong(columnOf(), {axialKip: NaN, momentKipIn: 0}), {path: "axialKip"});
    expect(useOf(columnOf(), {axialKip: 0, momentKipIn: 0})).toBe(0);
  });
});

import {expect, test} from "vitest";
import {axialCapKip, squashLoadKip} from "../../lib/columns/axialLimits.js";
import {biaxialCapacity, biaxialState, biaxialUse, resultantKipIn, type BiaxialLoad} from "../../lib/columns/biaxial.js";
import {fullyPressedIn} from "../../lib/columns/inclinedForces.js";
import type {ColumnSection} from "../../lib/columns/section.js";
import {refused} from "../support/errors.js";
import {gridStrength} from "./gridFibers.js";
import {capacityAlong, useOf} from "./oneAxis.js";
import {bar, columnOf} from "./sections.js";

const load = (axialKip: number, depthMomentKipIn: number, widthMomentKipIn: number): BiaxialLoad => ({axialKip, depthMomentKipIn, widthMomentKipIn});
/** The same column turned by a quarter. */
const turned = (column: ColumnSection): ColumnSection => columnOf({...column, widthIn: column.depthIn, depthIn: column.widthIn});
const degrees = (angle: number) => (angle * Math.PI) / 180;

test("agrees with a grid of small squares to 1 % of squash load and of the moment at a sixth of its depth", () => {
  const column = columnOf({depthIn: 28, count: 10, bar: bar("#9"), strengthPsi: 6000});
  const squashKip = squashLoadKip(column);
  const most = squashKip * (column.depthIn / 6);
  for (const [angle, share] of [[10, 0.15], [30, 0.3], [30, 0.8], [45, 0.45], [62, 0.2], [62, 0.6], [85, 0.4], [85, 0.9]] as const) {
    const c = share * fullyPressedIn(column, degrees(angle));
    const ours = biaxialState(column, c, degrees(angle));
    const theirs = gridStrength({...column, areaIn2: column.bar.areaIn2, places: column.bars.places}, c, degrees(angle), 90);
    expect(Math.abs(ours.axialKip - theirs.axialKip) / squashKip, `${angle} deg, c ${c}`).toBeLessThan(0.01);
    expect(Math.abs(ours.depthMomentKipIn - theirs.depthMomentKipIn) / most, `${angle} deg, c ${c}`).toBeLessThan(0.01);
    expect(Math.abs(ours.widthMomentKipIn - theirs.widthMomentKipIn) / most, `${angle} deg, c ${c}`).toBeLessThan(0.01);
    expect(ours.phi).toBeCloseTo(theirs.phi, 12);
  }
});

test("carries on a ray a load in the ray's direction, that the state times phi is, under the cap", () => {
  const column = columnOf();
  const capKip = axialCapKip(column);
  for (const [tilt, turn] of [[-60, 20], [-5, 70], [10, 45], [40, 10], [70, 60], [88, 30]] as const) {
    const ray = load(Math.sin(degrees(tilt)) * 100, Math.cos(degrees(tilt)) * Math.cos(degrees(turn)) * 1000, Math.cos(degrees(tilt)) * Math.sin(degrees(turn)) * 1000);
    const found = biaxialCapacity(column, ray);
    const at = `tilt ${tilt}, turn ${turn}`;
    const scale = resultantKipIn(found) / resultantKipIn(ray);
    expect(scale, at).toBeGreaterThan(0);
    expect(found.axialKip, at).toBeCloseTo(scale * ray.axialKip, 4);
    expect(found.depthMomentKipIn, at).toBeCloseTo(scale * ray.depthMomentKipIn, 4);
    expect(found.widthMomentKipIn, at).toBeCloseTo(scale * ray.widthMomentKipIn, 4);
    expect(found.axialKip).toBeLessThanOrEqual(capKip * (1 + 1e-12));
    expect(found.capped).toBe(found.state.design.axialKip > capKip);
    expect(biaxialUse(column, found)).toBeCloseTo(1, 8);
    expect(biaxialUse(column, load(found.axialKip / 4, found.depthMomentKipIn / 4, found.widthMomentKipIn / 4))).toBeCloseTo(0.25, 8);
  }
});

test("with one moment alone the axis lies square to it, and a square column carries as much whichever moment that is", () => {
  const column = columnOf();
  for (const axialKip of [-60, 0, 150, 400]) {
    const [deep, wide] = [biaxialCapacity(column, load(axialKip, 700, 0)), biaxialCapacity(column, load(axialKip, 0, 700))];
    expect(deep.state.angleRad).toBe(0);
    expect(wide.state.angleRad).toBe(Math.PI / 2);
    expect([wide.axialKip, wide.widthMomentKipIn, wide.depthMomentKipIn]).toEqual([expect.closeTo(deep.axialKip, 8), expect.closeTo(deep.depthMomentKipIn, 7), expect.closeTo(0, 7)]);
    // A trace of the other moment changes nothing that could be told.
    expect(biaxialUse(column, load(axialKip, 700, 1e-6))).toBeCloseTo(useOf(column, {axialKip, momentKipIn: 700}), 6);
  }
});

test("a load into the corner carries less than one that bends either way alone", () => {
  const column = columnOf();
  const both = biaxialCapacity(column, load(100, 500, 500));
  expect(resultantKipIn(both)).toBeLessThan(resultantKipIn(capacityAlong(column, {axialKip: 100, momentKipIn: 500 * Math.SQRT2})));
});

test("a column turned by a quarter carries the turned load", () => {
  const column = columnOf({depthIn: 28, count: 10, bar: bar("#9"), faces: "two"});
  const other = {...turned(column), bars: {...column.bars, places: column.bars.places.map(({xIn, yIn}) => ({xIn: yIn, yIn: xIn}))}};
  expect(biaxialUse(other, load(200, 900, 1800))).toBeCloseTo(biaxialUse(column, load(200, 1800, 900)), 9);
});

test("a load of one moment alone uses something, whichever of the three it is; no load uses nothing", () => {
  const column = columnOf();
  for (const one of [load(100, 0, 0), load(0, 500, 0), load(0, 0, 500)]) expect(biaxialUse(column, one)).toBeGreaterThan(0.05);
  expect(biaxialUse(column, load(0, 0, 0))).toBe(0);
});

test("signs of the moments do not matter; loads without direction or beyond number are refused", () => {
  const column = columnOf();
  expect(biaxialUse(column, load(200, -900, 500))).toBe(biaxialUse(column, load(200, 900, -500)));
  refused(() => biaxialCapacity(column, load(0, 0, 0)), {path: "depthMomentKipIn"});
  refused(() => biaxialCapacity(column, load(NaN, 1, 1)), {path: "axialKip"});
  refused(() => biaxialCapacity(column, load(1, NaN, 1)), {path: "depthMomentKipIn"});
  refused(() => biaxialCapacity(column, load(1, 1, Infinity)), {path: "widthMomentKipIn"});
});

test("a corner column with two equal moments by hand: the neutral axis at 45 degrees", () => {
  // 12 in square, 5,000 psi (beta1 0.80), four #7 (0.60 in2) at 1.5 + 0.375 + 0.4375 = 2.3125 in; c = 10 in from the corner.
  const column = columnOf({widthIn: 12, depthIn: 12, count: 4, bar: bar("#7")});
  const at = biaxialState(column, 10, Math.PI / 4);
  // Block 8 in deep: a triangle with legs of 8 sqrt(2) = 11.3137 in, below the side of 12: area 64 in2, centroid 3.7712 in.
  expect(at.block.areaIn2).toBeCloseTo(64, 9);
  expect(at.block.xIn).toBeCloseTo((8 * Math.SQRT2) / 3, 9);
  const concrete = 4.25 * 64;
  // Bars lie at 2.3125 sqrt(2) = 3.2704, twice at 12 / sqrt(2) = 8.4853, and at 9.6875 sqrt(2) = 13.7002 in.
  const [near, middle, far] = [2.3125 * Math.SQRT2, 12 / Math.SQRT2, 9.6875 * Math.SQRT2];
  // Strains 0.003 (d - c) / c; the middle bars' centers lie 0.4853 in outside the block, more than half their 0.875 in.
  const stress = (d: number) => Math.max(-60, Math.min(60, (87 * (d - 10)) / 10));
  expect(stress(near)).toBeCloseTo(-58.548, 3);
  expect(stress(middle)).toBeCloseTo(-13.178, 3);
  expect(stress(far)).toBeCloseTo(32.192, 3);
  const [n, m, f] = [0.6 * (stress(near) + 4.25), 0.6 * stress(middle), 0.6 * stress(far)];
  expect(at.axialKip).toBeCloseTo(concrete - n - 2 * m - f, 9);
  // Moments about the middle at 6 in; the two middle bars balance each other about either axis.
  const moment = concrete * (6 - (8 * Math.SQRT2) / 3) + n * (2.3125 - 6) + f * (9.6875 - 6);
  expect(at.depthMomentKipIn).toBeCloseTo(moment, 9);
  expect(at.widthMomentKipIn).toBeCloseTo(moment, 9);
  // Farthest bar: 0.003 x 3.7002 / 10 = 0.00111, below 0.002.
  expect(at.phi).toBe(0.65);
});

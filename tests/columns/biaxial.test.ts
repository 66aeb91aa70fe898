import {describe, expect, test} from "vitest";
import {biaxialCapacity, biaxialState, biaxialUse, resultantKipIn, type BiaxialLoad} from "../../lib/columns/biaxial.js";
import {fullyPressedIn} from "../../lib/columns/inclinedForces.js";
import {axialCapKip, capacityAlong, columnState, fullCompressionIn, squashLoadKip, utilisationOf} from "../../lib/columns/interaction.js";
import type {ColumnSection} from "../../lib/columns/section.js";
import {refused} from "../support/errors.js";
import {gridStrength} from "./gridFibres.js";
import {bar, columnOf} from "./sections.js";

const COLUMNS: Readonly<Record<string, ColumnSection>> = {
  "16 in, eight #8": columnOf(),
  "12 in, four #7": columnOf({widthIn: 12, depthIn: 12, count: 4, bar: bar("#7")}),
  "16 x 28 in, ten #9": columnOf({depthIn: 28, count: 10, bar: bar("#9"), strengthPsi: 6000}),
  "24 in, sixteen #11, 9 ksi": columnOf({widthIn: 24, depthIn: 24, count: 16, bar: bar("#11"), strengthPsi: 9000}),
};
const columns = Object.entries(COLUMNS);
const load = (axialKip: number, depthMomentKipIn: number, widthMomentKipIn: number): BiaxialLoad => ({axialKip, depthMomentKipIn, widthMomentKipIn});
/** The same column turned by a quarter. */
const turned = (column: ColumnSection): ColumnSection => columnOf({...column, widthIn: column.depthIn, depthIn: column.widthIn});
const degrees = (angle: number) => (angle * Math.PI) / 180;

describe.each(columns)("%s", (_, column) => {
  const grid = {...column, areaIn2: column.bar.areaIn2, places: column.bars.places};
  const squashKip = squashLoadKip(column);
  const capKip = axialCapKip(column);
  const bending = capacityAlong(column, {axialKip: 0, momentKipIn: 1}).momentKipIn;

  test("agrees with a grid of small squares to 0.6 % of squash load and of the moment at a sixth of its depth", () => {
    const most = squashKip * (column.depthIn / 6);
    for (const angle of [0, 10, 30, 45, 62, 85]) {
      for (const share of [0.15, 0.3, 0.45, 0.6, 0.8, 1]) {
        const c = share * fullyPressedIn(column, degrees(angle));
        const ours = biaxialState(column, c, degrees(angle));
        const theirs = gridStrength(grid, c, degrees(angle));
        expect(Math.abs(ours.axialKip - theirs.axialKip) / squashKip, `${angle} deg, c ${c}`).toBeLessThan(0.006);
        expect(Math.abs(ours.depthMomentKipIn - theirs.depthMomentKipIn) / most, `${angle} deg, c ${c}`).toBeLessThan(0.006);
        expect(Math.abs(ours.widthMomentKipIn - theirs.widthMomentKipIn) / most, `${angle} deg, c ${c}`).toBeLessThan(0.006);
        expect(ours.phi).toBeCloseTo(theirs.phi, 12);
      }
    }
  });

  test("is the interaction about one axis where the neutral axis lies square to it", () => {
    for (let i = 0; i <= 40; i++) {
      const c = (fullCompressionIn(column) * i) / 40;
      const one = columnState(column, c);
      const both = biaxialState(column, c, 0);
      expect(both.axialKip).toBeCloseTo(one.axialKip, 8);
      expect(both.depthMomentKipIn).toBeCloseTo(one.momentKipIn, 7);
      expect(both.widthMomentKipIn).toBeCloseTo(0, 7);
      expect(both.phi).toBe(one.phi);
    }
  });

  test("with one moment alone carries exactly what it carries about one axis, whichever that is", () => {
    for (const axialKip of [-60, 0, 20, 150, 400]) {
      for (const moment of [50, 700, 3000]) {
        expect(biaxialUse(column, load(axialKip, moment, 0))).toBe(utilisationOf(column, {axialKip, momentKipIn: moment}));
        const square = column.widthIn === column.depthIn;
        if (square) expect(biaxialUse(column, load(axialKip, 0, moment))).toBeCloseTo(utilisationOf(column, {axialKip, momentKipIn: moment}), 9);
      }
    }
    expect(biaxialUse(column, load(300, 0, 0))).toBe(utilisationOf(column, {axialKip: 300, momentKipIn: 0}));
    expect(biaxialUse(column, load(0, 0, 0))).toBe(0);
  });

  test("carries on every ray a load in the ray's direction, that the state times phi is, under the cap", () => {
    for (let tilt = -80; tilt <= 89; tilt += 13) {
      for (let turn = 0; turn <= 90; turn += 7.5) {
        const ray = load(Math.sin(degrees(tilt)) * 100, Math.cos(degrees(tilt)) * Math.cos(degrees(turn)) * 1000, Math.cos(degrees(tilt)) * Math.sin(degrees(turn)) * 1000);
        const found = biaxialCapacity(column, ray);
        const at = `tilt ${tilt}, turn ${turn}`;
        const size = Math.hypot(found.axialKip * 10, resultantKipIn(found));
        const asked = Math.hypot(ray.axialKip * 10, resultantKipIn(ray));
        expect(size, at).toBeGreaterThan(0);
        expect(Math.abs(found.axialKip / size - ray.axialKip / asked), at).toBeLessThan(1e-6);
        expect(Math.abs(found.depthMomentKipIn / size - ray.depthMomentKipIn / asked), at).toBeLessThan(1e-6);
        expect(Math.abs(found.widthMomentKipIn / size - ray.widthMomentKipIn / asked), at).toBeLessThan(1e-6);
        expect(found.axialKip).toBeLessThanOrEqual(capKip * (1 + 1e-12));
        expect(found.capped).toBe(found.state.design.axialKip > capKip);
        expect(biaxialUse(column, found)).toBeCloseTo(1, 8);
      }
    }
  });

  test("changes little where the load changes little: no place at which the search fails", () => {
    for (const axialKip of [-40, 1, 0.3 * capKip, 0.7 * capKip]) {
      let before: number | undefined;
      for (let turn = 0; turn <= 90; turn += 0.5) {
        const use = biaxialUse(column, load(axialKip, bending * Math.cos(degrees(turn)), bending * Math.sin(degrees(turn))));
        if (before !== undefined) expect(Math.abs(use / before - 1), `${axialKip} kip, ${turn} deg`).toBeLessThan(0.03);
        before = use;
      }
      const alone = utilisationOf(column, {axialKip, momentKipIn: bending});
      for (const trace of [1e-12, 1e-9, 1e-6, 1e-3]) expect(biaxialUse(column, load(axialKip, bending, trace * bending))).toBeCloseTo(alone, trace < 1e-3 ? 5 : 2);
    }
  });

  test("is no weaker with more steel in the same places", () => {
    const more = columnOf({...column, bar: {...column.bar, areaIn2: 1.1 * column.bar.areaIn2}});
    for (let turn = 5; turn < 90; turn += 17) {
      const asked = load(200, bending * Math.cos(degrees(turn)), bending * Math.sin(degrees(turn)));
      expect(biaxialUse(more, asked)).toBeLessThan(biaxialUse(column, asked));
    }
  });

  test("lies near the reciprocal of the loads about each axis where compression leads", () => {
    // Bresler's 1/P = 1/Px + 1/Py - 1/Po, for nominal strength; authors find it within some tenths either way.
    for (const [ex, ey] of [[0.15, 0.1], [0.2, 0.2], [0.1, 0.3]] as const) {
      const about = (depth: number, width: number) => biaxialCapacity(column, load(1, depth, width)).state.axialKip;
      const [px, py] = [about(ex * column.depthIn, 0), about(0, ey * column.widthIn)];
      const both = about(ex * column.depthIn, ey * column.widthIn);
      const reciprocal = 1 / (1 / px + 1 / py - 1 / squashKip);
      expect(both / reciprocal).toBeGreaterThan(0.85);
      expect(both / reciprocal).toBeLessThan(1.15);
      expect(both).toBeLessThan(Math.min(px, py));
    }
  });
});

test("a column turned by a quarter carries the turned load", () => {
  const column = columnOf({depthIn: 28, count: 10, bar: bar("#9"), faces: "two"});
  const other = {...turned(column), bars: {...column.bars, places: column.bars.places.map(({xIn, yIn}) => ({xIn: yIn, yIn: xIn}))}};
  expect(biaxialUse(other, load(200, 900, 1800))).toBeCloseTo(biaxialUse(column, load(200, 1800, 900)), 9);
});

test("signs of the moments do not matter; loads without direction or beyond number are refused", () => {
  const column = columnOf();
  expect(biaxialUse(column, load(200, -900, 500))).toBe(biaxialUse(column, load(200, 900, -500)));
  refused(() => biaxialCapacity(column, load(0, 0, 0)), {path: "momentKipIn"});
  refused(() => biaxialCapacity(column, load(NaN, 1, 1)), {path: "axialKip"});
  refused(() => biaxialCapacity(column, load(1, NaN, 1)), {path: "momentKipIn"});
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

import {describe, expect, test} from "vitest";
import {
  axialCapKip, capacityAlong, capacityAtEccentricity, columnState, fullCompressionIn, neutralAxisAtIn, pureTensionKip, squashLoadKip,
  utilisationOf, type AxialMoment,
} from "../../lib/columns/interaction.js";
import {interactionCurve} from "../../lib/columns/interactionCurve.js";
import type {ColumnSection} from "../../lib/columns/section.js";
import {refused} from "../support/errors.js";
import {fibreStrength} from "./fibres.js";
import {bar, columnOf} from "./sections.js";

const COLUMNS: Readonly<Record<string, ColumnSection>> = {
  "16 in, eight #8": columnOf(),
  "12 in, four #9, 4 ksi": columnOf({widthIn: 12, depthIn: 12, count: 4, bar: bar("#9"), strengthPsi: 4000}),
  "16 x 28 in, ten #9": columnOf({depthIn: 28, count: 10, bar: bar("#9"), strengthPsi: 6000}),
  "24 x 14 in, two faces": columnOf({widthIn: 24, depthIn: 14, count: 8, bar: bar("#9"), faces: "two"}),
  "24 in, sixteen #11, 9 ksi": columnOf({widthIn: 24, depthIn: 24, count: 16, bar: bar("#11"), strengthPsi: 9000}),
};
const columns = Object.entries(COLUMNS);

/** How far the points, in the order of their axial load, lie below their upper hull at most. */
function dentIn(points: readonly {axialKip: number; momentKipIn: number}[]): number {
  const over = (a: AxialMoment, b: AxialMoment, at: AxialMoment) =>
    a.momentKipIn + ((b.momentKipIn - a.momentKipIn) * (at.axialKip - a.axialKip)) / (b.axialKip - a.axialKip) - at.momentKipIn;
  let worst = 0;
  // Every chord over every point between its ends, by the slow way that needs no cleverness.
  for (let i = 0; i < points.length; i += 4) {
    for (let k = i + 2; k < points.length; k += 4) {
      for (let j = i + 1; j < k; j++) {
        const [a, at, b] = [points[i], points[j], points[k]] as [AxialMoment, AxialMoment, AxialMoment];
        if (b.axialKip - a.axialKip > 1e-6) worst = Math.max(worst, over(a, b, at));
      }
    }
  }
  return worst;
}

describe("the ends of the curve", () => {
  const column = columnOf();

  test("squash load is 0.85 f'c (Ag - Ast) + fy Ast, and the cap 0.65 x 0.80 of it", () => {
    // 4.25 (256 - 6.32) + 60 x 6.32 = 1,061.14 + 379.2 = 1,440.34 kip; 0.52 of it is 748.98.
    expect(squashLoadKip(column)).toBeCloseTo(1440.34, 2);
    expect(axialCapKip(column)).toBeCloseTo(748.977, 3);
    const end = columnState(column, fullCompressionIn(column));
    expect(end.axialKip).toBeCloseTo(1440.34, 2);
    expect(end.momentKipIn).toBeCloseTo(0, 6);
    expect(end.phi).toBe(0.65);
  });

  test("pure tension is fy Ast with phi 0.90", () => {
    expect(pureTensionKip(column)).toBeCloseTo(379.2, 9);
    const end = columnState(column, 0);
    expect(end).toMatchObject({axialKip: expect.closeTo(-379.2, 9), momentKipIn: expect.closeTo(0, 9), phi: 0.9, tensileStrain: undefined});
    expect(capacityAlong(column, {axialKip: -5, momentKipIn: 0}).axialKip).toBeCloseTo(-0.9 * 379.2, 9);
  });

  test("pure bending by hand: two faces, no displaced concrete where the upper bars are in tension", () => {
    // 16 in, 4 ksi, four #6 on two faces, 2.25 in to the centres: the upper bars lie below the block at this little steel.
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
    expect(ours.state.momentKipIn).toBeCloseTo(moment, 6);
    expect(ours.momentKipIn).toBeCloseTo(0.9 * moment, 6);
  });

  test("balanced point by hand", () => {
    // d = 13.625: c = 0.003 / (0.003 + 60/29000) d = 8.0641; block 0.8 c = 6.4513.
    const c = (0.003 / (0.003 + 60 / 29000)) * 13.625;
    const upper = Math.min(60, (87 * (c - 2.375)) / c);
    const middle = (87 * (c - 8)) / c;
    const P = 4.25 * 16 * 0.8 * c + 2.37 * (upper - 4.25) + 1.58 * middle - 2.37 * 60;
    const M = 4.25 * 16 * 0.8 * c * (8 - 0.4 * c) + 2.37 * (upper - 4.25) * 5.625 + 2.37 * 60 * 5.625;
    const {balanced} = interactionCurve(columnOf());
    expect(balanced.axialKip).toBeCloseTo(P, 8);
    expect(balanced.momentKipIn).toBeCloseTo(M, 7);
    // 21.2.2.1 lets 0.002 stand for 60/29,000: at 0.00207 phi has just begun to rise.
    expect(balanced.phi).toBeCloseTo(0.65 + (0.25 * (60 / 29000 - 0.002)) / 0.003, 9);
  });
});

describe.each(columns)("%s", (_, column) => {
  const fibres = {...column, areaIn2: column.bar.areaIn2, barDepthsIn: column.bars.places.map((place) => place.yIn)};
  const curve = interactionCurve(column, 200);
  const greatest = Math.max(...curve.nominal.map((state) => state.momentKipIn));

  test("agrees with thin strips to 0.5 % of squash load and greatest moment", () => {
    for (let i = 1; i <= 120; i++) {
      const c = (fullCompressionIn(column) * i) / 120;
      const ours = columnState(column, c);
      const theirs = fibreStrength(fibres, c);
      expect(Math.abs(ours.axialKip - theirs.axialKip) / curve.squashKip, `c ${c}`).toBeLessThan(0.005);
      expect(Math.abs(ours.momentKipIn - theirs.momentKipIn) / greatest, `c ${c}`).toBeLessThan(0.005);
      expect(ours.tensileStrain).toBeCloseTo(theirs.strain, 12);
    }
  });

  test("finds the point on a ray where the strips do, to 0.5 %", () => {
    for (const share of [0.05, 0.15, 0.3, 0.6, 1, 2, 5]) {
      const e = share * column.depthIn;
      // The strips are searched on their own for the neutral axis whose moment is e times the axial load.
      let low = 0.02 * column.depthIn;
      let high = 4 * column.depthIn;
      for (let i = 0; i < 40; i++) {
        const c = (low + high) / 2;
        const {axialKip, momentKipIn} = fibreStrength(fibres, c, 2000);
        if (momentKipIn < e * axialKip) high = c;
        else low = c;
      }
      const {state, axialKip, momentKipIn, capped} = capacityAtEccentricity(column, e);
      const theirs = fibreStrength(fibres, low, 2000);
      expect(Math.abs(state.axialKip / theirs.axialKip - 1), `e/h ${share}`).toBeLessThan(0.005);
      expect(momentKipIn).toBeCloseTo(e * axialKip, 4);
      expect(capped).toBe(state.phi * state.axialKip > curve.capKip);
    }
  });

  test("axial load only grows as the neutral axis goes deeper", () => {
    curve.nominal.slice(1).forEach((state, i) => {
      expect(state.axialKip).toBeGreaterThanOrEqual((curve.nominal[i] as {axialKip: number}).axialKip - 1e-9);
    });
  });

  test("the nominal curve is convex until the block covers the section, which is above the cap", () => {
    // Beyond that depth only the far bars' stress still changes, and the curve runs straight to the squash load, up to
    // 4 % of the greatest moment inside its hull. Below it a bar that the block swallows leaves a dent of less than 0.05 % of the greatest moment.
    const covered = column.depthIn / (column.zone.blockFactor[0] as number);
    expect(columnState(column, covered).axialKip).toBeGreaterThan(0.8 * curve.squashKip);
    const dent = dentIn(curve.nominal.filter((state) => state.neutralAxisIn <= covered));
    expect(dent / greatest).toBeLessThan(0.0005);
    expect(dentIn(curve.nominal) / greatest).toBeLessThan(0.04);
  });

  test("a symmetric section is as strong whichever way the moment turns", () => {
    expect(utilisationOf(column, {axialKip: 200, momentKipIn: -900})).toBe(utilisationOf(column, {axialKip: 200, momentKipIn: 900}));
    const mirrored = column.bars.rows.map((row) => column.depthIn - row.depthIn).reverse();
    mirrored.forEach((depth, i) => expect(depth).toBeCloseTo(column.bars.rows[i]?.depthIn ?? NaN, 10));
  });

  test("more steel of the same places never carries less", () => {
    const more = columnOf({...column, bar: {...column.bar, areaIn2: 1.1 * column.bar.areaIn2}});
    for (let angle = -80; angle < 90; angle += 10) {
      const ray = {axialKip: Math.sin((angle * Math.PI) / 180) * 1000, momentKipIn: Math.cos((angle * Math.PI) / 180) * 8000};
      expect(utilisationOf(more, ray), `angle ${angle}`).toBeLessThan(utilisationOf(column, ray));
    }
  });

  test("a point on the design curve is used in full, and half of it by half", () => {
    for (const {axialKip, momentKipIn} of curve.design) {
      expect(utilisationOf(column, {axialKip, momentKipIn})).toBeCloseTo(1, 6);
      expect(utilisationOf(column, {axialKip: axialKip / 2, momentKipIn: momentKipIn / 2})).toBeCloseTo(0.5, 6);
    }
  });

  test("the design curve ends level at the cap and every number is finite", () => {
    expect(curve.design.at(-1)).toEqual({axialKip: curve.capKip, momentKipIn: 0});
    expect(curve.design.at(-2)?.axialKip).toBeCloseTo(curve.capKip, 6);
    for (const point of [...curve.design, ...curve.nominal]) {
      expect(Number.isFinite(point.axialKip) && Number.isFinite(point.momentKipIn)).toBe(true);
      expect(point.axialKip).toBeLessThanOrEqual(curve.squashKip + 1e-6);
    }
    expect(curve.nominal[0]?.axialKip).toBeCloseTo(-curve.tensionKip, 9);
    expect(curve.tensionControlled.phi).toBeCloseTo(0.9, 12);
    expect(curve.compressionControlled.phi).toBeCloseTo(0.65, 12);
  });
});

describe("capacityAlong", () => {
  test("lies on its ray, however flat or steep", () => {
    for (const column of Object.values(COLUMNS)) {
      for (let power = -9; power <= 7; power += 0.5) {
        for (const axialKip of [1, -1]) {
          const {state} = capacityAlong(column, {axialKip, momentKipIn: 10 ** power});
          const size = Math.hypot(state.axialKip, state.momentKipIn) * Math.hypot(1, 10 ** power);
          expect(Math.abs(state.momentKipIn * axialKip - state.axialKip * 10 ** power) / size, `10^${power}`).toBeLessThan(1e-7);
          expect(Math.sign(state.axialKip * axialKip + state.momentKipIn * 10 ** power)).toBe(1);
        }
      }
    }
  });

  test("is capped where the eccentricity is small", () => {
    const column = columnOf();
    expect(capacityAtEccentricity(column, 0)).toMatchObject({capped: true, axialKip: axialCapKip(column), momentKipIn: 0});
    expect(capacityAtEccentricity(column, 0.5).momentKipIn).toBeCloseTo(0.5 * axialCapKip(column), 9);
    expect(capacityAtEccentricity(column, 6).capped).toBe(false);
  });

  test("uses phi of 0.90 from a net tensile strain of 0.005 on", () => {
    const column = columnOf();
    const {state} = capacityAlong(column, {axialKip: 1, momentKipIn: 1000});
    expect(state.tensileStrain).toBeGreaterThan(0.005);
    expect(state.phi).toBe(0.9);
    expect(neutralAxisAtIn(column, 0.005)).toBeCloseTo((3 / 8) * 13.625, 12);
  });

  test("refuses a load that has no direction, or is no number", () => {
    refused(() => capacityAlong(columnOf(), {axialKip: 0, momentKipIn: 0}), {path: "momentKipIn"});
    refused(() => capacityAlong(columnOf(), {axialKip: NaN, momentKipIn: 0}), {path: "axialKip"});
    refused(() => capacityAtEccentricity(columnOf(), -1), {path: "eccentricityIn"});
    expect(utilisationOf(columnOf(), {axialKip: 0, momentKipIn: 0})).toBe(0);
  });
});

import {describe, expect, test} from "vitest";
import type {Design} from "../../lib/design/design.js";
import {levelPlan, stallsOfRow, filledRow, type Stall} from "../../lib/parking/level.js";
import {lowestLevel} from "../../lib/parking/parking.js";
import type {PlanBox} from "../../lib/parking/site.js";
import {parkingOf, structure} from "./support.js";

type Point = readonly [number, number];

/** A row of numbers from 0 to 1 that is the same at every run (Park and Miller). */
function random(seed: number): () => number {
  let state = seed;
  return () => (state = (state * 48271) % 2147483647) / 2147483647;
}

/** Designs whose grid and stalls are drawn over their whole ranges. */
function drawn(next: () => number): Design {
  const of = <T>(...choices: T[]) => choices[Math.floor(next() * choices.length)] as T;
  const whole = (low: number, high: number) => low + Math.floor(next() * (high - low + 1));
  const base = structure();
  return {
    ...base,
    bay: {...base.bay, spanFt: whole(16, 90), beamSpanFt: whole(12, 60), baysAlong: whole(1, 6), baysAcross: whole(1, 4), floors: whole(1, 4)},
    column: {...base.column, sideIn: whole(12, 48)},
    edgeBeam: {...base.edgeBeam, kind: of("ledge", "pockets", "below"), webWidthIn: whole(8, 24)},
    parking: {
      place: of("below", "on", "both"), rows: of("along", "across"), baysPerModule: whole(1, 3), angle: of("90 two-way", "90 one-way", "75 one-way", "60 one-way"),
      stallWidthIn: whole(90, 120), stallLengthIn: whole(180, 240), aisleIn: whole(132, 300), setbackIn: of(0, 0, whole(0, 48)), doorIn: whole(0, 36), doorFreeIn: whole(0, 90),
      endFt: of(0, whole(0, 40)), clearIn: 84, vans: of("inside", "outside"), signDropIn: 6, drainInPerFt: 0.2,
      ramp: of("none", "beside", "within", "parked"), rampSlopePercent: whole(4, 20), rampBlendFt: whole(0, 12), rampRuns: of(1, 2),
    },
  };
}

/** How far two convex shapes overlap at the least along any of their sides' normals, in; 0 or less where they do not. */
function overlapIn(one: readonly Point[], other: readonly Point[]): number {
  let least = Infinity;
  for (const shape of [one, other]) {
    shape.forEach(([x, y], i) => {
      const [nextX, nextY] = shape[(i + 1) % shape.length] as Point;
      const length = Math.hypot(nextX - x, nextY - y);
      const [nx, ny] = [(nextY - y) / length, (x - nextX) / length];
      const range = (points: readonly Point[]) => points.map(([a, b]) => a * nx + b * ny);
      const [a, b] = [range(one), range(other)];
      least = Math.min(least, Math.min(Math.max(...a), Math.max(...b)) - Math.max(Math.min(...a), Math.min(...b)));
    });
  }
  return least;
}

const corners = ({x0, y0, x1, y1}: PlanBox): Point[] => [[x0, y0], [x1, y0], [x1, y1], [x0, y1]];
const near = (one: readonly Point[], other: readonly Point[]) => Math.abs((one[0] as Point)[0] - (other[0] as Point)[0]) < 700 && Math.abs((one[0] as Point)[1] - (other[0] as Point)[1]) < 700;
const HAIR_IN = 1e-5;

describe("2,000 designs drawn at random", () => {
  const next = random(20_231);
  test.each(Array.from({length: 20}, (_, i) => i))("hundred %i: stalls overlap neither each other nor columns nor walls, and as many stand there as are counted", () => {
    let [stalls, special] = [0, 0];
    for (let i = 0; i < 100; i++) {
      const design = drawn(next);
      const result = parkingOf(design);
      const placed = lowestLevel(design, result);
      const told = JSON.stringify({bay: design.bay, sideIn: design.column.sideIn, parking: design.parking});
      expect(placed.filter(({kind}) => kind !== "access aisle"), told).toHaveLength(result.lowest);
      expect(placed.filter(({kind}) => kind === "van" || kind === "accessible"), told).toHaveLength(result.accessible.placed);
      const {faces, columns} = result.level.site;
      for (const [k, one] of placed.entries()) {
        for (const [x, y] of one.corners) {
          expect(x > faces.x0 - HAIR_IN && x < faces.x1 + HAIR_IN && y > faces.y0 - HAIR_IN && y < faces.y1 + HAIR_IN, told).toBe(true);
        }
        for (const column of columns) if (near(one.corners, corners(column)) && overlapIn(one.corners, corners(column)) > HAIR_IN) expect.fail(`a stall stands in a column: ${told}`);
        for (const other of placed.slice(k + 1)) if (near(one.corners, other.corners) && overlapIn(one.corners, other.corners) > HAIR_IN) expect.fail(`two stalls overlap: ${told}`);
      }
      stalls += placed.length;
      special += result.accessible.placed;
    }
    expect(stalls).toBeGreaterThan(500);
    expect(special).toBeGreaterThan(20);
  });
});

describe("a row", () => {
  test("is counted as it is filled", () => {
    const next = random(7);
    let rows = 0;
    for (let i = 0; i < 300; i++) {
      const design = drawn(next);
      const level = levelPlan(design);
      for (const row of level.modules.flatMap((module) => module.rows)) {
        rows++;
        expect(stallsOfRow(level, row, design.parking.stallWidthIn)).toBe(filledRow(level, row, design.parking.stallWidthIn, []).placed.length);
      }
    }
    expect(rows).toBeGreaterThan(200);
  });

  test("holds no fewer stalls where its bays are longer, nor a level", () => {
    for (const angle of ["90 two-way", "75 one-way", "60 one-way"]) {
      let before = 0;
      for (let quarter = 4 * 16; quarter <= 4 * 50; quarter++) {
        const {perLevel} = parkingOf(structure({"bay.beamSpanFt": quarter / 4, "parking.angle": angle, "parking.aisleIn": 240}));
        expect(perLevel, `${angle}, ${quarter / 4} ft`).toBeGreaterThanOrEqual(before);
        before = perLevel;
      }
      expect(before).toBeGreaterThan(60);
    }
  });

  test("stands at right angles in rectangles of the stall's own sides, and leans by its angle", () => {
    const sides = ({corners: [a, b, , d]}: Stall) => [[a, b], [a, d]].map(([p, q]) => Math.hypot((p as Point)[0] - (q as Point)[0], (p as Point)[1] - (q as Point)[1]));
    for (const angle of ["90 two-way", "75 one-way", "60 one-way"] as const) {
      const design = structure({"parking.angle": angle, "parking.aisleIn": 216, "parking.vans": "inside"});
      for (const stall of lowestLevel(design, parkingOf(design))) {
        const [width, length] = sides(stall);
        expect(length).toBeCloseTo(216, 6);
        expect(width).toBeCloseTo({"car": 102, "accessible": 96, "van": 96, "access aisle": Math.round(width as number) === 60 ? 60 : 96}[stall.kind], 6);
      }
    }
  });
});

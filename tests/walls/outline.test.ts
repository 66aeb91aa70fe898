import fc from "fast-check";
import {describe, expect, test} from "vitest";
import {withValues} from "../../lib/design/edit.js";
import type {Design} from "../../lib/design/design.js";
import {SHARED_PLACES} from "../../lib/walls/outline.js";
import type {OutlinePiece, PieceKind, PlanPoint} from "../../lib/walls/pieces.js";
import {hold} from "../properties/arbitrary.js";
import {seed} from "../support/designs.js";
import {outlineOf} from "./outlineOf.js";
import {sharedIn2} from "./overlap.js";

/** Pairs of pieces that share a place, in in3 and by their kinds. */
function collisions(pieces: readonly OutlinePiece[], said: (one: PieceKind, other: PieceKind) => boolean): string[] {
  const found: string[] = [];
  const boxes = pieces.map((piece) => {
    const [xs, ys] = [piece.plan.map(([x]) => x), piece.plan.map(([, y]) => y)];
    return {piece, x0: Math.min(...xs), x1: Math.max(...xs), y0: Math.min(...ys), y1: Math.max(...ys)};
  }).sort((a, b) => a.x0 - b.x0);
  boxes.forEach((a, i) => {
    const one = a.piece;
    for (let j = i + 1; j < boxes.length; j++) {
      const b = boxes[j] as (typeof boxes)[number];
      // Whatever follows begins even farther along.
      if (b.x0 >= a.x1) break;
      const other = b.piece;
      const heightIn = Math.min(one.topIn, other.topIn) - Math.max(one.bottomIn, other.bottomIn);
      if (heightIn < 1e-6 || a.y1 <= b.y0 || b.y1 <= a.y0) continue;
      const sharedFt3 = (heightIn * sharedIn2(one.plan, other.plan)) / 1728;
      if (sharedFt3 > 1e-6 && !said(one.kind, other.kind)) found.push(`${one.kind} and ${other.kind} share ${sharedFt3.toFixed(3)} ft3 at ${JSON.stringify(one.plan)} and ${JSON.stringify(other.plan)}, ${one.bottomIn} to ${one.topIn} and ${other.bottomIn} to ${other.topIn}`);
    }
  });
  return found;
}
const isSaid = (one: PieceKind, other: PieceKind) => SHARED_PLACES.some(({kinds: [a, b]}) => (a === one && b === other) || (a === other && b === one));
/** A design's own pockets are the only place where its stems stand in a beam. */
const saidOf = (design: Design) => (one: PieceKind, other: PieceKind) =>
  isSaid(one, other) && (design.edgeBeam.kind === "pockets" || ![one, other].includes("edge beam"));

const steps = (least: number, most: number, step: number) => fc.integer({min: 0, max: Math.round((most - least) / step)}).map((count) => least + count * step);
/** Designs whose stories are high enough for their beams: what fails in height has a check of its own. */
const designs = fc.record({
  starter: fc.constantFrom("branch-library", "classroom-wing", "parking-structure", "records-store"),
  changes: fc.record({
    "bay.spanFt": steps(16, 60, 1), "bay.beamSpanFt": steps(16, 40, 0.5), "bay.baysAlong": fc.integer({min: 1, max: 2}), "bay.baysAcross": fc.integer({min: 1, max: 3}),
    "bay.floors": fc.integer({min: 1, max: 2}), "story.floorToFloorFt": steps(16, 24, 0.25), "story.finishIn": steps(0, 3, 0.25),
    "column.sideIn": steps(12, 36, 2), "column.roofDeadPsf": fc.constantFrom(0, 40, 80), "column.roofLivePsf": fc.constantFrom(0, 20),
    "edgeBeam.kind": fc.constantFrom("ledge", "pockets", "below"), "edgeBeam.webWidthIn": steps(8, 24, 1), "edgeBeam.upstandIn": steps(0, 48, 1), "edgeBeam.jointGapIn": steps(0.5, 2, 0.5),
    "girder.kind": fc.constantFrom("inverted tee", "rectangle"),
    "walls.shortSide": fc.constantFrom("not counted", "solid panel", "insulated panel", "spandrel", "cladding"),
    "walls.panelSupport": fc.constantFrom("footing", "columns"), "walls.panelThicknessIn": steps(4, 16, 0.5), "walls.panelWidthFt": steps(4, 16, 0.5), "walls.panelStories": fc.integer({min: 1, max: 3}),
    "walls.jointIn": steps(0.25, 2, 0.25), "walls.spandrelDepthIn": steps(24, 144, 4), "walls.spandrelThicknessIn": steps(4, 24, 1), "walls.spandrelUpstandIn": steps(0, 60, 4),
    "walls.spandrelPlace": fc.constantFrom("between", "outside"), "walls.spandrelPieces": fc.integer({min: 1, max: 4}), "walls.corner": fc.constantFrom("long", "short", "miter"),
    "walls.teeEnds": fc.constantFrom("not counted", "cladding", "concrete"), "walls.teeEndStripIn": steps(2, 12, 1), "walls.endFill": fc.constantFrom("piece", "strip"),
    "walls.parapetIn": steps(0, 96, 6), "walls.parapetThicknessIn": steps(3, 16, 1),
    "roof.given": fc.constantFrom("loads", "deck"), "roof.drainage": fc.constantFrom("bearing", "taper", "camber"), "roof.drainsAt": fc.constantFrom("inside", "edges"),
    "roof.slopeInPerFt": steps(0, 0.5, 0.125), "roof.upstandIn": steps(0, 48, 4), "roof.toppingIn": steps(0, 3, 1),
  }),
});

describe("the outline of a building", () => {
  test("has no two pieces in one place, unless it is said how they share it, in 2,000 random designs", () => {
    hold(2000, fc.property(designs, ({starter, changes}) => {
      const design = withValues(seed(starter), changes);
      expect(collisions(outlineOf(design), saidOf(design))).toEqual([]);
    }));
  });

  test("that would share one is found out: a spandrel of two stories, and a deck past the face of its beam", () => {
    const design = withValues(seed("branch-library"), {"walls.shortSide": "spandrel", "story.floorToFloorFt": 8, "walls.spandrelDepthIn": 120, "edgeBeam.ledgeDepthIn": 6, "edgeBeam.upstandIn": 0, "bay.floors": 2});
    expect(collisions(outlineOf(design), isSaid).join()).toContain("spandrel and spandrel");
    const library = outlineOf(seed("branch-library"));
    const shifted = library.map((piece) => (piece.kind === "deck" ? {...piece, plan: piece.plan.map(([x, y]): PlanPoint => [x, y - 2])} : piece));
    expect(collisions(library, isSaid)).toEqual([]);
    expect(collisions(shifted, saidOf(seed("branch-library"))).join()).toContain("deck and edge beam");
  });

  test("shows which parapet reaches a corner, or that both meet on its diagonal", () => {
    const parapets = (corner: string) => outlineOf(withValues(seed("branch-library"), {"walls.shortSide": "spandrel", "walls.parapetIn": 42, "walls.corner": corner, "walls.parapetThicknessIn": 6}))
      .filter(({kind}) => kind === "parapet");
    // The web of 14 in puts the parapet's outer face 7 in out of the column line, its inner face 1 in; the spandrel of 8 in stands 1 in clear of the deck's edge, so 9 in out.
    const reaches = (corner: string) => {
      const all = parapets(corner).flatMap(({plan}) => plan);
      const at = (x: number, y: number) => all.some(([px, py]) => Math.abs(px - x) < 1e-9 && Math.abs(py - y) < 1e-9);
      return [at(-9, -7), at(-9, -1), at(-1, -7), at(-1, -1)];
    };
    expect(reaches("miter")).toEqual([true, false, false, true]);
    expect(reaches("long")).toEqual([true, true, false, false]);
    expect(reaches("short")).toEqual([true, false, true, false]);
    // Plan area over the corner square of 8 by 6 in: all of it in every case, less a joint of 3/4 in where one butts the other.
    const covered = (corner: string) => {
      const top = parapets(corner).filter(({topIn}) => topIn > 12 * 30 + 30);
      return top.reduce((sum, {plan}) => sum + sharedIn2(plan, [[-9, -7], [-1, -7], [-1, -1], [-9, -1]]), 0);
    };
    expect(covered("miter")).toBeCloseTo(48, 9);
    expect(covered("long")).toBeCloseTo(48, 9);
    expect(covered("short")).toBeCloseTo(48, 9);
  });
});

test("two outlines share what both cover, whichever way round they are drawn", () => {
  const square: PlanPoint[] = [[0, 0], [4, 0], [4, 4], [0, 4]];
  expect(sharedIn2(square, [[2, 2], [6, 2], [6, 6], [2, 6]])).toBeCloseTo(4, 12);
  expect(sharedIn2(square, [[2, 6], [6, 6], [6, 2], [2, 2]])).toBeCloseTo(4, 12);
  // Half of the square lies below its diagonal.
  expect(sharedIn2([[0, 0], [4, 0], [4, 4]], square)).toBeCloseTo(8, 12);
  expect(sharedIn2(square, [[4, 0], [8, 0], [8, 4], [4, 4]])).toBeCloseTo(0, 12);
});

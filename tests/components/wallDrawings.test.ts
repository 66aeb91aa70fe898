import {describe, expect, test} from "vitest";
import {withValues} from "../../lib/design/edit.js";
import type {Design} from "../../lib/design/design.js";
import {evaluate} from "../../lib/evaluate.js";
import {feetAndInches} from "../../lib/units.js";
import {placeTexts} from "../../src/components/drawings/placement.js";
import {textSize} from "../../src/components/drawings/sheet.js";
import {edgeModel} from "../../src/pages/walls/edgeSection.js";
import {elevationRoom, stringTexts} from "../../src/pages/walls/sideElevation.js";
import {LEAST_SCALE, cornerModel, longSide, shortSide, shownBays, type DimensionString, type SideModel} from "../../src/pages/walls/wallModels.js";
import {catalog, seeds} from "../support/designs.js";

const WALLS: Readonly<Record<string, (design: Design) => Design>> = {
  "as it is": (design) => design,
  "lying panels": (design) => withValues(design, {"walls.shortSide": "insulated panel", "walls.panelSupport": "columns", "walls.parapetIn": 42}),
  "spandrels past the columns": (design) => withValues(design, {"walls.shortSide": "spandrel", "walls.spandrelPlace": "outside", "walls.spandrelDepthIn": 80, "walls.corner": "miter", "walls.parapetIn": 42}),
  "a beam below the deck": (design) => withValues(design, {"edgeBeam.kind": "below", "walls.teeEnds": "concrete", "walls.shortSide": "cladding"}),
  "nothing counted": (design) => withValues(design, {"walls.shortSide": "not counted", "walls.parapetIn": 0}),
};
const CASES = seeds.flatMap(({id, design}) => Object.entries(WALLS).map(([name, of]) => [`${id}, ${name}`, of(design)] as const));
const WIDTHS = [390, 640, 1100];

/** Whether a stop of a string is where something drawn begins or ends. */
const isEdge = (value: number, edges: readonly number[]) => edges.some((edge) => Math.abs(edge - value) < 1e-9);

describe.each(CASES)("the walls of %s", (_, design) => {
  const evaluation = evaluate(design, catalog);
  const sides = (roomPx: number): SideModel[] => [longSide(evaluation, roomPx), shortSide(evaluation, roomPx)];

  test("are dimensioned from edge to edge of what is drawn, and each text is the distance", () => {
    for (const widthPx of WIDTHS) {
      for (const side of sides(elevationRoom(widthPx).roomPx)) {
        const columns = side.faces.filter(({kind}) => kind === "column").map(({x0, x1}) => (x0 + x1) / 2);
        for (const at of side.bays.at) expect(isEdge(at, columns)).toBe(true);
        const heights = [0, side.topIn, ...side.faces.flatMap(({z0, z1}) => [z0, z1])];
        for (const at of side.parts.at) expect(isEdge(at, heights)).toBe(true);
        if (side.whole) expect([Math.min(...side.faces.map(({x0}) => x0)), Math.max(...side.faces.map(({x1}) => x1))].map((at, i) => Math.abs(at - (side.whole?.at[i] ?? NaN)) < 1e-9 || evaluation.walls.panels === undefined)).toEqual([true, true]);
        for (const string of [side.bays, side.levels, side.parts, ...(side.whole ? [side.whole] : [])]) {
          expect(stringTexts(string).map(({value}) => value)).toEqual(string.at.slice(1).map((end, i) => feetAndInches(end - (string.at[i] as number), 4)));
        }
      }
    }
  });

  test("have faces that lie within the side, each of some size, and none that is not a number", () => {
    for (const side of sides(900)) {
      for (const {x0, x1, z0, z1} of side.faces) {
        expect(Number.isFinite(x0 + x1 + z0 + z1)).toBe(true);
        expect(x0).toBeGreaterThanOrEqual(side.from - 1e-9);
        expect(x1).toBeLessThanOrEqual(side.to + 1e-9);
        expect(z1).toBeLessThanOrEqual(side.topIn + 1e-9);
        expect(z0).toBeGreaterThanOrEqual(0);
      }
    }
  });

  test("have texts that find room along their string, at the widths of a phone, a page and a wide screen", () => {
    for (const widthPx of WIDTHS) {
      const {roomPx} = elevationRoom(widthPx);
      const size = textSize(widthPx) * 1.15;
      for (const side of sides(roomPx)) {
        const scale = roomPx / (side.shownTo - side.from);
        for (const string of [side.levels, side.parts]) {
          const texts = stringTexts(string);
          const gaps = texts.map(({name}, i) => ({from: (side.topIn - (string.at[i + 1] as number)) * scale, to: (side.topIn - (string.at[i] as number)) * scale, size: size * (name ? 2 : 1)})).reverse();
          const places = placeTexts(gaps, -20, side.topIn * scale + 60, 3, 1);
          places.forEach((place, i) => {
            const before = places[i - 1];
            if (before) expect(place.center - before.center).toBeGreaterThanOrEqual(((gaps[i]?.size ?? 0) + (gaps[i - 1]?.size ?? 0)) / 2 - 1e-6);
          });
        }
      }
    }
  });

  test("show in corner and section what the walls are: wall, strip, parapet, beam", () => {
    const {planes, edge} = evaluation.walls;
    const corner = cornerModel(evaluation, "floor");
    const xs = corner.pieces.flatMap(({plan}) => plan.map(([x]) => x));
    for (const at of corner.below.at) if (at !== 0 && at !== corner.stemIn) expect(isEdge(at, xs)).toBe(true);
    const gap = (string: DimensionString, name: string) => {
      const i = string.names?.indexOf(name) ?? -1;
      return i < 0 ? undefined : (string.at[i + 1] as number) - (string.at[i] as number);
    };
    expect(gap(corner.below, "wall")).toBe(planes.endOuterIn > planes.endInnerIn ? planes.endOuterIn - planes.endInnerIn : undefined);
    expect(gap(corner.below, "strip")).toBe(edge.firstStripIn > 0 ? edge.firstStripIn : undefined);
    const section = edgeModel(evaluation, planes.roofed ? "roof" : "floor");
    const zs = [...section.beam.map(([, z]) => z), section.deck.bottomIn, section.deck.topIn + section.toppingIn, ...(section.parapet ? [section.parapet.z0, section.parapet.z1] : []), ...(section.strip ? [section.strip.z0, section.strip.z1] : [])];
    for (const at of section.left.at) expect(isEdge(at, zs)).toBe(true);
  });
});

test("as many bays are shown as a width has room for at the least scale, and one at least", () => {
  expect(shownBays(4, 360, 40, 1480 * LEAST_SCALE)).toBe(4);
  expect(shownBays(4, 360, 40, 1480 * LEAST_SCALE - 1)).toBe(3);
  expect(shownBays(4, 360, 40, 10)).toBe(1);
});

import DxfParser, {type ICircleEntity, type IDxf, type ILwpolylineEntity, type ITextEntity} from "dxf-parser";
import {describe, expect, it} from "vitest";
import {evaluate, type Evaluation} from "../../lib/evaluate.js";
import {placedStrands} from "../../lib/prestress/layout.js";
import {bayPlan} from "../../src/components/drawings/bayPlan.js";
import {beamSection} from "../../src/components/drawings/beamSection.js";
import {crossSection} from "../../src/components/drawings/crossSection.js";
import {elevation} from "../../src/components/drawings/elevation.js";
import {girderSection} from "../../src/components/drawings/girderSection.js";
import {storySection} from "../../src/components/drawings/storySection.js";
import {clipped, inside} from "../../src/components/share/dxf/clipped.js";
import {shapesOf} from "../../src/components/share/dxf/drawn.js";
import {dxfFile} from "../../src/components/share/dxf/dxfFile.js";
import {layerOf} from "../../src/components/share/dxf/layers.js";
import {pathRuns, type Point} from "../../src/components/share/dxf/pathPoints.js";
import {wrappedLetters} from "../../src/components/share/dxf/wrappedLetters.js";
import {girderPicture} from "../../src/components/shared/girderParts.js";
import {beamPicture, storyPicture} from "../../src/components/shared/pictures.js";
import {catalog, seeds} from "../support/designs.js";
import {onPaper, type PaperNode} from "../support/paper.js";

/** The coarsest that a length of the file may be off, in. */
const SIXTEENTH_IN = 1 / 16;

function fileOf(drawing: PaperNode): string {
  return dxfFile([shapesOf(drawing, Number(drawing.get("data-px-per-in")), () => 13)], ["For learning and preliminary sizing only."], "inch");
}

/** The file as an independent reader finds it. */
function read(drawing: PaperNode): IDxf {
  const found = new DxfParser().parseSync(fileOf(drawing));
  if (!found) throw new Error("no drawing");
  return found;
}

const linesOn = (file: IDxf, layer: string) => file.entities.filter((one): one is ILwpolylineEntity => one.type === "LWPOLYLINE" && one.layer === layer);
const circlesOn = (file: IDxf, layer: string) => file.entities.filter((one): one is ICircleEntity => one.type === "CIRCLE" && one.layer === layer);
const words = (file: IDxf) => file.entities.filter((one): one is ITextEntity => one.type === "TEXT").map(({text}) => text);
const extent = ({vertices}: ILwpolylineEntity): [number, number] => {
  const [xs, ys] = [vertices.map(({x}) => x), vertices.map(({y}) => y)];
  return [Math.max(...xs) - Math.min(...xs), Math.max(...ys) - Math.min(...ys)];
};
/** Whether a line of dimensions has a length, across or up. */
const dimensioned = (file: IDxf, lengthIn: number, axis: "x" | "y") => linesOn(file, "Dimension").some((one) => {
  const [x, y] = extent(one);
  const [along, across] = axis === "x" ? [x, y] : [y, x];
  return one.vertices.length === 2 && Math.abs(along - lengthIn) < SIXTEENTH_IN && across < 1e-6;
});

const WIDTHS = [340, 912] as const;
const CASES = seeds.map(({id, design}) => ({id, result: evaluate(design, catalog)}));

function deckSection({member, design}: Evaluation, widthPx: number): PaperNode {
  return onPaper(() => crossSection({shape: member.shape, strands: placedStrands(member.shape, member.layout, 0.5), toppingIn: design.deck.toppingIn, widthPx}));
}

describe("a drawing as DXF", () => {
  it("is in inches, with the caution and layers that say what they hold", () => {
    const file = read(deckSection(CASES[0]?.result as Evaluation, 912));
    expect(file.header["$INSUNITS"]).toBe(1);
    expect(words(file)).toContain("For learning and preliminary sizing only.");
    const layers = Object.keys((file.tables["layer"] as unknown as {layers: Record<string, unknown>}).layers);
    for (const name of ["Precast concrete", "Topping", "Strand", "Dimension", "Text"]) expect(layers).toContain(name);
    // Names that any reader of such files takes.
    for (const name of layers) expect(name).toMatch(/^[A-Za-z0-9 ]+$/);
    for (const {layer} of file.entities) expect(layers).toContain(layer);
  });

  it("is in millimeters for a reader of SI", () => {
    const {member} = CASES[0]?.result as Evaluation;
    const drawing = deckSection(CASES[0]?.result as Evaluation, 912);
    const file = new DxfParser().parseSync(dxfFile([shapesOf(drawing, Number(drawing.get("data-px-per-in")) / 25.4, () => 13)], [], "millimeter")) as IDxf;
    expect([file.header["$INSUNITS"], file.header["$MEASUREMENT"]]).toEqual([4, 1]);
    expect(linesOn(file, "Precast concrete").map(extent).some(([x, y]) => Math.abs(x - 25.4 * member.shape.widthIn) < 2 && Math.abs(y - 25.4 * member.shape.depthIn) < 2)).toBe(true);
  });

  it.each(CASES)("of $id's deck has its outline, its strands and its dimensions at their true size", ({result}) => {
    const {member, design} = result;
    for (const widthPx of WIDTHS) {
      const file = read(deckSection(result, widthPx));
      const outline = linesOn(file, "Precast concrete").map(extent).find(([x]) => Math.abs(x - member.shape.widthIn) < SIXTEENTH_IN);
      expect(outline?.[1]).toBeCloseTo(member.shape.depthIn, 1);
      expect(Math.abs((outline?.[1] ?? 0) - member.shape.depthIn)).toBeLessThan(SIXTEENTH_IN);
      expect(dimensioned(file, member.shape.depthIn + design.deck.toppingIn, "y")).toBe(true);
      const strands = placedStrands(member.shape, member.layout, 0.5);
      const drawn = circlesOn(file, "Strand");
      expect(drawn).toHaveLength(strands.length);
      // Heights of strands above each other, wherever the drawing stands on its sheet.
      const [of, on] = [strands.map(({yIn}) => yIn), drawn.map(({center}) => center.y)].map((all) => all.sort((a, b) => a - b)) as [number[], number[]];
      of.forEach((y, i) => expect(Math.abs((on[i] as number) - (on[0] as number) - (y - (of[0] as number)))).toBeLessThan(SIXTEENTH_IN));
      if (design.deck.toppingIn > 0) expect(linesOn(file, "Topping").map(extent).some(([, y]) => Math.abs(y - design.deck.toppingIn) < SIXTEENTH_IN)).toBe(true);
    }
  });

  it.each(CASES)("of $id's floor has the spans of its bays, on a phone's width too", ({result}) => {
    const {bay} = result.design;
    for (const widthPx of WIDTHS) {
      const file = read(onPaper(() => bayPlan({...bay, memberWidthFt: result.member.shape.widthIn / 12, columnSideIn: 24, widthPx})));
      expect(dimensioned(file, 12 * bay.spanFt, "y")).toBe(true);
      expect(dimensioned(file, 12 * bay.beamSpanFt, "x")).toBe(true);
    }
  });

  it.each(CASES)("of $id's beams and story has their depths and heights", ({result}) => {
    const {edgeBeam, girder, story} = result;
    const beam = read(onPaper(() => beamSection({...beamPicture(result), widthPx: 912})));
    expect(dimensioned(beam, edgeBeam.depthIn, "y")).toBe(true);
    if (girder) expect(dimensioned(read(onPaper(() => girderSection({...girderPicture(result, girder), widthPx: 912}))), girder.depthIn, "y")).toBe(true);
    expect(dimensioned(read(onPaper(() => storySection({...storyPicture(result), widthPx: 912}))), story.floorToFloorIn, "y")).toBe(true);
  });

  it("of a member's elevation has its span, and is none where heights are drawn larger", () => {
    const draw = (widthPx: number, depthIn: number) => onPaper(() => elevation({spanFt: 30, depthIn, toppingIn: 2, strandPath: [{share: 0, heightIn: 4}, {share: 1, heightIn: 4}], widthPx}));
    expect(dimensioned(read(draw(912, 24)), 360, "x")).toBe(true);
    expect(draw(340, 10).get("data-px-per-in")).toBeUndefined();
  });
});

describe("lines of a drawing", () => {
  it("are read from path data, lower case and upper, closed and open", () => {
    expect(pathRuns("M1 2L3 4H5V6Zm1 1h2v2")).toEqual([
      {points: [[1, 2], [3, 4], [5, 4], [5, 6]], closed: true}, {points: [[2, 3], [4, 3], [4, 5]], closed: false},
    ]);
    expect(pathRuns("M0 0 10 0 10 10")).toEqual([{points: [[0, 0], [10, 0], [10, 10]], closed: false}]);
    expect(pathRuns("M1-2L.5.5")).toEqual([{points: [[1, -2], [0.5, 0.5]], closed: false}]);
    expect(() => pathRuns("M0 0T5 5")).toThrow(/cannot be written/);
    expect(() => pathRuns("M0 0L5")).toThrow(/cannot be written/);
  });

  it("that are arcs stay on their circle, whichever way they run", () => {
    // By hand: of the two circles of radius 10 through both ends one has its center in the origin, the other in (10, -10); y runs down, and a sweep of 1 with the clock.
    const ways = [["0 0", [0, 0], [7.0711, -7.0711]], ["1 1", [0, 0], [-7.0711, 7.0711]], ["0 1", [10, -10], [2.9289, -2.9289]], ["1 0", [10, -10], [17.0711, -17.0711]]] as const;
    for (const [flags, [cx, cy], [x, y]] of ways) {
      const points = pathRuns(`M10 0A10 10 0 ${flags} 0 -10`)[0]?.points as Point[];
      for (const [px, py] of points) expect(Math.hypot(px - cx, py - cy)).toBeCloseTo(10, 9);
      expect(points[8]?.[0]).toBeCloseTo(x, 3);
      expect(points[8]?.[1]).toBeCloseTo(y, 3);
      expect(points.at(-1)).toEqual([0, -10]);
    }
    expect(pathRuns("M0 0C0 10 10 10 10 0")[0]?.points[8]?.[1]).toBeCloseTo(7.5, 9);
  });

  it("are cut where they leave their frame, and left whole where they do not", () => {
    const area = pathRuns("M0 0H10V10H0Z");
    expect([inside([5, 5], area), inside([15, 5], area)]).toEqual([true, false]);
    const box = {points: [[2, 2], [4, 2], [4, 4], [2, 4]] as Point[], closed: true};
    expect(clipped(box, area)).toEqual([box]);
    expect(clipped({points: [[-5, 5], [15, 5]], closed: false}, area)).toEqual([{points: [[0, 5], [10, 5]], closed: false}]);
    expect(clipped({points: [[20, 20], [30, 30]], closed: false}, area)).toEqual([]);
    const half = clipped({points: [[5, 2], [15, 2], [15, 8], [5, 8]], closed: true}, area);
    expect(half.every(({closed, points}) => !closed && points.every(([x]) => x <= 10))).toBe(true);
  });

  it("belong to the layer of what they show", () => {
    expect(layerOf("concrete-plant is-cut", "deck", undefined).name).toBe("Precast concrete");
    expect(layerOf("line-hidden", "", undefined).name).toBe("Hidden");
    expect(layerOf("line-thin extension", "", layerOf("dimension", "", undefined)).name).toBe("Dimension");
    expect(layerOf("something new", "", undefined).name).toBe("Lines");
  });

  it("of words are no longer than asked", () => {
    expect(wrappedLetters("one two three", 7)).toEqual(["one two", "three"]);
    expect(wrappedLetters("", 7)).toEqual([]);
  });
});

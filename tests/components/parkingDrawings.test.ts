import {describe, expect, test} from "vitest";
import {evaluate, type Evaluation} from "../../lib/evaluate.js";
import type {Heights} from "../../lib/parking/heights.js";
import {lowestLevel} from "../../lib/parking/parking.js";
import type {ParkingResult} from "../../lib/parking/result.js";
import {parkingPlan} from "../../src/pages/parking/parkingPlan.js";
import {parkingSection} from "../../src/pages/parking/parkingSection.js";
import {rampProfile} from "../../src/pages/parking/rampProfile.js";
import {structure} from "../parking/support.js";
import {catalog} from "../support/designs.js";
import {cornersOf, dimensionsOf, inchesOf, onPaper, sizeOf, type DrawnDimension, type PaperNode} from "../support/paper.js";

const BOX = {"services.airCfmPerFt2": 0.5, "services.servedFt2": 43200, "services.mainWidthIn": 40, "services.mainDepthIn": 10, "air.run": "box", "air.place": "across", "air.acrossFt": 30};
const CASES: Readonly<Record<string, Readonly<Record<string, unknown>>>> = {
  "the starter": {},
  "heads set back": {"parking.setbackIn": 14, "bay.spanFt": 62.5},
  "rows across": {"parking.rows": "across", "bay.beamSpanFt": 60, "bay.baysAlong": 3},
  "stalls at 60 degrees": {"parking.angle": "60 one-way"},
  "one bay, a girder below nothing": {"bay.baysAcross": 1, "parking.ramp": "within", "parking.rampRuns": 2},
  "one row alone": {"bay.spanFt": 45.25, "girder.kind": "rectangle", "girder.depthIn": 28},
  "beams below the deck, cars beneath": {"edgeBeam.kind": "below", "parking.place": "below", "parking.rampBlendFt": 0},
  "a box around ducts": BOX,
  "a box, rows across": {...BOX, "parking.rows": "across"},
  "a parked ramp": {"parking.ramp": "parked", "parking.rampSlopePercent": 6, "parking.rampRuns": 2, "bay.baysAlong": 8},
};
const WIDTHS = [342, 640, 1180];
const parts = (drawing: PaperNode, part: string) => drawing.all().filter((node) => node.get("data-part") === part);
const named = (dimensions: readonly DrawnDimension[], name: string) => dimensions.filter((one) => one.name === name).map(({value}) => inchesOf(value));

/** Every dimension's text is the length that is drawn, to half of the fraction that it is written to and the paper's hundredth of a pixel. */
function expectTrue(dimensions: readonly DrawnDimension[], scale: number, denominator: number): void {
  expect(dimensions.length).toBeGreaterThan(0);
  for (const {px, value} of dimensions) expect(Math.abs(px / scale - inchesOf(value)), value).toBeLessThanOrEqual(0.5 / denominator + 0.03 / scale);
}

describe.each(Object.entries(CASES))("the drawings of parking: %s", (_, changes) => {
  const found = (): Evaluation & {parking: ParkingResult} => evaluate(structure(changes), catalog) as Evaluation & {parking: ParkingResult};

  test("the plan's dimensions are the lengths drawn, and those the lengths computed", () => {
    const {design, parking} = found();
    const stalls = lowestLevel(design, parking);
    for (const widthPx of WIDTHS) {
      const plan = onPaper(() => parkingPlan({design, level: parking.level, stalls, widthPx}));
      // From the first column to the farthest along the building, and each as wide as it is long.
      const columns = parts(plan, "column");
      const lefts = [...new Set(columns.map((node) => Math.min(...cornersOf(node).map(([x]) => x))))];
      const scale = (Math.max(...lefts) - Math.min(...lefts)) / (12 * design.bay.beamSpanFt * (lefts.length - 1));
      for (const node of columns) for (const px of sizeOf(node)) expect(px / scale).toBeCloseTo(design.column.sideIn, 0);
      const dimensions = dimensionsOf(plan);
      expectTrue(dimensions, scale, 2);
      const [module] = parking.level.modules;
      expect(named(dimensions, "module")[0]).toBeCloseTo(module?.clearIn ?? NaN, 0);
      expect(named(dimensions, "aisle")[0]).toBeCloseTo((module?.aisle.toIn ?? NaN) - (module?.aisle.fromIn ?? NaN), 0);
      // Bays from column line to column line.
      const bayIn = 12 * (design.parking.rows === "across" ? design.bay.spanFt : design.bay.beamSpanFt);
      expect(dimensions.filter(({name, value}) => name === undefined && Math.abs(inchesOf(value) - bayIn) < 0.5).length).toBeGreaterThan(0);
      // Stalls of full width as they are marked, corner by corner.
      for (const stall of parts(plan, "stall").slice(-3)) {
        const [a, b, c] = cornersOf(stall) as [[number, number], [number, number], [number, number]];
        const sides = [Math.hypot(b[0] - a[0], b[1] - a[1]), Math.hypot(c[0] - b[0], c[1] - b[1])].map((px) => px / scale);
        expect(sides[0]).toBeCloseTo(design.parking.stallWidthIn, 0);
        expect(sides[1]).toBeCloseTo(design.parking.stallLengthIn, 0);
      }
    }
  });

  test("the section's dimensions are the heights drawn, and those the heights over the cars", () => {
    const evaluation = found();
    const {design, parking, story} = evaluation;
    const heights = parking.heights as Heights;
    for (const widthPx of WIDTHS) {
      const section = onPaper(() => parkingSection(evaluation, parking, heights, widthPx));
      const [wanted] = parts(section, "wanted").map((node) => cornersOf(node)[0]?.[1] as number);
      const person = section.all();
      expect(person.length).toBeGreaterThan(20);
      const dimensions = dimensionsOf(section);
      // The floor is where every height begins: the lowest line of the first string.
      const floorPx = Math.max(...section.all().filter((node) => node.get("class") === "line-cut").flatMap((node) => cornersOf(node).map(([, y]) => y)));
      const scale = (floorPx - (wanted as number)) / design.parking.clearIn;
      expectTrue(dimensions, scale, 4);
      if (widthPx >= 520) expect(named(dimensions, "story")).toEqual([story.floorToFloorIn]);
      const clear = (over: string) => heights.places.find((place) => place.over === over)?.clearIn;
      for (const [name, over] of [["deck", "deck"], ["girder", "girder"]] as const) for (const valueIn of named(dimensions, name)) expect(valueIn).toBeCloseTo(clear(over) ?? NaN, 1);
      for (const valueIn of named(dimensions, "ledge")) expect(valueIn).toBeCloseTo(story.clearUnderLedgeIn, 1);
      // What hangs is drawn down to where the table says that it ends.
      for (const [part, over] of [["box", "box"], ["signs", "signs"]] as const) {
        const drawn = parts(section, part).filter(({name}) => name === "path");
        expect(drawn.length > 0).toBe(clear(over) !== undefined);
        for (const one of drawn) expect((floorPx - Math.max(...cornersOf(one).map(([, y]) => y))) / scale).toBeCloseTo(clear(over) ?? NaN, 0);
      }
      const decks = parts(section, "deck").flatMap((node) => cornersOf(node).map(([, y]) => y));
      expect((floorPx - Math.max(...decks)) / scale).toBeCloseTo(story.clearUnderDeckIn, 0);
      expect((floorPx - Math.min(...decks)) / scale).toBeCloseTo(story.floorToFloorIn - story.finishIn - design.deck.toppingIn, 0);
    }
  });

  test("the ramp's dimensions are the lengths drawn, and those of its run", () => {
    const {parking: {ramp}} = found();
    if (!ramp) throw new Error("no ramp");
    for (const widthPx of WIDTHS) {
      const profile = onPaper(() => rampProfile(ramp, widthPx));
      const points = cornersOf(parts(profile, "ramp")[0] as PaperNode);
      const [foot, head] = [points[1], points[4]] as [[number, number], [number, number]];
      const scale = (head[0] - foot[0]) / ramp.lengthIn;
      expect((foot[1] - head[1]) / scale).toBeCloseTo(ramp.riseIn, 0);
      const dimensions = dimensionsOf(profile);
      expectTrue(dimensions, scale, 2);
      expect(named(dimensions, "rise")[0]).toBeCloseTo(ramp.riseIn, 0);
      const along = dimensions.filter(({axis}) => axis === "x").map(({value}) => inchesOf(value));
      // Its parts one after another, and below them all of it.
      expect(along.slice(0, -1).reduce((sum, one) => sum + one, 0)).toBeCloseTo(ramp.lengthIn, -0.5);
      expect(along.at(-1)).toBeCloseTo(ramp.lengthIn, 0);
    }
  });
});

test("a text that is not the length drawn would be found", () => {
  expect(() => expectTrue([{axis: "x", px: 100, value: "8'-4\"", name: undefined}], 1, 2)).not.toThrow();
  expect(() => expectTrue([{axis: "x", px: 100, value: "8'-5\"", name: undefined}], 1, 2)).toThrow();
  expect([inchesOf("60'-0\""), inchesOf("8 1/2\""), inchesOf("3/4\""), inchesOf("0'-4 1/4\""), inchesOf("7\"")]).toEqual([720, 8.5, 0.75, 4.25, 7]);
});

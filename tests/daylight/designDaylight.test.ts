import {describe, expect, test} from "vitest";
import {convergence} from "../../lib/daylight/convergence.js";
import {changedRoom, curveValues, daylightCurve, deskCurve} from "../../lib/daylight/curves.js";
import {daylight} from "../../lib/daylight/daylight.js";
import {daylightInput, designDaylight, roomDepthLimit} from "../../lib/daylight/designDaylight.js";
import {depthLimit} from "../../lib/daylight/rules.js";
import {schemeViews} from "../../lib/daylight/schemeViews.js";
import {withValues} from "../../lib/design/edit.js";
import {evaluate} from "../../lib/evaluate.js";
import {storyStack} from "../../lib/story/stack.js";
import {catalog, seed, seeds} from "../support/designs.js";
import {refused} from "../support/errors.js";

const LIBRARY = seed("branch-library");
const PLAIN = withValues(LIBRARY, {
  "bay.spanFt": 40, "bay.beamSpanFt": 30, "bay.baysAlong": 4, "bay.baysAcross": 2, "daylight.sides": "two", "daylight.revealIn": 6, "daylight.obstructionDeg": 10,
  "story.floorToFloorFt": 14 + 8 / 12, "story.finishIn": 0, "story.frameIn": 2, "edgeBeam.ledgeDepthIn": 8, "edgeBeam.upstandIn": 30, "story.ceiling": "flush", "edgeBeam.kind": "ledge",
});
const STACK = storyStack(PLAIN, 34);

describe("designDaylight", () => {
  test("takes the room from window to window, and the glass from the story less its frames", () => {
    expect(daylightInput(PLAIN, STACK)).toMatchObject({
      depthFt: 80, widthFt: 120, ceilingIn: expect.closeTo(134, 9),
      window: {sillIn: 32, headIn: expect.closeTo(132, 9), widthFt: 120, revealIn: 6, obstruction: {angleDeg: 10}, maintenanceShare: 0.9},
      opposite: {sillIn: 32},
    });
  });

  test("ends at the first line of beams with windows on one side, or where a room is stated", () => {
    const one = withValues(PLAIN, {"daylight.sides": "one", "daylight.obstructionDeg": 0});
    const input = daylightInput(one, STACK);
    expect(input?.depthFt).toBe(40);
    expect(input?.opposite).toBeUndefined();
    expect(input?.window.obstruction).toBeUndefined();
    expect(daylightInput(one, STACK, {depthFt: 24, widthFt: 30})).toMatchObject({depthFt: 24, widthFt: 30, window: {widthFt: 30}});
    refused(() => designDaylight(one, STACK, true, {depthFt: 2, widthFt: 30}), {path: "depthFt"});
  });

  test("holds the room to the rule of its depth before its windows are made, as high as they are or higher", () => {
    const limit = ({ceilingIn, window, opposite, ...room}: NonNullable<ReturnType<typeof daylightInput>>, higherIn: number) => {
      const raised = ({headIn}: {readonly headIn: number}) => ({headIn: headIn + higherIn});
      return depthLimit({...room, ceilingIn: ceilingIn + higherIn, window: raised(window), opposite: opposite && raised(opposite)});
    };
    // The second is wider and deeper than the computation goes.
    for (const bay of [{}, {"bay.spanFt": 150, "bay.baysAcross": 3, "bay.beamSpanFt": 80, "bay.baysAlong": 30}]) for (const sides of ["one", "two"]) {
      const design = withValues(PLAIN, {...bay, "daylight.sides": sides});
      const input = daylightInput(design, STACK) as NonNullable<ReturnType<typeof daylightInput>>;
      for (const higherIn of [0, 9]) expect(roomDepthLimit(design, STACK, higherIn)).toEqual(limit(input, higherIn));
      expect(roomDepthLimit(design, STACK)).toEqual(daylight(input).depthLimit);
    }
    expect(roomDepthLimit(PLAIN, {...STACK, glassIn: 0}, 12)).toBeUndefined();
  });

  test("is the daylight of that room, and leaves the upstand's check to the beam", () => {
    const lit = designDaylight(PLAIN, STACK);
    expect(lit?.result).toEqual(daylight(lit?.input as NonNullable<typeof lit>["input"]));
    expect(lit?.checks.map(({id}) => id)).toEqual(["average daylight", "room depth", "sky seen"]);
    expect(designDaylight(PLAIN, STACK, false)?.checks).toEqual([]);
  });

  test("is none without glass, or without a room", () => {
    expect(designDaylight(PLAIN, storyStack(withValues(PLAIN, {"edgeBeam.upstandIn": 60, "story.floorToFloorFt": 8}), 34))).toBeUndefined();
    expect(designDaylight(PLAIN, storyStack(withValues(PLAIN, {"edgeBeam.upstandIn": 0, "story.floorToFloorFt": 8}), 66))).toBeUndefined();
  });

  test("says where a floor is deeper than it reckons", () => {
    const deep = withValues(PLAIN, {"bay.spanFt": 60, "bay.baysAcross": 6});
    expect(designDaylight(deep, STACK)?.checks.find(({id}) => id === "daylight depth")).toMatchObject({verdict: "out of range", demand: 360});
    expect(designDaylight(deep, STACK)?.input.depthFt).toBe(300);
  });

  test("bears the extremes of the fields", () => {
    for (const bay of [{"bay.spanFt": 10, "bay.beamSpanFt": 8, "bay.baysAlong": 1, "bay.baysAcross": 1}, {"bay.spanFt": 150, "bay.beamSpanFt": 80, "bay.baysAlong": 30, "bay.baysAcross": 10}]) {
      for (const light of [0, 1]) {
        const design = withValues(PLAIN, {...bay, "daylight.revealIn": 36 * light, "daylight.obstructionDeg": 60 * light, "daylight.frameShare": 0.6 * light, "daylight.floorShare": 0.9 * light, "daylight.wallShare": 0.9 * light, "daylight.ceilingShare": 0.9 * light});
        const result = designDaylight(design, STACK)?.result;
        expect(Number.isFinite(result?.meanPercent)).toBe(true);
      }
    }
  });

  test("is asked of rooms with people, not of cars or of stores alone", () => {
    expect(evaluate(seed("parking-structure"), catalog).daylight?.checks).toEqual([]);
    expect(evaluate(LIBRARY, catalog).daylight?.checks.length).toBeGreaterThan(0);
  });
});

describe("curves", () => {
  const input = daylightInput(PLAIN, STACK) as NonNullable<ReturnType<typeof daylightInput>>;

  test.each(["depth", "head", "sill"] as const)("over the %s pass through the design itself, within a hundredth", (parameter) => {
    const own = {depth: input.depthFt, head: input.window.headIn, sill: input.window.sillIn}[parameter];
    const [point] = daylightCurve(input, parameter, [own]);
    const {shares, average} = daylight(input);
    for (const key of ["good", "partial", "little", "dark"] as const) expect(Math.abs((point?.shares[key] as number) - shares[key])).toBeLessThan(0.01);
    expect(point?.averagePercent).toBeCloseTo(average.averagePercent, 9);
  });

  test("fall with depth and sill, rise with the head", () => {
    const ends = (parameter: "depth" | "head" | "sill") => {
      const curve = daylightCurve(input, parameter, curveValues(input, parameter, 5));
      return [curve[0]?.shares.good as number, curve.at(-1)?.shares.good as number];
    };
    for (const parameter of ["depth", "sill"] as const) {
      const [first, last] = ends(parameter);
      expect(last).toBeLessThan(first as number);
    }
    const [low, high] = ends("head");
    expect(high).toBeGreaterThan(low as number);
  });

  test("leave out rooms without glass", () => {
    expect(changedRoom(input, "sill", 200)).toBeUndefined();
    expect(daylightCurve(input, "head", [20, 120])).toHaveLength(1);
  });

  test("show that a desk loses more with each further inch of sill above 36 than below it", () => {
    const [a, b, c, d] = deskCurve(input, [30, 36, 42, 48]).map(({directPercent}) => directPercent) as [number, number, number, number];
    expect(a - b).toBeGreaterThan(0);
    expect(b - c).toBeGreaterThan(a - b);
    expect(c - d).toBeGreaterThan(0);
  });
});

describe("schemeViews", () => {
  test.each(seeds)("leave a seated eye less sky under a beam below the deck, in $id", ({design}) => {
    const [beside, below] = schemeViews(design, 34);
    expect(below.eye.viewDeg).toBeLessThan(beside.eye.viewDeg);
    expect(below.eye.skyDeg).toBeLessThanOrEqual(beside.eye.skyDeg);
    expect(below.groundFromFt).toBe(beside.groundFromFt);
  });

  test("measure the angle at the eye", () => {
    // The head at 132 in, the eye at 48 in and 126 in from the glass: atan(84/126) = 33.69 degrees; less 10 of skyline.
    const [beside] = schemeViews(PLAIN, 34);
    expect(beside.eye.highDeg).toBeCloseTo(33.690068, 5);
    expect(beside.eye.skyDeg).toBeCloseTo(23.690068, 5);
  });
});

describe("convergence", () => {
  test.each(seeds)("of $id is far below what a chart shows", ({design}) => {
    const lit = evaluate(design, catalog).daylight;
    if (!lit) throw new Error("every starter design has glass");
    const {skyShare, floorPercent} = convergence(lit.input);
    expect(skyShare).toBeLessThan(0.001);
    // A strip is 2.5 hundredths of the depth; deep dark floors come nearest to half of one.
    expect(floorPercent).toBeLessThan(1.25);
    expect(skyShare).toBeGreaterThan(0);
  });
});

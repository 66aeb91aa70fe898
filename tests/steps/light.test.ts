import {describe, expect, it} from "vitest";
import {withValues} from "../../lib/design/edit.js";
import {evaluate, type Evaluation} from "../../lib/evaluate.js";
import {averageDaylightWorking, noSkyWorking, skyComponentWorking, skyWorkingDistanceFt} from "../../lib/steps/daylight.js";
import {ductWorking, storyWorking} from "../../lib/steps/story.js";
import {catalog, seed, seeds} from "../support/designs.js";
import {checkWorking} from "./recomputed.js";

const WORKS = [averageDaylightWorking, noSkyWorking, skyComponentWorking, ductWorking, storyWorking];
const variants: Readonly<Record<string, Readonly<Record<string, unknown>>>> = {
  "as it is": {},
  "one side, open country, high sill": {"daylight.sides": "one", "daylight.obstructionDeg": 0, "edgeBeam.upstandIn": 48},
  "two sides, tall skyline": {"daylight.sides": "two", "daylight.obstructionDeg": 55, "story.ceiling": "below"},
  "the ceiling at the window's head": {"story.ceiling": "head", "services.airCfmPerFt2": 1},
  "no glass": {"edgeBeam.upstandIn": 60, "story.floorToFloorFt": 8},
  "a window below the desk": {"edgeBeam.upstandIn": 0, "story.ceiling": "none", "story.floorToFloorFt": 8, "edgeBeam.ledgeDepthIn": 24},
};

describe("the worked steps of story and daylight say what the code computed", () => {
  for (const {id, design} of seeds) for (const [name, changes] of Object.entries(variants)) {
    it(`${id}, ${name}`, () => {
      const results = evaluate(withValues(design, changes), catalog);
      const steps = WORKS.reduce((count, working) => count + checkWorking(working(results)), 0);
      expect(steps).toBeGreaterThanOrEqual(results.daylight ? 6 : 2);
    });
  }

  it("finds no sky where the skyline stands above the head", () => {
    const library = seeds.find(({id}) => id === "branch-library")?.design;
    if (!library) throw new Error("no library");
    const hidden = skyComponentWorking(evaluate(withValues(library, {"daylight.obstructionDeg": 60}), catalog));
    expect(hidden.steps.at(-1)?.result).toBe(0);
  });

  it("sees the sky below a duct that hangs beside the window, also one at the wall itself", () => {
    const library = seeds.find(({id}) => id === "branch-library")?.design;
    const evaluation = library && evaluate(withValues(library, {"daylight.obstructionDeg": 0}), catalog);
    if (!evaluation?.daylight) throw new Error("no daylight");
    const {daylight} = evaluation;
    const below = (awayIn: number, footIn: number) => skyComponentWorking({...evaluation, daylight: {...daylight, input: {...daylight.input, window: {...daylight.input.window, beams: [{awayIn, footIn}]}}}});
    const slope = (working: ReturnType<typeof below>) => working.steps.find(({symbol}) => symbol === "t_b");
    for (const awayIn of [0, 6]) {
      const working = below(awayIn, 72);
      expect(checkWorking(working)).toBe(5);
      const x = 12 * (slope(working)?.values["x"]?.value as number);
      // From the desk, 30 in up, to the duct's foot 42 in above it.
      expect(slope(working)?.result).toBeCloseTo(42 / (x - awayIn), 9);
      expect(working.steps.at(-1)?.result).toBeGreaterThan(0);
    }
    // One that hangs higher than the head hides nothing, one that hangs to the desk all.
    expect(slope(below(0, 400))?.values["h_h"]?.value).toBe(daylight.input.window.headIn);
    expect(below(0, 30).steps).toEqual([]);
  });
});

describe("what the library's windows see of the sky", () => {
  type Lit = NonNullable<Evaluation["daylight"]>["input"];
  /** The library, lit otherwise: windows 31.75 to 130.75 in above the floor on one side, with a reveal of 6 in and a skyline of 10 degrees. */
  function lit(window: Partial<Lit["window"]> = {}, changes: Partial<Lit> = {}): Evaluation {
    const evaluation = evaluate(withValues(seed("branch-library"), {"daylight.sides": "one"}), catalog);
    if (!evaluation.daylight) throw new Error("no daylight");
    const {input} = evaluation.daylight;
    return {...evaluation, daylight: {...evaluation.daylight, input: {...input, window: {...input.window, sillIn: 31.75, headIn: 130.75, revealIn: 6, obstruction: {angleDeg: 10}, ...window}, ...changes}}};
  }
  const tangent = (degrees: number) => Math.tan((degrees * Math.PI) / 180);
  const only = (evaluation: Evaluation) => {
    const working = noSkyWorking(evaluation);
    expect(checkWorking(working)).toBe(1);
    return working.steps[0];
  };

  it("ends behind that girder of two whose foot cuts it off first", () => {
    // One 10 ft away hangs high, 140 in above the floor; one 20 ft away hangs 24 in above the desks: 240 + 24/tan 10.
    const step = only(lit({beams: [{awayIn: 120, footIn: 140}, {awayIn: 240, footIn: 54}]}));
    expect(step?.result).toBeCloseTo((240 + 24 / tangent(10)) / 12, 9);
    expect([step?.values["a"]?.value, step?.symbol]).toEqual([240, "x_n"]);
  });

  it("ends behind the sill where that stands higher than the girder's foot, and the skyline is low", () => {
    // A sill of 48 in, a foot of 40 in 20 ft away, a skyline of 1 degree: the line over the sill falls 8 in in 240, so 10 in in 300.
    const step = only(lit({sillIn: 48, obstruction: {angleDeg: 1}, beams: [{awayIn: 240, footIn: 40}]}));
    expect(step?.result).toBeCloseTo((240 + 300) / 12, 9);
    expect(Object.keys(step?.values ?? {})).toContain("h_s");
  });

  it("ends at the girder itself where that hangs down to the desks", () => {
    for (const footIn of [24, 30]) {
      const step = only(lit({beams: [{awayIn: 240, footIn}]}));
      expect([step?.expression, step?.result]).toEqual(["a / 12", 20]);
    }
    expect(only(lit({beams: [{awayIn: 240, footIn: 31}]}))?.expression).not.toBe("a / 12");
  });

  it("is worked out half-way into the part that one window lights, before any girder but one beside the window", () => {
    const at = (beams: readonly {awayIn: number; footIn: number}[] | undefined, changes: Partial<Lit> = {}) => {
      const {daylight} = lit({...(beams ? {beams} : {})}, {depthFt: 60, ...changes});
      return daylight && skyWorkingDistanceFt(daylight.input);
    };
    const {daylight} = lit();
    expect([at(undefined), at(undefined, {opposite: daylight?.input.window as Lit["window"]})]).toEqual([30, 15]);
    const beam = (awayIn: number) => ({awayIn, footIn: 100});
    expect([at([beam(240)]), at([beam(500)]), at([beam(11)]), at([beam(12)]), at([beam(300), beam(240)])]).toEqual([20, 30, 30, 1, 20]);
  });

  it("is bounded by the lower of two ducts beside the window, and by no girder at or beyond the place", () => {
    const slope = (beams: readonly {awayIn: number; footIn: number}[]) => {
      const working = skyComponentWorking(lit({beams}, {depthFt: 60}));
      expect(checkWorking(working)).toBe(5);
      return working.steps[0];
    };
    for (const beams of [[{awayIn: 4, footIn: 100}, {awayIn: 4, footIn: 80}], [{awayIn: 4, footIn: 80}, {awayIn: 4, footIn: 100}]]) {
      expect(slope(beams)?.result).toBeCloseTo(50 / (360 - 4), 9);
    }
    // A girder 12 in from the wall, or far into the room, is none beside the window: the head bounds the sky.
    for (const awayIn of [240, 500]) expect(slope([{awayIn, footIn: 40}])?.label).toBe("slope up to the head");
    const near = skyComponentWorking(lit({beams: [{awayIn: 12, footIn: 40}]}, {depthFt: 60}));
    expect([near.steps[0]?.label, near.title]).toEqual(["slope up to the head", "Sky component 1.0 ft from one window"]);
  });

  it("is hidden from below by skyline or sill, whichever stands higher, and passes the glass aslant", () => {
    const hidden = (window: Partial<Lit["window"]>) => {
      const working = skyComponentWorking(lit(window, {depthFt: 60}));
      expect(checkWorking(working)).toBe(5);
      // Glass passes less of what comes aslant, yet most of it.
      const slant = working.steps[4]?.values["g"]?.value ?? NaN;
      expect(slant).toBeGreaterThan(0.7);
      expect(slant).toBeLessThan(1);
      // The band's true length leaves a little less than an endless one, both in percent.
      const own = Number(/leaves ([\d.]+) %/.exec(working.steps[4]?.note ?? "")?.[1]);
      expect(own).toBeLessThanOrEqual((working.steps[4]?.result ?? NaN) + 0.005);
      expect(own).toBeGreaterThan(0.5 * (working.steps[4]?.result ?? NaN));
      return working.steps[2]?.values["a"]?.value;
    };
    expect(hidden({})).toBeCloseTo((10 * Math.PI) / 180, 9);
    // A sill 18 in above the desks, 30 ft away; one below them hides nothing.
    expect(hidden({sillIn: 48, obstruction: {angleDeg: 1}})).toBeCloseTo(Math.atan(18 / 360), 9);
    expect(hidden({sillIn: 12, obstruction: {angleDeg: 0}})).toBe(0);
  });
});

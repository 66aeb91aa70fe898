import {describe, expect, test} from "vitest";
import {VAN_CLEAR_IN} from "../../lib/parking/accessible.js";
import {parkingChecks} from "../../lib/parking/parkingChecks.js";
import {BREAK_PERCENT, DRIVEN_SLOPE_PERCENT, PARKED_SLOPE_PERCENT} from "../../lib/parking/ramp.js";
import type {ParkingRamp, ParkingResult} from "../../lib/parking/result.js";
import {siteOf} from "../../lib/parking/site.js";
import {parked, structure} from "./support.js";

/** A check of the starter with changes, and with parts of what was found otherwise. */
function check(id: string, changes: Readonly<Record<string, unknown>> = {}, found: (of: ParkingResult) => Partial<ParkingResult> = () => ({})) {
  const of = parked(changes);
  return parkingChecks(structure(changes), {...of, ...found(of)}).find((one) => one.id === id);
}

describe("what just meets a limit of parking", () => {
  const ramp = (changes: Partial<ParkingRamp>) => ({ramp: of}: ParkingResult) => ({ramp: {...of as ParkingRamp, ...changes}});

  test("is as good as any: sizes, falls and slopes are no loads", () => {
    const met: readonly (ReturnType<typeof check>)[] = [
      check("parking height", {"parking.clearIn": 86}),
      check("van height", {"parking.vans": "inside"}, ({heights}) => ({heights: heights && {...heights, vanIn: VAN_CLEAR_IN}})),
      check("parking module", {}, ({level}) => ({level: {...level, modules: level.modules.map((one) => ({...one, clearIn: one.neededIn}))}})),
      check("parking aisle", {}, ({level}) => ({level: {...level, modules: level.modules.map((one) => ({...one, clearAisleIn: structure().parking.aisleIn}))}})),
      check("usual aisle", {"parking.aisleIn": 288}), check("stall width", {"parking.stallWidthIn": 102}), check("parking stalls", {}, () => ({perLevel: 1})),
      check("accessible stalls", {}, ({accessible}) => ({accessible: {...accessible, placed: accessible.inside}})),
      check("ramp slope", {"parking.ramp": "within"}, ramp({slopePercent: DRIVEN_SLOPE_PERCENT})), check("ramp slope", {"parking.ramp": "parked"}, ramp({slopePercent: PARKED_SLOPE_PERCENT})),
      check("ramp break", {"parking.ramp": "within"}, ramp({breakPercent: BREAK_PERCENT})), check("ramp length", {"parking.ramp": "within"}, ramp({lengthIn: 2000, roomIn: 2000})),
      check("parking drainage", {"parking.drainInPerFt": 0.125}), check("accessible slope", {"parking.drainInPerFt": 0.25}), check("vehicle barrier", {"edgeBeam.upstandIn": 33}),
    ];
    for (const one of met) expect([one?.id, one?.verdict]).toEqual([one?.id, "ok"]);
    expect(met.map((one) => one?.utilization)).toEqual(met.map(() => expect.closeTo(1, 9)));
  });
});

describe("what mends parking", () => {
  const fails = (id: string, changes: Readonly<Record<string, unknown>> = {}, found?: (of: ParkingResult) => Partial<ParkingResult>) => check(id, changes, found)?.message;

  test("hangs on how the rows run and on what stands in the aisle", () => {
    const narrow = ({level}: ParkingResult) => ({level: {...level, modules: level.modules.map((one) => ({...one, clearAisleIn: 10}))}});
    expect(fails("parking aisle", {}, narrow)).toMatch(/: a longer span, or a narrower aisle\.$/);
    expect(fails("parking aisle", {"parking.rows": "across", "bay.beamSpanFt": 60, "parking.baysPerModule": 1}, narrow)).toMatch(/: columns farther apart, or a narrower aisle\.$/);
    expect(fails("parking aisle", {"parking.baysPerModule": 2}, narrow)).toMatch(/: one bay to a module\.$/);
    const none = () => ({perLevel: 0});
    expect(fails("parking stalls", {"parking.endFt": 10}, none)).toMatch(/: columns farther apart, narrower stalls, or less kept free at the ends\.$/);
    expect(fails("parking stalls", {"parking.endFt": 0}, none)).toMatch(/: columns farther apart, or narrower stalls\.$/);
    expect(fails("parking stalls", {"bay.spanFt": 20, "parking.aisleIn": 240})).toMatch(/^Not even one row fits beside its aisle: a longer span, or a narrower aisle\.$/);
  });

  test("hangs on the ramp and on the edge", () => {
    const ramp = (changes: Partial<ParkingRamp>) => ({ramp: of}: ParkingResult) => ({ramp: {...of as ParkingRamp, ...changes}});
    expect(fails("ramp slope", {"parking.ramp": "within"}, ramp({slopePercent: 18}))).toContain("frightens drivers");
    expect(fails("ramp slope", {"parking.ramp": "parked"}, ramp({slopePercent: 7}))).toContain("may not park");
    expect(fails("ramp break", {"parking.ramp": "within", "parking.rampBlendFt": 0}, ramp({breakPercent: 12}))).toMatch(/: a blend at each end, or a gentler slope\.$/);
    expect(fails("ramp break", {"parking.ramp": "within", "parking.rampBlendFt": 10}, ramp({breakPercent: 12}))).toMatch(/: a gentler slope\.$/);
    expect(fails("ramp length", {"parking.ramp": "within", "parking.rampRuns": 1}, ramp({lengthIn: 2400, roomIn: 2160}))).toBe("The ramp is 20'-0\" too long: two runs to a story, a steeper slope, or a longer building.");
    expect(fails("ramp length", {"parking.ramp": "within", "parking.rampRuns": 2}, ramp({lengthIn: 2400, roomIn: 2160}))).toMatch(/too long: a steeper slope/);
    expect(fails("accessible stalls", {"parking.ramp": "beside"}, ({accessible}) => ({accessible: {...accessible, placed: 0}}))).toMatch(/: columns farther apart\.$/);
    expect(fails("accessible stalls", {"parking.ramp": "parked"}, ({accessible}) => ({accessible: {...accessible, placed: 0}}))).toMatch(/: a ramp for driving alone\.$/);
    expect(fails("vehicle barrier", {"edgeBeam.upstandIn": 20})).toMatch(/: a higher upstand\.$/);
    expect(fails("vehicle barrier", {"edgeBeam.kind": "below"})).toMatch(/: a beam beside the deck, with an upstand\.$/);
  });

  test("is asked of nothing that is not there: no heights under the open sky, no vans outside, no ramp, no barrier on the ground", () => {
    expect(check("parking height", {"parking.place": "on", "bay.floors": 1})).toBeUndefined();
    expect(check("van height", {"parking.vans": "outside"})).toBeUndefined();
    expect(check("van height", {"parking.vans": "inside"}, ({accessible}) => ({accessible: {...accessible, vans: 0}}))).toBeUndefined();
    expect(check("ramp slope", {"parking.ramp": "none"})).toBeUndefined();
    expect(check("vehicle barrier", {"parking.place": "below"})).toBeUndefined();
    expect(check("accessible stalls", {}, () => ({perLevel: 0}))).toBeUndefined();
  });

  test("is told of the narrowest module and the narrowest aisle, wherever they are", () => {
    for (const widths of [[700, 710, 720], [720, 710, 700], [710, 700, 720]]) {
      const uneven = ({level}: ParkingResult) => ({level: {...level, modules: widths.flatMap((clearIn) => level.modules.slice(0, 1).map((one) => ({...one, clearIn, clearAisleIn: clearIn - 432})))}});
      expect(check("parking module", {}, uneven)).toMatchObject({capacity: 700, demand: 720, verdict: "fails", message: expect.stringContaining("lack 1'-8\"")});
      expect(check("parking aisle", {}, uneven)).toMatchObject({capacity: 268, verdict: "fails"});
    }
  });

  test("may be less set back where this makes up for just what is lacking, 20 in of two heads by 10 in each", () => {
    const lacking = (lackIn: number) => ({level}: ParkingResult) => ({level: {...level, modules: level.modules.map((one) => ({...one, clearIn: one.neededIn - lackIn}))}});
    expect(fails("parking module", {"parking.setbackIn": 10}, lacking(20))).toContain("stalls set back less");
    expect(fails("parking module", {"parking.setbackIn": 10}, lacking(20.1))).not.toContain("stalls set back less");
  });

  test("counts in feet and inches from zero up, and what a van lacks in inches", () => {
    const left = ({heights}: ParkingResult) => ({heights: heights && {...heights, least: {...heights.least, clearIn: 8}, vanIn: 86}});
    expect(fails("parking height", {}, left)).toMatch(/^Under .* 0'-8" is left/);
    expect(fails("van height", {"parking.vans": "inside"}, left)).toContain("a van lacks 12.0 in ");
    expect(fails("ramp length", {"parking.ramp": "within"}, ({ramp: of}) => ({ramp: {...of as ParkingRamp, lengthIn: 2168, roomIn: 2160}}))).toMatch(/^The ramp is 0'-8" too long/);
  });

  test("is told by checks that each have a name, a clause and words, whatever is not there", () => {
    const cases: readonly (readonly [changes: Readonly<Record<string, unknown>>, missing: string])[] = [
      [{"bay.floors": 1}, "parking height"], [{"parking.place": "below"}, "vehicle barrier"], [{"parking.ramp": "none"}, "ramp slope"], [{"parking.vans": "outside"}, "van height"],
      [{"bay.spanFt": 20, "parking.aisleIn": 240}, "parking aisle"], [{"bay.spanFt": 20, "parking.aisleIn": 240}, "accessible stalls"], [{"parking.baysPerModule": 3}, "parking module"],
    ];
    for (const [changes, missing] of cases) {
      const {checks} = parked(changes);
      expect(checks.map(({id}) => id)).not.toContain(missing);
      for (const {id, clause, message} of checks) expect([typeof id, typeof clause, typeof message]).toEqual(["string", "string", "string"]);
    }
  });

  test("names the code's 7 ft as the code's, and more as stated", () => {
    expect(check("parking height", {"parking.clearIn": 84})?.clause).toBe("IBC 2021 406.2.2");
    expect(check("parking height", {"parking.clearIn": 85})?.clause).toContain("stated");
  });
});

test("columns of the edges stand in line with their beams, those between on their own line", () => {
  // 3 bays of 60 ft would be usual; here 2: lines at 0, 720 and 1,440 in. A ledge of 8 in and a joint of 1 in put the beam's face 4 1/2 in beyond the bearings, its middle half a web farther.
  const design = structure();
  const {columns, faces, linesX, linesY} = siteOf(design);
  const {ledgeProjectionIn, jointGapIn, webWidthIn} = design.edgeBeam;
  const half = design.column.sideIn / 2;
  const outIn = (ledgeProjectionIn + jointGapIn) / 2;
  expect(linesY).toEqual([0, 720, 1440]);
  const middles = [...new Set(columns.map(({y0, y1}) => (y0 + y1) / 2))];
  expect(middles).toEqual([-outIn - webWidthIn / 2, 720, 1440 + outIn + webWidthIn / 2]);
  expect(columns).toHaveLength(3 * linesX.length);
  expect(faces).toEqual({x0: half, x1: (linesX.at(-1) as number) - half, y0: -outIn, y1: 1440 + outIn});
});

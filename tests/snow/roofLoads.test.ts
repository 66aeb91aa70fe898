import {describe, expect, test} from "vitest";
import {occupancyOf} from "../../lib/catalog.js";
import type {Design} from "../../lib/design/design.js";
import type {RoomLoad} from "../../lib/loads/floorLoads.js";
import {withValues} from "../../lib/design/edit.js";
import {fallPlan} from "../../lib/roof/fallPlan.js";
import {wallsAboveRoofFt} from "../../lib/roof/wallsAbove.js";
import {roofLoadOn, roofLoads, type RoofShape} from "../../lib/snow/roofLoads.js";
import {snowPlaces, type SnowPlace} from "../../lib/snow/elementSnow.js";
import {refused} from "../support/errors.js";
import {catalog, seed} from "../support/designs.js";
import {snowAtPsf} from "./snowAt.js";

/** A roof of 120 by 80 ft, two spans of 40 ft across and four beams of 30 ft along, tees of 10 ft, 30 psf on the ground. */
const design = (changes: Readonly<Record<string, unknown>> = {}): Design => withValues(seed("branch-library"), {
  "snow.groundPsf": 30, "snow.terrain": "B", "snow.exposure": "partly", "snow.thermal": "heated", "snow.risk": "II", "snow.use": "ordinary", "snow.higherFt": 0,
  "snow.rainStaticIn": 2, "snow.rainHydraulicIn": 1, "walls.parapetIn": 0, "roof.given": "loads", "roof.drainage": "taper", "roof.slopeInPerFt": 0.25, "roof.drainsAt": "inside", "column.roofDeadPsf": 80, ...changes,
});
const SHAPE: RoofShape = {memberWidthFt: 10};
const of = (changes: Readonly<Record<string, unknown>> = {}, shape = SHAPE) => roofLoads(design(changes), catalog, shape);
const STEP = {"snow.higherFt": 12, "snow.higherLengthFt": 80, "snow.higherSide": "long", "snow.higherApartFt": 0};

describe("a roof without parapets", () => {
  test("carries the same snow everywhere", () => {
    for (const {area, snow, loads} of of().elements) {
      expect(snow).toMatchObject({case: "balanced", psf: 21});
      expect(loads.S).toBe(21);
      for (const place of [snow.worst, ...snowPlaces(design().bay, 10, of().surface)(area.element)]) expect([place.momentPsf, place.shearPsf, place.sides]).toEqual([expect.closeTo(21, 9), expect.closeTo(21, 9), []]);
    }
  });

  test("takes the minimum, or rain on snow, where either is more", () => {
    // 20 psf on the ground: 14 + 5 = 19 psf below the minimum of 20; sheltered and cold 0.7 x 1.2 x 1.2 x 20 + 5 = 25.16.
    const cold = {"snow.groundPsf": 20, "snow.exposure": "sheltered", "snow.thermal": "unheated"};
    expect(roofLoadOn(of({"snow.groundPsf": 20}, {...SHAPE, riseInPerFt: 0}), "deck member").snow).toMatchObject({case: "minimum", psf: 20});
    expect(roofLoadOn(of(cold, {...SHAPE, riseInPerFt: 0}), "deck member").snow).toMatchObject({case: "rain on snow", psf: expect.closeTo(25.16, 9) as number});
    // 40 ft from the drains to the ridge: 0.8 deg, which 1/4 in per ft exceeds; 60 ft: 1.2 deg, which it does not.
    expect(roofLoadOn(of(cold), "deck member").snow).toMatchObject({case: "balanced", psf: expect.closeTo(20.16, 9) as number});
    expect(roofLoadOn(of(cold, {...SHAPE, eaveToRidgeFt: 60}), "deck member").snow.case).toBe("rain on snow");
    expect(roofLoadOn(of({...cold, "roof.drainage": "camber"}), "deck member").snow.case).toBe("rain on snow");
  });

  test("without snow has its live load by area: 16 psf on 400 ft2, 12 on beams and columns but the corner's 300 ft2", () => {
    const bare = of({"snow.groundPsf": 0});
    expect(bare.elements.map(({area, loads}) => [area.element, Number(loads.Lr.toFixed(6)), loads.S])).toEqual([
      ["deck member", 16, 0], ["edge beam", 12, 0], ["interior beam", 12, 0], ["interior column", 12, 0], ["edge column", 12, 0], ["girder end column", 12, 0], ["corner column", 18, 0],
    ]);
    // 5.2 x 3 = 15.6 psf of water is more than 12 psf, less than 16 psf.
    expect(roofLoadOn(bare, "deck member").governing.combination.name).toBe("1.2D + 1.6Lr");
    expect(roofLoadOn(bare, "edge beam").governing.combination.name).toBe("1.2D + 1.6R");
    expect(roofLoadOn(bare, "edge beam").governing.psf).toBeCloseTo(1.2 * 80 + 1.6 * 15.6, 9);
  });
});

test("a roof beside a parapet has no case of snow where none falls", () => {
  for (const {snow} of of({"snow.groundPsf": 0, "walls.parapetIn": 48}).elements) expect(snow).toMatchObject({case: "none", psf: 0, momentPsf: 0, shearPsf: 0});
});

test("a roof too steep for even snow is told by the clause of its shape: over a ridge where it drains at its edges, into a valley where inside", () => {
  const clause = (drainsAt: string) => of({"roof.drainsAt": drainsAt, "roof.slopeInPerFt": 2}).checks.find(({id}) => id === "unbalanced snow")?.clause;
  expect([clause("edges"), clause("inside")]).toEqual(["ASCE 7-16 7.6.1", "ASCE 7-16 7.6.3"]);
});

test("a drift that brings an element less than rain in the snow does is not its case", () => {
  // 20 psf on cold, sheltered ground: 20.16 psf and 5 of rain. Of the drift's triangle the deck brings a girder only its far reaction.
  const roof = of({...STEP, "snow.groundPsf": 20, "snow.exposure": "sheltered", "snow.thermal": "unheated"}, {...SHAPE, riseInPerFt: 0});
  const {snow: inside} = roofLoadOn(roof, "interior beam");
  expect(inside.worst.sides).toEqual(["north"]);
  expect(inside.worst.psf).toBeGreaterThan(20.16);
  expect(inside).toMatchObject({case: "rain on snow", psf: expect.closeTo(25.16, 9) as number});
  expect(roofLoadOn(roof, "edge beam").snow.case).toBe("drift");
});

test("a roof over one row of bays has no beam inside, and says so to who asks for it", () => {
  const roof = of({"bay.baysAcross": 1});
  expect(() => roofLoadOn(roof, "interior beam")).toThrow("the roof has no interior beam");
  expect(roofLoadOn(roof, "edge beam").snow.psf).toBe(21);
});

describe("a drift along a long side", () => {
  /** Of the leeward drift: hd = 0.43 x 80^(1/3) x 40^(1/4) - 1.5 = 3.1596 ft, 17.9 pcf, 12.638 ft wide. */
  const hd = 0.43 * Math.cbrt(80) * 40 ** 0.25 - 1.5;
  const [peakPsf, driftFt] = [17.9 * hd, 4 * hd];
  const roof = of(STEP);

  test("is the deeper of lee and wind, and lies on the higher part's side alone", () => {
    expect(roof.drifts.map(({side, drift}) => [side, drift.kind])).toEqual([["north", "leeward"], ["north", "windward"]]);
    expect(snowAtPsf(roof.surface, 60, 80)).toBeCloseTo(21 + peakPsf, 9);
    expect(snowAtPsf(roof.surface, 60, 80 - driftFt / 2)).toBeCloseTo(21 + peakPsf / 2, 9);
    expect([snowAtPsf(roof.surface, 60, 80 - driftFt - 0.01), snowAtPsf(roof.surface, 60, 0)]).toEqual([21, 21]);
  });

  test("loads a member that ends there by a triangle: reaction and moment by statics", () => {
    // Far end: w L/2 + p d^2/(6 L); shear is spent where that equals w y, beyond the drift; M = R^2/(2 w).
    const far = 21 * 20 + (peakPsf * driftFt ** 2) / (6 * 40);
    const near = 21 * 40 + (peakPsf * driftFt) / 2 - far;
    const {snow} = roofLoadOn(roof, "deck member");
    const moment = far ** 2 / (2 * 21);
    expect(snow.worst.span?.firstReaction).toBeCloseTo(far, 9);
    expect(snow.worst.span?.secondReaction).toBeCloseTo(near, 9);
    expect(snow.worst.span?.momentAtFt).toBeCloseTo(far / 21, 9);
    expect(snow.momentPsf).toBeCloseTo((8 * moment) / 1600, 9);
    expect(snow.shearPsf).toBeCloseTo(near / 20, 9);
    expect(snow).toMatchObject({case: "drift", psf: snow.shearPsf});
  });

  test("reaches the edge beam and its columns by the deck's near reaction, the girder by the far one", () => {
    const far = (peakPsf * driftFt ** 2) / (6 * 40);
    const near = (peakPsf * driftFt) / 2 - far;
    const psf = (element: Parameters<typeof roofLoadOn>[1]) => roofLoadOn(roof, element).snow.psf;
    for (const element of ["edge beam", "edge column", "corner column"] as const) expect(psf(element)).toBeCloseTo(21 + near / 20, 9);
    for (const element of ["interior beam", "interior column", "girder end column"] as const) expect(psf(element)).toBeCloseTo(21 + far / 40, 9);
  });
});

test("a drift along a short side lies along the member beside it, and across the beams there by a triangle", () => {
  // The higher part along the east side, its roof 70 ft: 11.83 ft wide, wider than one member of 10 ft.
  const hd = 0.43 * Math.cbrt(70) * 40 ** 0.25 - 1.5;
  const [peakPsf, driftFt] = [17.9 * hd, 4 * hd];
  // Windward the roof is 120 ft long: 0.75 x 3.83 ft = 2.88 ft, less.
  const roof = of({...STEP, "snow.higherSide": "short", "snow.higherLengthFt": 70});
  const deck = roofLoadOn(roof, "deck member").snow;
  const mean = peakPsf * (1 - 10 / driftFt / 2);
  expect([deck.momentPsf, deck.shearPsf]).toEqual([expect.closeTo(21 + mean, 9), expect.closeTo(21 + mean, 9)]);
  // On a beam of 30 ft: far reaction 21 x 15 + p d^2/(6 x 30), per foot of width; spent 16.96 ft from there, before the drift.
  const far = 21 * 15 + (peakPsf * driftFt ** 2) / 180;
  for (const element of ["edge beam", "interior beam"] as const) {
    const {snow} = roofLoadOn(roof, element);
    expect(snow.momentPsf).toBeCloseTo((8 * far ** 2) / (2 * 21 * 900), 9);
    expect(snow.shearPsf).toBeCloseTo((21 * 30 + (peakPsf * driftFt) / 2 - far) / 15, 9);
  }
  expect(roofLoadOn(roof, "corner column").snow.psf).toBeCloseTo(roofLoadOn(roof, "edge beam").snow.shearPsf, 9);
  expect(roofLoadOn(roof, "edge column").snow.psf).toBeCloseTo(21 + (far - 21 * 15) / 30, 9);
});

describe("parapets on all sides", () => {
  const roof = of({"walls.parapetIn": 42});

  test("bring a drift along each, from the roof upwind of it, none where a higher part adjoins", () => {
    expect(roof.drifts.map(({side, drift}) => [side, drift.kind, drift.figure.fetchFt])).toEqual([["south", "parapet", 80], ["north", "parapet", 80], ["west", "parapet", 120], ["east", "parapet", 120]]);
    expect(of({"walls.parapetIn": 42, ...STEP}).drifts.map(({side, drift}) => [side, drift.kind])).toEqual([["south", "parapet"], ["north", "leeward"], ["north", "windward"], ["west", "parapet"], ["east", "parapet"]]);
    expect(of({"walls.parapetIn": 42, ...STEP, "snow.higherApartFt": 2}).drifts.filter(({side}) => side === "north").map(({drift}) => drift.kind)).toEqual(["parapet", "leeward", "windward"]);
  });

  test("in a corner the deeper drift counts, never both", () => {
    const [south, west] = ["south", "west"].map((side) => roof.drifts.find((drift) => drift.side === side)?.drift);
    expect(snowAtPsf(roof.surface, 0, 0)).toBeCloseTo(21 + Math.max(south?.peakPsf ?? 0, west?.peakPsf ?? 0), 9);
    expect(snowAtPsf(roof.surface, 2, 3)).toBeCloseTo(21 + Math.max((south?.peakPsf ?? 0) * (1 - 3 / (south?.widthFt ?? 0)), (west?.peakPsf ?? 0) * (1 - 2 / (west?.widthFt ?? 0))), 9);
  });

  test("load every element most in a corner, by what a fine grid of the surface gives", () => {
    /** Reaction and moment of a place by summing the surface over small squares. */
    const reckoned = ({tributary: {xFt, yFt, widthFt, heightFt}}: SnowPlace, weight: (x: number, y: number) => number) => {
      const n = 400;
      let sum = 0;
      for (let i = 0; i < n; i++) {
        for (let j = 0; j < n; j++) {
          const [x, y] = [((i + 0.5) / n) * widthFt, ((j + 0.5) / n) * heightFt];
          sum += snowAtPsf(roof.surface, xFt + x, yFt + y) * weight(x, y);
        }
      }
      return sum / n ** 2;
    };
    const deck = roofLoadOn(roof, "deck member").snow;
    expect(deck.worst.sides).toHaveLength(2);
    expect([deck.worst.tributary.xFt, deck.worst.tributary.yFt]).toEqual([0, 0]);
    // Near reaction over half of the span: each square counts by 1 - y/40, twice.
    expect(deck.shearPsf).toBeCloseTo(reckoned(deck.worst, (_, y) => 2 * (1 - y / 40)), 1);
    // The beam in the corner, over the whole span of the deck that it carries: deck's share by beam's share, 4 times.
    const beam = roofLoadOn(roof, "edge beam").snow;
    const whole = {...beam.worst, tributary: {xFt: 0, yFt: 0, widthFt: 30, heightFt: 40}};
    expect(beam.shearPsf).toBeCloseTo(reckoned(whole, (x, y) => 4 * (1 - y / 40) * (1 - x / 30)), 1);
    expect(roofLoadOn(roof, "corner column").snow.psf).toBeCloseTo(beam.shearPsf, 9);
    // And no place inside carries more than the one in the corner.
    const placesOn = snowPlaces(design().bay, 10, roof.surface);
    for (const {area, snow} of roof.elements) for (const place of placesOn(area.element)) expect(place.psf).toBeLessThanOrEqual(snow.psf + 1e-9);
  });

  test("the edge beam of a roof with a deck of its own counts as one along the long sides, where it is higher", () => {
    const above = (changes: Readonly<Record<string, unknown>>) => {
      const own = design({"roof.given": "deck", "roof.upstandIn": 48, "roof.slopeInPerFt": 0.25, ...changes});
      return wallsAboveRoofFt(own, fallPlan(own));
    };
    // Layers 6.25 in thick hide part of the beam, and at the edges 10 in of taper, which falls over 40 ft to the drains inside.
    expect(above({"walls.parapetIn": 0})).toEqual({south: (48 - 16.25) / 12, north: (48 - 16.25) / 12, west: 0, east: 0});
    expect(above({"walls.parapetIn": 0, "roof.drainsAt": "edges"}).south).toBeCloseTo((48 - 6.25) / 12, 12);
    // Stepped bearings lift the beam with the deck.
    expect(above({"walls.parapetIn": 0, "roof.drainage": "bearing"}).south).toBeCloseTo((48 - 6.25) / 12, 12);
    expect(above({"walls.parapetIn": 0, "edgeBeam.kind": "below"}).south).toBe(0);
    // A parapet is level: 42 in over the highest line, 10 in more where the surface is lowest.
    expect(above({"walls.parapetIn": 42})).toEqual({south: 3.5, north: 3.5, west: 52 / 12, east: 52 / 12});
    expect(above({"walls.parapetIn": 42, "roof.drainsAt": "edges"})).toEqual({south: 52 / 12, north: 52 / 12, west: 52 / 12, east: 52 / 12});
    expect(above({"walls.parapetIn": 42, "roof.drainage": "camber"})).toEqual({south: 3.5, north: 3.5, west: 3.5, east: 3.5});
    const beam = of({"roof.given": "deck", "walls.parapetIn": 0}, {...SHAPE, wallsFt: above({"walls.parapetIn": 0, "roof.drainsAt": "edges"})});
    expect(beam.drifts.map(({side, drift}) => [side, drift.wallFt])).toEqual([["south", 41.75 / 12], ["north", 41.75 / 12]]);
    expect(of({"roof.given": "loads", "roof.upstandIn": 36}).drifts).toEqual([]);
  });
});

test("on an open top level the upstand of its edge beam is one, and a spandrel on its short sides", () => {
  const open = {"column.roofDeadPsf": 0, "column.roofLivePsf": 0, "walls.parapetIn": 48, "edgeBeam.upstandIn": 36, "walls.spandrelUpstandIn": 42};
  expect(of({...open, "walls.shortSide": "cladding"}).drifts.map(({side, drift}) => [side, drift.wallFt])).toEqual([["south", 3], ["north", 3]]);
  expect(of({...open, "walls.shortSide": "spandrel"}).drifts.map(({drift}) => drift.wallFt)).toEqual([3, 3, 3.5, 3.5]);
});

describe("a roof that is used", () => {
  test("has the live load of its use in place of roof live load, reduced where the code lets it", () => {
    const terrace = of({"snow.use": "occupied", "snow.occupancy": "roof-assembly"});
    for (const {loads, roofLive, reduction} of terrace.elements) expect([loads.L, loads.Lr, roofLive, reduction?.factor]).toEqual([100, 0, undefined, 1]);
    // 1.6 x 100 + 0.5 x 21 = 170.5, over 1.6; 100 + 0 against 75 + 15.75.
    const deck = roofLoadOn(terrace, "deck member");
    expect([deck.asLivePsf, deck.asServiceLivePsf]).toEqual([expect.closeTo(170.5 / 1.6, 9), 100]);
    const garden = of({"snow.use": "occupied", "snow.occupancy": "office"});
    // KLL AT = 2 x 600 = 1200 ft2: 0.25 + 15/34.64 = 0.683.
    expect(roofLoadOn(garden, "edge beam").loads.L).toBeCloseTo(50 * (0.25 + 15 / Math.sqrt(1200)), 9);
  });

  test("by several rooms, as an open top level is, carries on each element the one that is heavier there, and is named by that on its deck", () => {
    const room = (key: string, livePsf: number, rule: RoomLoad["rule"]): RoomLoad => ({name: key, occupancy: occupancyOf(catalog, key, "loads"), livePsf, rule, own: undefined, partitionPsf: 0});
    const [cars, office] = [room("garage", 40, "in full"), room("office", 50, "yes")];
    for (const rooms of [[cars, office], [office, cars]]) {
      const top = of({}, {...SHAPE, rooms});
      const on = (element: Parameters<typeof roofLoadOn>[1]) => {
        const {loads, usePsf, roofLive} = roofLoadOn(top, element);
        return [loads.L, usePsf, roofLive];
      };
      // A tee's 400 ft2 are not reduced: 50 psf. A column inside: 50 (0.25 + 15/sqrt(4 x 1,200)) = 23.3 psf, less than 40 psf of cars.
      expect([on("deck member"), on("interior column"), on("corner column")]).toEqual([[50, 50, undefined], [40, 40, undefined], [40, 40, undefined]]);
      expect(top.occupancy?.id).toBe("office");
    }
  });

  test("by something that is not in the table is refused", () => {
    refused(() => of({"snow.use": "occupied", "snow.occupancy": "moon base"}), {path: "snow.occupancy"});
  });
});

test("what counts as live load gives back the governing combination", () => {
  for (const changes of [{}, STEP, {"snow.use": "occupied"}, {"snow.groundPsf": 0, "snow.rainStaticIn": 8}]) {
    for (const {loads, factored, asLivePsf, asServiceLivePsf, service} of of(changes).elements) {
      const most = (all: typeof factored) => Math.max(...all.filter(({combination}) => combination.name !== "1.4D").map(({psf}) => psf));
      expect(1.2 * loads.D + 1.6 * asLivePsf).toBeCloseTo(most(factored), 9);
      expect(loads.D + asServiceLivePsf).toBeCloseTo(most(service), 9);
    }
  }
});

describe("checks", () => {
  const ids = (changes: Readonly<Record<string, unknown>>, shape = SHAPE) => of(changes, shape).checks.map(({id, verdict}) => `${id}: ${verdict}`);
  /** A roof with a deck of its own, which counts no number. */
  const OWN = {"roof.given": "deck", "roof.upstandIn": 0};

  test("none where no ground snow is given, so that an older design is judged as before", () => {
    expect(ids({"snow.groundPsf": 0, "column.roofLivePsf": 0, "snow.exposure": "fully", "walls.parapetIn": 48})).toEqual([]);
  });

  test("the number that columns count, on both sides of what lies on them", () => {
    // Balanced snow of 21 psf on every column.
    expect(ids({"column.roofLivePsf": 21})).toEqual(["roof live load entered: ok"]);
    expect(ids({"column.roofLivePsf": 20})).toEqual(["roof live load entered: fails"]);
    expect(ids({"column.roofLivePsf": 0, "column.roofDeadPsf": 0})).toEqual([]);
    expect(ids(OWN)).toEqual([]);
  });

  test("a roof called fully exposed, on both sides of its snow: 0.7 x 0.9 x 30 / 17.9 = 1.056 ft", () => {
    const fully = {...OWN, "snow.exposure": "fully"};
    expect(ids({...fully, "walls.parapetIn": 12.6})).toEqual(["snow shelter: ok"]);
    expect(ids({...fully, "walls.parapetIn": 12.7})).toEqual(["snow shelter: fails"]);
    // A parapet along one side is enough.
    expect(ids(fully, {...SHAPE, wallsFt: {south: 0, north: 2, west: 0, east: 0}})).toEqual(["snow shelter: fails"]);
    expect(ids({...fully, "snow.higherFt": 10, "snow.higherApartFt": 99})).toEqual(["snow shelter: fails"]);
    expect(ids({...fully, "snow.higherFt": 10, "snow.higherApartFt": 100})).toEqual(["snow shelter: ok"]);
    expect(ids({...OWN, "walls.parapetIn": 48})).toEqual([]);
  });

  test("what the method does not cover: terrain without a value, and slopes on which snow is unbalanced", () => {
    expect(ids({...OWN, "snow.terrain": "mountain", "snow.exposure": "sheltered"})).toEqual(["snow exposure: out of range"]);
    expect(ids({...OWN, "roof.drainsAt": "edges"}, {...SHAPE, riseInPerFt: 0.5})).toEqual([]);
    expect(ids({...OWN, "roof.drainsAt": "edges"}, {...SHAPE, riseInPerFt: 0.51})).toEqual(["unbalanced snow: out of range"]);
    expect(ids(OWN, {...SHAPE, riseInPerFt: 0.375})).toEqual([]);
    expect(ids(OWN, {...SHAPE, riseInPerFt: 0.38})).toEqual(["unbalanced snow: out of range"]);
  });
});

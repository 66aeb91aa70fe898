import {describe, expect, test} from "vitest";
import {atLeast, atMost, outOfRange, requires, type Check} from "../../lib/checks.js";
import {withValues} from "../../lib/design/edit.js";
import type {Design} from "../../lib/design/design.js";
import {columnsOf, evaluate} from "../../lib/evaluate.js";
import {measuresOf, pricesMissing} from "../../lib/schemes/measures.js";
import {floorLight} from "../../lib/schemes/measures/floorLight.js";
import {floorPieces} from "../../lib/schemes/measures/floorPieces.js";
import {parkingFit} from "../../lib/schemes/measures/parkingFit.js";
import {PRICE_LIST, type PriceName, type Prices} from "../../lib/schemes/measures/prices.js";
import {greatestUse} from "../../lib/schemes/measures/use.js";
import {catalog, seed, seeds} from "../support/designs.js";
import {once} from "../support/once.js";
import {ROUND} from "./factors.js";

const floorOf = (design: Design) => evaluate(design, catalog);

describe("the greatest use of a part's limits", () => {
  const text = {unit: "kip", clause: "a test", holds: "", fails: ""};
  const load = (id: string, use: number): Check => atMost({...text, id, label: `label of ${id}`}, use, 1);
  const least = (use: number): Check => atLeast({...text, id: "least", label: "least size", meetingIsEnough: true}, 1 / use, 1);
  const remedied: Check = requires({id: "top steel", label: "top steel", unit: "ksi", clause: "a test", message: "", word: "needs top steel"}, 2.5, 1);

  test("is that of the check nearest to its limit or farthest past it, with its name", () => {
    expect(greatestUse([load("a", 0.4), load("b", 0.8), load("c", 0.7)])).toEqual({use: 0.8, check: "label of b"});
    expect(greatestUse([load("a", 1.4), load("b", 0.8)])).toEqual({use: 1.4, check: "label of a"});
  });

  test("passes over least sizes that are met, and limits with their remedy built in", () => {
    expect(greatestUse([load("a", 0.4), least(1), least(0.5), remedied])).toEqual({use: 0.4, check: "label of a"});
    expect(greatestUse([least(1), remedied])).toEqual({use: undefined, check: undefined});
  });

  test("counts a least size that is missed", () => {
    expect(greatestUse([load("a", 0.9), least(1.25)])).toEqual({use: 1.25, check: "least size"});
  });

  test("is undefined where no method covers the part, whatever its other checks say, and where there is no part", () => {
    const beyond = outOfRange({id: "far", label: "beyond the method", unit: "ft", clause: "a test", message: ""}, 0, 0);
    expect(greatestUse([load("a", 0.9), beyond, load("b", 2)])).toEqual({use: undefined, check: "beyond the method"});
    expect(greatestUse(undefined)).toEqual({use: undefined, check: undefined});
    expect(greatestUse([])).toEqual({use: undefined, check: undefined});
  });
});

describe("daylight of a whole floor", () => {
  test("with windows on two sides is that of the room, which is the floor", () => {
    const floor = floorOf(withValues(seed("branch-library"), {"daylight.sides": "two"}));
    const {shares, skySeenShare} = floor.daylight?.result ?? {};
    const light = floorLight(floor);
    expect(light.goodPercent).toBeCloseTo(100 * (shares?.good ?? NaN), 12);
    expect(light.daylitPercent).toBeCloseTo(100 * ((shares?.good ?? NaN) + (shares?.partial ?? NaN)), 12);
    expect(light.noSkyPercent).toBeCloseTo(100 * (1 - (skySeenShare ?? NaN)), 12);
  });

  test("with windows on one side counts the bays behind the first as dark", () => {
    const floor = floorOf(withValues(seed("classroom-wing"), {"bay.baysAcross": 3}));
    expect(floor.design.daylight.sides).toBe("one");
    const {shares, skySeenShare} = floor.daylight?.result ?? {};
    expect(floorLight(floor).goodPercent).toBeCloseTo((100 / 3) * (shares?.good ?? NaN), 12);
    expect(floorLight(floor).noSkyPercent).toBeCloseTo(100 - (100 / 3) * (skySeenShare ?? NaN), 12);
  });

  test("deeper than the computation goes is dark there", () => {
    const floor = floorOf(withValues(seed("records-store"), {"daylight.sides": "two", "bay.spanFt": 40, "bay.baysAcross": 10}));
    expect(floor.daylight?.input.depthFt).toBe(300);
    expect(floorLight(floor).goodPercent).toBeCloseTo(75 * (floor.daylight?.result.shares.good ?? NaN), 12);
  });

  test("without glass there is none", () => {
    const floor = floorOf(withValues(seed("branch-library"), {"edgeBeam.upstandIn": 60, "story.floorToFloorFt": 9}));
    expect(floor.daylight).toBeUndefined();
    expect(floorLight(floor)).toEqual({goodPercent: 0, daylitPercent: 0, noSkyPercent: 100});
  });

  test("of a floor 60 ft wide with windows on both long sides is good for some 15 ft at each side (common practice)", () => {
    // Windows from 30 in to 9 ft over the floor, as classrooms have them; 15 ft at each side of 60 are half of it.
    const design = withValues(seed("branch-library"), {
      "bay.spanFt": 60, "bay.baysAcross": 1, "deck.member": "12DT32", "deck.pattern": "188-S", "daylight.sides": "two", "daylight.obstructionDeg": 0,
      "edgeBeam.upstandIn": 30, "story.floorToFloorFt": 14 + 8 / 12, "story.ceiling": "flush", "services.airCfmPerFt2": 0,
    });
    const floor = floorOf(design);
    // 14'-8" less 34 in of deck and 8 in of ledge leave 11'-2" less the finish.
    expect(floor.story.ceilingHeightIn + floor.story.finishIn).toBeCloseTo(134 + 8 - floor.edgeBeam.belowDeckIn, 9);
    const sideFt = (floorLight(floor).goodPercent / 100) * 60 / 2;
    expect(sideFt).toBeGreaterThan(10);
    expect(sideFt).toBeLessThan(20);
  });
});

describe("parking below the floors", () => {
  test("two rows of 18 ft stalls and a 24 ft aisle fit 60 ft, and do not fit a foot less than what they take", () => {
    const grid = (spanFt: number) => parkingFit(withValues(seed("branch-library"), {"bay.spanFt": spanFt, "bay.baysAcross": 1, "bay.beamSpanFt": 30, "bay.baysAlong": 6}));
    expect(grid(60).modules).toBe(1);
    expect(grid(60).stalls).toBeGreaterThan(20);
    // Between the faces of the two edge beams there are some inches more than the span.
    expect(grid(59).modules).toBe(0);
    // One row and the aisle take 42 ft.
    expect(grid(59).stalls).toBeGreaterThan(grid(60).stalls / 2 - 1);
    expect(grid(59).stalls).toBeLessThan(grid(60).stalls);
    expect(grid(41)).toEqual({modules: 0, stalls: 0});
  });

  test("is what the parking of the design counts without accessible stalls and ramp, whether cars park there or not", () => {
    const design = withValues(seed("parking-structure"), {"parking.ramp": "none"});
    const {parking} = floorOf(design);
    expect(parkingFit(design).stalls).toBe(parking?.perLevel);
    expect(parkingFit(design).modules).toBe(parking?.level.modules.filter(({rows}) => rows.length === 2).length);
    const elsewhere = withValues(design, {"parking.place": "none"});
    expect(floorOf(elsewhere).parking).toBeUndefined();
    expect(parkingFit(elsewhere)).toEqual(parkingFit(design));
    expect(parkingFit(withValues(design, {"parking.ramp": "within"}))).toEqual(parkingFit(design));
  });

  test("is counted anew for every number that it depends on", () => {
    // Fields of one design share what is kept; each change must still give what it gives by itself.
    const design = withValues(seed("parking-structure"), {"bay.spanFt": 60, "edgeBeam.kind": "ledge"});
    const first = parkingFit(design);
    const same = (changes: Readonly<Record<string, unknown>>) => {
      const changed = withValues(design, changes);
      const shared = {...changed, parking: design.parking};
      expect(parkingFit(shared), JSON.stringify(changes)).toEqual(parkingFit({...changed, parking: {...design.parking}}));
      return parkingFit(shared);
    };
    expect(same({"bay.spanFt": 40})).not.toEqual(first);
    expect(same({"bay.beamSpanFt": 27})).not.toEqual(first);
    expect(same({"bay.baysAlong": 9})).not.toEqual(first);
    expect(same({"bay.baysAcross": 1})).not.toEqual(first);
    same({"column.sideIn": 40});
    same({"edgeBeam.kind": "below"});
    same({"edgeBeam.webWidthIn": 20});
    same({"edgeBeam.ledgeProjectionIn": 12});
    same({"edgeBeam.jointGapIn": 3});
  });

  test("without room for a stall has no floor per stall", () => {
    const design = withValues(seed("branch-library"), {"bay.spanFt": 20});
    const m = measuresOf(floorOf(design), undefined, {factors: ROUND, prices: {}});
    expect([m.parkingModules, m.parkingStalls, m.parkingFt2PerStall]).toEqual([0, 0, undefined]);
    const roomy = measuresOf(floorOf(seed("parking-structure")), undefined, {factors: ROUND, prices: {}});
    expect(roomy.parkingFt2PerStall).toBeCloseTo((60 * 2 * 36 * 5) / roomy.parkingStalls, 9);
  });
});

describe("pieces on the road", () => {
  test("a last tee that is cut travels by its own width, and weighs by it", () => {
    // 4 x 31 ft hold twelve tees of 10 ft and one cut to 4 ft, in two bays and on one floor and a roof.
    const floor = floorOf(withValues(seed("branch-library"), {"bay.beamSpanFt": 31, "walls.endFill": "piece", "roof.given": "loads"}));
    const [whole, cut] = floorPieces(floor);
    expect([whole?.count, whole?.acrossFt, cut?.count]).toEqual([24, 10, 2]);
    expect(cut?.acrossFt).toBeCloseTo(4, 9);
    expect(cut?.weightLb).toBeCloseTo(0.4 * (whole?.weightLb ?? NaN), 6);
  });

  test("are those of every level and of the walls", () => {
    const floor = floorOf(seed("records-store"));
    const {walls, design: {bay}} = floor;
    const levels = bay.floors + 1;
    const panels = 2 * (walls.panels?.count ?? NaN);
    const parapets = walls.planes.top.sides.filter(({addedIn}) => addedIn > 0).length * bay.baysAlong;
    const frame = levels * ((2 + bay.baysAcross - 1) * bay.baysAlong) + bay.floors * walls.edge.pieces.perFloor + walls.roofEdge.pieces.perFloor;
    expect(floorPieces(floor).reduce((sum, {count}) => sum + count, 0)).toBe(frame + panels + parapets);
  });

  test("are on each short side two spandrels a level over two bays, those of the roof's level by their own weight", () => {
    const of = (changes: Readonly<Record<string, unknown>>) => floorOf(withValues(seed("branch-library"), {"walls.shortSide": "spandrel", "walls.spandrelPlace": "between", "walls.parapetIn": 0, "roof.given": "loads", ...changes}));
    const pieces = (changes: Readonly<Record<string, unknown>>) => floorPieces(of(changes)).reduce((sum, {count}) => sum + count, 0);
    expect(pieces({}) - pieces({"walls.shortSide": "not counted"})).toBe(8);
    // 458 in of 48 by 8 in weigh 15.27 kip; under a parapet of 36 in the roof's are 18 + 1/4 + 36 in deep: 17.25 kip.
    const weights = floorPieces(of({"walls.parapetIn": 36})).filter(({count, lengthFt}) => count === 4 && Math.abs(lengthFt - 458 / 12) < 1e-9).map(({weightLb}) => Math.round(weightLb));
    expect(weights).toEqual([Math.round((458 / 12) * 400), Math.round((458 / 12) * ((150 * 8 * 54.25) / 144))]);
  });

  test("of columns are whole stories long: six stories of 15 ft travel in two pieces, shorter than a trailer", () => {
    const hauled = (floors: number) => {
      const floor = floorOf(withValues(seed("branch-library"), {"bay.floors": floors, "roof.given": "loads"}));
      const columns = columnsOf(floor, catalog);
      const m = measuresOf(floor, columns, {factors: ROUND, prices: {}});
      return {pieces: new Set(columns.columns.map(({column}) => column.pieces)), over: (m.overLengthPieces ?? NaN) - m.overLengthWithoutColumnsPieces};
    };
    expect(hauled(5)).toEqual({pieces: new Set([2]), over: 0});
    // Two stories are one piece of 30 ft.
    expect(hauled(1)).toEqual({pieces: new Set([1]), over: 0});
  });

  test("agree with the checks that say what needs a permit", () => {
    for (const {id, design} of seeds) {
      const floor = floorOf(design);
      const m = measuresOf(floor, undefined, {factors: ROUND, prices: {}});
      const heavy = floor.checks.some(({id: check, word}) => (check === "deck hauling" || check === "roof: deck hauling" || check === "beam weight") && word === "needs a permit");
      expect(m.overWeightWithoutColumnsPieces > 0, id).toBe(heavy);
    }
  });
});

describe("cost", () => {
  const store = once(() => {
    const floor = floorOf(seed("records-store"));
    return {floor, columns: columnsOf(floor, catalog)};
  });
  const every = Object.fromEntries((Object.keys(PRICE_LIST) as PriceName[]).map((name) => [name, 1])) as Prices;
  const cost = (prices: Prices) => measuresOf(store().floor, store().columns, {factors: ROUND, prices});

  test("is undefined while a price is blank, and never nothing", () => {
    expect([cost({}).costPerFt2, cost({}).costWithoutColumnsPerFt2]).toEqual([undefined, undefined]);
    for (const name of Object.keys(PRICE_LIST) as PriceName[]) {
      const {[name]: _, ...others} = every;
      expect(cost(others).costPerFt2, name).toBeUndefined();
      expect(pricesMissing(store().floor, store().columns, others)).toEqual([name]);
    }
    expect(pricesMissing(store().floor, store().columns, {})).toEqual(Object.keys(PRICE_LIST));
    expect(pricesMissing(store().floor, store().columns, every)).toEqual([]);
  });

  test("without columns asks for no price of theirs", () => {
    const {columnPerYd3: _, footingPerYd3: __, ...others} = every;
    expect(cost(others).costPerFt2).toBeUndefined();
    expect(cost(others).costWithoutColumnsPerFt2).toBe(cost(every).costWithoutColumnsPerFt2);
    expect(pricesMissing(store().floor, undefined, others)).toEqual([]);
  });

  test("asks for no price of what a design has not", () => {
    const bare = floorOf(seed("parking-structure"));
    expect(bare.topping).toBeUndefined();
    const {toppingPerYd3: _, ...others} = every;
    expect(measuresOf(bare, undefined, {factors: ROUND, prices: others}).costWithoutColumnsPerFt2).toBeGreaterThan(0);
  });

  test("counts a price of nothing as given, and grows by each price as much as there is of it", () => {
    expect(cost(Object.fromEntries(Object.keys(PRICE_LIST).map((name) => [name, 0]))).costPerFt2).toBe(0);
    const base = cost(every).costPerFt2 as number;
    const m = cost({});
    const grown = (name: PriceName) => ((cost({...every, [name]: 3}).costPerFt2 as number) - base) / 2;
    expect(grown("strandPerLb")).toBeCloseTo(m.strandLbPerFt2, 9);
    expect(grown("barsPerLb")).toBeCloseTo(m.barsLbPerFt2 as number, 9);
    expect(grown("settingPerPiece")).toBeCloseTo((m.pieces as number) / m.floorFt2, 9);
    expect(grown("haulingPerTruckload")).toBeCloseTo((m.truckloads as number) / m.floorFt2, 9);
    expect(grown("wallPerYd3")).toBeCloseTo(m.wallsConcreteFt3PerFt2 / 27, 9);
    const precastAndCast = (["deckPerYd3", "beamPerYd3", "columnPerYd3", "wallPerYd3", "toppingPerYd3", "footingPerYd3"] as const).reduce((sum, name) => sum + grown(name), 0);
    expect(precastAndCast).toBeCloseTo((m.concreteFt3PerFt2 as number) / 27, 9);
  });
});

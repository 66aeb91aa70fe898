import {describe, expect, test} from "vitest";
import type {ColumnsResult} from "../../lib/columns/columnsResult.js";
import {deckMeasures} from "../../lib/deck/measures.js";
import {withValues} from "../../lib/design/edit.js";
import type {Design} from "../../lib/design/design.js";
import {columnsOf, evaluate, type Evaluation} from "../../lib/evaluate.js";
import {withOwnFactors} from "../../lib/materials/carbon.js";
import {measuresOf} from "../../lib/schemes/measures.js";
import {columnCounts} from "../../lib/schemes/measures/columnAmounts.js";
import {MEASURE_GROUPS, MEASURE_LIST} from "../../lib/schemes/measures/measureList.js";
import type {MeasureKey, SchemeMeasures} from "../../lib/schemes/measures/schemeMeasures.js";
import {buildingEnvelope} from "../../lib/story/envelope.js";
import {shortRunIn} from "../../lib/walls/planes.js";
import {catalog, seed, seeds} from "../support/designs.js";
import {refused} from "../support/errors.js";
import {once} from "../support/once.js";

interface Built {
  readonly floor: Evaluation;
  readonly columns: ColumnsResult;
}

const BY = {factors: catalog.carbonFactors, prices: {}};
const made = (design: Design): Built => {
  const floor = evaluate(design, catalog);
  return {floor, columns: columnsOf(floor, catalog)};
};
const measured = ({floor, columns}: Built) => measuresOf(floor, columns, BY);

/** The starters, and others with what they have not: a two-load roof, beams below, strips, upright and lying panels, strands in the edge. */
const buildings = once((): readonly {readonly name: string; readonly built: Built}[] => [
  ...seeds.map(({id, design}) => ({name: id, built: made(design)})),
  {name: "beams below", built: made(withValues(seed("records-store"), {"edgeBeam.kind": "below", "walls.teeEnds": "concrete", "walls.parapetIn": 36, "walls.capIn": 4}))},
  {name: "strips", built: made(withValues(seed("branch-library"), {"bay.beamSpanFt": 31, "walls.endFill": "strip", "walls.panelSupport": "columns", "walls.glassShare": 0.2}))},
  {name: "strands in the edge", built: made(withValues(seed("parking-structure"), {"edgeBeam.steel": "strands", "edgeBeam.strands": 12, "walls.shortSide": "cladding", "bay.floors": 5}))},
  {name: "one bay", built: made(withValues(seed("classroom-wing"), {"bay.baysAcross": 1, "bay.baysAlong": 1}))},
]);
const keysOf = (end: string, starts: readonly string[]) => starts.map((part) => `${part}${end}` as MeasureKey);
const FLOORS = ["deck", "topping", "edgeBeams", "girders", "walls", "roof"];
const sum = (m: SchemeMeasures, keys: readonly MeasureKey[]) => keys.reduce((total, key) => total + (m[key] as number), 0);

describe("measures of a building", () => {
  test("of which each total is the sum of its parts", () => {
    for (const {name, built} of buildings()) {
      const m = measured(built);
      for (const [total, without, end] of [
        ["concreteFt3PerFt2", "concreteWithoutColumnsFt3PerFt2", "ConcreteFt3PerFt2"], ["carbonKgPerFt2", "carbonWithoutColumnsKgPerFt2", "CarbonKgPerFt2"],
      ] as const) {
        expect(m[without], name).toBeCloseTo(sum(m, keysOf(end, FLOORS)), 10);
        expect(m[total], name).toBeCloseTo(sum(m, keysOf(end, [...FLOORS, "columns", "footings"])), 10);
      }
      expect(m.barsWithoutColumnsLbPerFt2, name).toBeCloseTo(sum(m, keysOf("BarsLbPerFt2", ["topping", "edgeBeams", "girders", "roof"])), 10);
      expect(m.barsLbPerFt2, name).toBeCloseTo(sum(m, keysOf("BarsLbPerFt2", ["topping", "edgeBeams", "girders", "roof", "columns", "footings"])), 10);
      expect(m.strandLbPerFt2, name).toBeCloseTo(sum(m, keysOf("StrandLbPerFt2", ["deck", "edgeBeams", "girders", "roof"])), 10);
    }
  });

  test("have the carbon of a roof's topping, as of its deck", () => {
    const roof = (toppingIn: number) => measured(made(withValues(seed("branch-library"), {"roof.toppingIn": toppingIn})));
    const [bare, topped] = [roof(0), roof(2)];
    // One floor and a roof, each as large: 2 in of site concrete on each square foot, a sixth of a cubic foot.
    const siteKgPerFt3 = (catalog.carbonFactors.find(({id}) => id === "site-nw-3000")?.kgPerUnit ?? NaN) / 27;
    expect(topped.roofConcreteFt3PerFt2 - bare.roofConcreteFt3PerFt2).toBeGreaterThan(0.15);
    expect(topped.roofCarbonKgPerFt2 - bare.roofCarbonKgPerFt2).toBeGreaterThan(0.15 * siteKgPerFt3);
  });

  test("have as dead load what the columns' take-downs bring to all feet, and what stands on footings of its own", () => {
    let standing = 0;
    for (const {name, built} of buildings()) {
      const {floor, columns} = built;
      const counts = columnCounts(floor.design);
      const feetKip = columns.columns.reduce((total, {position, foot}) => total + counts[position] * foot.deadKip, 0);
      const own = (floor.walls.footing?.plf ?? 0) * 2 * (shortRunIn(floor.design, floor.walls.planes) / 12) / 1000;
      if (own > 0) standing++;
      expect(measured(built).deadKip, name).toBeCloseTo(feetKip + own, 6);
    }
    expect(standing).toBeGreaterThan(1);
  });

  test("weigh what their concrete and the rest of the dead load come to", () => {
    // The parking structure has no topping and no roof; with its short sides left open, what the take-down has besides
    // concrete are layers and what hangs on the edges. It counts beams over the columns as well, but no corbels.
    const built = made(withValues(seed("parking-structure"), {"walls.shortSide": "not counted", "walls.parapetIn": 0}));
    const {floor, columns} = built;
    const m = measured(built);
    const {bay, edgeBeam: {claddingPlf}} = floor.design;
    const pcf = floor.member.concrete.unitWeightPcf;
    const overColumnsFt = 2 * (floor.design.column.sideIn / 2 + 1) / 12;
    const beamsPlf = 2 * floor.edgeBeam.loads.selfPlf + (bay.baysAcross - 1) * (floor.girder?.loads.selfPlf ?? 0);
    const corbelsFt3 = columns.columns.reduce((total, {position, corbel}) => {
      const perLevel = position === "interior column" || position === "edge column" ? 2 : 1;
      return total + columnCounts(floor.design)[position] * perLevel * bay.floors * ((corbel?.projectionIn ?? NaN) * (corbel?.input.depthIn ?? NaN) * (corbel?.input.widthIn ?? NaN)) / 1728;
    }, 0);
    const beamsFt3 = (m.edgeBeamsConcreteFt3PerFt2 + m.girdersConcreteFt3PerFt2 + (m.columnsConcreteFt3PerFt2 as number)) * m.floorFt2 - corbelsFt3;
    const concreteKip = (m.deckConcreteFt3PerFt2 * m.floorFt2 * pcf + beamsFt3 * 150) / 1000;
    const restKip = (m.floorFt2 * floor.loads.superimposedDeadPsf + bay.floors * bay.baysAlong * (beamsPlf * overColumnsFt + 2 * claddingPlf * bay.beamSpanFt)) / 1000;
    expect(floor.topping).toBeUndefined();
    expect(floor.roof).toBeUndefined();
    expect(m.deadKip).toBeCloseTo(concreteKip + restKip, 6);
  });

  test("have of the deck what its own measures say, where no topping fills its camber and nothing is left over", () => {
    const {floor, columns} = made(seed("parking-structure"));
    const m = measuresOf(floor, columns, BY);
    const deck = deckMeasures(floor.member, catalog.carbonFactors);
    expect(m.deckConcreteFt3PerFt2 + m.toppingConcreteFt3PerFt2).toBeCloseTo(deck.concreteFt, 12);
    expect(m.deckStrandLbPerFt2).toBeCloseTo(deck.strandPsf, 12);
    expect(m.deckCarbonKgPerFt2).toBeCloseTo(deck.carbonKgPerFt2, 12);
  });

  test("count all the topping that fills the camber", () => {
    const {floor} = made(seed("classroom-wing"));
    const averageIn = floor.topping?.averageIn ?? NaN;
    expect(averageIn).toBeGreaterThan(floor.design.deck.toppingIn);
    expect(measured(made(seed("classroom-wing"))).toppingConcreteFt3PerFt2).toBeCloseTo(averageIn / 12, 10);
  });

  test("count strips at the building's ends as cast in place, and no deck where a strip takes its place", () => {
    const {floor, columns} = buildings().find(({name}) => name === "strips")?.built as Built;
    const {edge} = floor.walls;
    const {bay} = floor.design;
    // 124 ft hold twelve tees of 10 ft and a strip of 4 ft, and the wall stands off the end columns by more.
    expect(edge.pieces.stripFt).toBeCloseTo(4, 9);
    expect(edge.firstStripIn).toBeGreaterThan(0);
    const m = measuresOf(floor, columns, BY);
    const levelFt2 = 124 * bay.spanFt * bay.baysAcross;
    expect(m.deckConcreteFt3PerFt2 * levelFt2).toBeCloseTo((floor.member.section.areaIn2 / 144 / 10) * 120 * bay.spanFt * bay.baysAcross, 6);
    const stripsFt3 = ((edge.firstStripIn + edge.lastStripIn) / 12) * (edge.thicknessIn / 12) * bay.spanFt * bay.baysAcross;
    expect(m.toppingConcreteFt3PerFt2 * levelFt2).toBeCloseTo(((floor.topping?.averageIn ?? NaN) / 12) * 120 * bay.spanFt * bay.baysAcross + stripsFt3, 6);
  });

  test("carry the factors of a reader's own", () => {
    const {floor, columns} = made(seed("records-store"));
    const m = measuresOf(floor, columns, BY);
    const bars = catalog.carbonFactors.find(({id}) => id === "bars")?.kgPerUnit as number;
    const doubled = measuresOf(floor, columns, {factors: withOwnFactors(catalog.carbonFactors, {bars: 2 * bars}), prices: {}});
    expect((doubled.carbonKgPerFt2 as number) - (m.carbonKgPerFt2 as number)).toBeCloseTo(bars * (m.barsLbPerFt2 as number), 9);
    expect(doubled.deckCarbonKgPerFt2).toBe(m.deckCarbonKgPerFt2);
    refused(() => measuresOf(floor, columns, {factors: [], prices: {}}), {path: "carbon"});
  });

  test("give height and walls as the envelope does, with the parapet on top", () => {
    for (const {name, built: {floor, columns}} of buildings()) {
      const m = measuresOf(floor, columns, BY);
      const envelope = buildingEnvelope(floor.design, floor.story);
      const parapetFt = floor.walls.planes.parapetIn / 12;
      expect(m.buildingFt, name).toBeCloseTo(envelope.heightFt + parapetFt, 12);
      expect(m.wallFt2PerFt2, name).toBeCloseTo(envelope.wallPerFloor, 12);
      expect(m.envelopeFt2PerFt2, name).toBeCloseTo(m.wallFt2PerFt2 + envelope.roofFt2 / envelope.floorFt2, 12);
    }
  });
});

describe("without columns", () => {
  test("exactly what needs them is undefined, and nothing else changes", () => {
    for (const {name, built: {floor, columns}} of buildings()) {
      const whole = measuresOf(floor, columns, BY);
      const without = measuresOf(floor, undefined, BY);
      for (const {key, needsColumns} of MEASURE_LIST) {
        if (needsColumns) expect(without[key], `${name}: ${key}`).toBeUndefined();
        else expect(without[key], `${name}: ${key}`).toBe(whole[key]);
      }
    }
  });

  test("with one that no method sizes, what needs it is undefined too, and its check says why", () => {
    const {floor, columns} = made(seed("classroom-wing"));
    const beyond = columns.columns[0];
    if (!beyond) throw new Error("there are columns");
    const outOfRange = {...beyond.checks[0], id: "x", label: "Interior column: first size", verdict: "out of range", utilization: 0} as ColumnsResult["checks"][number];
    const unsized: ColumnsResult = {columns: columns.columns.slice(1), unsized: [{position: beyond.position, reason: "too heavy"}], checks: [...columns.checks, outOfRange]};
    const m = measuresOf(floor, unsized, BY);
    for (const {key, needsColumns} of MEASURE_LIST) if (needsColumns) expect(m[key], key).toBeUndefined();
    expect(m.columnsUseCheck).toBe("Interior column: first size");
    // A footing alone that is beyond the methods leaves the columns known, and the totals open.
    const unfooted = measuresOf(floor, {...columns, columns: [{...beyond, footing: undefined}, ...columns.columns.slice(1)]}, BY);
    expect(unfooted.columnsConcreteFt3PerFt2).toBe(measuresOf(floor, columns, BY).columnsConcreteFt3PerFt2);
    expect([unfooted.footingsConcreteFt3PerFt2, unfooted.concreteFt3PerFt2, unfooted.carbonKgPerFt2, unfooted.barsLbPerFt2]).toEqual([undefined, undefined, undefined, undefined]);
    expect(unfooted.deadKip).toBe(measuresOf(floor, columns, BY).deadKip);
    const uncorbeled = measuresOf(floor, {...columns, columns: [{...beyond, corbel: undefined}, ...columns.columns.slice(1)]}, BY);
    expect([uncorbeled.columnsConcreteFt3PerFt2, uncorbeled.columnsCarbonKgPerFt2, uncorbeled.concreteFt3PerFt2]).toEqual([undefined, undefined, undefined]);
    expect(uncorbeled.footingsConcreteFt3PerFt2).toBe(measuresOf(floor, columns, BY).footingsConcreteFt3PerFt2);
  });
});

describe("the list of measures", () => {
  test("has every number of a scheme once, and no other", () => {
    const numbers = Object.entries(measured(made(seed("classroom-wing")))).filter(([key]) => !key.endsWith("UseCheck")).map(([key]) => key);
    expect(MEASURE_LIST.map(({key}) => key).sort()).toEqual(numbers.sort());
  });

  test("names each once in words and as a column, in groups that stand together", () => {
    for (const of of [MEASURE_LIST.map(({name}) => name), MEASURE_LIST.map(({column}) => column)]) expect(new Set(of).size).toBe(of.length);
    for (const {column, key, name} of MEASURE_LIST) {
      expect(column, key).toMatch(/^[a-z]+[0-9]*(_[a-z]+[0-9]*|_[0-9]+)*$/);
      expect(column.replaceAll("_", ""), key).toBe(key.toLowerCase());
      expect(name, key).toMatch(/^[a-z]/);
    }
    expect(MEASURE_LIST.map(({group}) => group).filter((group, i, all) => group !== all[i - 1])).toEqual([...MEASURE_GROUPS]);
    expect(MEASURE_LIST.find(({key}) => key === "columnsPer1000Ft2")?.column).toBe("columns_per_1000_ft2");
    expect(MEASURE_LIST.find(({key}) => key === "concreteWithoutColumnsFt3PerFt2")?.column).toBe("concrete_without_columns_ft3_per_ft2");
    expect(MEASURE_LIST.find(({key}) => key === "floorFt2")?.column).toBe("floor_ft2");
  });

  test("says of each that needs columns what stands in for it, where something does, in the same unit", () => {
    for (const {key, needsColumns, withoutColumns, unit, partOf, better} of MEASURE_LIST) {
      const other = MEASURE_LIST.find((entry) => entry.key === withoutColumns);
      if (withoutColumns) expect([needsColumns, other?.needsColumns, other?.unit], key).toEqual([true, false, unit]);
      if (partOf) expect([MEASURE_LIST.find((entry) => entry.key === partOf)?.unit, better], key).toEqual([unit, "neither"]);
    }
  });

  test("reads each number, and the check behind a use", () => {
    for (const {built} of buildings()) {
      const m = measured(built);
      for (const {key, read, check, decimals} of MEASURE_LIST) {
        expect(read(m)).toBe(m[key]);
        expect(decimals).toBeGreaterThanOrEqual(0);
        const value = read(m);
        if (value !== undefined) expect(Number.isFinite(value) && value >= 0, key).toBe(true);
        if (check && value !== undefined) expect(check(m), key).toMatch(/\w/);
      }
    }
  });
});

import {describe, expect, test} from "vitest";
import {withValues} from "../../lib/design/edit.js";
import type {Design} from "../../lib/design/design.js";
import {columnsOf, evaluate, type Evaluation} from "../../lib/evaluate.js";
import type {ColumnResult, ColumnsResult} from "../../lib/columns/columnsResult.js";
import {measuresOf} from "../../lib/schemes/measures.js";
import type {PricedAmounts} from "../../lib/schemes/measures/cost.js";
import {catalog, seed} from "../support/designs.js";
import {once} from "../support/once.js";
import {ROUND} from "./factors.js";

/**
 * One floor of four bays, two along and two across: 48 ft by 40 ft, 1,920 ft2, 14 ft above the ground, without roof and walls. Solid
 * slabs 8 in deep and 4 ft wide with eight 1/2 in strands span 20 ft under 3 in of topping that follows their camber.
 * L-beams along both edges and inverted tees between the bays span 24 ft.
 */
const house = (): Design => withValues(seed("branch-library"), {
  "bay.spanFt": 20, "bay.beamSpanFt": 24, "bay.baysAlong": 2, "bay.baysAcross": 2, "bay.floors": 1,
  "deck.member": "4FS8", "deck.pattern": "88-S", "deck.concrete": "normalweight", "deck.strengthPsi": 5000, "deck.releaseStrengthPsi": 3500,
  "deck.toppingIn": 3, "deck.toppingStrengthPsi": 3000, "topping.followShare": 1,
  "edgeBeam.kind": "ledge", "edgeBeam.webWidthIn": 12, "edgeBeam.ledgeProjectionIn": 8, "edgeBeam.ledgeDepthIn": 10, "edgeBeam.upstandIn": 9,
  "edgeBeam.steel": "bars", "edgeBeam.barSize": "#9", "edgeBeam.coverIn": 1.5, "edgeBeam.claddingPlf": 0, "edgeBeam.strengthPsi": 5000,
  "girder.kind": "inverted tee", "girder.webWidthIn": 16, "girder.ledgeProjectionIn": 8, "girder.ledgeDepthIn": 16, "girder.strands": 14,
  "roof.given": "loads", "column.roofDeadPsf": 0, "column.roofLivePsf": 0, "snow.groundPsf": 0, "walls.shortSide": "not counted", "walls.parapetIn": 0,
  "column.sideIn": 18, "column.seatIn": 4, "story.floorToFloorFt": 14, "story.ceiling": "none", "services.airCfmPerFt2": 0,
});

const built = once((): {floor: Evaluation; columns: ColumnsResult} => {
  const floor = evaluate(house(), catalog);
  return {floor, columns: columnsOf(floor, catalog)};
});
const measured = () => measuresOf(built().floor, built().columns, {factors: ROUND, prices: {}});
const of = (position: string) => built().columns.columns.find((one) => one.position === position) as ColumnResult;

/** Steel weighs 490 lb a cubic foot. */
const STEEL = 490 / 1728;
const FLOOR_FT2 = 1920;

describe("a small building counted by hand", () => {
  test("holds by all its checks, so that it is a building", () => {
    expect([...built().floor.checks, ...built().columns.checks].filter(({verdict}) => verdict === "fails" || verdict === "out of range").map(({id}) => id)).toEqual([]);
  });

  test("concrete: 8 in of slab, 3 in of topping, beams as they are cut, columns with corbels, footings", () => {
    const m = measured();
    expect(m.floorFt2).toBe(FLOOR_FT2);
    expect(m.deckConcreteFt3PerFt2).toBeCloseTo(8 / 12, 12);
    expect(m.toppingConcreteFt3PerFt2).toBeCloseTo(3 / 12, 12);
    // Depth 10 + 11 + 9 = 30 in: 12 x 30 and 8 x 10, 440 in2. Beams end 9 in and a joint of 1 in short of the column lines:
    // 288 - 20 = 268 in. Four of them.
    expect(m.edgeBeamsConcreteFt3PerFt2 * FLOOR_FT2).toBeCloseTo((4 * 440 * 268) / 1728, 9);
    // Depth 16 + 11 = 27 in: 16 x 27 and twice 8 x 16, 688 in2. Two of them.
    expect(m.girdersConcreteFt3PerFt2 * FLOOR_FT2).toBeCloseTo((2 * 688 * 268) / 1728, 9);
    expect(m.wallsConcreteFt3PerFt2).toBe(0);
    expect(m.roofConcreteFt3PerFt2).toBe(0);
    // Nine columns of 14 in, 14 ft high. Corbels are 14 in wide and stand 8 + 3/2 in out: the interior column has two and two
    // girder ends one each 14 in deep; two edge columns two and four corners one each 10 in deep.
    expect(built().columns.columns.map(({position, column, corbel}) => [position, column.sideIn, corbel?.input.depthIn, corbel?.projectionIn])).toEqual([
      ["interior column", 14, 14, 9.5], ["edge column", 14, 10, 9.5], ["girder end column", 14, 14, 9.5], ["corner column", 14, 10, 9.5],
    ]);
    const corbelsFt3 = (4 * 14 * 9.5 * 14 + 8 * 14 * 9.5 * 10) / 1728;
    expect((m.columnsConcreteFt3PerFt2 as number) * FLOOR_FT2).toBeCloseTo((9 * 14 * 14 * 168) / 1728 + corbelsFt3, 9);
    // Footings: one of 7'-6" and 21 in, four of 5'-6" and 15 in, four of 4 ft and 12 in.
    expect(built().columns.columns.map(({footing}) => [footing?.sideIn, footing?.thicknessIn])).toEqual([[90, 21], [66, 15], [66, 15], [48, 12]]);
    expect((m.footingsConcreteFt3PerFt2 as number) * FLOOR_FT2).toBeCloseTo(7.5 ** 2 * 1.75 + 4 * 5.5 ** 2 * 1.25 + 4 * 16, 9);
  });

  test("strand: eight in four feet of slab, fourteen in each girder, 0.52 lb a foot", () => {
    const m = measured();
    expect(m.deckStrandLbPerFt2).toBeCloseTo((8 * 0.52) / 4, 12);
    expect(m.girdersStrandLbPerFt2 * FLOOR_FT2).toBeCloseTo(2 * 14 * 0.52 * (268 / 12), 9);
    expect([m.edgeBeamsStrandLbPerFt2, m.roofStrandLbPerFt2]).toEqual([0, 0]);
  });

  test("bars of the topping: W4 wires 6 in apart both ways, 0.08 in2 a foot", () => {
    expect(measured().toppingBarsLbPerFt2).toBeCloseTo(2 * 0.08 * 12 * STEEL, 12);
  });

  test("bars of an edge beam: three #9, torsion's around the stirrups, stirrups of #4, and the ledge's", () => {
    const {bars, stirrups, twist, ledge} = built().floor.edgeBeam;
    expect([bars.count, bars.bar.size, stirrups?.bar.size, stirrups?.spacingIn, ledge?.bars.bar.size, ledge?.bars.spacingIn]).toEqual([3, "#9", "#4", 4.5, "#4", 7]);
    // Three of 1.00 in2; of the torsion's bars those that are not in the bottom.
    const alongIn2 = 3 + (twist?.design.lengthwiseIn2 ?? NaN) - (twist?.bottomIn2 ?? NaN);
    // A stirrup's center line stands 1.75 in inside 12 x 30 in: 2 (8.5 + 26.5) = 70 in around, 0.20 in2, each 4.5 in.
    const stirrupsIn2 = (0.2 / 4.5) * 70;
    // Top bars reach through 12 + 8 in less 1.5 in at both ends, and 10 - 3 in down at the nose: 17 + 7 in, 0.20 in2, each 7 in.
    const [place] = ledge?.places ?? [];
    const ledgeIn2 = (0.2 / 7) * 24 + ((place?.steel.tiesIn2 ?? NaN) / 12) * 17 + (place?.steel.lengthwiseIn2 ?? NaN);
    expect(measured().edgeBeamsBarsLbPerFt2 * FLOOR_FT2).toBeCloseTo(4 * 268 * STEEL * (alongIn2 + stirrupsIn2 + ledgeIn2), 8);
  });

  test("bars of a girder: stirrups as close as shear needs most, torsion's bars, and those of both ledges", () => {
    const {shear, twist, seat} = built().floor.girder ?? {};
    const forShear = shear?.stirrups.forShearIn2PerFt ?? NaN;
    // Shear needs more than torsion with its own shear and than the hangers: 0.345 in2 a foot in two legs.
    expect(forShear).toBeCloseTo(0.3447, 4);
    expect(forShear / 12).toBeGreaterThan(twist?.design.stirrupsIn2PerIn ?? NaN);
    expect(forShear / 2).toBeGreaterThan(seat?.ledge?.hanger.hangerIn2PerFt ?? NaN);
    // A stirrup's center line stands 1.5 in inside 16 x 27 in: 2 (13 + 24) = 74 in around.
    const stirrupsIn2 = (forShear / 12 / 2) * 74;
    // Bars across both ledges: 16 + 16 in less 1.25 in at both ends, and 16 - 2.5 in down at each nose.
    const steel = seat?.ledge?.steel;
    const ledgesIn2 = ((steel?.topIn2PerFt ?? NaN) / 12) * (29.5 + 27) + ((steel?.tiesIn2 ?? NaN) / 12) * 29.5 + 2 * (steel?.lengthwiseIn2 ?? NaN);
    expect(measured().girdersBarsLbPerFt2 * FLOOR_FT2).toBeCloseTo(2 * 268 * STEEL * ((twist?.design.lengthwiseIn2 ?? NaN) + stirrupsIn2 + ledgesIn2), 8);
  });

  test("bars of columns and footings: four #8 with #3 ties each 14 in, corbels', and two layers over each footing", () => {
    for (const {column} of built().columns.columns) expect([column.section.count, column.section.bar.size, column.section.ties.size, column.section.ties.spacingIn, column.section.ties.heldBars]).toEqual([4, "#8", "#3", 14, 0]);
    // A tie's center line stands 1.5 in and half of 3/8 in inside 14 in: 4 (14 - 3.375) in around.
    const tieIn2 = ((Math.PI / 4) * 0.375 ** 2 * 4 * 10.625) / 14;
    const corbelIn2 = (position: string) => (of(position).corbel?.mainSteelIn2 ?? NaN) + (of(position).corbel?.stirrupSteelIn2 ?? NaN);
    const corbelsIn3 = (9.5 + 14) * (2 * corbelIn2("interior column") + 2 * corbelIn2("girder end column") + 4 * corbelIn2("edge column") + 4 * corbelIn2("corner column"));
    expect((measured().columnsBarsLbPerFt2 as number) * FLOOR_FT2).toBeCloseTo(STEEL * (9 * 168 * (4 * 0.79 + tieIn2) + corbelsIn3), 8);
    // Minimum steel 0.0018 of side and thickness governs all, each way, 3 in short of the sides.
    const layersIn3 = (sideIn: number, thicknessIn: number) => 2 * 0.0018 * sideIn * thicknessIn * (sideIn - 6);
    expect((measured().footingsBarsLbPerFt2 as number) * FLOOR_FT2).toBeCloseTo(STEEL * (layersIn3(90, 21) + 4 * layersIn3(66, 15) + 4 * layersIn3(48, 12)), 8);
  });

  test("carbon: volumes and weights at round factors", () => {
    const m = measured();
    // 10 kg a cubic foot and 0.01 kg for each of its 150 lb: 11.5; strand 2, bars 1; on site 6.
    expect(m.deckCarbonKgPerFt2).toBeCloseTo((8 / 12) * 11.5 + 1.04 * 2, 10);
    expect(m.toppingCarbonKgPerFt2).toBeCloseTo(0.25 * 6 + m.toppingBarsLbPerFt2, 10);
    expect(m.edgeBeamsCarbonKgPerFt2).toBeCloseTo(m.edgeBeamsConcreteFt3PerFt2 * 11.5 + m.edgeBeamsBarsLbPerFt2, 10);
    expect(m.girdersCarbonKgPerFt2).toBeCloseTo(m.girdersConcreteFt3PerFt2 * 11.5 + 2 * m.girdersStrandLbPerFt2 + m.girdersBarsLbPerFt2, 10);
    expect(m.columnsCarbonKgPerFt2).toBeCloseTo((m.columnsConcreteFt3PerFt2 as number) * 11.5 + (m.columnsBarsLbPerFt2 as number), 10);
    expect(m.footingsCarbonKgPerFt2).toBeCloseTo((m.footingsConcreteFt3PerFt2 as number) * 6 + (m.footingsBarsLbPerFt2 as number), 10);
  });

  test("dead load on the ground: floor by area, beams over their spans, columns over their height", () => {
    // 11 in of concrete weigh 137.5 psf, layers 10 psf.
    expect(built().floor.loads.superimposedDeadPsf).toBe(10);
    const floorKip = (FLOOR_FT2 * 147.5) / 1000;
    // 440 in2 weigh 458.3 plf, on 2 x 48 ft; 688 in2 716.7 plf, on 48 ft.
    const beamsKip = (96 * (440 / 144) * 150 + 48 * (688 / 144) * 150) / 1000;
    const columnsKip = (9 * 14 * (14 / 12) ** 2 * 150) / 1000;
    expect(measured().deadKip).toBeCloseTo(floorKip + beamsKip + columnsKip, 9);
    expect(measured().deadPsf).toBeCloseTo(((floorKip + beamsKip + columnsKip) * 1000) / FLOOR_FT2, 9);
    expect(measured().deadWithoutColumnsPsf).toBeCloseTo(((floorKip + beamsKip) * 1000) / FLOOR_FT2, 9);
  });

  test("pieces: 24 slabs of 8 kip, four beams of 11 and two girders of 17.2 kip on six trucks, nine columns of 2.9 kip on one", () => {
    const m = measured();
    // A slab weighs 4 x 20 x 100 = 8,000 lb: six to a truck of 48 kip, four trucks. Four beams and two girders fit on one each.
    expect(m.piecesWithoutColumns).toBe(30);
    expect(m.truckloadsWithoutColumns).toBe(6);
    expect(m.pieces).toBe(39);
    expect(m.truckloads).toBe(7);
    // 716.7 plf over 24 ft are 17.2 kip, 8.6 tons.
    expect(m.heaviestPieceTons).toBeCloseTo(8.6, 9);
    expect([m.permitPieces, m.overWidthPieces, m.overHeightPieces, m.overLengthPieces, m.overWeightPieces]).toEqual([0, 0, 0, 0, 0]);
  });

  test("heights, walls, columns and free spans", () => {
    const m = measured();
    expect(m.floorToFloorFt).toBe(14);
    expect([m.deckDepthIn, m.structureDepthIn]).toEqual([11, 27]);
    // Without roof and walls the envelope is that of two stories on the column lines: 176 ft around, 28 ft high, on 3,840 ft2.
    expect(m.buildingFt).toBe(28);
    expect(m.wallFt2PerFt2).toBeCloseTo((176 * 28) / 3840, 12);
    expect(m.envelopeFt2PerFt2).toBeCloseTo((176 * 28 + 1920) / 3840, 12);
    expect(m.columnsPer1000Ft2).toBeCloseTo(9 / 1.92, 12);
    // Columns are taken 18 in wide, as the beams are cut for.
    expect([m.clearAcrossFt, m.clearAlongFt]).toEqual([18.5, 22.5]);
  });

  test("cost: each amount at a price of its own that tells it from the others", () => {
    const m = measured();
    const yd3 = (ft3PerFt2: number | undefined) => ((ft3PerFt2 as number) * FLOOR_FT2) / 27;
    const amounts: PricedAmounts = {
      deckPerYd3: yd3(m.deckConcreteFt3PerFt2), beamPerYd3: yd3(m.edgeBeamsConcreteFt3PerFt2) + yd3(m.girdersConcreteFt3PerFt2), columnPerYd3: yd3(m.columnsConcreteFt3PerFt2),
      wallPerYd3: 0, toppingPerYd3: yd3(m.toppingConcreteFt3PerFt2), footingPerYd3: yd3(m.footingsConcreteFt3PerFt2),
      strandPerLb: m.strandLbPerFt2 * FLOOR_FT2, barsPerLb: (m.barsLbPerFt2 as number) * FLOOR_FT2, settingPerPiece: 39, haulingPerTruckload: 7, envelopePerFt2: 176 * 28 + 1920,
    };
    const prices = {deckPerYd3: 600, beamPerYd3: 800, columnPerYd3: 900, toppingPerYd3: 300, footingPerYd3: 400, strandPerLb: 1.2, barsPerLb: 1.5, settingPerPiece: 500, haulingPerTruckload: 700, envelopePerFt2: 60};
    const sum = Object.entries(prices).reduce((total, [name, price]) => total + price * amounts[name as keyof PricedAmounts], 0);
    const priced = measuresOf(built().floor, built().columns, {factors: ROUND, prices});
    expect(priced.costPerFt2).toBeCloseTo(sum / FLOOR_FT2, 8);
    const below = 900 * amounts.columnPerYd3 + 400 * amounts.footingPerYd3 + 1.5 * ((m.columnsBarsLbPerFt2 as number) + (m.footingsBarsLbPerFt2 as number)) * FLOOR_FT2 + 9 * 500 + 700;
    expect(priced.costWithoutColumnsPerFt2).toBeCloseTo((sum - below) / FLOOR_FT2, 8);
  });
});

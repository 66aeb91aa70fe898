import type {ColumnsResult} from "../columns/columnsResult.js";
import {hasParapet} from "../design/used.js";
import type {Evaluation} from "../evaluate.js";
import type {CarbonFactor} from "../materials/carbon.js";
import {LB_PER_KIP, feet} from "../units.js";
import {buildingOf, floorsPriced, wholeLevel, wholePriced} from "./measures/building.js";
import {buildingCarbon} from "./measures/carbonOf.js";
import {columnCounts} from "./measures/columnAmounts.js";
import {blankPrices, costOf, type PricedAmounts} from "./measures/cost.js";
import {carriedKip, ownFootingKip} from "./measures/deadLoad.js";
import {floorLight} from "./measures/floorLight.js";
import {parkingFit} from "./measures/parkingFit.js";
import {PRICE_LIST, type PriceName, type Prices} from "./measures/prices.js";
import {carbonRates} from "./measures/rates.js";
import {bothHauls} from "./measures/road.js";
import type {SchemeMeasures} from "./measures/schemeMeasures.js";
import {greatestUse} from "./measures/use.js";

/** By what a design is measured besides itself. */
export interface MeasuredBy {
  readonly factors: readonly CarbonFactor[];
  /** A reader's own unit prices; blank ones leave the cost undefined where they are needed. */
  readonly prices: Prices;
}

/**
 * The measures of a whole design: all floors that its columns carry, its walls where they are counted, its roof where that
 * is a level of its own, and columns with footings where these are given.
 *
 * Left out are what the kit does not design: steel of deck members besides their strands, of walls and roofs given by two
 * loads; hooks, laps and bars that only hold stirrups; plates, bearings and grout; the ground's slab and the footing of a
 * wall that stands on its own; whatever braces the building; finishes, insulation, windows and light cladding, which weigh
 * and cost but have no carbon here; and what hauling, setting and the years after that take.
 *
 * @param columns - results of the design's columns; what needs them is undefined without
 * @throws InputError if the factors lack a material
 */
export function measuresOf(evaluation: Evaluation, columns: ColumnsResult | undefined, {factors, prices}: MeasuredBy): SchemeMeasures {
  const {design, story, edgeBeam, girder} = evaluation;
  const {bay, column} = design;
  const building = buildingOf(evaluation, columns);
  const {planFt2, floorFt2, floors, floor, roof, wallsFt3, envelope, haul, below, columnHaul} = building;
  const whole = columnHaul && bothHauls(haul, columnHaul);
  const carbon = buildingCarbon(evaluation, building, carbonRates(factors));
  const [ofFloor, ofRoof] = [wholeLevel(floor), wholeLevel(roof)];
  const each = 1 / floorFt2;
  const ofAll = floors * each;
  // Sums without columns, and with them where both they and their footings are known.
  const concreteFt3 = floors * ofFloor.concreteFt3 + ofRoof.concreteFt3 + wallsFt3;
  const barsLb = floors * ofFloor.barsLb + ofRoof.barsLb;
  const carbonKg = carbon.deckKg + carbon.toppingKg + carbon.edgeBeamsKg + carbon.girdersKg + carbon.wallsKg + carbon.roofKg;
  const [under, footed] = [below?.columns, below?.footings];
  const carriedKips = carriedKip(evaluation) + ownFootingKip(evaluation);
  const deadKip = below && carriedKips + below.ownKip;
  const light = floorLight(evaluation);
  const parked = parkingFit(design);
  const counts = columnCounts(design);
  const columnCount = counts["interior column"] + counts["edge column"] + counts["girder end column"] + counts["corner column"];
  const [deckUse, edgeBeamUse, girderUse, storyUse, columnsUse] = [
    greatestUse(evaluation.deck.checks), greatestUse(edgeBeam.checks), greatestUse(girder?.checks), greatestUse(story.checks), greatestUse(columns?.checks),
  ];
  const priced = wholePriced(building);
  const cost = priced && costOf(priced, prices);
  const floorsCost = costOf(floorsPriced(building), prices);
  return {
    floorFt2,
    floorToFloorFt: feet(story.floorToFloorIn), ceilingFt: feet(story.ceilingHeightIn),
    buildingFt: envelope.heightFt + (hasParapet(design) ? feet(design.walls.parapetIn) : 0),
    deckDepthIn: story.deckDepthIn, structureDepthIn: story.deckDepthIn + Math.max(0, edgeBeam.belowDeckIn, girder?.belowDeckIn ?? 0),
    goodDaylightPercent: light.goodPercent, daylitPercent: light.daylitPercent, noSkyPercent: light.noSkyPercent,
    wallFt2PerFt2: envelope.wallPerFloor, envelopeFt2PerFt2: (envelope.wallFt2 + envelope.roofFt2) / envelope.floorFt2,

    concreteFt3PerFt2: under && footed && (concreteFt3 + under.concreteFt3 + footed.concreteFt3) * each,
    concreteWithoutColumnsFt3PerFt2: concreteFt3 * each,
    deckConcreteFt3PerFt2: floor.deck.concreteFt3 * ofAll, toppingConcreteFt3PerFt2: floor.topping.concreteFt3 * ofAll,
    edgeBeamsConcreteFt3PerFt2: floor.edgeBeams.concreteFt3 * ofAll, girdersConcreteFt3PerFt2: floor.girders.concreteFt3 * ofAll,
    wallsConcreteFt3PerFt2: wallsFt3 * each, roofConcreteFt3PerFt2: ofRoof.concreteFt3 * each,
    columnsConcreteFt3PerFt2: under && under.concreteFt3 * each, footingsConcreteFt3PerFt2: footed && footed.concreteFt3 * each,

    strandLbPerFt2: (floors * ofFloor.strandLb + ofRoof.strandLb) * each,
    deckStrandLbPerFt2: floor.deck.strandLb * ofAll, edgeBeamsStrandLbPerFt2: floor.edgeBeams.strandLb * ofAll,
    girdersStrandLbPerFt2: floor.girders.strandLb * ofAll, roofStrandLbPerFt2: ofRoof.strandLb * each,

    barsLbPerFt2: under && footed && (barsLb + under.barsLb + footed.barsLb) * each,
    barsWithoutColumnsLbPerFt2: barsLb * each,
    toppingBarsLbPerFt2: floor.topping.barsLb * ofAll, edgeBeamsBarsLbPerFt2: floor.edgeBeams.barsLb * ofAll,
    girdersBarsLbPerFt2: floor.girders.barsLb * ofAll, roofBarsLbPerFt2: ofRoof.barsLb * each,
    columnsBarsLbPerFt2: under && under.barsLb * each, footingsBarsLbPerFt2: footed && footed.barsLb * each,

    carbonKgPerFt2: carbon.columnsKg !== undefined && carbon.footingsKg !== undefined ? (carbonKg + carbon.columnsKg + carbon.footingsKg) * each : undefined,
    carbonWithoutColumnsKgPerFt2: carbonKg * each,
    deckCarbonKgPerFt2: carbon.deckKg * each, toppingCarbonKgPerFt2: carbon.toppingKg * each, edgeBeamsCarbonKgPerFt2: carbon.edgeBeamsKg * each,
    girdersCarbonKgPerFt2: carbon.girdersKg * each, wallsCarbonKgPerFt2: carbon.wallsKg * each, roofCarbonKgPerFt2: carbon.roofKg * each,
    columnsCarbonKgPerFt2: carbon.columnsKg !== undefined ? carbon.columnsKg * each : undefined,
    footingsCarbonKgPerFt2: carbon.footingsKg !== undefined ? carbon.footingsKg * each : undefined,

    deadPsf: deadKip !== undefined ? deadKip * LB_PER_KIP * each : undefined, deadKip,
    deadWithoutColumnsPsf: carriedKips * LB_PER_KIP * each,

    pieces: whole?.pieces, piecesWithoutColumns: haul.pieces, truckloads: whole?.truckloads, truckloadsWithoutColumns: haul.truckloads,
    heaviestPieceTons: whole?.heaviestTons, heaviestPieceWithoutColumnsTons: haul.heaviestTons,
    overWidthPieces: whole?.overWidth, overWidthWithoutColumnsPieces: haul.overWidth,
    overHeightPieces: whole?.overHeight, overHeightWithoutColumnsPieces: haul.overHeight,
    overLengthPieces: whole?.overLength, overLengthWithoutColumnsPieces: haul.overLength,
    overWeightPieces: whole?.overWeight, overWeightWithoutColumnsPieces: haul.overWeight,
    permitPieces: whole?.permits, permitWithoutColumnsPieces: haul.permits,

    columnsPer1000Ft2: (1000 * columnCount) / planFt2,
    clearAcrossFt: bay.spanFt - feet(column.sideIn), clearAlongFt: bay.beamSpanFt - feet(column.sideIn),
    parkingModules: parked.modules, parkingStalls: parked.stalls, parkingFt2PerStall: parked.stalls > 0 ? planFt2 / parked.stalls : undefined,

    deckUse: deckUse.use, deckUseCheck: deckUse.check, edgeBeamUse: edgeBeamUse.use, edgeBeamUseCheck: edgeBeamUse.check,
    girderUse: girderUse.use, girderUseCheck: girderUse.check, storyUse: storyUse.use, storyUseCheck: storyUse.check,
    columnsUse: columnsUse.use, columnsUseCheck: columnsUse.check,

    costPerFt2: cost !== undefined ? cost * each : undefined,
    costWithoutColumnsPerFt2: floorsCost !== undefined ? floorsCost * each : undefined,
  };
}

/**
 * Prices that a design's cost needs and that are blank; of columns and footings too where these are given. Asked of the
 * one scheme whose cost is looked at.
 */
export function pricesMissing(evaluation: Evaluation, columns: ColumnsResult | undefined, prices: Prices): PriceName[] {
  const building = buildingOf(evaluation, columns);
  return blankPrices(wholePriced(building) ?? floorsPriced(building), prices);
}

/**
 * What a design's cost goes by, per square foot of the floors that its columns carry: with columns and footings where
 * these are given, and undefined where one of them has no size.
 */
export function amountsOf(evaluation: Evaluation, columns: ColumnsResult | undefined): PricedAmounts | undefined {
  const building = buildingOf(evaluation, columns);
  const amounts = columns ? wholePriced(building) : floorsPriced(building);
  if (!amounts) return undefined;
  const each = Object.keys(PRICE_LIST).map((name) => [name, amounts[name as PriceName] / building.floorFt2]);
  return Object.fromEntries(each) as PricedAmounts;
}

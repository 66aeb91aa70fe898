import type {ColumnsResult} from "../../columns/columnsResult.js";
import type {Evaluation} from "../../evaluate.js";
import {FT3_PER_YD3} from "../../materials/carbon.js";
import {knownEnvelope, type Envelope} from "../../story/envelope.js";
import {columnAmounts, type ColumnAmounts} from "./columnAmounts.js";
import {yd3, type PricedAmounts} from "./cost.js";
import {floorPieces} from "./floorPieces.js";
import {NOTHING, floorAmounts, roofAmounts, type Amounts, type LevelAmounts} from "./level.js";
import {haulOf, type Haul} from "./road.js";

/** All that is counted of a building, before it is put per square foot. */
export interface Building {
  readonly planFt2: number;
  /** All floors that the columns carry. */
  readonly floorFt2: number;
  readonly floors: number;
  /** One floor, and the roof where it is a level of its own. */
  readonly floor: LevelAmounts;
  readonly roof: LevelAmounts;
  /** Precast concrete of short sides, parapet and strips in front of the deck's ends; their steel is not designed. */
  readonly wallsFt3: number;
  readonly envelope: Envelope;
  readonly haul: Haul;
  /** Columns and footings; undefined where they are not given or have no size. */
  readonly below: ColumnAmounts | undefined;
  readonly columnHaul: Haul | undefined;
}

const NO_LEVEL: LevelAmounts = {deck: NOTHING, topping: NOTHING, edgeBeams: NOTHING, girders: NOTHING};

/** Counts a design: every level, its walls, and the columns where they are given. */
export function buildingOf(evaluation: Evaluation, columns: ColumnsResult | undefined): Building {
  const {design, roof, walls, story} = evaluation;
  const {bay} = design;
  const planFt2 = bay.beamSpanFt * bay.baysAlong * bay.spanFt * bay.baysAcross;
  const below = columns && columnAmounts(design, columns);
  return {
    planFt2, floorFt2: planFt2 * bay.floors, floors: bay.floors,
    floor: floorAmounts(evaluation),
    roof: roof ? roofAmounts(roof, walls.roofEdge) : NO_LEVEL,
    wallsFt3: walls.materials.concreteYd3 * FT3_PER_YD3,
    envelope: knownEnvelope(design, story, walls),
    haul: haulOf(floorPieces(evaluation)),
    below, columnHaul: below && haulOf(below.pieces),
  };
}

/** All four parts of a level together. */
export function wholeLevel({deck, topping, edgeBeams, girders}: LevelAmounts): Amounts {
  return {
    concreteFt3: deck.concreteFt3 + topping.concreteFt3 + edgeBeams.concreteFt3 + girders.concreteFt3,
    strandLb: deck.strandLb + edgeBeams.strandLb + girders.strandLb,
    barsLb: topping.barsLb + edgeBeams.barsLb + girders.barsLb,
  };
}

/** What a cost of the building goes by, without columns and footings. */
export function floorsPriced({floors, floor, roof, wallsFt3, envelope, haul}: Building): PricedAmounts {
  const [ofFloor, ofRoof] = [wholeLevel(floor), wholeLevel(roof)];
  const beamsFt3 = floors * (floor.edgeBeams.concreteFt3 + floor.girders.concreteFt3) + roof.edgeBeams.concreteFt3 + roof.girders.concreteFt3;
  return {
    deckPerYd3: yd3(floors * floor.deck.concreteFt3 + roof.deck.concreteFt3), beamPerYd3: yd3(beamsFt3), columnPerYd3: 0, wallPerYd3: yd3(wallsFt3),
    toppingPerYd3: yd3(floors * floor.topping.concreteFt3 + roof.topping.concreteFt3), footingPerYd3: 0,
    strandPerLb: floors * ofFloor.strandLb + ofRoof.strandLb, barsPerLb: floors * ofFloor.barsLb + ofRoof.barsLb,
    settingPerPiece: haul.pieces, haulingPerTruckload: haul.truckloads, envelopePerFt2: envelope.wallFt2 + envelope.roofFt2,
  };
}

/** The same with columns and footings; undefined where these are not all known. */
export function wholePriced(building: Building): PricedAmounts | undefined {
  const {below, columnHaul} = building;
  if (!below?.columns || !below.footings || !columnHaul) return undefined;
  const floors = floorsPriced(building);
  return {
    ...floors, columnPerYd3: yd3(below.columns.concreteFt3), footingPerYd3: yd3(below.footings.concreteFt3),
    barsPerLb: floors.barsPerLb + below.columns.barsLb + below.footings.barsLb,
    settingPerPiece: floors.settingPerPiece + columnHaul.pieces, haulingPerTruckload: floors.haulingPerTruckload + columnHaul.truckloads,
  };
}

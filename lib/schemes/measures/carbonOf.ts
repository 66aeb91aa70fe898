import type {Evaluation} from "../../evaluate.js";
import {concrete, type Concrete} from "../../materials/concrete.js";
import type {Building} from "./building.js";
import type {Amounts, LevelAmounts} from "./level.js";
import {precastKgPerFt3, siteKgPerFt3, type CarbonRates} from "./rates.js";

/** Embodied carbon of a building by its parts, kgCO2e, modules A1 to A3; of the floors all together. */
export interface BuildingCarbon {
  readonly deckKg: number;
  readonly toppingKg: number;
  readonly edgeBeamsKg: number;
  readonly girdersKg: number;
  readonly wallsKg: number;
  readonly roofKg: number;
  readonly columnsKg: number | undefined;
  readonly footingsKg: number | undefined;
}

/** A level's concretes. */
type Made = Pick<Evaluation, "member" | "edgeBeam" | "girder" | "design">;

/** Carbon of what was counted of a building: concrete, strand, bars and the plant's work at the rates of a table. */
export function buildingCarbon({design, member, edgeBeam, girder, roof}: Evaluation, {floors, floor, roof: onRoof, wallsFt3, below}: Building, rates: CarbonRates): BuildingCarbon {
  const of = levelCarbon({design, member, edgeBeam, girder}, floor, rates);
  const ofRoof = roof ? levelCarbon(roof, onRoof, rates) : undefined;
  return {
    deckKg: floors * of.deckKg, toppingKg: floors * of.toppingKg, edgeBeamsKg: floors * of.edgeBeamsKg, girdersKg: floors * of.girdersKg,
    wallsKg: wallsFt3 * precastKgPerFt3(rates, concrete("normalweight", design.walls.strengthPsi)),
    roofKg: ofRoof ? ofRoof.deckKg + ofRoof.toppingKg + ofRoof.edgeBeamsKg + ofRoof.girdersKg : 0,
    columnsKg: below?.columns && precastKg(rates, below.columns, concrete("normalweight", design.column.strengthPsi)),
    footingsKg: below?.footings && siteKg(rates, below.footings, design.ground.footingStrengthPsi),
  };
}

function levelCarbon({design, member, edgeBeam, girder}: Made, {deck, topping, edgeBeams, girders}: LevelAmounts, rates: CarbonRates) {
  return {
    deckKg: precastKg(rates, deck, member.concrete), toppingKg: siteKg(rates, topping, design.deck.toppingStrengthPsi),
    edgeBeamsKg: precastKg(rates, edgeBeams, edgeBeam.concrete), girdersKg: girder ? precastKg(rates, girders, girder.member.concrete) : 0,
  };
}

function precastKg(rates: CarbonRates, {concreteFt3, strandLb, barsLb}: Amounts, of: Concrete): number {
  return concreteFt3 * precastKgPerFt3(rates, of) + strandLb * rates.strandKgPerLb + barsLb * rates.barsKgPerLb;
}

function siteKg(rates: CarbonRates, {concreteFt3, barsLb}: Amounts, strengthPsi: number): number {
  return concreteFt3 * siteKgPerFt3(rates, strengthPsi) + barsLb * rates.barsKgPerLb;
}

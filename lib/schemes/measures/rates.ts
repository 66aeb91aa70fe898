import {carbonKgPerLb, concreteCarbonKgPerFt3, type CarbonFactor, type CastPlace} from "../../materials/carbon.js";
import type {Concrete, ConcreteKind} from "../../materials/concrete.js";

/** Carbon factors in the units that amounts come in, each looked up once. */
export interface CarbonRates {
  readonly strandKgPerLb: number;
  readonly barsKgPerLb: number;
  /** Casting and curing in a plant, by the piece's weight. */
  readonly plantKgPerLb: number;
  readonly factors: readonly CarbonFactor[];
  readonly concretes: Map<string, Map<number, number>>;
}

const KNOWN = new WeakMap<readonly CarbonFactor[], CarbonRates>();

/** The rates of a table of factors; throws {@link InputError} if it lacks a material. */
export function carbonRates(factors: readonly CarbonFactor[]): CarbonRates {
  const known = KNOWN.get(factors);
  if (known) return known;
  const rates: CarbonRates = {
    strandKgPerLb: carbonKgPerLb(factors, "strand"), barsKgPerLb: carbonKgPerLb(factors, "reinforcing bars"), plantKgPerLb: carbonKgPerLb(factors, "plant work"),
    factors, concretes: new Map(),
  };
  KNOWN.set(factors, rates);
  return rates;
}

/** A cubic foot of concrete cast in a plant, its casting and curing included, kgCO2e. */
export function precastKgPerFt3(rates: CarbonRates, {kind, strengthPsi, unitWeightPcf}: Concrete): number {
  return concreteKgPerFt3(rates, "precast", kind, strengthPsi) + unitWeightPcf * rates.plantKgPerLb;
}

/** A cubic foot of normalweight concrete cast on site, kgCO2e. */
export function siteKgPerFt3(rates: CarbonRates, strengthPsi: number): number {
  return concreteKgPerFt3(rates, "cast on site", "normalweight", strengthPsi);
}

function concreteKgPerFt3({factors, concretes}: CarbonRates, place: CastPlace, kind: ConcreteKind, strengthPsi: number): number {
  const name = `${place} ${kind}`;
  let strengths = concretes.get(name);
  if (!strengths) concretes.set(name, strengths = new Map());
  let kg = strengths.get(strengthPsi);
  if (kg === undefined) strengths.set(strengthPsi, kg = concreteCarbonKgPerFt3(factors, place, kind, strengthPsi));
  return kg;
}

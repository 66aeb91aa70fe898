import {carbonKgPerLb, concreteCarbonKgPerFt3, type CarbonFactor} from "../materials/carbon.js";
import type {Member} from "../member/member.js";
import {IN2_PER_FT2, feet} from "../units.js";

/** What a deck costs each square foot of floor, in five measures; the less of each the better. */
export interface DeckMeasures {
  /** Member and topping, in. */
  readonly depthIn: number;
  /** Member and topping, psf. */
  readonly weightPsf: number;
  /** Strand, lb per square foot. */
  readonly strandPsf: number;
  /** Concrete of member and topping, cubic feet per square foot: the thickness in feet that it would have as a flat slab. */
  readonly concreteFt: number;
  /** Embodied carbon of concrete, strand and the plant's work (modules A1 to A3), kgCO2e per square foot. */
  readonly carbonKgPerFt2: number;
}

/** The measures in the order in which lists and charts name them. */
export const MEASURES = ["depthIn", "weightPsf", "strandPsf", "concreteFt", "carbonKgPerFt2"] as const satisfies readonly (keyof DeckMeasures)[];
export type MeasureName = (typeof MEASURES)[number];

/** Where a deck's embodied carbon comes from, kgCO2e per square foot of floor. */
export interface DeckCarbon {
  readonly precastConcreteKg: number;
  readonly toppingKg: number;
  readonly strandKg: number;
  /** Casting and curing in the plant. */
  readonly plantWorkKg: number;
  readonly totalKg: number;
}

/**
 * A deck's measures. The topping counts at its minimum thickness, as it is designed: what fills the camber comes on top.
 * The concrete counts without what the strands displace.
 */
export function deckMeasures(member: Member, factors: readonly CarbonFactor[]): DeckMeasures {
  return {
    depthIn: member.compression.depthIn,
    weightPsf: (member.selfWeightPlf + member.toppingWeightPlf) / member.widthFt,
    strandPsf: strandPsf(member),
    concreteFt: concreteFt(member),
    carbonKgPerFt2: deckCarbon(member, factors).totalKg,
  };
}

/**
 * A deck's embodied carbon by its parts, cradle to gate (EN 15978 modules A1 to A3): volumes and weights times the
 * factors of the table. Mesh, bars, plates, bearings, hauling, cranes and the end of life are left out.
 *
 * @throws InputError if the factors lack a material of the deck
 */
export function deckCarbon(member: Member, factors: readonly CarbonFactor[]): DeckCarbon {
  const {concrete, topping} = member;
  const precastConcreteKg = precastFt(member) * concreteCarbonKgPerFt3(factors, "precast", concrete.kind, concrete.strengthPsi);
  const toppingKg = topping ? toppingFt(member) * concreteCarbonKgPerFt3(factors, "cast on site", topping.concrete.kind, topping.concrete.strengthPsi) : 0;
  const strandKg = strandPsf(member) * carbonKgPerLb(factors, "strand");
  const plantWorkKg = (member.selfWeightPlf / member.widthFt) * carbonKgPerLb(factors, "plant work");
  return {precastConcreteKg, toppingKg, strandKg, plantWorkKg, totalKg: precastConcreteKg + toppingKg + strandKg + plantWorkKg};
}

/** Strand per square foot of floor, lb. */
export function strandPsf({layout, widthFt}: Member): number {
  return (layout.count * layout.strand.weightPlf) / widthFt;
}

/** Thickness that the member's concrete would have if it were spread level over its width, ft. */
export function precastFt({section, widthFt}: Member): number {
  return section.areaIn2 / IN2_PER_FT2 / widthFt;
}

/** Thickness that the topping's concrete has, ft; 0 where there is none. */
export function toppingFt({topping}: Member): number {
  return topping ? feet(topping.thicknessIn) : 0;
}

/** Thickness that all of a deck's concrete would have as a flat slab, ft. */
export function concreteFt(member: Member): number {
  return precastFt(member) + toppingFt(member);
}

/** The measures as a list of numbers in the order of {@link MEASURES}, or of those that are asked for. */
export function measureValues(measures: DeckMeasures, names: readonly MeasureName[] = MEASURES): readonly number[] {
  return names.map((name) => measures[name]);
}

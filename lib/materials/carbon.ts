import {requireNumber, type NumberRule} from "../check.js";
import {InputError} from "../errors.js";
import {IN3_PER_YD3, IN_PER_FT} from "../units.js";
import type {ConcreteKind} from "./concrete.js";

/** What a carbon factor is for. Plant work is the casting and curing of a precast piece, by its weight. */
export const CARBON_MATERIALS = ["concrete", "strand", "plant work", "reinforcing bars"] as const;
export type CarbonMaterial = (typeof CARBON_MATERIALS)[number];

/** Where a concrete is cast; a plant wants its strength early, which takes more cement. */
export const CAST_PLACES = ["precast", "cast on site"] as const;
export type CastPlace = (typeof CAST_PLACES)[number];

/** Embodied carbon of a unit of a material: what making it sends into the air, as the like warming by carbon dioxide. */
export interface CarbonFactor {
  readonly id: string;
  readonly material: CarbonMaterial;
  /** For concrete: where it is cast, its kind and its strength at 28 days, psi. */
  readonly concrete: {readonly place: CastPlace; readonly kind: ConcreteKind; readonly strengthPsi: number} | undefined;
  /** Concrete goes by the cubic yard as it is ordered, the rest by the pound. */
  readonly unit: "yd3" | "lb";
  /** kgCO2e per unit. */
  readonly kgPerUnit: number;
  /** Modules of the life cycle (EN 15978, ISO 21930): A1 raw materials, A2 their transport, A3 manufacture. */
  readonly stage: "A1-A3" | "A3";
  readonly source: string;
  /** Year of the source. */
  readonly date: string;
  readonly confidence: "seen in text" | "worked out" | "from memory";
}

/** Cubic feet in a cubic yard. */
export const FT3_PER_YD3 = IN3_PER_YD3 / IN_PER_FT ** 3;
/** Greatest factor that a reader may set, kgCO2e per unit: twice what any concrete of the table has. */
export const MOST_KG_PER_UNIT = 1500;

/** A concrete's factor in the table: its strength, psi, and kgCO2e per cubic yard. */
export interface CarbonPoint {
  readonly strengthPsi: number;
  readonly kgPerYd3: number;
}

/**
 * Embodied carbon of a concrete, kgCO2e per cubic foot: straight lines between the strengths of the table. Past its
 * ends the last line goes on, and never falls below nothing.
 *
 * @throws InputError if the table has fewer than two strengths of such a concrete
 */
export function concreteCarbonKgPerFt3(
  factors: readonly CarbonFactor[], place: CastPlace, kind: ConcreteKind, strengthPsi: number,
): number {
  const [low, high] = carbonBracket(factors, place, kind, strengthPsi);
  const share = (strengthPsi - low.strengthPsi) / (high.strengthPsi - low.strengthPsi);
  return Math.max(0, low.kgPerYd3 + share * (high.kgPerYd3 - low.kgPerYd3)) / FT3_PER_YD3;
}

/** The two rows of the table between which, or past which, a strength lies; throws {@link InputError} if there are none. */
export function carbonBracket(
  factors: readonly CarbonFactor[], place: CastPlace, kind: ConcreteKind, strengthPsi: number,
): readonly [CarbonPoint, CarbonPoint] {
  const points = factors
    .flatMap(({concrete, kgPerUnit}) => (concrete && concrete.place === place && concrete.kind === kind ? [{strengthPsi: concrete.strengthPsi, kgPerYd3: kgPerUnit}] : []))
    .sort((a, b) => a.strengthPsi - b.strengthPsi);
  const next = points.findIndex((point) => point.strengthPsi >= strengthPsi);
  const end = Math.max(1, next < 0 ? points.length - 1 : next);
  const [low, high] = [points[end - 1], points[end]];
  if (!low || !high) throw missing(`${kind} concrete, ${place}`, "two strengths or more");
  return [low, high];
}

/** Embodied carbon of a material that goes by the pound, kgCO2e per lb; throws {@link InputError} if the table lacks it. */
export function carbonKgPerLb(factors: readonly CarbonFactor[], material: Exclude<CarbonMaterial, "concrete">): number {
  const found = factors.find((factor) => factor.material === material);
  if (!found) throw missing(material, "a row for it");
  return found.kgPerUnit;
}

/**
 * The table with some of its factors exchanged for a reader's own, by id; an id that the table does not know is passed
 * over, for the table may have changed since the reader set it.
 *
 * @throws InputError if a factor is not a number from 0 to {@link MOST_KG_PER_UNIT}
 */
export function withOwnFactors(factors: readonly CarbonFactor[], own: Readonly<Record<string, number>>): readonly CarbonFactor[] {
  return factors.map((factor) => {
    if (!Object.hasOwn(own, factor.id)) return factor;
    return {...factor, kgPerUnit: requireNumber(own[factor.id], carbonFactorRule(factor))};
  });
}

/** What a factor of the reader's own may be. */
export function carbonFactorRule(factor: CarbonFactor): NumberRule {
  return {path: factor.id, label: carbonFactorName(factor), unit: `kgCO2e per ${factor.unit}`, min: 0, max: MOST_KG_PER_UNIT};
}

/** A factor's name in words: "precast concrete, sand-lightweight, 5,000 psi". */
export function carbonFactorName({material, concrete}: Pick<CarbonFactor, "material" | "concrete">): string {
  if (!concrete) return material;
  const place = concrete.place === "precast" ? "precast concrete" : "concrete cast on site";
  return `${place}, ${concrete.kind}, ${concrete.strengthPsi.toLocaleString("en-US")} psi`;
}

function missing(what: string, allowed: string): InputError {
  return new InputError({path: "carbon", label: "carbon factors", value: what, allowed});
}

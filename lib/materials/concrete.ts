/** Concrete by the density classes of ACI 318-19 19.2.4. */
export type ConcreteKind = "normalweight" | "sand-lightweight";
/** Aggregate of normalweight concrete, by which the code's fire tables are ordered. */
export type Aggregate = "siliceous" | "carbonate";

/** A concrete of given kind and strength. */
export interface Concrete {
  readonly kind: ConcreteKind;
  /** Specified compressive strength f'c, psi. */
  readonly strengthPsi: number;
  /** Unit weight wc, pcf: 150 for normalweight and 115 for sand-lightweight (the trade handbook's tables). */
  readonly unitWeightPcf: number;
  /** Lightweight factor lambda: 1.0 or 0.85 (ACI 318-19 Table 19.2.4.1(b)). */
  readonly lambda: number;
}

const KINDS: Readonly<Record<ConcreteKind, {unitWeightPcf: number; lambda: number}>> = {
  "normalweight": {unitWeightPcf: 150, lambda: 1},
  "sand-lightweight": {unitWeightPcf: 115, lambda: 0.85},
};

/** A concrete of the given kind with the unit weight and lambda of its kind. */
export function concrete(kind: ConcreteKind, strengthPsi: number): Concrete {
  const {unitWeightPcf, lambda} = KINDS[kind];
  return {kind, strengthPsi, unitWeightPcf, lambda};
}

/**
 * Modulus of elasticity, ksi: wc^1.5 33 sqrt(f'c) (ACI 318-19 19.2.2.1(a), wc 90 to 160 pcf).
 *
 * @param strengthPsi - strength at the age in question: f'c, or f'ci at release
 */
export function elasticModulusKsi(unitWeightPcf: number, strengthPsi: number): number {
  return (unitWeightPcf ** 1.5 * 33 * Math.sqrt(strengthPsi)) / 1000;
}

/** Modulus of rupture fr, ksi: 7.5 lambda sqrt(f'c) (ACI 318-19 19.2.3.1). */
export function ruptureModulusKsi(material: Concrete): number {
  return (7.5 * material.lambda * Math.sqrt(material.strengthPsi)) / 1000;
}

/** Depth of the equivalent stress block over the depth of the neutral axis, beta1 (ACI 318-19 Table 22.2.2.4.3). */
export function stressBlockFactor(strengthPsi: number): number {
  return Math.min(0.85, Math.max(0.65, 0.85 - (0.05 * (strengthPsi - 4000)) / 1000));
}

/** Greatest usable strain of concrete in compression (ACI 318-19 22.2.2.1). */
export const CONCRETE_CRUSHING_STRAIN = 0.003;

/** A deformed bar of ASTM A615. */
export interface Bar {
  /** Size as the trade writes it: `#8`. */
  readonly size: string;
  readonly diameterIn: number;
  readonly areaIn2: number;
}

/** Yield strength of Grade 60 reinforcement, ksi (ASTM A615). */
export const BAR_YIELD_KSI = 60;
/** Modulus of elasticity of deformed bars, ksi (ACI 318-19 20.2.2.2). */
export const BAR_MODULUS_KSI = 29000;

/** Stress of a Grade 60 bar at a strain, ksi, tension positive: elastic, then constant (ACI 318-19 20.2.2.1). */
export function barStressKsi(strain: number): number {
  return Math.max(-BAR_YIELD_KSI, Math.min(BAR_YIELD_KSI, BAR_MODULUS_KSI * strain));
}

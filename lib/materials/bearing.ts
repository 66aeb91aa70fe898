import {requireNumber} from "../check.js";

/** Strength reduction factor for bearing (ACI 318-19 Table 21.2.1(d)). */
export const BEARING_PHI = 0.65;

// Made once: tables of safe loads ask some hundred thousand times.
const STRENGTH = {path: "strengthPsi", label: "concrete strength", unit: "psi", min: 2500, max: 12000};
const LOADED = {path: "loadedIn2", label: "loaded area", unit: "in2", min: 0.25, max: 1e5};

/**
 * Design bearing strength of concrete, kip: 0.65 x 0.85 f'c A1, times sqrt(A2/A1) up to 2 where the support is wider
 * than the bearing on all sides (ACI 318-19 22.8.3.2).
 *
 * @param strengthPsi - specified strength f'c, 2,500 to 12,000 psi
 * @param loadedIn2 - loaded area A1, 0.25 to 100,000 in2
 * @param supportIn2 - area A2 that the load spreads to in the support, similar in shape to and concentric with A1 and not
 * below it; A1 itself by default
 * @throws InputError if the strength or an area is out of its range
 */
export function concreteBearingKip(strengthPsi: number, loadedIn2: number, supportIn2?: number): number {
  requireNumber(strengthPsi, STRENGTH);
  requireNumber(loadedIn2, LOADED);
  const plainKip = (BEARING_PHI * 0.85 * strengthPsi * loadedIn2) / 1000;
  if (supportIn2 === undefined) return plainKip;
  requireNumber(supportIn2, {path: "supportIn2", label: "area of the support", unit: "in2", min: loadedIn2, max: 1e9});
  return plainKip * Math.min(2, Math.sqrt(supportIn2 / loadedIn2));
}

import {requireNumber} from "../check.js";

/** Strength reduction factor for bearing (ACI 318-19 Table 21.2.1). */
export const BEARING_PHI = 0.65;

/**
 * Design bearing strength of concrete, kip: 0.65 x 0.85 f'c A1, times sqrt(A2/A1) up to 2 where the support is wider
 * than the bearing on all sides (ACI 318-19 22.8.3.2).
 *
 * @param loadedIn2 - bearing area A1
 * @param supportIn2 - area A2 of the support below, similar in shape to and concentric with A1; A1 itself by default
 */
export function bearingStrengthKip(strengthPsi: number, loadedIn2: number, supportIn2 = loadedIn2): number {
  requireNumber(strengthPsi, {path: "strengthPsi", label: "concrete strength", unit: "psi", min: 2500, max: 12000});
  requireNumber(loadedIn2, {path: "loadedIn2", label: "bearing area", unit: "in2", min: 1, max: 1e5});
  requireNumber(supportIn2, {path: "supportIn2", label: "area of the support", unit: "in2", min: loadedIn2, max: 1e8});
  const spread = Math.min(2, Math.sqrt(supportIn2 / loadedIn2));
  return (BEARING_PHI * 0.85 * strengthPsi * loadedIn2 * spread) / 1000;
}

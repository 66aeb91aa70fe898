import type {Concrete} from "./concrete.js";

/** Greatest sqrt(f'c) that may be counted in shear and torsion, psi: that of 10,000 psi (ACI 318-19 22.5.3.1, 22.6.3.1, 22.7.2.1). */
export const MOST_ROOT_PSI = 100;

/** lambda sqrt(f'c) as shear, punching and torsion count it, psi: sqrt(f'c) not above 100 psi. */
export function shearRootPsi(material: Concrete): number {
  return material.lambda * Math.min(MOST_ROOT_PSI, Math.sqrt(material.strengthPsi));
}

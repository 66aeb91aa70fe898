import {STRAND_MODULUS_KSI, strandStressKsi} from "../materials/strand.js";
import {centroidAt, depression} from "../prestress/layout.js";
import {flexuralStrength, type FlexuralStrength, type SteelLayer} from "./flexure.js";
import type {Member} from "./member.js";

/**
 * The strand rows of a member at a place along the span as layers of steel.
 *
 * The strain before bending is the effective prestress over the modulus, plus the strain that brings the concrete
 * beside the strand back from its precompression to zero.
 *
 * @param share - place along the span, 0 to 1
 * @param stressKsi - the strands' curve, where it is not that of the material alone
 */
export function strandLayers(member: Member, share: number, effectiveStressKsi: number, stressKsi = strandStressKsi): SteelLayer[] {
  const {layout, compression} = member;
  const at = depression(layout.profile, share);
  const strainBefore = effectiveStressKsi / STRAND_MODULUS_KSI + decompressionStrain(member, share, effectiveStressKsi);
  return layout.rows.map((row) => ({
    areaIn2: row.areaIn2,
    depthIn: compression.depthIn - (row.endIn + at * (row.centerIn - row.endIn)),
    strainBefore,
    stressKsi,
  }));
}

/** Strain of the concrete at the strands' centroid under the effective prestress alone. */
export function decompressionStrain(member: Member, share: number, effectiveStressKsi: number): number {
  const {section, layout} = member;
  const eccentricityIn = section.ybIn - centroidAt(layout, share);
  const forceKip = layout.areaIn2 * effectiveStressKsi;
  return (forceKip * (1 / section.areaIn2 + eccentricityIn ** 2 / section.inertiaIn4)) / member.modulusKsi;
}

/** Flexural strength of a member at a place along the span, with its strand fully developed there. */
export function memberStrength(member: Member, share: number, effectiveStressKsi: number): FlexuralStrength {
  return flexuralStrength(member.compression, strandLayers(member, share, effectiveStressKsi));
}

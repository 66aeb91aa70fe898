import {STRAND_MODULUS_KSI, strandStressKsi} from "../materials/strand.js";
import {JACKING_STRESS_KSI} from "../prestress/losses.js";
import {strainAt, type FlexuralStrength} from "./flexure.js";
import type {Member} from "./member.js";
import {strandLayers} from "./strength.js";

/** A point of the strand's stress-strain curve. */
export interface StrandState {
  readonly strain: number;
  readonly stressKsi: number;
}

/** What a section looks like at the moment when it would break, for drawings and charts. */
export interface UltimateState {
  /** The strands as they are pulled, and what is left of that after all losses. */
  readonly jacked: StrandState;
  readonly effective: StrandState;
  /** Each row of strands at the ultimate state, deepest first, with its depth below the compressed face, in. */
  readonly rows: readonly (StrandState & {readonly depthIn: number})[];
  /** Depth of the equivalent block of compression by the concrete of the compressed face, in (ACI 318-19 22.2.2.4). */
  readonly blockIn: number;
}

/**
 * The strands on their curve and the block of compression at the ultimate state.
 *
 * @param share - place along the span, 0 to 1
 * @param strength - the ultimate state at that place
 */
export function ultimateState(member: Member, share: number, effectiveStressKsi: number, strength: FlexuralStrength): UltimateState {
  const {neutralAxisIn} = strength;
  const rows = strandLayers(member, share, effectiveStressKsi).map((layer) => {
    const strain = strainAt(layer, neutralAxisIn);
    return {strain, stressKsi: strandStressKsi(strain), depthIn: layer.depthIn};
  });
  return {
    jacked: onStraightPart(JACKING_STRESS_KSI),
    effective: onStraightPart(effectiveStressKsi),
    rows: rows.sort((a, b) => b.depthIn - a.depthIn),
    blockIn: (member.compression.blockFactor[0] ?? 0) * neutralAxisIn,
  };
}

function onStraightPart(stressKsi: number): StrandState {
  return {strain: stressKsi / STRAND_MODULUS_KSI, stressKsi};
}

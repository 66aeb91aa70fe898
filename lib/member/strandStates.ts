import {strandStressKsi} from "../materials/strand.js";
import {strainAt} from "./flexure.js";
import type {Member} from "./member.js";
import {strandLayers} from "./strength.js";

/** A strand row on its stress-strain curve. */
export interface StrandState {
  readonly strain: number;
  readonly stressKsi: number;
  /** Below the compressed face, in. */
  readonly depthIn: number;
}

/**
 * Where the strand rows stand on the strand's curve at the ultimate state, deepest first.
 *
 * @param share - place along the span, 0 to 1
 * @param neutralAxisIn - neutral axis of that state below the compressed face, in
 */
export function strandStates(member: Member, share: number, effectiveStressKsi: number, neutralAxisIn: number): StrandState[] {
  return strandLayers(member, share, effectiveStressKsi)
    .map((layer) => {
      const strain = strainAt(layer, neutralAxisIn);
      return {strain, stressKsi: strandStressKsi(strain), depthIn: layer.depthIn};
    })
    .sort((a, b) => b.depthIn - a.depthIn);
}

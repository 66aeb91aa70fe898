import type {Member} from "../member/member.js";
import {holdDownShare} from "../prestress/layout.js";

const MIDSPAN = [0.5] as const;
/** Close enough together that the load found lies within 0.2 % of the least along the span. */
const AROUND_TWO_FIFTHS = [0.28, 0.32, 0.36, 0.4, 0.44, 0.48, 0.5] as const;

/**
 * Places at which the stresses of a simple span are looked at in service: midspan, and for depressed strands also the
 * stretch where the soffit loses its precompression faster than the load's moment falls.
 */
export function serviceShares(member: Member): readonly number[] {
  return member.layout.profile === "straight" ? MIDSPAN : AROUND_TWO_FIFTHS;
}

/**
 * Places at which strength may govern a simple span: midspan, and for depressed strands the place where strength falls
 * faster towards the ends than the moment does.
 *
 * With a lever arm d + k x and a moment that goes as x (1 - x), their ratio is least where x = r (sqrt(1 + 1/r) - 1),
 * r = d/k, or at the hold-down if that comes first. Being flat near its least, the ratio forgives the estimate of d.
 */
export function strengthShares(member: Member): readonly number[] {
  const {layout, compression} = member;
  if (layout.profile === "straight") return MIDSPAN;
  const holdDown = holdDownShare(layout.profile);
  const slopeIn = (layout.centroidEndIn - layout.centroidCentreIn) / holdDown;
  if (slopeIn <= 0) return [holdDown, 0.5];
  const r = Math.max(0.05, (0.95 * compression.depthIn - layout.centroidEndIn) / slopeIn);
  return [Math.min(holdDown, r * (Math.sqrt(1 + 1 / r) - 1)), 0.5];
}

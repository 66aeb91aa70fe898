import type {Member} from "../member/member.js";
import {holdDownShare} from "../prestress/layout.js";

const MIDSPAN = [0.5] as const;

/**
 * Places at which strength may govern a simple span: the place where it is least beside the moment, by a lever arm that
 * grows in a straight line up to the hold-down, and midspan where the strands run level to it. Being flat near its
 * least, the ratio forgives the estimate of that arm.
 */
export function strengthShares({layout, compression}: Member): readonly number[] {
  // Stryker disable next-line ConditionalExpression: of level strands the lever arm grows nowhere, and midspan is found below
  if (layout.profile === "straight") return MIDSPAN;
  const holdDown = holdDownShare(layout.profile);
  const leverIn = 0.95 * compression.depthIn;
  const share = leastShare(0, leverIn - layout.centroidEndIn, holdDown, leverIn - layout.centroidCenterIn);
  // Beyond the hold-down only the moment grows.
  // Stryker disable next-line ConditionalExpression: it saves looking where midspan asks for more
  if (share === holdDown) return MIDSPAN;
  return holdDown < 0.5 ? [share, 0.5] : [share];
}

/**
 * The place, as a share of the span, where a resistance that grows in a straight line is least beside the moment of a
 * uniform load: the least of (a + k x) / (x (1 - x)) lies at x = r (sqrt(1 + 1/r) - 1), r = a/k.
 *
 * @param start - a place, with the resistance there in any unit
 * @param end - another, nearer midspan, with the resistance there; nothing beyond it is looked at
 */
export function leastShare(start: number, atStart: number, end: number, atEnd: number): number {
  const growth = (atEnd - atStart) / (end - start);
  if (growth <= 0) return end;
  const r = Math.max(LEAST_RATIO, atEnd / growth - end);
  return Math.min(end, r * (Math.sqrt(1 + 1 / r) - 1));
}

/** Keeps the place out of the stretch where the strands take hold, also where the line leaves nothing at the end itself. */
const LEAST_RATIO = 0.05;

import {IN_PER_FT} from "../units.js";
import type {Member} from "./member.js";
import type {PrestressState} from "./prestressState.js";
import {SHEAR_TRANSFER_DIAMETERS, STIRRUP_CEILING, designShearKip, shearAt, shearSection, takesStirrups, type ShearAt} from "./shear.js";

/** A place along the span with what its section may carry in shear. */
export interface ShearPlace {
  readonly state: PrestressState;
  readonly strength: ShearAt;
  /** Factored shear that the section may carry, kip; see {@link designShearKip}. */
  readonly designKip: number;
}

/** The prestress at a place of a span; `of` is what the function needs to know. */
export type StateAt<T> = (of: T, share: number) => PrestressState;

/** Places that differ by less than this part of their distance from the end are one. */
const SAME = 0.003;
/** Last place that is looked at: beyond it a uniform load has next to no shear. */
const LAST_SHARE = 0.48;

/** The nearest place to a support at which shear is looked at: half the depth off it (ACI 318-19 9.4.3.2, prestressed). */
export function nearestShearShare(member: Member, spanFt: number): number {
  return Math.min(0.4, member.compression.depthIn / 2 / (spanFt * IN_PER_FT));
}

/** Spacing of {@link shearShares}, as a share of the span. */
const STEP = 0.01;
/** The places that every span is looked at, as shares of it. */
const REGULAR = Array.from({length: 0.5 / STEP}, (_, i) => i * STEP);

/**
 * Places from one end to midspan at which shear is looked at where every one of them counts, as for stirrups: the
 * nearest, the end of the prestress's build-up, and every hundredth of the span.
 */
export function shearShares(member: Member, spanFt: number): number[] {
  const nearest = nearestShearShare(member, spanFt);
  const built = builtShare(member, spanFt);
  return [nearest, ...(built > nearest && built < 0.5 ? [built] : []), ...REGULAR.slice(REGULAR.findIndex((share) => share > nearest))];
}

/** Where the prestress has built up, as a share of the span. */
function builtShare(member: Member, spanFt: number): number {
  return (SHEAR_TRANSFER_DIAMETERS * member.layout.strand.diameterIn) / (spanFt * IN_PER_FT);
}

/**
 * The place at which the shear of a uniform load, whatever its size, comes nearest to what the section may carry.
 *
 * Web-shear strength is least beside the shear at the nearest place, or where the prestress has built up. Flexure-shear
 * strength is least beside it further in: there {@link turningShare} finds the place from what varies slowly (the
 * prestress, the depth of the strands) at two others, and finds it again from the place that it found.
 *
 * @param fromShare - nearest place looked at: {@link nearestShearShare}, or 0 where the load hangs low (9.4.3.2)
 */
export function weakestShear<T>(member: Member, spanFt: number, fromShare: number, of: T, stateAt: StateAt<T>): ShearPlace {
  let weakest = shearPlace(member, spanFt, stateAt(of, fromShare));
  let startShare = fromShare;
  const built = builtShare(member, spanFt);
  if (built > fromShare && built < LAST_SHARE) {
    const end = shearPlace(member, spanFt, stateAt(of, built));
    // Strands thick for their span transfer their force so far in that bending cracks may turn before.
    const share = turningShare(member, spanFt, weakest.state, end.state, built);
    // Stryker disable next-line all: a place looked at twice changes nothing
    if (share > fromShare && share < built * (1 - SAME)) weakest = weaker(weakest, shearPlace(member, spanFt, stateAt(of, share)));
    weakest = weaker(weakest, end);
    startShare = built;
  }
  const start = stateAt(of, startShare);
  let found = stateAt(of, 0.5);
  // Stryker disable next-line EqualityOperator,UpdateOperator: a further round finds the same place
  for (let i = 0; i < 2; i++) {
    const share = turningShare(member, spanFt, start, found, LAST_SHARE);
    // Stryker disable next-line all: another look at the same place changes nothing
    if (share - startShare < SAME * share || Math.abs(share - found.share) < SAME * share) break;
    const place = shearPlace(member, spanFt, stateAt(of, share));
    weakest = weaker(weakest, place);
    found = place.state;
  }
  return weakest;
}

function shearPlace(member: Member, spanFt: number, state: PrestressState): ShearPlace {
  const strength = shearAt(member, spanFt, state);
  return {state, strength, designKip: designShearKip(member, strength)};
}

/** Of two places the one with less strength beside the shear of a uniform load, which falls evenly to nothing at midspan. */
function weaker(a: ShearPlace, b: ShearPlace): ShearPlace {
  // Stryker disable next-line EqualityOperator: two places alike are either
  return b.designKip * (0.5 - a.state.share) < a.designKip * (0.5 - b.state.share) ? b : a;
}

/**
 * The place between a start and an end at which flexure-shear strength is least beside the shear of a uniform load.
 *
 * With u = 0.5 - s and x = s (1 - s), a uniform load's shear goes with u and its moment with x, so that strength over
 * shear is (0.6 + k) B/u + 2 C/(l x) and a constant, or at the floor (f + k) B/u: B the web's lambda sqrt(f'c) bw d, k B
 * what stirrups may add, C the moment that would crack the soffit without any load. C and the strands' height are taken
 * to go in a straight line through two places. Both expressions are bowl-shaped and the greater counts, so that there is one least place:
 * where the first stops falling, or sinks below the floor. It is found by halving.
 *
 * @param start - prestress at the start, and at another place beyond it
 */
function turningShare(member: Member, spanFt: number, start: PrestressState, other: PrestressState, endShare: number): number {
  const a = shearSection(member, spanFt, start);
  const b = shearSection(member, spanFt, other);
  const spanIn = spanFt * IN_PER_FT;
  const sectionRatio = member.full.sbIn3 / member.section.sbIn3;
  const ownKip = ((member.selfWeightPlf + member.toppingWeightPlf) * spanFt) / 1000;
  const {depthIn: wholeIn} = member.compression;
  const webPerIn = (a.rootPsi * a.webWidthIn) / 1000;
  const strandsAIn = wholeIn - (member.section.ybIn - start.eccentricityIn);
  const strandsSlope = (other.eccentricityIn - start.eccentricityIn) / (other.share - start.share);
  const crackA = a.crackingMomentKipIn + (sectionRatio * ownKip * spanIn * start.share * (1 - start.share)) / 2;
  const crackB = b.crackingMomentKipIn + (sectionRatio * ownKip * spanIn * other.share * (1 - other.share)) / 2;
  const crackSlope = (crackB - crackA) / (other.share - start.share);
  const added = 0.6 + (takesStirrups(member) ? (STIRRUP_CEILING * Math.sqrt(member.concrete.strengthPsi)) / a.rootPsi : 0);
  let low = start.share;
  let high = endShare;
  while (high - low > (SAME / 4) * high) {
    const s = (low + high) / 2;
    const u = 0.5 - s;
    const x = s * (1 - s);
    const strandsIn = strandsAIn + strandsSlope * (s - start.share);
    const deep = strandsIn > 0.8 * wholeIn;
    const web = webPerIn * (deep ? strandsIn : 0.8 * wholeIn);
    const webSlope = deep ? webPerIn * strandsSlope : 0;
    const crack = crackA + crackSlope * (s - start.share);
    // Beyond the place where the own load alone cracks the soffit nothing is left to fall.
    const left = crack - (sectionRatio * ownKip * spanIn * x) / 2;
    const aboveFloor = left > 0 && u * (ownKip + (2 * left) / (spanIn * x)) > (a.floor - 0.6) * web;
    const growth = (added * (webSlope * u + web)) / (u * u) + (2 / spanIn) * (crackSlope / x - (crack * (1 - 2 * s)) / (x * x));
    if (aboveFloor && growth < 0) low = s;
    else high = s;
  }
  return high;
}

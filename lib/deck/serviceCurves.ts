import type {WalkingUse} from "../design/design.js";
import {camber} from "../member/camber.js";
import {liveDeflection} from "../member/deflection.js";
import type {Member} from "../member/member.js";
import {prestressState} from "../member/prestressState.js";
import {allowedSagIn, countedMovementIn} from "../member/sagLimit.js";
import {vibration} from "../member/vibration.js";
import type {Criteria} from "./criteria.js";

/** A live load and the deflection that the sag limit counts under it. */
export interface SagPoint {
  readonly livePsf: number;
  readonly sagIn: number;
}

/** Movement of a member against its live load. */
export interface SagCurve {
  /** The corners of the curve, which runs straight between them, from no live load to the most. */
  readonly points: readonly SagPoint[];
  /** Where the soffit cracks, if the curve reaches it and the dead load alone has not cracked it. */
  readonly cracks: SagPoint | undefined;
  readonly today: SagPoint;
  readonly allowedIn: number;
}

/**
 * The deflection that a design's sag limit counts (ACI 318-19 24.2), against the live load: straight up to the load that
 * cracks the soffit, and straight and steeper beyond it (24.2.3.9).
 *
 * @param livePsf - today's live load, psf
 * @param mostPsf - live load at which the curve ends, psf
 */
export function sagCurve(member: Member, spanFt: number, criteria: Criteria, livePsf: number, mostPsf: number): SagCurve {
  const deadPlf = criteria.superimposedDeadPsf * member.widthFt;
  const midspan = prestressState(member, spanFt, 0.5, deadPlf);
  const shape = camber(member, spanFt, deadPlf);
  const under = (psf: number) => liveDeflection(member, spanFt, midspan, deadPlf, psf * member.widthFt);
  const at = (psf: number): SagPoint => ({
    livePsf: psf, sagIn: countedMovementIn(criteria.sagLimit, shape, under(psf).deflectionIn, criteria.sustainedLiveShare),
  });
  const {uncrackedShare} = under(mostPsf);
  const cracks = uncrackedShare > 0 && uncrackedShare < 1 ? at(uncrackedShare * mostPsf) : undefined;
  return {
    points: [at(0), ...(cracks ? [cracks] : []), at(mostPsf)],
    cracks, today: at(livePsf), allowedIn: allowedSagIn(criteria.sagLimit, spanFt),
  };
}

/** How a floor vibrates at one span. */
export interface WalkingPoint {
  readonly spanFt: number;
  readonly frequencyHz: number;
  /** By a walker, % of gravity. */
  readonly accelerationPercent: number;
}

/** How a floor vibrates over the span. */
export interface WalkingCurve {
  readonly points: readonly WalkingPoint[];
  /** Acceleration that people tolerate, % of gravity. */
  readonly allowedPercent: number;
}

/** Acceleration by a walker and natural frequency of a member over the span, its load the same. */
export function walkingCurve(member: Member, superimposedDeadPsf: number, use: WalkingUse, spansFt: readonly number[]): WalkingCurve {
  const found = spansFt.map((spanFt) => ({spanFt, ...vibration(member, spanFt, superimposedDeadPsf * member.widthFt, use)}));
  return {
    points: found.map(({spanFt, frequencyHz, acceleration}) => ({spanFt, frequencyHz, accelerationPercent: 100 * acceleration})),
    allowedPercent: 100 * (found[0]?.allowedAcceleration ?? 0),
  };
}

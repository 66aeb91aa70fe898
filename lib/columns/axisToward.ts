import {cosineOf, emptySum, fullyPressedAtIn, sineOf, sumForces, type ForceSum, type SectionNumbers} from "./inclinedForces.js";
import {fallsThroughZero} from "./root.js";

/** A load's direction: its axial load and moment, and the shares of the moment that bend the depth, and the width. */
export interface Toward {
  readonly axialKip: number;
  /** Above 0. */
  readonly momentKipIn: number;
  readonly depth: number;
  readonly width: number;
}

/** Where a neutral axis lies: its distance from the compressed corner, and the angle between that distance and the depth. */
export interface AxisPlace {
  readonly neutralAxisIn: number;
  readonly angleRad: number;
}

/** Tolerance of an angle or a distance that is found between bounds, as a share of these. */
const CLOSE = 1e-12;
/** Tolerance of the distance where Newton's steps begin, as a share of its bounds. */
const ROUGH = 1e-2;
/** Steps as a share of the bounds: that of the slopes, and the one after which what is left lies in the last digits. */
const STEP = {slope: 1e-7, last: 1e-11} as const;
/** Newton's steps, and halvings of one, before the search between bounds takes over: most loads need five or six. */
const STEPS = 12;
const HALVINGS = 4;

/**
 * The neutral axis whose strength lies in a load's direction.
 *
 * Newton's steps find it for most loads in some twenty sums of forces. Where they do not converge (a bar that just
 * enters the block, a section that is almost wholly in compression) the search between bounds does, which takes some two hundred.
 */
export function axisToward(section: SectionNumbers, toward: Toward, sum: ForceSum = emptySum()): AxisPlace {
  // A moment that bends the depth alone, or the width, has its angle already.
  return (toward.depth > 0 && toward.width > 0 ? byNewton(section, toward, sum) : undefined) ?? betweenBounds(section, toward, sum);
}

/**
 * For each angle of the neutral axis there is one distance whose strength has the required ratio of axial load to the
 * moment in the load's direction. At an angle of 0 that strength bends the depth alone, at a quarter turn the width
 * alone; in between it turns from the one to the other, and the angle at which it lies in the load's direction is
 * found between bounds that always hold it.
 */
export function betweenBounds(section: SectionNumbers, toward: Toward, sum: ForceSum = emptySum()): AxisPlace {
  const angleRad = toward.width === 0 ? 0 : toward.depth === 0 ? Math.PI / 2 : fallsThroughZero((angle) => {
    sumForces(section, distanceAt(section, angle, toward, CLOSE, sum), sineOf(angle), cosineOf(angle), sum);
    return aside(sum, toward);
  }, 0, Math.PI / 2, CLOSE);
  return {neutralAxisIn: distanceAt(section, angleRad, toward, CLOSE, sum), angleRad};
}

/** At one angle, the distance whose strength has the required ratio of axial load to the moment in its direction. */
function distanceAt(section: SectionNumbers, angleRad: number, toward: Toward, share: number, sum: ForceSum): number {
  const [sine, cosine] = [sineOf(angleRad), cosineOf(angleRad)];
  return fallsThroughZero((neutralAxisIn) => {
    sumForces(section, neutralAxisIn, sine, cosine, sum);
    return above(sum, toward);
  }, 0, fullyPressedAtIn(section, sine, cosine), share);
}

/** How far a strength lies to the moment's side of the ray, kip: falls as the axis moves away from the corner. */
function above({axialKip, depthMomentKipIn, widthMomentKipIn}: ForceSum, toward: Toward): number {
  return ((depthMomentKipIn * toward.depth + widthMomentKipIn * toward.width) * toward.axialKip) / toward.momentKipIn - axialKip;
}

/** How far its moment lies to the depth's side of the load's direction, kip-in: falls as the axis turns. */
function aside({depthMomentKipIn, widthMomentKipIn}: ForceSum, toward: Toward): number {
  return depthMomentKipIn * toward.width - widthMomentKipIn * toward.depth;
}

/** Newton's steps in distance and angle at once; undefined where they do not converge. */
function byNewton(section: SectionNumbers, toward: Toward, sum: ForceSum): AxisPlace | undefined {
  const {axialKip, momentKipIn} = toward;
  // Both misses as moments, so that they can be weighed against each other for any ray.
  const armIn = Math.min(section.depthIn, momentKipIn / Math.abs(axialKip));
  let angleRad = Math.atan2(toward.width, toward.depth);
  let neutralAxisIn = distanceAt(section, angleRad, toward, ROUGH, sum);
  let [sine, cosine] = [Math.sin(angleRad), Math.cos(angleRad)];
  const fullIn = fullyPressedAtIn(section, sineOf(angleRad), cosineOf(angleRad));
  const steps = {distance: STEP.slope * fullIn, angle: STEP.slope * Math.PI} as const;
  sumForces(section, neutralAxisIn, sine, cosine, sum);
  let [one, two] = [above(sum, toward) * armIn, aside(sum, toward)];
  let miss = Math.hypot(one, two);
  for (let i = 0; i < STEPS; i++) {
    sumForces(section, neutralAxisIn + steps.distance, sine, cosine, sum);
    const [a, c] = [(above(sum, toward) * armIn - one) / steps.distance, (aside(sum, toward) - two) / steps.distance];
    sumForces(section, neutralAxisIn, Math.sin(angleRad + steps.angle), Math.cos(angleRad + steps.angle), sum);
    const [b, d] = [(above(sum, toward) * armIn - one) / steps.angle, (aside(sum, toward) - two) / steps.angle];
    const determinant = a * d - b * c;
    const [byIn, byRad] = [(b * two - d * one) / determinant, (c * one - a * two) / determinant];
    const last = Math.abs(byIn) < STEP.last * fullIn && Math.abs(byRad) < STEP.last;
    let share = 1;
    for (let halving = 0; ; halving++, share /= 2) {
      if (halving > HALVINGS) return undefined;
      const [distance, angle] = [neutralAxisIn + share * byIn, angleRad + share * byRad];
      // Written so that steps that are not numbers count as outside.
      if (!(distance > 0 && angle > 0 && angle < Math.PI / 2)) continue;
      const [nextSine, nextCosine] = [Math.sin(angle), Math.cos(angle)];
      sumForces(section, distance, nextSine, nextCosine, sum);
      const [nextOne, nextTwo] = [above(sum, toward) * armIn, aside(sum, toward)];
      const next = Math.hypot(nextOne, nextTwo);
      if (next < miss || last) {
        [neutralAxisIn, angleRad, miss, sine, cosine, one, two] = [distance, angle, next, nextSine, nextCosine, nextOne, nextTwo];
        break;
      }
    }
    if (last || miss === 0) return {neutralAxisIn, angleRad};
  }
  return undefined;
}

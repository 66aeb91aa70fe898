import type {Member} from "../member/member.js";
import {WATER_PCF} from "../member/fillRatio.js";
import {sagInfluence, sagUnder} from "../member/sagInfluence.js";
import {simpson} from "../member/simpson.js";
import {IN_PER_FT, LB_PER_KIP, inches} from "../units.js";
import {ROOF_INTERVALS, type SurfacePoint} from "./surface.js";

const INFLUENCE = sagInfluence(ROOF_INTERVALS);
/** Agreement at which rounds of water and sag end, in, and rounds after which they are assumed to have no end. */
const AGREEMENT_IN = 0.002;
const MOST_ROUNDS = 60;

/** Water on one bay of a roof. */
export interface BayWater {
  /** Depth at the places of the bay's surface, in. */
  readonly depthIn: readonly number[];
  /** Greatest and mean depth, in. */
  readonly greatestIn: number;
  readonly meanIn: number;
  /** Uniform load that bends the member's midspan as much, psf. */
  readonly momentPsf: number;
  /** Deflection at midspan under the water, in. */
  readonly sagIn: number;
}

/** Water at rest on a roof that sags under it. */
export interface StandingWater {
  readonly bays: readonly BayWater[];
  readonly greatestIn: number;
  /** Of the bay that it bends most, psf. */
  readonly momentPsf: number;
  /** Rounds of water and sag until they agreed. */
  readonly rounds: number;
  /** False where more water would gather without end; the numbers are then those before the roof sags. */
  readonly settled: boolean;
}

/**
 * Water that stands on a roof once it has come to rest: what cannot reach a drain, and what stands above the drains. Its
 * weight sags the members, the sag holds more water, and so on until both agree (first principles; what ASCE 7-16 8.4
 * requires). Water that can run off does.
 *
 * Members bend each on its own with their uncracked section, between bearings that do not move; parapets hold water at the
 * outer edges.
 *
 * @param surface - the roof without water, bay by bay
 * @param headIn - depth of water that stands above the drains, in: 0 where they run free
 */
export function standingWater(surface: readonly (readonly SurfacePoint[])[], member: Member, spanFt: number, headIn: number): StandingWater {
  const spanIn = inches(spanFt);
  const kipPerInPerIn = (WATER_PCF * member.shape.widthIn) / (LB_PER_KIP * IN_PER_FT ** 3);
  const dry = surface.map((bay) => bay.map(({heightIn}) => heightIn));
  // A drain moves with the deck that it is set in.
  const fill = (heights: readonly (readonly number[])[]) => filled(heights, surface.map((bay, b) => bay.map(({drains}, i) => (drains ? ((heights[b] as readonly number[])[i] as number) + headIn : undefined))));
  const sagOf = (depthIn: readonly number[]) => sagUnder(INFLUENCE, depthIn.map((depth) => depth * kipPerInPerIn), spanIn, member.modulusKsi, member.full.inertiaIn4);
  const first = fill(dry);
  let depths = first;
  // Stryker disable next-line EqualityOperator: what has not settled in so many rounds does not in one more or less
  for (let rounds = 1; rounds <= MOST_ROUNDS; rounds++) {
    const sags = depths.map(sagOf);
    const sunk = dry.map((bay, b) => bay.map((heightIn, i) => heightIn - ((sags[b] as readonly number[])[i] as number)));
    const next = fill(sunk);
    const change = Math.max(...next.map((bay, b) => Math.max(...bay.map((depth, i) => Math.abs(depth - ((depths[b] as readonly number[])[i] as number))))));
    depths = next;
    if (change < AGREEMENT_IN) return summed(depths, sagOf, rounds, true);
    // Water deeper than any roof is no water at rest.
    // Stryker disable next-line ConditionalExpression,EqualityOperator: further rounds find no rest either
    if (!(change < spanIn)) break;
  }
  return summed(first, sagOf, MOST_ROUNDS, false);
}

function summed(depths: readonly (readonly number[])[], sagOf: (depthIn: readonly number[]) => readonly number[], rounds: number, settled: boolean): StandingWater {
  const bays = depths.map((depthIn): BayWater => {
    // Moment at midspan: half of each strip times its distance from the nearer bearing; over that of a uniform load, twice as much.
    const half = ROOF_INTERVALS / 2;
    const arms = depthIn.map((depth, i) => depth * Math.min(i, ROOF_INTERVALS - i) / half);
    const meanArmIn = (simpson(arms.slice(0, half + 1)) + simpson(arms.slice(half))) / 2;
    return {
      depthIn, greatestIn: Math.max(...depthIn), meanIn: simpson(depthIn),
      momentPsf: (WATER_PCF / IN_PER_FT) * 2 * meanArmIn, sagIn: sagOf(depthIn)[half] as number,
    };
  });
  return {bays, rounds, settled, greatestIn: Math.max(...bays.map((bay) => bay.greatestIn)), momentPsf: Math.max(...bays.map((bay) => bay.momentPsf))};
}

/**
 * Depth of water at each place: up to the lowest level at which it could still run to some outlet.
 *
 * @param outlets - level at which water leaves at a place, in; undefined where it cannot
 */
function filled(heights: readonly (readonly number[])[], outlets: readonly (readonly (number | undefined)[])[]): number[][] {
  const [height, outlet] = [heights.flat(), outlets.flat()];
  const level = new Array<number>(height.length).fill(Infinity);
  const sweep = (i: number, before: number): number => {
    const here = outlet[i] ?? Math.max(before, height[i] as number);
    level[i] = Math.min(level[i] as number, here);
    return here;
  };
  let carried = Infinity;
  // Stryker disable next-line EqualityOperator: a place more is cut off below
  for (let i = 0; i < height.length; i++) carried = sweep(i, carried);
  carried = Infinity;
  for (let i = height.length - 1; i >= 0; i--) carried = sweep(i, carried);
  const depth = height.map((heightIn, i) => Math.max(0, (level[i] as number) - heightIn));
  return heights.map((_, b) => depth.slice(b * (ROOF_INTERVALS + 1), (b + 1) * (ROOF_INTERVALS + 1)));
}

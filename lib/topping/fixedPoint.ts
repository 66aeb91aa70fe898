import {requireNumber} from "../check.js";
import {atMost, type Check} from "../checks.js";
import type {Design} from "../design/design.js";
import {camberCurve, type Camber} from "../member/camber.js";
import {FILL_LIMIT, fillRatio} from "../member/fillRatio.js";
import type {Member} from "../member/member.js";
import {sagInfluence, sagUnder} from "../member/sagInfluence.js";
import {simpson} from "../member/simpson.js";
import {IN3_PER_YD3, IN_PER_FT, LB_PER_KIP} from "../units.js";
import type {ToppingPoint} from "./profile.js";

/** How a topping is to be finished. */
export interface Finish {
  /** Minimum thickness, in; the member's own topping if left out. */
  readonly leastIn?: number;
  /** Part of the camber that the finished surface follows: 0 is level, 1 has one thickness all along. 0 if left out. */
  readonly followShare?: number;
  /** Agreement at which the search ends, as a part of the greatest thickness: 0.001 if left out. */
  readonly toleranceShare?: number;
}

/** What the topping weighs beyond its minimum thickness, per square foot of floor where it says so. */
export interface ExtraWeight {
  /** Mean over the span, at the ends and at midspan, psf. */
  readonly averagePsf: number;
  readonly endPsf: number;
  readonly midspanPsf: number;
  /** Uniform load that bends midspan as much, psf: less than the mean, because most of it lies near the supports. */
  readonly momentPsf: number;
  /** Moment at midspan, kip-in, and reaction at each end, kip, of one member. */
  readonly momentKipIn: number;
  readonly reactionKip: number;
  /** What it sinks the midspan by at once, in. */
  readonly sagIn: number;
}

/** One round of the search: a thickness, and the member under its weight. */
export interface ToppingRound {
  readonly averageIn: number;
  readonly greatestIn: number;
  /** Camber at midspan under the weight that the round began with, in. */
  readonly midspanRiseIn: number;
}

/** A topping whose thickness, weight and the camber beneath it agree. */
export interface SettledTopping {
  readonly points: readonly ToppingPoint[];
  readonly leastIn: number;
  readonly greatestIn: number;
  readonly averageIn: number;
  /** Height of the finished surface at the ends and at midspan above the member's top at its ends, in. */
  readonly surfaceEndIn: number;
  readonly surfaceMidspanIn: number;
  readonly extra: ExtraWeight;
  /**
   * What beams, columns and footings count of the extra weight, psf on the mean: all of it, or, where the member is too
   * flexible for wet topping and a check fails, what would lie on one that is just stiff enough.
   */
  readonly carriedPsf: number;
  /** The camber with the topping's true weight. */
  readonly camber: Camber;
  readonly memberYd3: number;
  readonly bayYd3: number;
  readonly floorYd3: number;
  /** The first is with the minimum thickness all along as its weight. */
  readonly rounds: readonly ToppingRound[];
  /** Rounds after the first until thickness and camber agreed. */
  readonly passes: number;
  /** False where they never would; the numbers are then those of the first round. */
  readonly settled: boolean;
  readonly checks: readonly Check[];
}

/** The grid whose floor a topping levels. */
type Grid = Pick<Design["bay"], "spanFt" | "beamSpanFt" | "baysAlong" | "baysAcross">;

const INTERVALS = 80;
const INFLUENCE = sagInfluence(INTERVALS);
const MOST_PASSES = 200;
/** Rounds after the first that are reported. */
const MOST_ROUNDS = 8;

/**
 * The topping as it comes to lie: it fills what the camber leaves below the finished surface, its weight bends the
 * member, and that changes what there is to fill. Rounds of thickness, sag and thickness go on until they agree.
 *
 * Where the member stands above level the extra weight lies near its ends and takes little camber away; where it sags,
 * wet concrete ponds as water does, and a slender member has no end to it ({@link fillRatio}).
 *
 * @param camber - by any method; its topping and long-term parts are replaced
 * @param bay - the grid whose floor is counted
 * @returns undefined without topping
 * @throws InputError if the finish is out of range
 */
export function settleTopping(
  member: Member, camber: Camber, bay: Grid, finish: Finish = {},
): SettledTopping | undefined {
  const {topping} = member;
  if (!topping) return undefined;
  const leastIn = finish.leastIn === undefined
    ? topping.thicknessIn : requireNumber(finish.leastIn, {path: "leastIn", label: "least thickness", unit: "in", min: 0.25, max: 12});
  const followShare = requireNumber(finish.followShare ?? 0, {path: "followShare", label: "part of the camber that the surface follows", unit: "", min: 0, max: 1});
  const toleranceShare = requireNumber(finish.toleranceShare ?? 0.001, {path: "toleranceShare", label: "agreement", unit: "", min: 1e-12, max: 0.1});
  const spanIn = bay.spanFt * IN_PER_FT;
  const {unitWeightPcf} = topping.concrete;
  const kipPerInPerIn = (unitWeightPcf * topping.widthIn) / (LB_PER_KIP * IN_PER_FT ** 3);
  const bareIn = camberCurve(member, camber, INTERVALS + 1).map((point) => point.erectionIn);
  const ratio = (1 - followShare) * fillRatio(unitWeightPcf, topping.widthIn, bay.spanFt, member.modulusKsi, member.section.inertiaIn4);

  const sag = (thicknessIn: readonly number[]) => sagUnder(INFLUENCE, thicknessIn.map((thickness) => thickness * kipPerInPerIn), spanIn, member.modulusKsi, member.section.inertiaIn4);
  const {now, rounds, passes, settled} = rest(bareIn, leastIn, followShare, toleranceShare, ratio, sag);
  const points = now.thicknessIn.map((thicknessIn, i): ToppingPoint => ({share: i / INTERVALS, riseIn: now.riseIn[i] as number, thicknessIn}));
  const beyond = ({thicknessIn}: Fill) => thicknessIn.map((thickness) => thickness - leastIn);
  const extraIn = beyond(now);
  const extra = extraWeight(extraIn, sag(extraIn)[INTERVALS / 2] as number, {kipPerInPerIn, unitWeightPcf, spanIn});
  // A member just stiff enough rises and sags less, by all its loads; the beams' load then neither jumps nor falls where the check begins to fail.
  const less = FILL_LIMIT / ratio;
  const lessened = (values: readonly number[]) => values.map((value) => less * value);
  // Stryker disable next-line EqualityOperator: the two meet there
  const carriedPsf = ratio <= FILL_LIMIT ? extra.averagePsf
    : (simpson(beyond(rest(lessened(bareIn), leastIn, followShare, toleranceShare, FILL_LIMIT, (thicknessIn) => lessened(sag(thicknessIn))).now)) / IN_PER_FT) * unitWeightPcf;
  const averageIn = simpson(now.thicknessIn);
  const ends = points[0] as ToppingPoint;
  const middle = points[INTERVALS / 2] as ToppingPoint;
  return {
    points, averageIn, rounds, passes, settled,
    leastIn: Math.min(...now.thicknessIn),
    greatestIn: Math.max(...now.thicknessIn),
    surfaceEndIn: ends.riseIn + ends.thicknessIn,
    surfaceMidspanIn: middle.riseIn + middle.thicknessIn,
    extra, carriedPsf,
    camber: withTopping(camber, -(now.sagIn[INTERVALS / 2] as number)),
    memberYd3: yd3(averageIn, bay.spanFt, member.widthFt),
    ...floorYd3(averageIn, bay),
    checks: [atMost({
      id: "wet topping", label: "Flexibility against wet topping", unit: "", clause: "first principles; limit as for ponding (common practice)",
      holds: "The topping's weight hardly changes what there is to fill.",
      fails: "The wet topping bends the member so that more is needed, and more: prop the member while the topping sets, let the surface follow the camber, or take a deeper member or a shorter span.",
    }, ratio, FILL_LIMIT)],
  };
}

/** Concrete of a topping on bays and floor of another grid with the same span. */
export function onGrid(settled: SettledTopping, bay: Grid): SettledTopping {
  return {...settled, ...floorYd3(settled.averageIn, bay)};
}

function floorYd3(averageIn: number, {spanFt, beamSpanFt, baysAlong, baysAcross}: Grid): Pick<SettledTopping, "bayYd3" | "floorYd3"> {
  const bayYd3 = yd3(averageIn, spanFt, beamSpanFt);
  return {bayYd3, floorYd3: bayYd3 * baysAlong * baysAcross};
}

function yd3(averageIn: number, spanFt: number, widthFt: number): number {
  return (averageIn * widthFt * spanFt * IN_PER_FT ** 2) / IN3_PER_YD3;
}

/** A topping of one round: the member's rise with the sag under the round before, and the thickness that it leaves to fill. */
interface Fill {
  readonly riseIn: readonly number[];
  readonly thicknessIn: readonly number[];
  readonly sagIn: readonly number[];
}

/** Rounds of thickness and sag until they agree; where they never do, the first of them. */
function rest(
  bareIn: readonly number[], leastIn: number, followShare: number, toleranceShare: number, ratio: number, sag: (thicknessIn: readonly number[]) => readonly number[],
): {now: Fill; rounds: ToppingRound[]; passes: number; settled: boolean} {
  const fill = (sagIn: readonly number[]): Fill => {
    const riseIn = bareIn.map((rise, i) => rise - (sagIn[i] as number));
    const highestIn = Math.max(...riseIn);
    return {riseIn, thicknessIn: riseIn.map((rise) => leastIn + (1 - followShare) * (highestIn - rise)), sagIn};
  };
  const roundOf = ({thicknessIn, riseIn}: Fill): ToppingRound =>
    ({averageIn: simpson(thicknessIn), greatestIn: Math.max(...thicknessIn), midspanRiseIn: riseIn[INTERVALS / 2] as number});
  const first = fill(sag(bareIn.map(() => leastIn)));
  let now = first;
  const rounds = [roundOf(first)];
  let settled = false;
  let passes = 0;
  // Stryker disable next-line EqualityOperator: what has not settled in so many passes does not in one more
  while (!settled && passes < MOST_PASSES && ratio < 1) {
    const next = fill(sag(now.thicknessIn));
    passes++;
    const change = Math.max(...next.thicknessIn.map((thickness, i) => Math.abs(thickness - (now.thicknessIn[i] as number))));
    // What is still to come is a geometric series of the ratio.
    // Stryker disable next-line EqualityOperator: no change meets what is allowed to the last digit
    settled = change <= toleranceShare * (1 - ratio) * Math.max(...next.thicknessIn);
    now = next;
    if (rounds.length <= MOST_ROUNDS) rounds.push(roundOf(now));
  }
  return {now: settled ? now : first, rounds, passes, settled};
}

/** What thicknesses beyond the least weigh on one member. */
function extraWeight(extraIn: readonly number[], sagIn: number, load: ToppingLoad): ExtraWeight {
  const psf = (depthIn: number) => (depthIn / IN_PER_FT) * load.unitWeightPcf;
  // Moment at midspan: half of each load times its distance from the nearer support. Simpson's rule over one half, for
  // that distance has a kink at midspan.
  const arms = extraIn.slice(0, INTERVALS / 2 + 1).map((depth, i) => depth * load.kipPerInPerIn * (i / INTERVALS) * load.spanIn);
  const momentKipIn = simpson(arms) * (load.spanIn / 2);
  const meanIn = simpson(extraIn);
  return {
    averagePsf: psf(meanIn), endPsf: psf(extraIn[0] as number), midspanPsf: psf(extraIn[INTERVALS / 2] as number),
    momentPsf: psf(momentKipIn / ((load.kipPerInPerIn * load.spanIn ** 2) / 8)),
    momentKipIn,
    reactionKip: (load.kipPerInPerIn * meanIn * load.spanIn) / 2,
    sagIn,
  };
}

/** What an inch of topping weighs on a member: per inch of its length, and by volume. */
interface ToppingLoad {
  readonly kipPerInPerIn: number;
  readonly unitWeightPcf: number;
  readonly spanIn: number;
}

/** A camber whose topping moves the midspan otherwise than first taken. */
export function withTopping(camber: Camber, toppingIn: number): Camber {
  return {
    ...camber, toppingIn,
    toppedIn: camber.erectionIn + toppingIn,
    longTermIn: camber.longTermIn + camber.multipliers.finalTopping * (toppingIn - camber.toppingIn),
  };
}

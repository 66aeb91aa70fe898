import {camberAt, type Camber} from "../member/camber.js";
import {fillRatio} from "../member/fillRatio.js";
import type {Member} from "../member/member.js";
import {simpson} from "../member/simpson.js";
import {IN3_PER_YD3, IN_PER_FT} from "../units.js";
import type {SettledTopping} from "./fixedPoint.js";
import {camberToleranceIn} from "./joint.js";
import {HALF_PLACES, MODES, levelFor, type ToppingBasis} from "./spreadTopping.js";

/** What the spread of a design's pieces starts from: plain data, which may be sent to a worker. */
export interface SpreadBasis {
  readonly spanIn: number;
  /** Immediate midspan movement by strands and own weight, in, and their growth until the piece is set. */
  readonly prestressIn: number;
  readonly selfIn: number;
  readonly erectionPrestress: number;
  readonly erectionSelf: number;
  readonly ageDays: number;
  readonly toleranceIn: number;
  readonly topping: ToppingBasis | undefined;
}

/** Places along the span less one, as many as {@link SettledTopping} has. */
const PLACES = 80;
/** Flexibility ratio beyond which the spread of a topping is not reported: single soft pieces would then have no end to it. */
const GREATEST_RATIO = 0.4;

/**
 * Takes from a member and its camber what {@link SpreadBasis} holds.
 *
 * @param settled - the topping whose finished surface the pieces get; level, with the member's own least thickness, if
 *   left out
 */
export function spreadBasis(member: Member, camber: Camber, spanFt: number, settled?: SettledTopping): SpreadBasis {
  const {multipliers, prestressIn, selfIn} = camber;
  return {
    prestressIn, selfIn,
    spanIn: spanFt * IN_PER_FT,
    erectionPrestress: multipliers.erectionPrestress,
    erectionSelf: multipliers.erectionSelf,
    ageDays: camber.ageDays,
    toleranceIn: camberToleranceIn(spanFt),
    topping: toppingBasis(member, camber, spanFt, settled),
  };
}

function toppingBasis(member: Member, camber: Camber, spanFt: number, settled: SettledTopping | undefined): ToppingBasis | undefined {
  const {topping} = member;
  if (!topping) return undefined;
  const ratio = fillRatio(topping.concrete.unitWeightPcf, topping.widthIn, spanFt, member.modulusKsi, member.section.inertiaIn4);
  // Stryker disable next-line EqualityOperator: nothing begins or ends there
  if (ratio > GREATEST_RATIO) return undefined;
  // The camber's own curve with one cause at a time, each of 1 in at midspan.
  const none = {...camber, prestressIn: 0, selfIn: 0, toppingIn: 0, superimposedIn: 0};
  const shape = (cause: "prestressIn" | "selfIn", points: number, end: number) =>
    Array.from({length: points}, (_, i) => camberAt(member, {...none, [cause]: 1}, (end * i) / (points - 1)).releaseIn);
  const along = {prestress: shape("prestressIn", PLACES + 1, 1), self: shape("selfIn", PLACES + 1, 1)};
  const halfway = Array.from({length: HALF_PLACES}, (_, i) => (PLACES / 2 / (HALF_PLACES - 1)) * i);
  const waves = (values: readonly number[]) => MODES.map((n) => 2 * simpson(values.map((value, i) => value * Math.sin((n * Math.PI * i) / PLACES))));
  // How far the finished surface stands above its ends; it is as far along the span as the places of the shapes.
  const surface = settled ? settled.points.map(({riseIn, thicknessIn}) => riseIn + thicknessIn - settled.surfaceEndIn) : along.self.map(() => 0);
  const basis = {
    ratio,
    leastIn: settled?.leastIn ?? topping.thicknessIn,
    prestressShape: shape("prestressIn", HALF_PLACES, 0.5),
    selfShape: shape("selfIn", HALF_PLACES, 0.5),
    prestressWaves: waves(along.prestress),
    selfWaves: waves(along.self),
    prestressMean: simpson(along.prestress),
    selfMean: simpson(along.self),
    surfaceShape: halfway.map((place) => surface[place] as number),
    surfaceWaves: waves(surface),
    surfaceMean: simpson(surface),
    yd3PerIn: (member.widthFt * spanFt * IN_PER_FT ** 2) / IN3_PER_YD3,
  };
  const {multipliers: m} = camber;
  return {...basis, levelIn: levelFor(basis, m.erectionPrestress * camber.prestressIn, m.erectionSelf * camber.selfIn)};
}

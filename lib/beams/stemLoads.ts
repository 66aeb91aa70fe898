import {requireNumber} from "../check.js";
import {InputError} from "../errors.js";
import {LB_PER_KIP, kipFt} from "../units.js";
import {simpleSpanMomentKipIn, simpleSpanShearKip} from "./statics.js";

/** A concentrated load on a simple span. */
export interface PointLoad {
  /** From the left support, ft. */
  readonly atFt: number;
  readonly loadKip: number;
  /** From the line about which torsion is taken to the load, in. */
  readonly eccentricityIn: number;
}

/** A simple span whose ends are held against rolling, under point loads and an even load. */
export interface PointLoadedBeam {
  readonly spanFt: number;
  readonly points: readonly PointLoad[];
  /** Even load over the whole span, plf, and its eccentricity for torsion, in. */
  readonly uniformPlf: number;
  readonly uniformEccentricityIn: number;
}

/** A stretch between loads: shear and torsion run straight, the moment as a parabola of slope shear. */
export interface Stretch {
  readonly fromFt: number;
  readonly toFt: number;
  readonly shearFromKip: number;
  readonly shearToKip: number;
  readonly momentFromKipFt: number;
  readonly momentToKipFt: number;
  readonly torsionFromKipIn: number;
  readonly torsionToKipIn: number;
}

/** Reactions and diagrams of a beam under point loads. Shear and torsion are positive at the left support. */
export interface PointLoadDiagrams {
  readonly stretches: readonly Stretch[];
  readonly leftKip: number;
  readonly rightKip: number;
  /** Torsion that each end's connections hold, kip-in; both in the same sense as the loads' levers. */
  readonly leftTorsionKipIn: number;
  readonly rightTorsionKipIn: number;
  readonly greatestMomentKipFt: number;
  readonly greatestMomentAtFt: number;
}

/**
 * Exact reactions, shear, moment and torsion of a simple span under point loads and an even load. Torsion divides
 * between the two held ends as a load does between two supports (constant stiffness). A load that stands right over a
 * support is part of its reaction and of no stretch; {@link shearBesideKip} and the greatest values count it, for a hair's
 * breadth inside the support it would be shear.
 *
 * @throws InputError if a load stands off the span or a value is out of its range
 */
export function pointLoadDiagrams(beam: PointLoadedBeam): PointLoadDiagrams {
  const stretches: Stretch[] = [];
  const {leftKip, rightKip, leftTorsionKipIn, rightTorsionKipIn, greatestMomentKipFt, greatestMomentAtFt} = walked(beam, stretches);
  return {stretches, leftKip, rightKip, leftTorsionKipIn, rightTorsionKipIn, greatestMomentKipFt, greatestMomentAtFt};
}

/**
 * Walks along a beam from its left support, and writes its stretches into a list where there is one.
 *
 * @param eachKip - load at every point in place of its own
 */
function walked(beam: PointLoadedBeam, stretches: Stretch[] | undefined, eachKip?: number): Omit<PointLoadDiagrams, "stretches"> {
  const {spanFt, points, uniformPlf, uniformEccentricityIn} = checked(beam);
  const uniformKipPerFt = uniformPlf / 1000;
  const twistKipInPerFt = uniformKipPerFt * uniformEccentricityIn;
  // By plain loops: every size of beam that is tried comes here.
  let [leftPointsKip, rightPointsKip, leftTwistKipIn, rightTwistKipIn] = [0, 0, 0, 0];
  for (const {atFt, loadKip: ownKip, eccentricityIn} of points) {
    const loadKip = eachKip ?? ownKip;
    const share = 1 - atFt / spanFt;
    leftPointsKip += loadKip * share;
    rightPointsKip += loadKip * (1 - share);
    leftTwistKipIn += loadKip * eccentricityIn * share;
    rightTwistKipIn += loadKip * eccentricityIn * (1 - share);
  }
  const leftKip = (uniformKipPerFt * spanFt) / 2 + leftPointsKip;
  const rightKip = (uniformKipPerFt * spanFt) / 2 + rightPointsKip;
  const leftTorsionKipIn = (twistKipInPerFt * spanFt) / 2 + leftTwistKipIn;
  const rightTorsionKipIn = (twistKipInPerFt * spanFt) / 2 + rightTwistKipIn;

  let fromFt = 0;
  let shearKip = leftKip;
  let momentKipFt = 0;
  let torsionKipIn = leftTorsionKipIn;
  let greatestKipFt = 0;
  let greatestAtFt = 0;
  const sorted = inOrder(points) ? points : [...points].sort((one, other) => one.atFt - other.atFt);
  for (let i = 0; i <= sorted.length; i++) {
    const point = sorted[i];
    // The last stretch ends at the right support.
    const toFt = point ? point.atFt : spanFt;
    const lengthFt = toFt - fromFt;
    if (lengthFt > 0) {
      const shearToKip = shearKip - uniformKipPerFt * lengthFt;
      const momentToKipFt = momentKipFt + ((shearKip + shearToKip) / 2) * lengthFt;
      const torsionToKipIn = torsionKipIn - twistKipInPerFt * lengthFt;
      stretches?.push({
        fromFt, toFt, shearFromKip: shearKip, shearToKip, momentFromKipFt: momentKipFt, momentToKipFt,
        torsionFromKipIn: torsionKipIn, torsionToKipIn,
      });
      // The moment is greatest where the shear passes through zero, within a stretch or at the load that ends it; where
      // it falls all the way its greatest was seen before.
      // Stryker disable next-line EqualityOperator: a shear that is 0 where the stretch begins passes through zero there
      const toZeroFt = shearKip > 0 && shearToKip < 0 ? shearKip / uniformKipPerFt : lengthFt;
      const peakKipFt = momentKipFt + shearKip * toZeroFt - (uniformKipPerFt * toZeroFt ** 2) / 2;
      if (peakKipFt > greatestKipFt) {
        greatestKipFt = peakKipFt;
        greatestAtFt = fromFt + toZeroFt;
      }
      fromFt = toFt;
      shearKip = shearToKip;
      momentKipFt = momentToKipFt;
      torsionKipIn = torsionToKipIn;
    }
    if (point) {
      const loadKip = eachKip ?? point.loadKip;
      shearKip -= loadKip;
      torsionKipIn -= loadKip * point.eccentricityIn;
    }
  }
  return {leftKip, rightKip, leftTorsionKipIn, rightTorsionKipIn, greatestMomentKipFt: greatestKipFt, greatestMomentAtFt: greatestAtFt};
}

function inOrder(points: readonly PointLoad[]): boolean {
  for (let i = 1; i < points.length; i++) {
    if ((points[i] as PointLoad).atFt < (points[i - 1] as PointLoad).atFt) return false;
  }
  return true;
}

/** Shear, moment and torsion at a place, ft from the left support; right at a load, just to its left (just right of the left support). */
export function diagramsAt(diagrams: PointLoadDiagrams, atFt: number): {shearKip: number; momentKipFt: number; torsionKipIn: number} {
  const last = diagrams.stretches.at(-1) as Stretch;
  requireNumber(atFt, {path: "atFt", label: "place along the beam", unit: "ft", min: 0, max: last.toFt});
  const stretch = diagrams.stretches.find(({toFt}) => atFt <= toFt) as Stretch;
  const lengthFt = stretch.toFt - stretch.fromFt;
  const part = (atFt - stretch.fromFt) / lengthFt;
  const shearKip = stretch.shearFromKip + part * (stretch.shearToKip - stretch.shearFromKip);
  return {
    shearKip,
    momentKipFt: stretch.momentFromKipFt + ((stretch.shearFromKip + shearKip) / 2) * part * lengthFt,
    torsionKipIn: stretch.torsionFromKipIn + part * (stretch.torsionToKipIn - stretch.torsionFromKipIn),
  };
}

/** Shear at a place, kip, without sign: the greater of both sides of it, those of a support included. */
export function shearBesideKip({stretches, leftKip, rightKip}: PointLoadDiagrams, atFt: number): number {
  const last = stretches.at(-1) as Stretch;
  requireNumber(atFt, {path: "atFt", label: "place along the beam", unit: "ft", min: 0, max: last.toFt});
  let most = atFt === 0 ? leftKip : atFt === last.toFt ? rightKip : 0;
  for (const {fromFt, toFt, shearFromKip, shearToKip} of stretches) {
    if (atFt < fromFt || atFt > toFt) continue;
    most = Math.max(most, Math.abs(shearFromKip + ((atFt - fromFt) / (toFt - fromFt)) * (shearToKip - shearFromKip)));
  }
  return most;
}

/** Greatest shear beside any load or support, kip: the greater reaction, for loads between the supports only take from it. */
export function greatestShearKip({leftKip, rightKip}: PointLoadDiagrams): number {
  return Math.max(leftKip, rightKip);
}

/** Greatest torsion beside any load or support, kip-in, without sign: that of an end is all that it holds. */
export function greatestTorsionKipIn({leftTorsionKipIn, rightTorsionKipIn, stretches}: PointLoadDiagrams): number {
  let most = Math.max(Math.abs(leftTorsionKipIn), Math.abs(rightTorsionKipIn));
  for (const {torsionFromKipIn, torsionToKipIn} of stretches) most = Math.max(most, Math.abs(torsionFromKipIn), Math.abs(torsionToKipIn));
  return most;
}

/** Stems of deck members laid side by side along a beam's ledge. */
export interface StemRow {
  readonly spanFt: number;
  /** Width of a deck member along the beam, ft, and between the centers of its two stems, ft. */
  readonly memberWidthFt: number;
  readonly stemSpacingFt: number;
  /** Left support to the center of the first stem, ft: from 0 to the greater gap between stems. */
  readonly firstStemFt: number;
}

/**
 * Places of all stems on the span, ft from the left support: the gap within a member first, then the gap across the
 * joint to the next, in turn. A row that begins with a joint is the same row with the two gaps exchanged.
 *
 * @throws InputError if a gap or the first place is out of its range
 */
export function stemPlacesFt(row: StemRow): number[] {
  const {spanFt, memberWidthFt, stemSpacingFt, firstStemFt} = row;
  requireNumber(spanFt, {path: "spanFt", label: "span of the beam", unit: "ft", min: 1, max: 200});
  requireNumber(memberWidthFt, {path: "memberWidthFt", label: "width of the deck member", unit: "ft", min: 0.01, max: 20});
  requireNumber(stemSpacingFt, {path: "stemSpacingFt", label: "spacing of the stems", unit: "ft", min: memberWidthFt / 100, max: memberWidthFt * 0.99});
  const mostFt = Math.min(spanFt, Math.max(stemSpacingFt, memberWidthFt - stemSpacingFt));
  requireNumber(firstStemFt, {path: "firstStemFt", label: "support to the first stem", unit: "ft", min: 0, max: mostFt});
  const places: number[] = [];
  for (let i = 0; ; i++) {
    const atFt = firstStemFt + Math.floor(i / 2) * memberWidthFt + (i % 2) * stemSpacingFt;
    // A stem over the support to within rounding stands on it.
    // Stryker disable next-line EqualityOperator: none stands just so far beyond it
    if (atFt > spanFt + 1e-9) return places;
    places.push(Math.min(atFt, spanFt));
  }
}

/** Loads of a beam under a deck. */
export interface DeckedBeam {
  readonly spanFt: number;
  /** Load of the deck on the ledge per foot of beam, plf, and its eccentricity for torsion, in. */
  readonly deckPlf: number;
  readonly deckEccentricityIn: number;
  /** The beam's own weight and cladding, plf, and their eccentricity for torsion, in. */
  readonly uniformPlf: number;
  readonly uniformEccentricityIn: number;
}

/** A beam under a deck's stems. */
export interface StemBeamInput extends StemRow, DeckedBeam {}

/** A beam under stems beside the same beam under the deck's even load. */
export interface StemBeam {
  readonly beam: PointLoadedBeam;
  readonly diagrams: PointLoadDiagrams;
  /** Load of one stem, kip: the deck's load over half a member's width. */
  readonly stemKip: number;
  /** The same with the deck's load spread evenly over the span. */
  readonly uniform: {readonly reactionKip: number; readonly momentKipFt: number; readonly torsionKipIn: number};
  /** Stems over even load: greater reaction, greatest moment, greater torsion; 1 where nothing stands on the beam. */
  readonly reactionRatio: number;
  readonly momentRatio: number;
  readonly torsionRatio: number;
}

/** Exact diagrams of a beam under the stems of its deck, and how far the usual even load is from them. */
export function stemBeam(input: StemBeamInput): StemBeam {
  return beamUnderDeck(input, stemPlacesFt(input), input.memberWidthFt / 2);
}

/**
 * Exact diagrams of a beam under stems at places, each with the deck's load over some length of beam; without any, the
 * deck's load lies on the beam evenly.
 *
 * @param placesFt - from the left support, ft
 * @param perStemFt - length of beam whose deck one stem carries: half a member's width, ft
 */
export function beamUnderDeck(input: DeckedBeam, placesFt: readonly number[], perStemFt: number): StemBeam {
  const {spanFt} = input;
  const stemKip = placesFt.length > 0 ? stemKipOf(input, perStemFt) : 0;
  const {beam, allPlf, twistPlfIn} = loadedByDeck(input, placesFt.map((atFt) => ({atFt, loadKip: stemKip, eccentricityIn: input.deckEccentricityIn})));
  const diagrams = pointLoadDiagrams(beam);
  const uniform = {
    reactionKip: simpleSpanShearKip(allPlf, spanFt, 0),
    momentKipFt: kipFt(simpleSpanMomentKipIn(allPlf, spanFt)),
    torsionKipIn: simpleSpanShearKip(twistPlfIn, spanFt, 0),
  };
  // Stryker disable next-line EqualityOperator: of two alike either does
  const greater = (one: number, other: number) => (Math.abs(one) > Math.abs(other) ? one : other);
  const ratio = (value: number, even: number) => (even === 0 ? 1 : value / even);
  return {
    beam, diagrams, stemKip, uniform,
    reactionRatio: ratio(Math.max(diagrams.leftKip, diagrams.rightKip), uniform.reactionKip),
    momentRatio: ratio(diagrams.greatestMomentKipFt, uniform.momentKipFt),
    torsionRatio: ratio(greater(diagrams.leftTorsionKipIn, diagrams.rightTorsionKipIn), uniform.torsionKipIn),
  };
}

/**
 * Greatest moment of {@link beamUnderDeck}, kip-ft, where no more of it is asked for.
 *
 * @param like - the same beam under stems at the same places, whatever they bring
 */
export function momentUnderDeckKipFt(input: DeckedBeam, {beam: {points}}: Pick<StemBeam, "beam">, perStemFt: number): number {
  return walked(loadedByDeck(input, points).beam, undefined, stemKipOf(input, perStemFt)).greatestMomentKipFt;
}

function stemKipOf({deckPlf}: DeckedBeam, perStemFt: number): number {
  return (deckPlf * perStemFt) / LB_PER_KIP;
}

function loadedByDeck(input: DeckedBeam, points: readonly PointLoad[]): {beam: PointLoadedBeam; allPlf: number; twistPlfIn: number} {
  const {spanFt, deckPlf, deckEccentricityIn, uniformPlf, uniformEccentricityIn} = input;
  requireNumber(deckPlf, {path: "deckPlf", label: "load of the deck", unit: "plf", min: 0, max: MOST_PLF});
  const allPlf = deckPlf + uniformPlf;
  const twistPlfIn = deckPlf * deckEccentricityIn + uniformPlf * uniformEccentricityIn;
  const beam = points.length > 0
    ? {spanFt, points, uniformPlf, uniformEccentricityIn}
    : {spanFt, points, uniformPlf: allPlf, uniformEccentricityIn: allPlf > 0 ? twistPlfIn / allPlf : 0};
  return {beam, allPlf, twistPlfIn};
}

const LEAST_SPAN_FT = 1;
const MOST_SPAN_FT = 200;
/** The greatest even load, plf, and point load, kip, and how far out either may lie, in. */
const MOST_PLF = 1e5;
const MOST_KIP = 1e4;
const MOST_OUT_IN = 60;

function checked(beam: PointLoadedBeam): PointLoadedBeam {
  const {spanFt, points, uniformPlf, uniformEccentricityIn} = beam;
  // Only what is refused needs its words.
  if (!(spanFt >= LEAST_SPAN_FT && spanFt <= MOST_SPAN_FT && uniformPlf >= 0 && uniformPlf <= MOST_PLF && Math.abs(uniformEccentricityIn) <= MOST_OUT_IN)) {
    requireNumber(spanFt, {path: "spanFt", label: "span of the beam", unit: "ft", min: LEAST_SPAN_FT, max: MOST_SPAN_FT});
    requireNumber(uniformPlf, {path: "uniformPlf", label: "even load", unit: "plf", min: 0, max: MOST_PLF});
    requireNumber(uniformEccentricityIn, {path: "uniformEccentricityIn", label: "lever of the even load", unit: "in", min: -MOST_OUT_IN, max: MOST_OUT_IN});
  }
  if (!Array.isArray(points)) throw new InputError({path: "points", label: "point loads", value: points, allowed: "a list"});
  for (let i = 0; i < points.length; i++) {
    const {atFt, loadKip, eccentricityIn} = points[i] as PointLoad;
    if (atFt >= 0 && atFt <= spanFt && loadKip >= 0 && loadKip <= MOST_KIP && Math.abs(eccentricityIn) <= MOST_OUT_IN) continue;
    requireNumber(atFt, {path: `points.${i}.atFt`, label: "place of a load", unit: "ft", min: 0, max: spanFt});
    requireNumber(loadKip, {path: `points.${i}.loadKip`, label: "point load", unit: "kip", min: 0, max: MOST_KIP});
    requireNumber(eccentricityIn, {path: `points.${i}.eccentricityIn`, label: "lever of a load", unit: "in", min: -MOST_OUT_IN, max: MOST_OUT_IN});
  }
  return beam;
}

import type {LinePoint} from "./surface.js";

/** A simply supported span under a load along it: in the load's unit, ft, and both times ft. */
export interface SpanUnderLine {
  readonly lengthFt: number;
  /** The load by place, from the first support. */
  readonly line: readonly LinePoint[];
  readonly firstReaction: number;
  readonly secondReaction: number;
  /** Greatest moment, and its place from the first support. */
  readonly moment: number;
  readonly momentAtFt: number;
}

/**
 * Reactions and greatest moment of a simply supported span under a load that is straight between the given points, the
 * first and the last of which are the supports (statics). It may step at a place that is given twice, and is nowhere upward.
 */
export function simpleSpan(points: readonly LinePoint[]): SpanUnderLine {
  const startFt = (points[0] as LinePoint).xFt;
  const line = points.map(({xFt, load}) => ({xFt: xFt - startFt, load}));
  const lengthFt = (line.at(-1) as LinePoint).xFt;
  let total = 0;
  let aboutFirst = 0;
  for (const [a, b] of pieces(line)) {
    const width = b.xFt - a.xFt;
    total += (width * (a.load + b.load)) / 2;
    aboutFirst += (width * (a.load * (2 * a.xFt + b.xFt) + b.load * (a.xFt + 2 * b.xFt))) / 6;
  }
  const secondReaction = aboutFirst / lengthFt;
  const firstReaction = total - secondReaction;
  let [shear, moment] = [firstReaction, 0];
  for (const [a, b] of pieces(line)) {
    const width = b.xFt - a.xFt;
    const grows = (b.load - a.load) / width;
    const end = shear - (width * (a.load + b.load)) / 2;
    // Stryker disable next-line EqualityOperator: where the shear is just spent, nothing is added behind
    if (end <= 0) {
      const inFt = zeroAt(shear, a.load, grows, width);
      return {lengthFt, line, firstReaction, secondReaction, moment: moment + shear * inFt - (a.load * inFt ** 2) / 2 - (grows * inFt ** 3) / 6, momentAtFt: a.xFt + inFt};
    }
    moment += shear * width - (a.load * width ** 2) / 2 - (grows * width ** 3) / 6;
    shear = end;
  }
  // Rounding may leave a hair of shear at the second support.
  // Stryker disable next-line ObjectLiteral,MethodExpression: nothing else leads here
  return {lengthFt, line, firstReaction, secondReaction, moment: Math.max(0, moment), momentAtFt: lengthFt};
}

/** The line's pieces; two points at one place, where a load steps or a rounding parts what is one, have none between them. */
function pieces(line: readonly LinePoint[]): (readonly [LinePoint, LinePoint])[] {
  return line.slice(1).map((point, i) => [line[i] as LinePoint, point] as const).filter(([a, b]) => b.xFt > a.xFt);
}

/** Where the shear passes zero within a piece: the first root of shear - load x - grows x^2/2. */
function zeroAt(shear: number, load: number, grows: number, width: number): number {
  const root = Math.sqrt(Math.max(0, load * load + 2 * grows * shear));
  const inFt = load + root > 0 ? (2 * shear) / (load + root) : 0;
  return Math.min(width, Math.max(0, inFt));
}

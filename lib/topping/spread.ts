import {requireNumber} from "../check.js";
import {creepGrowth} from "../materials/timeModel.js";
import {grownMultiplier} from "../member/camber.js";
import {seededRandom} from "./random.js";
import {distribution, quantileOf, type Distribution} from "./distribution.js";
import {SCATTER_RULES, type Scatter} from "./scatter.js";
import type {SpreadBasis} from "./spreadBasis.js";
import {memberTopping} from "./spreadTopping.js";

/** What to try. */
export interface SpreadInput {
  readonly basis: SpreadBasis;
  readonly scatter: Scatter;
  /** Whole number; the same gives the same pieces. */
  readonly seed: number;
  /** Pieces in a row, 10 to 200,000. */
  readonly count: number;
  /** Height by which the finished surface is set above the design's level, in, -2 to 4; 0 if left out. */
  readonly raisedIn?: number;
  /** Pieces whose topping is ordered together, 0.1 to 500: those of one bay, in which the last may lie in part; 1 if left out. */
  readonly piecesPerOrder?: number;
}

/** What a row of pieces came to. */
export interface Spread {
  readonly count: number;
  readonly seed: number;
  /** Camber at midspan when the pieces are set, in. */
  readonly erection: Distribution;
  /** Difference in size between neighbors at midspan, before they are pulled level, in. */
  readonly difference: Distribution;
  /** Tolerance that both are held against, in; and the parts that miss it, 0 to 1. */
  readonly toleranceIn: number;
  readonly offDesignShare: number;
  readonly neighborsApartShare: number;
  /** Undefined where the deck has no topping, or one for which the screen of wet topping fails by far. */
  readonly topping: ToppingSpread | undefined;
}

/** What the topping over a row of pieces came to. */
export interface ToppingSpread {
  /** Thinnest topping of each piece, in. */
  readonly thinnest: Distribution;
  /** Part of the pieces whose topping is somewhere thinner than the required minimum. */
  readonly tooThinShare: number;
  /** Height by which the surface would have to be raised further for no more than one piece in twenty to be too thin, in. */
  readonly raiseForTwentiethIn: number;
  /** Topping of an order, yd3. */
  readonly orderYd3: Distribution;
}

/** How far the work is, 0 to 1. */
export interface SpreadProgress {
  readonly doneShare: number;
}

/** Pieces between two reports of progress. */
const STRIDE = 1000;
/** A topping misses its minimum thickness when it is thinner by more than rounding. */
const THIN_IN = 1e-9;

/**
 * Tries a row of pieces whose concrete, prestress, age, weight and length stray from the design's, at random from a seed:
 * what camber they have, how neighbors differ, how thin the topping gets and how much of it there is to order.
 *
 * Each piece's causes are lognormal with mean 1 (its length normal), and follow each other along the row as a
 * first-order autoregressive series with the given likeness. The lift by strands goes with force x L^2/(E sqrt(f'ci)),
 * the sag of own weight with weight x L^4/(E sqrt(f'ci)), and both grow with age by ACI 209's creep curve. What strays
 * within a section, such as the strands' height, is not in it.
 *
 * A generator: yields how far it is and returns plain data.
 *
 * @throws InputError if the input is out of range
 */
export function* spread(input: SpreadInput): Generator<SpreadProgress, Spread> {
  const {basis, scatter, seed, count, raisedIn, piecesPerOrder} = checked(input);
  const random = seededRandom(seed);
  const own = Math.sqrt(1 - scatter.likeness ** 2);
  const deviates = new Float64Array(6);
  const sigmas = [scatter.stiffness, scatter.releaseStrength, scatter.force, scatter.weight, scatter.age].map((cv) => Math.sqrt(Math.log(1 + cv * cv)));
  const factor = (cause: number) => {
    const sigma = sigmas[cause] as number;
    return Math.exp(sigma * (deviates[cause] as number) - (sigma * sigma) / 2);
  };
  const erectionIn = new Float64Array(count);
  const differenceIn = new Float64Array(count - 1);
  const thinnestIn = new Float64Array(basis.topping ? count : 0);
  // As many whole orders as the row of pieces fills.
  const orders = new Float64Array(basis.topping ? Math.floor(count / piecesPerOrder + 1e-9) : 0);
  const {erectionPrestress, erectionSelf} = basis;
  const designCreep = creepGrowth(basis.ageDays);

  // Stryker disable next-line EqualityOperator: a piece more finds no place in the row
  for (let i = 0; i < count; i++) {
    // Stryker disable next-line EqualityOperator: a draw more makes another row, as likely as this
    for (let cause = 0; cause < 6; cause++) {
      const fresh = random.normal();
      // Stryker disable next-line ArithmeticOperator: what is drawn is as likely below as above; the likeness is tried in its tests
      deviates[cause] = i === 0 ? fresh : scatter.likeness * (deviates[cause] as number) + own * fresh;
    }
    // Stryker disable next-line ArithmeticOperator: longer by as much as shorter
    const longer = 1 + (scatter.lengthIn * (deviates[5] as number)) / basis.spanIn;
    const longer2 = longer * longer;
    const stiffness = factor(0);
    const early = stiffness * Math.sqrt(factor(1));
    const growth = creepGrowth(basis.ageDays * factor(4)) / designCreep;
    // Written so that pieces without scatter come out as the design's to the last digit.
    const prestressIn = grownMultiplier(erectionPrestress, growth) * (basis.prestressIn * (factor(2) * longer2) / early);
    const selfIn = grownMultiplier(erectionSelf, growth) * (basis.selfIn * (factor(3) * longer2 * longer2) / early);
    erectionIn[i] = prestressIn + selfIn;
    // Stryker disable next-line EqualityOperator,ConditionalExpression: before the first place of the row nothing is kept
    if (i > 0) differenceIn[i - 1] = Math.abs((erectionIn[i] as number) - (erectionIn[i - 1] as number));
    if (basis.topping) {
      const {thinnestIn: thinIn, meanIn} = memberTopping(basis.topping, prestressIn, selfIn, (longer2 * longer2) / stiffness, raisedIn);
      thinnestIn[i] = thinIn;
      addToOrders(orders, i, piecesPerOrder, meanIn * longer * basis.topping.yd3PerIn);
    }
    if ((i + 1) % STRIDE === 0 && i + 1 < count) yield {doneShare: (i + 1) / count};
  }

  const {toleranceIn} = basis;
  const part = (values: Float64Array, which: (value: number) => boolean) => values.reduce((sum, value) => sum + (which(value) ? 1 : 0), 0) / values.length;
  const design = erectionPrestress * basis.prestressIn + erectionSelf * basis.selfIn;
  return {
    count, seed, toleranceIn,
    // Stryker disable EqualityOperator: no piece misses the design, or its neighbor, by just the tolerance
    offDesignShare: part(erectionIn, (value) => Math.abs(value - design) > toleranceIn),
    neighborsApartShare: part(differenceIn, (value) => value > toleranceIn),
    // Stryker restore EqualityOperator
    erection: distribution(erectionIn),
    difference: distribution(differenceIn),
    topping: basis.topping && toppingSpread(basis.topping.leastIn, thinnestIn, orders),
  };

  function toppingSpread(leastIn: number, thinnest: Float64Array, orderYd3: Float64Array): ToppingSpread {
    const spreadOf = distribution(thinnest);
    return {
      thinnest: spreadOf,
      // Stryker disable next-line EqualityOperator: no piece is too thin by just what rounding may be
      tooThinShare: part(thinnest, (value) => value < leastIn - THIN_IN),
      raiseForTwentiethIn: Math.max(0, leastIn - quantileOf(spreadOf, 0.05)),
      orderYd3: distribution(orderYd3),
    };
  }
}

/** Adds the topping of the piece at a place of the row to the orders that it lies in, by the part that lies in each. */
function addToOrders(orders: Float64Array, piece: number, piecesPerOrder: number, yd3: number): void {
  for (let from = piece; from < piece + 1;) {
    const order = Math.floor(from / piecesPerOrder + 1e-9);
    const to = Math.min(piece + 1, (order + 1) * piecesPerOrder);
    // What fills no whole order finds no place in the row of them.
    orders[order] = (orders[order] as number) + yd3 * (to - from);
    from = to;
  }
}

function checked(input: SpreadInput): Required<SpreadInput> {
  const number = (value: unknown, path: string, label: string, min: number, max: number, unit = "", integer = false) =>
    requireNumber(value, {path, label, unit, min, max, integer});
  const {scatter} = input;
  for (const name of Object.keys(SCATTER_RULES) as (keyof Scatter)[]) requireNumber(scatter[name], {path: `scatter.${name}`, ...SCATTER_RULES[name]});
  const count = number(input.count, "count", "number of pieces", 10, 200_000, "", true);
  const piecesPerOrder = number(input.piecesPerOrder ?? 1, "piecesPerOrder", "pieces per order", 0.1, Math.min(500, count / 2));
  return {
    basis: input.basis, scatter, count, piecesPerOrder,
    seed: number(input.seed, "seed", "seed", 0, 2 ** 32 - 1, "", true),
    raisedIn: number(input.raisedIn ?? 0, "raisedIn", "height by which the surface is raised", -2, 4, "in"),
  };
}

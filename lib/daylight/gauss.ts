/** Nodes and weights of a rule of integration over -1 to 1. */
export interface Rule {
  readonly nodes: Float64Array;
  readonly weights: Float64Array;
}

/**
 * The rule of Gauss and Legendre, exact for polynomials up to the degree 2 n - 1: the nodes are the zeros of the
 * Legendre polynomial, found by Newton's method from cos(pi (i + 3/4)/(n + 1/2)) (textbook).
 *
 * @param order - number of nodes, 1 or more
 */
export function gaussLegendre(order: number): Rule {
  const nodes = new Float64Array(order);
  const weights = new Float64Array(order);
  for (let i = 0; i < order; i++) {
    let x = Math.cos((Math.PI * (i + 0.75)) / (order + 0.5));
    let slope = 1;
    for (let step = 0; step < 50; step++) {
      let last = 1;
      let value = x;
      for (let n = 2; n <= order; n++) [last, value] = [value, ((2 * n - 1) * x * value - (n - 1) * last) / n];
      slope = (order * (x * value - last)) / (x * x - 1);
      const change = value / slope;
      x -= change;
      if (Math.abs(change) < 1e-15) break;
    }
    nodes[i] = x;
    weights[i] = 2 / ((1 - x * x) * slope * slope);
  }
  return {nodes, weights};
}

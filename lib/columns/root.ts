/**
 * The place between two others at which a function passes from above 0 to below it: regula falsi with the stagnant end
 * halved (Illinois), which never leaves its bracket. Where the function jumps over 0, the nearer side of the jump.
 *
 * @param share - part of `high` to which the place is found
 */
export function fallsThroughZero(of: (at: number) => number, low: number, high: number, share = 1e-13): number {
  let [a, b] = [low, high];
  let [fa, fb] = [of(a), of(b)];
  if (fa <= 0) return a;
  if (fb >= 0) return b;
  let side = 0;
  for (let i = 0; i < 200 && b - a > share * high; i++) {
    const at = b - (fb * (b - a)) / (fb - fa);
    const f = of(at);
    if (f === 0) return at;
    if (f > 0) {
      [a, fa] = [at, f];
      if (side === 1) fb /= 2;
      side = 1;
    } else {
      [b, fb] = [at, f];
      if (side === -1) fa /= 2;
      side = -1;
    }
  }
  return Math.abs(fa) < Math.abs(fb) ? a : b;
}

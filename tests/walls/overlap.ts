import type {PlanPoint} from "../../lib/walls/pieces.js";

/** Area of the plan that two convex outlines share, in2. */
export function sharedIn2(one: readonly PlanPoint[], other: readonly PlanPoint[]): number {
  const clip = turnsLeft(other) ? other : [...other].reverse();
  let kept: readonly PlanPoint[] = turnsLeft(one) ? one : [...one].reverse();
  for (let i = 0; i < clip.length && kept.length > 0; i++) kept = leftOf(kept, clip[i] as PlanPoint, clip[(i + 1) % clip.length] as PlanPoint);
  return Math.abs(signedIn2(kept));
}

function leftOf(outline: readonly PlanPoint[], [ax, ay]: PlanPoint, [bx, by]: PlanPoint): PlanPoint[] {
  const side = ([x, y]: PlanPoint) => (bx - ax) * (y - ay) - (by - ay) * (x - ax);
  return outline.flatMap((point, i): PlanPoint[] => {
    const next = outline[(i + 1) % outline.length] as PlanPoint;
    const [here, there] = [side(point), side(next)];
    const crossing = (here < 0) === (there < 0) ? [] : [[point[0] + ((next[0] - point[0]) * here) / (here - there), point[1] + ((next[1] - point[1]) * here) / (here - there)] as const];
    return here >= 0 ? [point, ...crossing] : crossing;
  });
}

function signedIn2(outline: readonly PlanPoint[]): number {
  return outline.reduce((sum, [x, y], i) => {
    const [nx, ny] = outline[(i + 1) % outline.length] as PlanPoint;
    return sum + (x * ny - nx * y) / 2;
  }, 0);
}

const turnsLeft = (outline: readonly PlanPoint[]): boolean => signedIn2(outline) >= 0;

/** What a piece of the building's outline is. */
export type PieceKind = "column" | "edge beam" | "ledge" | "girder" | "deck" | "strip" | "panel" | "spandrel" | "cladding" | "closing strip" | "parapet";

/** A place on the plan, in: x along the building from its first column line, y across it from the first long side's. */
export type PlanPoint = readonly [x: number, y: number];

/** A piece as it stands: its outline on the plan, a convex polygon, and from where to where it reaches in height, in. */
export interface OutlinePiece {
  readonly kind: PieceKind;
  readonly plan: readonly PlanPoint[];
  readonly bottomIn: number;
  readonly topIn: number;
}

/** A rectangle of the plan. */
export function rect(x0: number, y0: number, x1: number, y1: number): PlanPoint[] {
  return [[x0, y0], [x1, y0], [x1, y1], [x0, y1]];
}

/** The same piece at each of two opposite sides: mirrored about the middle of a length or a width. */
export function bothEnds(piece: OutlinePiece, axis: 0 | 1, acrossIn: number): OutlinePiece[] {
  const mirrored = piece.plan.map(([x, y]): PlanPoint => (axis === 0 ? [acrossIn - x, y] : [x, acrossIn - y]));
  return [piece, {...piece, plan: mirrored.reverse()}];
}

/** Column lines at equal steps from 0 on, in: one more than there are bays. */
export const lines = (count: number, stepIn: number) => Array.from({length: count + 1}, (_, i) => i * stepIn);

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

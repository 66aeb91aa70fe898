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

/** Two pieces, one at each of two opposite sides, from how each is where it stands at the first. */
export function atBothEnds(of: (side: 0 | 1) => OutlinePiece, axis: 0 | 1, acrossIn: number): OutlinePiece[] {
  return [of(0), ...bothEnds(of(1), axis, acrossIn).slice(1)];
}

/** Column lines at equal steps from 0 on, in: one more than there are bays. */
export const lines = (count: number, stepIn: number) => Array.from({length: count + 1}, (_, i) => i * stepIn);

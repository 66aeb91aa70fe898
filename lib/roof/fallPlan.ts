import type {Design} from "../design/design.js";

/** A line along the building, ft from one long edge, and how high the roof's falling surface is there above its drains, in. */
export interface FallLine {
  readonly atFt: number;
  readonly riseIn: number;
  readonly drains: boolean;
}

/** How a roof falls across the building. */
export interface FallPlan {
  readonly widthFt: number;
  readonly lengthFt: number;
  /** Drain lines and the high lines between them, from which water runs both ways, in order; the surface falls straight from line to line. */
  readonly lines: readonly FallLine[];
  /** Longest way down the fall, ft, and the height that it makes, in. */
  readonly runFt: number;
  readonly riseIn: number;
  /** Most roof that one drain serves, ft2; drains of one line, and of the whole roof. */
  readonly drainFt2: number;
  readonly drainsPerLine: number;
  readonly drains: number;
}

/**
 * The fall of a design's roof: where drains lie, where water parts, and how high the surface rises between them.
 *
 * With drains inside, each two bays fall to the line of girders between them, and an odd bay to its own edge. With
 * drains along the edges, water parts in the middle of the building; a deck that falls itself parts at the line of girders
 * nearest to it, and the shorter side falls more steeply so that both meet. A single bay that falls itself
 * falls to one edge. By camber alone water runs to both ends of each member.
 */
export function fallPlan({roof, bay}: Pick<Design, "roof" | "bay">): FallPlan {
  const [widthFt, lengthFt] = [bay.spanFt * bay.baysAcross, bay.beamSpanFt * bay.baysAlong];
  const drainsFt = drainLinesFt(roof, bay);
  const partsFt = roof.drainage === "camber" ? [] : partingLinesFt(roof, bay);
  const ordered = [...drainsFt.map((atFt) => ({atFt, drains: true})), ...partsFt.map((atFt) => ({atFt, drains: false}))].sort((a, b) => a.atFt - b.atFt);
  const runsFt = ordered.slice(1).map(({atFt}, i) => atFt - (ordered[i] as {atFt: number}).atFt);
  const runFt = roof.drainage === "camber" ? bay.spanFt / 2 : Math.max(...runsFt);
  const riseIn = roof.drainage === "camber" ? 0 : roof.slopeInPerFt * runFt;
  const drainsPerLine = Math.max(1, Math.ceil(lengthFt / roof.drainSpacingFt - 1e-9));
  return {
    widthFt, lengthFt, runFt, riseIn, drainsPerLine, drains: drainsPerLine * drainsFt.length,
    lines: ordered.map(({atFt, drains}) => ({atFt, drains, riseIn: drains ? 0 : riseIn})),
    drainFt2: servedFt(drainsFt, partsFt, bay) * (lengthFt / drainsPerLine),
  };
}

function drainLinesFt({drainage, drainsAt}: Design["roof"], {spanFt, baysAcross}: Design["bay"]): number[] {
  const widthFt = spanFt * baysAcross;
  if (drainage === "camber") return Array.from({length: baysAcross + 1}, (_, i) => i * spanFt);
  if (baysAcross === 1) return drainage === "bearing" ? [0] : drainsAt === "inside" ? [widthFt / 2] : [0, widthFt];
  if (drainsAt === "edges") return [0, widthFt];
  return Array.from({length: Math.ceil(baysAcross / 2)}, (_, i) => Math.min(widthFt, (2 * i + 1) * spanFt));
}

function partingLinesFt({drainage, drainsAt}: Design["roof"], {spanFt, baysAcross}: Design["bay"]): number[] {
  const widthFt = spanFt * baysAcross;
  if (baysAcross === 1) return drainage === "bearing" ? [widthFt] : drainsAt === "inside" ? [0, widthFt] : [widthFt / 2];
  if (drainsAt === "edges") return [drainage === "bearing" ? Math.floor(baysAcross / 2) * spanFt : widthFt / 2];
  return Array.from({length: Math.floor(baysAcross / 2) + 1}, (_, i) => 2 * i * spanFt);
}

/** Greatest width of roof whose water comes to one line of drains, ft. */
function servedFt(drainsFt: readonly number[], partsFt: readonly number[], {spanFt, baysAcross}: Design["bay"]): number {
  const widthFt = spanFt * baysAcross;
  // By camber water parts at each member's middle.
  const parts = partsFt.length > 0 ? partsFt : Array.from({length: baysAcross}, (_, i) => (i + 0.5) * spanFt);
  return Math.max(...drainsFt.map((atFt) => {
    const below = Math.max(0, ...parts.filter((part) => part <= atFt));
    const above = Math.min(widthFt, ...parts.filter((part) => part >= atFt));
    return above - below;
  }));
}

/** Height of the falling surface above the drains at a place across the building, in. */
export function riseAtIn({lines}: Pick<FallPlan, "lines">, atFt: number): number {
  const after = lines.findIndex((line) => line.atFt >= atFt);
  const [from, to] = [lines[Math.max(0, after - 1)] as FallLine, lines[after === -1 ? lines.length - 1 : after] as FallLine];
  if (to.atFt <= from.atFt) return to.riseIn;
  return from.riseIn + ((to.riseIn - from.riseIn) * (atFt - from.atFt)) / (to.atFt - from.atFt);
}

/** Greatest mean height of the falling surface over one bay, in: of a taper that is its mean thickness there. */
export function greatestMeanRiseIn(plan: FallPlan, {spanFt, baysAcross}: Pick<Design["bay"], "spanFt" | "baysAcross">): number {
  return Math.max(...Array.from({length: baysAcross}, (_, bay) => {
    // Straight between its knots, so the mean is that of trapezoids between bay's ends and the lines inside it.
    const knots = [bay * spanFt, ...plan.lines.map(({atFt}) => atFt).filter((at) => at > bay * spanFt && at < (bay + 1) * spanFt), (bay + 1) * spanFt];
    return knots.slice(1).reduce((sum, to, i) => {
      const from = knots[i] as number;
      return sum + ((riseAtIn(plan, from) + riseAtIn(plan, to)) / 2) * (to - from);
    }, 0) / spanFt;
  }));
}

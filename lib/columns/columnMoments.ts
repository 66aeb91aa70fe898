import type {Curvature} from "./columnBending.js";
import type {ColumnLevel} from "./levels.js";

/** Factored moments at the ends of one story of a column, kip-in, without sign. */
export interface EndMoments {
  readonly topKipIn: number;
  readonly bottomKipIn: number;
  readonly curvature: Curvature;
  /**
   * The moments that count for the smaller end, kip-in: where the levels bend the column to both sides a smaller one
   * there is worse, so live load is absent on that level; else they are the moments themselves.
   */
  readonly smaller: {readonly topKipIn: number; readonly bottomKipIn: number};
}

/** Share of a level's moment that goes to the story below it: half, or all where none goes up. */
export function shareBelow(levels: readonly ColumnLevel[], i: number): number {
  return i > 0 && !levels[i]?.spliceAbove ? 0.5 : 1;
}

/**
 * Moments about one axis at the ends of each story, top first. Where the column runs through a level, half the level's
 * moment goes up and half down (common practice for stories of like height); at the top, and where the column above
 * bears on a splice, all goes down. The foot is assumed to be pinned.
 *
 * @param momentsKipIn - what each level brings, top first
 * @param deadKipIn - what each brings without live load
 */
export function endMoments(
  levels: readonly ColumnLevel[], momentsKipIn: readonly number[], curvature: Curvature, deadKipIn: readonly number[] = momentsKipIn,
): EndMoments[] {
  return levels.map((_, i): EndMoments => {
    const [down, up] = [shareBelow(levels, i), i + 1 < levels.length ? 1 - shareBelow(levels, i + 1) : 0];
    const top = (moments: readonly number[]) => (moments[i] as number) * down;
    const bottom = (moments: readonly number[]) => (i + 1 < levels.length ? (moments[i + 1] as number) * up : 0);
    const least = curvature === "double" ? deadKipIn : momentsKipIn;
    return {
      topKipIn: top(momentsKipIn), bottomKipIn: bottom(momentsKipIn), curvature,
      smaller: {topKipIn: top(least), bottomKipIn: bottom(least)},
    };
  });
}

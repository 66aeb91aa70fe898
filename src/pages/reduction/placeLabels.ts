import {textWidth} from "../../components/drawings/placement.js";

/** A label beside a point of a chart, px. */
export interface PlacedLabel {
  readonly dx: number;
  readonly dy: number;
  readonly anchor: "start" | "end";
}

/** A part of a chart, px. */
export interface Box {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

const LINE_PX = 15;

/**
 * Where labels stand beside their points so that none covers another or leaves the chart: close to it on the
 * right and above if that is free, else higher, else on the left and below, else wherever above or below its width has room.
 *
 * @param bounds - left and right edge of the room there is, px
 * @param words - other words of the chart, which no label may cover
 */
export function placeLabels(points: readonly {x: number; y: number; label: string}[], sizePx: number, bounds: readonly [number, number], words: readonly Box[] = []): PlacedLabel[] {
  const taken: Box[] = [...words, ...points.map(({x, y}) => ({left: x - 5, right: x + 5, top: y - 3, bottom: y + 3}))];
  return points.map(({x, y, label}) => {
    const width = textWidth(label, sizePx) + 4;
    const up = (step: number): PlacedLabel => ({dx: 6, dy: -11 - step * LINE_PX, anchor: "start"});
    const down = (step: number): PlacedLabel => ({dx: -6, dy: 13 + step * LINE_PX, anchor: "end"});
    // A label that is too long for either side stands over or under its point, as far along as the room goes.
    const along = (dy: number): PlacedLabel => ({dx: Math.max(bounds[0], Math.min(bounds[1] - width, x - width / 2)) - x, dy, anchor: "start"});
    const steps = [0, 1, 2, 3];
    const trials = [up(0), up(1), down(0), up(2), down(1), down(2), ...steps.flatMap((step) => [along(up(step).dy), along(down(step).dy)])];
    const boxOf = ({dx, dy, anchor}: PlacedLabel): Box => {
      const left = anchor === "start" ? x + dx : x + dx - width;
      return {left, right: left + width, top: y + dy - LINE_PX / 2, bottom: y + dy + LINE_PX / 2};
    };
    const free = (box: Box) => box.left >= bounds[0] && box.right <= bounds[1] && !taken.some((other) => overlap(box, other));
    const best = trials.find((trial) => free(boxOf(trial))) ?? down(0);
    taken.push(boxOf(best));
    return best;
  });
}

function overlap(a: Box, b: Box): boolean {
  return a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom;
}

import type {Point, Run} from "./pathPoints.js";

/** Ways along a line that are no further apart than this are one place, as a share of it. */
const SAME = 1e-9;

/** Whether a point lies in an area whose borders are given; where borders overlap, in and out take turns. */
export function inside([x, y]: Point, area: readonly Run[]): boolean {
  let within = false;
  for (const [[x0, y0], [x1, y1]] of area.flatMap(edges)) {
    if (y0 > y !== y1 > y && x < x0 + ((y - y0) / (y1 - y0)) * (x1 - x0)) within = !within;
  }
  return within;
}

/** What of a run lies in an area: the whole of it, or the pieces of its line, which are open. */
export function clipped(run: Run, area: readonly Run[]): Run[] {
  const borders = area.flatMap(edges);
  const pieces: Point[][] = [];
  let piece: Point[] | undefined;
  let cut = false;
  for (const [from, to] of edges(run, run.closed)) {
    const at = (share: number): Point => [from[0] + share * (to[0] - from[0]), from[1] + share * (to[1] - from[1])];
    const shares = [0, ...borders.flatMap((border) => crossing(from, to, border)).sort((a, b) => a - b), 1];
    for (let i = 1; i < shares.length; i++) {
      const [start, end] = [shares[i - 1] as number, shares[i] as number];
      if (end - start < SAME) continue;
      if (!inside(at((start + end) / 2), area)) {
        [piece, cut] = [undefined, true];
        continue;
      }
      if (!piece) pieces.push(piece = [at(start)]);
      piece.push(at(end));
    }
  }
  if (!cut) return [run];
  return pieces.map((points) => ({points, closed: false}));
}

/** The lines of a run, back to its first point where it encloses an area. */
function edges({points}: Run, closed: boolean | number = true): [Point, Point][] {
  const lines = points.slice(1).map((to, i): [Point, Point] => [points[i] as Point, to]);
  return closed === false ? lines : [...lines, [points.at(-1) as Point, points[0] as Point]];
}

/** Where a line crosses another, as a share of it; nothing where they miss each other or run side by side. */
function crossing([x0, y0]: Point, [x1, y1]: Point, [[a0, b0], [a1, b1]]: [Point, Point]): number[] {
  const [dx, dy, da, db] = [x1 - x0, y1 - y0, a1 - a0, b1 - b0];
  const det = dx * db - dy * da;
  if (det === 0) return [];
  const share = ((a0 - x0) * db - (b0 - y0) * da) / det;
  const along = ((a0 - x0) * dy - (b0 - y0) * dx) / det;
  return share > 0 && share < 1 && along >= 0 && along <= 1 ? [share] : [];
}

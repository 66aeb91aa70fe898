/** A point of a drawing. */
export type Point = readonly [x: number, y: number];
/** Points one after the other; a closed run comes back to its first. */
export interface Run {
  readonly points: readonly Point[];
  readonly closed: boolean;
}

/** Straight pieces that stand for a curve. */
const PIECES = 16;
/** How many numbers follow each letter of path data. */
const TAKES: Readonly<Record<string, number>> = {M: 2, L: 2, H: 1, V: 1, C: 6, Q: 4, A: 7, Z: 0};

/**
 * The runs of SVG path data (SVG 2, 9.3): straight lines as they are, curves and arcs in short pieces.
 *
 * @throws Error for data of another kind, so that nothing is left out in silence
 */
export function pathRuns(data: string): Run[] {
  const runs: {points: Point[]; closed: boolean}[] = [];
  let at: Point = [0, 0];
  let begun: Point = at;
  let current: Point[] | undefined;
  const go = (points: readonly Point[]) => {
    if (!current) runs.push({points: current = [at], closed: false});
    current.push(...points);
    at = points.at(-1) ?? at;
  };
  for (const [letter, values] of commands(data)) {
    const kind = letter.toUpperCase();
    const [dx, dy] = letter === kind ? [0, 0] : at;
    const n = (i: number) => values[i] as number;
    const point = (i: number): Point => [n(i) + dx, n(i + 1) + dy];
    switch (kind) {
      case "M":
        [at, begun, current] = [point(0), point(0), undefined];
        break;
      case "L": go([point(0)]); break;
      case "H": go([[n(0) + dx, at[1]]]); break;
      case "V": go([[at[0], n(0) + dy]]); break;
      case "C": go(curve([at, point(0), point(2), point(4)])); break;
      case "Q": go(curve([at, point(0), point(2)])); break;
      case "A": go(arc(at, point(5), Math.abs(n(0)), Math.abs(n(1)), n(2), n(3) !== 0, n(4) !== 0)); break;
      case "Z": {
        const run = runs.at(-1);
        if (run && current) run.closed = true;
        [at, current] = [begun, undefined];
      }
    }
  }
  return runs.filter(({points}) => points.length > 1);
}

/** Letters of path data with their numbers; a letter may stand for several in a row. */
function commands(data: string): [string, number[]][] {
  const tokens = data.match(/[a-zA-Z]|[-+]?(?:\d+\.?\d*|\.\d+)(?:e[-+]?\d+)?/g) ?? [];
  const found: [string, number[]][] = [];
  let letter = "";
  for (let i = 0; i < tokens.length;) {
    if (/[a-zA-Z]/.test(tokens[i] as string)) letter = tokens[i++] as string;
    else if (letter === "M") letter = "L";
    else if (letter === "m") letter = "l";
    const takes = TAKES[letter.toUpperCase()];
    const values = tokens.slice(i, i + (takes ?? 0)).map(Number);
    if (takes === undefined || values.length < takes || values.some(Number.isNaN) || (takes === 0 && i < tokens.length && !/[a-zA-Z]/.test(tokens[i] as string))) {
      throw new Error(`This drawing has a line that cannot be written: ${data.slice(0, 60)}`);
    }
    found.push([letter, values]);
    i += takes;
  }
  return found;
}

/** Points of a Bezier curve after its first, by its corners. */
function curve(corners: readonly Point[]): Point[] {
  return Array.from({length: PIECES}, (_, i) => {
    const t = (i + 1) / PIECES;
    let level = corners;
    while (level.length > 1) level = level.slice(1).map(([x, y], j): Point => [mix((level[j] as Point)[0], x, t), mix((level[j] as Point)[1], y, t)]);
    return level[0] as Point;
  });
}

const mix = (from: number, to: number, share: number): number => from + (to - from) * share;

/** Points of an arc of an ellipse after its first, from its ends (SVG 2, B.2.4). */
function arc(from: Point, to: Point, rx: number, ry: number, turnedDeg: number, large: boolean, sweep: boolean): Point[] {
  if (rx === 0 || ry === 0 || (from[0] === to[0] && from[1] === to[1])) return [to];
  const [c, s] = [Math.cos((turnedDeg * Math.PI) / 180), Math.sin((turnedDeg * Math.PI) / 180)];
  const [hx, hy] = [(from[0] - to[0]) / 2, (from[1] - to[1]) / 2];
  const [x, y] = [c * hx + s * hy, c * hy - s * hx];
  // Radii that are too short to reach are as long as they must be.
  const grown = Math.max(1, Math.sqrt((x / rx) ** 2 + (y / ry) ** 2));
  const [a, b] = [rx * grown, ry * grown];
  const k = Math.sqrt(Math.max(0, (a * b) ** 2 / ((a * y) ** 2 + (b * x) ** 2) - 1)) * (large === sweep ? -1 : 1);
  const [ox, oy] = [(k * a * y) / b, (-k * b * x) / a];
  const [cx, cy] = [c * ox - s * oy + (from[0] + to[0]) / 2, s * ox + c * oy + (from[1] + to[1]) / 2];
  const start = Math.atan2((y - oy) / b, (x - ox) / a);
  let turn = Math.atan2((-y - oy) / b, (-x - ox) / a) - start;
  if (sweep && turn < 0) turn += 2 * Math.PI;
  if (!sweep && turn > 0) turn -= 2 * Math.PI;
  return Array.from({length: PIECES}, (_, i) => {
    if (i === PIECES - 1) return to;
    const angle = start + (turn * (i + 1)) / PIECES;
    const [ex, ey] = [a * Math.cos(angle), b * Math.sin(angle)];
    return [c * ex - s * ey + cx, s * ex + c * ey + cy];
  });
}

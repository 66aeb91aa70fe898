/** How a curve drawn by hand compares with the true one. */
export interface SketchGrade {
  /** Mean distance between the two, % of the height of the true curve's range from zero. */
  readonly offPercent: number;
  readonly verdict: "close" | "near" | "off";
  /** What the drawing has otherwise than the truth, the weightiest first; empty where it is close. */
  readonly words: readonly string[];
}

/** Up to here a drawing is close, and up to there near, %. */
const CLOSE = 8, NEAR = 20;
/** How far a place must be off along the axis, and a height over it, to be spoken of, as shares. */
const PLACE = 0.1, HEIGHT = 0.08;

/**
 * Grades a drawn curve by its mean distance from the true one, both given at the same places, evenly spread along the
 * axis; and says what of its shape is otherwise: its height as a whole, whether it rises or falls, where it does so,
 * where its peak stands, and how it bends.
 *
 * @param drawn - the curve as drawn, at least three values
 * @param truth - the true one, as many
 */
export function gradeSketch(drawn: readonly number[], truth: readonly number[]): SketchGrade {
  if (drawn.length !== truth.length || truth.length < 3) throw new RangeError(`a drawing of ${drawn.length} places cannot be held against ${truth.length}`);
  const scale = Math.max(...truth, 0) - Math.min(...truth, 0) || 1;
  const offs = drawn.map((value, i) => value - (truth[i] as number));
  const mean = (values: readonly number[]) => values.reduce((sum, value) => sum + value, 0) / values.length;
  const offPercent = (100 * mean(offs.map(Math.abs))) / scale;
  const verdict = offPercent <= CLOSE ? "close" : offPercent <= NEAR ? "near" : "off";
  return {offPercent, verdict, words: verdict === "close" ? [] : [...shapeWords(drawn, truth), ...heightWords(mean(offs) / scale)]};
}

function heightWords(share: number): string[] {
  if (Math.abs(share) < HEIGHT) return [];
  return [`on the whole it lies too ${share > 0 ? "high" : "low"}`];
}

/** What the shape has otherwise: of curves that peak within, where; of others, which way they go, when, and how they bend. */
function shapeWords(drawn: readonly number[], truth: readonly number[]): string[] {
  const [own, real] = [drawn, truth].map(shapeOf) as [Shape, Shape];
  if (real.goes === "peaks") {
    if (own.goes !== "peaks") return ["it rises to a peak in between and falls again"];
    return Math.abs(own.place - real.place) < PLACE ? [] : [`you had its peak too far to the ${own.place < real.place ? "left" : "right"}`];
  }
  if (own.goes !== real.goes) return [`you had it ${WENT[own.goes]}, and it ${GOES[real.goes]}`];
  if (real.goes === "stays") return [];
  const early = own.place - real.place;
  const timed = Math.abs(early) < PLACE ? [] : [`you had it ${real.goes === "falls" ? "fall" : "rise"} too ${early < 0 ? "early" : "late"}`];
  const bends = own.bend - real.bend;
  return timed.length > 0 || Math.abs(bends) < PLACE ? timed : ["it bends otherwise: steep first or steep last matters"];
}

const GOES = {rises: "rises", falls: "falls", stays: "stays nearly level", peaks: "peaks in between"} as const;
const WENT = {rises: "rise", falls: "fall", stays: "stay level", peaks: "peak in between"} as const;

interface Shape {
  readonly goes: keyof typeof GOES;
  /** Where it has gone half of its way, or stands highest; a share of the axis. */
  readonly place: number;
  /** How far its mean lies above the straight line from end to end, as a share of the way. */
  readonly bend: number;
}

/** Less of a change than this share of the curve's size is none. */
const LEVEL = 0.1;

function shapeOf(values: readonly number[]): Shape {
  const last = values.length - 1;
  const [first, end] = [values[0] as number, values[last] as number];
  const size = Math.max(...values.map(Math.abs)) || 1;
  const top = values.indexOf(Math.max(...values));
  const over = Math.min((values[top] as number) - first, (values[top] as number) - end);
  if (over > 2 * LEVEL * size) return {goes: "peaks", place: top / last, bend: 0};
  const way = end - first;
  if (Math.abs(way) <= LEVEL * size) return {goes: "stays", place: 0.5, bend: 0};
  const middle = first + way / 2;
  const at = values.findIndex((value) => (way > 0 ? value >= middle : value <= middle));
  const [before, after] = [values[Math.max(0, at - 1)] as number, values[at] as number];
  const place = (at === 0 ? 0 : at - 1 + (after === before ? 1 : (middle - before) / (after - before))) / last;
  const bend = (values.reduce((sum, value, i) => sum + value - (first + (way * i) / last), 0) / values.length) / Math.abs(way);
  return {goes: way > 0 ? "rises" : "falls", place, bend};
}

/** A curve's value between its points, which are in order of x; before the first and past the last it stays. */
export function curveValueAt(points: readonly (readonly [x: number, y: number])[], x: number): number {
  const next = points.findIndex(([at]) => at >= x);
  if (next < 0) return points.at(-1)?.[1] ?? 0;
  const [x1, y1] = points[next] as readonly [number, number];
  if (next === 0) return y1;
  const [x0, y0] = points[next - 1] as readonly [number, number];
  return x1 === x0 ? y1 : y0 + ((y1 - y0) * (x - x0)) / (x1 - x0);
}

/** The end of an axis for values up to the given one that does not tell it: a round number well above. */
export function roundAbove(value: number): number {
  if (!(value > 0)) return 1;
  const wanted = 1.35 * value;
  const power = 10 ** Math.floor(Math.log10(wanted));
  return ([1, 2, 3, 4, 5, 6, 8, 10].find((times) => times * power >= wanted) ?? 10) * power;
}

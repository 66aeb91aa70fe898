/** A stretch of a main between two feeders, and the air in it. */
export interface MainSection {
  readonly x0In: number;
  readonly x1In: number;
  readonly flowCfm: number;
}

/**
 * Air along a main, section by section: at each feeder it gives off, or takes in, the same share of all that it serves.
 * A main has its most air beside its riser and none past its last feeder. With two risers each brings half.
 *
 * @param risersIn - places of the risers along the main: one, or two at its ends
 * @param feedersIn - places of the feeders, rising
 */
export function mainSections(flowCfm: number, risersIn: readonly number[], feedersIn: readonly number[]): MainSection[] {
  // All of the air over all feeders is all of it, to the last digit.
  const of = (feeders: number) => flowCfm * (feeders / feedersIn.length);
  const [first = 0, second = first] = risersIn;
  if (risersIn.length === 2) {
    const half = feedersIn.length / 2;
    // Of an odd number the middle feeder takes half of its air from either side.
    const from = (places: readonly number[], start: number) => leg(start, places, (i) => of(Math.max(0, half - i)));
    const west = feedersIn.slice(0, Math.ceil(half));
    const east = [...feedersIn].reverse().slice(0, Math.ceil(half));
    return [...from(west, first), ...from(east, second).reverse()];
  }
  const east = feedersIn.filter((at) => at >= first);
  const west = feedersIn.filter((at) => at < first).reverse();
  const from = (places: readonly number[]) => leg(first, places, (i) => of(places.length - i));
  return [...from(west).reverse(), ...from(east)];
}

/** The most air in any section: a main of one size is sized for it. */
export function peakCfm(sections: readonly MainSection[]): number {
  return Math.max(0, ...sections.map(({flowCfm}) => flowCfm));
}

/** Sections from a riser outward. */
function leg(startIn: number, placesIn: readonly number[], flowAt: (passed: number) => number): MainSection[] {
  return placesIn.map((at, i) => {
    const before = i === 0 ? startIn : (placesIn[i - 1] as number);
    return {x0In: Math.min(before, at), x1In: Math.max(before, at), flowCfm: flowAt(i)};
  });
}

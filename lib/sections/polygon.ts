/** A point of a cross-section, inches: x to the right, y up from the soffit. */
export type Point = readonly [xIn: number, yIn: number];

/** A closed ring of points; the outline runs counterclockwise, a hole clockwise. */
export type Ring = readonly Point[];

/** What boundary integrals give of a set of rings, about the x axis at the soffit. */
export interface PolygonIntegrals {
  readonly areaIn2: number;
  /** First moment of area about the soffit, in3. */
  readonly firstMomentIn3: number;
  /** Second moment of area about the soffit, in4. */
  readonly secondMomentIn4: number;
  /** Length of all rings, in. */
  readonly perimeterIn: number;
}

/**
 * Area, first and second moment about y = 0, and length of the boundary, by Green's theorem over the edges.
 * Holes count negative because they run clockwise.
 */
export function integrate(rings: readonly Ring[]): PolygonIntegrals {
  let areaIn2 = 0;
  let firstMomentIn3 = 0;
  let secondMomentIn4 = 0;
  let perimeterIn = 0;
  for (const ring of rings) {
    for (let i = 0; i < ring.length; i++) {
      const [x0, y0] = ring[i] as Point;
      const [x1, y1] = ring[(i + 1) % ring.length] as Point;
      const cross = x0 * y1 - x1 * y0;
      areaIn2 += cross / 2;
      firstMomentIn3 += (cross * (y0 + y1)) / 6;
      secondMomentIn4 += (cross * (y0 * y0 + y0 * y1 + y1 * y1)) / 12;
      perimeterIn += Math.hypot(x1 - x0, y1 - y0);
    }
  }
  return {areaIn2, firstMomentIn3, secondMomentIn4, perimeterIn};
}

/** Total width of the concrete at a height, in. On a horizontal edge the value just above it is returned. */
export function widthAt(rings: readonly Ring[], yIn: number): number {
  let widthIn = 0;
  for (const ring of rings) {
    for (let i = 0; i < ring.length; i++) {
      const [x0, y0] = ring[i] as Point;
      const [x1, y1] = ring[(i + 1) % ring.length] as Point;
      // Right-hand edges run up and add their x, left-hand edges run down and subtract it.
      if (y0 <= yIn && yIn < y1) widthIn += x0 + ((yIn - y0) * (x1 - x0)) / (y1 - y0);
      else if (y1 <= yIn && yIn < y0) widthIn -= x0 + ((yIn - y0) * (x1 - x0)) / (y1 - y0);
    }
  }
  return widthIn;
}

/** A horizontal slice of a section between two heights, within which the width varies linearly. */
export interface Band {
  readonly bottomIn: number;
  readonly topIn: number;
  readonly widthBottomIn: number;
  readonly widthTopIn: number;
}

/** Cuts rings into bands at every corner's height, lowest band first. */
export function bands(rings: readonly Ring[]): Band[] {
  const heights = [...new Set(rings.flatMap((ring) => ring.map((point) => point[1])))].sort((a, b) => a - b);
  const result: Band[] = [];
  for (let i = 0; i + 1 < heights.length; i++) {
    const bottomIn = heights[i] as number;
    const topIn = heights[i + 1] as number;
    // Corners that differ by rounding alone make no band.
    if (topIn - bottomIn < 1e-9) continue;
    // The width is linear inside the band: two inner points give both ends without meeting a horizontal edge.
    const third = (topIn - bottomIn) / 3;
    const lower = widthAt(rings, bottomIn + third);
    const upper = widthAt(rings, topIn - third);
    result.push({bottomIn, topIn, widthBottomIn: 2 * lower - upper, widthTopIn: 2 * upper - lower});
  }
  return result;
}

/** A circle as a clockwise ring (a hole) of the given number of corners with exactly the circle's area. */
export function circularHole(centerXIn: number, centerYIn: number, diameterIn: number, corners = 48): Ring {
  const step = (2 * Math.PI) / corners;
  const radiusIn = (diameterIn / 2) * Math.sqrt(step / Math.sin(step));
  return Array.from({length: corners}, (_, i): Point => {
    const angle = -(i + 0.5) * step;
    return [centerXIn + radiusIn * Math.cos(angle), centerYIn + radiusIn * Math.sin(angle)];
  });
}

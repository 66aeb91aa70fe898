/**
 * A second opinion on the strength of a column that shares no code with the library: the section cut into thin strips,
 * round bars cut out of the concrete they stand in, every constant written out again.
 */
export interface FiberColumn {
  readonly widthIn: number;
  readonly depthIn: number;
  readonly strengthPsi: number;
  readonly areaIn2: number;
  /** Depths of all bars' centers, in. */
  readonly barDepthsIn: readonly number[];
}

/** Axial compression and moment about mid-depth for one neutral axis. */
export function fiberStrength(column: FiberColumn, neutralAxisIn: number, strips = 8000): {axialKip: number; momentKipIn: number; strain: number} {
  const {widthIn: b, depthIn: h, strengthPsi, areaIn2, barDepthsIn} = column;
  const beta1 = strengthPsi <= 4000 ? 0.85 : strengthPsi >= 8000 ? 0.65 : 0.85 - (0.05 * (strengthPsi - 4000)) / 1000;
  const radius = Math.sqrt(areaIn2 / Math.PI);
  const dy = h / strips;
  let axialKip = 0;
  let momentKipIn = 0;
  for (let i = 0; i < strips; i++) {
    const y = (i + 0.5) * dy;
    // The last strip counts as far as the block reaches into it.
    const thickness = Math.min(dy, beta1 * neutralAxisIn - i * dy);
    if (thickness <= 0) break;
    let width = b;
    for (const depth of barDepthsIn) {
      if (Math.abs(y - depth) < radius) width -= 2 * Math.sqrt(radius ** 2 - (y - depth) ** 2);
    }
    const forceKip = 0.85 * (strengthPsi / 1000) * width * thickness;
    axialKip += forceKip;
    momentKipIn += forceKip * (h / 2 - y);
  }
  for (const depth of barDepthsIn) {
    const strain = 0.003 * (1 - depth / neutralAxisIn);
    const forceKip = areaIn2 * Math.sign(strain) * Math.min(60, 29000 * Math.abs(strain));
    axialKip += forceKip;
    momentKipIn += forceKip * (h / 2 - depth);
  }
  const farthest = Math.max(...barDepthsIn);
  return {axialKip, momentKipIn, strain: 0.003 * (farthest / neutralAxisIn - 1)};
}

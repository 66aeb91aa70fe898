/**
 * A second opinion on a column bent about both axes that shares no code with the library: the section as a grid of small
 * squares, each bar's concrete left out, every constant written out again.
 */
export interface GridColumn {
  readonly widthIn: number;
  readonly depthIn: number;
  readonly strengthPsi: number;
  readonly areaIn2: number;
  readonly places: readonly {readonly xIn: number; readonly yIn: number}[];
}

/** Nominal strength for a neutral axis at a distance from the corner at 0, 0, square to a direction between width and depth. */
export function gridStrength(column: GridColumn, neutralAxisIn: number, angleRad: number, parts = 240) {
  const {widthIn: b, depthIn: h, strengthPsi, areaIn2, places} = column;
  const beta1 = Math.min(0.85, Math.max(0.65, 0.85 - (0.05 * (strengthPsi - 4000)) / 1000));
  const [s, k] = [Math.sin(angleRad), Math.cos(angleRad)];
  const radius = Math.sqrt(areaIn2 / Math.PI);
  const [dx, dy] = [b / parts, h / parts];
  let [axialKip, aboutDepth, aboutWidth] = [0, 0, 0];
  for (let i = 0; i < parts; i++) {
    for (let j = 0; j < parts; j++) {
      const [x, y] = [(i + 0.5) * dx, (j + 0.5) * dy];
      if (x * s + y * k > beta1 * neutralAxisIn) continue;
      if (places.some(({xIn, yIn}) => Math.abs(xIn - x) < radius && Math.hypot(xIn - x, yIn - y) < radius)) continue;
      const kip = 0.85 * (strengthPsi / 1000) * dx * dy;
      axialKip += kip;
      aboutDepth += kip * (h / 2 - y);
      aboutWidth += kip * (b / 2 - x);
    }
  }
  let farthest = 0;
  for (const {xIn, yIn} of places) {
    const d = xIn * s + yIn * k;
    const strain = 0.003 * (1 - d / neutralAxisIn);
    const kip = areaIn2 * Math.max(-60, Math.min(60, 29000 * strain));
    axialKip += kip;
    aboutDepth += kip * (h / 2 - yIn);
    aboutWidth += kip * (b / 2 - xIn);
    farthest = Math.max(farthest, d);
  }
  const strain = 0.003 * (farthest / neutralAxisIn - 1);
  const phi = Math.min(0.9, Math.max(0.65, 0.65 + (0.25 * (strain - 0.002)) / 0.003));
  return {axialKip, depthMomentKipIn: aboutDepth, widthMomentKipIn: aboutWidth, strain, phi};
}

/**
 * Transmittance of clear glazing at an angle of incidence over that square to it: 1.018 cos t (1 + sin^3 t)
 * (Rivero's fit of 1958 for clear glass, used in hand methods since; from memory). It starts 1.8 % above 1, as
 * published. Against Fresnel's equations for two clear panes it is up to 0.08 low, at 65 degrees.
 *
 * @param cosine - of the angle between ray and normal, 0 to 1
 */
export function relativeTransmittance(cosine: number): number {
  const sine2 = 1 - cosine * cosine;
  return 1.018 * cosine * (1 + sine2 * Math.sqrt(sine2));
}

/**
 * Transmittance for light from all sides over that square to the glass: the mean of {@link relativeTransmittance} over
 * the hemisphere, weighted by the cosine: 2 (1.018) (1/3 + pi/32) = 0.878. Textbooks round it to 0.9.
 */
export const DIFFUSE_TRANSMITTANCE_SHARE = 2.036 * (1 / 3 + Math.PI / 32);

/** Share of the light in a room that its glass reflects (common practice). */
export const GLASS_REFLECTANCE_SHARE = 0.1;

import {inches} from "../units.js";
import {DIFFUSE_TRANSMITTANCE_SHARE, GLASS_REFLECTANCE_SHARE} from "./glass.js";
import type {DaylightInput, WindowBand} from "./input.js";
import {sight, skylineDeg, type Place, type Sight} from "./sight.js";
import {GRID, openingShare, patchShare, type SkyGrid} from "./skyComponent.js";

/**
 * Luminance of what stands outside over that of the overcast sky that it hides: 0.2 (Building Research Establishment,
 * daylight digests; Tregenza and Sharples, Daylight Algorithms, 2.21).
 */
export const OBSTRUCTION_LUMINANCE_SHARE = 0.2;

/**
 * Externally reflected component: light that what stands outside reflects in, as a share of that on open level ground.
 *
 * @param seen - what the place sees through the window
 */
export function externalComponent(window: WindowBand, place: Place, grid: SkyGrid = GRID, {hidden}: Sight = sight(window, place)): number {
  return hidden ? OBSTRUCTION_LUMINANCE_SHARE * openingShare(window) * patchShare(hidden, {glazed: true, grid}) : 0;
}

/**
 * Light on the upright glass from above the horizon as a percentage of that on open level ground, by the angle of the
 * skyline every 10 degrees from 0: the coefficient C of the split-flux method (Building Research Establishment, Digest
 * 309; from memory). Our own integral of the overcast sky with an obstruction at a tenth of its luminance comes within
 * 1.3.
 */
const SPLIT_FLUX_C = [39, 35, 31, 25, 20, 14, 10, 7, 5, 5] as const;
/** The same from the ground: a tenth of its light is reflected, and the glass sees half of it. */
const SPLIT_FLUX_GROUND = 5;

/** The coefficient C for an angle of 0 to 90 degrees, by straight lines between the printed values. */
export function splitFluxC(angleDeg: number): number {
  const step = Math.min(8, Math.floor(angleDeg / 10));
  const low = SPLIT_FLUX_C[step] as number;
  return low + ((SPLIT_FLUX_C[step + 1] as number) - low) * (angleDeg / 10 - step);
}

/**
 * Internally reflected component, averaged over the room, as a share of the light on open level ground: the split-flux
 * method, T W/(A (1 - R)) (C Rfw + 5 Rcw)/100 (Hopkinson, Longmore and Petherbridge, 1954; Building Research
 * Establishment, Digest 309; form and coefficients from memory).
 *
 * Light from above the horizon first meets floor and lower walls (Rfw), light from the ground ceiling and upper walls
 * (Rcw), each without the window's own wall, parted at the middle of the glass; then all surfaces share what is left. T
 * is the glazing's transmittance for light from all sides, W the glass, A and R area and mean reflectance of all
 * surfaces. Far from the window the true value is lower than the average.
 */
export function internalComponent(input: DaylightInput): number {
  const {areaFt2, meanShare} = surfaces(input);
  let flux = 0;
  for (const window of windowsOf(input)) {
    const middleIn = (window.sillIn + window.headIn) / 2;
    const other = window === input.window ? input.opposite : input.window;
    const below = firstMet(input, other, 0, middleIn, input.reflectances.floorShare);
    const above = firstMet(input, other, middleIn, input.ceilingIn, input.reflectances.ceilingShare);
    const through = openingShare(window) * DIFFUSE_TRANSMITTANCE_SHARE * openingFt2(input, window);
    flux += (through * (splitFluxC(skylineDeg(window)) * below + SPLIT_FLUX_GROUND * above)) / 100;
  }
  return flux / (areaFt2 * (1 - meanShare));
}

/** The windows of a room: one or two. */
export function windowsOf(input: DaylightInput): WindowBand[] {
  return input.opposite ? [input.window, input.opposite] : [input.window];
}

/** Opening of a window within the room's own length of wall, with its frames, ft2. */
export function openingFt2(input: Pick<DaylightInput, "widthFt">, window: WindowBand): number {
  return (openingWidthFt(input, window) * (window.headIn - window.sillIn)) / 12;
}

/** Area of all surfaces of the room, glass included, ft2, and their mean reflectance. */
export function surfaces(input: DaylightInput): {areaFt2: number; meanShare: number} {
  const {depthFt, widthFt, reflectances: r} = input;
  const floorFt2 = depthFt * widthFt;
  const wallsFt2 = (2 * (depthFt + widthFt) * input.ceilingIn) / 12;
  const glassFt2 = windowsOf(input).reduce((sum, window) => sum + openingFt2(input, window), 0);
  const areaFt2 = 2 * floorFt2 + wallsFt2;
  const thrownBack = floorFt2 * (r.floorShare + r.ceilingShare) + (wallsFt2 - glassFt2) * r.wallShare + glassFt2 * GLASS_REFLECTANCE_SHARE;
  return {areaFt2, meanShare: thrownBack / areaFt2};
}

/** Mean reflectance of a level surface together with a strip of the three walls that a window faces. */
function firstMet(input: DaylightInput, other: WindowBand | undefined, fromIn: number, toIn: number, levelShare: number): number {
  const {reflectances: {wallShare}} = input;
  const depthIn = inches(input.depthFt);
  const widthIn = inches(input.widthFt);
  const glassHeightIn = other ? Math.max(0, Math.min(toIn, other.headIn) - Math.max(fromIn, other.sillIn)) : 0;
  const glassIn2 = other ? glassHeightIn * inches(openingWidthFt(input, other)) : 0;
  const levelIn2 = depthIn * widthIn;
  const stripIn2 = (2 * depthIn + widthIn) * (toIn - fromIn);
  return (levelIn2 * levelShare + (stripIn2 - glassIn2) * wallShare + glassIn2 * GLASS_REFLECTANCE_SHARE) / (levelIn2 + stripIn2);
}

const openingWidthFt = (input: Pick<DaylightInput, "widthFt">, window: WindowBand): number =>
  window.widthFt === "endless" ? input.widthFt : window.widthFt;

import {HORIZONTAL_ILLUMINANCE, radians} from "../../lib/daylight/sky.js";

/**
 * Light on an upright wall from the overcast sky above an endless skyline that runs along it, as a share of the light
 * on open level ground; 0.396 without a skyline.
 *
 * With the skyline's angle psi in the section across the wall, and the direction chi along it, the wall receives
 * (1 + 2 cos chi sin psi)/3 cos^2 chi cos psi dchi dpsi, which gives ((pi/2)(1 - sin psi) + (4/3) cos^2 psi)/3.
 *
 * @param skylineDeg - 0 to 90
 */
export function overcastOnWall(skylineDeg: number): number {
  const sine = Math.sin(radians(skylineDeg));
  return ((Math.PI / 2) * (1 - sine) + (4 / 3) * (1 - sine ** 2)) / 3 / HORIZONTAL_ILLUMINANCE.overcast;
}

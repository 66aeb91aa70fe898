import type {DaylightInput, WindowBand} from "../../lib/daylight/input.js";

/** A window from a 3 ft sill to a 10 ft head, 20 ft long, in a wall a foot thick. */
export const WINDOW: WindowBand = {
  sillIn: 36, headIn: 120, widthFt: 20, revealIn: 12, frameShare: 0.15, transmittanceShare: 0.75, maintenanceShare: 0.9,
};

/** A room 30 ft deep and 24 ft wide with that window. */
export const ROOM: DaylightInput = {
  depthFt: 30, widthFt: 24, ceilingIn: 126, reflectances: {floorShare: 0.2, wallShare: 0.5, ceilingShare: 0.7}, window: WINDOW,
};

/** Glass that is not there. */
export const BARE = {frameShare: 0, transmittanceShare: 0.95, maintenanceShare: 1} as const;

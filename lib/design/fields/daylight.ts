import {choice, group, number, since} from "../entries.js";

/** Windows, glass and surfaces. */
export const daylightFields = group("Daylight", {
  sides: since(3, "two", choice("windows", {"one": "on one side", "two": "on two opposite sides"}, "Long edges that have windows; ideally they face north and south.")),
  revealIn: since(3, 6, number("reveal", "in", 0, 36, 1, "From the wall's inner face out to the glass: the depth of the sill inside.")),
  frameShare: since(3, 0.15, number("share of frames", "", 0, 0.6, 0.05, "Share of the window band taken by frames and mullions.")),
  transmittanceShare: since(3, 0.75, number("light through the glass", "", 0.1, 0.95, 0.05, "Visible transmittance of the glass, seen straight on.")),
  obstructionDeg: since(3, 10, number("skyline outside", "deg", 0, 60, 1, "Angle above the horizon of the buildings or trees opposite, seen from the sill.")),
  floorShare: since(3, 0.2, number("reflectance of the floor", "", 0, 0.9, 0.05, "Share of light that the floor reflects.")),
  wallShare: since(3, 0.5, number("reflectance of the walls", "", 0, 0.9, 0.05, "Share of light that the walls reflect.")),
  ceilingShare: since(3, 0.7, number("reflectance of the ceiling", "", 0, 0.9, 0.05, "Share of light that the ceiling reflects.")),
});

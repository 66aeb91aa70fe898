import type {Ledge} from "../../lib/beams/ledge.js";
import {concrete} from "../../lib/materials/concrete.js";

/** A stem of 4.75 in on a 4 in long bearing, 5 in out on a ledge of 8 by 10 in, 5 ft from the next stem. */
export const LEDGE: Ledge = {
  concrete: concrete("normalweight", 5000), webWidthIn: 14, depthIn: 74, ledgeProjectionIn: 8, ledgeDepthIn: 10,
  coverIn: 1, barDiameterIn: 0.5, bearingWidthIn: 4.75, bearingLengthIn: 4, shearSpanIn: 5, spacingIn: 60,
};

import type {Design, Layer} from "../design/design.js";
import {feet} from "../units.js";
import {fallPlan, greatestMeanRiseIn} from "./fallPlan.js";

/** Thermal resistance of the air films, ft2 h F/Btu: still air below a ceiling in winter, wind above the roof (ASHRAE Handbook, from memory). */
export const AIR_FILMS_R = 0.61 + 0.17;

/** What sits on a roof's deck and hangs from it. */
export interface RoofLayers {
  /** The layers with their weights, the taper among them where the roof has one. */
  readonly carried: readonly Layer[];
  readonly psf: number;
  /** On the deck, at the drains, without the taper; and of the taper where it is thickest. */
  readonly buildUpIn: number;
  readonly taperIn: number;
  /** Thermal resistance of layers and air films, without the taper's, ft2 h F/Btu. */
  readonly rValue: number;
}

/**
 * The layers of a design's roof. A taper counts by its mean thickness over the bay where that is greatest, on every bay:
 * one deck is chosen for all.
 */
export function roofLayers({roof, bay}: Pick<Design, "roof" | "bay">): RoofLayers {
  const plan = fallPlan({roof, bay});
  const tapers = roof.drainage === "taper" && roof.slopeInPerFt > 0;
  const taperPsf = tapers ? feet(greatestMeanRiseIn(plan, bay)) * roof.taperPcf : 0;
  const carried = [...roof.layers.map(({name, loadPsf}) => ({name, loadPsf})), ...(tapers ? [{name: "taper toward the drains", loadPsf: taperPsf}] : [])];
  return {
    carried,
    psf: carried.reduce((sum, {loadPsf}) => sum + loadPsf, 0),
    buildUpIn: roof.layers.reduce((sum, {thicknessIn}) => sum + thicknessIn, 0),
    taperIn: tapers ? plan.riseIn : 0,
    rValue: roof.layers.reduce((sum, {rValue}) => sum + rValue, AIR_FILMS_R),
  };
}

import {group, number, since} from "../entries.js";

/** The soil, and the footing on it. */
export const groundFields = group("Ground", {
  allowablePsf: since(3, 4000, number("allowable soil pressure", "psf", 1000, 20000, 250, "What the soil may carry under service load, net of the footing's own weight; the soil report gives it.")),
  footingStrengthPsi: since(3, 3000, number("footing concrete strength", "psi", 2500, 6000, 500, "Specified compressive strength of the footing.")),
});

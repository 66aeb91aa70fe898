import {hasSnow} from "../design/used.js";
import type {Evaluation} from "../evaluate.js";
import {deepestDrift, deepestSnowPsf} from "../snow/deepest.js";
import {roofLoadOn} from "../snow/roofLoads.js";
import {sentence, shown} from "../sentence.js";
import {decimals} from "../units.js";
import type {Fact} from "./parts.js";

/** What lies on the roof, for the record; nothing where the ground snow is not given. */
export function roofLoadFacts({design, roofLoads}: Evaluation): Fact[] {
  if (!hasSnow(design)) return [];
  const {snow, rainPsf} = roofLoads;
  const deepest = deepestDrift(roofLoads)?.drift;
  const {loads, governingService} = roofLoadOn(roofLoads, "deck member");
  const drift = deepest ? `; a drift against the ${deepest.kind === "parapet" ? "parapet" : "higher part"} adds up to ${decimals(deepest.peakPsf)} psf over ${decimals(deepest.widthFt, 1)} ft` : "";
  return [
    {label: "Snow on the roof", value: sentence`${decimals(snow.site.groundPsf)} psf on the ground, ${decimals(snow.flatPsf, 1)} psf on the roof (Ce ${snow.site.exposureFactor}, Ct ${snow.site.thermalFactor}, Is ${snow.site.importance})${drift}; ${shown("deepest snow, psf", `${decimals(deepestSnowPsf(roofLoads), 1)} psf`)} where it is deepest`},
    {label: "Roof\u2019s deck member", value: `${loads.L > 0 ? `live load of its use ${decimals(loads.L)} psf` : `roof live load ${decimals(loads.Lr, 1)} psf`}, snow as a uniform load ${decimals(loads.S, 1)} psf, rain ${decimals(rainPsf, 1)} psf; ${governingService.combination.name} governs`},
  ];
}

import {balancedSnow, type BalancedSnow} from "../snow/balanced.js";
import {drift, figureHeight} from "../snow/drift.js";
import {rainLoadPsf} from "../snow/rain.js";
import {roofLive} from "../snow/roofLive.js";

/** Balanced snow of a key "pg/Ce/Ct/Is", on a level roof. */
function snowOf(key: string): BalancedSnow {
  const [groundPsf = NaN, exposureFactor = NaN, thermalFactor = NaN, importance = NaN] = key.split("/").map(Number);
  return balancedSnow({groundPsf, exposureFactor, thermalFactor, importance}, 0, 100);
}

/** A leeward drift of a key "pg/lu/h", with all factors 1, on a roof of much length. */
function stepDrift(key: string) {
  const [groundPsf = NaN, fetchFt = NaN, wallFt = NaN] = key.split("/").map(Number);
  return drift(snowOf(`${groundPsf}/1/1/1`), {kind: "leeward", fetchFt, wallFt, roofFt: 1000});
}

/** Our values of roof loads by kind of published row. */
export const ROOF_KINDS: Readonly<Record<string, (key: string) => number>> = {
  "roof live load": (key) => {
    const [areaFt2 = NaN, rise = NaN] = key.split("/").map(Number);
    return roofLive(areaFt2, rise).psf;
  },
  "flat-roof snow": (key) => snowOf(key).flatPsf,
  "snow density": (key) => snowOf(`${key}/1/1/1`).densityPcf,
  "snow height": (key) => snowOf(key).depthFt,
  "least snow": (key) => snowOf(key).minimumPsf,
  "rain on snow": (key) => snowOf(`${key}/1/1/1`).rainOnSnowPsf,
  "drift figure": (key) => {
    const [groundPsf = NaN, fetchFt = NaN] = key.split("/").map(Number);
    return figureHeight(snowOf(`${groundPsf}/1/1/1`), fetchFt).heightFt;
  },
  "drift height": (key) => stepDrift(key).heightFt,
  "drift width": (key) => stepDrift(key).widthFt,
  "drift load": (key) => stepDrift(key).peakPsf,
  "rain": (key) => rainLoadPsf(Number(key), 0),
};

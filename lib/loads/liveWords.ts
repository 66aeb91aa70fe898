import {decimals} from "../units.js";
import {isReduced, unreducedPsf, type ElementRoomLoad} from "./floorLoads.js";

/** What a live load is called where it stands: a reduced one says so. */
export function liveName(load: ElementRoomLoad): "live load" | "reduced live load" {
  return isReduced(load) ? "reduced live load" : "live load";
}

/** What a reduced live load was reduced from, to follow its number: ", reduced from 65 psf"; nothing where none is. */
export function reducedFrom(load: ElementRoomLoad): string {
  return isReduced(load) ? `, reduced from ${decimals(unreducedPsf(load))} psf` : "";
}

import type {Design} from "../../lib/design/design.js";
import {withValues} from "../../lib/design/edit.js";
import {evaluate} from "../../lib/evaluate.js";
import type {ParkingResult} from "../../lib/parking/result.js";
import {parking} from "../../lib/parking/parking.js";
import {catalog, seed} from "../support/designs.js";

/** The starter with two modules of 60 ft, with changes. */
export const structure = (changes: Readonly<Record<string, unknown>> = {}): Design => withValues(seed("parking-structure"), changes);

/** What parking comes to in it, by the whole pipeline. */
export function parked(changes: Readonly<Record<string, unknown>> = {}): ParkingResult {
  const found = evaluate(structure(changes), catalog).parking;
  if (!found) throw new Error("no cars park");
  return found;
}

/** Parking alone, without working out the rest: under the story of the starter, beside its girder. */
export function parkingOf(design: Design): ParkingResult {
  const {story, girder} = evaluate(structure(), catalog);
  return parking(design, story, {girder, ductsIn: undefined, boxes: [], boxWords: "box", pipesPastIn: undefined}) as ParkingResult;
}

export const failed = ({checks}: ParkingResult): string[] => checks.filter(({verdict}) => verdict === "fails").map(({id}) => id);

import {atLeast, atMost, outOfRange, type Check} from "../checks.js";
import type {Design} from "../design/design.js";
import {hasRoof, hasSnow} from "../design/used.js";
import type {BalancedSnow} from "./balanced.js";
import {GREATEST_EXPOSURE_FACTOR} from "./factors.js";
import type {WallsAbove} from "./roofDrifts.js";

/** Slope from which a roof with a ridge, and one with a valley, has unbalanced snow besides, in/ft (ASCE 7-16 7.6.1, 7.6.3). */
export const UNBALANCED_RISE = {edges: 0.5, inside: 0.375} as const;
/** What is higher shelters a roof within this many times its height (ASCE 7-16 Table 7.3-1, note b). */
export const SHELTER_REACH = 10;

/** What the checks look at besides the fields of the design. */
interface Found {
  readonly snow: BalancedSnow;
  readonly exposureInTable: boolean;
  readonly riseInPerFt: number;
  readonly wallsFt: WallsAbove;
  /** Greatest load of any column's part of the roof that comes and goes, psf; worked out where it is asked for. */
  readonly columnsPsf: () => number;
}

/** Checks of what the loads of a roof were computed from; for most designs there are none. */
export function snowChecks(design: Design, found: Found): Check[] {
  return [...exposureChecks(design, found), ...slopeCheck(design, found), ...numberCheck(design, found)];
}

function exposureChecks(design: Design, {exposureInTable, snow, wallsFt}: Found): Check[] {
  const {snow: field} = design;
  if (!hasSnow(design)) return [];
  if (!exposureInTable) {
    return [outOfRange({
      id: "snow exposure", label: "Exposure factor of the roof", unit: "", clause: "ASCE 7-16 Table 7.3-1",
      message: `The table has no sheltered roof in such terrain; ${GREATEST_EXPOSURE_FACTOR} is counted, the greatest that it has. Choose a partially exposed roof, or another terrain.`,
    }, GREATEST_EXPOSURE_FACTOR, GREATEST_EXPOSURE_FACTOR)];
  }
  if (field.exposure !== "fully") return [];
  const parapet = Math.max(...Object.values(wallsFt));
  const shelter = field.higherApartFt < SHELTER_REACH * field.higherFt ? field.higherFt : 0;
  return [atMost({
    id: "snow shelter", label: "What shelters a fully exposed roof", unit: "ft", clause: "ASCE 7-16 Table 7.3-1, notes a and b", meetingIsEnough: true,
    holds: "Nothing beside the roof rises above its balanced snow, so that the wind sweeps it freely.",
    fails: "What rises above the snow keeps the wind from it, so that the roof is not fully exposed: choose a partially exposed roof.",
  }, Math.max(parapet, shelter), snow.depthFt)];
}

function slopeCheck(design: Design, {riseInPerFt}: Found): Check[] {
  const limit = UNBALANCED_RISE[design.roof.drainsAt];
  if (!hasSnow(design) || riseInPerFt <= limit) return [];
  return [outOfRange({
    id: "unbalanced snow", label: "Slope of the roof without unbalanced snow", unit: "in/ft", clause: design.roof.drainsAt === "edges" ? "ASCE 7-16 7.6.1" : "ASCE 7-16 7.6.3",
    message: "On a roof this steep the wind also carries snow over the ridge or into the valley, which is not counted here. Choose a gentler fall, or have the engineer count unbalanced snow.",
  }, riseInPerFt, limit)];
}

/** Columns that take one value for the roof: it must be at least what the code requires, once the ground snow is known. */
function numberCheck(design: Design, {columnsPsf}: Found): Check[] {
  const {column, roof} = design;
  if (!hasSnow(design) || roof.given !== "loads" || !hasRoof(design)) return [];
  return [atLeast({
    id: "roof live load entered", label: "Live load of the roof that the columns count", unit: "psf", clause: "ASCE 7-16 4.8, 7.3, 7.7, 8.3", meetingIsEnough: true,
    holds: "It is at least what roof live load, snow and rain bring to any column.",
    fails: "Snow, rain or the use of the roof bring more to a column than the number that it counts: enter at least that, or give the roof a deck of its own.",
  }, column.roofLivePsf, columnsPsf())];
}

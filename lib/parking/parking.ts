import type {Design} from "../design/design.js";
import {hasParking} from "../design/used.js";
import {IN2_PER_FT2, IN_PER_FT} from "../units.js";
import type {StoryStack} from "../story/stack.js";
import {accessibleNeeded, accessibleUnits, stallsOfUnits, vansNeeded} from "./accessible.js";
import {coveredCars, heightsOf, type Hanging} from "./heights.js";
import {filledRow, inMiddle, levelPlan, stallsOfRow, stallsOnPlan, type FilledRow, type LevelPlan, type Stall} from "./level.js";
import type {ModuleRow} from "./modules.js";
import {parkingChecks} from "./parkingChecks.js";
import {rampOf} from "./ramp.js";
import type {Accessible, ParkingResult} from "./result.js";
import {stallsInBay} from "./suit.js";

/**
 * How cars park on the floors of a design, or beneath them; undefined where none do.
 *
 * @param story - the story above the cars: all are alike
 * @param hanging - what hangs below the deck besides the edge beam
 */
export function parking(design: Design, story: StoryStack, hanging: Hanging): ParkingResult | undefined {
  if (!hasParking(design)) return undefined;
  const {place, stallWidthIn} = design.parking;
  const level = levelPlan(design);
  const levels = place === "below" ? 1 : design.bay.floors + (place === "both" ? 1 : 0);
  const perLevel = level.modules.flatMap(({rows}) => rows).reduce((sum, row) => sum + stallsOfRow(level, row, stallWidthIn), 0);
  const found = withAccessible(design, level, levels, perLevel);
  const stalls = (levels - 1) * perLevel + found.lowest;
  const ramp = design.parking.ramp === "none" ? undefined : {...rampOf(design), roomIn: rampRoomIn(design, level)};
  const heights = coveredCars(design) ? heightsOf(design, story, level, hanging) : undefined;
  const result = {
    level, levels, perLevel, stalls, heights, ramp, ...found,
    bay: stallsInBay(design, design.bay.beamSpanFt, design.bay.spanFt),
    ft2PerStall: stalls > 0 ? (levels * levelFt2(level)) / stalls : undefined,
  };
  return {...result, checks: parkingChecks(design, result)};
}

/**
 * The lowest level with as many accessible stalls as all stalls of the building require. They take more room than others, so
 * that fewer are left, which may require fewer again: the smallest number that satisfies itself is taken.
 */
function withAccessible(design: Design, level: LevelPlan, levels: number, perLevel: number): Pick<ParkingResult, "lowest" | "accessible"> {
  const tried = (needed: number) => {
    const vans = vansNeeded(needed);
    const outside = design.parking.vans === "outside" ? vans : 0;
    const filled = accessibleRows(design, level, {needed, vans, inside: needed - outside});
    const placed = filled.reduce((sum, {units}) => sum + stallsOfUnits(units), 0);
    const lowest = filled.reduce((sum, {row, units, placed: groups}) => sum + stallsOfUnits(units) + groups.length - units.length - stallsOfRow(level, row, design.parking.stallWidthIn), perLevel);
    const stalls = (levels - 1) * perLevel + lowest;
    return {lowest, enough: accessibleNeeded(stalls + outside) <= needed, accessible: {needed, vans, inside: needed - outside, placed}};
  };
  let last = tried(accessibleNeeded(levels * perLevel));
  // Stryker disable next-line EqualityOperator: none are never enough where there are stalls
  for (let fewer = last.accessible.needed - 1; fewer > 0; fewer--) {
    const less = tried(fewer);
    if (!less.enough) break;
    last = less;
  }
  return {lowest: last.lowest, accessible: last.accessible};
}

/** The rows of the lowest level that hold accessible stalls, as many of them as it takes. */
function accessibleRows(design: Design, level: LevelPlan, {needed, vans, inside}: Pick<Accessible, "needed" | "vans" | "inside">): FilledRow[] {
  let left = accessibleUnits(needed - vans, vans - (needed - inside));
  const filled: FilledRow[] = [];
  for (const row of rowsForAccessible(design, level)) {
    // Stryker disable next-line ConditionalExpression: without units left a row is filled with usual stalls, as it would be anyway
    if (left.length === 0) break;
    const one = filledRow(level, row, design.parking.stallWidthIn, left);
    left = left.slice(one.units.length);
    filled.push(one);
  }
  return filled;
}

/** The stalls of the lowest level on its plan, accessible ones included: what the drawing shows. */
export function lowestLevel(design: Design, {level, accessible}: Pick<ParkingResult, "level" | "accessible">): Stall[] {
  const special = accessibleRows(design, level, accessible);
  const rows = level.modules.flatMap((module) => module.rows).map((row) =>
    special.find((one) => one.row === row) ?? filledRow(level, row, design.parking.stallWidthIn, []));
  return stallsOnPlan(design, level, inMiddle(level, rows));
}

/** Rows that may take accessible stalls, those between two bays first, as no ledge hangs over their heads; none of a module that slopes. */
function rowsForAccessible({parking: {ramp, rampRuns}}: Design, {modules}: LevelPlan): ModuleRow[] {
  const rows = modules.slice(ramp === "parked" ? rampRuns : 0).flatMap((module) => module.rows);
  return [...rows.filter(({head}) => head === "line"), ...rows.filter(({head}) => head === "wall")];
}

/** Length that one run of a ramp may have: the building's where it stands beside it, else what the rows have, in. */
function rampRoomIn({parking: {ramp, endFt}}: Design, {site, plan}: LevelPlan): number {
  return ramp === "beside" ? site.linesX.at(-1) as number : Math.max(0, plan.alongTo - plan.alongFrom - 2 * endFt * IN_PER_FT);
}

/** Floor of one level, stalls, aisles and all, ft2: the bays' own. */
function levelFt2({site: {linesX, linesY}}: LevelPlan): number {
  return ((linesX.at(-1) as number) * (linesY.at(-1) as number)) / IN2_PER_FT2;
}

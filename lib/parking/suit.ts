import type {Design} from "../design/design.js";
import {IN_PER_FT} from "../units.js";
import {levelPlan, type LevelPlan} from "./level.js";
import type {ParkingModule} from "./modules.js";
import {blockedPlaces, pitchIn, type Blocked} from "./row.js";
import {stallGeometry} from "./stall.js";

/** Stalls of one row between two columns. */
export interface BayOfStalls {
  readonly stalls: number;
  /** Rows of an inside module. */
  readonly rows: number;
  /** Row between the columns that stalls may have, less door clearance, in; what they take of it, and what is left. */
  readonly clearIn: number;
  readonly takenIn: number;
  readonly leftIn: number;
}

/** A grid and what it holds. */
export interface GridThatSuits extends BayOfStalls {
  /** Spacing of the columns along the rows, ft. */
  readonly bayFt: number;
  /** Floor area of one inside bay per stall, rows, aisle and columns included, ft2. */
  readonly ft2PerStall: number;
}

/**
 * Stalls of a row between two columns of a grid: the row from one column's place of blocking to the next, in whole stalls.
 * Undefined where no column stands in a row, as where heads are set back past it, where the module has no row, and where
 * columns leave no room for a stall.
 */
export function stallsInBay(design: Design, beamSpanFt: number, spanFt: number): BayOfStalls | undefined {
  // Three modules of such a grid have an inside one, whatever the building has.
  const {bay, parking} = design;
  const bays = 3 * parking.baysPerModule;
  const grid: Design = {
    ...design, bay: {...bay, beamSpanFt, spanFt, baysAlong: bays, baysAcross: bays},
    parking: {...parking, ramp: "none", endFt: 0},
  };
  return insideBay(levelPlan(grid), grid);
}

function insideBay({modules}: LevelPlan, {parking}: Design): BayOfStalls | undefined {
  const {rows} = modules[1] as ParkingModule;
  const [row] = rows;
  if (!row) return undefined;
  const geometry = stallGeometry(parking);
  const group = [parking.stallWidthIn];
  // The first and the last are the end walls with their columns.
  const columns = blockedPlaces(geometry, parking, row, group);
  if (columns.length < 4) return undefined;
  const middle = Math.floor(columns.length / 2);
  const [[, from], [to]] = columns.slice(middle - 1) as [Blocked[number], Blocked[number]];
  const pitch = pitchIn(geometry, group);
  const clearIn = to - from + pitch;
  const stalls = Math.floor(clearIn / pitch + 1e-9);
  return {stalls, rows: rows.length, clearIn, takenIn: stalls * pitch, leftIn: clearIn - stalls * pitch};
}

/** Spacings of columns that are tried, ft. */
const [LEAST_BAY_FT, MOST_BAY_FT] = [16, 60];

/** The smallest spacing of columns along the rows, in whole feet, for each number of stalls between two of them. */
export function baysThatSuit(design: Design): GridThatSuits[] {
  const along = design.parking.rows === "along";
  const found: GridThatSuits[] = [];
  for (let bayFt = LEAST_BAY_FT; bayFt <= MOST_BAY_FT; bayFt++) {
    const bay = along ? stallsInBay(design, bayFt, design.bay.spanFt) : stallsInBay(design, design.bay.beamSpanFt, bayFt);
    if (!bay || bay.stalls <= (found.at(-1)?.stalls ?? 0)) continue;
    const acrossFt = design.parking.baysPerModule * (along ? design.bay.spanFt : design.bay.beamSpanFt);
    found.push({...bay, bayFt, ft2PerStall: (bayFt * acrossFt) / (bay.rows * bay.stalls)});
  }
  return found;
}

/** Smallest bay across the rows for two rows and an aisle, in whole feet, of an inside module and of one along a wall. */
export function spansThatSuit(design: Design): {readonly insideFt: number; readonly edgeFt: number; readonly neededIn: number} {
  const {parking} = design;
  const level = levelPlan(design);
  const neededIn = 2 * (parking.setbackIn + level.geometry.depthIn) + parking.aisleIn;
  const faceIn = parking.rows === "along" ? -level.site.faces.y0 : -level.site.faces.x0;
  const whole = (lengthIn: number) => Math.ceil(lengthIn / parking.baysPerModule / IN_PER_FT - 1e-9);
  return {neededIn, insideFt: whole(neededIn), edgeFt: whole(neededIn - faceIn)};
}

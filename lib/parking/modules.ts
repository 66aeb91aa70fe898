import type {Design} from "../design/design.js";
import {IN_PER_FT} from "../units.js";
import {rampLengthIn} from "./ramp.js";
import type {Obstacle, Row} from "./row.js";
import type {PlanBox, Site} from "./site.js";
import type {StallGeometry} from "./stall.js";

/** What a row's heads stand at: a wall, or the line between two bays. */
export type Head = "wall" | "line";

/** A row of stalls in a module. */
export interface ModuleRow extends Row {
  readonly module: number;
  readonly head: Head;
  /** Across the rows, in: the line of heads, and the direction from there into the aisle. */
  readonly headIn: number;
  readonly out: 1 | -1;
}

/** An aisle with its rows. */
export interface ParkingModule {
  /** Across the rows, in: from wall or line to wall or line. */
  readonly fromIn: number;
  readonly toIn: number;
  readonly clearIn: number;
  /** What two rows and the aisle take, in. */
  readonly neededIn: number;
  /** Two where they fit with the aisle, one where that alone does. */
  readonly rows: readonly ModuleRow[];
  /** Aisle between the rows, or between the one row and the other side; across the rows, in. */
  readonly aisle: {readonly fromIn: number; readonly toIn: number};
  /** The widest part of the aisle that no column stands in, in. */
  readonly clearAisleIn: number;
}

/** A level's plan turned so that rows run along the first coordinate. */
export interface Turned {
  /** From wall to wall along the rows, and how much at each end is kept free, in. */
  readonly alongFrom: number;
  readonly alongTo: number;
  readonly lines: readonly number[];
  readonly wallFrom: number;
  readonly wallTo: number;
  /** Columns: x along the rows, y across. */
  readonly columns: readonly PlanBox[];
}

export function turned({faces, linesX, linesY, columns}: Site, rows: Design["parking"]["rows"]): Turned {
  return rows === "along"
    ? {alongFrom: faces.x0, alongTo: faces.x1, lines: linesY, wallFrom: faces.y0, wallTo: faces.y1, columns}
    : {alongFrom: faces.y0, alongTo: faces.y1, lines: linesX, wallFrom: faces.x0, wallTo: faces.x1, columns: columns.map(turnedBox)};
}

/** A box with its coordinates exchanged; turned twice it is itself. */
function turnedBox({x0, y0, x1, y1}: PlanBox): PlanBox {
  return {x0: y0, y0: x0, x1: y1, y1: x1};
}

/** The modules of a level, each over as many bays as the design says; bays that are left over have none. */
export function modulesOf(design: Design, plan: Turned, geometry: StallGeometry): ParkingModule[] {
  const {baysPerModule} = design.parking;
  const bays = plan.lines.length - 1;
  return Array.from({length: Math.floor(bays / baysPerModule)}, (_, module) => {
    const [first, last] = [module * baysPerModule, (module + 1) * baysPerModule];
    const from = {at: first === 0 ? plan.wallFrom : plan.lines[first] as number, head: first === 0 ? "wall" : "line"} as const;
    const to = {at: last === bays ? plan.wallTo : plan.lines[last] as number, head: last === bays ? "wall" : "line"} as const;
    return moduleOf(design, plan, geometry, module, from, to);
  });
}

interface Side {
  readonly at: number;
  readonly head: Head;
}

function moduleOf(design: Design, plan: Turned, geometry: StallGeometry, module: number, from: Side, to: Side): ParkingModule {
  const {setbackIn, aisleIn} = design.parking;
  const rowIn = setbackIn + geometry.depthIn;
  const clearIn = to.at - from.at;
  // Stryker disable next-line EqualityOperator: to the last digit
  const fits = (rows: number) => clearIn + 1e-6 >= rows * rowIn + aisleIn;
  const count = fits(2) ? 2 : fits(1) ? 1 : 0;
  const rows = [
    ...(count > 0 ? [rowOf(design, plan, geometry, module, from, 1)] : []),
    ...(count > 1 ? [rowOf(design, plan, geometry, module, to, -1)] : []),
  ];
  const aisle = {fromIn: from.at + (count > 0 ? rowIn : 0), toIn: to.at - (count > 1 ? rowIn : 0)};
  return {fromIn: from.at, toIn: to.at, clearIn, neededIn: 2 * rowIn + aisleIn, rows, aisle, clearAisleIn: clearWidth(aisle, plan)};
}

/** Farther than any part of a row reaches, in: the outside of the walls at its ends is no place for a car. */
const FAR_IN = 1e5;

function rowOf(design: Design, plan: Turned, geometry: StallGeometry, module: number, {at, head}: Side, out: 1 | -1): ModuleRow {
  const {setbackIn, endFt, ramp, rampRuns} = design.parking;
  const headIn = at + out * setbackIn;
  const freeIn = endFt * IN_PER_FT;
  const startIn = plan.alongFrom + freeIn;
  const endIn = plan.alongTo - freeIn;
  const obstacles: Obstacle[] = [];
  for (const {x0, y0, x1, y1} of plan.columns) {
    const [fromOutIn, toOutIn] = out === 1 ? [y0 - headIn, y1 - headIn] : [headIn - y1, headIn - y0];
    // Stryker disable next-line all: what stands outside a row's depth blocks nothing there; it is left out so that fewer are looked through
    if (toOutIn > 0 && fromOutIn < geometry.depthIn) obstacles.push({fromIn: x0, toIn: x1, fromOutIn, toOutIn, doors: true});
  }
  const everywhere = {fromOutIn: -FAR_IN, toOutIn: FAR_IN};
  // Doors need air beside the walls too, unless as much is kept free there.
  obstacles.push({...everywhere, fromIn: plan.alongFrom - FAR_IN, toIn: plan.alongFrom, doors: true}, {...everywhere, fromIn: plan.alongTo, toIn: plan.alongTo + FAR_IN, doors: true});
  const runsHere = out === 1 ? 1 : rampRuns - 1;
  if (ramp === "within" && module === 0 && runsHere > 0) obstacles.push({...everywhere, fromIn: startIn, toIn: startIn + rampLengthIn(design), doors: false});
  return {module, head, headIn, out, startIn, endIn, obstacles};
}

/** The widest strip of an aisle beside the columns that stand in it, in. */
function clearWidth({fromIn, toIn}: ParkingModule["aisle"], {columns}: Turned): number {
  let [widest, free] = [0, fromIn];
  // On each line of columns they come in rising order.
  for (const {y0, y1} of columns) {
    widest = Math.max(widest, Math.min(y0, toIn) - free);
    free = Math.max(free, y1);
  }
  return Math.max(widest, toIn - free);
}

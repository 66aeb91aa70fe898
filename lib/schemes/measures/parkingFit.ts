import type {Design} from "../../design/design.js";
import {levelPlan, stallsOfRow} from "../../parking/level.js";

/** What a level of parking on a design's bays would hold. */
export interface ParkingFit {
  /** Modules with a row of stalls on both sides of their aisle. */
  readonly modules: number;
  readonly stalls: number;
}

/** Most grids that are kept. */
const MOST_KNOWN = 2000;
/** By the parking fields, which schemes of one brief share, and the numbers of the grid. */
const KNOWN = new WeakMap<Design["parking"], Map<string, ParkingFit>>();

/**
 * Modules and stalls of one level on the design's columns, with its own parking fields (common practice where nobody has
 * changed them): rows, angle, stall, aisle and turning room, whether cars park in this building or not. A ramp is not
 * counted, nor what accessible stalls take more of a row; whether the level is high enough is another question.
 */
export function parkingFit(design: Design): ParkingFit {
  const {bay, column, edgeBeam, parking} = design;
  let known = KNOWN.get(parking);
  if (!known) KNOWN.set(parking, known = new Map());
  const name = `${bay.spanFt} ${bay.beamSpanFt} ${bay.baysAlong} ${bay.baysAcross} ${column.sideIn} ${edgeBeam.kind} ${edgeBeam.webWidthIn} ${edgeBeam.ledgeProjectionIn} ${edgeBeam.jointGapIn}`;
  let fit = known.get(name);
  if (!fit) {
    if (known.size >= MOST_KNOWN) known.clear();
    known.set(name, fit = found(design));
  }
  return fit;
}

function found(design: Design): ParkingFit {
  const {parking} = design;
  const level = levelPlan(parking.ramp === "none" ? design : {...design, parking: {...parking, ramp: "none"}});
  let [modules, stalls] = [0, 0];
  for (const {rows} of level.modules) {
    if (rows.length === 2) modules++;
    for (const row of rows) stalls += stallsOfRow(level, row, parking.stallWidthIn);
  }
  return {modules, stalls};
}

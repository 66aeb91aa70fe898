import type {Check} from "../checks.js";
import type {Heights} from "./heights.js";
import type {LevelPlan} from "./level.js";
import type {Ramp} from "./ramp.js";
import type {BayOfStalls} from "./suit.js";

/** The results of parking. */
export interface ParkingResult {
  readonly level: LevelPlan;
  /** Levels of cars, all laid out alike but for the accessible stalls, which stand on the lowest. */
  readonly levels: number;
  /** Stalls of a level without accessible ones, and of the lowest with them. */
  readonly perLevel: number;
  readonly lowest: number;
  readonly stalls: number;
  readonly accessible: Accessible;
  /** Stalls of one row between two columns; undefined where no column stands in a row, or there is none. */
  readonly bay: BayOfStalls | undefined;
  /** Floor area of all levels per stall, ft2; undefined where there is no stall. */
  readonly ft2PerStall: number | undefined;
  /** Undefined where nothing of this design is above the cars. */
  readonly heights: Heights | undefined;
  /** Undefined where there is none. */
  readonly ramp: ParkingRamp | undefined;
  readonly checks: readonly Check[];
}

/** A ramp and the length that it has, in. */
export interface ParkingRamp extends Ramp {
  readonly roomIn: number;
}

/** Accessible stalls, of which some are for vans. */
export interface Accessible {
  readonly needed: number;
  readonly vans: number;
  /** Of those required, the ones in this building: without vans that park outside. */
  readonly inside: number;
  readonly placed: number;
}

import type {Check} from "../checks.js";
import type {Friction} from "./friction.js";
import type {NoiseClass} from "./noise.js";
import type {AirPlan} from "./plan.js";
import type {ServiceDucts} from "./services.js";
import type {SizedDuct} from "./sizing.js";
import type {WayBack} from "./wayBack.js";

/** A duct as it is drawn: its airflow, velocity, noise and friction. */
export interface DrawnDuct {
  readonly flowCfm: number;
  /** Inside. */
  readonly widthIn: number;
  readonly depthIn: number;
  readonly velocityFpm: number;
  readonly friction: Friction;
  readonly noise: NoiseClass;
}

/** Supply and return of one main. */
export interface AirResult {
  readonly plan: AirPlan;
  readonly ducts: ServiceDucts;
  /** Friction rate that sizes follow, in of water in 100 ft. */
  readonly rateIn: number;
  /** The main where it has the most air, and the feeder with the most. */
  readonly main: DrawnDuct;
  readonly feeder: DrawnDuct;
  /** The return duct beside the main, and one of the return feeders; undefined where there is none. */
  readonly back: DrawnDuct | undefined;
  readonly backFeeder: SizedDuct | undefined;
  readonly wayBack: WayBack | undefined;
  /** Shallowest plenum that holds the main where it runs, and what the ceiling loses or gains by it, in. */
  readonly leastPlenumIn: number;
  readonly checks: readonly Check[];
}

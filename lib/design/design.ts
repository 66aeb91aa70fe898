import type {ConcreteKind} from "../materials/concrete.js";
import type {TensionClass} from "../member/allowables.js";
import type {Aggregate} from "../member/fire.js";
import type {SagLimit} from "../member/sagLimit.js";
import type {WalkingUse} from "../member/vibration.js";

/** Marks a design file; a file without it is not one. */
export const DESIGN_FORMAT = "plank-and-tee-design";
/** Version of the design file that this library writes. */
export const DESIGN_VERSION = 2;

/**
 * A design: all that a reader decides, and nothing that is computed. Ranges and meanings of the fields stand in
 * `fields.ts`. Values are immutable; {@link withValue} makes a changed copy.
 */
export interface Design {
  readonly format: typeof DESIGN_FORMAT;
  readonly version: typeof DESIGN_VERSION;
  readonly name: string;
  readonly setting: string;
  readonly brief: string;
  readonly bay: {
    readonly spanFt: number;
    readonly beamSpanFt: number;
    readonly baysAlong: number;
    readonly baysAcross: number;
    readonly floors: number;
  };
  readonly loads: {
    readonly rooms: readonly Room[];
    readonly partitions: boolean;
    readonly layers: readonly Layer[];
  };
  readonly deck: {
    readonly member: string;
    /** Changed dimensions of the member's cross-section by name, in inches. */
    readonly dimensions?: Readonly<Record<string, number>>;
    readonly pattern: string;
    readonly strandHeightEndIn?: number;
    readonly strandHeightCentreIn?: number;
    readonly concrete: ConcreteKind;
    readonly aggregate: Aggregate;
    readonly strengthPsi: number;
    readonly releaseStrengthPsi: number;
    readonly toppingIn: number;
    readonly toppingStrengthPsi: number;
  };
  readonly criteria: {
    readonly tensionClass: TensionClass;
    readonly sagLimit: SagLimit;
    readonly keepCamber: boolean;
    readonly walking: WalkingUse | "none";
    readonly fireHours: "0" | "1" | "1.5" | "2" | "3" | "4";
    readonly fireRestrained: boolean;
    readonly sustainedLiveShare: number;
    readonly humidityPercent: number;
  };
  readonly preferences: Preferences;
  readonly consider: Consider;
  readonly edgeBeam: {
    readonly webWidthIn: number;
    readonly ledgeProjectionIn: number;
    readonly ledgeDepthIn: number;
    readonly upstandIn: number;
    readonly jointGapIn: number;
    readonly claddingPlf: number;
    readonly strengthPsi: number;
    readonly barSize: string;
    readonly coverIn: number;
  };
  readonly storey: {
    readonly floorToFloorFt: number;
    readonly finishIn: number;
    readonly ceiling: "flush" | "below" | "none";
    readonly ceilingDropIn: number;
  };
  readonly reasons: {
    readonly loads: string;
    readonly reduction: string;
    readonly deck: string;
    readonly topping: string;
    readonly edgeBeam: string;
    readonly storey: string;
  };
}

/** A room on the plan and the row of the live load table that it falls under. */
export interface Room {
  readonly name: string;
  readonly occupancy: string;
}

/** A layer of superimposed dead load. */
export interface Layer {
  readonly name: string;
  readonly loadPsf: number;
}

/** Weights of the trade's preferences in the deck search, 0 (does not matter) to 10. */
export interface Preferences {
  readonly shallow: number;
  readonly fewStrands: number;
  readonly straight: number;
  readonly light: number;
  readonly wide: number;
}

/** Which kinds of member the deck search looks at. */
export interface Consider {
  readonly fieldToppedTees: boolean;
  readonly pretoppedTees: boolean;
  readonly planks: boolean;
}

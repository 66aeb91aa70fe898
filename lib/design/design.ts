import type {ConcreteKind} from "../materials/concrete.js";
import type {TensionClass} from "../member/allowables.js";
import type {Aggregate} from "../member/fire.js";
import type {SagLimit} from "../member/sagLimit.js";
import type {WalkingUse} from "../member/vibration.js";

/** Marks a design file; a file without it is not one. */
export const DESIGN_FORMAT = "plank-and-tee-design";
/** Version of the design file that this library writes. */
export const DESIGN_VERSION = 5;

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
    readonly strandHeightCenterIn?: number;
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
    readonly kind: "ledge" | "pockets" | "below";
    readonly steel: "bars" | "strands";
    /** Number of 1/2 in strands, where the beam has strands. */
    readonly strands: number;
    readonly padWidthIn: number;
    readonly padLengthIn: number;
    readonly padThicknessIn: number;
  };
  /** The beam between two bays. */
  readonly girder: {
    readonly kind: "inverted tee" | "rectangle";
    readonly webWidthIn: number;
    readonly ledgeProjectionIn: number;
    readonly ledgeDepthIn: number;
    /** Depth of a rectangular girder, which lies wholly below the deck, in. */
    readonly depthIn: number;
    readonly strands: number;
    readonly strengthPsi: number;
    readonly releaseStrengthPsi: number;
  };
  readonly column: {
    readonly strengthPsi: number;
    readonly coverIn: number;
    readonly steelPercent: number;
    /** Side of the columns that the beams' ends are cut for, in. */
    readonly sideIn: number;
    /** From the face of such a column to the beam's reaction on its corbel, in. */
    readonly seatIn: number;
    readonly sways: boolean;
    readonly roofDeadPsf: number;
    readonly roofLivePsf: number;
  };
  readonly ground: {
    readonly allowablePsf: number;
    readonly footingStrengthPsi: number;
  };
  readonly diaphragm: {
    /** Service-level lateral load on a floor per foot of its long side, plf. */
    readonly lateralPlf: number;
  };
  readonly story: {
    readonly floorToFloorFt: number;
    readonly finishIn: number;
    readonly ceiling: "flush" | "below" | "head" | "none";
    readonly ceilingDropIn: number;
    readonly frameIn: number;
  };
  readonly services: {
    readonly airCfmPerFt2: number;
    /** Floor whose air comes through the main duct, ft2. */
    readonly servedFt2: number;
    readonly mainWidthIn: number;
    readonly mainDepthIn: number;
    readonly branchWidthIn: number;
    readonly branchDepthIn: number;
    readonly sprinklerIn: number;
    readonly lightIn: number;
  };
  readonly daylight: {
    readonly sides: "one" | "two";
    readonly revealIn: number;
    readonly frameShare: number;
    readonly transmittanceShare: number;
    readonly obstructionDeg: number;
    readonly floorShare: number;
    readonly wallShare: number;
    readonly ceilingShare: number;
  };
  readonly topping: {
    /** Part of the camber that the finished surface follows, 0 (level) to 1. */
    readonly followShare: number;
    /** Age at which members are set and topped, days. */
    readonly ageDays: number;
  };
  readonly reasons: Readonly<Record<ReasonName, string>>;
  /** What each reason was written for; none for a reason that is blank. */
  readonly writtenFor: Readonly<Partial<Record<ReasonName, WrittenFor>>>;
}

/** The decisions that a reason may be given for. */
export type ReasonName = "loads" | "reduction" | "deck" | "topping" | "edgeBeam" | "story" | "frame" | "light";

/** Who wrote a reason, and the choice that it was written for. */
export interface WrittenFor {
  readonly by: "reader" | "starter";
  /** Values of the fields that the reason explains, by path; "none" for one that was left out. See `reasons.ts`. */
  readonly choice: Readonly<Record<string, unknown>>;
}

/** A room on the plan and the row of the live load table that it falls under. */
export interface Room {
  readonly name: string;
  readonly occupancy: string;
  /** In place of the table's live load for this use, where the reader enters one. */
  readonly own?: OwnLoad;
}

/** A live load of the reader's own. */
export interface OwnLoad {
  readonly livePsf: number;
  /** Whether the code's reduction may be used on it; if not, it counts in full on every element. */
  readonly reducible: boolean;
  readonly reason: string;
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

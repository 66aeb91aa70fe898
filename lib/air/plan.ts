import type {Design} from "../design/design.js";
import type {Shape} from "../sections/shape.js";
import type {StoryStack} from "../story/stack.js";
import {inches} from "../units.js";
import {USUAL_CLEARANCE} from "./ductRoom.js";
import {peakCfm} from "./flows.js";
import {framePlan, type FramePlan} from "./framePlan.js";
import {USUAL_FRICTION_IN} from "./friction.js";
import {sizedDuct, type SizedDuct} from "./sizing.js";
import type {StemSpace} from "./spaces.js";
import {takenSpaces, type TakenSpaces} from "./taken.js";
import {girderCrossings, type GirderCrossing} from "./crossings.js";
import {placeTrunk, type Trunk} from "./trunk.js";
import {airZone, servedFloorFt2, type AirZone} from "./zone.js";

/** A riser: the main turned up, in a space between stems. */
export interface Riser {
  readonly space: StemSpace;
  readonly supply: SizedDuct;
  /** Undefined where no return is shown. */
  readonly back: SizedDuct | undefined;
  /** Outside of its longer side along the building, supply and return, in: what must pass between the stems. */
  readonly alongIn: number;
}

/** Air on one side of the main, through the feeders there. */
export interface FeederSide {
  readonly side: "near" | "far";
  /** Air of one feeder where it leaves the main, and its length from the main's middle, in. */
  readonly flowCfm: number;
  readonly lengthIn: number;
}

/** One main of a floor with its feeders, risers and way back, in plan. */
export interface AirPlan extends Omit<TakenSpaces, "risers"> {
  readonly frame: FramePlan;
  readonly zone: AirZone;
  readonly servedFt2: number;
  readonly flowCfm: number;
  /** What comes back: the supply less what is exhausted elsewhere; 0 where no return is shown. */
  readonly returnCfm: number;
  readonly risers: readonly Riser[];
  /** Greatest airflow in the main, and in the return duct. */
  readonly peakCfm: number;
  readonly returnPeakCfm: number;
  /** The return duct beside the main; undefined where the air goes back another way. */
  readonly returnMain: SizedDuct | undefined;
  readonly sides: readonly FeederSide[];
  readonly trunk: Trunk;
  readonly crossings: readonly GirderCrossing[];
}

/** Rate for which ducts are sized, in of water in 100 ft: the design's, or the usual one where it gives none. */
export function sizingRateIn({air}: Pick<Design, "air">): number {
  return air.frictionInPer100Ft > 0 ? Math.max(0.01, air.frictionInPer100Ft) : USUAL_FRICTION_IN;
}

/** Whether the return comes back in a duct beside the main. */
export function hasReturnDuct({air}: Pick<Design, "air">): boolean {
  return air.way === "trunk" || air.way === "stems";
}

/**
 * Plans one main: the spaces that it takes along the building, its risers and return, and where it lies across.
 *
 * @param along - whether the main runs along the ledge, by the designer's choice or for lack of room
 * @param headroomIn - minimum height under what hangs, in, where there is no ceiling
 */
export function airPlan(design: Design, shape: Shape, stack: StoryStack, along: boolean, headroomIn: number): AirPlan {
  const {air, services} = design;
  const frame = framePlan(design);
  const zone = airZone(design);
  const servedFt2 = servedFloorFt2(design);
  const flowCfm = servedFt2 * services.airCfmPerFt2;
  const returnCfm = air.way === "none" ? 0 : flowCfm * (1 - air.exhaustPercent / 100);
  const {risers: taken, supply, spaced, returns, sections, returnSections} = takenSpaces(design, shape, {frame, zone, flowCfm, ductedBackCfm: hasReturnDuct(design) ? returnCfm : undefined});
  const returnPeakCfm = peakCfm(returnSections);
  const {insulationIn} = USUAL_CLEARANCE;
  const rateIn = sizingRateIn(design);
  // Stryker disable next-line ArithmeticOperator: twice an inch of insulation is as much as two over it
  const insideDepthIn = services.mainDepthIn - 2 * insulationIn;
  const returnMain = returnPeakCfm >= 1 ? sizedDuct(returnPeakCfm, insideDepthIn, rateIn, "main") : undefined;
  // Each riser is as wide as its main, and long enough along the building to carry its air at the same rate.
  const share = 1 / taken.length;
  // Stryker disable next-line ArithmeticOperator: as above
  const insideWidthIn = services.mainWidthIn - 2 * insulationIn;
  const up = sizedDuct(flowCfm * share, insideWidthIn, rateIn, "main");
  const down = returnCfm * share >= 1 ? sizedDuct(returnCfm * share, returnMain ? returnMain.size.widthIn : insideWidthIn, rateIn, "main") : undefined;
  // Stryker disable next-line ArithmeticOperator: as above
  const alongIn = Math.max(up.size.widthIn, down?.size.widthIn ?? 0) + 2 * insulationIn;
  const crossings = girderCrossings(design, shape, stack, frame, zone, headroomIn);
  // Stryker disable next-line ArithmeticOperator: as above
  const besideIn = returnMain ? returnMain.size.widthIn + 2 * insulationIn : down ? services.mainWidthIn : 0;
  const trunk = placeTrunk(design, frame, zone, {
    along, supplyIn: services.mainWidthIn, besideIn, legIn: crossings[0]?.how === "under the girder" ? services.branchDepthIn + 1 : 0,
  });
  return {
    frame, zone, servedFt2, flowCfm, returnCfm, supply, returns, spaced,
    risers: taken.map((space) => ({space, supply: up, back: down, alongIn})),
    sections, returnSections, peakCfm: peakCfm(sections), returnPeakCfm, returnMain,
    sides: feederSides(flowCfm / supply.length, trunk, zone), trunk, crossings,
  };
}

/** A side of the main narrower than this gets no feeder, in: the main's own outlets serve it (our choice). */
const LEAST_SIDE_IN = inches(4);

/** How the air of one space is shared between the two sides of the main: by the floor on each. */
function feederSides(flowCfm: number, {supplyY0In, supplyY1In, y0In, y1In}: Trunk, zone: AirZone): FeederSide[] {
  const middleIn = (supplyY0In + supplyY1In) / 2;
  const [nearIn, farIn] = [middleIn - zone.y0In, zone.y1In - middleIn];
  const [near, far] = [y0In - zone.y0In >= LEAST_SIDE_IN, zone.y1In - y1In >= LEAST_SIDE_IN];
  if (!near && !far) return [{side: "far", lengthIn: Math.max(LEAST_SIDE_IN, farIn), flowCfm}];
  const bothIn = (near ? nearIn : 0) + (far ? farIn : 0);
  const of = (side: FeederSide["side"], lengthIn: number): FeederSide => ({side, lengthIn, flowCfm: (flowCfm * lengthIn) / bothIn});
  return near && far ? [of("near", nearIn), of("far", farIn)] : near ? [of("near", nearIn)] : [of("far", farIn)];
}

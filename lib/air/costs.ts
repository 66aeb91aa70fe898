import type {Design} from "../design/design.js";
import {buildingEnvelope} from "../story/envelope.js";
import {storyAround} from "../story/solve.js";
import type {StoryStack} from "../story/stack.js";
import {USUAL_CLEARANCE} from "./ductRoom.js";
import {GREATEST_ASPECT} from "./ducts.js";
import type {AirResult} from "./result.js";
import {feedersAbove, type ServicesResult} from "./services.js";
import {leastPlenumIn} from "./air.js";
import {BOARD_IN} from "./casing.js";
import {sizedDuct, type SizedDuct} from "./sizing.js";
import type {Shape} from "../sections/shape.js";
import {feet} from "../units.js";

/** What a main of some depth requires of the story. */
export interface MainCost {
  /** Outside of the main, in: its depth, and the width that its air then needs. */
  readonly depthIn: number;
  readonly widthIn: number;
  readonly duct: SizedDuct;
  /** Whether it is flatter than 4 to 1. */
  readonly tooFlat: boolean;
  /** What it takes below the deck where it runs, with all that stands over or under it there, in. */
  readonly takenIn: number;
  /** Height under it in the story as it is, in: the ceiling, the box or strip, or the main itself where there is no ceiling. */
  readonly underIn: number;
  /** Floor-to-floor height that keeps the height under the design's own main, in, rounded up to a quarter inch. */
  readonly floorToFloorIn: number;
  /** Outer wall of the building at that floor-to-floor height, ft2. */
  readonly wallFt2: number;
}

/** Depths that are compared, in: outsides of mains. */
const DEPTHS_IN = [8, 10, 12, 14, 16, 18, 20, 24, 28] as const;

/** What each depth of main costs in ceiling, story and wall; the design's own depth is among them, shallowest first. */
export function mainCosts(
  {design, shape, story, air, services}: {design: Design; shape: Shape; story: StoryStack; air: AirResult; services: ServicesResult},
): MainCost[] {
  const own = takenIn(design, shape, story, air, services, design.services.mainDepthIn);
  const underNowIn = story.clearUnderDeckIn - own;
  const depths = [...new Set([...DEPTHS_IN, design.services.mainDepthIn])].sort((a, b) => a - b);
  return depths.map((depthIn) => {
    const {insulationIn} = USUAL_CLEARANCE;
    const duct = sizedDuct(air.ducts.peakCfm, depthIn - 2 * insulationIn, air.rateIn, "main");
    const taken = takenIn(design, shape, story, air, services, depthIn);
    const {floorToFloorIn} = storyAround(story, taken, underNowIn);
    return {
      depthIn, duct, widthIn: duct.size.widthIn + 2 * insulationIn,
      tooFlat: Math.max(duct.size.widthIn / duct.size.depthIn, duct.size.depthIn / duct.size.widthIn) > GREATEST_ASPECT,
      takenIn: taken, underIn: story.clearUnderDeckIn - taken, floorToFloorIn,
      wallFt2: buildingEnvelope({...design, story: {...design.story, floorToFloorFt: feet(floorToFloorIn)}}, {...story, floorToFloorIn}).wallFt2,
    };
  });
}

/** Below the deck down to the lowest thing where a main of this depth runs, in. */
function takenIn(design: Design, shape: Shape, story: StoryStack, {ducts}: AirResult, {sprinklerIn, lightIn}: ServicesResult, depthIn: number): number {
  const {branchDepthIn} = design.services;
  const tee = shape.family === "double tee";
  const hungIn = USUAL_CLEARANCE.hangerIn + (feedersAbove(design, shape) ? branchDepthIn + depthIn : Math.max(depthIn, tee ? 0 : branchDepthIn));
  const zonesIn = sprinklerIn + lightIn;
  if (ducts.casing) return Math.max(story.plenumIn, hungIn + BOARD_IN + (ducts.casing.kind === "strip" ? zonesIn : 0));
  if (design.story.ceiling === "none") return Math.max(hungIn, sprinklerIn);
  return leastPlenumIn(story, {mainPlace: ducts.mainPlace, hungIn, stackedIn: hungIn + zonesIn}, zonesIn);
}

import type {Design} from "../design/design.js";
import type {Shape} from "../sections/shape.js";
import type {StoryStack} from "../story/stack.js";
import {IN2_PER_FT2} from "../units.js";
import {stemGapIn} from "./ductRoom.js";
import type {AirPlan} from "./plan.js";

/** An opening through a wall in the return's way. */
export interface TransferOpening {
  readonly wall: number;
  readonly flowCfm: number;
  /** Free area that passes the air at {@link TRANSFER_FPM}, ft2; louvers take a quarter to a half of an opening. */
  readonly freeFt2: number;
  /** Openings of 24 by 12 in, free, that it takes. */
  readonly openings: number;
}

/** The way back of the air, where it is no duct. */
export interface WayBack {
  /** Free area for the busiest air on its way, ft2, and the velocity there, ft/min; undefined where nothing narrows it. */
  readonly freeFt2: number | undefined;
  readonly velocityFpm: number | undefined;
  /** Height of the plenum that is free for the air, in; undefined where it goes another way. */
  readonly freeHeightIn: number | undefined;
  readonly openings: readonly TransferOpening[];
}

/** Velocity through transfer openings in walls, ft/min (common practice: 300 to 500 through the free area; from memory). */
export const TRANSFER_FPM = 400;
/** An opening of 24 by 12 in, ft2. */
const OPENING_FT2 = 2;
/** Greatest velocity of air that goes back through a plenum or a space between stems, ft/min (common practice; from memory). */
export const GREATEST_PLENUM_FPM = 500;
/** Height that a plenum must leave free so that air finds its way, in (our choice). */
export const LEAST_PLENUM_IN = 4;

/** Free area of the space between the two stems of a tee over a height from the soffit up, ft2. */
export function stemSpaceFt2(shape: Shape): number {
  const {depthIn = 0, flangeIn = 0, chamferIn = 0} = shape.dimensions;
  const undersideIn = depthIn - flangeIn;
  const footIn = undersideIn - chamferIn;
  // The gap runs straight from the soffit to the chamfer's foot and on to the flange: means times heights.
  const gap = (heightIn: number) => stemGapIn(shape, "between stems", heightIn);
  return (((gap(0) + gap(footIn)) / 2) * footIn + ((gap(footIn) + gap(undersideIn)) / 2) * chamferIn) / IN2_PER_FT2;
}

/**
 * How the return finds its way through the plenum, between stems or through rooms: free area and velocity where it is
 * busiest, and openings through the walls in its way, which are assumed evenly spaced.
 *
 * The plenum's free section is that across the building over the rows of bays that the main serves, below the stems,
 * less lights and the ducts. Undefined where no return is shown or a duct takes it all the way.
 */
export function wayBack(design: Design, shape: Shape, stack: StoryStack, plan: AirPlan, hungIn: number): WayBack | undefined {
  const {air, services} = design;
  const {returnCfm, zone, trunk} = plan;
  if (returnCfm < 1) return undefined;
  if (air.way === "stems") {
    const busiest = plan.returns.length > 0 ? Math.max(...plan.sides.map(({flowCfm}) => flowCfm * plan.supply.length)) / plan.flowCfm : 0;
    if (busiest === 0) return undefined;
    const freeFt2 = stemSpaceFt2(shape);
    return {freeFt2, velocityFpm: (busiest * returnCfm) / plan.returns.length / freeFt2, freeHeightIn: undefined, openings: []};
  }
  if (air.way === "rooms") return {freeFt2: undefined, velocityFpm: undefined, freeHeightIn: undefined, openings: openings(design, returnCfm)};
  if (air.way !== "plenum") return undefined;
  const freeHeightIn = Math.max(0, stack.plenumIn - services.lightIn);
  const ductsIn2 = (trunk.supplyY1In - trunk.supplyY0In) * Math.min(hungIn, freeHeightIn);
  const freeFt2 = ((zone.y1In - zone.y0In) * freeHeightIn - ductsIn2) / IN2_PER_FT2;
  const toRiserCfm = returnCfm * (air.riser === "end" ? 1 : 0.5);
  const open = freeHeightIn >= LEAST_PLENUM_IN;
  return {freeFt2: open ? freeFt2 : 0, velocityFpm: open ? toRiserCfm / freeFt2 : undefined, freeHeightIn, openings: openings(design, returnCfm)};
}

/** Air through each of the walls: that of all the floor beyond it, seen from the nearest riser. */
function openings({air}: Pick<Design, "air">, returnCfm: number): TransferOpening[] {
  return Array.from({length: air.wallsCrossed}, (_, i) => {
    const share = (i + 1) / (air.wallsCrossed + 1);
    const beyond = {end: 1 - share, middle: Math.min(share, 1 - share), ends: Math.abs(0.5 - share)}[air.riser];
    const flowCfm = returnCfm * beyond;
    const freeFt2 = flowCfm / TRANSFER_FPM;
    return {wall: i + 1, flowCfm, freeFt2, openings: Math.max(1, Math.ceil(freeFt2 / OPENING_FT2 - 1e-9))};
  });
}

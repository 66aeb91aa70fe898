import type {Design} from "../design/design.js";
import type {Shape} from "../sections/shape.js";
import type {StoryStack} from "../story/stack.js";
import {inches} from "../units.js";
import {USUAL_CLEARANCE} from "./ductRoom.js";
import {mainSections, peakCfm, type MainSection} from "./flows.js";
import {framePlan, type FramePlan} from "./framePlan.js";
import {USUAL_FRICTION_IN} from "./friction.js";
import {sizedDuct, type SizedDuct} from "./sizing.js";
import {stemSpaces, type StemSpace} from "./spaces.js";
import {girderCrossings, girdersBetween, type GirderCrossing} from "./crossings.js";
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
export interface AirPlan {
  readonly frame: FramePlan;
  readonly zone: AirZone;
  readonly servedFt2: number;
  readonly flowCfm: number;
  /** What comes back: the supply less what is exhausted elsewhere; 0 where no return is shown. */
  readonly returnCfm: number;
  readonly supply: readonly StemSpace[];
  /** Whether feeders have spaces of their own; else one runs where no duct belongs, beside the riser, a column or the end wall. */
  readonly spaced: boolean;
  /** Spaces with a return feeder, or open for the return. */
  readonly returns: readonly StemSpace[];
  readonly risers: readonly Riser[];
  readonly sections: readonly MainSection[];
  readonly returnSections: readonly MainSection[];
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
 * Plans one main. Its feeders take every n-th space between stems over its part of the floor, each with the same share
 * of its air; a riser takes a space for itself, at best one that no feeder wants.
 *
 * @param along - whether the main runs along the ledge, by the designer's choice or for lack of room
 * @param headroomIn - minimum height under what hangs, in, where there is no ceiling
 */
export function airPlan(design: Design, shape: Shape, stack: StoryStack, along: boolean, headroomIn: number): AirPlan {
  const {air, services} = design;
  const frame = framePlan(design);
  const zone = airZone(design);
  const tee = shape.family === "double tee";
  const servedFt2 = servedFloorFt2(design);
  const flowCfm = servedFt2 * services.airCfmPerFt2;
  const returnCfm = air.way === "none" ? 0 : flowCfm * (1 - air.exhaustPercent / 100);
  const all = stemSpaces(design, shape);
  // Where feeders pass a line of interior columns, a space with a column in it is closed to them.
  const passes = girdersBetween(frame, zone).length > 0;
  const closed = ({centerIn}: StemSpace, widthIn: number) => passes && frame.columnsAlongIn.some((at) => Math.abs(at - centerIn) < frame.columnHalfIn + widthIn / 2 + 1);
  const inside = all.filter((space) => space.place !== "end of the building" && space.centerIn < zone.lengthIn && !closed(space, services.branchWidthIn));
  const wanted = inside.filter(({index}) => index % (tee ? air.supplyEvery : 2) === 0);
  const taken = riserSpaces(all, wanted, air.riser, zone.lengthIn);
  const left = wanted.filter((space) => !taken.includes(space));
  const spaced = left.length > 0;
  const supply = spaced ? left : fallback(all, taken, zone.lengthIn);
  const free = inside.filter((space) => !supply.includes(space) && !taken.includes(space) && !closed(space, space.topIn));
  // Stryker disable next-line EqualityOperator: of every nothingth space there is none
  const returns = tee && hasReturnDuct(design) && returnCfm >= 1 && air.returnEvery > 0 ? free.filter((_, i) => i % air.returnEvery === 0) : [];
  const risersIn = taken.map(({centerIn}) => centerIn);
  const sections = mainSections(flowCfm, risersIn, supply.map(({centerIn}) => centerIn));
  const gathers = returns.length > 0 ? returns : supply;
  const returnSections = hasReturnDuct(design) ? mainSections(returnCfm, risersIn, gathers.map(({centerIn}) => centerIn)) : [];
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
  const sides = ([["near", middleIn - zone.y0In, y0In - zone.y0In], ["far", zone.y1In - middleIn, zone.y1In - y1In]] as const)
    .flatMap(([side, lengthIn, beyondIn]) => (beyondIn >= LEAST_SIDE_IN ? [{side, lengthIn}] : []));
  if (sides.length === 0) return [{side: "far", lengthIn: Math.max(LEAST_SIDE_IN, zone.y1In - middleIn), flowCfm}];
  const bothIn = sides.reduce((sum, {lengthIn}) => sum + lengthIn, 0);
  return sides.map(({side, lengthIn}) => ({side, lengthIn, flowCfm: (flowCfm * lengthIn) / bothIn}));
}

/** The spaces that risers take, nearest to where they are wanted, and of two as near one that no feeder wants. */
function riserSpaces(all: readonly StemSpace[], wanted: readonly StemSpace[], riser: Design["air"]["riser"], lengthIn: number): StemSpace[] {
  const places = riser === "end" ? [0] : riser === "middle" ? [lengthIn / 2] : [0, lengthIn];
  const found: StemSpace[] = [];
  for (const place of places) {
    const free = all.filter((space) => !found.includes(space) && space.centerIn <= lengthIn + space.topIn);
    const nearest = nearestTo(free, place);
    const unwanted = nearestTo(free.filter((space) => !wanted.includes(space)), place);
    if (!nearest) continue;
    const near = unwanted && away(unwanted, place) <= away(nearest, place) + 2 * nearest.topIn;
    found.push(near ? unwanted : nearest);
  }
  return found;
}

const away = ({centerIn}: StemSpace, placeIn: number): number => Math.abs(centerIn - placeIn);

function nearestTo(spaces: readonly StemSpace[], placeIn: number): StemSpace | undefined {
  return spaces.reduce<StemSpace | undefined>((best, one) => (best && away(best, placeIn) <= away(one, placeIn) ? best : one), undefined);
}

/** A floor too short for a feeder's own space gives it the one next to the riser. */
function fallback(all: readonly StemSpace[], taken: readonly StemSpace[], lengthIn: number): StemSpace[] {
  const nearest = nearestTo(all.filter((space) => !taken.includes(space)), lengthIn / 2);
  return nearest ? [nearest] : [...taken];
}

import {atLeast, atMost, type Check} from "../checks.js";
import type {Design} from "../design/design.js";
import type {Shape} from "../sections/shape.js";
import {IN_PER_FT} from "../units.js";
import {casing, pipesUnderIn, type Casing} from "./casing.js";
import {DUCT_PLACES, USUAL_CLEARANCE, type DuctPlace} from "./ductRoom.js";
import {GREATEST_VELOCITY_FPM, ductAreaFt2, ductPlan, type DuctResult, type DuctSize} from "./ducts.js";
import {airPlan, hasReturnDuct, type AirPlan} from "./plan.js";
import {BRANCH_SPACING_FT} from "./spaces.js";
import {servedFloorFt2} from "./zone.js";
import {LEAST_HEADROOM_IN, written, type LeastHeight, type StoryStack} from "../story/stack.js";

/** Where the main duct runs, across the tees: anywhere below the deck, in the strip beside the ledge, or where the design puts it. */
export type MainPlace = "below the deck" | "along the ledge" | "down the middle" | "across the floor";

/** Ducts, sprinklers and lights of a story: where they fit, and what collides with what. */
export interface ServicesResult {
  /** Room for services: from the deck's underside to the ceiling, or to the minimum headroom where there is none, in. */
  readonly roomIn: number;
  readonly sprinklerIn: number;
  readonly lightIn: number;
  /** Finished floor to the lowest sprinkler pipes where there is no ceiling over them, in; undefined where there is one. */
  readonly pipesUnderIn: number | undefined;
  /** Undefined where the floor gets no air through ducts. */
  readonly ducts: ServiceDucts | undefined;
  readonly checks: readonly Check[];
}

/** A main duct and the branches that leave it. */
export interface ServiceDucts {
  readonly result: DuctResult;
  /** Floor that the main serves, as the design states it, and its air. */
  readonly servedFt2: number;
  readonly flowCfm: number;
  /** Area of the whole floor, ft2, and mains like this one that it takes. */
  readonly floorFt2: number;
  readonly mains: number;
  /** Insides of the ducts. */
  readonly main: DuctSize;
  readonly branch: DuctSize;
  /** Most air in the main, cfm: all of it beside a riser at its end, half of it with two risers or one at its middle. */
  readonly peakCfm: number;
  /** The main in plan with its feeders, risers and return. */
  readonly plan: AirPlan;
  /** Box or strip of lowered ceiling around the main; undefined where it stays in the plenum. */
  readonly casing: Casing | undefined;
  /** Floor that one branch serves, ft2, and its air: that of one tee over its span, or of a strip below a flat deck. */
  readonly branchFt2: number;
  readonly branchFlowCfm: number;
  /** Branches that leave the main. */
  readonly branches: number;
  /** Whether the branches run between stems, or beside the main below a flat deck. */
  readonly branchesBetweenStems: boolean;
  readonly mainPlace: MainPlace;
  /** Depth of what hangs from the deck: the deeper duct with its hangers, in. */
  readonly hungIn: number;
  /** Height of everything stacked below the deck where the main crosses the room: hung duct, sprinkler zone, lights. */
  readonly stackedIn: number;
  /** Floor whose air the main carries quietly, ft2. */
  readonly quietFt2: number;
}

const LEAST_HEADROOM: LeastHeight = {leastIn: LEAST_HEADROOM_IN, clause: "IBC 2021 1003.3.1"};

/** Air in a branch below this counts as none, cfm. */
const LEAST_BRANCH_CFM = 1;

/**
 * The services of a story from the design's own sizes: a main across the deck below its stems with the air of the
 * floor that it is stated to serve, a branch between the stems of each tee with the air of that tee's floor, and the
 * heights that sprinklers and lights keep for themselves. Columns may move along the
 * edge without changing either flow.
 *
 * From the deck down come the main with its hangers, the sprinkler pipes and the lights in the ceiling. Where
 * that is more than there is, the main may keep to the strip along the ledge, which has no lights and which pipes leave
 * free. Without a ceiling what hangs must leave headroom.
 *
 * @param headroom - the minimum below what hangs; 6 ft 8 in, as everywhere but where cars park, if omitted
 */
export function services(design: Design, shape: Shape, stack: StoryStack, headroom: LeastHeight = LEAST_HEADROOM): ServicesResult {
  const {sprinklerIn, lightIn: lights} = design.services;
  const open = design.story.ceiling === "none";
  // Without a ceiling the lights hang where they may, beside ducts and pipes.
  const lightIn = open ? 0 : lights;
  const roomIn = open ? stack.clearUnderDeckIn - headroom.leastIn : stack.plenumIn;
  const ducts = ductsOf(design, shape, stack, sprinklerIn + lightIn, roomIn, headroom.leastIn);
  // A box or strip of ceiling gives the main the room that the plenum lacks.
  const inPlenum = !ducts?.casing;
  const underPipesIn = open ? pipesUnderIn(sprinklerIn > 0 ? ducts?.casing : undefined, {alongLedge: ducts?.mainPlace === "along the ledge", underDeckIn: stack.clearUnderDeckIn, sprinklerIn}) : undefined;
  return {
    roomIn, sprinklerIn, lightIn, ducts, pipesUnderIn: underPipesIn,
    checks: [
      ...(ducts ? [
        atMost({
          id: "served floor", label: "Floor that the main serves", unit: "ft2", clause: "geometry", meetingIsEnough: true,
          holds: ducts.mains === 1 ? "One main serves the whole floor." : `${ducts.mains} such mains serve the whole floor.`,
          fails: "The main is said to serve more floor than there is: state anew how much of it this main serves.",
        }, ducts.servedFt2, ducts.floorFt2),
        ...(inPlenum ? [mainRoomCheck(ducts, roomIn, open ? headroom : undefined)] : []),
        ...ducts.result.checks,
      ] : []),
      underPipesIn !== undefined
        ? pipesCheck(underPipesIn, underPipesIn < stack.clearUnderDeckIn - sprinklerIn - 1e-9 ? design.air.casing : undefined, headroom)
        : atMost({
          id: "service zones", label: "Sprinkler zone over the lights", unit: "in", clause: "geometry", meetingIsEnough: true,
          holds: "Pipes pass below the deck and above the lights.",
          fails: () => `The sprinkler zone and the lights collide by ${written(sprinklerIn + lightIn - roomIn)} in: flatter lights, less height for the pipes, or a lower ceiling.`,
        }, sprinklerIn + lightIn, roomIn),
    ],
  };
}

/** Sprinkler pipes without a ceiling, below the deck or, where `passed` says how it is sized, below a box around the ducts. */
function pipesCheck(underIn: number, passed: Design["air"]["casing"] | undefined, headroom: LeastHeight): Check {
  const fails = `${passed ? "Where they pass under the box around the ducts the" : "The"} sprinkler pipes and a head below them collide by ${written(headroom.leastIn - underIn)} in`;
  return atLeast({
    id: "service zones", label: passed ? "Headroom under sprinkler pipes that pass the box" : "Headroom under sprinkler pipes", unit: "in", clause: headroom.clause, meetingIsEnough: true,
    holds: "A head passes under the pipes.",
    fails: `${fails}: raise the story, ${passed === "stated" ? "a shallower box, " : passed ? "a flatter duct, " : ""}or keep less height for the pipes.`,
  }, underIn, headroom.leastIn);
}

/** A main in the plenum against the height that it has there; `headroom` where there is no ceiling. */
function mainRoomCheck({mainPlace, hungIn, stackedIn}: ServiceDucts, roomIn: number, headroom: LeastHeight | undefined): Check {
  const under = headroom ? "a head below it" : "the ceiling";
  return atMost({
    id: "main duct room", label: `Main duct with its hangers, ${mainPlace}`, unit: "in", clause: headroom?.clause ?? "geometry", meetingIsEnough: true,
    holds: stackedIn <= roomIn + 1e-9
      ? "Main, sprinkler pipes and lights stand under one another with room to spare."
      : mainPlace === "along the ledge"
        ? "The main fits beside the ledge, in a strip without lights and pipes; elsewhere it would not fit over them."
        : "The main fits in a strip that lights and pipes leave free; it would not fit over them.",
    fails: () => `The main duct and ${under} collide by ${written(hungIn - roomIn)} in: flatten the duct, or ${headroom ? "raise the story" : "lower the ceiling"}.`,
  // Pipes and lights decide where the main runs; what it takes of the room is its own depth wherever that is.
  }, hungIn, roomIn);
}

function ductsOf(design: Design, shape: Shape, stack: StoryStack, belowDuctsIn: number, roomIn: number, headroomIn: number): ServiceDucts | undefined {
  const {bay, services: input, air} = design;
  const tee = shape.family === "double tee";
  const servedFt2 = servedFloorFt2(design);
  const flowCfm = servedFt2 * input.airCfmPerFt2;
  if (flowCfm < LEAST_BRANCH_CFM) return undefined;
  const floorFt2 = bay.spanFt * bay.baysAcross * bay.beamSpanFt * bay.baysAlong;
  const {insulationIn, hangerIn} = USUAL_CLEARANCE;
  // Stryker disable next-line ArithmeticOperator: twice an inch of insulation is as much as two over it
  const inside = (widthIn: number, depthIn: number): DuctSize => ({kind: "rectangular", widthIn: widthIn - 2 * insulationIn, depthIn: depthIn - 2 * insulationIn});
  const main = inside(input.mainWidthIn, input.mainDepthIn);
  const branch = inside(input.branchWidthIn, input.branchDepthIn);
  const hungIn = hangerIn + (feedersAbove(design, shape) ? input.branchDepthIn + input.mainDepthIn : Math.max(input.mainDepthIn, tee ? 0 : input.branchDepthIn));
  const stackedIn = hungIn + belowDuctsIn;
  // Stryker disable next-line EqualityOperator: the two part in the tenth digit
  const fits = stackedIn <= roomIn + 1e-9;
  const mainPlace: MainPlace = air.place === "fit" ? (fits ? "below the deck" : "along the ledge") : MAIN_PLACES[air.place];
  const plan = airPlan(design, shape, stack, mainPlace === "along the ledge", headroomIn);
  // In a design that leaves the place of its main open a branch serves one tee over one span, wherever the main is.
  const busiest = Math.max(...plan.sides.map((side) => side.flowCfm));
  const branchFt2 = air.place === "fit" && air.supplyEvery === 2
    ? Math.min(servedFt2, bay.spanFt * (tee ? shape.widthIn / IN_PER_FT : BRANCH_SPACING_FT)) : Math.min(servedFt2, busiest / input.airCfmPerFt2);
  const branchFlowCfm = branchFt2 * input.airCfmPerFt2;
  if (branchFlowCfm < LEAST_BRANCH_CFM) return undefined;
  const branchPlace = narrowerPlace(shape, plan);
  const result = ductPlan(shape, {flowCfm: plan.peakCfm, servedCfm: flowCfm, main, branchFlowCfm, branch, branchPlace});
  return {
    result, servedFt2, flowCfm, peakCfm: plan.peakCfm, plan, floorFt2, main, branch, branchFt2, branchFlowCfm, hungIn, stackedIn, mainPlace,
    casing: casing(design, plan.trunk, {hungIn, belowDuctsIn, plenumIn: stack.plenumIn, undersideIn: stack.ceilingHeightIn}),
    mains: wholeNumber(floorFt2 / servedFt2),
    branches: air.place === "fit" && air.supplyEvery === 2 ? wholeNumber(servedFt2 / branchFt2) : plan.supply.length * plan.sides.length,
    branchesBetweenStems: tee,
    quietFt2: ((GREATEST_VELOCITY_FPM.main * ductAreaFt2(main)) / input.airCfmPerFt2) * (flowCfm / plan.peakCfm),
  };
}

const MAIN_PLACES = {ledge: "along the ledge", middle: "down the middle", across: "across the floor"} as const;

/** Whether the feeders below a flat deck run above the mains: with two mains side by side they could not leave at the sides. */
export function feedersAbove(design: Pick<Design, "air">, shape: Shape): boolean {
  return shape.family !== "double tee" && hasReturnDuct(design);
}

/** The narrower of the places that feeders take: between the stems of a tee, or of two neighbors. */
function narrowerPlace(shape: Shape, {supply}: AirPlan): DuctPlace {
  const taken = DUCT_PLACES.filter((place) => supply.some((space) => space.place === place));
  const {stemSpacingIn = 0} = shape.dimensions;
  return taken.length === 2 ? (stemSpacingIn <= shape.widthIn - stemSpacingIn ? "between stems" : "between tees") : taken[0] ?? "between stems";
}

/** Ducts that a share of the floor takes: the next whole number, one at the least. */
function wholeNumber(ducts: number): number {
  return Math.max(1, Math.ceil(ducts - 1e-9));
}

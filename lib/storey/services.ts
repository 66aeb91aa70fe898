import {atLeast, atMost, type Check} from "../checks.js";
import type {Design} from "../design/design.js";
import type {Shape} from "../sections/shape.js";
import {USUAL_CLEARANCE} from "./ductRoom.js";
import {GREATEST_VELOCITY_FPM, ductAreaFt2, ductPlan, type DuctResult, type DuctSize} from "./ducts.js";
import {written, type StoreyStack} from "./stack.js";

/** Where the main duct runs, across the tees: anywhere below the deck, or in the strip beside the edge beam's ledge. */
export type MainPlace = "below the deck" | "along the ledge";

/** Ducts, sprinklers and lights of a storey: where they fit, and what collides with what. */
export interface ServicesResult {
  /** Room for services: from the deck's underside to the ceiling, or to the least headroom where there is none, in. */
  readonly roomIn: number;
  readonly sprinklerIn: number;
  readonly lightIn: number;
  /** Undefined where the floor gets no air through ducts. */
  readonly ducts: ServiceDucts | undefined;
  readonly checks: readonly Check[];
}

/** The ducts of one bay. */
export interface ServiceDucts {
  readonly result: DuctResult;
  readonly flowCfm: number;
  /** Insides of the ducts. */
  readonly main: DuctSize;
  readonly branch: DuctSize;
  readonly branches: number;
  /** Stems that the main passes under in one bay; 0 under planks. */
  readonly stemsPassed: number;
  /** Whether the branches run between stems, or beside the main below a flat deck. */
  readonly branchesBetweenStems: boolean;
  readonly mainPlace: MainPlace;
  /** Depth of what hangs from the deck: the deeper duct with its hangers, in. */
  readonly hungIn: number;
  /** Height of everything stacked below the deck where the main crosses the room: hung duct, sprinkler zone, lights. */
  readonly stackedIn: number;
  /** How many bays' air the main carries quietly. */
  readonly baysServed: number;
}

/** Least headroom under what hangs from a ceiling, in: 6 ft 8 in (IBC 2021 1003.3.1). */
export const LEAST_HEADROOM_IN = 80;

/** Below a flat deck one branch serves this much of the bay's length, ft (common practice). */
export const BRANCH_SPACING_FT = 10;

/** Less air than this in a branch is none, cfm. */
const LEAST_BRANCH_CFM = 1;

/**
 * The services of a storey from the design's own sizes: air by the area of a bay, a main across the deck below its
 * stems, a branch between the stems of each tee, and the heights that sprinklers and lights keep for themselves.
 *
 * Stacked from the deck down stand the main with its hangers, the sprinkler pipes and the lights in the ceiling. Where
 * that is more than there is, the main may keep to the strip along the ledge, which has no lights and which pipes leave
 * free. Without a ceiling what hangs must leave headroom.
 */
export function services(design: Design, shape: Shape, stack: StoreyStack): ServicesResult {
  const {sprinklerIn, lightIn: lights} = design.services;
  const open = design.storey.ceiling === "none";
  // Without a ceiling the lights hang where they may, beside ducts and pipes.
  const lightIn = open ? 0 : lights;
  const roomIn = open ? stack.clearUnderDeckIn - LEAST_HEADROOM_IN : stack.plenumIn;
  const ducts = ductsOf(design, shape, sprinklerIn + lightIn, roomIn);
  const under = open ? "a head below it" : "the ceiling";
  return {
    roomIn, sprinklerIn, lightIn, ducts,
    checks: [
      ...(ducts ? [
        atMost({
          id: "main duct room", label: `Main duct with its hangers, ${ducts.mainPlace}`, unit: "in", clause: open ? "IBC 2021 1003.3.1" : "geometry", meetingIsEnough: true,
          holds: ducts.mainPlace === "below the deck"
            ? "Main, sprinkler pipes and lights stand under one another with room to spare."
            : "The main fits beside the ledge, in a strip without lights and pipes; elsewhere it would not fit over them.",
          fails: `The main duct and ${under} collide by ${written(ducts.hungIn - roomIn)} in: flatten the duct, lower the ceiling, or raise the storey.`,
        }, ducts.mainPlace === "below the deck" ? ducts.stackedIn : ducts.hungIn, roomIn),
        // The room for the main is the check above, and a flat deck has no stems to run branches between.
        ...ducts.result.checks.filter(({id}) => id !== "main duct depth" && id !== "branch duct room"),
      ] : []),
      open
        ? atLeast({
          id: "service zones", label: "Headroom under sprinkler pipes", unit: "in", clause: "IBC 2021 1003.3.1", meetingIsEnough: true,
          holds: "A head passes under the pipes.",
          fails: `The sprinkler pipes and a head below them collide by ${written(sprinklerIn - roomIn)} in: raise the storey or the pipes.`,
        }, stack.clearUnderDeckIn - sprinklerIn, LEAST_HEADROOM_IN)
        : atMost({
          id: "service zones", label: "Sprinkler zone over the lights", unit: "in", clause: "geometry", meetingIsEnough: true,
          holds: "Pipes pass below the deck and above the lights.",
          fails: `The sprinkler zone and the lights collide by ${written(sprinklerIn + lightIn - roomIn)} in: flatter lights, pipes between the stems, or a lower ceiling.`,
        }, sprinklerIn + lightIn, roomIn),
    ],
  };
}

function ductsOf({bay, services: input}: Design, shape: Shape, belowDuctsIn: number, roomIn: number): ServiceDucts | undefined {
  const tee = shape.family === "double tee";
  const flowCfm = bay.spanFt * bay.beamSpanFt * input.airCfmPerFt2;
  const pieces = Math.max(1, Math.ceil((bay.beamSpanFt * 12) / shape.widthIn - 1e-9));
  const branches = tee ? pieces : Math.max(1, Math.round(bay.beamSpanFt / BRANCH_SPACING_FT));
  if (flowCfm / branches < LEAST_BRANCH_CFM) return undefined;
  const {insulationIn, hangerIn} = USUAL_CLEARANCE;
  const inside = (widthIn: number, depthIn: number): DuctSize => ({kind: "rectangular", widthIn: widthIn - 2 * insulationIn, depthIn: depthIn - 2 * insulationIn});
  const main = inside(input.mainWidthIn, input.mainDepthIn);
  const branch = inside(input.branchWidthIn, input.branchDepthIn);
  const result = ductPlan(shape, {flowCfm, main, branches, branch, branchPlace: "between stems", plenumIn: Math.min(120, Math.max(0, roomIn))});
  const hungIn = Math.max(input.mainDepthIn, tee ? 0 : input.branchDepthIn) + hangerIn;
  const stackedIn = hungIn + belowDuctsIn;
  return {
    result, flowCfm, main, branch, branches, hungIn, stackedIn,
    stemsPassed: tee ? 2 * pieces : 0,
    branchesBetweenStems: tee,
    mainPlace: stackedIn <= roomIn + 1e-9 ? "below the deck" : "along the ledge",
    baysServed: Math.floor((GREATEST_VELOCITY_FPM.main * ductAreaFt2(main)) / flowCfm + 1e-9),
  };
}

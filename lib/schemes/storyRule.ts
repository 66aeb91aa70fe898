import {USUAL_CLEARANCE} from "../air/ductRoom.js";
import {feedersAbove} from "../air/services.js";
import {GREATEST_ASPECT, quietBranches} from "../air/ducts.js";
import {sizingRateIn} from "../air/plan.js";
import {ductsFor} from "../air/sizing.js";
import {exceeds} from "../checks.js";
import {roomDepthLimit} from "../daylight/designDaylight.js";
import type {Design} from "../design/design.js";
import {fieldOf} from "../design/fields.js";
import type {Shape} from "../sections/shape.js";
import type {StoryStack} from "../story/stack.js";
import {IN_PER_FT} from "../units.js";
import {STORY_STEP_IN} from "./brief.js";

/** What hangs below the deck, in: the edge beam's ledge or all of it, and the girder's foot; 0 without a girder. */
export interface Hung {
  readonly edgeIn: number;
  readonly girderIn: number;
}

/** What decides the height between deck and ceiling. */
export type PlenumBy = "edge beam" | "girder" | "main duct" | "sprinklers and lights";

/** Story and air by rule. */
export interface RuledStory {
  readonly story: Design["story"];
  readonly services: Design["services"];
  /** Undefined where there is no ceiling. */
  readonly plenumBy: PlenumBy | undefined;
  /** Mains that share the floor; 0 without ducts. */
  readonly mains: number;
  /** The way back that a flat deck takes in place of the spaces between stems; undefined where the design's own stays. */
  readonly wayBack: "plenum" | "trunk" | undefined;
  /** By how much the ceiling is higher than is wanted, so that the back of the room does not look gloomy, in. */
  readonly raisedIn: number;
  /** Whether the story that the ceiling asks for is beyond what the field allows, and was cut to it. */
  readonly cut: boolean;
}

/** What is asked of the mains beyond what the air alone needs: mains in a row of bays at least, and inches that a main is wider or deeper. */
export interface AirAsk {
  readonly perRow: number;
  readonly widerIn: number;
  readonly deeperIn: number;
}

/**
 * What is tried in this order where the first mains do not pass: a wider main, so that its riser is narrower, then more
 * mains of less air each, then a deeper one, for which the ceiling comes down.
 */
export const AIR_ASKS: readonly [AirAsk, ...AirAsk[]] = [
  {perRow: 1, widerIn: 0, deeperIn: 0}, {perRow: 1, widerIn: 4, deeperIn: 0}, {perRow: 1, widerIn: 8, deeperIn: 0}, {perRow: 2, widerIn: 0, deeperIn: 0}, {perRow: 2, widerIn: 4, deeperIn: 0},
  {perRow: 3, widerIn: 0, deeperIn: 0}, {perRow: 4, widerIn: 0, deeperIn: 0}, {perRow: 1, widerIn: 0, deeperIn: 4}, {perRow: 2, widerIn: 0, deeperIn: 4}, {perRow: 3, widerIn: 0, deeperIn: 6},
];

/** Depths of a main that are tried, outside, in: as deep as what hangs beside it allows. */
const MAIN_DEPTH_IN = {least: 10, most: 24} as const;

/**
 * Mains by rule: no deeper than what hangs beside them, 10 in at least, as wide as the air needs, and as many as keep
 * each no flatter than 4 to 1; deeper where each serves one bay and is still too flat. Branches are the smallest that
 * carry a tee's air between its stems.
 */
function ruledServices(design: Design, shape: Shape, roomIn: number, ask: AirAsk): {services: Design["services"]; mains: number} {
  const {services: own, bay, air} = design;
  const floorFt2 = bay.spanFt * bay.baysAcross * bay.beamSpanFt * bay.baysAlong;
  if (own.airCfmPerFt2 <= 0) return {services: {...own, servedFt2: clampTo("services.servedFt2", floorFt2)}, mains: 0};
  const {insulationIn, hangerIn} = USUAL_CLEARANCE;
  const deepestIn = Math.min(MAIN_DEPTH_IN.most, Math.max(MAIN_DEPTH_IN.least, Math.floor(roomIn - hangerIn)) + ask.deeperIn);
  const rateIn = sizingRateIn(design);
  const shared = air.riser === "end" ? 1 : 2;
  for (let perRow = Math.min(ask.perRow, bay.baysAlong); ; perRow++) {
    const mains = bay.baysAcross * perRow;
    const servedFt2 = floorFt2 / mains;
    const flowCfm = Math.max(1, (servedFt2 * own.airCfmPerFt2) / shared);
    const ducts = ductsFor(flowCfm, rateIn, "main");
    const widthAt = (depthIn: number) => ducts.at(depthIn - 2 * insulationIn).size.widthIn;
    let mainDepthIn = deepestIn;
    let widthIn = widthAt(mainDepthIn);
    // A main is no deeper than it is wide.
    while (mainDepthIn > MAIN_DEPTH_IN.least && widthIn < mainDepthIn - 2 * insulationIn) widthIn = widthAt(mainDepthIn = Math.max(MAIN_DEPTH_IN.least, mainDepthIn - 2));
    const tooFlat = () => widthIn > GREATEST_ASPECT * (mainDepthIn - 2 * insulationIn);
    if (tooFlat() && perRow < bay.baysAlong) continue;
    while (tooFlat() && mainDepthIn < MAIN_DEPTH_IN.most) widthIn = widthAt(mainDepthIn += 1);
    // One made wider for its riser is no flatter than others.
    const widerIn = Math.max(widthIn, Math.min(widthIn + ask.widerIn, GREATEST_ASPECT * (mainDepthIn - 2 * insulationIn)));
    return {
      mains,
      services: {
        ...own, servedFt2: clampTo("services.servedFt2", servedFt2), mainDepthIn, mainWidthIn: clampTo("services.mainWidthIn", widerIn + 2 * insulationIn),
        ...branchesFor(design, shape, bay.spanFt * (shape.widthIn / IN_PER_FT) * own.airCfmPerFt2),
      },
    };
  }
}

/** Branches of the least size that carry their air between the stems; below a flat deck as the design has them. */
export function branchesFor({services: own}: Pick<Design, "services">, shape: Shape, flowCfm: number): Pick<Design["services"], "branchWidthIn" | "branchDepthIn"> {
  const {branchWidthIn, branchDepthIn} = own;
  if (shape.family !== "double tee") return {branchWidthIn, branchDepthIn};
  const found = flowCfm >= 1 ? quietBranches(shape, flowCfm).find(({place}) => place === "between stems") : undefined;
  if (!found || found.size.kind !== "rectangular") return {branchWidthIn, branchDepthIn};
  const {insulationIn} = USUAL_CLEARANCE;
  return {
    branchWidthIn: clampTo("services.branchWidthIn", found.size.widthIn + 2 * insulationIn),
    branchDepthIn: clampTo("services.branchDepthIn", found.size.depthIn + 2 * insulationIn),
  };
}

/**
 * The story by rule: the ceiling hangs flush with the ledge where girder, main, sprinklers and lights find room above it,
 * else as much lower, in whole inches, as the one of them that needs most; the floor-to-floor height is the least in
 * steps of 3 in that leaves the wanted ceiling. Without a ceiling the wanted height is clear under whatever hangs.
 *
 * @param ceilingFt - wanted; the design's own floor-to-floor height is kept where it is left out
 */
export function ruledStory(design: Design, shape: Shape, deckDepthIn: number, hung: Hung, ceilingFt: number | undefined, ask: AirAsk): Omit<RuledStory, "wayBack" | "raisedIn"> {
  const {story: own, services: {sprinklerIn, lightIn, branchDepthIn}} = design;
  const {services, mains} = ruledServices(design, shape, Math.max(hung.edgeIn, hung.girderIn), ask);
  const flatBranchIn = shape.family === "double tee" ? 0 : branchDepthIn;
  const ductIn = mains > 0 ? USUAL_CLEARANCE.hangerIn + (feedersAbove(design, shape) ? services.mainDepthIn + branchDepthIn : Math.max(services.mainDepthIn, flatBranchIn)) : 0;
  if (own.ceiling === "none") {
    const hangsIn = Math.max(hung.edgeIn, hung.girderIn, ductIn, sprinklerIn);
    return {...heightFor(own, own.finishIn + deckDepthIn + hangsIn, ceilingFt), services, mains, plenumBy: undefined};
  }
  const needs: readonly (readonly [PlenumBy, number])[] = [["edge beam", hung.edgeIn], ["girder", hung.girderIn], ["main duct", ductIn], ["sprinklers and lights", sprinklerIn + lightIn]];
  const [plenumBy, plenumIn] = needs.reduce((most, one) => (one[1] > most[1] + 1e-9 ? one : most));
  const belowIn = Math.ceil(plenumIn - hung.edgeIn - 1e-9);
  const story: Design["story"] = belowIn > 0 ? {...own, ceiling: "below", ceilingDropIn: clampTo("story.ceilingDropIn", belowIn)} : {...own, ceiling: "flush"};
  return {...heightFor(story, own.finishIn + deckDepthIn + hung.edgeIn + Math.max(0, belowIn), ceilingFt), services, mains, plenumBy};
}

/** How the air goes back below a flat deck, which has no stems between which it could: through the plenum, or in a duct where there is no ceiling; undefined where the design's own way is one. */
export function ruledWayBack({air, story}: Pick<Design, "air" | "story">, shape: Shape): RuledStory["wayBack"] {
  return shape.family === "double tee" || air.way !== "stems" ? undefined : story.ceiling === "none" ? "trunk" : "plenum";
}

/** By how much a ceiling may be raised beyond what is wanted for the light at the back of the room, in, least first (our choice: a foot at most). */
export const RAISES_IN = [3, 6, 9, 12] as const;

/** Whether the back of the rooms looks gloomy by the rule of their depth, with the head of the glass higher by some inches. */
export function gloomyBack(design: Pick<Design, "bay" | "daylight">, stack: StoryStack, higherIn = 0): boolean {
  const depth = roomDepthLimit(design, stack, higherIn);
  return depth !== undefined && exceeds(depth.asked, depth.limit);
}

/** A story with the least height, in steps, that leaves the wanted clear height under all that its top takes. */
function heightFor(story: Design["story"], takenIn: number, wantedFt: number | undefined): Pick<RuledStory, "story" | "cut"> {
  if (wantedFt === undefined) return {story, cut: false};
  const neededFt = (Math.ceil((wantedFt * IN_PER_FT + takenIn) / STORY_STEP_IN - 1e-9) * STORY_STEP_IN) / IN_PER_FT;
  const floorToFloorFt = clampTo("story.floorToFloorFt", neededFt);
  return {story: {...story, floorToFloorFt}, cut: floorToFloorFt < neededFt};
}

function clampTo(path: "services.servedFt2" | "services.mainWidthIn" | "services.branchWidthIn" | "services.branchDepthIn" | "story.ceilingDropIn" | "story.floorToFloorFt", value: number): number {
  const {min, max} = fieldOf(path);
  return Math.min(max, Math.max(min, value));
}

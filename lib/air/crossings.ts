import type {Design} from "../design/design.js";
import type {Shape} from "../sections/shape.js";
import {clearUnderGirderIn, type StoryStack} from "../story/stack.js";
import type {FramePlan, GirderLine} from "./framePlan.js";
import type {AirZone} from "./zone.js";

/** How feeders get past a girder: over one on which the deck sits, under its foot, or through an opening in its web. */
export type CrossingWay = "over the girder" | "under the girder" | "through its web";

/** Feeders at a girder line that they have to pass. */
export interface GirderCrossing {
  /** Line between rows of bays, from 1. */
  readonly line: number;
  readonly how: CrossingWay;
  /** Height under the girder that a feeder may take: down to the ceiling, or to the minimum headroom where there is none, in; may be below 0. */
  readonly underIn: number;
  /** What a feeder takes there with the joint above it, in. */
  readonly neededIn: number;
}

/** Joint between a girder's foot and a feeder under it, in (common practice). */
export const UNDER_GIRDER_JOINT_IN = 1;

/** The girders between the rows of bays that a main serves. */
export function girdersBetween({girders}: Pick<FramePlan, "girders">, {firstRow, rows}: Pick<AirZone, "firstRow" | "rows">): GirderLine[] {
  return girders.filter(({line}) => line > firstRow && line < firstRow + rows);
}

/**
 * How the feeders of a main that serves several rows of bays pass the girders between them. Between stems they pass over
 * a girder on which the deck sits, but not over one that rises beside it: under its foot if ceiling or headroom leave
 * room, else through an opening in its web, which is the engineer's to allow. Below a flat deck they can only pass under.
 */
export function girderCrossings(design: Pick<Design, "story" | "services">, shape: Shape, stack: StoryStack, frame: FramePlan, zone: AirZone, headroomIn: number): GirderCrossing[] {
  const tee = shape.family === "double tee";
  const neededIn = design.services.branchDepthIn + UNDER_GIRDER_JOINT_IN;
  const lowestIn = design.story.ceiling === "none" ? headroomIn : stack.ceilingHeightIn;
  return girdersBetween(frame, zone).map((girder) => {
    const underIn = clearUnderGirderIn(stack, {belowDeckIn: girder.belowIn}) - lowestIn;
    // Stryker disable next-line EqualityOperator: the two part in the tenth digit
    const under = underIn >= neededIn - 1e-9;
    const how: CrossingWay = tee && !girder.beside ? "over the girder" : under || !tee ? "under the girder" : "through its web";
    return {line: girder.line, how, underIn, neededIn};
  });
}

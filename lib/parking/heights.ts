import type {Design} from "../design/design.js";
import {IN_PER_FT} from "../units.js";
import {clearUnderGirderIn, type StoryStack} from "../story/stack.js";

/** What hangs over the cars. */
export type Overhead = "deck" | "ceiling" | "edge beam" | "girder" | "pipes" | "ducts" | "signs";

/** Clear height in one place of the section. */
export interface ClearPlace {
  readonly over: Overhead;
  readonly words: string;
  /** Above the parked floor, in; below 0 where nothing is left. */
  readonly clearIn: number;
  /** Whether every car passes under it, or only one that parks there: the heads of some stalls. */
  readonly onTheWay: boolean;
}

/** What hangs below the deck on a level of parking, in. */
export interface Hanging {
  readonly girder: {readonly belowDeckIn: number} | undefined;
  /** Ducts with their hangers; undefined where there are none, or they are above a ceiling. */
  readonly ductsIn: number | undefined;
}

/** Heights over cars, and what they let pass. */
export interface Heights {
  readonly places: readonly ClearPlace[];
  /** The lowest of all, and the lowest on the way of every car. */
  readonly least: ClearPlace;
  readonly leastOnWay: ClearPlace;
  /** Height over a van's whole way and over the best stalls for it, in. */
  readonly vanIn: number;
}

/** Whether there is a level of cars with a floor of this design over it: not where cars park only on the one floor that there is. */
export function coveredCars({parking, bay}: Pick<Design, "parking" | "bay">): boolean {
  return parking.place === "below" || parking.place === "both" || (parking.place === "on" && bay.floors > 1);
}

/**
 * Clear heights above the parked floor, by place. Cars on the ground have no ceiling over them, whatever hangs below the
 * floors above; those on the floors have the design's. A ledge that reaches no farther from the wall than the stalls' heads
 * hangs over no car; under a girder cars drive from one bay to the next.
 */
export function heightsOf(design: Design, story: StoryStack, {girder, ductsIn}: Hanging): Heights {
  const {parking, services} = design;
  const open = parking.place === "below" || design.story.ceiling === "none";
  const underIn = open ? story.clearUnderDeckIn : story.ceilingHeightIn;
  const places: ClearPlace[] = [{over: open ? "deck" : "ceiling", words: open ? "the deck" : "the ceiling", clearIn: underIn, onTheWay: true}];
  const add = (over: Overhead, words: string, clearIn: number, onTheWay = true) => places.push({over, words, clearIn, onTheWay});
  const ledge = open && ledgeOverHeads(design);
  if (ledge) add("edge beam", "the edge beam's ledge", story.clearUnderLedgeIn, false);
  if (girder) add("girder", "the girder", Math.min(underIn, clearUnderGirderIn(story, girder)));
  if (open && services.sprinklerIn > 0) add("pipes", "the sprinkler pipes", underIn - services.sprinklerIn);
  if (open && ductsIn !== undefined && parking.place !== "below") add("ducts", "the ducts", underIn - ductsIn);
  if (parking.signDropIn > 0) add("signs", "signs and lights", underIn - parking.signDropIn);
  const leastOnWay = lowest(places.filter(({onTheWay}) => onTheWay));
  // A van parks where no ledge hangs over the head of its stall, if there is such a row.
  const vanIn = Math.min(leastOnWay.clearIn, ledge && !hasFreeHeads(design) ? story.clearUnderLedgeIn : Infinity);
  return {places, least: lowest(places), leastOnWay, vanIn};
}

function lowest(places: readonly ClearPlace[]): ClearPlace {
  return places.reduce((low, one) => (one.clearIn < low.clearIn ? one : low));
}

/** Whether the edge beam's ledge reaches over the heads of stalls, or over where rows that run across begin. */
function ledgeOverHeads({edgeBeam, edgeBeam: {ledgeProjectionIn}, parking}: Design): boolean {
  return edgeBeam.kind === "ledge" && ledgeProjectionIn > (parking.rows === "along" ? parking.setbackIn : parking.endFt * IN_PER_FT);
}

/** Whether some stalls have no edge beam over their heads: those of rows across, and those at a line between two bays. */
function hasFreeHeads({parking, bay}: Design): boolean {
  return parking.rows === "across" || bay.baysAcross > parking.baysPerModule;
}

import type {Design} from "../design/design.js";
import {IN_PER_FT} from "../units.js";
import type {HungBox} from "../air/casing.js";
import {clearUnderGirderIn, type StoryStack} from "../story/stack.js";
import type {LevelPlan} from "./level.js";
import type {ModuleRow, ParkingModule} from "./modules.js";

/** What hangs over the cars. */
export type Overhead = "deck" | "ceiling" | "edge beam" | "girder" | "pipes" | "pipes past the box" | "ducts" | "box" | "signs";

/** Clear height in one place of the section. */
export interface ClearPlace {
  readonly over: Overhead;
  readonly words: string;
  /** Above the parked floor, in; below 0 where nothing is left. */
  readonly clearIn: number;
  /** Whether every car passes under it, or only one that parks there: the heads of some stalls. */
  readonly onTheWay: boolean;
  /** Whether neither cars nor those who walk to them are beneath it: behind the heads of stalls, in bays without any. */
  readonly overNone?: boolean;
}

/** What hangs below the deck on a level of parking, in. */
export interface Hanging {
  readonly girder: {readonly belowDeckIn: number} | undefined;
  /** Ducts with their hangers; undefined where there are none. */
  readonly ductsIn: number | undefined;
  /** What the ducts are closed in, box or strip of ceiling; none where they hang open or above the ceiling. */
  readonly boxes: readonly HungBox[];
  readonly boxWords: "box" | "strip";
  /** Height under sprinkler pipes where they pass such a box; undefined where they do not. */
  readonly pipesPastIn: number | undefined;
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
 * floors above; those on the floors have the design's, and the boxes or strips that hang lower around ducts, over aisles or
 * over stalls. A ledge that reaches no farther from the wall than the stalls' heads
 * hangs over no car; under a girder cars drive from one bay to the next.
 */
export function heightsOf(design: Design, story: StoryStack, {modules}: Pick<LevelPlan, "modules">, {girder, ductsIn, boxes, boxWords, pipesPastIn}: Hanging): Heights {
  const {parking, services} = design;
  const open = parking.place === "below" || design.story.ceiling === "none";
  const underIn = open ? story.clearUnderDeckIn : story.ceilingHeightIn;
  const places: ClearPlace[] = [{over: open ? "deck" : "ceiling", words: open ? "the deck" : "the ceiling", clearIn: underIn, onTheWay: true}];
  const add = (over: Overhead, words: string, clearIn: number, onTheWay = true, overNone = false) => places.push({over, words, clearIn, onTheWay, ...(overNone ? {overNone} : {})});
  const ledge = open && ledgeOverHeads(design);
  if (ledge) add("edge beam", "the edge beam's ledge", story.clearUnderLedgeIn, false);
  if (girder) add("girder", "the girder", Math.min(underIn, clearUnderGirderIn(story, girder)));
  if (open && services.sprinklerIn > 0) add("pipes", "the sprinkler pipes", underIn - services.sprinklerIn);
  const hung = parking.place === "below" ? [] : boxes;
  // A box that is stated too shallow leaves the ducts the lower of the two.
  if (open && ductsIn !== undefined && parking.place !== "below" && hung.every(({footIn}) => underIn - ductsIn < footIn)) add("ducts", "the ducts", underIn - ductsIn);
  for (const box of oncePerPlace(hung, (one) => boxOver(design, modules, one))) {
    add("box", `the ${boxWords === "box" ? "box around the ducts" : "lowered strip of ceiling"}${BOX_OVER[box.over]}`, box.footIn, box.over === "aisle" || box.over === "between", box.over === "none");
  }
  if (hung.length > 0 && pipesPastIn !== undefined) add("pipes past the box", "the sprinkler pipes that pass under the box", pipesPastIn);
  if (parking.signDropIn > 0) add("signs", "signs and lights", underIn - parking.signDropIn);
  const leastOnWay = lowest(places.filter(({onTheWay}) => onTheWay));
  return {places, least: lowest(places.filter(({overNone}) => !overNone)), leastOnWay, vanIn: Math.min(leastOnWay.clearIn, bestStallsIn(design, story, modules, ledge, hung))};
}

/** What a box is over: an aisle, stalls between two aisles, past which cars drive at the rows' ends, stalls alone, or no car. */
type BoxOver = "aisle" | "between" | "stalls" | "none";

const BOX_OVER: Readonly<Record<BoxOver, string>> = {
  "aisle": " over the aisle", "between": " between two aisles", "stalls": " over the heads of stalls", "none": " over no stall",
};

function boxOver({parking}: Pick<Design, "parking">, modules: readonly ParkingModule[], {y0In, y1In}: HungBox): BoxOver {
  // Aisles that run across the building pass under all that runs along it.
  if (parking.rows === "across") return "aisle";
  if (modules.some(({aisle}) => overlaps(y0In, y1In, aisle.fromIn, aisle.toIn))) return "aisle";
  const aisles = modules.map(({aisle}) => aisle);
  if (overlaps(y0In, y1In, Math.min(...aisles.map(({toIn}) => toIn)), Math.max(...aisles.map(({fromIn}) => fromIn)))) return "between";
  return modules.some(({rows}) => rows.some((row) => overRow(modules, row, y0In, y1In))) ? "stalls" : "none";
}

// Stryker disable next-line EqualityOperator: the two part in the sixth digit
const overlaps = (from: number, to: number, otherFrom: number, otherTo: number): boolean => Math.min(to, otherTo) - Math.max(from, otherFrom) > 1e-6;

/** Whether something hangs over a row or its half of the aisle, where it is on the way besides. */
function overRow(modules: readonly ParkingModule[], {module, headIn}: ModuleRow, y0In: number, y1In: number): boolean {
  const {aisle} = modules[module] as ParkingModule;
  const middleIn = (aisle.fromIn + aisle.toIn) / 2;
  return overlaps(y0In, y1In, Math.min(headIn, middleIn), Math.max(headIn, middleIn));
}

/** Boxes with what they are over, the lowest of each kind. */
function oncePerPlace(boxes: readonly HungBox[], overOf: (box: HungBox) => BoxOver): (HungBox & {readonly over: BoxOver})[] {
  const found = new Map<BoxOver, HungBox & {readonly over: BoxOver}>();
  for (const box of boxes) {
    const over = overOf(box);
    const known = found.get(over);
    // Stryker disable next-line EqualityOperator: of two as low one is told
    if (!known || box.footIn < known.footIn) found.set(over, {...box, over});
  }
  return [...found.values()];
}

/** Height over the row of stalls that has most: a van parks where neither ledge nor box hangs over its stall, if there is such a row. */
function bestStallsIn(design: Design, story: StoryStack, modules: readonly ParkingModule[], ledge: boolean, boxes: readonly HungBox[]): number {
  if (design.parking.rows === "across") return Infinity;
  const rows = modules.flatMap((module) => module.rows);
  if (rows.length === 0) return ledge && !hasFreeHeads(design) ? story.clearUnderLedgeIn : Infinity;
  return Math.max(...rows.map((row) => Math.min(
    ledge && row.head === "wall" ? story.clearUnderLedgeIn : Infinity,
    ...boxes.filter(({y0In, y1In}) => overRow(modules, row, y0In, y1In)).map(({footIn}) => footIn),
  )));
}

function lowest(places: readonly ClearPlace[]): ClearPlace {
  // Stryker disable next-line EqualityOperator: of two as low the first is told, or the last
  return places.reduce((low, one) => (one.clearIn < low.clearIn ? one : low));
}

/** Whether the edge beam's ledge reaches over the heads of stalls, or over where rows that run across begin. */
function ledgeOverHeads({edgeBeam, edgeBeam: {ledgeProjectionIn}, parking}: Design): boolean {
  return edgeBeam.kind === "ledge" && ledgeProjectionIn > (parking.rows === "along" ? parking.setbackIn : parking.endFt * IN_PER_FT);
}

/** Whether rows along the edges could have heads at a line between two bays, where no edge beam is over them. */
function hasFreeHeads({parking, bay}: Design): boolean {
  return bay.baysAcross > parking.baysPerModule;
}

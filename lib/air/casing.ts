import type {Design} from "../design/design.js";
import type {FramePlan} from "./framePlan.js";
import {BESIDE_CONCRETE_IN} from "./trunk.js";
import {otherMains, type AirZone} from "./zone.js";

/** A box or strip across the building, in from the first line of bearings, and the height under it. */
export interface HungBox {
  readonly y0In: number;
  readonly y1In: number;
  readonly footIn: number;
}

/** A box around the ducts, or a strip of ceiling that hangs lower than the rest. */
export interface Casing {
  readonly kind: "box" | "strip";
  /** Outside width, and drop below the ceiling, or below the deck where there is none, in. */
  readonly widthIn: number;
  readonly dropIn: number;
  /** What the ducts need of both. */
  readonly neededWidthIn: number;
  readonly neededDropIn: number;
  /** Across the building, in, and finished floor to its underside. */
  readonly y0In: number;
  readonly y1In: number;
  readonly footIn: number;
}

/** Board and frame of a box or a strip, in (common practice). */
export const BOARD_IN = 1;
/** Air between a duct and the board beside it, in: half of what a duct keeps from concrete is left outside the board. */
const SIDE_IN = BESIDE_CONCRETE_IN / 2 - BOARD_IN;

/**
 * The box or strip of a main that does not stay in the plenum. A box holds the ducts with their hangers alone; a strip
 * of ceiling has pipes and lights above it as the rest of the ceiling has. Where the plenum is deep enough neither drops.
 *
 * @param at - the ducts across the building, in
 * @param heights - from the deck down to the ducts' underside; pipes and lights below them; from the deck to the
 *   ceiling, 0 where there is none; finished floor to that ceiling or deck; all in
 */
export function casing(
  {air}: Pick<Design, "air">, at: {readonly y0In: number; readonly y1In: number}, heights: {hungIn: number; belowDuctsIn: number; plenumIn: number; undersideIn: number},
): Casing | undefined {
  if (air.run === "plenum") return undefined;
  const kind = air.run;
  const {hungIn, belowDuctsIn, plenumIn, undersideIn} = heights;
  const neededWidthIn = at.y1In - at.y0In + 2 * (SIDE_IN + BOARD_IN);
  const neededDropIn = Math.max(0, hungIn + (kind === "strip" ? belowDuctsIn : 0) + BOARD_IN - plenumIn);
  const stated = air.casing === "stated";
  const widthIn = stated ? air.casingWidthIn : neededWidthIn;
  const dropIn = stated ? air.casingDropIn : neededDropIn;
  const middleIn = (at.y0In + at.y1In) / 2;
  return {kind, widthIn, dropIn, neededWidthIn, neededDropIn, y0In: middleIn - widthIn / 2, y1In: middleIn + widthIn / 2, footIn: undersideIn - dropIn};
}

/** Main, its zone and the boxes around it, as the floor's ducts have them. */
interface BoxedDucts {
  readonly casing: Casing | undefined;
  readonly plan: {readonly zone: AirZone; readonly frame: Pick<FramePlan, "widthIn">};
}

/**
 * Boxes and strips that hang below the ceiling of a floor, of all its mains: across the building each once, wherever it
 * begins along it. Another main lies in its own rows as the first does in its own, or as its mirror image where that lies there.
 */
export function boxesAcross(design: Pick<Design, "bay">, ducts: BoxedDucts | undefined): HungBox[] {
  const {casing: one, plan} = ducts ?? {};
  if (!one || !plan || one.dropIn <= 0) return [];
  const {zone, frame} = plan;
  const first = {y0In: one.y0In, y1In: one.y1In, footIn: one.footIn};
  const mirrored = {...first, y0In: frame.widthIn - one.y1In, y1In: frame.widthIn - one.y0In};
  const groups = new Map(otherMains(design, zone).filter(({y0In}) => y0In !== zone.y0In).map(({y0In, y1In}) => [y0In, {y0In, y1In}]));
  return [first, ...[...groups.values()].map((group): HungBox => {
    if (mirrored.y0In >= group.y0In && mirrored.y1In <= group.y1In) return mirrored;
    const byIn = group.y0In - zone.y0In;
    return {...first, y0In: first.y0In + byIn, y1In: first.y1In + byIn};
  })];
}

/**
 * Finished floor to the underside of sprinkler pipes where nothing hides them, in: below the deck, or where they pass a box around
 * the ducts from one side of the main to the other. A strip has them above it, and from a main along the ledge they keep away.
 */
export function pipesUnderIn(casing: Casing | undefined, {alongLedge, underDeckIn, sprinklerIn}: {alongLedge: boolean; underDeckIn: number; sprinklerIn: number}): number {
  const pass = casing?.kind === "box" && !alongLedge;
  return (pass ? Math.min(casing.footIn, underDeckIn) : underDeckIn) - sprinklerIn;
}

/**
 * Boxes and strips that hang below the ceiling of a floor, for the light that they take: that of the first main, and the
 * same at the other side of the building where another main serves that side. Further ones between them hang farther
 * from the windows and are left out.
 */
export function hungBoxes(ducts: {readonly casing: Casing | undefined; readonly plan: {readonly zone: Pick<AirZone, "y0In" | "y1In">; readonly frame: Pick<FramePlan, "widthIn">}} | undefined): HungBox[] {
  const {casing: one, plan} = ducts ?? {};
  if (!one || !plan || one.dropIn <= 0) return [];
  const {zone, frame} = plan;
  const first = {y0In: one.y0In, y1In: one.y1In, footIn: one.footIn};
  // A main that serves the whole width does too.
  // Stryker disable next-line EqualityOperator: the two part in the sixth digit
  const middle = Math.abs(zone.y0In + zone.y1In - frame.widthIn) < 1e-6;
  return middle ? [first] : [first, {y0In: frame.widthIn - one.y1In, y1In: frame.widthIn - one.y0In, footIn: one.footIn}];
}

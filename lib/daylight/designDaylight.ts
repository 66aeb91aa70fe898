import type {HungBox} from "../air/casing.js";
import {edgeBeamLeverIn} from "../beams/deckLoad.js";
import {outOfRange, type Check} from "../checks.js";
import type {Design} from "../design/design.js";
import {clearUnderGirderIn, type StoryStack} from "../story/stack.js";
import {inches} from "../units.js";
import {daylight, type DaylightResult} from "./daylight.js";
import {USUAL_GLAZING, WORK_PLANE_IN, type DaylightInput, type HangingBeam, type WindowBand} from "./input.js";
import {depthLimit, type DepthLimit} from "./rules.js";
import {openingOf} from "./schemeViews.js";

/** A room between window walls, ft. */
export interface LitRoom {
  readonly depthFt: number;
  readonly widthFt: number;
}

/** Daylight of a design's floor. */
export interface DesignDaylight {
  readonly input: DaylightInput;
  readonly result: DaylightResult;
  /** The checks of the result that the edge beam does not make as well; none where no one works by a window. */
  readonly checks: readonly Check[];
  /** Whether people work here: cars and stores need no daylight. */
  readonly wanted: boolean;
}

/** Beyond this depth the middle of a floor is dark whatever its windows are, and the computation stops, ft. */
export const GREATEST_DEPTH_FT = 300;
const GREATEST_WIDTH_FT = 2000;

/**
 * The room whose daylight is looked at. With windows in both long walls it is the whole width of the building, open from
 * window to window; with windows on one side it ends at the first line of beams.
 */
export function daylightRoom({bay, daylight}: Pick<Design, "bay" | "daylight">): LitRoom {
  return {depthFt: bay.spanFt * (daylight.sides === "two" ? bay.baysAcross : 1), widthFt: bay.beamSpanFt * bay.baysAlong};
}

/** The window band of a design: as long as the long side, from the upstand's frame to the head's. */
export function windowOf(design: Pick<Design, "daylight">, stack: StoryStack, widthFt: number): WindowBand {
  const {frameShare, transmittanceShare} = design.daylight;
  return {...openingOf(design, stack), widthFt, frameShare, transmittanceShare, maintenanceShare: USUAL_GLAZING.maintenanceShare};
}

/** Of a girder, what its shadow depends on: its width, and how far it hangs below the deck, in. */
type Girder = {readonly member: {readonly shape: {readonly widthIn: number}}; readonly belowDeckIn: number};

/**
 * The girders that stand in the way of the sky: with windows in both long walls, one on each line between two bays, where
 * its foot hangs lower than the head of the glass. They lie alike from either wall. A room that ends at the first line has none.
 */
export function hangingGirders({bay, daylight}: Design, stack: StoryStack, girder: Girder | undefined): HangingBeam[] {
  if (!girder || daylight.sides === "one") return [];
  const footIn = Math.max(0, clearUnderGirderIn(stack, girder));
  if (footIn >= stack.glassHeadIn) return [];
  return Array.from({length: bay.baysAcross - 1}, (_, i) => ({awayIn: Math.max(0, inches((i + 1) * bay.spanFt) - girder.member.shape.widthIn / 2), footIn}));
}

/**
 * Boxes as they stand before each of two opposite windows, nearest first: those that hang lower than the head of the
 * glass, within the room. Each is taken by its face toward the window.
 *
 * @param wallIn - window walls' inner faces, across the building, in
 */
export function boxesBefore(boxes: readonly HungBox[], [nearIn, farIn]: readonly [number, number], headIn: number, depthIn: number): {readonly window: HangingBeam[]; readonly opposite: HangingBeam[]} {
  const low = boxes.filter(({footIn}) => footIn < headIn);
  const beams = (away: (box: HungBox) => number) => low
    .map((box) => ({awayIn: Math.max(0, away(box)), footIn: Math.max(0, box.footIn)}))
    .filter(({awayIn}) => awayIn < depthIn)
    .sort((a, b) => a.awayIn - b.awayIn);
  return {window: beams(({y0In}) => y0In - nearIn), opposite: beams(({y1In}) => farIn - y1In)};
}

/**
 * What the daylight of a design is computed from; undefined where there is no glass, or no room for it to light.
 *
 * @param room - {@link daylightRoom} if left out
 * @param beams - what hangs before the window, such as {@link hangingGirders}; none if left out
 * @param opposite - the same before the window of the other long side, seen from there
 * @throws InputError if a stated room is not possible
 */
export function daylightInput(design: Pick<Design, "bay" | "daylight">, stack: StoryStack, room: LitRoom = daylightRoom(design), beams: readonly HangingBeam[] = [], opposite: readonly HangingBeam[] = beams): DaylightInput | undefined {
  if (!hasGlass(stack)) return undefined;
  const {depthFt, widthFt} = within(room);
  const behind = (beams: readonly HangingBeam[]): WindowBand => {
    const band = windowOf(design, stack, widthFt);
    return beams.length > 0 ? {...band, beams} : band;
  };
  const window = behind(beams);
  const {sides, floorShare, wallShare, ceilingShare} = design.daylight;
  return {
    depthFt, widthFt, ceilingIn: stack.ceilingHeightIn, window,
    // Windows before which the same hangs are alike.
    ...(sides === "two" ? {opposite: opposite === beams ? window : behind(opposite)} : {}),
    reflectances: {floorShare, wallShare, ceilingShare},
  };
}

/** Whether there is glass, and a room for it to light. */
function hasGlass({glassIn, ceilingHeightIn, glassHeadIn}: StoryStack): boolean {
  return glassIn > 0 && ceilingHeightIn > WORK_PLANE_IN && glassHeadIn >= 1;
}

/** A room as far as the computation goes. */
function within({depthFt, widthFt}: LitRoom): LitRoom {
  return {depthFt: Math.min(depthFt, GREATEST_DEPTH_FT), widthFt: Math.min(widthFt, GREATEST_WIDTH_FT)};
}

/**
 * The rule of the depth of a design's room, which knows nothing of what hangs before its windows; undefined where there is
 * no glass.
 *
 * @param higherIn - by how much ceiling and head of the glass are higher than the story has them, in
 */
export function roomDepthLimit(design: Pick<Design, "bay" | "daylight">, stack: StoryStack, higherIn = 0): DepthLimit | undefined {
  if (!hasGlass(stack)) return undefined;
  const window = {headIn: stack.glassHeadIn + higherIn};
  return depthLimit({
    ...within(daylightRoom(design)), ceilingIn: stack.ceilingHeightIn + higherIn, reflectances: design.daylight,
    window, opposite: design.daylight.sides === "two" ? window : undefined,
  });
}

/**
 * Daylight over the floor's depth at the middle of the long side; undefined where there is no glass.
 *
 * @param wanted - whether people work here; without, nothing is checked
 * @param girder - what hangs between two bays, if anything
 * @param boxes - boxes around ducts, and strips of ceiling that hang lower than the rest
 */
export function designDaylight(design: Design, stack: StoryStack, wanted = true, room: LitRoom = daylightRoom(design), girder?: Girder, boxes: readonly HungBox[] = []): DesignDaylight | undefined {
  const girders = hangingGirders(design, stack, girder);
  const faceIn = design.edgeBeam.webWidthIn / 2 - edgeBeamLeverIn(design.edgeBeam);
  const {window, opposite} = boxesBefore(boxes, [faceIn, inches(design.bay.spanFt * design.bay.baysAcross) - faceIn], stack.glassHeadIn, inches(room.depthFt));
  const nearest = (beams: readonly HangingBeam[]) => (beams.length === 0 ? girders : [...girders, ...beams].sort((a, b) => a.awayIn - b.awayIn));
  const input = daylightInput(design, stack, room, nearest(window), nearest(opposite));
  if (!input) return undefined;
  const result = daylight(input);
  const deep = room.depthFt > GREATEST_DEPTH_FT ? [outOfRange({
    id: "daylight depth", label: "Depth of the floor for daylight", unit: "ft", clause: "range of this method",
    message: "Daylight is computed to this depth; farther in, it is dark.",
  }, room.depthFt, GREATEST_DEPTH_FT)] : [];
  // The upstand is checked as a part of the edge beam.
  return {input, result, wanted, checks: wanted ? [...result.checks.filter(({id}) => id !== "upstand"), ...deep] : []};
}

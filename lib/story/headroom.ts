import {atLeast, type Check} from "../checks.js";
import type {Design} from "../design/design.js";
import type {FloorLoads} from "../loads/floorLoads.js";
import {LEAST_CEILING_IN, LEAST_HEADROOM_IN, clearUnderGirderIn, written, type LeastHeight, type StoryStack} from "./stack.js";

/** Minimum clear height where cars drive and their people walk, in: 7 ft (IBC 2021 406.2.2). */
export const LEAST_PARKING_IN = 84;
/** Minimum ceiling height of a storage room, in: 7 ft (IBC 2021 1208.2). */
export const LEAST_STORAGE_IN = 84;

/**
 * Least heights by the floor's use: of the room to its ceiling, and under a girder in its midst, whose foot is a low
 * ceiling to those below it (IBC 2021 1208.2; its exception for beams is for one- and two-family dwellings); and under an edge
 * beam, and pipes and ducts, which only jut out of wall and deck (1003.3.1). Where nothing but cars stands both are 406.2.2.
 */
export function leastUnderBeams({rooms}: Pick<FloorLoads, "rooms">): {readonly room: LeastHeight; readonly edge: LeastHeight} {
  const only = (...groups: string[]) => rooms.every(({occupancy}) => groups.includes(occupancy.group));
  if (only("Parking")) {
    const least = {leastIn: LEAST_PARKING_IN, clause: "IBC 2021 406.2.2"};
    return {room: least, edge: least};
  }
  return {
    room: {leastIn: only("Storage", "Parking") ? LEAST_STORAGE_IN : LEAST_CEILING_IN, clause: "IBC 2021 1208.2"},
    edge: {leastIn: LEAST_HEADROOM_IN, clause: "IBC 2021 1003.3.1"},
  };
}

/** How far a girder may hang below the deck, in, by the room's least height and the ceiling; below 0 where the deck is too low itself. */
export function girderMayHangIn({story: {ceiling}}: Pick<Design, "story">, loads: Pick<FloorLoads, "rooms">, stack: StoryStack): number {
  return stack.clearUnderDeckIn - Math.max(leastUnderBeams(loads).room.leastIn, ceiling === "none" ? 0 : stack.ceilingHeightIn);
}

/**
 * Height under what hangs below the deck: the girder's foot against the code's least and against the ceiling, and where
 * there is no ceiling the edge beam's foot. A ceiling is never higher than the edge beam's foot, and is checked itself.
 *
 * @param girder - undefined where the floor has one bay across
 */
export function headroomChecks(
  {story: {ceiling}, girder: {kind: girderKind}, edgeBeam: {kind: edgeKind}}: Pick<Design, "story" | "girder" | "edgeBeam">, loads: Pick<FloorLoads, "rooms">, stack: StoryStack, girder: {readonly belowDeckIn: number} | undefined,
): Check[] {
  const least = leastUnderBeams(loads);
  const checks: Check[] = [];
  if (girder) {
    const underIn = clearUnderGirderIn(stack, girder);
    const shallower = `${girderKind === "rectangle" ? "a girder beside the deck instead of below it, " : ""}a shallower one`;
    checks.push(atLeast({
      id: "girder headroom", label: "Height under the girder", unit: "in", clause: least.room.clause, meetingIsEnough: true,
      holds: "People and what they move pass under the girder.",
      fails: () => `The girder's foot and the height that the room needs collide by ${written(least.room.leastIn - underIn)} in: ${shallower}, or a higher story.`,
    }, underIn, least.room.leastIn));
    if (ceiling !== "none") {
      checks.push(atLeast({
        id: "girder ceiling", label: "Height under the girder, against the ceiling", unit: "in", clause: "geometry", meetingIsEnough: true,
        holds: "The girder stays above the ceiling.",
        fails: () => `The girder's foot hangs ${written(stack.ceilingHeightIn - underIn)} in below the ceiling: a lower ceiling, or ${shallower}.`,
      }, underIn, stack.ceilingHeightIn));
    }
  }
  if (ceiling === "none") {
    checks.push(atLeast({
      id: "edge beam headroom", label: "Height under the edge beam", unit: "in", clause: least.edge.clause, meetingIsEnough: true,
      holds: "A head passes under the edge beam.",
      fails: () => `The edge beam's foot and a head below it collide by ${written(least.edge.leastIn - stack.clearUnderLedgeIn)} in: ${edgeKind === "below" ? "a beam beside the deck, columns closer together" : "a shallower ledge"}, or a higher story.`,
    }, stack.clearUnderLedgeIn, least.edge.leastIn));
  }
  return checks;
}

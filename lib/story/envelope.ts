import {requireNumber} from "../check.js";
import type {Design} from "../design/design.js";
import {feet} from "../units.js";
import type {StoryStack} from "./stack.js";

/** What a building of several such stories encloses. */
export interface Envelope {
  readonly stories: number;
  readonly lengthFt: number;
  readonly widthFt: number;
  /** Lowest floor to the roof's finished level; a parapet comes on top, ft. */
  readonly heightFt: number;
  readonly floorFt2: number;
  readonly wallFt2: number;
  readonly roofFt2: number;
  readonly volumeFt3: number;
  /** Wall for each square foot of floor, and volume over floor area, ft. */
  readonly wallPerFloor: number;
  readonly volumePerFloorFt: number;
  /** Wall that one inch of story adds over the whole building, ft2. */
  readonly wallPerInchFt2: number;
  /** Glass in the window bands of the long sides over all wall, 0 to 1. */
  readonly glassShare: number;
}

/**
 * Height, volume and wall of a building whose stories are all alike: the floors that the design's columns carry, and one
 * story more under the roof, whose structure is taken as deep as a floor's. Walls are counted as plain rectangles.
 *
 * @param stories - 1 to 60; one more than the floors carried if left out
 * @throws InputError if the number of stories is out of range
 */
export function buildingEnvelope({bay, daylight}: Design, stack: StoryStack, stories = bay.floors + 1): Envelope {
  requireNumber(stories, {path: "stories", label: "stories", unit: "", min: 1, max: 60, integer: true});
  const lengthFt = bay.beamSpanFt * bay.baysAlong;
  const widthFt = bay.spanFt * bay.baysAcross;
  const heightFt = stories * feet(stack.floorToFloorIn);
  const perimeterFt = 2 * (lengthFt + widthFt);
  const roofFt2 = lengthFt * widthFt;
  const floorFt2 = stories * roofFt2;
  const wallFt2 = perimeterFt * heightFt;
  const glassFt2 = (daylight.sides === "two" ? 2 : 1) * lengthFt * stories * feet(Math.max(0, stack.glassIn));
  return {
    stories, lengthFt, widthFt, heightFt, floorFt2, wallFt2, roofFt2,
    volumeFt3: roofFt2 * heightFt,
    wallPerFloor: wallFt2 / floorFt2,
    volumePerFloorFt: heightFt / stories,
    wallPerInchFt2: (perimeterFt * stories) / 12,
    glassShare: glassFt2 / wallFt2,
  };
}

import {requireNumber} from "../check.js";
import type {Design} from "../design/design.js";
import {countsShortSides, hasParapet} from "../design/used.js";
import {feet} from "../units.js";
import {wallAreas, type WallAreas} from "../walls/areas.js";
import {wallStories, type WallPlanes} from "../walls/planes.js";
import {topLevel} from "../walls/topLevel.js";
import type {StoryStack} from "./stack.js";

/** What a building of several such stories encloses. */
export interface Envelope {
  readonly stories: number;
  readonly lengthFt: number;
  readonly widthFt: number;
  /** Lowest floor to the roof's finished level, where that falls its highest line; a parapet comes on top, ft. */
  readonly heightFt: number;
  readonly floorFt2: number;
  /** All four walls with their parapet. */
  readonly wallFt2: number;
  readonly parapetFt2: number;
  readonly roofFt2: number;
  readonly volumeFt3: number;
  /** Wall for each square foot of floor, and volume over floor area, ft. */
  readonly wallPerFloor: number;
  readonly volumePerFloorFt: number;
  /** Wall that one inch of story adds over the whole building, ft2. */
  readonly wallPerInchFt2: number;
  /** Glass over all wall, 0 to 1: in the window bands of the long sides, and in the short sides where these are counted. */
  readonly glassShare: number;
  /** Walls by kind; undefined where what closes the short sides is not counted. */
  readonly walls: WallAreas | undefined;
}

/** Stories that a design's envelope has: the floors carried and one more, which without a roof is left out where its walls are counted. */
export function envelopeStories(design: Design): number {
  return countsShortSides(design) ? wallStories(design) : design.bay.floors + 1;
}

/**
 * Height, volume and wall of a building whose stories are all alike: the floors that the design's columns carry, and one
 * story more under the roof. A roof of its own counts as deep as its deck, layers and fall make it; one that is given by two
 * loads is taken as deep as a floor. Where what closes the short sides is counted,
 * walls are measured to their outer faces, kind by kind; else they are plain rectangles on the outer column lines.
 *
 * @param stories - 1 to 60; those of the design if left out
 * @throws InputError if the number of stories is out of range
 */
export function buildingEnvelope(given: Design, stack: StoryStack, stories = envelopeStories(given)): Envelope {
  // A story may be compared with another height than its design's.
  const design = {...given, story: {...given.story, floorToFloorFt: feet(stack.floorToFloorIn)}};
  requireNumber(stories, {path: "stories", label: "stories", unit: "", min: 1, max: 60, integer: true});
  return envelopeWithin(design, stack, upTo(design, stack, stories), countsShortSides(design) ? wallAreas(design, stack, stories) : undefined);
}

/** The envelope of a design as it is, from its walls as they are known. */
export function knownEnvelope(design: Design, stack: StoryStack, walls: {readonly planes: WallPlanes; readonly areas: WallAreas}): Envelope {
  const stories = envelopeStories(design);
  const {planes} = walls;
  return envelopeWithin(design, stack, planes.stories === stories ? planes : upTo(design, stack, stories), countsShortSides(design) ? walls.areas : undefined);
}

/** How high a number of stories reach. */
function upTo(design: Design, {deckDepthIn, roof}: StoryStack, stories: number): Pick<WallPlanes, "stories" | "topIn"> {
  return {stories, topIn: topLevel(design, deckDepthIn, roof, stories).surfaceIn};
}

/** The envelope within given planes; walls by kind where what closes the short sides is counted. */
function envelopeWithin(design: Design, stack: StoryStack, {stories, topIn}: Pick<WallPlanes, "stories" | "topIn">, walls: WallAreas | undefined): Envelope {
  const {bay, daylight} = design;
  const lengthFt = bay.beamSpanFt * bay.baysAlong;
  const widthFt = bay.spanFt * bay.baysAcross;
  const heightFt = feet(topIn);
  const perimeterFt = 2 * (lengthFt + widthFt);
  const roofFt2 = lengthFt * widthFt;
  const floorFt2 = stories * roofFt2;
  const parapetFt2 = walls?.parapetFt2 ?? (hasParapet(design) ? perimeterFt * feet(design.walls.parapetIn) : 0);
  const wallFt2 = walls?.wallFt2 ?? perimeterFt * heightFt + parapetFt2;
  // Between its lines a falling roof rises straight from nothing to its whole rise: half of it in the mean.
  const volumeFt3 = roofFt2 * (heightFt - feet(stack.roof?.riseIn ?? 0) / 2);
  const glassFt2 = walls?.windowFt2 ?? (daylight.sides === "two" ? 2 : 1) * lengthFt * stories * feet(Math.max(0, stack.glassIn));
  return {
    stories, lengthFt, widthFt, heightFt, floorFt2, wallFt2, parapetFt2, roofFt2, walls,
    volumeFt3, wallPerFloor: wallFt2 / floorFt2, volumePerFloorFt: volumeFt3 / floorFt2,
    wallPerInchFt2: ((walls?.perimeterFt ?? perimeterFt) * stories) / 12,
    glassShare: glassFt2 / wallFt2,
  };
}

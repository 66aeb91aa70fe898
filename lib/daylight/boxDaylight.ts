import type {Design} from "../design/design.js";
import type {StoryStack} from "../story/stack.js";
import {designDaylight, type DesignDaylight} from "./designDaylight.js";
import {SEAT_DISTANCE_IN} from "./schemeViews.js";
import {SEATED_EYE_IN} from "./view.js";

/** What boxes around ducts take from the light and the view. */
export interface BoxDaylight {
  /** Average daylight factor without and with what hangs, %. */
  readonly withoutPercent: number;
  readonly withPercent: number;
  /** Height up to which a person sitting 10 ft from the window still sees glass, in: the head itself where nothing hides it. */
  readonly headSeenIn: number;
}

/**
 * Daylight with and without the boxes of a design; undefined where there is no glass.
 *
 * @param lit - the design's daylight, boxes and all
 * @param girder - what hangs between two bays, if anything
 */
export function boxDaylight(design: Design, stack: StoryStack, lit: DesignDaylight | undefined, girder: Parameters<typeof designDaylight>[4]): BoxDaylight | undefined {
  const without = designDaylight(design, stack, false, undefined, girder);
  if (!lit || !without) return undefined;
  const {revealIn, headIn} = lit.input.window;
  // The box's lower edge nearest to the window bounds what an eye beyond it sees.
  const seenIn = (lit.input.window.beams ?? [])
    .filter(({awayIn, footIn}) => awayIn < SEAT_DISTANCE_IN && footIn > SEATED_EYE_IN)
    .map(({awayIn, footIn}) => SEATED_EYE_IN + ((footIn - SEATED_EYE_IN) * (SEAT_DISTANCE_IN + revealIn)) / (SEAT_DISTANCE_IN - awayIn));
  return {withoutPercent: without.result.average.averagePercent, withPercent: lit.result.average.averagePercent, headSeenIn: Math.min(headIn, ...seenIn)};
}

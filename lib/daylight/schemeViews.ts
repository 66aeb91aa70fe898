import type {Design} from "../design/design.js";
import {edgeSchemes, type EdgeScheme} from "../story/schemes.js";
import {feet} from "../units.js";
import {WORK_PLANE_IN} from "./input.js";
import {SEATED_EYE_IN, nearestGroundFt, view, type Opening, type View} from "./view.js";

/** From the wall's inner face to a person who sits in the room's front part: 10 ft (our choice). */
export const SEAT_DISTANCE_IN = 120;

/** What a person who sits in the room sees under a way to carry the edge. */
export interface SchemeView {
  readonly scheme: EdgeScheme;
  readonly opening: Opening;
  readonly distanceIn: number;
  readonly eye: View;
  /** The same from the work plane. */
  readonly desk: View;
  /** Nearest ground that is seen from one story up, ft out from the glass; undefined where the sill hides it all. */
  readonly groundFromFt: number | undefined;
}

/** The opening of a design's window, as its frames leave it, under a head. */
export function openingOf({daylight}: Pick<Design, "daylight">, {glassSillIn, glassHeadIn}: {readonly glassSillIn: number; readonly glassHeadIn: number}): Opening {
  const {revealIn, obstructionDeg} = daylight;
  return {sillIn: glassSillIn, headIn: glassHeadIn, revealIn, ...(obstructionDeg > 0 ? {obstruction: {angleDeg: obstructionDeg}} : {})};
}

/**
 * Both ways to carry the edge with the degrees of view and of sky that they leave a seated eye.
 *
 * @param distanceIn - from the wall's inner face to the eye, in, 1 to 3,600
 * @throws InputError if the distance or the depth of the beam below is out of range
 */
export function schemeViews(design: Design, deckDepthIn: number, distanceIn = SEAT_DISTANCE_IN, belowIn?: number): readonly [SchemeView, SchemeView] {
  const [beside, below] = edgeSchemes(design, deckDepthIn, belowIn);
  const seen = (scheme: EdgeScheme): SchemeView => {
    const opening = openingOf(design, scheme.stack);
    const eye = {distanceIn, eyeIn: SEATED_EYE_IN};
    return {
      scheme, opening, distanceIn,
      eye: view(opening, eye),
      desk: view(opening, {distanceIn, eyeIn: WORK_PLANE_IN}),
      groundFromFt: nearestGroundFt(opening, eye, feet(scheme.stack.floorToFloorIn)),
    };
  };
  return [seen(beside), seen(below)];
}

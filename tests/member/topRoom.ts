import {isDeckFamily, type Shape} from "../../lib/sections/shape.js";
import {widthAt} from "../../lib/sections/polygon.js";

/** Concrete from a face to a bar, in: 3/4 in in deck members; 1 1/2 in and a #4 stirrup in beams. */
const TO_BAR_IN = {deck: 0.75, beam: 2} as const;
/** Clear distance of rows, and of bars in a row if they are not thicker, in (ACI 318-19 25.2.1, 25.2.2). */
const CLEAR_IN = 1;

/**
 * The most area of bars that fits in the top of a section, in2, counted bar by bar: rows of one size from the top down, the
 * first always, more while they lie above a height; of the sizes #3 to #11, each an eighth of an inch thicker, the best.
 */
export function topRoomIn2(shape: Shape, aboveIn: number): number {
  return Math.max(...[3, 4, 5, 6, 7, 8, 9, 10, 11].map((eighths) => {
    const diameterIn = eighths / 8;
    const coverIn = TO_BAR_IN[isDeckFamily(shape.family) ? "deck" : "beam"];
    let count = 0;
    for (let row = 0; ; row++) {
      const yIn = shape.depthIn - coverIn - diameterIn / 2 - row * (diameterIn + CLEAR_IN);
      if (row > 0 && yIn < aboveIn) break;
      count += barsAt(shape, yIn, diameterIn, coverIn);
    }
    return (count * Math.PI * diameterIn ** 2) / 4;
  }));
}

/** Bars side by side where the concrete is solid from a cover below them to a cover above; apart in stems and in webs between voids. */
function barsAt(shape: Shape, yIn: number, diameterIn: number, coverIn: number): number {
  const reachIn = diameterIn / 2 + coverIn - 1e-6;
  const solidIn = Math.min(...Array.from({length: 17}, (_, i) => widthAt(shape.rings, yIn - reachIn + (i / 8) * reachIn)));
  const parts = solidIn < shape.widthIn - 1e-6 && isDeckFamily(shape.family) ? shape.webCentersIn.length : 1;
  const roomIn = solidIn / parts - 2 * coverIn - diameterIn;
  return roomIn < -1e-6 ? 0 : parts * (1 + Math.floor(roomIn / (diameterIn + Math.max(CLEAR_IN, diameterIn)) + 1e-6));
}

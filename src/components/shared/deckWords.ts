import type {DeckMemberRow} from "../../lib/catalog.js";
import {parsePattern} from "../../lib/prestress/pattern.js";

const DIAMETERS: Readonly<Record<number, string>> = {6: "3/8", 7: "7/16", 8: "1/2", 9: "9/16", 10: "0.6"};
const PROFILES = {"straight": "straight", "one-point": "depressed at midspan", "two-point": "depressed at two points"} as const;

/** The diameter of a strand as the trade says it, in. */
export function diameterWords(sixteenths: number): string {
  return `${DIAMETERS[sixteenths] ?? `${sixteenths}/16`}\u00a0in`;
}

/** A strand pattern in words: `108-S` is "10 strands of 1/2 in, straight". */
export function patternWords(text: string): string {
  const {count, sixteenths, profile} = parsePattern(text);
  return `${count} strands of ${diameterWords(sixteenths)}, ${PROFILES[profile]}`;
}

/** The kinds of deck member, in the order of lists. */
export const KINDS: readonly (readonly [DeckMemberRow["use"], string])[] = [
  ["field-topped", "Double tees, field-topped"], ["pretopped", "Double tees, pretopped"], ["plank", "Planks and slabs"],
];

/** What each kind is, for the sentence that names the design's own. */
export const KIND_WORDS: Readonly<Record<DeckMemberRow["use"], string>> = {
  "field-topped": "a double tee with a thin flange, to be topped in the field",
  "pretopped": "a pretopped double tee, cast in the plant with its full flange",
  "plank": "a plank, which sits side by side with others like it and makes a flat soffit",
};

const DIMENSIONS: Readonly<Record<string, string>> = {
  widthIn: "width", depthIn: "depth", flangeIn: "flange thickness", stemBottomIn: "stem width at the soffit",
  stemTopIn: "stem width at the flange", stemSpacingIn: "between stem centers", chamferIn: "chamfer under the flange",
  voidCount: "voids", voidDiameterIn: "diameter of a void",
};

/** A dimension's name in words. */
export function dimensionWords(name: string): string {
  return DIMENSIONS[name] ?? name;
}

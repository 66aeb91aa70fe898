import type {Family} from "../../lib/sections/shape.js";

/** A family as a sentence begins with it. */
export function familyWords(family: Family): string {
  return {"double tee": "Double tee", "hollow core": "Plank", "flat slab": "Flat slab", "rectangular beam": "Beam", "L-beam": "L-beam", "inverted tee": "Inverted tee"}[family];
}

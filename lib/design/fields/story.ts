import {choice, group, number, since} from "../entries.js";

/** From floor to floor. */
export const storyFields = group("Story", {
  floorToFloorFt: number("floor to floor", "ft", 8, 30, 0.25, "From one finished floor to the next."),
  finishIn: number("floor finish", "in", 0, 8, 0.25, "Thickness of what lies on the structural floor."),
  ceiling: choice("ceiling", {"flush": "flush with the ledge", "below": "below the ledge", "head": "at the window's head", "none": "none"}, "Where the ceiling hangs, if there is one."),
  ceilingDropIn: number("ceiling below the ledge", "in", 0, 48, 1, "Space between the ledge and the underside of the ceiling when the ceiling hangs below it."),
  frameIn: since(3, 2, number("window frame", "in", 0, 8, 0.5, "Height of the frame below the head and above the sill of the glass.")),
});

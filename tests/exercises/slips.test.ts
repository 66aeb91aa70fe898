import {expect, test} from "vitest";
import {GUESSES} from "../../lib/exercises/guesses.js";
import {evaluate} from "../../lib/evaluate.js";
import {catalog, seed} from "../support/designs.js";

const library = () => evaluate(seed("branch-library"), catalog);

/** The slip of a guess whose words hold some others. */
function slip(name: keyof typeof GUESSES, words: string): number {
  const found = GUESSES[name].mistakes(library()).find(({message}) => message.includes(words));
  if (!found) throw new Error(`${name} has no slip with "${words}"`);
  return found.value;
}

test("the topping of least thickness everywhere is the floor's area times that thickness, and of the greatest likewise", () => {
  const {topping, design} = library();
  if (!topping) throw new Error("no topping");
  // One bay: 30 by 40 ft, an inch of it 1200 / 12 / 27 = 3.7037 yd3.
  const inch = (design.bay.beamSpanFt * design.bay.spanFt) / 12 / 27;
  expect(slip("toppingVolume", "minimum thickness")).toBeCloseTo(inch * topping.leastIn, 6);
  expect(slip("toppingVolume", "greatest thickness")).toBeCloseTo(inch * topping.greatestIn, 6);
  expect(slip("toppingVolume", "cubic feet")).toBeCloseTo(27 * topping.bayYd3, 9);
});

test("a beam's depth without its ledge, or without its upstand, is short by just that", () => {
  const {edgeBeam, design} = library();
  expect(slip("beamDepth", "hangs below")).toBe(edgeBeam.depthIn - design.edgeBeam.ledgeDepthIn);
  expect(slip("beamDepth", "upstand")).toBe(edgeBeam.depthIn - design.edgeBeam.upstandIn);
});

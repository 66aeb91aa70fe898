import {expect, test} from "vitest";
import {collisionsIn} from "./drawnDesigns.js";

test("no two parts share a place unless a check or an opening says so, in 2,000 random designs", () => {
  const {silent, saidBy} = collisionsIn(2000);
  expect(silent.slice(0, 3)).toEqual([]);
  // The designs are odd enough that ducts meet stems, beams and one another, and a check says it.
  expect(saidBy).toEqual(expect.arrayContaining(["opening", "trunk room", "branch duct width", "branch duct depth", "riser room"]));
});

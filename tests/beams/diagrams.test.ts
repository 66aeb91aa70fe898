import {expect, it} from "vitest";
import {uniformDiagrams} from "../../lib/beams/diagrams.js";

it("draws moment and shear of a uniform load with their known extremes", () => {
  const {momentKipFt, shearKip} = uniformDiagrams(8000, 30);
  expect(Math.max(...momentKipFt.map((point) => point.value))).toBeCloseTo(900, 9);
  expect(shearKip[0]?.value).toBeCloseTo(120, 9);
  expect(shearKip.at(-1)?.value).toBeCloseTo(-120, 9);
  expect(momentKipFt[0]?.value).toBe(0);
});

import {expect, it} from "vitest";
import {alongPointLoads, uniformDiagrams} from "../../lib/beams/diagrams.js";
import {pointLoadDiagrams} from "../../lib/beams/stemLoads.js";

it("draws moment and shear of a uniform load with their known extremes", () => {
  const {momentKipFt, shearKip} = uniformDiagrams(8000, 30);
  expect(Math.max(...momentKipFt.map((point) => point.value))).toBeCloseTo(900, 9);
  expect(shearKip[0]?.value).toBeCloseTo(120, 9);
  expect(shearKip.at(-1)?.value).toBeCloseTo(-120, 9);
  expect(momentKipFt[0]?.value).toBe(0);
});

it("under point loads shear and torsion jump at each load and the moment has no jump", () => {
  // 20 ft, 10 kip at 5 ft with a lever of 12 in, no other load: 7.5 kip left, moment 37.5 kip-ft, torsion 7.5 then -2.5 kip-ft.
  const {momentKipFt, shearKip, torsionKipFt} = alongPointLoads(pointLoadDiagrams({
    spanFt: 20, points: [{atFt: 5, loadKip: 10, eccentricityIn: 12}], uniformPlf: 0, uniformEccentricityIn: 0,
  }));
  expect(shearKip).toEqual([{share: 0, value: 7.5}, {share: 0.25, value: 7.5}, {share: 0.25, value: -2.5}, {share: 1, value: -2.5}]);
  expect(torsionKipFt).toEqual(shearKip);
  expect(momentKipFt).toHaveLength(17);
  expect(momentKipFt.find(({share}) => share === 0.25)?.value).toBe(37.5);
  expect(momentKipFt.at(-1)).toEqual({share: 1, value: 0});
  expect(new Set(momentKipFt.map(({share}) => share)).size).toBe(17);
});

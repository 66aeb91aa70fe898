import {describe, expect, test} from "vitest";
import {DIFFUSE_TRANSMITTANCE_SHARE, relativeTransmittance} from "../../lib/daylight/glass.js";
import {gaussLegendre} from "../../lib/daylight/gauss.js";

/** Light through two clear panes by Fresnel's equations: each pane two surfaces, all reflections between them counted. */
function twoPanes(incidence: number): number {
  const inside = Math.asin(Math.sin(incidence) / 1.526);
  const across = incidence === 0 ? ((1.526 - 1) / (1.526 + 1)) ** 2 : (Math.sin(incidence - inside) / Math.sin(incidence + inside)) ** 2;
  const along = incidence === 0 ? across : (Math.tan(incidence - inside) / Math.tan(incidence + inside)) ** 2;
  return [across, along].reduce((sum, r) => sum + (1 - r) / (1 + 3 * r) / 2, 0);
}

describe("relativeTransmittance", () => {
  test("starts at 1.018, falls all the way, and ends at nothing", () => {
    expect(relativeTransmittance(1)).toBeCloseTo(1.018, 12);
    expect(relativeTransmittance(0)).toBe(0);
    const values = Array.from({length: 91}, (_, i) => relativeTransmittance(Math.cos((i * Math.PI) / 180)));
    for (let i = 1; i < values.length; i++) expect(values[i]).toBeLessThan(values[i - 1] as number);
  });

  test("keeps close to two panes by Fresnel's equations", () => {
    for (let angle = 0; angle <= 85; angle += 5) {
      const radians = (angle * Math.PI) / 180;
      expect(Math.abs(relativeTransmittance(Math.cos(radians)) - twoPanes(radians) / twoPanes(0)), `${angle} degrees`).toBeLessThan(0.08);
    }
  });

  test("averages over the hemisphere to its closed form", () => {
    // The mean of the cosine-weighted value: 2 times the integral of t(c) c dc from 0 to 1.
    const {nodes, weights} = gaussLegendre(40);
    const mean = nodes.reduce((sum, x, i) => sum + ((weights[i] as number) / 2) * 2 * relativeTransmittance((x + 1) / 2) * ((x + 1) / 2), 0);
    expect(mean).toBeCloseTo(DIFFUSE_TRANSMITTANCE_SHARE, 6);
    expect(DIFFUSE_TRANSMITTANCE_SHARE).toBeCloseTo(0.8786, 4);
  });
});

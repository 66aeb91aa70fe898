import {describe, expect, test} from "vitest";
import {briefFrom} from "../../lib/schemes/readBrief.js";
import {schemesOf, type Scheme} from "../../lib/schemes/scheme.js";
import {measuresOf} from "../../lib/schemes/measures.js";
import {catalog} from "../support/designs.js";

/** Schemes of one member with straight strands under a live load that a reader enters, one for each span; those alone that a deck carries. */
function under(livePsf: number, member: string): Map<number, Scheme> {
  const brief = briefFrom({
    format: "plank-and-tee-brief", version: 1, name: "Store", building: {floorFt2: 7200, stories: 2},
    rooms: [{name: "Store", occupancy: "office", own: {livePsf, reducible: false, reason: "what is kept"}}], partitions: false, layers: [],
    ceilingFt: 10, vary: {spanFt: [20, 26, 32, 40], baysAcross: 1, beamSpanFt: 30, deck: [member], strand: "straight", toppingIn: 2, edge: "ledge"},
  }, catalog);
  const schemes = schemesOf(brief, catalog);
  return new Map(Array.from({length: schemes.count}, (_, i) => schemes.at(i)).flatMap((scheme) => ("none" in scheme ? [] : [[scheme.choices.spanFt, scheme] as const])));
}

describe.each(["10DT24", "12DT32", "4HC12"])("of one member with straight strands, %s", (member) => {
  test("more load takes no less strand, carbon or ledge, and carries no farther", () => {
    const loads = [50, 70, 90, 120, 160, 200].map((livePsf) => under(livePsf, member));
    let compared = 0;
    for (const [i, heavier] of loads.entries()) {
      const lighter = loads[i - 1];
      if (!lighter) continue;
      for (const [spanFt, more] of heavier) {
        const less = lighter.get(spanFt);
        // What carries the more carries the less.
        expect(less, `${member} over ${spanFt} ft`).toBeDefined();
        if (!less) continue;
        compared += 1;
        const by = {factors: catalog.carbonFactors, prices: {}};
        const [a, b] = [measuresOf(less.floor, undefined, by), measuresOf(more.floor, undefined, by)];
        expect(b.deckStrandLbPerFt2 ?? 0).toBeGreaterThanOrEqual((a.deckStrandLbPerFt2 ?? 0) - 1e-9);
        expect(b.deckCarbonKgPerFt2 ?? 0).toBeGreaterThanOrEqual((a.deckCarbonKgPerFt2 ?? 0) - 1e-9);
        if (less.fails.length === 0 && more.fails.length === 0) expect(more.design.edgeBeam.ledgeDepthIn).toBeGreaterThanOrEqual(less.design.edgeBeam.ledgeDepthIn);
      }
    }
    expect(compared).toBeGreaterThan(5);
  });
});

import {describe, expect, test} from "vitest";
import {deckSeatLoad} from "../../lib/beams/deckSeatLoad.js";
import {withValues} from "../../lib/design/edit.js";
import {seed} from "../support/designs.js";
import {edgeBeamOf, floorOf, girderOf} from "../support/madeBeams.js";

describe("the load at one seat of the deck", () => {
  /** Offices under movable walls on 10 ft tees of 60 ft, edge beams of 40 ft, a topping of one thickness. */
  const office = withValues(seed("branch-library"), {
    "bay.spanFt": 60, "bay.beamSpanFt": 40, "loads.rooms": [{name: "Office", occupancy: "office"}], "topping.followShare": 1, "deck.pattern": "148-S",
  });

  test("takes the live load as the deck member's own area reduces it, not the beam's", () => {
    const {deck, loads} = floorOf(office);
    const [edgeBeam, girder] = [edgeBeamOf(office), girderOf(office)];
    // A tee: KLL 1 x 10 x 60 = 600 ft2, 0.25 + 15/24.495 = 0.8624 of 50 psf = 43.12, and 15 of walls: 58.12 psf.
    // The beam: KLL 2 x 30 x 40 = 2,400 ft2, 0.25 + 15/48.990 = 0.5562: 27.81 + 15 = 42.81 psf.
    // Dead: the tee's 615 in2 at 150 pcf, 640.6 plf, and 250 plf of topping on 10 ft, 89.06 psf, and 10 of layers: 99.06.
    // A stem: 30 x 5 = 150 ft2. 150 (1.2 x 99.06 + 1.6 x 58.12) = 31.78 kip; with the beam's load it would be 28.11.
    const load = deckSeatLoad(office, deck, loads);
    expect(load.areaFt2).toBe(150);
    expect(load.livePsf).toBeCloseTo(58.12, 2);
    expect(load.factoredKip).toBeCloseTo(31.78, 2);
    expect(load.serviceKip).toBeCloseTo(0.15 * (99.0625 + 58.1186), 3);
    expect(edgeBeam.demand.stemKip).toBe(load.factoredKip);
    expect(edgeBeam.demand.stemServiceKip).toBe(load.serviceKip);
    expect(edgeBeam.ledge?.loadKip).toBe(load.factoredKip);
    expect(girder.seat.factoredKip).toBe(load.factoredKip);
    // What bends and twists the beam is the load of all its floor.
    expect(edgeBeam.demand.end.stems.stemKip).toBeCloseTo(28.105, 2);
  });

  test("of planks is that of a foot of them", () => {
    const wing = seed("classroom-wing");
    const {deck, loads} = floorOf(wing);
    const load = deckSeatLoad(wing, deck, loads);
    expect(load.areaFt2).toBe(14);
    expect(edgeBeamOf(wing).demand.stemKip).toBe(load.factoredKip);
  });
});

import {describe, expect, test} from "vitest";
import {withValues} from "../../lib/design/edit.js";
import type {GirderLedge} from "../../lib/girder/seat.js";
import {libraryByHand, seed} from "../support/designs.js";
import {girderOf} from "../support/madeBeams.js";

const library = () => withValues(libraryByHand(), {"column.sideIn": 18});
const ledgeOf = (of: ReturnType<typeof girderOf>): GirderLedge => {
  if (!of.seat.ledge) throw new Error("an inverted tee has ledges");
  return of.seat.ledge;
};

describe("the deck's seat on the girder", () => {
  test("is half of a rectangle's top, less half of the joint that both decks share; of a ledge all but the joint", () => {
    const rectangle = girderOf(library(), {"girder.kind": "rectangle", "girder.depthIn": 44, "girder.webWidthIn": 16, "edgeBeam.jointGapIn": 1});
    expect(rectangle.seat.seat.nominalIn).toBe(7.5);
    // Three quarters of 8 in from the middle.
    expect(rectangle.seat.eccentricityIn).toBe(6);
    expect(girderOf(library(), {"edgeBeam.jointGapIn": 1}).seat.seat.nominalIn).toBe(7);
  });

  test("has a pad that keeps half an inch from the ledge's edge, however much it would have to carry", () => {
    // A stem of a 100 ft span brings some 60 kip: 4.75 in wide at 1,500 psi it would want more than 8 in.
    const heavy = girderOf(library(), {"bay.spanFt": 100});
    expect(heavy.seat.pad?.lengthIn).toBe(6.5);
    const verdict = (id: string) => heavy.checks.find((check) => check.id === id)?.verdict;
    expect([verdict("girder pad place"), verdict("girder pad stress")]).toEqual(["ok", "fails"]);
  });

  test("is 3 in at the least under stems and 2 in under slabs, which lie on a strip with half an inch free on both sides", () => {
    expect(girderOf(library(), {"bay.spanFt": 30}).seat.seat.neededIn).toBe(3);
    const wing = girderOf(seed("classroom-wing"), {"girder.ledgeProjectionIn": 8, "edgeBeam.jointGapIn": 1, "bay.spanFt": 24});
    expect(wing.seat.seat.neededIn).toBe(2);
    expect(wing.seat.pad).toBeUndefined();
    expect(ledgeOf(wing).ledge).toMatchObject({bearingLengthIn: 6, bearingWidthIn: 12, spacingIn: 12});
  });

  test("counts the lesser distance between stems, whether that lies within a tee or across a joint", () => {
    for (const stemSpacingIn of [48, 72]) {
      expect(ledgeOf(girderOf(library(), {"deck.dimensions": {stemSpacingIn}})).ledge.spacingIn).toBeCloseTo(48, 9);
    }
  });
});

describe("the girder's ledge", () => {
  test("hangs on legs 1.5 in inside the web, and its closed ties carry its part of the twist, by hand", () => {
    const {hanger, steel, ledge} = ledgeOf(girderOf(library()));
    expect([ledge.webWidthIn, ledge.depthIn, ledge.ledgeProjectionIn, ledge.ledgeDepthIn, ledge.shearSpanIn]).toEqual([16, 46, 8, 12, 6]);
    // 1.25 in of cover and half of a #4: the load stands 6 + 1.5 in beyond the leg, the other leg 16 - 3 in behind it.
    expect(hanger.strutFactor).toBeCloseTo(1 + 7.5 / 13, 12);
    // d = 14.5. Shear in the ledge: 12/46 = 0.26087, (3 - 0.52174) 0.068053 = 0.168652, on (16 + 8)/2 = 2.02383 in.
    // Twist: 8^2 x 12 = 768 of 768 + 16^2 x 46 = 12,544: 0.0612245 x (8 + 6) = 0.857143 in. (14.5 + 7.5 - 2.02383 - 0.857143) / 14.5.
    expect(hanger.leverFactor).toBeCloseTo(1.318553, 6);
    const {factoredKip} = girderOf(library()).seat;
    expect(steel.momentKipIn).toBeCloseTo(factoredKip * 7.5 + 0.2 * factoredKip * (12 - steel.effectiveDepthIn), 6);
  });

  test("punches by how much the girder is used, in bending at midspan or in shear, whichever is more", () => {
    for (const changes of [{"bay.beamSpanFt": 20, "girder.strands": 20}, {"bay.beamSpanFt": 30, "girder.strands": 20}, {"bay.beamSpanFt": 30, "girder.strands": 24, "girder.ledgeDepthIn": 20}]) {
      const found = girderOf(library(), changes);
      const use = Math.max(found.momentKipIn / found.strength.designMomentKipIn, found.shear.factoredKip / found.shear.designKip);
      expect(use).toBeGreaterThan(0.2);
      // From 1 at a fifth of the strength to half at three fifths.
      expect(ledgeOf(found).punching?.globalStressFactor).toBeCloseTo(Math.max(0.5, 1 - (use - 0.2) / 0.8), 9);
    }
  });
});

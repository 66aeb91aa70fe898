import {describe, expect, test} from "vitest";
import {barsAtSpacing, edgeBeamStirrups, mostCoverIn} from "../../lib/edgeBeam/twist.js";
import type {TorsionDesign} from "../../lib/beams/torsion.js";
import {withValues} from "../../lib/design/edit.js";
import {concrete} from "../../lib/materials/concrete.js";
import {catalog, seed} from "../support/designs.js";
import {edgeBeamOf} from "../support/madeBeams.js";

const normal = concrete("normalweight", 5000);
/** What shear and twist ask of the stirrups, without all else that a design of torsion tells. */
const asked = (changes: Partial<TorsionDesign> = {}) =>
  ({torsionLegIn2PerIn: 0, shearLegsIn2PerIn: 0, negligible: true, greatestSpacingIn: 12, ...changes}) as TorsionDesign;
/** A web 14 in wide with 70 in of effective depth. */
const stirrups = (changes: Partial<TorsionDesign> = {}, {material = normal, widthIn = 14, depthIn = 70, shearKip = 100, hangerIn2PerIn = 0, hangerSpacingIn = 24} = {}) =>
  edgeBeamStirrups(catalog, material, widthIn, depthIn, shearKip, asked(changes), hangerIn2PerIn, hangerSpacingIn);

describe("stirrups of the edge beam", () => {
  test("are the least of 9.6.3.4 where nothing asks for more: the larger of 0.75 root f'c and 50 psi of the web", () => {
    // 0.75 root 5,000 = 53.03 psi; x 14 / 60,000 = 0.012374 in2 an inch of both legs. #4 as far apart as 24 in.
    const least = stirrups();
    expect(least.outerIn2PerIn).toBeCloseTo(0.0123744 / 2, 7);
    expect(least.innerIn2PerIn).toBe(least.outerIn2PerIn);
    expect(least).toMatchObject({bar: {size: "#4"}, greatestSpacingIn: 24, spacingIn: 24});
    expect(stirrups({}, {material: concrete("normalweight", 3000)}).outerIn2PerIn).toBeCloseTo((50 * 14) / 60_000 / 2, 9);
    // The least steel asks for root f'c itself: light concrete changes nothing.
    expect(stirrups({}, {material: concrete("sand-lightweight", 5000)}).outerIn2PerIn).toBeCloseTo(0.0123744 / 2, 7);
  });

  test("carry in each leg the twist's share and half of the shear's; the leg beside the ledge hangs it up as well", () => {
    const {outerIn2PerIn, innerIn2PerIn, spacingIn, designShearKip} = stirrups({torsionLegIn2PerIn: 0.015, shearLegsIn2PerIn: 0.02, negligible: false}, {hangerIn2PerIn: 0.03});
    expect(outerIn2PerIn).toBeCloseTo(0.025, 12);
    expect(innerIn2PerIn).toBe(0.03);
    // #4: 0.20 / 0.03 = 6.67 in, in half inches 6.5.
    expect(spacingIn).toBe(6.5);
    // Left for shear: two legs of 0.2 in2 every 6.5 in less two of 0.015: 0.031538 x 60 x 70 = 132.46 kip; Vc = 2 root 5,000 x 14 x 70 = 138.59.
    expect(designShearKip).toBeCloseTo(0.75 * (138.593 + 132.462), 2);
  });

  test("stand within d/2 and 24 in, half of that above 4 root f'c of shear in stirrups, and no wider than twist or hangers allow", () => {
    // phi 6 root f'c bw d: 0.75 x 6 x 70.71 x 14 x 70 = 311.8 kip.
    expect(stirrups({}, {shearKip: 311}).greatestSpacingIn).toBe(24);
    expect(stirrups({}, {shearKip: 313}).greatestSpacingIn).toBe(12);
    expect(stirrups({}, {depthIn: 30, shearKip: 133}).greatestSpacingIn).toBe(15);
    expect(stirrups({}, {depthIn: 30, shearKip: 134}).greatestSpacingIn).toBe(7.5);
    expect(stirrups({negligible: false, greatestSpacingIn: 9}).greatestSpacingIn).toBe(9);
    expect(stirrups({negligible: true, greatestSpacingIn: 9}).greatestSpacingIn).toBe(24);
    expect(stirrups({}, {hangerSpacingIn: 10}).greatestSpacingIn).toBe(10);
  });

  test("are #4 down to 3 in, then #5, and closer where those do not suffice either", () => {
    const at = (in2PerIn: number) => {
      const {bar, spacingIn} = barsAtSpacing(catalog, in2PerIn, 12);
      return [bar.size, spacingIn];
    };
    expect(at(0.2 / 12.6)).toEqual(["#4", 12]);
    expect(at(0.2 / 3.2)).toEqual(["#4", 3]);
    expect(at(0.2 / 2.9)).toEqual(["#5", 4]);
    expect(at(0.31 / 2.2)).toEqual(["#5", 2]);
    expect(barsAtSpacing(catalog, 0.31 / 0.4, 12).spacingIn).toBeCloseTo(0.4, 12);
    expect(at(0.31 / 0.5)).toEqual(["#5", 0.5]);
  });
});

describe("twist of the edge beam", () => {
  const LIBRARY = withValues(seed("branch-library"), {"topping.followShare": 1, "column.sideIn": 18, "edgeBeam.ledgeDepthIn": 10});

  test("has bars round the stirrup no more than 12 in apart, each with its part of the lengthwise steel", () => {
    // Web 14 x 74 in, cover 1.5 in: stirrup's axis 10.5 x 70.5 in. 70.5 / 12 = 5.9: six gaps, five bars on each side; 10.5: none between the corners.
    const {twist, effectiveDepthIn, shearKip} = edgeBeamOf(LIBRARY, {"edgeBeam.coverIn": 1.5});
    expect(twist?.sideBars).toBe(5);
    const allIn2 = twist?.design.lengthwiseIn2 ?? NaN;
    expect(twist?.barIn2).toBeCloseTo(allIn2 / 14, 9);
    // The bottom's part: the width and half a gap of each side, of the perimeter of 162 in.
    expect(twist?.bottomIn2).toBeCloseTo((allIn2 * (10.5 + 70.5 / 6)) / 162, 9);
    expect(twist?.shearPsi).toBeCloseTo((1000 * shearKip) / (14 * effectiveDepthIn), 6);
    expect(Math.hypot(twist?.shearPsi ?? 0, twist?.torsionPsi ?? 0)).toBeCloseTo(twist?.design.stressPsi ?? NaN, 6);
    // A web of 24 in: axis 20.5 in across, one bar between the corners of top and bottom.
    const wide = edgeBeamOf(LIBRARY, {"edgeBeam.coverIn": 1.5, "edgeBeam.webWidthIn": 24}).twist;
    expect(wide?.barIn2).toBeCloseTo((wide?.design.lengthwiseIn2 ?? NaN) / 16, 9);
  });

  test("has a gap of 12 in between its bars where the stirrup is a whole number of them, and steel on the inner face as deep as it lies", () => {
    // Web 15.5 in, 75.5 in deep, cover 1.5 in: axis 12 x 72 in, six gaps of 12 in up each side and one across.
    const {twist} = edgeBeamOf(LIBRARY, {"edgeBeam.coverIn": 1.5, "edgeBeam.webWidthIn": 15.5, "edgeBeam.upstandIn": 31.5});
    expect(twist?.sideBars).toBe(5);
    expect(twist?.barIn2).toBeCloseTo((twist?.design.lengthwiseIn2 ?? NaN) / 14, 9);
    // The legs' axis lies 15.5 - 1.5 - 0.25 = 13.75 in from the outer face: Tu / (2 x 0.9 x 60 x 13.75).
    expect(twist?.slender.uprightIn2).toBeCloseTo((twist?.slender.plateTwistKipIn ?? NaN) * Math.SQRT2 / (2 * 0.9 * 60 * 13.75), 9);
  });

  test("holds even a low beam by connections 6 in apart", () => {
    const low = edgeBeamOf(seed("classroom-wing"), {
      "deck.member": "4FS4", "deck.pattern": "46-S", "deck.toppingIn": 0, "edgeBeam.ledgeDepthIn": 6, "edgeBeam.upstandIn": 2, "edgeBeam.coverIn": 1,
    });
    expect(low.depthIn).toBe(12);
    expect(low.twist?.leverIn).toBe(6);
    expect(low.twist?.rotation.topKip).toBeCloseTo(low.demand.endTorsionKipIn / 6, 9);
  });

  test("has no stirrups in so much cover that hangers and legs no longer fit", () => {
    // A third of the web less half a stirrup: 9 / 3 - 0.25 = 2.75 in; half of it less the stirrup and half an inch more: 4.5 - 1 = 3.5.
    const beam = edgeBeamOf(LIBRARY, {"edgeBeam.webWidthIn": 9, "edgeBeam.coverIn": 2.75});
    expect(mostCoverIn(beam)).toBeCloseTo(2.75, 12);
    expect(beam.twist).toBeDefined();
    const none = edgeBeamOf(LIBRARY, {"edgeBeam.webWidthIn": 9, "edgeBeam.coverIn": 3});
    expect(none.twist).toBeUndefined();
    const ids = none.checks.filter(({verdict}) => verdict === "fails").map(({id}) => id);
    expect(ids).toContain("beam cage");
    // A beam 12 in deep and 24 wide: 24 / 3 - 0.25 = 7.75, but half of its depth leaves 6 - 1 = 5 in.
    expect(mostCoverIn({...beam, shape: {...beam.shape, webWidthIn: 24, depthIn: 12}})).toBe(5);
  });
});

describe("what the edge beam's checks say", () => {
  const LIBRARY = withValues(seed("branch-library"), {"topping.followShare": 1, "column.sideIn": 18, "edgeBeam.ledgeDepthIn": 10});
  const of = (id: string, changes: Readonly<Record<string, unknown>> = {}) => edgeBeamOf(LIBRARY, changes).checks.find((check) => check.id === id);

  test("names the strands that carry the moment, and bars only where there are some beside them", () => {
    const strands = (count: number, spanFt = 30) => of("beam strength", {"edgeBeam.steel": "strands", "edgeBeam.coverIn": 1.25, "edgeBeam.strands": count, "bay.beamSpanFt": spanFt});
    expect(strands(14)?.message).toContain("14 strands carry");
    expect(strands(4, 40)?.message).toMatch(/4 strands and \d+ #\d+ bars carry/);
    expect(of("beam strength")?.message).toMatch(/^\d+ #\d+ bars carry/);
  });

  test("tells whether the concrete alone carries the shear", () => {
    // phi Vc of some 105 kip lies between the end shear of 40 ft and of 14 ft.
    expect(of("beam shear", {"bay.beamSpanFt": 40})?.message).toBe("Stirrups can carry what the concrete does not.");
    expect(of("beam shear", {"bay.beamSpanFt": 12})?.message).toBe("The concrete carries the shear; minimum stirrups are enough.");
    expect(of("beam shear", {"edgeBeam.kind": "pockets"})?.label).toContain("pocket");
    expect(of("beam shear")?.label).not.toContain("pocket");
  });

  test("asks the least steel by a third more than the moment needs where that is less than 9.6.1.2 asks", () => {
    expect(of("beam least steel")?.clause).toBe("ACI 318-19 9.6.1.3");
    expect(of("beam least steel", {"edgeBeam.kind": "below"})?.clause).toBe("ACI 318-19 9.6.1.2");
  });
});

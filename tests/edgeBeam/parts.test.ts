import {describe, expect, test} from "vitest";
import {withValues} from "../../lib/design/edit.js";
import type {Design} from "../../lib/design/design.js";
import {greatestFirstStemFt, stemsFrom} from "../../lib/edgeBeam/demand.js";
import {prestressState} from "../../lib/member/prestressState.js";
import {libraryByHand, seed} from "../support/designs.js";
import {edgeBeamOf, floorOf} from "../support/madeBeams.js";

const library = (changes: Readonly<Record<string, unknown>> = {}): Design => withValues(libraryByHand(), {"column.sideIn": 18, ...changes});
const of = (changes: Readonly<Record<string, unknown>> = {}) => edgeBeamOf(library(changes));

describe("the loads of the edge beam", () => {
  test("press most on an end of bay 2 whether the deck stands on a ledge or on the beam's top, where it does not twist it", () => {
    // 10 ft tees on 24 ft bays: stems 3.5, 8.5, 13.5, 18.5 and 23.5 ft along the second, 67.5 / 24 of a stem's load at its far end.
    for (const kind of ["ledge", "below"]) {
      const {demand, loads} = of({"bay.beamSpanFt": 24, "bay.baysAlong": 2, "edgeBeam.kind": kind});
      expect(demand.end.bay, kind).toBe(2);
      expect(demand.reactionKip).toBeCloseTo((67.5 / 24) * 5 * (loads.factoredLedgePlf / 1000) + (12 * loads.factoredOwnPlf) / 1000, 6);
    }
  });

  test("twist that end by every stem on the ledge, each by its part, and by the beam's own weight", () => {
    const {demand, loads, eccentricityIn} = of({"bay.beamSpanFt": 24, "bay.baysAlong": 2});
    const byOwnKipIn = ((12 * loads.factoredOwnPlf) / 1000) * loads.ownEccentricityIn;
    expect(demand.endTorsionKipIn).toBeCloseTo((67.5 / 24) * 5 * (loads.factoredLedgePlf / 1000) * eccentricityIn + byOwnKipIn, 6);
    expect(demand.reactionOffsetIn).toBeCloseTo(demand.endTorsionKipIn / demand.reactionKip, 12);
  });

  test("are told of two bays that mirror each other by the one nearer to the corner", () => {
    // Five bays of 24 ft are twelve tees of 10 ft: bay 5 is bay 1 seen from the other end, and bay 4 bay 2.
    const {demand} = of({"bay.beamSpanFt": 24, "bay.baysAlong": 5});
    expect(demand.bays).toHaveLength(5);
    expect(demand.end.bay).toBe(2);
    expect(demand.bending.bay).toBeLessThanOrEqual(3);
  });

  test("stand as near to each other as the lesser gap, within a tee or across a joint", () => {
    for (const stemSpacingIn of [48, 72]) expect(of({"deck.dimensions": {stemSpacingIn}}).demand.spacingIn).toBeCloseTo(48, 9);
  });

  test("may be moved along by their first stem: from where it stands they are the beam's own", () => {
    const beam = of();
    const {deck} = floorOf(library());
    const moved = (firstStemFt: number) => stemsFrom(library(), deck, beam, beam.loads, firstStemFt);
    expect(12 * (moved(2.5)?.diagrams.greatestMomentKipFt ?? NaN)).toBeCloseTo(beam.momentKipIn, 6);
    // With the first over a column line there is one over the other, and one over the middle.
    expect(moved(0)?.beam.points.map(({atFt}) => atFt)).toEqual([0, 5, 10, 15, 20, 25, 30]);
    // A stem may be moved by the wider gap at most.
    expect(greatestFirstStemFt(library(), deck)).toBe(5);
    const uneven = library({"deck.dimensions": {stemSpacingIn: 48}});
    expect(greatestFirstStemFt(uneven, floorOf(uneven).deck)).toBeCloseTo(6, 9);
    const wing = seed("classroom-wing");
    const {deck: planks} = floorOf(wing);
    const beside = edgeBeamOf(wing);
    expect([greatestFirstStemFt(wing, planks), stemsFrom(wing, planks, beside, beside.loads, 0)]).toEqual([0, undefined]);
  });
});

describe("the bending steel of the edge beam", () => {
  test("lies a clear inch over the highest strands where bars help them, and below the middle of the beam", () => {
    const beam = of({"edgeBeam.steel": "strands", "edgeBeam.strands": 8, "edgeBeam.coverIn": 1.25, "bay.beamSpanFt": 40});
    const highestIn = Math.max(...(beam.strands?.member.layout.rows ?? []).map(({centerIn}) => centerIn));
    expect(beam.bars.count).toBeGreaterThan(0);
    expect(highestIn).toBeGreaterThan(2);
    expect(beam.bars.rowHeightsIn[0]).toBeCloseTo(highestIn + 0.25 + 1 + beam.bars.bar.diameterIn / 2, 9);
    for (const heightIn of of({"edgeBeam.barSize": "#5", "bay.beamSpanFt": 60, "edgeBeam.upstandIn": 0}).bars.rowHeightsIn) expect(heightIn).toBeLessThanOrEqual(22);
  });

  test("is two bars at the least, though cover pushes them above the middle of a low beam", () => {
    const low = edgeBeamOf(seed("classroom-wing"), {
      "deck.member": "4FS4", "deck.pattern": "46-S", "deck.toppingIn": 0, "edgeBeam.ledgeDepthIn": 4, "edgeBeam.upstandIn": 2, "edgeBeam.coverIn": 4, "edgeBeam.barSize": "#11",
    });
    expect(low.depthIn).toBe(10);
    expect(low.bars.count).toBe(2);
    expect(low.bars.rowHeightsIn[0]).toBeGreaterThan(5);
  });

  test("is two bars where one would do, for a stirrup stands on two", () => {
    const light = edgeBeamOf(seed("classroom-wing"), {"bay.spanFt": 12, "bay.beamSpanFt": 8, "edgeBeam.barSize": "#11", "edgeBeam.upstandIn": 6, "edgeBeam.webWidthIn": 12});
    // One #11 would carry the moment three times over.
    expect(light.momentKipIn).toBeLessThan((0.9 * 60 * 1.56 * 0.8 * light.depthIn) / 3);
    expect(light.leastSteel.areaIn2).toBeLessThan(1.56);
    expect(light.bars).toMatchObject({count: 2, rows: [2]});
  });

  test("of strands has the losses that deck and cladding leave; the beam's own weight acts from the start", () => {
    const {strands, loads, spanFt} = of({"edgeBeam.steel": "strands", "edgeBeam.strands": 14, "edgeBeam.claddingPlf": 400});
    if (!strands) throw new Error("the beam has strands");
    expect(strands.state.effectiveForceKip).toBeCloseTo(prestressState(strands.member, spanFt, 0.5, loads.deckDeadPlf + 400).effectiveForceKip, 9);
    expect(strands.state.effectiveForceKip).not.toBeCloseTo(prestressState(strands.member, spanFt, 0.5, loads.deadPlf + loads.selfPlf).effectiveForceKip, 1);
  });

  test("is no bar where strands suffice alone", () => {
    const {bars} = of({"edgeBeam.steel": "strands", "edgeBeam.strands": 14});
    expect(bars).toMatchObject({count: 0, areaIn2: 0, rows: [], rowHeightsIn: [], centroidIn: 0});
  });

  test("carries bending and twist together wherever it suffices: a bar more than bending asks for alone", () => {
    const twisted = of({"bay.beamSpanFt": 20, "bay.spanFt": 60, "edgeBeam.upstandIn": 0, "edgeBeam.barSize": "#6"});
    const bending = twisted.momentKipIn / twisted.strength.designMomentKipIn;
    expect(twisted).toMatchObject({barsSuffice: true, bars: {count: 9}});
    expect(twisted.bottomUse).toBeLessThanOrEqual(1);
    // Eight of the nine bars would do for the moment, and for the least steel, and not for the twist beside it.
    expect((bending * 9) / 8).toBeLessThan(0.95);
    expect(8 * twisted.bars.bar.areaIn2).toBeGreaterThan(twisted.leastSteel.areaIn2);
    expect((twisted.bottomUse * 9) / 8).toBeGreaterThan(1);
  });
});

describe("the ledge of the edge beam", () => {
  test("hangs on legs no farther apart than it is deep, whatever shear and twist would allow", () => {
    const {stirrups, twist} = of({"edgeBeam.ledgeDepthIn": 6});
    expect(twist?.design.greatestSpacingIn).toBeGreaterThan(6);
    expect(stirrups?.greatestSpacingIn).toBe(6);
    // Half of the effective depth, an eighth of the stirrup's length or 12 in, where the ledge is deep.
    expect(of({"edgeBeam.ledgeDepthIn": 20}).stirrups?.greatestSpacingIn).toBe(12);
  });


  test("has its bars as close as the place that asks for most, a stem at the end of the beam or one inside", () => {
    for (const changes of [{}, {"bay.beamSpanFt": 24, "bay.baysAlong": 2, "bay.spanFt": 60, "edgeBeam.ledgeDepthIn": 16}]) {
      const {ledge} = of(changes);
      if (!ledge) throw new Error("the beam has a ledge");
      const {bar, spacingIn} = ledge.bars;
      expect(ledge.places).toHaveLength(2);
      for (const {steel} of ledge.places) {
        expect((12 * bar.areaIn2) / spacingIn).toBeGreaterThanOrEqual(steel.topIn2PerFt - 1e-9);
        expect(spacingIn).toBeLessThanOrEqual(steel.greatestSpacingIn);
      }
    }
  });

  test("is looked at under the stem nearest to any end, the last of a bay as well as the first, and never beyond the beam", () => {
    // On two bays of 24 ft the last stem of the second stands 6 in off its line, and 4 in beyond the beam's end.
    const punching = of({"bay.beamSpanFt": 24, "bay.baysAlong": 2}).ledge?.punching ?? [];
    expect(punching.map(({place}) => place)).toEqual(["interior", "end"]);
    expect(punching[1]).toMatchObject({bay: 2, atFt: expect.closeTo(23.5, 9), ledge: {endDistanceIn: 4.75 / 2}});
    expect(punching[0]?.ledge.endDistanceIn).toBeUndefined();
  });

  test("is pressed by prestress inside the span, and at the ends not yet", () => {
    const {ledge, strands} = of({"edgeBeam.steel": "strands", "edgeBeam.strands": 14});
    const at = (place: string) => ledge?.punching.find((one) => one.place === place)?.centroidStressKsi;
    expect(at("interior")).toBeCloseTo((strands?.state.effectiveForceKip ?? NaN) / (strands?.member.section.areaIn2 ?? NaN), 9);
    expect(at("end")).toBe(0);
    expect(of().ledge?.punching.map(({centroidStressKsi}) => centroidStressKsi)).toEqual([0, 0]);
  });

  test("is looked at under the stem where the beam is used most: of two alike the one nearer to the corner", () => {
    // Stems at 2.5, 7.5 ... 27.5 ft of 30 ft: beside both ends the shear asks most, and alike.
    const punching = of({"edgeBeam.upstandIn": 10}).ledge?.punching ?? [];
    expect(punching.map(({place, bay, atFt}) => [place, bay, Number(atFt.toFixed(6))])).toEqual([["interior", 1, 2.5], ["end", 1, 2.5]]);
  });
});

describe("the edge beam below the deck", () => {
  test("is as deep as it has to be to be lifted from its form, where that asks most", () => {
    const beam = of({"edgeBeam.kind": "below", "bay.beamSpanFt": 30, "bay.spanFt": 20});
    const use = Math.max(...beam.handling.way.steps.map(({tensionKsi, allowedTensionKsi}) => tensionKsi / allowedTensionKsi));
    expect(use).toBeLessThanOrEqual(1);
    // Weight grows with the depth and the section's modulus with its square, so the stress falls as the depth grows: 2 in less fails.
    expect((use * beam.depthIn) / (beam.depthIn - 2)).toBeGreaterThan(1);
    expect(beam.momentKipIn / beam.strength.designMomentKipIn).toBeLessThan(0.95);
  });

  test("is not made deeper for its way where strands squeeze it off its middle", () => {
    const beam = of({"edgeBeam.kind": "below", "edgeBeam.steel": "strands", "edgeBeam.strands": 20, "bay.beamSpanFt": 30});
    const failing = beam.checks.filter(({verdict}) => verdict === "fails").map(({id}) => id);
    expect(beam.depthIn).toBeLessThan(96);
    expect(failing.filter((id) => !/stripping|hauling|transfer|cover/.test(id))).toEqual([]);
  });
});

describe("the edge beam in service", () => {
  test("moves by its live load's sag, or by that and what creep adds to dead and lasting load, twice as much again", () => {
    for (const [sagLimit, over] of [["L/360", 360], ["L/480", 480], ["L/240", 240]] as const) {
      const {service} = of({"criteria.sagLimit": sagLimit});
      if (service.steel !== "bars") throw new Error("the library's beam has bars");
      const {liveIn, deadIn, countedIn, allowedIn} = service;
      const {sustainedLiveShare} = library().criteria;
      expect(countedIn).toBeCloseTo(sagLimit === "L/360" ? liveIn : liveIn + 2 * (deadIn + sustainedLiveShare * liveIn), 12);
      expect(allowedIn).toBeCloseTo(360 / over, 12);
    }
  });

  test("has its bars as far apart as the web's width between stirrups lets them", () => {
    const {service, bars} = of({"edgeBeam.coverIn": 1.5});
    if (service.steel !== "bars") throw new Error("the library's beam has bars");
    // 14 in less 2 x (1.5 + 0.5) in and a bar.
    expect(service.spacingIn).toBeCloseTo((10 - bars.bar.diameterIn) / ((bars.rows[0] as number) - 1), 12);
    // One bar to a row, where no second one fits, stands alone in the web.
    const narrow = of({"edgeBeam.webWidthIn": 8, "edgeBeam.coverIn": 2.5, "edgeBeam.barSize": "#11"}).service;
    expect(narrow).toMatchObject({spacingIn: 8});
  });
});

import {describe, expect, test} from "vitest";
import type {EdgeBeamResult} from "../../lib/edgeBeam/edgeBeam.js";
import {camber} from "../../lib/member/camber.js";
import {prestressState} from "../../lib/member/prestressState.js";
import {withValues} from "../../lib/design/edit.js";
import {libraryByHand, seed} from "../support/designs.js";
import {edgeBeamOf} from "../support/madeBeams.js";

/*
 * Parts of the edge beam worked beside the code: its bars in service, on its way to the building, and its strands. The beam of the
 * branch library: web 14 in, 74 in deep, ledge 8 by 10 in, 1,116 in2, 1,162.5 plf, 5,000 psi, 30 ft, five #9 bars.
 */
const LIBRARY = withValues(libraryByHand(), {
  "topping.followShare": 1, "column.sideIn": 18, "edgeBeam.ledgeDepthIn": 10, "edgeBeam.padWidthIn": 5, "edgeBeam.padLengthIn": 5,
});
const made = (changes: Readonly<Record<string, unknown>> = {}) => edgeBeamOf(LIBRARY, changes);
const checkOf = (beam: EdgeBeamResult, id: string) => beam.checks.find((check) => check.id === id);
/** Soffit to centroid of web and ledge, and second moment about it. */
const AREA = 14 * 74 + 8 * 10;
const YB = (14 * 74 * 37 + 80 * 5) / AREA;
const INERTIA = (14 * 74 ** 3) / 12 + 14 * 74 * (37 - YB) ** 2 + (8 * 10 ** 3) / 12 + 80 * (YB - 5) ** 2;

describe("the edge beam with bars, by hand", () => {
  test("cracks at 7.5 root f'c in its soffit", () => {
    const {service} = made();
    if (service.steel !== "bars") throw new Error("bars are asked");
    expect(service.crackingKipIn).toBeCloseTo((7.5 * Math.sqrt(5000) * INERTIA) / YB / 1000, 3);
  });

  test("has its bars as close as fine cracks ask: 15 (40/fs) - 2.5 cc and 12 (40/fs), fs of the cracked section", () => {
    for (const coverIn of [1, 1.5, 3]) {
      const beam = made({"edgeBeam.coverIn": coverIn});
      const {service, bars, demand, effectiveDepthIn: d} = beam;
      if (service.steel !== "bars") throw new Error("bars are asked");
      // Ec of 150 pcf: 33 x 150^1.5 root 5,000 = 4,287 ksi; n = 29,000 / Ec.
      const n = 29000 / ((33 * 150 ** 1.5 * Math.sqrt(5000)) / 1000);
      const rho = (n * bars.areaIn2) / (14 * d);
      const axisIn = d * (Math.sqrt(rho ** 2 + 2 * rho) - rho);
      const fsKsi = demand.serviceKipIn / (bars.areaIn2 * (d - axisIn / 3));
      const clearIn = coverIn + 0.5;
      expect(service.steelKsi / fsKsi).toBeCloseTo(1, 2);
      expect(service.greatestSpacingIn).toBeCloseTo(Math.min(15 * (40 / service.steelKsi) - 2.5 * clearIn, 12 * (40 / service.steelKsi)), 6);
      // Between the outermost bars' centers, over the gaps of the lowest row.
      const lowest = bars.rows[0] as number;
      expect(lowest).toBeGreaterThan(1);
      expect(service.spacingIn).toBeCloseTo((14 - 2 * clearIn - bars.bar.diameterIn) / (lowest - 1), 9);
      expect(checkOf(beam, "beam cracks")).toMatchObject({demand: service.spacingIn, capacity: service.greatestSpacingIn});
    }
  });

  test("sags by 5/48 M L2 / E I: under dead load as its soffit has cracked by then, under live load by what all load adds", () => {
    // Shallow and long, so that it cracks: I of the cracked section, 14 c^3 / 3 + n As (d - c)^2, mixed in by 24.2.3.5.
    const beam = made({"bay.beamSpanFt": 40, "edgeBeam.upstandIn": 0});
    const {service, demand, bars, effectiveDepthIn: d} = beam;
    if (service.steel !== "bars") throw new Error("bars are asked");
    const depthIn = 44;
    const area = 14 * depthIn + 80;
    const yb = (14 * depthIn * (depthIn / 2) + 80 * 5) / area;
    const whole = (14 * depthIn ** 3) / 12 + 14 * depthIn * (depthIn / 2 - yb) ** 2 + (8 * 10 ** 3) / 12 + 80 * (yb - 5) ** 2;
    const modulusKsi = (33 * 150 ** 1.5 * Math.sqrt(5000)) / 1000;
    const n = 29000 / modulusKsi;
    const rho = (n * bars.areaIn2) / (14 * d);
    const axisIn = d * (Math.sqrt(rho ** 2 + 2 * rho) - rho);
    const cracked = (14 * axisIn ** 3) / 3 + n * bars.areaIn2 * (d - axisIn) ** 2;
    expect(service.crackedInertiaIn4 / cracked).toBeCloseTo(1, 2);
    const crackingKipIn = (0.0075 * Math.sqrt(5000) * whole) / yb;
    const effective = (momentKipIn: number) => (momentKipIn <= (2 / 3) * crackingKipIn ? whole
      : service.crackedInertiaIn4 / (1 - ((2 / 3) * (crackingKipIn / momentKipIn)) ** 2 * (1 - service.crackedInertiaIn4 / whole)));
    const sagIn = (momentKipIn: number) => (5 * momentKipIn * 480 ** 2) / (48 * modulusKsi * effective(momentKipIn));
    expect(demand.serviceKipIn).toBeGreaterThan(crackingKipIn);
    expect(service.effectiveInertiaIn4 / effective(demand.serviceKipIn)).toBeCloseTo(1, 3);
    expect(service.deadIn / sagIn(demand.deadKipIn)).toBeCloseTo(1, 2);
    expect((service.deadIn + service.liveIn) / sagIn(demand.serviceKipIn)).toBeCloseTo(1, 2);
  });

  test("is lifted a tenth in from its ends, by 0.7 of its strength, and hauled by all of it", () => {
    const {handling} = made();
    const [stripping, hauling] = handling.way.steps;
    expect([stripping?.moment, hauling?.moment]).toEqual(["stripping", "hauling"]);
    expect(stripping?.allowedTensionKsi).toBeCloseTo((5 * Math.sqrt(0.7 * 5000)) / 1000, 9);
    expect(hauling?.allowedTensionKsi).toBeCloseTo((5 * Math.sqrt(5000)) / 1000, 9);
    expect([stripping?.allowedCompressionKsi, hauling?.allowedCompressionKsi]).toEqual([expect.closeTo(0.6 * 3.5, 9), expect.closeTo(0.6 * 5, 9)]);
    // Top and soffit feel one moment: their stresses are as their distances from the centroid.
    for (const step of handling.way.steps) expect(step.tensionKsi / step.compressionKsi).toBeCloseTo(YB / (74 - YB), 6);
    // Between lifting points 0.8 of the length apart: w L2 / 8 less w a2 / 2 of the ends that overhang... 0.6 w L2 / 8, with its jolt.
    const standing = (1.1625 * 30 ** 2 * 12) / 8;
    const jolts = handling.way.steps.map(({tensionKsi}) => (tensionKsi * INERTIA) / YB / (0.6 * standing));
    for (const jolt of jolts) {
      expect(jolt).toBeGreaterThanOrEqual(1);
      expect(jolt).toBeLessThan(2);
    }
  });

  test("carries bending and twist at one section: what the ledge twists, the bottom bars pull as well", () => {
    const beam = made();
    const {bottomUse, demand, strength, twist} = beam;
    // The twist's share of steel in the bottom pulls most where the torsion is greatest, at the end, where nothing bends.
    const pullKip = (twist?.bottomIn2 ?? 0) * 60;
    expect(bottomUse).toBeGreaterThan(demand.momentKipIn / strength.designMomentKipIn);
    let most = demand.momentKipIn / strength.designMomentKipIn;
    for (const {momentFromKipFt, momentToKipFt, torsionFromKipIn, torsionToKipIn} of demand.end.stems.diagrams.stretches) {
      for (const [moment, torsion] of [[momentFromKipFt, torsionFromKipIn], [momentToKipFt, torsionToKipIn]] as const) {
        most = Math.max(most, (12 * moment) / strength.designMomentKipIn + (pullKip * Math.abs(torsion)) / demand.torsionKipIn / strength.compressionKip);
      }
    }
    expect(bottomUse).toBeCloseTo(most, 2);
    // Without a twist only the bending is left.
    const below = made({"edgeBeam.kind": "below"});
    expect(below.bottomUse).toBeCloseTo(below.momentKipIn / below.strength.designMomentKipIn, 9);
  });
});

describe("the edge beam with strands, by hand", () => {
  const strands = (count: number, changes: Readonly<Record<string, unknown>> = {}) =>
    made({"edgeBeam.steel": "strands", "edgeBeam.strands": count, "edgeBeam.coverIn": 1.25, ...changes});

  test("is squeezed by P/A + P e y / I and bent by M y / I, under all load and under what stays", () => {
    const beam = strands(14);
    const {service, strands: own, demand, loads} = beam;
    if (service.steel !== "strands" || !own) throw new Error("strands are asked");
    const forceKip = own.state.effectiveForceKip;
    const liftKipIn = forceKip * (YB - own.member.layout.centroidCenterIn);
    const at = (momentKipIn: number) => ({
      bottomKsi: forceKip / AREA + ((liftKipIn - momentKipIn) * YB) / INERTIA, topKsi: forceKip / AREA - ((liftKipIn - momentKipIn) * (74 - YB)) / INERTIA,
    });
    const share = LIBRARY.criteria.sustainedLiveShare;
    for (const [found, momentKipIn] of [[service.total, demand.serviceKipIn], [service.sustained, demand.deadKipIn + share * (demand.serviceKipIn - demand.deadKipIn)]] as const) {
      expect(found.bottomKsi).toBeCloseTo(at(momentKipIn).bottomKsi, 6);
      expect(found.topKsi).toBeCloseTo(at(momentKipIn).topKsi, 6);
    }
    expect(checkOf(beam, "beam total compression")?.demand).toBeCloseTo(Math.max(service.total.topKsi, service.total.bottomKsi, 0), 9);
    // Near the ends dead load relieves the soffit by w x (L - x) / 2 alone, and the soffit is pressed most.
    const [spanIn, fromIn] = [12 * LIBRARY.bay.beamSpanFt, service.transfer.transferLengthIn];
    const nearKip = prestressState(own.member, LIBRARY.bay.beamSpanFt, fromIn / spanIn, loads.deadPlf - loads.selfPlf).effectiveForceKip;
    const nearKipIn = nearKip * (YB - own.member.layout.centroidEndIn) - ((loads.deadPlf / 12000) * fromIn * (spanIn - fromIn)) / 2;
    expect(service.soffitNearEndKsi).toBeCloseTo(nearKip / AREA + (nearKipIn * YB) / INERTIA, 6);
    expect(checkOf(beam, "beam sustained compression")?.demand).toBe(service.soffitNearEndKsi);
    expect(service.soffitNearEndKsi).toBeGreaterThan(Math.max(service.sustained.topKsi, service.sustained.bottomKsi));
    expect(checkOf(beam, "beam tension")?.demand).toBeCloseTo(Math.max(0, -service.total.bottomKsi), 9);
    // Its own weight acts from the form on; what comes later is the rest of the dead load.
    expect(own.member.selfWeightPlf).toBeCloseTo(loads.selfPlf, 6);
    expect(own.member.releaseStrengthPsi).toBe(3500);
    expect(strands(14, {"edgeBeam.strengthPsi": 3000}).strands?.member.releaseStrengthPsi).toBe(2500);
  });

  test("sags, whole, by 5 w L4 / 384 E I under live load, and arches under what came after its own weight", () => {
    const {service, strands: own, loads} = strands(14);
    if (service.steel !== "strands" || !own) throw new Error("strands are asked");
    const modulusKsi = (33 * 150 ** 1.5 * Math.sqrt(5000)) / 1000;
    expect(service.total.bottomKsi).toBeGreaterThan(-0.0075 * Math.sqrt(5000));
    expect(service.liveIn / ((5 * (loads.livePlf / 12000) * 360 ** 4) / (384 * modulusKsi * INERTIA))).toBeCloseTo(1, 2);
    expect(service.camber).toEqual(camber(own.member, 30, loads.deckDeadPlf + loads.claddingPlf));
    expect(service.allowedIn).toBeCloseTo(1, 12);
  });

  test("has a strength of 1.2 times its cracking moment, fc,r and the prestress in the soffit", () => {
    const {strands: own} = strands(14);
    if (!own) throw new Error("strands are asked");
    const forceKip = own.state.effectiveForceKip;
    const soffitKsi = forceKip / AREA + (forceKip * (YB - own.member.layout.centroidCenterIn) * YB) / INERTIA;
    expect(own.leastKipIn).toBeCloseTo((1.2 * (0.0075 * Math.sqrt(5000) + soffitKsi) * INERTIA) / YB, 0);
  });

  test("takes its depth from the strands, and 0.8 of the beam's at least", () => {
    const low = strands(8);
    expect(low.effectiveDepthIn).toBeCloseTo(74 - (low.strands?.member.layout.centroidCenterIn ?? 0), 9);
    // Without an upstand the beam is 44 in deep, and the middle of many strands stands higher than a fifth of that.
    const high = strands(56, {"edgeBeam.upstandIn": 0, "edgeBeam.webWidthIn": 10});
    expect(high.depthIn).toBe(44);
    expect(high.strands?.member.layout.centroidCenterIn).toBeGreaterThan(0.2 * 44);
    expect(high.effectiveDepthIn).toBeCloseTo(0.8 * 44, 9);
  });

  test("has its bars, where it needs some, a clear inch above the highest row of strands", () => {
    const {bars, strands: own} = strands(4, {"bay.beamSpanFt": 40});
    expect(bars.count).toBeGreaterThan(0);
    const highestIn = Math.max(...(own?.member.layout.rows ?? []).map(({centerIn}) => centerIn));
    // From strand to bar: half a strand, the clear inch, half a bar.
    expect((bars.rowHeightsIn[0] as number) - highestIn).toBeCloseTo(0.25 + 1 + bars.bar.diameterIn / 2, 9);
    const mean = bars.rows.reduce((sum, count, i) => sum + count * (bars.rowHeightsIn[i] as number), 0) / bars.count;
    expect(bars.centroidIn).toBeCloseTo(mean, 9);
    expect(strands(14).bars).toMatchObject({count: 0, areaIn2: 0, rows: [], rowHeightsIn: []});
  });

  test("names the checks of transfer as its own", () => {
    const own = strands(14).checks.filter(({id}) => id.startsWith("beam transfer"));
    expect(own.length).toBeGreaterThan(2);
    for (const {id, label} of own) {
      expect(id).toMatch(/^beam transfer (compression|tension)/);
      expect(label).toMatch(/^Beam: [a-z]/);
    }
  });
});

describe("the ledge's checks", () => {
  test("look at each load where it stands, by the strength of that place", () => {
    const {checks, ledge, demand} = made({"edgeBeam.ledgeDepthIn": 14});
    const of = (id: string) => checks.find((check) => check.id === id);
    for (const {place, punching} of ledge?.punching ?? []) {
      expect(of(`ledge punching ${place}`)).toMatchObject({demand: demand.stemKip, capacity: punching.designKip});
      expect(of(`ledge punching ${place}`)?.label).toMatch(place === "end" ? /end of the beam/ : /stressed most/);
    }
    expect(of("ledge line")).toBeUndefined();
    // The place that asks for most bars, and for the closest, has them.
    const most = Math.max(...(ledge?.places ?? []).map(({steel}) => steel.topIn2PerFt));
    const closest = Math.min(...(ledge?.places ?? []).map(({steel}) => steel.greatestSpacingIn));
    expect(ledge?.bars.spacingIn).toBe(Math.floor(2 * Math.min((12 * (ledge?.bars.bar.areaIn2 ?? NaN)) / most, closest)) / 2);
  });

  test("of planks compare a foot of them with a foot of ledge, in shear and in bearing", () => {
    const wing = edgeBeamOf(seed("classroom-wing"));
    const line = checkOf(wing, "ledge line");
    expect(line?.demand).toBeCloseTo(wing.demand.stemKip, 9);
    expect(line?.capacity).toBeCloseTo((wing.ledge?.linePlf ?? NaN) / 1000, 9);
    // 0.65 x 0.85 f'c over a foot by the strip's length; nothing spreads along the beam.
    const {edgeBeam, deck} = seed("classroom-wing");
    const lengthIn = Math.min(edgeBeam.padLengthIn, wing.seat.nominalIn);
    expect(checkOf(wing, "ledge bearing")?.capacity).toBeCloseTo((0.65 * 0.85 * Math.min(edgeBeam.strengthPsi, deck.strengthPsi) * 12 * lengthIn) / 1000, 6);
    expect(checkOf(wing, "ledge bearing")?.demand).toBeCloseTo(wing.demand.stemKip, 9);
  });

  test("stand alone with a ledge: no other kind of beam has them", () => {
    for (const kind of ["pockets", "below"]) {
      const ids = made({"edgeBeam.kind": kind}).checks.map(({id}) => id);
      expect(ids.filter((id) => /^ledge (projection|depth|layers|punching|line|bars)/.test(id))).toEqual([]);
      expect(ids.some((id) => id.startsWith("pocket"))).toBe(kind === "pockets");
    }
  });

  test("bear a stem on a beam below the deck by the beam's whole top, not by its seat", () => {
    const below = made({"edgeBeam.kind": "below", "edgeBeam.padLengthIn": 5});
    // Twice the bearing at most: (14 / 5)^2 is more than 4.
    expect(checkOf(below, "ledge bearing")?.capacity).toBeCloseTo((0.65 * 0.85 * 5000 * 4.75 * 5 * 2) / 1000, 6);
  });
});

describe("the edge beam with strands on its way, by hand", () => {
  test("asks for bars at 30 ksi that take the whole pull of its top over the lifting points", () => {
    const beam = made({"edgeBeam.steel": "strands", "edgeBeam.strands": 20, "edgeBeam.coverIn": 1.25});
    const {member} = beam.strands ?? {};
    const {way} = beam.handling;
    if (!member || way.steel !== "strands") throw new Error("strands are asked");
    // Strands at one height pull most where the weight helps least: over the lifting points, 0.06 x 30 ft = 21.6 in from the ends.
    const {initialForceKip, eccentricityIn} = prestressState(member, 30, 0.06, 0);
    const overhangKipIn = (1.3 * 1.1625 * 21.6 ** 2) / 2 / 12;
    const bendingKipIn = initialForceKip * eccentricityIn + overhangKipIn;
    const topKsi = (bendingKipIn * (74 - YB)) / INERTIA - initialForceKip / AREA;
    const soffitKsi = initialForceKip / AREA + (bendingKipIn * YB) / INERTIA;
    const depthIn = (74 * topKsi) / (topKsi + soffitKsi);
    expect(depthIn).toBeLessThan(64);
    const steelIn2 = (14 * depthIn * topKsi) / 2 / 30;
    // Release strength is 0.7 x 5,000 psi; 6 root f'ci near the ends.
    const allowedKsi = (6 * Math.sqrt(3500)) / 1000;
    expect(topKsi).toBeGreaterThan(allowedKsi);
    expect(way.steps[0]?.topTensionKsi).toBeCloseTo(topKsi, 6);
    expect(way.steps[0]?.topSteelIn2).toBeCloseTo(steelIn2, 6);
    const check = checkOf(beam, "beam stripping tension top");
    expect(check).toMatchObject({verdict: "near", word: "needs top steel", capacity: expect.closeTo(allowedKsi, 9)});
    expect(check?.message).toContain(`${steelIn2.toFixed(2)} in² of bonded bars`);
    expect(checkOf(beam, "beam stripping tension soffit")?.verdict).toBe("ok");
    // Six strands pull it less than the concrete may take, and ask for none.
    expect(checkOf(made({"edgeBeam.steel": "strands", "edgeBeam.strands": 6, "edgeBeam.coverIn": 1.25}), "beam stripping tension top")).not.toHaveProperty("word");
  });
});

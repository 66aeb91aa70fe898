import {describe, expect, test} from "vitest";
import type {Check} from "../../lib/checks.js";
import {withValues} from "../../lib/design/edit.js";
import type {Design} from "../../lib/design/design.js";
import {edgeBeamChecks} from "../../lib/edgeBeam/edgeBeamChecks.js";
import type {UncheckedBeam} from "../../lib/edgeBeam/unchecked.js";
import type {EdgeBeamLedge} from "../../lib/edgeBeam/ledge.js";
import type {BarService, StrandService} from "../../lib/edgeBeam/service.js";
import {mostCoverIn} from "../../lib/edgeBeam/twist.js";
import type {Handled} from "../../lib/member/stripping.js";
import {seed} from "../support/designs.js";
import {edgeBeamOf, floorOf} from "../support/madeBeams.js";
import {once} from "../support/once.js";

/** Beams that hold, one thing of which at a time is brought to its limit, and beyond it. */
const library = once(() => seed("branch-library"));
const withStrands = once(() => withValues(library(), {"edgeBeam.steel": "strands", "edgeBeam.strands": 14, "edgeBeam.coverIn": 1.25}));
const barBeam = once(() => edgeBeamOf(library()));
const strandBeam = once(() => edgeBeamOf(withStrands()));

const checksOf = (design: Design, beam: UncheckedBeam, changes: Partial<UncheckedBeam>) => edgeBeamChecks(design, floorOf(design).deck, {...beam, ...changes});
function checkOf(id: string, changes: Partial<UncheckedBeam>, beam: UncheckedBeam = barBeam(), design: Design = library()): Check {
  const check = checksOf(design, beam, changes).find((one) => one.id === id);
  if (!check) throw new Error(`no check ${id}`);
  return check;
}
const ofStrands = (id: string, changes: Partial<UncheckedBeam>) => checkOf(id, changes, strandBeam(), withStrands());
const inService = (changes: Partial<StrandService>): Partial<UncheckedBeam> => ({service: {...strandBeam().service as StrandService, ...changes}});
const faces = (bottomKsi: number, topKsi: number) => ({...(strandBeam().service as StrandService).total, bottomKsi, topKsi});

describe("a check of the edge beam with bars", () => {
  type AtShare = (share: number, beam: UncheckedBeam) => Partial<UncheckedBeam>;
  const AT: Readonly<Record<string, AtShare>> = {
    "beam strength": (share, {strength}) => ({momentKipIn: share * strength.designMomentKipIn}),
    "beam bottom steel": (share) => ({bottomUse: share}),
    "beam shear": (share, {greatestShearKip}) => ({shearKip: share * greatestShearKip}),
    "beam sag": (share, {service}) => ({service: {...service, countedIn: share * service.allowedIn}}),
    // Strain of 0.005 is the least (ACI 318-19 9.3.3.1), so a share of it is asked the other way round.
    "beam ductility": (share, {strength}) => ({strength: {...strength, tensileStrain: 0.005 / share}}),
    "beam least steel": (share, {bars, leastSteel}) => ({bars: {...bars, areaIn2: leastSteel.areaIn2 / share}}),
  };

  test.each(Object.keys(AT))("holds at its limit and fails a hundredth beyond: %s", (id) => {
    const at = AT[id] as AtShare;
    expect(checkOf(id, at(0.9, barBeam())).verdict).toBe("ok");
    expect(checkOf(id, at(1, barBeam()))).toMatchObject({verdict: "near", utilization: expect.closeTo(1, 9)});
    expect(checkOf(id, at(1.01, barBeam())).verdict).toBe("fails");
  });

  test("takes bars that stand just as far apart as cracks allow, stirrups and ledge bars just as close as concrete flows", () => {
    const service = barBeam().service as BarService;
    const cracks = (spacingIn: number) => checkOf("beam cracks", {service: {...service, spacingIn}}).verdict;
    expect([cracks(service.greatestSpacingIn), cracks(1.01 * service.greatestSpacingIn)]).toEqual(["ok", "fails"]);
    const {stirrups, ledge} = barBeam();
    if (!stirrups || !ledge) throw new Error("the library's beam has both");
    const cage = (spacingIn: number) => checkOf("beam stirrups", {stirrups: {...stirrups, spacingIn}}).verdict;
    const across = (spacingIn: number) => checkOf("ledge bars", {ledge: {...ledge, bars: {...ledge.bars, spacingIn}}}).verdict;
    expect([cage(3), cage(2.9), across(3), across(2.9)]).toEqual(["ok", "fails", "ok", "fails"]);
  });

  test("names the clause by which the least steel was found: by width, or a third more than the moment needs", () => {
    const {leastSteel} = barBeam();
    const clause = (areaIn2: number) => checkOf("beam least steel", {leastSteel: {...leastSteel, areaIn2, crackingIn2: 4}}).clause;
    expect([clause(3.9), clause(4)]).toEqual(["ACI 318-19 9.6.1.3", "ACI 318-19 9.6.1.2"]);
  });

  test("says whether stirrups carry part of the shear, or the concrete all of it", () => {
    const words = (shearKip: number) => checkOf("beam shear", {shearKip, concreteShearKip: 50}).message;
    expect(words(50)).toMatch(/^The concrete carries the shear/);
    expect(words(51)).toMatch(/^Stirrups can carry/);
  });

  test("designs neither twist nor stirrups where one of them is missing, and does not tell them as checked", () => {
    for (const missing of [{twist: undefined}, {stirrups: undefined}]) {
      const ids = checksOf(library(), barBeam(), missing).map(({id}) => id);
      expect(ids).toContain("beam cage");
      expect(ids).not.toContain("beam stirrups");
      expect(ids).not.toContain("beam shear and torsion");
    }
  });

  test("counts the sag that the floor's limit counts, and says which", () => {
    const label = (limit: string) => {
      const design = withValues(library(), {"criteria.sagLimit": limit});
      return checkOf("beam sag", {}, barBeam(), design).label;
    };
    expect(label("L/360")).toBe("Beam deflection under live load");
    expect(label("L/480")).toBe("Beam deflection after partitions");
  });

  test("a payload just met is legal, more of it needs a permit", () => {
    const {handling} = barBeam();
    const weigh = (weightKip: number) => checkOf("beam weight", {handling: {...handling, weightKip}});
    expect(weigh(handling.payloadKip)).toMatchObject({verdict: "near"});
    expect(weigh(handling.payloadKip)).not.toHaveProperty("word");
    expect(weigh(1.01 * handling.payloadKip)).toMatchObject({verdict: "near", word: "needs a permit"});
  });

  test("tells the form from the road, and fails there at what the concrete of that day bears", () => {
    const {handling} = barBeam();
    for (const [moment, where] of [["stripping", "stripped from its form"], ["hauling", "on the road"]] as const) {
      const at = (share: number) => ({handling: {...handling, way: {steel: "bars" as const, steps: handling.way.steps.map((step) => ({...step, tensionKsi: share * step.allowedTensionKsi, compressionKsi: share * step.allowedCompressionKsi}))}}});
      for (const what of ["tension", "compression"]) {
        const id = `beam ${moment} ${what}`;
        expect(checkOf(id, at(1)).label).toContain(where);
        expect([checkOf(id, at(1)).verdict, checkOf(id, at(1.01)).verdict]).toEqual(["near", "fails"]);
      }
    }
  });
});

describe("a check of the edge beam with strands", () => {
  const hung = (changes: Partial<Handled>): Partial<UncheckedBeam> => {
    const {handling} = strandBeam();
    if (handling.way.steel !== "strands") throw new Error("strands are asked");
    return {handling: {...handling, way: {steel: "strands", steps: handling.way.steps.map((step) => ({...step, ...changes}))}}};
  };
  const LIMITS = {allowedTensionKsi: 0.3, allowedCompressionKsi: 2, topSteelIn2: 0.456};

  test.each(["stripping", "hauling"])("asks for bonded bars where its top is pulled beyond the limit, as a deck's does, and fails where its soffit is: %s", (moment) => {
    const top = (topTensionKsi: number) => ofStrands(`beam ${moment} tension top`, hung({...LIMITS, topTensionKsi}));
    expect(top(0.3)).toMatchObject({verdict: "near", demand: 0.3, capacity: 0.3});
    expect(top(0.3).word).toBeUndefined();
    expect(top(0.31)).toMatchObject({verdict: "near", word: "needs top steel", demand: 0.31, capacity: 0.3});
    expect(top(0.31).message).toContain("0.46 in² of bonded bars");
    const soffit = (soffitTensionKsi: number) => ofStrands(`beam ${moment} tension soffit`, hung({...LIMITS, soffitTensionKsi})).verdict;
    expect([soffit(0.3), soffit(0.31)]).toEqual(["near", "fails"]);
    const squeeze = (compressionKsi: number) => ofStrands(`beam ${moment} compression`, hung({...LIMITS, compressionKsi}));
    expect([squeeze(2).verdict, squeeze(2.01).verdict]).toEqual(["near", "fails"]);
    // Its release strength follows its strength, so that is what a reader can change.
    expect(squeeze(2.01).message).toMatch(/: stronger concrete or fewer strands\.$/);
  });

  test("keeps the top, and the soffit, to 0.45 f'c under what stays and 0.60 f'c under all", () => {
    const psi = library().edgeBeam.strengthPsi;
    for (const [id, share, part] of [["beam sustained compression", 0.45, "sustained"], ["beam total compression", 0.6, "total"]] as const) {
      const limitKsi = (share * psi) / 1000;
      for (const at of [(ksi: number) => faces(ksi, 0.1), (ksi: number) => faces(0.1, ksi)]) {
        expect(ofStrands(id, inService({soffitNearEndKsi: 0, [part]: at(limitKsi)})).verdict).toBe("near");
        expect(ofStrands(id, inService({soffitNearEndKsi: 0, [part]: at(1.01 * limitKsi)})).verdict).toBe("fails");
      }
      // What is pulled in both faces is not squeezed at all.
      expect(ofStrands(id, inService({soffitNearEndKsi: 0, [part]: faces(-0.1, -0.2)})).demand).toBe(0);
    }
    // Near the ends little load relieves the soffit; what is there of the load for a while alone is not counted on.
    const near = {soffitNearEndKsi: (0.46 * psi) / 1000, sustained: faces(0.1, 0.1), total: faces(0.1, 0.1)};
    expect(ofStrands("beam sustained compression", inService(near))).toMatchObject({verdict: "fails", message: expect.stringContaining("the soffit too hard near the ends")});
    expect(ofStrands("beam total compression", inService(near)).demand).toBe(0.1);
  });

  test("is out of range once its soffit is pulled by more than 12 sqrt(f'c), where class C begins", () => {
    const limitKsi = (12 * Math.sqrt(library().edgeBeam.strengthPsi)) / 1000;
    expect(ofStrands("beam tension", inService({total: faces(-limitKsi, 1)})).verdict).toBe("near");
    expect(ofStrands("beam tension", inService({total: faces(-1.01 * limitKsi, 1)})).verdict).toBe("out of range");
    expect(ofStrands("beam tension", inService({total: faces(0.3, 1)}))).toMatchObject({demand: 0, verdict: "ok"});
  });

  test("is stronger than 1.2 times its first crack, and its strands have places", () => {
    const {strands, strength} = strandBeam();
    if (!strands) throw new Error("the beam has strands");
    const cracking = (share: number) => ofStrands("beam least steel", {strands: {...strands, leastKipIn: share * strength.designMomentKipIn}}).verdict;
    expect([cracking(0.9), cracking(1), cracking(1.01)]).toEqual(["ok", "near", "fails"]);
    const asked = (more: number) => ofStrands("beam strands", {strands: {...strands, asked: strands.places + more}}).verdict;
    expect([asked(0), asked(1)]).toEqual(["ok", "fails"]);
    expect(checksOf(withStrands(), strandBeam(), {}).some(({id}) => id === "beam ductility")).toBe(false);
  });

  test("bears the beam's name as its strands are cut, and is mended by columns closer together, not a shorter span", () => {
    const {transfer} = strandBeam().service as StrandService;
    const pulled = {...transfer, places: transfer.places.map((place) => ({...place, topSteelIn2: 0, stresses: {...place.stresses, bottomKsi: -9}}))};
    const check = ofStrands("beam transfer tension midspan", inService({transfer: pulled}));
    expect(check.label).toBe("Beam: tension at midspan when the strands are cut");
    expect(check).toMatchObject({verdict: "fails", message: expect.stringContaining("columns closer together")});
  });

  test("names what carries the moment: strands, and bars beside them where there are some", () => {
    const {bars} = strandBeam();
    const words = (count: number) => ofStrands("beam strength", {momentKipIn: 1, bars: {...bars, count}}).message;
    expect(words(0)).toBe("14 strands carry the factored moment.");
    expect(words(2)).toMatch(/^14 strands and 2 #\d+ bars carry/);
  });
});

describe("a check of the ledge", () => {
  const ledgeOf = (beam: UncheckedBeam): EdgeBeamLedge => {
    if (!beam.ledge) throw new Error("the beam has a ledge");
    return beam.ledge;
  };

  test("tells the stem beside the beam's end from the one inside", () => {
    expect(checkOf("ledge punching end", {}).label).toMatch(/nearest the end of the beam/);
    expect(checkOf("ledge punching interior", {}).label).toMatch(/stressed most/);
  });

  test("looks across the ledge where the shortest length has to carry, whichever place that is", () => {
    // Columns of 24 in and tees of 8 ft leave the last stem little ledge to share.
    const ledge = ledgeOf(edgeBeamOf(library(), {"bay.beamSpanFt": 20, "deck.member": "8DT32", "deck.pattern": "108-S", "column.sideIn": 24}));
    const [inside, end] = ledge.places as [EdgeBeamLedge["places"][0], EdgeBeamLedge["places"][0]];
    const capacity = (places: EdgeBeamLedge["places"]) => checkOf("ledge shear", {ledge: {...ledge, places}}).capacity;
    expect(end.steel.greatestShearKip).toBeLessThan(inside.steel.greatestShearKip - 1);
    expect(capacity([inside, end])).toBe(Math.min(inside.steel.greatestShearKip, end.steel.greatestShearKip));
    expect(capacity([end, inside])).toBe(capacity([inside, end]));
  });

  test("is deep enough where two layers of bars just have their cover", () => {
    const depth = (ledgeDepthIn: number) => checkOf("ledge layers", {}, barBeam(), withValues(library(), {"edgeBeam.coverIn": 1.5, "edgeBeam.ledgeDepthIn": ledgeDepthIn})).verdict;
    // 2 (1.5 + 0.5) = 4 in.
    expect(depth(4)).toBe("ok");
    expect(edgeBeamOf(library(), {"edgeBeam.coverIn": 1.5, "edgeBeam.ledgeDepthIn": 4}).ledge).toBeDefined();
    expect(edgeBeamOf(library(), {"edgeBeam.coverIn": 1.75, "edgeBeam.ledgeDepthIn": 4}).ledge).toBeUndefined();
  });

  test("is sheared by each foot of planks, and bears it", () => {
    const wing = seed("classroom-wing");
    const beam = edgeBeamOf(wing);
    const ledge = ledgeOf(beam);
    const line = (share: number) => checkOf("ledge line", {ledge: {...ledge, loadKip: (share * (ledge.linePlf ?? NaN)) / 1000}}, beam, wing).verdict;
    expect([line(1), line(1.01)]).toEqual(["near", "fails"]);
    const bearing = checkOf("ledge bearing", {}, beam, wing);
    // A foot of planks on 4 in: 0.65 x 0.85 f'c x 12 x 4 in2 at the least, more where the ledge reaches beyond.
    const {padLengthIn, strengthPsi} = wing.edgeBeam;
    const weaker = Math.min(strengthPsi, wing.deck.strengthPsi) / 1000;
    expect(bearing.capacity).toBeGreaterThanOrEqual(0.65 * 0.85 * weaker * 12 * Math.min(padLengthIn, beam.seat.nominalIn) - 1e-9);
    expect(bearing.demand).toBeCloseTo(beam.demand.stemKip, 12);
    const crushing = checkOf("ledge bearing", {demand: {...beam.demand, stemKip: 1.01 * bearing.capacity}}, beam, wing);
    expect(crushing.verdict).toBe("fails");
    const ids = checksOf(wing, beam, {}).map(({id}) => id);
    expect(ids.filter((id) => id.startsWith("pad"))).toEqual([]);
  });

  test("gives way to pockets with an inch between a stirrup's legs, and to covers that just leave room for the cage", () => {
    const pockets = withValues(library(), {"edgeBeam.kind": "pockets", "edgeBeam.coverIn": 1.5});
    const web = (netWebIn: number) => checkOf("pocket web", {netWebIn}, edgeBeamOf(pockets), pockets).verdict;
    // Twice 1.5 in of cover and a #4, and an inch.
    expect([web(5), web(4.9)]).toEqual(["ok", "fails"]);
    const most = mostCoverIn(barBeam());
    const cage = (coverIn: number) => checkOf("beam cage", {}, barBeam(), {...library(), edgeBeam: {...library().edgeBeam, coverIn}}).verdict;
    expect([cage(most), cage(most + 0.01)]).toEqual(["ok", "fails"]);
  });

  test("bears a stem on the width of its pad that lies under it, and spreads the load as far as its seat or the beam's top", () => {
    const of = (changes: Record<string, unknown>) => {
      const design = withValues(library(), {"edgeBeam.padWidthIn": 5, "edgeBeam.padLengthIn": 5, "edgeBeam.jointGapIn": 1, "edgeBeam.ledgeProjectionIn": 8, "edgeBeam.webWidthIn": 14, "deck.strengthPsi": 5000, "edgeBeam.strengthPsi": 5000, ...changes});
      return {design, beam: edgeBeamOf(design)};
    };
    // A stem of 4.75 in on 5 in: 0.65 x 0.85 x 5 x 23.75 = 65.6 kip, times 7/5 on a seat of 7 in, times 2 at the most on a top of 14.
    const bears = (kind: string) => of({"edgeBeam.kind": kind}).beam.checks.find(({id}) => id === "ledge bearing")?.capacity;
    expect(bears("ledge")).toBeCloseTo(0.65 * 0.85 * 5 * 23.75 * (7 / 5), 6);
    expect(bears("below")).toBeCloseTo(0.65 * 0.85 * 5 * 23.75 * 2, 6);
    // A pad of 8 in on a top of 14: all of the top helps, the joint beside the deck included.
    const wide = of({"edgeBeam.kind": "below", "edgeBeam.padLengthIn": 8}).beam.checks.find(({id}) => id === "ledge bearing");
    expect(wide?.capacity).toBeCloseTo(0.65 * 0.85 * 5 * 4.75 * 8 * (14 / 8), 6);
    // Of a pad of 12 in on a seat of 7 only what lies on it counts: 4.75 x 7 in2 under the service load.
    const long = of({"edgeBeam.padLengthIn": 12}).beam;
    expect(long.checks.find(({id}) => id === "pad place")?.verdict).toBe("fails");
    expect(long.checks.find(({id}) => id === "pad stress")?.demand).toBeCloseTo((1000 * long.demand.stemServiceKip) / (4.75 * 7), 6);
    expect(long.checks.find(({id}) => id === "ledge bearing")?.capacity).toBeCloseTo(0.65 * 0.85 * 5 * 4.75 * 7, 6);
    // With room left on its seat of 7 in, half an inch from its edge, a pad may become longer; one that fills it needs a wider ledge.
    const asks = (padLengthIn: number, kind = "ledge", member = "10DT32") => {
      const {beam, design} = of({"edgeBeam.padLengthIn": padLengthIn, "edgeBeam.kind": kind, "deck.member": member, ...(member === "4HC8" ? {"deck.pattern": "76-S"} : {})});
      return checksOf(design, beam, {demand: {...beam.demand, stemKip: 1e4, stemServiceKip: 1e4}}).filter(({id}) => ["pad stress", "ledge bearing"].includes(id)).map(({message}) => /: (.*?)(, or stronger concrete)?\.$/.exec(message)?.[1]);
    };
    expect(asks(6)).toEqual(["a longer or thinner pad", "a larger pad, a wider ledge"]);
    expect(asks(6.5)).toEqual(["a larger pad and a wider ledge", "a larger pad and a wider ledge"]);
    expect(asks(12, "pockets")).toEqual(["a larger pad and a deeper pocket", "a larger pad and a deeper pocket"]);
    expect(asks(12, "below")).toEqual(["a longer or thinner pad", "a larger pad, a wider beam"]);
    expect([asks(6, "ledge", "4HC8"), asks(6.5, "ledge", "4HC8")]).toEqual([["longer pads"], ["longer pads and a wider ledge"]]);
    const width = (padWidthIn: number) => ledgeOf(of({"edgeBeam.padWidthIn": padWidthIn}).beam).places[0]?.ledge.bearingWidthIn;
    expect([width(4), width(5)]).toEqual([4, 4.75]);
  });

  test("has none of a beam whose deck lies on it, and pockets have their own", () => {
    const ids = (kind: string) => {
      const design = withValues(library(), {"edgeBeam.kind": kind});
      return edgeBeamOf(design).checks.map(({id}) => id);
    };
    expect(ids("below").filter((id) => id.startsWith("ledge ") && id !== "ledge bearing")).toEqual([]);
    expect(ids("pockets").filter((id) => id.startsWith("pocket"))).toEqual(["pocket stems", "pocket web", "pocket foot", "pocket twist"]);
  });
});

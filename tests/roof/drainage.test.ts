import {describe, expect, test} from "vitest";
import {withValues} from "../../lib/design/edit.js";
import {evaluate} from "../../lib/evaluate.js";
import {FILL_LIMIT, fillRatio} from "../../lib/member/fillRatio.js";
import {drainageChecks, fallInPerFt} from "../../lib/roof/drainageChecks.js";
import {fallPlan} from "../../lib/roof/fallPlan.js";
import type {Ponding} from "../../lib/roof/ponding.js";
import type {RoofResult} from "../../lib/roof/roof.js";
import {ROOF_INTERVALS, camberAtAge, roofSurface} from "../../lib/roof/surface.js";
import {catalog, seed} from "../support/designs.js";

const design = (more: Readonly<Record<string, unknown>> = {}) => withValues(seed("branch-library"), {
  "roof.given": "deck", "roof.member": "10DT24", "roof.pattern": "88-S", "roof.toppingIn": 0, "roof.drainage": "bearing", "roof.slopeInPerFt": 0.25,
  "snow.rainStaticIn": 2, "snow.rainHydraulicIn": 1, ...more,
});
const roofOf = (more: Readonly<Record<string, unknown>> = {}) => evaluate(design(more), catalog).roof as RoofResult;

/** Verdicts of a roof's drainage as if its water were otherwise. */
const verdicts = (more: Readonly<Record<string, unknown>>, water: Partial<Ponding> = {}, longTermIn?: number) => {
  const {deck, ponding} = roofOf(more);
  const camber = longTermIn === undefined ? deck.camber : {...deck.camber, longTermIn};
  return Object.fromEntries(drainageChecks(design(more), {...deck, camber}, {...ponding, ...water}).map(({id, verdict}) => [id, verdict]));
};

describe("a roof's fall", () => {
  test("is a quarter inch per foot at least, and just that is enough", () => {
    expect(verdicts({"roof.slopeInPerFt": 0.25})["fall"]).toBe("ok");
    expect(verdicts({"roof.slopeInPerFt": 0.24})["fall"]).toBe("fails");
  });

  test("is by camber what it rises over half the span in the long term, and none where it sags", () => {
    const camber = design({"roof.drainage": "camber", "bay.spanFt": 40});
    expect(fallInPerFt(camber, {camber: {...roofOf().deck.camber, longTermIn: 4}})).toBeCloseTo(0.2, 12);
    expect(fallInPerFt(camber, {camber: {...roofOf().deck.camber, longTermIn: -4}})).toBe(0);
    expect(verdicts({"roof.drainage": "camber", "bay.spanFt": 40}, {}, 5)["fall"]).toBe("ok");
    expect(verdicts({"roof.drainage": "camber", "bay.spanFt": 40}, {}, 4.9)["fall"]).toBe("fails");
  });
});

test("a roof that falls too little is mended by more slope, and by a slope at all where it falls by camber alone", () => {
  const words = (more: Readonly<Record<string, unknown>>) => {
    const {deck, ponding} = roofOf(more);
    return drainageChecks(design(more), deck, ponding).find(({id}) => id === "fall");
  };
  expect(words({"roof.slopeInPerFt": 0.1})?.message).toMatch(/: make the roof fall more steeply\.$/);
  expect(words({"roof.drainage": "camber"})).toMatchObject({verdict: "fails", label: "Mean fall by camber in the long term", message: expect.stringMatching(/: let tapered insulation or stepped bearings make the fall\.$/)});
});

describe("water on a roof", () => {
  test("may stay a quarter inch deep, which dries in two days", () => {
    expect(verdicts({}, {trappedIn: 0.25})["trapped water"]).not.toBe("fails");
    expect(verdicts({}, {trappedIn: 0.26})["trapped water"]).toBe("fails");
  });

  test("may bend deck and beam by a quarter of itself", () => {
    expect(FILL_LIMIT).toBe(0.25);
    expect(verdicts({}, {combined: 0.25})["ponding stiffness"]).not.toBe("fails");
    expect(verdicts({}, {combined: 0.251})["ponding stiffness"]).toBe("fails");
  });

  test("may weigh as much as the deck carries beside its layers, and has no weight where it gathers without end", () => {
    const {deck} = roofOf();
    const roomPsf = deck.safe.safeLoadPsf - deck.superimposedDeadPsf;
    expect(verdicts({}, {blockedPsf: 0.94 * roomPsf})["water load"]).toBe("ok");
    expect(verdicts({}, {blockedPsf: roomPsf + 0.1})["water load"]).toBe("fails");
    expect(verdicts({}, {blockedPsf: undefined})["water load"]).toBe("out of range");
  });

  test("stands on a level roof as deep as its drains are blocked, and with what the sag holds", () => {
    const level = roofOf({"roof.slopeInPerFt": 0, "roof.drainage": "camber"});
    // Three inches are 15.6 psf, less under the arch of the camber, 3.0 in less 2/3 of it on the mean.
    const [fresh] = level.ponding.states;
    const midspanIn = camberAtAge(level.member, level.deck.camber, 0.5, "new");
    expect(midspanIn).toBeGreaterThan(0.3);
    expect(fresh?.blocked.bays[0]?.depthIn[ROOF_INTERVALS / 2]).toBeCloseTo(3 - midspanIn + (fresh?.blocked.bays[0]?.sagIn ?? NaN), 2);
    expect(level.ponding.blockedPsf).toBeLessThan(15.6);
    expect(level.ponding.blockedPsf).toBeGreaterThan(15.6 * (1 - midspanIn / 3));
  });
});

test("the surface rises with the fall and arches anew over each bay", () => {
  const {plan, member, deck} = roofOf();
  const {bay} = design();
  const surface = roofSurface(plan, bay, member, deck.camber, "in the long term");
  expect(surface).toHaveLength(bay.baysAcross);
  const [first] = surface;
  // Drains at the girders: the outer edge is high, by 1/4 in on each of 40 ft.
  expect(first?.[0]).toMatchObject({atFt: 0, heightIn: 10, drains: false});
  expect(first?.[ROOF_INTERVALS]).toMatchObject({atFt: 40, drains: true});
  expect(first?.[ROOF_INTERVALS]?.heightIn).toBeCloseTo(0, 9);
  expect(first?.[ROOF_INTERVALS / 2]?.heightIn).toBeCloseTo(5 + deck.camber.longTermIn, 9);
  expect(camberAtAge(member, deck.camber, 0.5, "new")).toBeCloseTo(deck.camber.toppedIn + deck.camber.superimposedIn, 12);
  expect(fallPlan(design())).toEqual(plan);
});

test("water is told at the age at which it is deepest, and at which it weighs most", () => {
  const {ponding: {states: [fresh, old], trappedIn, blockedPsf}} = roofOf({"roof.drainage": "taper", "roof.slopeInPerFt": 0, "roof.pattern": "148-S"});
  // Its camber grows, and with it the hollows over the bearings; when the drains are blocked the higher arch leaves less room for water.
  expect(old?.after.greatestIn).toBeGreaterThan((fresh?.after.greatestIn ?? NaN) + 0.1);
  expect(trappedIn).toBe(old?.after.greatestIn);
  expect(fresh?.blocked.momentPsf).toBeGreaterThan((old?.blocked.momentPsf ?? NaN) + 0.1);
  expect(blockedPsf).toBe(fresh?.blocked.momentPsf);
});

describe("flexibility against ponding", () => {
  test("is that of the member, and of each beam under the roof that it carries", () => {
    const {ponding, member, edgeBeam, girder} = roofOf();
    expect(ponding.ratio).toBeCloseTo(fillRatio(62.4, 120, 40, member.modulusKsi, member.full.inertiaIn4), 12);
    expect(ponding.amplification).toBeCloseTo(1 / (1 - ponding.ratio), 12);
    const edge = ponding.beams.find(({beam}) => beam === "edge beam");
    const inner = ponding.beams.find(({beam}) => beam === "girder");
    // Half a bay of 40 ft on the edge, a whole one inside.
    expect(edge?.widthIn).toBe(240);
    expect(inner?.widthIn).toBe(480);
    const {service} = edgeBeam;
    expect(edge?.inertiaIn4).toBe(service.steel === "bars" ? service.effectiveInertiaIn4 : NaN);
    expect(inner?.inertiaIn4).toBe(girder?.member.full.inertiaIn4);
    expect(ponding.combined).toBeCloseTo(Math.max(edge?.ratio ?? 0, inner?.ratio ?? 0) + 0.9 * ponding.ratio, 12);
    expect(roofOf({"bay.baysAcross": 1}).ponding.beams).toHaveLength(1);
  });

  test("is the strands' whole section in an edge beam of strands", () => {
    const {ponding, edgeBeam} = roofOf({"edgeBeam.steel": "strands"});
    expect(ponding.beams.find(({beam}) => beam === "edge beam")?.inertiaIn4).toBe(edgeBeam.strands?.member.full.inertiaIn4);
  });

  test("leaves no amplification where water gathers without end", () => {
    const soft = roofOf({"roof.member": "4FS4", "roof.pattern": "46-S", "bay.spanFt": 60, "roof.slopeInPerFt": 0});
    expect(soft.ponding.ratio).toBeGreaterThan(1);
    expect(soft.ponding.amplification).toBeUndefined();
    expect(soft.ponding.blockedPsf).toBeUndefined();
  });
});

import {expect, test} from "vitest";
import {edgeBeamSection} from "../../lib/edgeBeam/section.js";
import {designCriteria, handbookCriteria} from "../../lib/deck/criteria.js";
import {HANDBOOK_LIMITS, LOAD_LIMITS, limitsOf} from "../../lib/deck/limits.js";
import {evaluate} from "../../lib/evaluate.js";
import {catalog, seed} from "../support/designs.js";

test("handbookCriteria count 10 psf of the load as dead on bare members and 15 psf on topped ones", () => {
  expect(handbookCriteria(false)).toMatchObject({superimposedDeadPsf: 10, sustainedLiveShare: 0, tensionClass: "T", deadFactor: 1.2, liveFactor: 1.6, deadOnlyFactor: 1.2});
  expect(handbookCriteria(false).limits).toEqual(HANDBOOK_LIMITS);
  expect(handbookCriteria(true)).toEqual({...handbookCriteria(false), superimposedDeadPsf: 15});
});

test.each(["ledge", "pockets", "below"] as const)("a design's deck bears on as much as its edge beam of the kind %s gives it", (kind) => {
  const design = seed("branch-library");
  const edgeBeam = {...design.edgeBeam, kind, webWidthIn: 14, ledgeProjectionIn: 8, jointGapIn: 1};
  const {seatIn} = designCriteria({...design, edgeBeam}, catalog, 20);
  expect(seatIn).toBe(kind === "below" ? 13 : 7);
  expect(seatIn).toBe(edgeBeamSection({...design, edgeBeam}, evaluate(design, catalog).member).seat.nominalIn);
});

test("a design's deck keeps its camber, its walkers and its hours of fire only where they are asked", () => {
  const design = seed("branch-library");
  const of = (changes: Partial<typeof design.criteria>) => designCriteria({...design, criteria: {...design.criteria, ...changes}}, catalog, 20);
  expect(of({keepCamber: true}).limits).toEqual(LOAD_LIMITS);
  expect(of({keepCamber: false}).limits).toEqual(LOAD_LIMITS.filter((name) => name !== "camber"));
  expect(of({walking: "none"}).walking).toBeUndefined();
  expect(of({walking: "quiet"}).walking).toBe("quiet");
  expect(of({fireHours: "0"}).fire).toBeUndefined();
  expect(of({fireHours: "2", fireRestrained: true}).fire).toMatchObject({hours: 2, restrained: true, aggregate: design.deck.aggregate, tables: catalog.fire});
});

test("the limits of a list come in reading order, however the list names them", () => {
  expect(limitsOf(["fire", "shear", "camber"]).map(({name}) => name)).toEqual(["shear", "camber", "fire"]);
  expect(limitsOf([])).toEqual([]);
});

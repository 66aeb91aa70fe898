import {describe, expect, test} from "vitest";
import {readMemberFile} from "../../lib/report/memberFile.js";
import {LOAD_LIMITS} from "../../lib/deck/limits.js";
import {refused} from "../support/errors.js";
import {catalog} from "../support/designs.js";
import {memberWith} from "../support/members.js";

const FILE = {
  name: "Tee over the reading room",
  shape: {designation: "10DT24"} as Record<string, unknown>,
  strands: {pattern: "88-S"} as Record<string, unknown>,
  concrete: {kind: "normalweight", strengthPsi: 5000, releaseStrengthPsi: 3500} as Record<string, unknown>,
  spanFt: 40 as unknown,
  loads: {superimposedDeadPsf: 10, livePsf: 60} as Record<string, unknown>,
};

const read = (changed: Record<string, unknown> = {}) => readMemberFile(JSON.stringify({...FILE, ...changed}), catalog);

describe("a member's file", () => {
  test("by designation and pattern is the catalog's member", () => {
    const {member, spanFt, livePsf, criteria} = read();
    expect(member).toEqual(memberWith("10DT24", "88-S"));
    expect({spanFt, livePsf, superimposedDeadPsf: criteria.superimposedDeadPsf}).toEqual({spanFt: 40, livePsf: 60, superimposedDeadPsf: 10});
    expect(criteria.limits).toEqual(LOAD_LIMITS.filter((name) => name !== "camber"));
  });

  test("by family and every dimension is the same member", () => {
    const {dimensions} = memberWith("10DT24", "88-S").shape;
    expect(read({shape: {family: "double tee", dimensions}}).member.section).toEqual(memberWith("10DT24", "88-S").section);
    expect(read({shape: {designation: "10DT24", dimensions: {depthIn: 26}}}).member.section.depthIn).toBe(26);
  });

  test("takes strands by the height of their centroid, or row by row", () => {
    expect(read({strands: {pattern: "88-D1", heightEndIn: 12, heightMidspanIn: 4}}).member.layout).toMatchObject({centroidEndIn: 12, centroidCenterIn: 4, profile: "one-point"});
    const rows = [{count: 2, heightMidspanIn: 2}, {count: 2, heightMidspanIn: 4}, {count: 2, heightMidspanIn: 6}];
    expect(read({strands: {diameterSixteenths: 8, rows}}).member.layout).toMatchObject({count: 6, centroidEndIn: 4, centroidCenterIn: 4});
    const depressed = read({strands: {diameterSixteenths: 10, profile: "two-point", rows: [{count: 2, heightEndIn: 9, heightMidspanIn: 2.7}, {count: 2, heightEndIn: 11, heightMidspanIn: 3.3}]}}).member.layout;
    expect(depressed).toMatchObject({profile: "two-point", centroidEndIn: 10, centroidCenterIn: 3});
    expect(depressed.areaIn2).toBeCloseTo(4 * 0.217, 12);
  });

  test.each([
    ["in the voids of a plank", {shape: {designation: "4HC8"}, strands: {diameterSixteenths: 6, rows: [{count: 12, heightMidspanIn: 4}]}}, "strands.rows.0.count", /voids of this 4HC8/],
    ["too many for a plank's webs", {shape: {designation: "4HC8"}, strands: {diameterSixteenths: 6, rows: [{count: 15, heightMidspanIn: 1.5}]}}, "strands.rows.0.count", /voids of this 4HC8/],
    ["side by side in a narrow stem", {strands: {diameterSixteenths: 8, rows: [{count: 4, heightMidspanIn: 2}]}}, "strands.rows.0.count", /at most 2 in this 10DT24/],
    ["with too little cover in a stem", {shape: {designation: "10DT24", dimensions: {stemBottomIn: 2.6}}, strands: {diameterSixteenths: 8, rows: [{count: 2, heightMidspanIn: 1}]}}, "strands.rows.0.count", /at most 0/],
    ["odd in a tee", {strands: {diameterSixteenths: 8, rows: [{count: 1, heightMidspanIn: 2}, {count: 1, heightMidspanIn: 4}]}}, "strands.rows.0.count", /multiple of 2/],
    ["closer than strands may lie at the ends", {strands: {diameterSixteenths: 8, rows: [{count: 2, heightMidspanIn: 2}, {count: 2, heightMidspanIn: 3.5}]}}, "strands.rows.1.heightEndIn", /1\.75 in or more at the ends/],
    ["twice at one height", {strands: {diameterSixteenths: 8, rows: [{count: 2, heightMidspanIn: 2}, {count: 2, heightMidspanIn: 2}]}}, "strands.rows.1.heightEndIn", /one row/],
    ["through each other at midspan", {strands: {diameterSixteenths: 8, profile: "one-point", rows: [{count: 2, heightEndIn: 8, heightMidspanIn: 2}, {count: 2, heightEndIn: 12, heightMidspanIn: 2.3}]}}, "strands.rows.1.heightMidspanIn", /0\.5 in or more at midspan/],
    ["across each other on their way", {strands: {diameterSixteenths: 8, profile: "one-point", rows: [{count: 2, heightEndIn: 14, heightMidspanIn: 2}, {count: 2, heightEndIn: 8, heightMidspanIn: 4}]}}, "strands.rows.1.heightEndIn", /at the ends/],
    ["upside down", {strands: {diameterSixteenths: 8, profile: "one-point", rows: [{count: 2, heightEndIn: 2, heightMidspanIn: 12}]}}, "strands.rows.0.heightEndIn", /held down toward midspan/],
    ["upside down by their centroid", {strands: {pattern: "88-D1", heightEndIn: 4, heightMidspanIn: 12}}, "strands.strandHeightEndIn", /held down toward midspan/],
    ["depressed in a plank", {shape: {designation: "4HC8"}, strands: {diameterSixteenths: 6, profile: "one-point", rows: [{count: 6, heightEndIn: 1.5, heightMidspanIn: 1.5}]}}, "strands.pattern", /straight strands/],
    ["more than a beam is wide", {shape: {family: "rectangular beam", dimensions: {widthIn: 12, depthIn: 24}}, strands: {diameterSixteenths: 8, rows: [{count: 6, heightMidspanIn: 2}]}}, "strands.rows.0.count", /at most 5/],
  ])("refuses strands %s", (_, changed, path, allowed) => {
    refused(() => read(changed), {path, allowed});
  });

  test("gives rows the same room as a pattern in its usual places has", () => {
    for (const [designation, pattern] of [["10DT24", "88-S"], ["10DT32", "128-D1"], ["12DT28", "1010-S"], ["4HC8", "76-S"], ["4FS8", "88-S"]] as const) {
      const {layout} = memberWith(designation, pattern);
      const rows = layout.rows.map(({count, endIn, centerIn}) => ({count, heightEndIn: endIn, heightMidspanIn: centerIn}));
      expect(read({shape: {designation}, strands: {diameterSixteenths: layout.strand.sixteenths, profile: layout.profile, rows}}).member.layout).toEqual(layout);
    }
  });

  test("takes beams and slabs of any size", () => {
    const beam = read({
      shape: {family: "inverted tee", dimensions: {webWidthIn: 12, depthIn: 28, ledgeProjectionIn: 8, ledgeDepthIn: 12}},
      strands: {diameterSixteenths: 8, rows: [{count: 13, heightMidspanIn: 3.08}]},
    });
    expect(beam.member.section.areaIn2).toBe(28 * 12 + 12 * 16);
    expect(read({shape: {family: "flat slab", dimensions: {widthIn: 48, depthIn: 7}}, strands: {pattern: "66-S"}}).member.section.areaIn2).toBe(336);
  });

  test("is named by its designation, or by its family where it has none", () => {
    const dimensions = {widthIn: 48, depthIn: 7};
    const slab = {shape: {family: "flat slab", dimensions}, strands: {pattern: "66-S"}};
    expect(read(slab).member.shape.designation).toBe("flat slab");
    expect(read({...slab, shape: {...slab.shape, designation: "Stair landing"}}).member.shape.designation).toBe("Stair landing");
    refused(() => read({shape: {dimensions}}), {path: "shape", value: ["widthIn", "depthIn"]});
  });

  test("has its lowest strands where the catalog has them, or by its family: 1.5 in up in a slab, 2 in up in a tee", () => {
    const {dimensions} = memberWith("10DT24", "88-S").shape;
    const lowestIn = (changed: Record<string, unknown>) => Math.min(...read(changed).member.layout.rows.map(({endIn}) => endIn));
    expect(lowestIn({shape: {family: "double tee", dimensions}})).toBe(2);
    expect(lowestIn({shape: {family: "flat slab", dimensions: {widthIn: 48, depthIn: 7}}, strands: {pattern: "66-S"}})).toBe(1.5);
    for (const row of catalog.deckMembers.filter(({designation}) => ["10DT24", "4HC8", "4FS4"].includes(designation))) {
      expect(lowestIn({shape: {designation: row.designation}, strands: {pattern: "66-S"}}), row.designation).toBe(row.lowestStrandIn);
    }
  });

  test("with one height for straight strands has it at the ends and at midspan", () => {
    for (const height of ["heightEndIn", "heightMidspanIn"]) expect(read({strands: {pattern: "88-S", [height]: 6}}).member.layout).toMatchObject({centroidEndIn: 6, centroidCenterIn: 6});
  });

  test("takes for what it leaves out: no topping, 70 % of humidity, no live load that lasts, no rating, an unrestrained member, L/360 and 6 in of seat", () => {
    const {member, criteria} = read();
    expect(member.topping).toBeUndefined();
    expect(member.humidityPercent).toBe(70);
    expect(criteria).toMatchObject({sustainedLiveShare: 0, fire: undefined, walking: undefined, tensionClass: "T", sagLimit: "L/360", seatIn: 6});
    expect(read({criteria: {fireHours: 1}}).criteria.fire).toMatchObject({hours: 1, restrained: false, aggregate: "siliceous"});
    expect(read({criteria: {fireHours: 1, fireRestrained: true}}).criteria.fire?.restrained).toBe(true);
    expect(read({topping: {thicknessIn: 2, strengthPsi: 4000}}).member.topping).toMatchObject({thicknessIn: 2, concrete: {strengthPsi: 4000}});
  });

  test("may begin with a byte order mark, and is refused on one line where it is no JSON", () => {
    expect(readMemberFile(`\uFEFF${JSON.stringify(FILE)}`, catalog).spanFt).toBe(40);
    refused(() => readMemberFile(`x\uFEFF${JSON.stringify(FILE)}`, catalog), {allowed: "JSON text"});
    const long = `{"name":\n${"x".repeat(60)}`;
    const {message, value} = refused(() => readMemberFile(long, catalog), {path: ""});
    expect(value).toBe(long.slice(0, 40));
    expect(message).not.toContain("\n");
  });

  test("takes criteria of its own", () => {
    const {criteria} = read({criteria: {tensionClass: "C", sagLimit: "L/480", limits: ["strength", "deflection"], fireHours: 2, walking: "quiet", seatIn: 4}});
    expect(criteria).toMatchObject({tensionClass: "C", sagLimit: "L/480", limits: ["strength", "deflection"], walking: "quiet", seatIn: 4});
    expect(criteria.fire?.hours).toBe(2);
  });

  test.each([
    ["a span too short", {spanFt: 9}, {path: "spanFt", value: 9, allowed: "10 to 150 ft"}],
    ["a span too long", {spanFt: 151}, {path: "spanFt", allowed: "10 to 150 ft"}],
    ["a misspelled field", {spanFeet: 40}, {path: "spanFeet", allowed: /a member file has name, shape/}],
    ["a missing branch", {loads: undefined}, {path: "loads"}],
    ["a missing number", {loads: {superimposedDeadPsf: 10}}, {path: "loads.livePsf", allowed: "a number, 0 to 5000 psf"}],
    ["a negative load", {loads: {superimposedDeadPsf: -1, livePsf: 40}}, {path: "loads.superimposedDeadPsf"}],
    ["a pattern that does not parse", {strands: {pattern: "eight"}}, {path: "strands.pattern"}],
    ["strands that do not fit", {strands: {pattern: "608-S"}}, {path: "strands.pattern"}],
    ["a height above the member", {strands: {diameterSixteenths: 8, rows: [{count: 2, heightMidspanIn: 24}]}}, {path: "strands.rows.0.heightMidspanIn", allowed: "1 to 23 in"}],
    ["straight strands that rise", {strands: {diameterSixteenths: 8, rows: [{count: 2, heightMidspanIn: 4, heightEndIn: 8}]}}, {path: "strands.rows.0.heightEndIn"}],
    ["part of a strand", {strands: {diameterSixteenths: 8, rows: [{count: 1.5, heightMidspanIn: 4}]}}, {path: "strands.rows.0.count"}],
    ["a strand that is not made", {strands: {diameterSixteenths: 6.5, rows: [{count: 1, heightMidspanIn: 4}]}}, {path: "strands.pattern"}],
    ["concrete too weak", {concrete: {strengthPsi: 2000, releaseStrengthPsi: 3500}}, {path: "concrete.strengthPsi", allowed: "3000 to 12000 psi"}],
    ["release above the final strength", {concrete: {strengthPsi: 5000, releaseStrengthPsi: 5500}}, {path: "concrete.releaseStrengthPsi"}],
    ["an unknown shape", {shape: {designation: "10XX24"}}, {path: "shape.member"}],
    ["no shape", {shape: {}}, {path: "shape"}],
    ["a dimension that cannot be", {shape: {designation: "10DT24", dimensions: {flangeIn: 30}}}, {path: "shape.dimensions.flangeIn"}],
    ["an unknown limit", {criteria: {limits: ["beauty"]}}, {path: "criteria.limits.0"}],
    ["fire in a beam", {shape: {designation: "12RB24"}, strands: {pattern: "48-S"}, criteria: {fireHours: 1}}, {path: "criteria"}],
  ] as const)("with %s is refused by name, value and range", (_, changed, expected) => {
    refused(() => read(changed), expected as Parameters<typeof refused>[1]);
  });

  test("that is no JSON, or no object, is refused", () => {
    refused(() => readMemberFile("{", catalog), {path: "", allowed: "JSON text"});
    refused(() => readMemberFile("[]", catalog), {path: ""});
  });
});

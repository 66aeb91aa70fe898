import {describe, expect, test} from "vitest";
import {mainCover} from "../../lib/air/noise.js";
import {structureParts} from "../../lib/air/parts.js";
import {framePlan} from "../../lib/air/framePlan.js";
import {stemLines, stemSpaces} from "../../lib/air/spaces.js";
import {library} from "./model.js";

describe("the spaces along a floor of 120 ft", () => {
  test("lie between the stems of tees and between tees in turn, half spaces at both ends", () => {
    const {design, shape} = library();
    const spaces = stemSpaces(design, shape);
    // Stems at 30 and 90 in of every 120, 7.75 in wide under the flange and 4.75 at the soffit: 12 tees, 24 stems, 25 spaces.
    expect(spaces).toHaveLength(25);
    expect(spaces.slice(1, 4).map(({index, place, centerIn}) => [index, place, centerIn])).toEqual([[0, "between stems", 60], [1, "between tees", 120], [2, "between stems", 180]]);
    for (const {topIn, footIn} of spaces.slice(1, -1)) expect([topIn, footIn]).toEqual([expect.closeTo(52.25, 9), expect.closeTo(55.25, 9)]);
    const [first, last] = [spaces[0], spaces.at(-1)];
    expect([first?.index, first?.place, first?.topIn, first?.footIn, first?.centerIn]).toEqual([-1, "end of the building", expect.closeTo(26.125, 9), expect.closeTo(27.625, 9), expect.closeTo(13.0625, 9)]);
    expect([last?.index, last?.place, last?.topIn, last?.centerIn]).toEqual([23, "end of the building", expect.closeTo(26.125, 9), expect.closeTo(1440 - 13.0625, 9)]);
  });

  test("are strips of 10 ft and the lines between them below a flat deck", () => {
    const {design, shape} = library({"deck.member": "4HC8"});
    const spaces = stemSpaces(design, shape);
    expect(spaces).toHaveLength(25);
    expect(spaces.map(({centerIn}) => centerIn)).toEqual([30, ...Array.from({length: 23}, (_, i) => 60 * (i + 1)), 1410]);
    expect(spaces.map(({place}) => place === "end of the building")).toEqual(spaces.map((_, i) => i === 0 || i === 24));
    for (const [i, {index, topIn, footIn}] of spaces.entries()) expect([index, topIn, footIn]).toEqual([i - 1, 60, 60]);
  });
});

test("a piece cut at the far end keeps each stem that has its whole width", () => {
  // Stems 7.75 in wide at 30 and 90 in of a tee: 33.875 in hold the first. 1,440 in and 34 in more, or 33.
  const stems = (inches: number) => {
    const {design, shape} = library({"bay.beamSpanFt": (1440 + inches) / 48});
    return stemLines(design, shape).length;
  };
  expect([stems(0), stems(33), stems(34), stems(93), stems(94)]).toEqual([24, 24, 25, 25, 26]);
});

test("columns stand at the ends of every bay", () => expect(framePlan(library().design)).toMatchObject({lengthIn: 1440, columnsAlongIn: [0, 360, 720, 1080, 1440]}));

test("where the beam has no ledge ducts begin at its web", () => {
  const plan = (kind: string) => framePlan(library({"edgeBeam.kind": kind}).design);
  for (const kind of ["pockets", "below"]) expect(plan(kind).ledgeFaceIn).toBe(plan(kind).edgeWebFaceIn);
  expect(plan("ledge").ledgeFaceIn - plan("ledge").edgeWebFaceIn).toBe(library().design.edgeBeam.ledgeProjectionIn);
});

test("a main is covered by its box, by the ceiling or its strip, or by nothing in the open room", () => {
  const cover = (run: string, ceiling: string) => mainCover(library({"air.run": run, "story.ceiling": ceiling}).design);
  expect(["box", "strip", "plenum"].map((run) => cover(run, "flush"))).toEqual(["box", "ceiling", "ceiling"]);
  expect(["box", "strip", "plenum"].map((run) => cover(run, "none"))).toEqual(["box", "ceiling", "nothing"]);
});

describe("the structure around the ducts", () => {
  const parts = (changes: Readonly<Record<string, unknown>> = {}) => structureParts(library(changes));
  const of = (kind: string, changes: Readonly<Record<string, unknown>> = {}) => parts(changes).filter((part) => part.kind === kind);

  test("has the columns, ledges and girders around what the main serves, each as large as it is stated", () => {
    const {design, story} = library();
    const soffit = story.clearUnderDeckIn;
    // Around 40 ft that the main serves: columns at 0, 30 and 60 ft on each of three lines.
    expect(of("column").length).toBe(9);
    for (const {x0In, x1In, y0In, y1In} of of("column")) expect([x1In - x0In, y1In - y0In]).toEqual([design.column.sideIn, design.column.sideIn]);
    expect(new Set(of("stem").map(({y0In, y1In}) => y1In - y0In > 0))).toEqual(new Set([true]));
    const foot = of("ledge");
    for (const {z0In, z1In} of foot) expect([z0In, z1In]).toEqual([soffit - 13, soffit]);
    expect(of("ledge", {"edgeBeam.kind": "below"}).length).toBeLessThan(foot.length);
    const girders = of("girder");
    expect(Math.min(...girders.map(({z0In}) => z0In))).toBe(soffit - 12);
    expect(Math.max(...girders.map(({y1In}) => y1In)) - Math.min(...girders.map(({y0In}) => y0In))).toBe(2 * design.girder.ledgeProjectionIn + design.girder.webWidthIn);
    expect(of("girder", {"bay.baysAcross": 1})).toEqual([]);
  });
});

import {describe, expect, test} from "vitest";
import {strandOf} from "../../lib/deck/deckMember.js";
import {rowLayout} from "../../lib/prestress/layout.js";
import {parsePattern} from "../../lib/prestress/pattern.js";
import {shapeOf} from "../../lib/sections/designation.js";
import {rectangularBeam} from "../../lib/sections/prismatic.js";
import type {Shape} from "../../lib/sections/shape.js";
import {catalog} from "../support/designs.js";
import {refused} from "../support/errors.js";

/** A row as count, height at the ends, height at midspan. */
type Row = readonly [number, number, number];

/** Rows of strands of a size in sixteenths, straight where no end differs from midspan. */
function rows(shape: Shape, sixteenths: number, ...given: readonly Row[]) {
  const count = given.reduce((sum, [n]) => sum + n, 0);
  const pattern = parsePattern(`${count}${sixteenths}-${given.some(([, end, center]) => end !== center) ? "D1" : "S"}`);
  return rowLayout(shape, pattern, strandOf(catalog, pattern), given.map(([n, endIn, centerIn]) => ({count: n, endIn, centerIn})));
}

describe("rows of strands", () => {
  const tee = () => shapeOf(catalog, "10DT24");

  test("add up to the layout of their count, area and middle", () => {
    const layout = rows(tee(), 8, [2, 14, 2], [2, 17, 2.5], [4, 23, 11]);
    expect(layout).toMatchObject({count: 8, centroidEndIn: (28 + 34 + 92) / 8, centroidCenterIn: (4 + 5 + 44) / 8});
    expect(layout.areaIn2).toBeCloseTo(8 * 0.153, 12);
  });

  test("keep an inch of concrete below and above, at the ends and at midspan", () => {
    expect(rows(tee(), 8, [2, 1, 1]).count).toBe(2);
    expect(rows(tee(), 8, [2, 23, 23]).count).toBe(2);
    refused(() => rows(tee(), 8, [2, 1, 0.99]), {path: "rows.0.heightMidspanIn", value: 0.99, allowed: "1 to 23 in in a 24 in member"});
    refused(() => rows(tee(), 8, [2, 4, 2], [2, 23.01, 4]), {path: "rows.1.heightEndIn", value: 23.01});
  });

  test("come down toward midspan, or stay", () => {
    expect(rows(tee(), 8, [2, 4, 4]).centroidEndIn).toBe(4);
    refused(() => rows(tee(), 8, [2, 3.99, 4]), {path: "rows.0.heightEndIn", value: 3.99, allowed: /^4 in or more/});
  });

  // ACI 318-19 25.2.4: 1-3/4 in for half an inch of strand and less, 2 in for 0.6 in, or four diameters.
  test.each([[8, 1.75], [10, 2], [6, 1.5]])("of %d/16 in strand stand %d in apart at the ends", (sixteenths, apartIn) => {
    expect(rows(tee(), sixteenths, [2, 2, 2], [2, 2 + apartIn, 2 + apartIn]).count).toBe(4);
    refused(() => rows(tee(), sixteenths, [2, 2, 2], [2, 1.99 + apartIn, 1.99 + apartIn]), {path: "rows.1.heightEndIn", allowed: `${apartIn} in or more at the ends; strands of one height are one row`});
  });

  test("lie on each other at midspan at the closest, if they are depressed", () => {
    expect(rows(tee(), 8, [2, 8, 2], [2, 10, 2.5]).count).toBe(4);
    refused(() => rows(tee(), 8, [2, 8, 2], [2, 10, 2.49]), {path: "rows.1.heightMidspanIn", value: 0.49, allowed: "0.5 in or more at midspan; strands of one height are one row"});
  });

  test("are computed from below, in whatever order they are given", () => {
    expect(rows(tee(), 8, [2, 6, 6], [2, 2, 2], [2, 4, 4]).count).toBe(6);
    // The second given is the upper of the two that are too close.
    refused(() => rows(tee(), 8, [2, 6, 6], [2, 3, 3], [2, 2, 2]), {path: "rows.1.heightEndIn", value: 1});
  });

  test("stand side by side 2 in apart where a stem is wide enough, with 1.125 in of cover on either side", () => {
    // 3.75 in at the soffit and 5.75 in 22 in up: 4.75 in at 11 in, room for 2 + 0.5 + 2.25 in.
    expect(rows(tee(), 8, [4, 11, 11]).count).toBe(4);
    refused(() => rows(tee(), 8, [4, 10.9, 10.9]), {path: "rows.0.count", value: 4, allowed: "at most 2 in this 10DT24"});
  });

  test("are the same in each stem of a tee", () => {
    refused(() => rows(tee(), 8, [1, 2, 2], [1, 4, 4]), {path: "rows.0.count", value: 1, allowed: "a multiple of 2, the same in each stem"});
    refused(() => rows(tee(), 8, [2, 2, 2], [3, 12, 12], [1, 16, 16]), {path: "rows.1.count", value: 3, allowed: "a multiple of 2, the same in each stem"});
  });

  test("fill a solid section from 2 in off one side to 2 in off the other", () => {
    const beam = rectangularBeam("12RB24", {widthIn: 12, depthIn: 24});
    expect(rows(beam, 8, [5, 2, 2]).count).toBe(5);
    refused(() => rows(beam, 8, [6, 2, 2]), {path: "rows.0.count", value: 6, allowed: "at most 5 in this 12RB24"});
    expect(rows(shapeOf(catalog, "4FS8"), 8, [23, 4, 4]).count).toBe(23);
    refused(() => rows(shapeOf(catalog, "4FS8"), 8, [24, 4, 4]), {path: "rows.0.count", allowed: "at most 23 in this 4FS8"});
  });

  test("of a plank are two to a web, and stand clear of its voids", () => {
    const plank = shapeOf(catalog, "4HC12");
    const most = 2 * plank.webCentersIn.length;
    refused(() => rows(plank, 6, [most + 1, 1.25, 1.25]), {path: "rows.0.count", value: most + 1});
    refused(() => rows(shapeOf(catalog, "4HC8"), 6, [12, 4, 4]), {path: "rows.0.count", allowed: "fewer or elsewhere: the voids of this 4HC8 take their place"});
    expect(rows(shapeOf(catalog, "4HC8"), 6, [7, 1.5, 1.5]).count).toBe(7);
  });
});

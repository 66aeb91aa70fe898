import {describe, expect, it} from "vitest";
import {placeLabels} from "../../src/pages/reduction/placeLabels.js";

describe("labels beside the points of a chart", () => {
  it("stand on the right and above where that is free", () => {
    expect(placeLabels([{x: 50, y: 100, label: "column"}], 13, [0, 300])).toEqual([{dx: 6, dy: -11, anchor: "start"}]);
  });

  it("turn to the left at the edge", () => {
    expect(placeLabels([{x: 290, y: 100, label: "column"}], 13, [0, 300])[0]?.anchor).toBe("end");
  });

  it("keep apart where points lie in a row", () => {
    const points = [0, 1, 2].map((i) => ({x: 60 + 40 * i, y: 100, label: "interior beam"}));
    const places = placeLabels(points, 13, [0, 400]).map(({dy, anchor}) => `${anchor} ${dy}`);
    expect(new Set(places).size).toBe(3);
  });

  it("keep apart and inside where none has room on either side of its point", () => {
    const label = "interior beam, edge column, girder end column";
    const points = [{x: 150, y: 100, label}, {x: 190, y: 100, label}];
    const boxes = placeLabels(points, 13, [40, 340]).map(({dx, dy, anchor}, i) => ({left: points[i]!.x + dx, top: 100 + dy, anchor}));
    for (const {left, anchor} of boxes) {
      expect(anchor).toBe("start");
      expect(left).toBeGreaterThanOrEqual(40);
    }
    expect(Math.abs(boxes[0]!.top - boxes[1]!.top)).toBeGreaterThanOrEqual(15);
  });

  it("cover none of the chart's own words", () => {
    const words = {left: 55, right: 120, top: 82, bottom: 96};
    expect(placeLabels([{x: 50, y: 100, label: "column"}], 13, [0, 300], [words])).not.toEqual([{dx: 6, dy: -11, anchor: "start"}]);
  });
});

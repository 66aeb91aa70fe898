import {describe, expect, it} from "vitest";
import {placeLabels} from "../../src/components/pages/placeLabels.js";

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
});

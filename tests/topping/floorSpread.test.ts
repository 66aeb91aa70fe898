import {describe, expect, test} from "vitest";
import {withValues} from "../../lib/design/edit.js";
import {evaluate} from "../../lib/evaluate.js";
import {designOrderYd3, floorSpread, raisingYd3} from "../../lib/topping/floorSpread.js";
import {SCATTER} from "../../lib/topping/scatter.js";
import {catalog, seed} from "../support/designs.js";
import {once} from "../support/once.js";

const library = once(() => evaluate(withValues(seed("branch-library"), {"bay.beamSpanFt": 33}), catalog));

describe("the pieces of a floor", () => {
  test("are ordered by the bay, cut ones by their part: 3.3 tees of 10 ft to 33 ft; of a few pieces there are two orders at least", () => {
    const ordered = (count: number) => floorSpread(library(), {scatter: SCATTER, seed: 1, count, raisedIn: 0}).piecesPerOrder;
    expect(library().member.widthFt).toBe(10);
    expect(ordered(200)).toBeCloseTo(3.3, 12);
    expect(ordered(6)).toBe(3);
  });

  test("take, raised by an inch, an inch more over the bay", () => {
    const {bay} = library().design;
    expect(raisingYd3(library(), 1)).toBeCloseTo((bay.spanFt * 33) / 12 / 27, 9);
    expect(raisingYd3(library(), -0.5)).toBeCloseTo(-(bay.spanFt * 33) / 24 / 27, 9);
  });

  test("take in one order what as many of the design's own take; without topping nothing", () => {
    expect(designOrderYd3(library(), {piecesPerOrder: 3.3})).toBeCloseTo(library().topping?.bayYd3 as number, 6);
    expect(designOrderYd3(library(), {})).toBe(library().topping?.memberYd3);
    expect(designOrderYd3({topping: undefined}, {piecesPerOrder: 3})).toBe(0);
  });
});

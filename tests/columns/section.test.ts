import {describe, expect, test} from "vitest";
import {columnTies, leastClearIn, placeBars} from "../../lib/columns/columnBars.js";
import {refused} from "../support/errors.js";
import {bar, columnOf} from "./sections.js";

const verdictOf = (column: ReturnType<typeof columnOf>, id: string) => column.checks.find((check) => check.id === id)?.verdict;

describe("placeBars", () => {
  const base = {widthIn: 16, depthIn: 16, bar: bar("#8"), count: 8, faces: "all", coverIn: 1.5} as const;

  test("puts eight bars three to a face", () => {
    // 1.5 + 3/8 + 1/2 = 2.375 in to the first center; 16 - 4.75 = 11.25 in between the corners.
    const bars = placeBars(base);
    expect(bars.rows).toEqual([{depthIn: 2.375, count: 3}, {depthIn: 8, count: 2}, {depthIn: 13.625, count: 3}]);
    expect(bars.clearIn).toBeCloseTo(11.25 / 2 - 1, 12);
    expect(bars.places).toHaveLength(8);
    expect(bars.places[1]).toEqual({xIn: 8, yIn: 2.375});
  });

  test("leaves the sides empty where two faces hold all bars", () => {
    expect(placeBars({...base, faces: "two"}).rows.map((row) => row.count)).toEqual([4, 4]);
  });

  test("gives a long side more bars than a short one, and an odd pair to the sides", () => {
    expect(placeBars({...base, depthIn: 32, count: 10}).rows.map((row) => row.count)).toEqual([3, 2, 2, 3]);
    expect(placeBars({...base, count: 6}).rows.map((row) => row.count)).toEqual([2, 2, 2]);
  });

  test("is the same column seen from its other side", () => {
    const tall = placeBars({...base, depthIn: 24, count: 12});
    const wide = placeBars({...base, widthIn: 24, count: 12});
    const turned = wide.places.map(({xIn, yIn}) => `${yIn.toFixed(6)} ${xIn.toFixed(6)}`).sort();
    expect(turned).toEqual(tall.places.map(({xIn, yIn}) => `${xIn.toFixed(6)} ${yIn.toFixed(6)}`).sort());
  });

  test("refuses no bars, too few, an odd number, and bars that touch", () => {
    refused(() => placeBars({...base, count: 0}), {path: "count", message: "bars: 0 is not possible (whole number, 4 to 100)"});
    refused(() => placeBars({...base, count: 7}), {path: "count", allowed: "an even number, 4 or more"});
    refused(() => placeBars({...base, count: 48}), {path: "count", value: "48 #8", allowed: /do not touch in 16 x 16 in/});
    refused(() => placeBars({...base, widthIn: 8, depthIn: 8, coverIn: 4}), {path: "count"});
    // 8 in leave nothing between two covers of 4 in, whichever way it is and however many thin bars the other side would hold.
    refused(() => placeBars({...base, bar: bar("#3"), count: 32, widthIn: 8, depthIn: 20, coverIn: 4}), {path: "count"});
    refused(() => placeBars({...base, bar: bar("#3"), count: 32, widthIn: 20, depthIn: 8, coverIn: 4}), {path: "count"});
  });

  test("tells the least clear distance of face and side", () => {
    // 11.25 / 2 - 1 = 4.625 in the face, 27.25 / 3 - 1 = 8.083 in the side.
    expect(placeBars({...base, depthIn: 32, count: 10})).toMatchObject({clearIn: 4.625, clearInFaceIn: 4.625, clearInSideIn: expect.closeTo(8.0833, 4)});
    expect(placeBars({...base, widthIn: 32, count: 10}).clearIn).toBe(4.625);
  });
});

describe("columnTies", () => {
  const tiesOf = (size: string, side: number, count: number) => columnOf({bar: bar(size), widthIn: side, depthIn: side, count}).ties;

  test("are #3 up to #10 bars and #4 beyond", () => {
    expect(tiesOf("#10", 20, 4).size).toBe("#3");
    expect(tiesOf("#11", 20, 4).size).toBe("#4");
  });

  test("are spaced by bars, ties or the least side", () => {
    // 16 x 0.75 = 12; 48 x 0.375 = 18; 16 in side; 48 x 0.5 = 24 against 16 x 1.41 = 22.56.
    expect(tiesOf("#6", 20, 8).spacingIn).toBe(12);
    expect(tiesOf("#10", 30, 8).spacingIn).toBe(18);
    expect(tiesOf("#9", 16, 8).spacingIn).toBe(16);
    expect(tiesOf("#11", 30, 8).spacingIn).toBeCloseTo(22.56, 12);
  });

  test("hold every other bar, and each one that stands more than 6 in from its neighbors", () => {
    // Eight #8 in 16 in: 4.6 in clear, the middle bars need no hold. In 24 in: 8.6 in clear, all four do.
    expect(tiesOf("#8", 16, 8).heldBars).toBe(0);
    expect(tiesOf("#8", 24, 8).heldBars).toBe(4);
    // Twelve in 24 in: 5.4 in clear, one of each two.
    expect(tiesOf("#8", 24, 12).heldBars).toBe(4);
    // 14 / 2 - 1 is 6 in just, which is not more.
    expect(tiesOf("#8", 18.75, 8).heldBars).toBe(0);
    expect(columnTies({...columnOf(), count: 4}, placeBars({...columnOf(), count: 4})).heldBars).toBe(0);
  });
});

describe("columnSection", () => {
  test("adds up concrete, bars and weight", () => {
    const column = columnOf();
    expect(column.grossIn2).toBe(256);
    expect(column.steelIn2).toBeCloseTo(6.32, 12);
    expect(column.inertiaIn4).toBeCloseTo(16 ** 4 / 12, 9);
    // 256 / 144 x 150.
    expect(column.selfWeightPlf).toBeCloseTo(266.667, 3);
    expect(column.checks.map((check) => check.verdict)).toEqual(["ok", "ok", "ok"]);
  });

  test("fails too little and too much steel, and bars too close", () => {
    expect(verdictOf(columnOf({widthIn: 24, depthIn: 24}), "column least steel")).toBe("ok");
    expect(verdictOf(columnOf({widthIn: 26, depthIn: 26}), "column least steel")).toBe("fails");
    // Just 1 % is enough: eight bars of 0.72 in2 in 24 in square; and so are 1.5 in between sixteen #8 in 14.75 in.
    expect(verdictOf(columnOf({widthIn: 24, depthIn: 24, bar: {...bar("#8"), areaIn2: 0.72}}), "column least steel")).toBe("ok");
    expect(verdictOf(columnOf({widthIn: 14.75, depthIn: 14.75, count: 16}), "column bar spacing")).toBe("ok");
    // 14 #11 are 21.84 in2: 8.5 % of 256.
    expect(verdictOf(columnOf({bar: bar("#11"), count: 14}), "column most steel")).toBe("fails");
    expect(verdictOf(columnOf({bar: bar("#11"), count: 12}), "column most steel")).toBe("ok");
    expect(leastClearIn(bar("#8"))).toBe(1.5);
    expect(leastClearIn(bar("#11"))).toBeCloseTo(2.115, 12);
    // 11.25 / 4 - 1 = 1.81 in; 11.25 / 5 - 1 = 1.25 in.
    expect(verdictOf(columnOf({count: 16}), "column bar spacing")).toBe("ok");
    expect(verdictOf(columnOf({count: 20}), "column bar spacing")).toBe("fails");
  });

  test("refuses sides, strength and cover that cannot be", () => {
    refused(() => columnOf({widthIn: 7}), {path: "widthIn", allowed: "8 to 60 in"});
    refused(() => columnOf({depthIn: NaN}), {path: "depthIn"});
    refused(() => columnOf({strengthPsi: 2000}), {path: "strengthPsi"});
    refused(() => columnOf({coverIn: -1}), {path: "coverIn"});
  });
});

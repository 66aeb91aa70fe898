import {describe, expect, test} from "vitest";
import {blockedPlaces, centered, countRow, fillRow, pitchIn, type Obstacle, type Row, type StallGroup} from "../../lib/parking/row.js";
import {extentWithin, stallGeometry, stallOutline} from "../../lib/parking/stall.js";

const SIZE = {stallWidthIn: 102, stallLengthIn: 216};
const square = stallGeometry({...SIZE, angle: "90 two-way"});
const leaning = stallGeometry({...SIZE, angle: "60 one-way"});
const CAR: StallGroup = [102];
/** 24 in of air beside doors, of which the first and the last 60 in of a car are free. */
const DOORS = {doorIn: 24, doorFreeIn: 60};
/** A column of 22 in at the heads, and something that reaches so far out. */
const column = (fromIn: number, changes: Partial<Obstacle> = {}): Obstacle => ({fromIn, toIn: fromIn + 22, fromOutIn: -11, toOutIn: 11, doors: true, ...changes});
const row = (lengthIn: number, ...obstacles: Obstacle[]): Row => ({startIn: 0, endIn: lengthIn, obstacles});
const blocked = (obstacles: Obstacle[], doors = DOORS, group = CAR) => blockedPlaces(square, doors, row(1e4, ...obstacles), group);

describe("a stall", () => {
  test("at right angles is its rectangle to the last digit", () => {
    expect(stallOutline(square, 0, 102)).toEqual([[0, 0], [102, 0], [102, 216], [0, 216]]);
    expect(square.depthIn).toBe(216);
  });

  test("that leans by 60 degrees takes less of the row near its heads than between", () => {
    // Corners: (0, 0), (88.33, 51), (-19.67, 238.06), (-108, 187.06).
    const shape = stallOutline(leaning, 0, 102);
    const within = (from: number, to: number) => extentWithin(shape, from, to);
    // 10 in out: 10/tan 60 back on the one side, 10 tan 60 on along the heads.
    expect(within(0, 10)?.least).toBeCloseTo(-5.774, 3);
    expect(within(0, 10)?.most).toBeCloseTo(17.321, 3);
    expect(within(51, 187.06)?.least).toBeCloseTo(-108, 2);
    expect(within(51, 187.06)?.most).toBeCloseTo(88.335, 2);
    // From the mouths' far corner on nothing is left; what only touches is not in it.
    expect(within(238.1, 300)).toBeUndefined();
    expect(extentWithin(stallOutline(square, 0, 102), 216, 300)).toBeUndefined();
    expect(extentWithin(stallOutline(square, 0, 102), -50, 0)).toBeUndefined();
  });
});

describe("where stalls may not begin", () => {
  test("a column at the heads takes its own width and a stall's before it, and beside doors their air on both sides", () => {
    expect(blocked([column(500)])).toEqual([[398, 522]]);
    expect(blocked([column(500)], {doorIn: 24, doorFreeIn: 11})).toEqual([[398, 522]]);
    expect(blocked([column(500)], {doorIn: 24, doorFreeIn: 10})).toEqual([[374, 546]]);
    // Doors end as far from the other end of the car: 156 in out.
    expect(blocked([column(500, {fromOutIn: 156, toOutIn: 180})])).toEqual([[398, 522]]);
    expect(blocked([column(500, {fromOutIn: 155, toOutIn: 180})])).toEqual([[374, 546]]);
  });

  test("a ramp's edge asks for no air beside doors, and what stands past the row for nothing", () => {
    expect(blocked([column(500, {toOutIn: 216, doors: false})])).toEqual([[398, 522]]);
    expect(blocked([column(500, {fromOutIn: 216, toOutIn: 240})])).toEqual([]);
    expect(blocked([column(500, {toOutIn: 0})])).toEqual([]);
  });

  test("a car that wants no air along more than half its length has its doors at its middle", () => {
    const doors = {doorIn: 24, doorFreeIn: 120};
    expect(blocked([column(500, {fromOutIn: 97, toOutIn: 107})], doors)).toEqual([[398, 522]]);
    expect(blocked([column(500, {fromOutIn: 100, toOutIn: 120})], doors)).toEqual([[374, 546]]);
  });

  test("each thing counts as far as it reaches itself, whatever stands before it in the list", () => {
    const deep = {toOutIn: 100};
    expect(blocked([column(500), column(900, deep)])).toEqual([[398, 522], [774, 946]]);
    expect(blocked([column(500, {...deep, doors: false}), column(900, deep)])).toEqual([[398, 522], [774, 946]]);
    expect(blocked([column(500, {fromOutIn: 61, ...deep}), column(900, {fromOutIn: 0, toOutIn: 11})])).toEqual([[374, 546], [798, 922]]);
  });

  test("columns with no stall's room between them are one, in whatever order they stand in the list", () => {
    expect(blocked([column(600), column(500)])).toEqual([[398, 622]]);
    expect(blocked([column(500, {toIn: 700}), column(600)])).toEqual([[398, 700]]);
    // 102 in between their faces are one place for one stall.
    expect(blocked([column(624), column(500)])).toEqual([[398, 522], [522, 646]]);
  });

  test("a van with its aisle and the stall beside it needs the room of all three", () => {
    expect(blocked([column(500)], DOORS, [96, 96, 96])).toEqual([[212, 522]]);
    // Leaning, the third begins (96 + 60)/sin 60 = 180.13 in along. At 11 in out of the heads the first begins 6.35 in back, and the third ends 11 tan 60 = 19.05 in past its head.
    const [place] = blockedPlaces(leaning, DOORS, row(1e4, column(500, {doors: false})), [96, 60, 96]);
    expect(place?.[0]).toBeCloseTo(500 - 180.133 - 19.053, 3);
    expect(place?.[1]).toBeCloseTo(522 + 6.351, 3);
    expect(pitchIn(leaning, [96, 60])).toBeCloseTo(156 / Math.sin(Math.PI / 3), 9);
  });
});

describe("a row is filled", () => {
  const filled = (one: Row, first: StallGroup[] = []) => fillRow(square, one, first, CAR, (group) => blockedPlaces(square, DOORS, one, group));
  const places = (one: Row, first: StallGroup[] = []) => filled(one, first).map(({atIn}) => atIn);
  const counted = (one: Row) => countRow(square, one, CAR, blockedPlaces(square, DOORS, one, CAR));

  test("by whole stalls that just fit, from its start on and past its columns", () => {
    for (const [one, expected] of [
      [row(305), [0, 102]], [row(306), [0, 102, 204]], [row(101), []],
      // 300 in to the column hold two, 102 in between two columns one.
      [row(1000, column(300)), [0, 102, 322, 424, 526, 628, 730, 832]],
      [row(650, column(300), column(424)), [0, 102, 322, 446, 548]],
      // A column at its start, and one past its end.
      [row(300, column(-11)), [11, 113]], [row(300, column(300)), [0, 102]],
    ] as const) {
      expect(places(one)).toEqual(expected);
      expect(counted(one)).toBe(expected.length);
    }
  });

  test("by the wide stalls first where there is room for them, and none after one that has none", () => {
    const van: StallGroup = [96, 96, 96];
    expect(filled(row(400), [van]).map(({atIn, group}) => [atIn, group.length])).toEqual([[0, 3], [288, 1]]);
    expect(filled(row(287), [van, [96]]).map(({group}) => group)).toEqual([CAR, CAR]);
    expect(filled(row(288), [van]).map(({group}) => group)).toEqual([van]);
  });

  test("leaning stalls begin where their mouths clear the row's start, and end where their heads clear its end", () => {
    // 108 in back of the head, and 88.33 in on: one takes 196.3 in, the next 117.78 in more.
    const one = (lengthIn: number) => fillRow(leaning, row(lengthIn), [], CAR, () => []).map(({atIn}) => atIn);
    expect(one(196)).toEqual([]);
    expect(one(197)).toEqual([expect.closeTo(108, 9)]);
    expect(one(315)).toEqual([expect.closeTo(108, 9), expect.closeTo(108 + 102 / Math.sin(Math.PI / 3), 9)]);
    // A column that only heads' corners would meet is passed between two stalls: 108, 225.8 and 343.6, then 461.3 in and on.
    const past = row(1000, column(400, {toOutIn: 5, doors: false}));
    const of = (group: StallGroup) => blockedPlaces(leaning, DOORS, past, group);
    const places = fillRow(leaning, past, [], CAR, of).map(({atIn}) => atIn);
    expect(places).toHaveLength(7);
    expect(places[3]).toBeCloseTo(461.34, 2);
    expect(countRow(leaning, past, CAR, of(CAR))).toBe(7);
    expect([196, 197, 315].map((lengthIn) => countRow(leaning, row(lengthIn), CAR, []))).toEqual([0, 1, 2]);
  });
});

describe("each run of stalls is moved to the middle of its room", () => {
  const middle = (one: Row) => {
    const of = (group: StallGroup) => blockedPlaces(square, DOORS, one, group);
    return centered(square, one, fillRow(square, one, [], CAR, of), of).map(({atIn}) => atIn);
  };

  test("between the row's ends, between its start and a column, and from there to its end", () => {
    expect(middle(row(400))).toEqual([47, 149, 251]);
    expect(middle(row(306))).toEqual([0, 102, 204]);
    // 96 in are left before the column at 300 in; past it 678 in hold six and 66 in.
    expect(middle(row(1000, column(300)))).toEqual([48, 150, 355, 457, 559, 661, 763, 865]);
    expect(middle(row(90))).toEqual([]);
    // A stall that just fits before a column stays where it is.
    expect(middle(row(300, column(102)))).toEqual([0, 161]);
  });

  test("and never over the run that follows, also where leaning stalls stand closer to a column's sides than their own pitch", () => {
    const one = row(1000, column(455, {toOutIn: 5, doors: false}));
    const of = (group: StallGroup) => blockedPlaces(leaning, DOORS, one, group);
    const filled = fillRow(leaning, one, [], CAR, of).map(({atIn}) => atIn);
    const moved = centered(leaning, one, fillRow(leaning, one, [], CAR, of), of).map(({atIn}) => atIn);
    const pitch = pitchIn(leaning, CAR);
    // The fourth stall begins 2.89 in past the column at 477 in; the three before it have 18.6 in, half of which they move.
    expect(filled[3]).toBeCloseTo(477 + 5 / Math.sqrt(3), 9);
    expect((moved[2] as number) - (filled[2] as number)).toBeCloseTo(((filled[3] as number) - (filled[2] as number) - pitch) / 2, 9);
    for (let i = 1; i < moved.length; i++) expect((moved[i] as number) - (moved[i - 1] as number)).toBeGreaterThanOrEqual(pitch - 1e-9);
  });
});

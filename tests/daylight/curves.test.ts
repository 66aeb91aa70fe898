import {describe, expect, test} from "vitest";
import {changedRoom, curveValues, daylightCurve, deskCurve} from "../../lib/daylight/curves.js";
import {daylight, daylightPoints} from "../../lib/daylight/daylight.js";
import {deskAtWindow} from "../../lib/daylight/desk.js";
import {ROOM, WINDOW} from "./room.js";

const OTHER = {...WINDOW, sillIn: 48, headIn: 108};

describe("the values of a curve", () => {
  test("over the depth run from 10 to 100 ft, in a deep room to 1.4 times its own, and never past 300", () => {
    const ends = (depthFt: number) => [curveValues({...ROOM, depthFt}, "depth")[0], curveValues({...ROOM, depthFt}, "depth").at(-1)];
    expect(ends(30)).toEqual([10, 100]);
    expect(ends(100)[1]).toBeCloseTo(140, 9);
    expect(ends(280)).toEqual([10, 300]);
  });

  test("over the head run from a foot above the sill, 5 ft at least, to 14 ft at least, and a foot beyond its own", () => {
    const ends = (sillIn: number, headIn: number) => {
      const values = curveValues({...ROOM, window: {...WINDOW, sillIn, headIn}}, "head");
      return [values[0], values.at(-1)];
    };
    expect(ends(36, 120)).toEqual([60, 168]);
    expect(ends(60, 180)).toEqual([72, 192]);
  });

  test("over the sill run from the floor to a foot below the head, 6 ft at most; under a head lower than that there is one alone", () => {
    const of = (headIn: number) => curveValues({...ROOM, window: {...WINDOW, sillIn: 0, headIn}}, "sill", 5);
    expect(of(120)).toEqual([0, 18, 36, 54, 72]);
    expect(of(60)).toEqual([0, 12, 24, 36, 48]);
    expect(of(12)).toEqual([0]);
    expect(of(6)).toEqual([0]);
    expect(curveValues(ROOM, "sill")).toHaveLength(33);
  });
});

describe("a room with one thing changed", () => {
  test("has no glass where the sill meets the head, and no head above 40 ft", () => {
    expect(changedRoom(ROOM, "sill", 119)?.window.sillIn).toBe(119);
    expect(changedRoom(ROOM, "sill", 120)).toBeUndefined();
    expect(changedRoom(ROOM, "head", 480)?.window.headIn).toBe(480);
    expect(changedRoom(ROOM, "head", 481)).toBeUndefined();
  });

  test("takes its ceiling along with the head, 3 ft at least", () => {
    const low = {...ROOM, window: {...WINDOW, sillIn: 0}};
    expect(changedRoom(ROOM, "head", 132)?.ceilingIn).toBe(138);
    expect(changedRoom(low, "head", 30)?.ceilingIn).toBe(36);
    expect(changedRoom(low, "head", 29)).toBeUndefined();
  });

  test("changes the opposite window as well: one that is the same stays the same, another keeps its own glass", () => {
    const same = changedRoom({...ROOM, opposite: ROOM.window}, "sill", 30);
    expect(same?.opposite).toBe(same?.window);
    expect(same?.opposite?.sillIn).toBe(30);
    const mixed = changedRoom({...ROOM, opposite: OTHER}, "sill", 30);
    expect(mixed?.window).toMatchObject({sillIn: 30, headIn: 120});
    expect(mixed?.opposite).toMatchObject({sillIn: 30, headIn: 108});
    expect(changedRoom(ROOM, "sill", 30)?.opposite).toBeUndefined();
  });

  test("tells at each value the least, the average and the shares of that room", () => {
    const [point] = daylightCurve(ROOM, "depth", [20]);
    const room = daylight({...ROOM, depthFt: 20});
    expect(point?.value).toBe(20);
    expect((point?.leastPercent ?? NaN) / room.leastPercent).toBeCloseTo(1, 1);
    expect(point?.leastPercent).toBeLessThan(room.meanPercent);
    expect(point?.averagePercent).toBeCloseTo(room.average.averagePercent, 9);
  });

  test("gives a desk what it has behind that sill, and none behind a sill at the head", () => {
    expect(deskCurve(ROOM, [30, 120])).toEqual([{sillIn: 30, ...deskAtWindow({...ROOM, window: {...WINDOW, sillIn: 30}})}]);
  });
});

describe("light from two unlike windows", () => {
  const two = {...ROOM, opposite: OTHER};

  test("adds up at each place to what each gives alone, the far one counted from its own wall", () => {
    const both = daylightPoints(two, {strips: 10});
    const near = daylightPoints(ROOM, {strips: 10});
    const far = daylightPoints({...ROOM, window: OTHER}, {strips: 10});
    both.forEach((point, i) => {
      expect(point.skyPercent).toBeCloseTo((near[i]?.skyPercent ?? NaN) + (far[9 - i]?.skyPercent ?? NaN), 12);
      expect(point.factorPercent).toBeCloseTo(point.skyPercent + point.externalPercent + point.internalPercent, 12);
    });
  });

  test("reaches by the rule of thumb as far as its higher head lets it, and is checked by its higher sill", () => {
    // 120 in of 120 and 108: 10 ft, twice.
    expect(daylight(two).headHeightFt.usualFt).toBe(20);
    expect(daylight({...two, window: OTHER, opposite: WINDOW}).headHeightFt.usualFt).toBe(20);
    expect(daylight(two).checks.find(({id}) => id === "upstand")?.demand).toBe(48);
    expect(daylight(ROOM).checks.find(({id}) => id === "upstand")?.demand).toBe(36);
  });

  test("comes back reflected from outside each: a fifth of the sky that it hides", () => {
    const hidden = {...WINDOW, obstruction: {angleDeg: 30}};
    const points = daylightPoints({...ROOM, window: hidden, opposite: {...OTHER, obstruction: {angleDeg: 30}}}, {strips: 10});
    const [near, far] = [daylightPoints({...ROOM, window: hidden}, {strips: 10}), daylightPoints({...ROOM, window: {...OTHER, obstruction: {angleDeg: 30}}}, {strips: 10})];
    points.forEach((point, i) => expect(point.externalPercent).toBeCloseTo((near[i]?.externalPercent ?? NaN) + (far[9 - i]?.externalPercent ?? NaN), 12));
    expect(points[0]?.externalPercent).toBeGreaterThan(0);
  });
});

describe("the part of a floor that sees sky", () => {
  test("ends at a no-sky line within the room, and is all of it where the line lies beyond", () => {
    const seen = (angleDeg: number, two = false) => {
      const window = {...WINDOW, obstruction: {angleDeg}};
      return daylight({...ROOM, window, ...(two ? {opposite: window} : {})}).skySeenShare;
    };
    // 90 in of rise at 30 degrees, less the reveal: 143.9 in of 360.
    const lineFt = (90 / Math.tan(Math.PI / 6) - 12) / 12;
    expect(seen(30)).toBeCloseTo(lineFt / 30, 9);
    expect(seen(30, true)).toBeCloseTo((2 * lineFt) / 30, 9);
    expect(seen(10)).toBe(1);
    expect(seen(10, true)).toBe(1);
  });
});

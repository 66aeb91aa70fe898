import {describe, expect, test} from "vitest";
import {daylight, daylightPoints, roomKey} from "../../lib/daylight/daylight.js";
import type {DaylightInput} from "../../lib/daylight/input.js";
import {refused} from "../support/errors.js";
import {reading} from "../support/reading.js";
import {ROOM, WINDOW} from "./room.js";

const verdict = (input: DaylightInput, id: string) => daylight(input).checks.find((check) => check.id === id)?.verdict;

describe("a room's key", () => {
  const outside = [undefined, {angleDeg: 10}, {heightFt: 30, distanceFt: 40}] as const;
  const rooms = outside.flatMap((obstruction) => [undefined, {...WINDOW, headIn: 110, beams: [{awayIn: 60, footIn: 100}]}].map((opposite): DaylightInput =>
    ({...ROOM, workPlaneIn: 30, offsetFt: 2, window: {...WINDOW, ...(obstruction ? {obstruction} : {}), beams: [{awayIn: 90, footIn: 105}]}, ...(opposite ? {opposite} : {})})));

  test("holds all that its daylight hangs on", () => {
    for (const room of rooms) {
      const [input, keyed] = [reading(room), reading(room)];
      daylight(input.of, {});
      roomKey(keyed.of);
      expect(input.read).toContain("window.beams");
      expect([...input.read].filter((path) => !keyed.read.has(path))).toEqual([]);
    }
  });

  test("tells rooms apart that differ in one value, and gives windows alike the same daylight whether they are one or written twice", () => {
    const beamed = rooms[1] as DaylightInput;
    const changes = [{}, {depthFt: 31}, {widthFt: 25}, {ceilingIn: 127}, {workPlaneIn: 31}, {offsetFt: 1}, ...(["floorShare", "wallShare", "ceilingShare"] as const).map((share) => ({reflectances: {...ROOM.reflectances, [share]: 0.4}})),
      ...(["window", "opposite"] as const).flatMap((which) => [{sillIn: 37}, {headIn: 109}, {widthFt: 19}, {revealIn: 11}, {frameShare: 0.2}, {transmittanceShare: 0.7}, {maintenanceShare: 0.8}, {obstruction: {angleDeg: 5}}, {beams: []}, {beams: [{awayIn: 60, footIn: 99}]}, {beams: [{awayIn: 61, footIn: 100}]}, {beams: [{awayIn: 60, footIn: 100}, {awayIn: 80, footIn: 90}]}]
        .map((change) => ({[which]: {...beamed[which], ...change}})))];
    expect(new Set(changes.map((change) => roomKey({...beamed, ...change}))).size).toBe(changes.length);
    const alike = {...ROOM, opposite: ROOM.window};
    expect(daylight(alike)).toEqual(daylight({...alike, opposite: {...WINDOW}}));
  });
});

describe("daylight", () => {
  test("adds its parts and falls steadily away from a single window", () => {
    const {points, meanPercent, leastPercent} = daylight({...ROOM, window: {...WINDOW, sillIn: 30, obstruction: {angleDeg: 10}}});
    expect(points).toHaveLength(40);
    expect(points[0]?.distanceFt).toBeCloseTo(30 / 80, 12);
    for (const [i, point] of points.entries()) {
      expect(point.factorPercent).toBeCloseTo(point.skyPercent + point.externalPercent + point.internalPercent, 12);
      if (i > 0) expect(point.factorPercent).toBeLessThan(points[i - 1]?.factorPercent as number);
    }
    expect(leastPercent).toBe(points.at(-1)?.factorPercent);
    expect(meanPercent).toBeGreaterThan(leastPercent);
  });

  test("is symmetrical between two equal windows, each adding what it gives alone", () => {
    const two = daylightPoints({...ROOM, opposite: WINDOW});
    const one = daylightPoints(ROOM);
    for (let i = 0; i < 40; i++) {
      expect(two[i]?.skyPercent).toBeCloseTo(two[39 - i]?.skyPercent as number, 9);
      expect(two[i]?.skyPercent).toBeCloseTo((one[i]?.skyPercent as number) + (one[39 - i]?.skyPercent as number), 9);
    }
  });

  test("comes near the average formula over the whole width", () => {
    // The mean over lines of points from wall to wall, against the formula: both are rough, but of one size.
    const offsets = [-10.5, -7.5, -4.5, -1.5, 1.5, 4.5, 7.5, 10.5];
    const mean = offsets.reduce((sum, offsetFt) => sum + daylight({...ROOM, offsetFt}).meanPercent / offsets.length, 0);
    const {averagePercent} = daylight(ROOM).average;
    expect(mean / averagePercent).toBeGreaterThan(0.7);
    expect(mean / averagePercent).toBeLessThan(1.3);
  });

  test("tells how much of the depth sees sky", () => {
    expect(daylight(ROOM)).toMatchObject({noSkyFt: undefined, oppositeNoSkyFt: undefined, skySeenShare: 1});
    // 90 in above the desk at 45 degrees, less the reveal: 6.5 ft of 30 from one side, twice that from two.
    const window = {...WINDOW, obstruction: {angleDeg: 45}};
    expect(daylight({...ROOM, window}).skySeenShare).toBeCloseTo(6.5 / 30, 9);
    expect(daylight({...ROOM, window, opposite: window}).skySeenShare).toBeCloseTo(13 / 30, 9);
    expect(daylight({...ROOM, window, opposite: WINDOW}).skySeenShare).toBe(1);
  });

  test("fails its checks one by one", () => {
    const twoSided = {...ROOM, opposite: WINDOW};
    expect(verdict(twoSided, "average daylight")).toBe("ok");
    expect(verdict({...ROOM, window: {...WINDOW, widthFt: 6}}, "average daylight")).toBe("fails");
    // A yardstick of a withdrawn standard says so.
    for (const check of daylight(twoSided).checks.filter(({clause}) => clause.includes("BS 8206-2"))) expect(check.clause).toMatch(/superseded by EN 17037/);
    expect(daylight(twoSided).checks.filter(({clause}) => clause.includes("EN 17037"))).toHaveLength(2);
    expect(verdict(ROOM, "room depth")).toBe("fails");
    expect(verdict(twoSided, "room depth")).toBe("ok");
    expect(verdict(ROOM, "sky seen")).toBe("ok");
    expect(verdict({...ROOM, window: {...WINDOW, obstruction: {angleDeg: 30}}}, "sky seen")).toBe("fails");
    expect(verdict({...ROOM, window: {...WINDOW, sillIn: 30}}, "upstand")).toBe("ok");
    expect(verdict(ROOM, "upstand")).toBe("near");
    expect(verdict({...ROOM, window: {...WINDOW, sillIn: 37}}, "upstand")).toBe("fails");
    expect(verdict({...ROOM, opposite: {...WINDOW, sillIn: 37}}, "upstand")).toBe("fails");
  });

  test("stays finite at its edges", () => {
    const odd: DaylightInput[] = [
      {...ROOM, window: {...WINDOW, sillIn: 0, revealIn: 0, widthFt: "endless"}},
      {...ROOM, ceilingIn: 29, workPlaneIn: 29, window: {...WINDOW, sillIn: 1, headIn: 2}},
      {...ROOM, window: {...WINDOW, obstruction: {angleDeg: 89}}},
      {...ROOM, depthFt: 300, window: {...WINDOW, obstruction: {heightFt: 2000, distanceFt: 1}}},
      {...ROOM, reflectances: {floorShare: 0, wallShare: 0, ceilingShare: 0}},
    ];
    for (const input of odd) {
      const result = daylight(input);
      for (const point of result.points) for (const value of Object.values(point)) expect(Number.isFinite(value)).toBe(true);
      for (const check of result.checks) expect(Number.isFinite(check.demand) && Number.isFinite(check.capacity)).toBe(true);
      const {good, partial, little, dark} = result.shares;
      expect(good + partial + little + dark).toBeCloseTo(1, 9);
    }
  });

  test("refuses a room that is none", () => {
    refused(() => daylight({...ROOM, window: {...WINDOW, sillIn: 130}}), {path: "window.sillIn"});
    refused(() => daylight(ROOM, {strips: 1}), {path: "strips"});
    refused(() => daylight(ROOM, {thresholds: {goodPercent: 1, partialPercent: 2, littlePercent: 0.5}}), {path: "partialPercent"});
  });
});

import {describe, expect, test} from "vitest";
import {atMost, outOfRange, type Check} from "../../lib/checks.js";
import {withValues} from "../../lib/design/edit.js";
import {evaluate} from "../../lib/evaluate.js";
import {guessedSideIn} from "../../lib/schemes/columnRule.js";
import {Kept} from "../../lib/kept.js";
import {halfInchUp, ladder, leastOf, worstFailing} from "../../lib/schemes/least.js";
import {catalog, seed} from "../support/designs.js";

const check = (id: string, use: number): Check => atMost({id, label: id, unit: "kip", clause: "a test", holds: "", fails: ""}, use, 1);

describe("the least of a row of sizes that does", () => {
  const SIZES = [8, 10, 12, 14, 16, 18, 20, 24, 28, 32, 36, 40, 48, 60];
  /** Sizes from the least that does on; what was tried, in order, with what each was made into. */
  const search = (least: number, near?: number) => {
    const tried: number[] = [];
    const found = leastOf(SIZES, (size) => { tried.push(size); return `beam of ${size}`; }, (made) => (Number(made.slice(8)) < least ? check(made, 2) : undefined), near);
    return {found, tried};
  };

  test("is found wherever the search begins, with what stops the size before it", () => {
    for (const [place, least] of SIZES.entries()) {
      for (const near of [undefined, -3, ...SIZES.keys(), 99]) {
        const {found, tried} = search(least, near);
        expect(found?.value, `${least} from ${near}`).toBe(least);
        expect(found?.found).toBe(`beam of ${least}`);
        if (place === 0) expect(found?.stops).toBeUndefined();
        else expect(found?.stops?.id).toBe(`beam of ${SIZES[place - 1]}`);
        expect(new Set(tried).size, "no size is made twice").toBe(tried.length);
      }
    }
  });

  test("takes few tries where the search begins near it: two at the place itself", () => {
    expect(search(20, 6).tried).toEqual([20, 18]);
    expect(search(20, 5).tried).toEqual([18, 20]);
    expect(search(20, 7).tried).toEqual([24, 20, 16, 18]);
    // Strides double away from it, by one, two, four sizes up or down, and then halve what lies between.
    expect(search(32, 0).tried).toEqual([8, 10, 14, 24, 60, 36, 28, 32]);
    expect(search(12, 9).tried).toEqual([32, 28, 20, 12, 8, 10]);
    for (const least of SIZES) expect(search(least, 0).tried.length).toBeLessThanOrEqual(8);
    for (const least of SIZES) expect(search(least, SIZES.length - 1).tried.length).toBeLessThanOrEqual(8);
  });

  test("is none where the greatest does not do", () => {
    for (const near of [0, 5, SIZES.length - 1]) expect(search(61, near).found).toBeUndefined();
    expect(leastOf([5], (size) => size, () => undefined)).toEqual({value: 5, found: 5, stops: undefined});
  });
});

test("a ladder of sizes has both of its ends, and the greatest only where a step meets it", () => {
  expect(ladder(4, 10, 2)).toEqual([4, 6, 8, 10]);
  expect(ladder(4, 9.9, 2)).toEqual([4, 6, 8]);
  expect(ladder(6, 8)).toEqual([6, 7, 8]);
  // Ten tenths are one, though a computer's add up to less.
  expect(ladder(0, 1, 0.1)).toHaveLength(11);
});

test("a length is set to the next half inch, and keeps one that it meets", () => {
  expect([8, 8.01, 8.5, 8.51, 8.5 + 1e-12].map(halfInchUp)).toEqual([8, 8.5, 8.5, 9, 8.5]);
});

test("of checks that fail the one that is passed most is the worst, of those that count, and of two the first", () => {
  const beyond = outOfRange({id: "beyond", label: "", unit: "", clause: "", message: ""}, 9, 1);
  const checks = [check("holds", 0.9), check("a", 1.2), check("b", 1.5), check("c", 1.5), beyond];
  expect(worstFailing(checks)?.id).toBe("b");
  expect(worstFailing(checks, (id) => id !== "b" && id !== "c")?.id).toBe("a");
  expect(worstFailing(checks, (id) => id === "holds" || id === "beyond")).toBeUndefined();
  expect(worstFailing([])).toBeUndefined();
});

test("results are kept by their key, also where one is nothing, and the oldest is forgotten once there are too many", () => {
  const kept = new Kept<string | undefined>(2);
  const made: string[] = [];
  const get = (key: string, value?: string) => kept.get(key, () => { made.push(key); return value; });
  expect([get("a", "A"), get("a", "other"), get("nothing"), get("nothing", "other")]).toEqual(["A", "A", undefined, undefined]);
  expect(made).toEqual(["a", "nothing"]);
  // A third pushes out the first alone.
  expect([get("c", "C"), get("nothing", "other"), get("a", "again")]).toEqual(["C", undefined, "again"]);
  expect(made).toEqual(["a", "nothing", "c", "a"]);
});

describe("a column's side before any is sized", () => {
  const guess = (changes: Readonly<Record<string, unknown>>) => {
    const {design, laid, loads} = evaluate(withValues(seed("branch-library"), {
      "loads.rooms": [{name: "Reading", occupancy: "library-reading"}], "loads.partitions": false, "roof.given": "loads", "column.roofDeadPsf": 80, "column.roofLivePsf": 20, ...changes,
    }), catalog);
    return guessedSideIn(design, laid, loads);
  };

  test("is that of half its axial strength under the floors that it carries, in even inches from 14 in on", () => {
    const {laid, loads} = evaluate(withValues(seed("branch-library"), {"loads.rooms": [{name: "Reading", occupancy: "library-reading"}], "loads.partitions": false}), catalog);
    const ownPsf = laid.selfWeightPlf / laid.widthFt + (150 * 2) / 12;
    // An interior column of 40 by 30 ft: 0.65 x 0.8 x (0.85 x 5 x 0.985 + 0.015 x 60) ksi, of which half.
    const halfKsi = 0.5 * 0.52 * (0.85 * 5 * 0.985 + 0.9);
    const deadPsf = 1.15 * ownPsf + loads.superimposedDeadPsf;
    const kip = (1200 * (2 * (1.2 * deadPsf + 1.6 * 60) + 1.2 * 80 + 1.6 * 20)) / 1000;
    // Reading rooms of 60 psf on 1,200 ft2 may be reduced; the guess then needs no more.
    expect(guess({"bay.floors": 2})).toBeLessThanOrEqual(2 * Math.ceil(Math.sqrt(kip / halfKsi) / 2));
    expect(guess({"bay.floors": 2})).toBeGreaterThanOrEqual(2 * Math.ceil(Math.sqrt((0.75 * kip) / halfKsi) / 2) - 2);
  });

  test("goes by the floor of the column that carries most: a quarter of a bay, a half or all of it", () => {
    const sides = (floors: number) => [[1, 1], [1, 4], [4, 1], [4, 2]].map(([along, across]) => guess({"bay.floors": floors, "bay.baysAlong": along, "bay.baysAcross": across}));
    const [corner = 0, between = 0, edge = 0, inner = 0] = sides(8);
    // Twice the floor, a root of two more side, to two inches.
    expect([corner < between, Math.abs(between - edge) <= 2, edge < inner]).toEqual([true, true, true]);
    expect(Math.abs(between / corner / Math.SQRT2 - 1)).toBeLessThan(0.15);
    expect(Math.abs(inner / edge / Math.SQRT2 - 1)).toBeLessThan(0.15);
    for (const side of sides(8)) expect(side % 2).toBe(0);
    // However little it carries beams are cut for 14 in.
    expect(guess({"bay.floors": 1, "bay.baysAlong": 1, "bay.baysAcross": 1, "bay.spanFt": 20, "bay.beamSpanFt": 10, "deck.member": "10DT24", "deck.pattern": "68-S"})).toBe(14);
  });

  test("falls with stronger concrete and more steel, and with a lighter roof", () => {
    const at = (changes: Readonly<Record<string, unknown>>) => guess({"bay.floors": 8, ...changes});
    expect(at({"column.strengthPsi": 9000})).toBeLessThan(at({}));
    expect(at({"column.steelPercent": 4})).toBeLessThan(at({}));
    expect(guess({"bay.floors": 1, "column.roofDeadPsf": 10, "column.roofLivePsf": 0})).toBeLessThan(guess({"bay.floors": 1, "column.roofDeadPsf": 150, "column.roofLivePsf": 60}));
  });
});

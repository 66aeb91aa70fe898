import fc from "fast-check";
import {describe, expect, test} from "vitest";
import {withValue} from "../../lib/design/edit.js";
import {safeLoad} from "../../lib/deck/safeLoad.js";
import {evaluate} from "../../lib/evaluate.js";
import {FEWEST, progressOf, progressWords, type KeptGuess} from "../../lib/exercises/progress.js";
import {pickSection} from "../../lib/exercises/pick.js";
import {gradeSketch, roundAbove, curveValueAt} from "../../lib/exercises/sketch.js";
import {SKETCHES, type Sketch} from "../../lib/exercises/sketches.js";
import {catalog, seeds} from "../support/designs.js";
import {once} from "../support/once.js";

const evaluations = once(() => seeds.map(({design}) => evaluate(design, catalog)));

describe("a drawn curve", () => {
  const falling = [100, 60, 40, 28, 20, 15, 11, 8, 5];

  test("that is the true one is close, and nothing is said of its shape", () => {
    expect(gradeSketch(falling, falling)).toEqual({offPercent: 0, verdict: "close", words: []});
  });

  test("is off by its mean distance, as a share of the curve's height", () => {
    // Ten too high everywhere, of a hundred: 10 %.
    const {offPercent, verdict, words} = gradeSketch(falling.map((value) => value + 10), falling);
    expect(offPercent).toBeCloseTo(10, 9);
    expect(verdict).toBe("near");
    expect(words).toEqual(["on the whole it lies too high"]);
    expect(gradeSketch(falling.map((value) => value + 8), falling).verdict).toBe("close");
    expect(gradeSketch(falling.map((value) => value + 20.1), falling).verdict).toBe("off");
    expect(gradeSketch(falling.map((value) => value - 10), falling).words).toEqual(["on the whole it lies too low"]);
  });

  test("that falls at another place is told so", () => {
    const straight = falling.map((_, i) => 100 - (95 * i) / 8);
    expect(gradeSketch(straight, falling).words[0]).toBe("you had it fall too late");
    expect(gradeSketch(falling, straight).words[0]).toBe("you had it fall too early");
  });

  test("that goes another way, or has its peak elsewhere, is told so", () => {
    expect(gradeSketch([...falling].reverse(), falling).words[0]).toBe("you had it rise, and it falls");
    expect(gradeSketch(falling.map(() => 50), falling).words[0]).toBe("you had it stay level, and it falls");
    const hill = [0, 44, 75, 94, 100, 94, 75, 44, 0];
    expect(gradeSketch([0, 60, 100, 80, 60, 40, 30, 15, 0], hill).words[0]).toBe("you had its peak too far to the left");
    expect(gradeSketch(falling, hill).words[0]).toBe("it rises to a peak in between and falls again");
  });

  test("of another number of places is refused", () => {
    expect(() => gradeSketch([1, 2], [1, 2, 3])).toThrow(RangeError);
  });

  test("is graded by a number and words that hold, whatever is drawn", () => {
    const values = fc.array(fc.double({min: -1e4, max: 1e4, noNaN: true}), {minLength: 9, maxLength: 9});
    fc.assert(fc.property(values, values, (drawn, truth) => {
      const {offPercent, words} = gradeSketch(drawn, truth);
      expect(Number.isFinite(offPercent) && offPercent >= 0).toBe(true);
      for (const word of words) expect(word).not.toMatch(/undefined|NaN/);
    }));
  });
});

test("an axis ends at a round number well above the curve", () => {
  for (const value of [0.3, 1, 7, 99, 668, 12345]) {
    expect(roundAbove(value)).toBeGreaterThanOrEqual(1.35 * value);
    expect(roundAbove(value)).toBeLessThanOrEqual(2.75 * value);
  }
  expect(roundAbove(0)).toBe(1);
});

test("a value between two points lies on the line between them, and stays beyond the ends; a jump is taken once", () => {
  const points = [[0, 0], [1, 10], [1, 20], [2, 20]] as const;
  expect([-1, 0.5, 1, 1.5, 3].map((x) => curveValueAt(points, x))).toEqual([0, 5, 10, 20, 20]);
});

describe("curves to draw", () => {
  test.each(Object.entries(SKETCHES) as [string, Sketch][])("%s has the values of the results, inside its axis, for every starter that has it", (_, {curve}) => {
    const curves = evaluations().flatMap((evaluation) => curve(evaluation) ?? []);
    expect(curves.length).toBeGreaterThan(0);
    for (const {at, values, least, most} of curves) {
      expect(values.length).toBe(at.length);
      expect(new Set(at).size).toBeGreaterThan(5);
      for (const value of values) expect(value >= least && value <= most).toBe(true);
    }
  });

  test("are those of the page: the load at the design's own span, the girder's moment at midspan, no light without glass", () => {
    for (const evaluation of evaluations()) {
      const {at, values} = SKETCHES.loadOverSpan.curve(evaluation);
      at.forEach((words, i) => expect(values[i]).toBe(safeLoad(evaluation.member, Number.parseInt(words, 10), evaluation.deck.criteria).safeLoadPsf));
      const girder = SKETCHES.momentAlongGirder.curve(evaluation);
      expect(girder === undefined).toBe(evaluation.girder === undefined);
      // A simple span: none at the ends, most within a pair of stems of the middle.
      if (girder && evaluation.girder) {
        expect(girder.values[0]).toBeCloseTo(0, 6);
        expect(girder.values.at(-1)).toBeCloseTo(0, 6);
        expect(girder.values[4]! / (evaluation.girder.momentKipIn / 12)).toBeGreaterThan(0.85);
      }
      expect(SKETCHES.daylightInward.curve(evaluation) === undefined).toBe(evaluation.daylight === undefined);
    }
  });
});

describe("a section to pick", () => {
  test("is the first of four by depth that carries the load, and the one before it does not", () => {
    const picks = evaluations().flatMap(({design, deck}) => [30, 40, 47, 55, 64].flatMap((spanFt) => pickSection(design, catalog, spanFt, deck.demandPsf, deck.criteria) ?? []));
    expect(picks.length).toBeGreaterThan(5);
    for (const {choices, answer, loadPsf} of picks) {
      expect(choices).toHaveLength(4);
      const depths = choices.map(({member}) => member.shape.depthIn);
      expect(depths).toEqual([...new Set(depths)].sort((a, b) => a - b));
      expect(choices.findIndex(({safe}) => safe.safeLoadPsf >= loadPsf)).toBe(answer);
    }
    expect(new Set(picks.map(({answer}) => answer)).size).toBeGreaterThan(1);
  });

  test("is none where all carry the load or none does", () => {
    const {design, deck} = evaluations()[0]!;
    expect(pickSection(design, catalog, 149, 2000, deck.criteria)).toBeUndefined();
    expect(pickSection(design, catalog, 5, 10, deck.criteria)).toBeUndefined();
    expect(pickSection(withValue(design, "deck.toppingIn", 2), catalog, 12, 0, deck.criteria)).toBeUndefined();
  });
});

describe("a reader's guesses", () => {
  const guesses = (ratios: readonly number[]): KeptGuess[] => ratios.map((ratio, i) => ({kind: "number", name: "demand", at: 1000 + i, guess: 100 * ratio, truth: 100}));

  test("are off by a factor, high and low alike, half of them by less than the typical one", () => {
    const {typical, lean, halves} = progressOf(guesses([2, 0.5, 1]));
    expect(typical).toBeCloseTo(2, 12);
    expect(lean).toBeCloseTo(1, 12);
    expect(halves).toBeUndefined();
  });

  test("too few are said to be too few, and enough show a trend", () => {
    expect(progressWords(progressOf([]))).toBe("No guess at a number yet.");
    expect(progressWords(progressOf(guesses([1, 1, 1, 1, 1])))).toContain(`From ${FEWEST} on`);
    expect(progressWords(progressOf(guesses([2, 2, 2, 1.1, 1.1, 1.1])))).toBe("Half of your guesses are off by less than 55 %. It gets better: off by 100 % in the first half, by 10 % in the second. You tend to guess high.".replace("100 %", "a factor of 2.0"));
    expect(progressWords(progressOf(guesses([1.1, 1.1, 1.1, 0.5, 0.5, 0.5])))).toMatch(/It got worse.*guess low/);
    expect(progressWords(progressOf(guesses([1.2, 1 / 1.2, 1.2, 1 / 1.2, 1.2, 1 / 1.2])))).toMatch(/stays about the same.*second\.$/);
  });

  test("are taken in the order in which they were made; curves and sections are counted apart, and a ratio to nothing is none", () => {
    const mixed: KeptGuess[] = [
      {kind: "number", name: "b", at: 2, guess: 3, truth: 1}, {kind: "number", name: "a", at: 1, guess: 2, truth: 1}, {kind: "number", name: "c", at: 3, guess: 1, truth: 0},
      {kind: "sketch", name: "s", at: 4, offPercent: 10}, {kind: "sketch", name: "s", at: 5, offPercent: 30}, {kind: "pick", name: "p", at: 6, right: true}, {kind: "pick", name: "p", at: 7, right: false},
    ];
    const {ratios, sketches, picks} = progressOf(mixed);
    expect(ratios.map(({name, ratio}) => [name, ratio])).toEqual([["a", 2], ["b", 3]]);
    expect(sketches).toEqual({count: 2, meanOffPercent: 20});
    expect(picks).toEqual({count: 2, right: 1});
  });
});

import {describe, expect, test} from "vitest";
import {gradeGuess} from "../../lib/exercises/guess.js";
import {GUESSES} from "../../lib/exercises/guesses.js";
import {withValues} from "../../lib/design/edit.js";
import {evaluate} from "../../lib/evaluate.js";
import {catalog, seeds} from "../support/designs.js";

const CASES = seeds.flatMap(({id, design}) => Object.entries(GUESSES).map(([name, guess]) => ({id, name, guess, design})));

describe("the guess", () => {
  test.each(CASES)("$name of $id grades its own answer as close, and each slip as one, or as close too", ({guess, design}) => {
    const evaluation = evaluate(design, catalog);
    const answer = guess.answer(evaluation);
    const mistakes = guess.mistakes(evaluation);
    expect(Number.isFinite(answer)).toBe(true);
    expect(gradeGuess(answer, answer, guess.tolerancePercent, mistakes).verdict).toBe("close");
    for (const mistake of mistakes) {
      expect(Number.isFinite(mistake.value)).toBe(true);
      const grade = gradeGuess(mistake.value, answer, guess.tolerancePercent, mistakes);
      expect(["mistake", "close"]).toContain(grade.verdict);
      expect(mistake.message).toMatch(/[.]$/);
    }
  });

  test.each(Object.entries(GUESSES))("%s is a question with a unit and a name of its own", (name, guess) => {
    expect(guess.id).toBe(name);
    expect(guess.question).toMatch(/\?$/);
    expect(guess.unit).not.toBe("");
  });

  test("asks about the most loaded column that the grid has", () => {
    const design = seeds[0]?.design;
    if (!design) throw new Error("no seed");
    for (const changes of [{"bay.baysAcross": 1}, {"bay.baysAcross": 1, "bay.baysAlong": 1}]) {
      expect(GUESSES.columnReduction.answer(evaluate(withValues(design, changes), catalog))).toBeGreaterThan(0);
    }
  });
});

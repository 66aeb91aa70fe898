import {describe, expect, test} from "vitest";
import {gradeGuess} from "../../lib/exercises/guess.js";

const SLIP = {value: 150, message: "That is the live load alone."};

describe("gradeGuess", () => {
  test("is close within the tolerance, its ends included", () => {
    for (const guess of [160, 136, 184]) expect(gradeGuess(guess, 160, 15).verdict, String(guess)).toBe("close");
  });

  test("is high or low beyond it, and says by how much", () => {
    expect(gradeGuess(200, 160, 15)).toEqual({verdict: "high", message: "Too high by 25 %."});
    expect(gradeGuess(80, 160, 15)).toEqual({verdict: "low", message: "Too low by 50 %."});
  });

  test("recognizes a usual slip within 2 % of its value", () => {
    // Three of 150 lie at the very end of it.
    for (const guess of [150, 147, 153]) expect(gradeGuess(guess, 200, 10, [SLIP])).toEqual({verdict: "mistake", message: SLIP.message});
    expect(gradeGuess(146, 200, 10, [SLIP]).verdict).toBe("low");
  });

  test("calls an answer close even where a slip gives the same", () => {
    expect(gradeGuess(150, 155, 10, [SLIP]).verdict).toBe("close");
  });

  test("takes negative answers and nothing as an answer", () => {
    expect(gradeGuess(-1, -1.1, 10).verdict).toBe("close");
    expect(gradeGuess(0, 0, 10).verdict).toBe("close");
    expect(gradeGuess(0.5, 0, 10)).toEqual({verdict: "high", message: "Too high."});
    expect(gradeGuess(-0.5, 0, 10)).toEqual({verdict: "low", message: "Too low."});
  });
});

import {describe, expect, test} from "vitest";
import {shown, sentence} from "../lib/sentence.js";
import {plainSentence} from "./support/sentence.js";

const depth = shown("beam depth, in", "4'-0\"");

describe("a sentence whose numbers say what they stand for", () => {
  test("keeps its numbers apart from its words", () => {
    expect(sentence`It is ${depth} deep.`).toEqual(["It is ", {quantity: "beam depth, in", text: "4'-0\""}, " deep."]);
  });

  test("takes plain texts and numbers as words, and another such sentence piece by piece", () => {
    expect(sentence`${"An L-beam"} of ${3} parts`).toEqual(["An L-beam", " of ", "3", " parts"]);
    expect(sentence`Here: ${sentence`it is ${depth}`}.`).toEqual(["Here: ", "it is ", depth, "."]);
  });

  test("has no empty pieces", () => {
    expect(sentence`${depth}`).toEqual([depth]);
    expect(sentence`${""}${depth}${""}`).toEqual([depth]);
  });

  test("reads as plain text with its numbers in it", () => {
    expect(plainSentence(sentence`It is ${depth} deep, of ${2} bays.`)).toBe("It is 4'-0\" deep, of 2 bays.");
    expect(plainSentence("No glass.")).toBe("No glass.");
    expect(plainSentence([])).toBe("");
  });
});

import {describe, expect, test} from "vitest";
import {shown, told} from "../lib/told.js";
import {plainTold} from "./support/told.js";

const depth = shown("beam depth, in", "4'-0\"");

describe("a sentence whose numbers say what they stand for", () => {
  test("keeps its numbers apart from its words", () => {
    expect(told`It is ${depth} deep.`).toEqual(["It is ", {quantity: "beam depth, in", text: "4'-0\""}, " deep."]);
  });

  test("takes plain texts and numbers as words, and another such sentence piece by piece", () => {
    expect(told`${"An L-beam"} of ${3} parts`).toEqual(["An L-beam", " of ", "3", " parts"]);
    expect(told`Here: ${told`it is ${depth}`}.`).toEqual(["Here: ", "it is ", depth, "."]);
  });

  test("has no empty pieces", () => {
    expect(told`${depth}`).toEqual([depth]);
    expect(told`${""}${depth}${""}`).toEqual([depth]);
  });

  test("reads as plain text with its numbers in it", () => {
    expect(plainTold(told`It is ${depth} deep, of ${2} bays.`)).toBe("It is 4'-0\" deep, of 2 bays.");
    expect(plainTold("No glass.")).toBe("No glass.");
    expect(plainTold([])).toBe("");
  });
});

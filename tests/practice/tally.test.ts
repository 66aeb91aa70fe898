import {expect, test} from "vitest";
import {NO_TALLY, nextKind, tallied, tallyOf, tallyWords} from "../../lib/practice/tally.js";

test("a tally counts first answers by kind, and the usual slips", () => {
  expect(tallyWords(NO_TALLY)).toBeUndefined();
  const one = tallied(NO_TALLY, "a", true);
  expect(tallyWords(one)).toBe("One answer so far, of one kind; 1 right at the first try.");
  const four = tallied(tallied(tallied(one, "a", false, "feet for inches"), "b", false, "feet for inches"), "b", false, "net for gross");
  expect(tallyWords(four)).toBe("4 answers so far, of 2 kinds; 1 right at the first try. The slip you make most: feet for inches, 2 times.");
  expect(tallyOf(JSON.parse(JSON.stringify(four)))).toEqual(four);
});

test("a tally that was spoiled loses what cannot be", () => {
  for (const spoiled of [undefined, null, 3, "x", [], {kinds: 3}]) expect(tallyOf(spoiled)).toEqual(NO_TALLY);
  expect(tallyOf({kinds: {a: {asked: 2, right: 3}, b: {asked: 2, right: 1}, c: null, d: {asked: -1, right: -1}}, slips: {x: 1, y: "2", z: 0.5}})).toEqual({kinds: {b: {asked: 2, right: 1}}, slips: {x: 1}});
});

test("what was asked least comes next, never twice the same where there is another", () => {
  const some = tallied(tallied(NO_TALLY, "a", true), "b", true);
  expect(nextKind(["a", "b", "c"], some, undefined, 0.99)).toBe("c");
  expect([0, 0.49, 0.5, 0.99].map((draw) => nextKind(["a", "b"], some, undefined, draw))).toEqual(["a", "a", "b", "b"]);
  expect(nextKind(["a", "b", "c"], some, "c", 0)).toBe("a");
  expect(nextKind(["c"], some, "c", 0.7)).toBe("c");
  expect(nextKind([], some, undefined, 0)).toBeUndefined();
});

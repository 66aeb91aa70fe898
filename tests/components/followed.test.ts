import {expect, test} from "vitest";
import {namesPath, pathFragment, pathIn, shownIn} from "../../src/components/followed.js";

test("a path's place travels in an address and comes back, its first stop where none is named", () => {
  for (const path of [{lesson: "first-class", stop: 0, locked: false}, {lesson: "structures-week", stop: 11, locked: true}]) expect(pathIn(pathFragment(path))).toEqual(path);
  expect(pathIn("#path=first-class")).toEqual({lesson: "first-class", stop: 0, locked: false});
});

test.each([["0"], ["-2"], ["1.5"], ["x"], [""]])("a stop %o that cannot be is the first", (stop) => expect(pathIn(`#path=a&stop=${stop}`)?.stop).toBe(0));

test("headings and designs are no paths", () => {
  expect(["", "#the-section", "#design=1.path=first-class&show=x"].map((hash) => [namesPath(hash), pathIn(hash), shownIn(hash)])).toEqual(Array(3).fill([false, undefined, null]));
});

test("what is shown on a projector stands beside a path or alone, and may be left open", () => {
  expect(["#show=the-section.2", "#path=a&stop=2&show=last", "#show="].map(shownIn)).toEqual(["the-section.2", "last", ""]);
});

import {existsSync, statSync} from "node:fs";
import {join, posix} from "node:path";
import {describe, expect, test, vi} from "vitest";
import {askedOnce, joinedOnce} from "../../src/headless/askedOnce.js";

describe("a question to the file system in a build", () => {
  test("is asked once for each file of the pages, and has the same answer as ever", () => {
    const ask = vi.fn(existsSync);
    const once = askedOnce(ask);
    for (let i = 0; i < 3; i++) {
      expect(once(join("src", "index.md"))).toBe(true);
      expect(once(join("src", "no-such-page.md"))).toBe(false);
    }
    expect(ask).toHaveBeenCalledTimes(2);
  });

  test("is asked each time of what the generator writes itself, of what lies elsewhere, and with options", () => {
    const ask = vi.fn((path: unknown, options?: object) => [path, options]);
    const once = askedOnce(ask);
    for (const path of [join("src", ".observablehq", "cache", "a.json"), join("dist", "index.html"), "srcs"]) for (let i = 0; i < 2; i++) once(path);
    for (let i = 0; i < 2; i++) once(join("src", "index.md"), {throwIfNoEntry: false});
    expect(ask).toHaveBeenCalledTimes(8);
    expect(ask).toHaveBeenLastCalledWith(join("src", "index.md"), {throwIfNoEntry: false});
  });

  test("is refused as often as it is asked of a file that is not there", () => {
    const once = askedOnce(statSync);
    for (let i = 0; i < 2; i++) expect(() => once(join("src", "no-such-page.md"))).toThrow(/ENOENT/);
  });
});

test("a path is joined once for the same parts, and as ever for others", () => {
  const ask = vi.fn(posix.join);
  const once = joinedOnce(ask);
  for (const parts of [["a", "../b", "c.js"], ["a/../b", "c.js"], ["a", "", "b"], ["a", "b"], ["ab"], []]) for (let i = 0; i < 2; i++) expect(once(...parts)).toBe(posix.join(...parts));
  expect(ask).toHaveBeenCalledTimes(6);
});

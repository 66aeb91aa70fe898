import {mkdtempSync, rmSync, writeFileSync} from "node:fs";
import {tmpdir} from "node:os";
import {join} from "node:path";
import {afterEach, beforeEach, expect, test} from "vitest";
import {inspectSite} from "../../src/headless/inspect.js";

let folder: string;
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), "site-"));
});
afterEach(() => rmSync(folder, {recursive: true}));

const inspect = (files: Record<string, string>) => {
  for (const [name, content] of Object.entries(files)) writeFileSync(join(folder, name), content);
  return inspectSite(folder);
};

test("a sound site has no problems", () => {
  const index = '<h2 id="top"></h2><a href="./loads#end">x</a><a href="https://example.org/">x</a><a href="#top">x</a>';
  expect(inspect({"index.html": index, "loads.html": '<p id="end"></p>', "a.js": 'const ns = "http://www.w3.org/2000/svg";'})).toEqual([]);
});

test("words that read like an import are no address", () => {
  expect(inspect({"index.html": '<h2>Where does it come from "the mill"?</h2>'})).toEqual([]);
});

test("an error block, a dead link, a dead anchor are found", () => {
  const index = '<div class="observablehq--inspect observablehq--error">SyntaxError: no</div><a href="./gone">x</a><a href="#nowhere">x</a>';
  expect(inspect({"index.html": index})).toEqual(["index.html: SyntaxError: no", "index.html: broken link ./gone", "index.html: broken anchor #nowhere"]);
});

test.each([
  ["a script", '<script type="module" src="https://example.org/a.js"></script>'],
  ["a stylesheet", '<link rel="stylesheet" href="//example.org/a.css">'],
  ["a picture", '<img src="https://example.org/a.png">'],
  ["an import", '<script type="module">import {x} from "https://example.org/a.js";</script>'],
])("%s from elsewhere is found", (_, html) => expect(inspect({"index.html": html})[0]).toContain("would fetch"));

test("what a stylesheet or a script would fetch from elsewhere is found", () => {
  const problems = inspect({"a.css": "@font-face{src:url(https://example.org/a.woff2)}", "a.js": 'import("https://example.org/a.js")'});
  expect(problems).toHaveLength(2);
});

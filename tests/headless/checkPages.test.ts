import {beforeAll, describe, expect, test} from "vitest";
import {cellModule} from "../../src/headless/cells.js";
import {lintProblems, programWith, typeProblems} from "../../src/headless/checkPages.js";

const block = (...lines: string[]) => ["```js", ...lines, "```"].join("\n");
const IMPORTS = ['import {decimals} from "../../lib/units.js";', 'const span = (async function* () { yield 40; yield 60; })();'];

/** Pages of one fault each, by their fault, and what is to be reported of them. */
const FAULTY: Readonly<Record<string, {readonly text: string; readonly told: RegExp}>> = {
  cell: {text: ["# A cell", block(...IMPORTS), block("display(decimals(span));", 'display(decimals("forty"));')].join("\n\n"), told: /:10: Argument of type 'string' is not assignable to parameter of type 'number'/},
  prose: {text: ["# Prose", block(...IMPORTS), "The span is", '${decimals(span.feet)} ft'].join("\n\n"), told: /:10: Property 'feet' does not exist on type '40 \| 60'/},
  own: {text: ["# Not yet a value", block(...IMPORTS, "display(decimals(span));")].join("\n\n"), told: /:6: Argument of type 'AsyncGenerator<40 \| 60/},
  unused: {text: ["# Idle", block(...IMPORTS), "${span} ft"].join("\n\n"), told: /:4: 'decimals' is declared but its value is never read/},
  raw: {text: ["# An object", block(...IMPORTS), "${decimals(span)} ${{span}}"].join("\n\n"), told: /:8: Object literal may only specify known properties, and 'span'/},
  untyped: {text: ["# Any", block("const twice = (feet) => 2 * feet;"), block("display(twice(20));")].join("\n\n"), told: /:4: Parameter 'feet' implicitly has an 'any' type/},
  unknown: {text: ["# No such name", "${decimal(40)}"].join("\n\n"), told: /:3: Cannot find name 'decimal'/},
};
const SOUND = [
  "---", 'description: "A page."', "---", "", "# A page", "", block(...IMPORTS, "const feet = await Promise.resolve(3);", "const later = Promise.resolve(2);"), "",
  '<p class="lead">It spans ${decimals(span)} ft, ${span > 30 ? `a long way: ${decimals(span)}` : "not far"}.</p>', "", "A price is \\${not code}.", "",
  block("const {length} = `${decimals(later + feet)}`;", "display(decimals(length));"), "", "```json", '{"not": code}', "```", "",
].join("\n");

const file = (name: string) => `src/pages/${name}/index.md`;
const pages = [...Object.entries(FAULTY).map(([name, {text}]) => ({file: file(name), text})), {file: file("sound"), text: SOUND}];

describe("what the compiler says of pages", () => {
  let problems: readonly string[];
  beforeAll(() => {
    problems = typeProblems(programWith(pages), pages);
  });

  test.each(Object.entries(FAULTY))("a fault of kind '%s' is reported with page and line, and nothing else", (name, {told}) => {
    const own = problems.filter((problem) => problem.startsWith(`${file(name)}:`));
    expect(own).toHaveLength(1);
    expect(own[0]).toMatch(told);
  });

  test("a sound page passes: a value that one cell waits for is at hand in the others and in the prose", () => {
    expect(problems.filter((problem) => problem.startsWith(file("sound")))).toEqual([]);
  });
});

test("the linter's rules hold in cells and in prose", async () => {
  const text = ["# Loose", block("let span = 40;", "display(span == 40 ? 1 : 2);"), "${span == 40 ? 1 : 2}"].join("\n\n");
  const problems = await lintProblems([{file: file("loose"), text}, {file: file("sound"), text: SOUND}]);
  expect(problems.map((problem) => problem.replace(/: .*\(/, ": ("))).toEqual([
    `${file("loose")}:4: (prefer-const)`, `${file("loose")}:5: (eqeqeq)`, `${file("loose")}:8: (eqeqeq)`,
  ]);
});

test("each line of a page stands where the page has it", () => {
  const module = cellModule(SOUND).split("\n");
  expect(module).toHaveLength(SOUND.split("\n").length);
  expect(module[13]).toContain("a long way");
});

import {expect, test} from "vitest";
import {unusedExports} from "../../src/headless/unusedExports.js";

const MODULES = {
  "lib/beam.ts": "export const depthIn = 20; export function span() { return depthIn; } export const idle = 1; export const tried = 2; export const whole = 3;",
  "lib/all.ts": "export const first = 1; export const second = 2;",
  "src/pages/beam/index.cells.ts": 'import {span as reach} from "../../lib/beam.js"; const {first} = await import("../../lib/all.js"); reach(first);',
  "tests/beam.test.ts": 'import {tried} from "../lib/beam.js"; tried;',
  "src/again.ts": 'export {whole} from "../lib/beam.js";',
};

test("an export that nothing or only a test uses is named; one that a page, another module or its own uses is not", () => {
  expect(unusedExports(MODULES)).toEqual(["lib/beam.ts: idle", "lib/beam.ts: tried"]);
});

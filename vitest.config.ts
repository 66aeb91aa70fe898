import {defineConfig} from "vitest/config";
import {prepare} from "./src/headless/prepare.js";

prepare();

export default defineConfig({
  test: {
    include: ["tests/**/*.test.ts"],
    // A page test opens a browser and walks the site; the rest take milliseconds.
    testTimeout: 120_000,
    hookTimeout: 180_000,
    // What is waited for comes at once on an idle machine; on a busy one nothing is gained by giving up early.
    expect: {poll: {timeout: 20_000}},
    maxWorkers: 2,
    // Files share the modules that they import: to load them anew for each would take a third of the time. So no test may
    // leave anything behind in a module, and none does: all pass in any order of files.
    isolate: false,
  },
});

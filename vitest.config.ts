import {defineConfig} from "vitest/config";
import {prepare} from "./src/headless/prepare.js";

prepare();

export default defineConfig({
  test: {
    include: ["tests/**/*.test.ts"],
    // A page test opens a browser and walks the site; the rest take milliseconds.
    testTimeout: 120_000,
    hookTimeout: 180_000,
    maxWorkers: 2,
  },
});

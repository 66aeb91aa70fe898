import {defineConfig} from "vitest/config";

/** Folders of tests that mutants of one part of the library are tried against; see `mutate.ts`. */
const folders = (process.env["MUTATION_TESTS"] ?? "").split(" ").filter(Boolean);

export default defineConfig({
  test: {
    include: folders.map((folder) => (folder.endsWith(".ts") ? `tests/${folder}` : `tests/${folder}/**/*.test.ts`)),
    // Every mutant has a worker of its own; within it, test files share what they import.
    isolate: false,
    testTimeout: 60_000,
  },
});

import {defineConfig} from "vitest/config";

/** Folders of tests that mutants of one part of the library are tried against; see `mutate.ts`. */
const folders = words("MUTATION_TESTS");
/** Files of tests that are left out of them. */
const slow = words("MUTATION_SLOW");

function words(name: string): string[] {
  return (process.env[name] ?? "").split(" ").filter(Boolean);
}

export default defineConfig({
  test: {
    include: folders.map((folder) => (folder.endsWith(".ts") ? `tests/${folder}` : `tests/${folder}/**/*.test.ts`)),
    exclude: slow.map((file) => `tests/${file}`),
    // Every mutant has a worker of its own; within it, test files share what they import.
    isolate: false,
    testTimeout: 60_000,
  },
});

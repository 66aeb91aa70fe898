import tseslint from "typescript-eslint";
import {layers} from "./lint/house.js";

/** Names that exist in a browser only; the library must run in a worker and in Node alike. */
const BROWSER_GLOBALS = [
  "window", "document", "navigator", "location", "localStorage", "sessionStorage", "fetch", "XMLHttpRequest",
  "requestAnimationFrame", "alert", "process", "Buffer", "require",
];

export default tseslint.config(
  {ignores: ["dist/", "node_modules/", "src/lib/", "src/generated/", "src/.observablehq/", ".mutation/"]},
  ...tseslint.configs.recommended,
  {
    rules: {
      "@typescript-eslint/no-unused-vars": ["error", {argsIgnorePattern: "^_", varsIgnorePattern: "^_"}],
      eqeqeq: ["error", "always", {null: "ignore"}],
      "no-console": "off",
    },
  },
  {
    files: ["lib/**/*.ts", "src/**/*.ts"],
    plugins: {house: {rules: {layers}}},
    rules: {"house/layers": "error"},
  },
  {
    files: ["lib/**/*.ts"],
    rules: {
      "no-console": "error",
      "no-restricted-globals": ["error", ...BROWSER_GLOBALS],
      "no-restricted-imports": [
        "error",
        {patterns: [{regex: "^(?!\\.{1,2}/)", message: "The library depends on nothing."}]},
      ],
      "no-restricted-properties": ["error", {object: "Math", property: "random", message: "A result depends on its arguments alone; take a seeded generator."}],
    },
  },
);

import tseslint from "typescript-eslint";

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
    files: ["lib/**/*.ts"],
    rules: {
      "no-console": "error",
      "no-restricted-globals": ["error", ...BROWSER_GLOBALS],
      "no-restricted-imports": [
        "error",
        {patterns: [{regex: "^(?!\\.{1,2}/)", message: "The library depends on nothing."}, {regex: "/src/", message: "The library never imports from the pages."}]},
      ],
      "no-restricted-properties": ["error", {object: "Math", property: "random", message: "A result depends on its arguments alone; take a seeded generator."}],
    },
  },
);

import MarkdownIt from "markdown-it";
import {describe, expect, test} from "vitest";
import {evaluate} from "../../lib/evaluate.js";
import {formulasOf} from "../../src/components/worked/formulas.js";
import {mathInText} from "../../src/headless/mathInText.js";
import {catalog, seeds} from "../support/designs.js";

test("the methods page has formulas of every working it names, each set without an error", () => {
  const all = Object.entries(formulasOf(seeds.map(({design}) => evaluate(design, catalog))));
  expect(all.length).toBeGreaterThan(15);
  for (const [name, list] of all) {
    expect(list.length, name).toBeGreaterThan(0);
    for (const {label, symbol, value} of list) {
      expect(`${symbol}${value}`, label).toMatch(/^<math>.*<\/math>$/s);
      expect(`${symbol}${value}`, label).not.toContain("temml-error");
    }
  }
});

describe("math in a page's text", () => {
  const render = (text: string) => mathInText(new MarkdownIt({html: true})).renderInline(text);

  test("is set, and the text around it stays", () => {
    expect(render("Rupture at \\(7.5\\sqrt{f'_c}\\), in psi")).toMatch(/^Rupture at <span class="math"><math>.*<msqrt>.*<\/math><\/span>, in psi$/s);
  });

  test("needs both its signs; a lone one is text", () => {
    expect(render("a \\( b")).toBe("a ( b");
  });
});

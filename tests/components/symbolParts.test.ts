import {readFileSync, readdirSync} from "node:fs";
import {join} from "node:path";
import {describe, expect, test} from "vitest";
import {columnsOf, evaluate} from "../../lib/evaluate.js";
import {carbonWorking} from "../../lib/steps/carbon.js";
import {COLUMN_WORKINGS} from "../../lib/steps/columns.js";
import {WORKINGS} from "../../lib/steps/workings.js";
import type {Working} from "../../lib/step.js";
import {partOfLabel} from "../../src/components/worked/symbolParts.js";
import {SYMBOL_PARTS} from "../../src/components/worked/symbolPartsTable.js";
import {mathMarkup, stepLines} from "../../src/components/worked.js";
import {ROOT} from "../../src/headless/root.js";
import {catalog, seed, seeds} from "../support/designs.js";

const LABELS = Object.values(SYMBOL_PARTS).flat();
const labelsOf = ({steps}: Working) => steps.flatMap((step) => [step.label, ...Object.values(step.values).map(({label}) => label)]);

describe("symbols of worked steps and parts of drawings", () => {
  test("every label of the table stands in some worked step of the starters", () => {
    const labels = new Set(seeds.flatMap(({design}) => {
      const result = evaluate(design, catalog);
      return [
        ...Object.values(WORKINGS).flatMap((working) => labelsOf(working(result))),
        ...labelsOf(carbonWorking(result.member, catalog.carbonFactors)),
        ...columnsOf(result, catalog).columns.flatMap((column) => Object.values(COLUMN_WORKINGS).flatMap((working) => labelsOf(working(column, 0)))),
      ];
    }));
    expect(LABELS.filter((label) => !labels.has(label))).toEqual([]);
    expect(new Set(LABELS).size).toBe(LABELS.length);
  });

  test("every part that is named is drawn or charted somewhere", () => {
    const files = ["src", "lib/loads"].flatMap((folder) => readdirSync(join(ROOT, folder), {recursive: true, encoding: "utf8"}).map((file) => join(folder, file)))
      .filter((file) => /\.(ts|md)$/.test(file) && !file.endsWith("symbolParts.ts"));
    const drawn = files.map((file) => readFileSync(join(ROOT, file), "utf8")).join("\n");
    const parts = Object.keys(SYMBOL_PARTS);
    expect(parts.filter((part) => !part.startsWith("loss by ") && !drawn.includes(`"${part}"`))).toEqual([]);
  });

  test("a row of strands is of the strands, what a limit allows is of its curve, and what is not drawn has no part", () => {
    expect(["depth of row 3", "area of row 1", "stress of row 2", "load that shear allows", "gravity", "ledger"].map(partOfLabel)).toEqual(["strand", "strand", "strand", "limit shear", undefined, undefined]);
  });

  test("an equation carries the parts of its symbols and of the numbers in their place, and looks as without", () => {
    const [step] = WORKINGS.beamDepth(evaluate(seed("branch-library"), catalog)).steps;
    if (!step) throw new Error("no step");
    const partOf = (name: string) => partOfLabel(step.values[name]?.label ?? "");
    const lit = stepLines(step, partOf).map((line) => mathMarkup(line));
    expect(lit.join("").match(/data-part="(ledge|deck|upstand)"/g)).toHaveLength(6);
    expect(lit.map((line) => line.replace(/ data-part="[^"]*"/g, ""))).toEqual(stepLines(step).map((line) => mathMarkup(line)));
  });

  test("primes and names of several letters look the same where they light", () => {
    for (const [plain, lit] of [["f_{ci}'", "\\data{part=strand}{f_{ci}'}"], ["f'", "\\data{part=strand}{f'}"], ["\\mathrm{ES}", "\\data{part=loss by creep}{\\mathrm{ES}}"]] as const) {
      expect(mathMarkup(lit)).toContain("data-part");
      expect(mathMarkup(lit).replace(/ data-part="[^"]*"/g, "")).toBe(mathMarkup(plain));
    }
  });
});

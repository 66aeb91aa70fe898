import {readFileSync} from "node:fs";
import {join} from "node:path";
import {afterAll, beforeAll, describe, expect, test} from "vitest";
import {commandOf, type Command} from "./run.js";

const STARTER = join(import.meta.dirname, "../../seeds/briefs/teaching-building.json");
let command: Command;
beforeAll(() => {
  command = commandOf("schemes");
});
afterAll(() => command.close());

function briefWith(changes: object): string {
  return JSON.stringify({...(JSON.parse(readFileSync(STARTER, "utf8")) as object), ...changes});
}
const FEW = {baysAcross: 1, beamSpanFt: [30, 36], deck: ["12DT32"], toppingIn: 2, edge: "ledge"};

describe("schemes prints", () => {
  test("each scheme of a brief as a row of CSV and as JSON alike", () => {
    const content = briefWith({vary: FEW});
    const csv = command.runOn(content, "-", "--csv");
    expect(csv.stderr).toBe("");
    const [header = "", ...lines] = csv.stdout.trimEnd().split("\n");
    const names = header.split(",");
    const json = JSON.parse(command.runOn(content, "-", "--json").stdout) as Record<string, unknown>[];
    expect(lines).toHaveLength(2);
    expect(json).toHaveLength(2);
    for (const [i, line] of lines.entries()) {
      const cells = line.split(",");
      for (const name of ["span_ft", "beam_span_ft", "deck", "floor_to_floor_ft"]) expect(cells[names.indexOf(name)]).toBe(String(json[i]?.[name]));
      expect(cells[names.indexOf("deck")]).toMatch(/^12DT32\+2 \d+-[SD]/);
      expect(cells[names.indexOf("edge")]).toBe("ledge");
    }
  });

  test("what stops the most where no scheme holds, and which prices a cost lacks", () => {
    const nothing = command.runOn(briefWith({vary: {...FEW, deck: ["planks"]}}), "-");
    expect(nothing.code).toBe(0);
    expect(nothing.stderr).toMatch(/None of the 2 schemes holds: in 2 of them no deck of the kind carries the span; what would have to give: shorter deck spans/);
    const priced = command.runOn(briefWith({vary: FEW, prices: {deckPerYd3: 900}}), "-");
    expect(priced.stderr).toMatch(/cost is left blank: no price is given for .*topping, placed and finished/);
  });

  test.each([
    ["a misspelled field", {cielingFt: 9}, /cielingFt/],
    ["a width that no span divides", {vary: {...FEW, baysAcross: [9]}}, /deck span/],
  ])("one line for %s", (_, changes, words) => {
    const {code, stdout, stderr} = command.runOn(briefWith(changes), "-");
    expect(code).toBe(2);
    expect(stdout).toBe("");
    expect(stderr.trim().split("\n")).toHaveLength(1);
    expect(stderr).toMatch(words);
  });
});

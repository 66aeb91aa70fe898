import {expect, test} from "vitest";
import {withValues} from "../../lib/design/edit.js";
import {columnsOf, evaluate} from "../../lib/evaluate.js";
import {compared} from "../../lib/record/compared.js";
import {designRecord} from "../../lib/record/record.js";
import {catalog, seed} from "../support/designs.js";

test("the record writes no number to more digits than anyone measures, however finely the design gives its own", () => {
  const odd = withValues(seed("branch-library"), {
    "deck.toppingIn": 2.220125194173306, "bay.spanFt": 38.123456789, "bay.beamSpanFt": 29.987654321, "story.finishIn": 0.123456789, "deck.strandHeightCenterIn": 5.123456789,
    "deck.strengthPsi": 6123.456789, "edgeBeam.coverIn": 1.512345678, "loads.layers.0.loadPsf": 3.123456789, "ground.allowablePsf": 4123.456789, "column.steelPercent": 1.512345678,
  });
  const result = evaluate(odd, catalog);
  const written = texts(designRecord(result, compared(odd, catalog), "", columnsOf(result, catalog)).sections);
  expect(written.some((text) => text.includes("+2.22 "))).toBe(true);
  expect(written.filter((text) => /\d\.\d{5,}/.test(text))).toEqual([]);
});

/** Every text in a value. */
function texts(value: unknown): string[] {
  if (typeof value === "string") return [value];
  return typeof value === "object" && value !== null ? Object.values(value).flatMap(texts) : [];
}

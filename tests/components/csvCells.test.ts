import {expect, test} from "vitest";
import {gridOf, harmless} from "../../src/components/share/csvCells.js";

const cell = (text: string, columns = 1, rows = 1) => ({text, columns, rows});

test("a cell that spans columns or rows leaves the others where they stand", () => {
  expect(gridOf([
    [cell("Room", 1, 2), cell("Load", 2)],
    [cell("live, psf"), cell("dead, psf")],
    [cell("Studio"), cell("50"), cell("15")],
  ])).toEqual([["Room", "Load", ""], ["", "live, psf", "dead, psf"], ["Studio", "50", "15"]]);
  expect(gridOf([[cell("a"), cell("b", 1, 3)], [cell("c")], [cell("d")]])).toEqual([["a", "b"], ["c", ""], ["d", ""]]);
  // A span beyond the last row ends with the table.
  expect(gridOf([[cell("a", 1, 9), cell("b")]])).toEqual([["a", "b"]]);
});

test("what a spreadsheet would run is text, and numbers stay numbers", () => {
  for (const text of ["=1+1", "+cmd", "@SUM(A1)", "-2+3", "=HYPERLINK(\"x\")", "-", "+1-555(0)", "-A1", "-2*A1", "+3 psf+1"]) expect(harmless(text), text).toBe(`'${text}`);
  for (const text of ["-3.2", "+40 psf", "-0.6 %", "-1,234.5", "-.5 in", "-12 kip-ft", "12DT32", "L/360", "a = b", "", "+3.1 kgCO\u2082e/ft\u00b2"]) expect(harmless(text), text).toBe(text);
  expect(harmless("\u22123.2 in")).toBe("-3.2 in");
  expect(harmless("\u2212")).toBe("\u2212");
});


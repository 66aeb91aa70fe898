import {mkdtempSync, rmSync, writeFileSync} from "node:fs";
import {tmpdir} from "node:os";
import {join} from "node:path";
import {expect, test} from "vitest";
import {readRawTables} from "../../src/headless/readCatalog.js";

/** What is read of one table with a text. */
function read(text: string) {
  const folder = mkdtempSync(join(tmpdir(), "tables-"));
  try {
    writeFileSync(join(folder, "bolts.csv"), text);
    return readRawTables(folder)["bolts"];
  } finally {
    rmSync(folder, {recursive: true});
  }
}

const HEAD = "size, area ,source\n";

test("a row is read by the names in the header, cells without the space around them, an empty cell as an empty text", () => {
  expect(read(`${HEAD}5/8, 0.307 ,"a handbook, table 2"\n3/4,,from memory\n\n`)).toEqual([
    {size: "5/8", area: "0.307", source: "a handbook, table 2"}, {size: "3/4", area: "", source: "from memory"},
  ]);
  expect(read(HEAD)).toEqual([]);
});

test.each([
  ["a cell too many", "1,0.785,a handbook, table 2\n", 4],
  ["a cell too few", "1,0.785\n", 2],
  ["an empty line between rows", "\n7/8,0.601,a handbook\n", 1],
])("%s is refused by file and line", (_, row, cells) => {
  const before = `${HEAD}5/8,0.307,"a handbook,\ntable 2"\n`;
  expect(() => read(before + row)).toThrow(`bolts.csv, line 4, cells: ${cells} is not possible (3, as in the header)`);
});

import {describe, expect, test} from "vitest";
import {CsvRow, tableRows} from "../lib/tables.js";
import {refused} from "./support/errors.js";

const row = (cells: Readonly<Record<string, string>>) => new CsvRow(cells, "bars[3]");

describe("a row of a table", () => {
  test("is known by its table and its number from 1", () => {
    const rows = tableRows({bars: [{size: "#3"}, {size: ""}]}, "bars");
    expect(rows.map((one) => one.optional("size"))).toEqual(["#3", ""]);
    refused(() => rows[1]?.text("size"), {path: "bars[2].size", message: "bars[2] size: \"\" is not possible (text)"});
    refused(() => tableRows({bars: [], strands: []}, "beams"), {path: "beams", value: "bars, strands", allowed: "a table named beams"});
  });

  test("has its texts without the blanks around them, and nothing in a column that it lacks", () => {
    expect(row({size: " #3 "}).text("size")).toBe("#3");
    expect(row({}).optional("size")).toBe("");
    refused(() => row({size: "  "}).text("size"), {path: "bars[3].size", allowed: "text"});
    refused(() => row({}).text("size"), {path: "bars[3].size", value: undefined});
  });

  test("has numbers as numbers, naught among them, and refuses what is none", () => {
    expect(row({area: " 0.11 "}).number("area")).toBe(0.11);
    expect(row({area: "0"}).number("area")).toBe(0);
    for (const area of ["", "half", "Infinity", "NaN", "1,5"]) refused(() => row({area}).number("area"), {path: "bars[3].area", value: area, allowed: "a number"});
  });

  test("tells an empty cell from a number, and refuses a word where either may stand", () => {
    expect([row({area: "2"}).optionalNumber("area"), row({area: " "}).optionalNumber("area"), row({}).optionalNumber("area")]).toEqual([2, undefined, undefined]);
    refused(() => row({area: "half"}).optionalNumber("area"), {path: "bars[3].area", allowed: "a number or nothing"});
  });

  test("has one of the choices, and yes or no", () => {
    expect(row({kind: "a"}).choice("kind", ["a", "b"])).toBe("a");
    refused(() => row({kind: "c"}).choice("kind", ["a", "b"]), {path: "bars[3].kind", value: "c", allowed: "a, b"});
    expect([row({used: "yes"}).yes("used"), row({used: "no"}).yes("used")]).toEqual([true, false]);
    refused(() => row({used: "true"}).yes("used"), {path: "bars[3].used", allowed: "yes, no"});
  });

  test("has a number that is part of a cell, told by the cell where it is none", () => {
    expect(row({size: "12DT32"}).parse("size", "12")).toBe(12);
    refused(() => row({size: "xDT32"}).parse("size", "x"), {path: "bars[3].size", value: "xDT32", allowed: "a number"});
    refused(() => row({size: "DT"}).parse("size", ""), {path: "bars[3].size"});
  });
});
